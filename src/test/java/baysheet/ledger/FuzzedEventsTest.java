package baysheet.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.report.Problems;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever stands in the files of events, they chain, each line an event, or a problem names the
 * line; no event is lost. DEVELOPERS.md says how to hunt.
 */
class FuzzedEventsTest {
  @TempDir private static Path folder;

  @MethodSource("years")
  @FuzzTest(maxDuration = "10m")
  void anyYearChainsOrHasAProblem(byte[] bytes) throws IOException {
    Files.write(folder.resolve("2026.jsonl"), bytes);
    Problems problems = new Problems();
    Optional<EventChain> chain = EventChain.read(folder, problems);
    assertEquals(chain.isEmpty(), problems.hasErrors());
    long lines =
        new String(bytes, StandardCharsets.ISO_8859_1).chars().filter(it -> it == '\n').count();
    chain
        .filter(it -> it.torn().isEmpty())
        .ifPresent(it -> assertEquals(lines, it.takeEvents().size(), "an event for each line"));
  }

  @MethodSource("lines")
  @FuzzTest(maxDuration = "10m")
  void anyLineIsAnEventThatIsWrittenTheSame(byte[] line) {
    try {
      Event event = EventJson.read(JsonText.read(line));
      JsonObject written = EventJson.write(event);
      assertEquals(event, EventJson.read(written));
    } catch (IOException | IllegalArgumentException | ArithmeticException | DateTimeException e) {
      assertTrue(e.getMessage() != null, "a refusal says why");
    }
  }

  static Stream<byte[]> years() {
    byte[] year = written();
    return Stream.of(year, Arrays.copyOf(year, year.length - 9));
  }

  static Stream<byte[]> lines() {
    return new String(written(), StandardCharsets.UTF_8)
        .lines()
        .map(it -> it.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] written() {
    try {
      Path events = Files.createTempDirectory("events");
      try (Ledger ledger = Ledger.open(events, Disk.REAL, new Problems()).orElseThrow()) {
        ledger.add(Events.all(), List.of());
      }
      return Files.readAllBytes(events.resolve("2026.jsonl"));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
