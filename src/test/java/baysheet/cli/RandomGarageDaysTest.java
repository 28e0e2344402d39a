package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import baysheet.output.Exit;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's jobs with other people, bays and times: whatever is written, the day is possible. */
class RandomGarageDaysTest {
  private static final int DAYS = 12;
  private static final String DAY = "2026-03-02";

  @TempDir private Path folder;

  @Test
  void noDayIsImpossible() throws IOException {
    List<String> faults = new ArrayList<>();
    int planned = 0;
    for (int seed = 0; seed < DAYS; seed++) {
      Path garage = folder.resolve("garage-" + seed);
      CopyOfTheDemo.in(garage);
      vary(garage, new Random(seed));
      JsonNode jobs = laidOut(garage).path("jobs");
      planned += jobs.size();
      for (String fault : ClockCheck.faults(jobs)) {
        faults.add("day " + seed + ": " + fault);
      }
    }
    assertEquals(List.of(), faults);
    // Work that needs a lift is refused on the floor; most jobs take any bay.
    assertTrue(planned > DAYS * 8, "planned: " + planned);
  }

  /** All jobs on one day, with who, where and when drawn anew. */
  private static void vary(Path garage, Random random) throws IOException {
    for (Path job : jobs(garage.resolve("2026-03-03"))) {
      Files.move(job, garage.resolve(DAY).resolve(job.getFileName()));
    }
    for (Path job : jobs(garage.resolve(DAY))) {
      StringBuilder text = new StringBuilder();
      for (String line : Files.readAllLines(job)) {
        String key = line.replaceFirst(":.*", "");
        boolean drawn = List.of("by", "with", "bay", "arrives", "ready-by", "stages").contains(key);
        text.append(drawn ? "" : line + "\n");
      }
      boolean first = random.nextBoolean();
      text.append("by: ").append(first ? "T1" : "T2").append('\n');
      text.append(random.nextInt(3) == 0 ? "with: A1\n" : "");
      text.append(random.nextInt(4) == 0 ? "second: " + (first ? "T2" : "T1") + "\n" : "");
      text.append("bay: ").append(List.of("1", "2", "floor").get(random.nextInt(3))).append('\n');
      text.append(random.nextInt(4) == 0 ? "stages: 2\n" : "");
      text.append(random.nextInt(3) == 0 ? "arrives: 0" + (8 + random.nextInt(2)) + ":20\n" : "");
      text.append(random.nextInt(2) == 0 ? "ready-by: 1" + random.nextInt(7) + ":30\n" : "");
      Files.writeString(job, text);
    }
  }

  private static List<Path> jobs(Path day) throws IOException {
    try (Stream<Path> files = Files.list(day)) {
      return files.sorted().toList();
    }
  }

  private JsonNode laidOut(Path garage) throws IOException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false);
    String place = folder.resolve("out").toString();
    String[] words = {"day", DAY, "--json", "--shop", garage.toString(), "--out", place};
    int exit = Main.run(words, console, Garage.TODAY);
    assertTrue(exit == Exit.DONE || exit == Exit.PROBLEMS, err.toString());
    return new ObjectMapper().readTree(out.toString());
  }
}
