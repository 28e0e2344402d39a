package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.files.Writers;
import baysheet.layout.Fonts;
import baysheet.ledger.Disk;
import baysheet.output.Batch;
import baysheet.output.Console;
import baysheet.output.DayOutput;
import baysheet.output.Exit;
import baysheet.output.MadeSheet;
import baysheet.output.SheetIssuer;
import baysheet.output.SheetMaker;
import baysheet.output.Sheets;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet is there whole or not at all, whatever goes wrong. */
class WrittenFilesTest {
  private static final Set<String> ALL_BUT_501 =
      Set.of("2026-04-07/502.pdf", "2026-04-07/503.pdf", "2026-04-07/all.pdf");

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  @Test
  void aRefusedJobHasItsOldSheetWholeAmongTheWithdrawnOnes() {
    garage.sheets();
    byte[] yesterday = Garage.bytes(garage.made("501.pdf"));
    garage.change("2026-04-07/501.yaml", "bay: 2", "bay: 22");
    assertEquals(Exit.PROBLEMS, garage.sheets().exit());
    assertArrayEquals(yesterday, Garage.bytes(garage.made("withdrawn/501.pdf")));
    assertNothingHalfWritten();
  }

  @Test
  void aChangedJobTakesThePlaceOfItsOldSheet() {
    garage.sheets();
    byte[] yesterday = Garage.bytes(garage.made("501.pdf"));
    garage.change("2026-04-07/501.yaml", "90110 km", "90210 km");
    garage.sheets();
    byte[] today = Garage.bytes(garage.made("501.pdf"));
    assertTrue(Paper.of(yesterday).text().contains("90110 km"));
    assertTrue(Paper.of(today).text().contains("90210 km"));
    assertNothingHalfWritten();
  }

  @Test
  void aDayTooLargeForOneFileStillGetsAllItsSheets() throws IOException {
    garage.sheets();
    assertTrue(garage.written().containsKey("2026-04-07/all.pdf"));
    String job = Files.readString(garage.job("502"));
    int own = 3;
    for (int more = own; more <= DayOutput.MOST; more++) {
      String number = String.valueOf(600 + more);
      garage.write("2026-04-07/" + number + ".yaml", job.replace("job: 502", "job: " + number));
    }
    Garage.Run run = garage.sheets();
    run.says("all  not made, for 101 jobs are more than the 100 that one file takes");
    assertEquals(Exit.DONE, run.exit());
    assertEquals(DayOutput.MOST + 1, garage.written().size());
    assertFalse(garage.written().containsKey("2026-04-07/all.pdf"));
  }

  private void assertNothingHalfWritten() {
    assertTrue(
        garage.written().keySet().stream().allMatch(name -> name.endsWith(".pdf")),
        garage.written().keySet().toString());
  }

  @Test
  void noSheetTakesThePlaceOfAnother() {
    Garage other = Garage.in(folder.resolve("other"));
    Garage.Run run = garage.sheets(other.root.resolve(Garage.DAY).toString());
    assertEquals(Exit.PROBLEMS, run.exit());
    run.reports("2026-04-07:1:1", "same-sheet");
    run.says("OUT/2026-04-07");
    run.says("3 of 6 sheets were written");
  }

  @ParameterizedTest
  @ValueSource(strings = {"all", "All", "ALL"})
  void aJobCalledAllNeverHidesTheDay(String name) {
    garage.write(
        "2026-04-07/" + name + ".yaml",
        "job: "
            + name
            + "\nvehicle: {book: hollin-wren-2014, plate: HW 1, odometer: 5 km}\n"
            + "bay: 1\nby: T1\nwork: [wheel-check at rear-left]\n");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.reports("2026-04-07/" + name + ".yaml:1:6", "reserved-number");
    byte[] day = Garage.bytes(garage.made("all.pdf"));
    assertEquals(3, Paper.of(day).pages());
    // Alone it meets no other file of the run.
    run = garage.run("sheets", garage.job(name).toString(), "-o", garage.out.toString());
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    assertArrayEquals(day, Garage.bytes(garage.made("all.pdf")));
    assertEquals(Exit.PROBLEMS, garage.run("check", garage.job(name).toString()).exit());
  }

  @Test
  void theDaysFileHoldsWhatWasWrittenAndNothingElse() throws IOException {
    Files.createDirectories(garage.made("501.pdf").resolve("in-the-way"));
    Garage.Run run = garage.sheets();
    run.says("2 of 3 sheets were written");
    run.says("all  2 of 3 sheets in bay order, without 501");
    assertEquals(2, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
  }

  @Test
  void numbersThatDifferInCapitalsAloneAreOneFileToManySystems() throws IOException {
    String job = Files.readString(garage.job("502"));
    garage.write("2026-04-07/A7.yaml", job.replace("job: 502", "job: A7"));
    garage.write("2026-04-07/a7.yaml", job.replace("job: 502", "job: a7"));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.reports("2026-04-07/a7.yaml:1:6", "number-twice");
    run.reports("2026-04-07/A7.yaml:1:6", "number-twice");
    run.says("3 of 5 sheets were written");
    assertEquals(3, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
  }

  @Test
  void aNumberBelongsToOneJob() throws IOException {
    garage.write("2026-03-31/502.yaml", Files.readString(garage.job("502")));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.reports("2026-04-07/502.yaml:1:6", "number-twice");
    run.says("2026-03-31/502.yaml");
    assertEquals(
        Set.of("2026-04-07/501.pdf", "2026-04-07/503.pdf", "2026-04-07/all.pdf"),
        garage.written().keySet());
    garage.run("check", garage.root.toString()).reports("2026-03-31/502.yaml:1:6", "number-twice");
  }

  @Test
  void aDateAgainstItsFolderIsAProblem() {
    garage.change("2026-04-07/502.yaml", "job: 502\n", "job: 502\ndate: 2026-04-08\n");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.reports("2026-04-07/502.yaml:2:7", "date-differs");
    assertFalse(garage.written().containsKey("2026-04-07/502.pdf"));
  }

  @Test
  void aDateThatIsTheFoldersOrWhoseFolderIsNoDayIsFine() throws IOException {
    garage.change("2026-04-07/502.yaml", "job: 502\n", "job: 502\ndate: 2026-04-07\n");
    assertEquals(Exit.DONE, garage.sheets().exit());
    garage.write("tuesday/512.yaml", Files.readString(garage.job("502")).replace("502", "512"));
    String tuesday = garage.root.resolve("tuesday").toString();
    Garage.Run run = garage.run("sheets", tuesday, "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(garage.written().containsKey("tuesday/512.pdf"));
  }

  @Test
  void aJobThatIsNamedTwiceIsMadeOnce() {
    String roundabout = garage.root.resolve("vehicles/../2026-04-07/501.yaml").toString();
    Garage.Run run = garage.sheets(roundabout);
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertEquals(4, run.out().lines().count(), run.out());
  }

  @Test
  void aFolderThatCannotBeWrittenIsNamed() throws IOException {
    Files.writeString(garage.out, "a file where a folder should be");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.FILES, run.exit(), run.err());
    run.says("cannot write to OUT");
    assertFalse(run.err().contains("\tat "), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    run.says("0 of 3 sheets were written");
  }

  @Test
  void aSheetThatCannotBeWrittenDoesNotKeepTheOthers() throws IOException {
    // A folder with something in it cannot be moved over.
    Files.createDirectories(garage.made("501.pdf").resolve("in-the-way"));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.FILES, run.exit(), run.err());
    run.says("cannot write OUT/2026-04-07/501.pdf");
    assertEquals(ALL_BUT_501, garage.written().keySet());
    assertTrue(Files.isDirectory(garage.made("501.pdf")));
  }

  @Test
  void aFolderInThePlaceOfARecordIsNamedItself() throws IOException {
    Files.createDirectories(garage.made("501.json"));
    String day = garage.root.resolve("2026-04-07").toString();
    Garage.Run run = garage.run("sheets", day, "--record", "-o", garage.out.toString());
    assertEquals(Exit.FILES, run.exit(), run.err());
    run.says("cannot write OUT/2026-04-07/501.pdf: a folder stands at OUT/2026-04-07/501.json");
    assertFalse(Files.exists(garage.made("501.pdf")));
  }

  @Test
  void anInternalErrorIsReportedAtItsJobWithoutTraceAndTheOthersAreMade() {
    Garage.Run run = runWith(new IllegalStateException("Item[name=nut, at=Where[line=7]]"), false);
    assertEquals(Exit.FAULT, run.exit());
    run.reports("2026-04-07/501.yaml:1:1", "tool-fault");
    run.says("set BAYSHEET_TRACE=1, run the command again");
    for (String inner : List.of("\tat ", "java.lang", "Exception", "Where[")) {
      assertFalse(run.err().contains(inner), inner + " in\n" + run.err());
    }
    assertEquals(ALL_BUT_501, garage.written().keySet());
  }

  @Test
  void theTraceOfAnInternalErrorIsPrintedForAReport() {
    Garage.Run run = runWith(new IllegalStateException("nothing undoes item 7"), true);
    assertEquals(Exit.FAULT, run.exit());
    run.says("java.lang.IllegalStateException: nothing undoes item 7");
    run.says("\tat ");
  }

  @Test
  void aJobThatTakesAllMemoryEndsWithAProblemAndTheOthersAreMade() {
    for (Error tooMuch : List.of(new StackOverflowError(), new OutOfMemoryError("heap"))) {
      Garage.Run run = runWith(tooMuch);
      assertEquals(Exit.PROBLEMS, run.exit(), run.err());
      run.says("2026-04-07/501.yaml:1:1: error: the work on this file needed more memory");
      assertFalse(run.err().contains("\tat "), run.err());
      assertEquals(ALL_BUT_501, garage.written().keySet());
    }
  }

  @Test
  void aJobThatVanishesMeanwhileIsNoFaultOfOurs() {
    NoSuchFileException gone = new NoSuchFileException("501.yaml");
    Garage.Run run = runWith(new UncheckedIOException("cannot read 501.yaml", gone));
    assertEquals(Exit.FILES, run.exit());
    run.says("cannot read 501.yaml: there is no such file or folder");
    assertFalse(run.err().contains("\tat "), run.err());
    assertEquals(ALL_BUT_501, garage.written().keySet());
  }

  /** A run in which making the sheet of job 501 ends so. */
  private Garage.Run runWith(Throwable fault) {
    return runWith(fault, false);
  }

  private Garage.Run runWith(Throwable fault, boolean traces) {
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    SheetMaker maker = new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.empty());
    Batch.Maker failing =
        (job, shop, revision, problems) -> made(maker, fault, job, shop, problems);
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Console console = new Console(new PrintWriter(out), new PrintWriter(err), false, traces);
    SheetIssuer issues = new SheetIssuer(garage.out, Disk.REAL, Garage.TODAY);
    Sheets sheets =
        new Sheets(
            console,
            folders,
            new Batch(failing, 2, new Writers(), issues),
            issues,
            new Sheets.Output(garage.out, false, false, Disk.REAL));
    int exit = sheets.run(List.of(garage.root.resolve(Garage.DAY)));
    return new Garage.Run(exit, garage.shown(out), garage.shown(err));
  }

  private List<MadeSheet> made(
      SheetMaker maker, Throwable fault, Path job, ShopFolder shop, Problems problems) {
    if (job.equals(garage.job("501"))) {
      if (fault instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) fault;
    }
    return maker.make(job, shop, problems);
  }
}
