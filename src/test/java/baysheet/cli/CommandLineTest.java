package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.Exit;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class CommandLineTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheets", "check", "explain"})
  void aPathThatIsNotThereIsNamed(String command) {
    String nowhere = folder.resolve("nowhere.yaml").toString();
    Garage.Run run = garage.run(command, nowhere);
    assertEquals(Exit.FILES, run.exit(), run.err());
    assertTrue(run.err().contains(nowhere), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  @Test
  void withoutAPathTodaysFolderIsTaken() {
    // There is no folder of that day in the demo shop, which is found from the project's root.
    Garage.Run run = garage.run("sheets", "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("jobs/2026-04-07");
  }

  @Test
  void aJobOutsideAnyShopFolderIsAProblem() throws Exception {
    Path stray = Files.writeString(folder.resolve("9.yaml"), "job: 9\n");
    Garage.Run run = garage.run("sheets", stray.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("shop.yaml");
    run.says("More: baysheet help no-shop");
  }

  @Test
  void anEmptyFolderThatIsNoDayIsAProblem() throws Exception {
    Path empty = Files.createDirectories(garage.root.resolve("monday"));
    Garage.Run run = garage.run("sheets", empty.toString(), "-o", garage.out.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    run.reports("monday:1:1", "no-jobs");
  }

  @Test
  void helpIsNoMistake() {
    for (String command : List.of("sheets", "check", "explain", "torque", "start", "help")) {
      Garage.Run run = garage.run(command, "--help");
      assertEquals(Exit.DONE, run.exit());
      assertTrue(run.out().contains("Usage: baysheet " + command), run.out());
    }
  }

  @Test
  void checkReportsWhatSheetsWouldAndWritesNothing() {
    garage.change("2026-04-07/501.yaml", "hollin-wren-2014", "hollin-wren-2041");
    Garage.Run run = garage.run("check", garage.root.toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    run.reports("2026-04-07/501.yaml:3:17", "unknown-book");
    run.says("hollin-wren-2014");
    run.says("1 error in 1 file: 3 jobs checked, 1 is refused.");
  }

  /** What a report of an internal error needs is printed by {@code check} as by {@code sheets}. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void checkPrintsTheTraceOfAnInternalErrorWhereItIsAskedFor(boolean asked) {
    StringWriter err = new StringWriter();
    Console console =
        new Console(new PrintWriter(new StringWriter()), new PrintWriter(err), false, asked);
    Batch.Maker failing =
        (job, shop, revision, problems) -> {
          throw new IllegalStateException("nothing undoes item 7");
        };
    CommandLine check =
        new CommandLine(new CheckCommand(console, LocalDate::now, maker -> failing).spec());
    assertEquals(Exit.FAULT, check.execute(garage.job("501").toString()));
    String said = garage.shown(err);
    assertTrue(said.contains("2026-04-07/501.yaml:1:1: error: an internal error"), said);
    assertEquals(asked, said.contains("IllegalStateException: nothing undoes item 7\n\tat "), said);
    assertEquals(!asked, said.contains("set BAYSHEET_TRACE=1, run the command again"), said);
  }

  @Test
  void checkIsContentWithAShopInOrder() {
    Garage.Run run = garage.run("check", garage.root.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals("no problems; 3 jobs checked\n", run.out().replace("\r\n", "\n"));
  }
}
