package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.files.DayFolders;
import baysheet.output.Exit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop folder that comes with the project is in order. */
class DemoShopTest {
  private static final Path JOBS = Path.of("jobs");

  @TempDir private Path folder;

  /** The demo shows each kind of warning that a sheet may carry, and has no error. */
  @Test
  void nothingIsAmissInTheDemoButWhatItShows() {
    Garage.Run run = Garage.in(folder).run("check", JOBS.toString(), "--json");
    assertEquals(Exit.DONE, run.exit(), run.out());
    JsonTree told = JsonTree.of(run.out().getBytes(StandardCharsets.UTF_8));
    List<String> problems =
        told.list("problems").stream()
            .map(it -> it.text("severity") + " " + it.text("code") + " " + file(it))
            .sorted()
            .toList();
    assertEquals(
        List.of(
            "warning does-not-fit 2412.yaml",
            "warning to-borrow 2411.yaml",
            "warning to-borrow 2412.yaml",
            "warning to-borrow 2414.yaml",
            "warning tool-clash 2414.yaml",
            "warning unknown-torque ostervane-hod-2017.yaml",
            "warning wrench 2408.yaml"),
        problems,
        run.out());
  }

  private static String file(JsonTree problem) {
    return Path.of(problem.text("at.file")).getFileName().toString();
  }

  @Test
  void everyTorqueLineOfTheDemoCanBeFollowed() {
    Garage garage = Garage.in(folder);
    List<Path> jobs = DayFolders.all(JOBS);
    assertTrue(jobs.size() >= 14, jobs.toString());
    for (Path job : jobs) {
      Garage.Run run = garage.run("explain", job.toString());
      assertEquals(Exit.DONE, run.exit(), run.err());
      List<String> lines = run.out().lines().filter(line -> line.startsWith("line ")).toList();
      assertTrue(!lines.isEmpty(), job + " has no torque line");
      long places = run.out().lines().filter(line -> line.startsWith("  found ")).count();
      assertEquals(lines.size(), places, job.toString());
    }
  }
}
