package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Processes that are killed at random moments while they replace sheets leave every file whole, and
 * the next run leaves no trace of them. {@code -Dkills=200 -Dkilled.jobs=200} kills more of a
 * longer run.
 */
class KilledRunsTest {
  private static final int KILLS = Integer.getInteger("kills", 3);
  private static final long SEED = Long.getLong("kills.seed", 1);
  private static final int JOBS = Integer.getInteger("killed.jobs", 12);

  /** A sheet has revisions from A to Z. */
  private static final int LETTERS = 20;

  /** From the first sheet on, about as long as the others take. */
  private static final int LONGEST_MILLIS = 125 * JOBS;

  @TempDir private Path folder;

  @Test
  void everyFileIsWholeAndTheNextRunLeavesNoTrace() throws Exception {
    Garage garage = Garage.in(folder);
    String job = Files.readString(garage.job("501"));
    Random random = new Random(SEED);
    for (int kill = 0; kill < KILLS; kill += LETTERS) {
      Garage fresh = garage.into("out" + kill);
      write(fresh, job, "a first knock");
      assertEquals(Exit.DONE, fresh.sheets("--record").exit());
      Set<String> names = new TreeSet<>(fresh.written().keySet());
      for (int i = kill; i < Math.min(KILLS, kill + LETTERS); i++) {
        write(fresh, job, i + " knocks are heard");
        killed(fresh, random.nextInt(LONGEST_MILLIS));
        for (Map.Entry<String, byte[]> file : fresh.written().entrySet()) {
          if (!file.getKey().endsWith(".lock")) {
            assertWhole(file.getKey(), file.getValue());
          }
        }
      }
      Garage.Run last = fresh.sheets("--record");
      assertEquals(Exit.DONE, last.exit(), last.err());
      assertEquals(names, fresh.written().keySet());
    }
  }

  private static void write(Garage garage, String job, String complaint) {
    for (int i = 0; i < JOBS; i++) {
      int number = 700 + i;
      garage.write(
          Garage.DAY + "/" + number + ".yaml",
          job.replace("job: 501", "job: " + number) + "\ncomplaint: " + complaint + "\n");
    }
  }

  private void killed(Garage garage, int millis) throws IOException, InterruptedException {
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "baysheet.cli.Main",
                "sheets",
                garage.root.resolve(Garage.DAY).toString(),
                "-o",
                garage.out.toString(),
                "--record")
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    while (process.isAlive() && Files.size(said) == 0) {
      process.waitFor(5, TimeUnit.MILLISECONDS);
    }
    process.waitFor(millis, TimeUnit.MILLISECONDS);
    process.destroyForcibly().waitFor();
  }

  /** What lies aside until it is moved into its place has another ending and may be cut off. */
  private static void assertWhole(String name, byte[] bytes) throws IOException {
    if (name.endsWith(".pdf")) {
      String end = new String(bytes, Math.max(0, bytes.length - 8), 8, StandardCharsets.US_ASCII);
      assertTrue(end.endsWith("%%EOF\n"), name + " ends with " + end);
      try (PDDocument document = Loader.loadPDF(bytes)) {
        assertTrue(document.getNumberOfPages() > 0, name);
      }
    } else if (name.endsWith(".json")) {
      String text = new String(bytes, StandardCharsets.UTF_8);
      assertTrue(text.startsWith("{") && text.endsWith("}\n"), name);
    }
  }
}
