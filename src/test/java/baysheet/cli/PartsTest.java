package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts of a run: together they write what one run writes, and each day once. */
class PartsTest {
  private static final List<String> DAYS = List.of("2026-04-07", "2026-04-08", "2026-04-09");

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void threeDays() throws IOException {
    garage = Garage.in(folder);
    String job = Files.readString(garage.job("501"));
    for (int day = 1; day < DAYS.size(); day++) {
      garage.write(DAYS.get(day) + "/60" + day + ".yaml", job.replace("job: 501", "job: 60" + day));
    }
  }

  private Garage.Run run(Path out, List<String> days, String... more) {
    List<String> line = new ArrayList<>(List.of("sheets"));
    days.forEach(day -> line.add(garage.root.resolve(day).toString()));
    line.addAll(List.of("-o", out.toString()));
    line.addAll(List.of(more));
    return garage.run(line.toArray(String[]::new));
  }

  /** What was written, by its path; the ledger is that of each run. */
  private static void add(Path out, Map<String, byte[]> files) throws IOException {
    for (String day : DAYS) {
      Path made = out.resolve(day);
      if (Files.exists(made)) {
        try (Stream<Path> found = Files.walk(made)) {
          for (Path file : found.filter(Files::isRegularFile).toList()) {
            byte[] before = files.put(out.relativize(file).toString(), Files.readAllBytes(file));
            assertEquals(null, before, file + " is in two parts");
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 8})
  void togetherTheyWriteTheBytesOfOneRun(int parts) throws IOException {
    assertEquals(Exit.DONE, run(garage.out, DAYS).exit());
    Map<String, byte[]> whole = new TreeMap<>();
    add(garage.out, whole);
    Map<String, byte[]> divided = new TreeMap<>();
    for (int part = 1; part <= parts; part++) {
      Path out = folder.resolve("part" + part);
      Garage.Run run = run(out, DAYS, "--part", part + "/" + parts, "--jobs", "1");
      assertEquals(Exit.DONE, run.exit(), run.err());
      add(out, divided);
    }
    assertEquals(whole.keySet(), divided.keySet());
    whole.forEach((name, bytes) -> assertArrayEquals(bytes, divided.get(name), name));
  }

  @Test
  void orderAndRepetitionOnTheCommandLineDoNotMatter() throws IOException {
    run(folder.resolve("one"), DAYS, "--part", "2/3");
    List<String> turned = List.of(DAYS.get(2), DAYS.get(1), DAYS.get(0), DAYS.get(2));
    run(folder.resolve("other"), turned, "--part", "2/3");
    Map<String, byte[]> one = new TreeMap<>();
    add(folder.resolve("one"), one);
    Map<String, byte[]> other = new TreeMap<>();
    add(folder.resolve("other"), other);
    assertEquals(one.keySet(), other.keySet());
    assertEquals(List.of("2026-04-08/601.pdf", "2026-04-08/all.pdf"), List.copyOf(one.keySet()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0/3", "4/3", "3", "a/b", "1/0", "-1/3"})
  void whatIsNoPartIsRefused(String part) {
    Garage.Run run = run(garage.out, DAYS, "--part", part);
    assertEquals(Exit.USAGE, run.exit());
    run.says("--part takes a part and their number, as in 3/8, not \"" + part + '"');
  }
}
