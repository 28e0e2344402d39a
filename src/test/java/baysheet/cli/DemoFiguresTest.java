package baysheet.cli;

import static baysheet.cli.OwnBooks.map;
import static baysheet.cli.OwnBooks.text;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.DayFolders;
import baysheet.files.YamlFiles;
import baysheet.output.Console;
import baysheet.output.Exit;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every torque line of every demo sheet, reckoned again from the files people wrote. */
class DemoFiguresTest {
  private static final Path JOBS = Path.of("jobs");
  static final OwnBooks BOOKS = new OwnBooks(JOBS);
  static final OwnSquares SQUARES = new OwnSquares(BOOKS.shop());
  // As the demo shop has it; the test below holds these to the file.
  static final BigDecimal SHOP_BAND = new BigDecimal(5);
  static final int MONTHS = 12;
  // 31 lbf·in is 3.5 N·m: a tenth of the proof load of an M10 of class 8.8 (ISO 898-1: 33.6 kN)
  // even
  // on the slipperiest thread; see the job.
  static final Set<String> DOUBTED = Set.of("axle-bush-bracket-bolt@rear-left");

  @TempDir private static Path out;

  @BeforeAll
  static void make() {
    for (String day : days()) {
      StringWriter told = new StringWriter();
      Console console = new Console(new PrintWriter(told), new PrintWriter(told), false);
      String[] words = {"sheets", JOBS.resolve(day).toString(), "--record", "-o", out.toString()};
      assertEquals(Exit.DONE, Main.run(words, console, Garage.TODAY), told.toString());
    }
  }

  private static List<String> days() {
    return List.of("2026-03-02", "2026-03-03");
  }

  static List<Path> jobs() {
    return DayFolders.all(JOBS);
  }

  /** The records of all sheets of a job: {@code 2404.json}, or {@code 2401-1.json} and so on. */
  private static List<JsonTree> records(Path job) {
    String names = YamlFiles.name(job) + "(-[1-9])?\\.json";
    try (Stream<Path> files = Files.list(out.resolve(DayFolders.day(job)))) {
      List<JsonTree> records =
          files
              .filter(file -> file.getFileName().toString().matches(names))
              .sorted()
              .map(file -> JsonTree.of(Garage.bytes(file)))
              .toList();
      assertFalse(records.isEmpty(), job + " has no record");
      return records;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot list the records of " + job, e);
    }
  }

  /** The lines of a job's records, one for each place, by {@code name@place}. */
  private static Map<String, JsonTree> lines(Path job) {
    Map<String, JsonTree> lines = new LinkedHashMap<>();
    for (JsonTree record : records(job)) {
      for (JsonTree line : record.list("torque")) {
        for (JsonTree place : line.list("places")) {
          String item = line.text("fastener") + "@" + text(place.value());
          assertFalse(lines.containsKey(item), item + " has two lines");
          lines.put(item, line);
        }
      }
    }
    return lines;
  }

  @Test
  void theShopIsAsAssumed() {
    assertEquals("5 %", text(BOOKS.shop().get("band")));
    assertEquals(MONTHS, BOOKS.shop().get("calibration-interval"));
    assertEquals(List.of("N·m", "lbf·ft"), map(BOOKS.shop().get("units")).get("torque"));
    assertEquals(14, jobs().size());
    jobs().forEach(job -> assertTrue(days().contains(DayFolders.day(job).toString()), text(job)));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void noFastenerIsLeftOutAndNoneIsAdded(Path job) {
    assertEquals(new TreeSet<>(BOOKS.fasteners(job).keySet()), new TreeSet<>(lines(job).keySet()));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyLineSaysWhatTheBookSays(Path job) {
    Map<String, JsonTree> lines = lines(job);
    BOOKS
        .fasteners(job)
        .forEach(
            (item, entry) -> {
              JsonTree line = lines.get(item);
              assertEquals(text(entry.get("count")), line.text("count"), item);
              for (String key : List.of("thread", "class", "head", "source", "replaced")) {
                assertEquals(
                    Optional.ofNullable(entry.get(key)).map(OwnBooks::text), said(line, key), item);
              }
              assertEquals(
                  Optional.of(text(entry.getOrDefault("threads", "not-stated"))),
                  said(line, "threads").map(it -> it.replace(' ', '-')),
                  item);
              assertEquals(yesNo(entry.get("reuse")), line.text("reuse"), item);
              assertEquals(entry.containsKey("overridden"), line.get("overridden").value(), item);
              assertEquals(entry.containsKey("final"), line.get("twoVisits").value(), item);
            });
  }

  private static Optional<String> said(JsonTree line, String key) {
    return line.has(key) ? Optional.of(line.text(key).replace('\u00a0', ' ')) : Optional.empty();
  }

  private static String yesNo(Object truth) {
    return Boolean.TRUE.equals(truth) ? "yes" : "no";
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyFigureComesOutAgain(Path job) {
    LocalDate day = LocalDate.parse(DayFolders.day(job).toString());
    Map<String, JsonTree> lines = lines(job);
    BOOKS
        .fasteners(job)
        .forEach((item, entry) -> new OwnLine(item, entry, day).check(lines.get(item)));
  }
}
