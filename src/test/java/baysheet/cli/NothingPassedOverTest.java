package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A run counts every job that somebody meant to give it, and names what it does not read. */
class NothingPassedOverTest {
  private static final String JOBS = "2026-04-07/";

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"504.yml", "504.YAML", "504.yaml.txt"})
  void aJobUnderAnotherEndingIsCounted(String name) throws IOException {
    Garage garage = Garage.in(folder);
    Files.move(garage.job("503"), garage.job("503").resolveSibling(name));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says(
        JOBS
            + name
            + ":1:1: error: this file is not read, because its name does not end in .yaml.");
    run.says("2 of 3 sheets were written");
    run.says("all  2 of 3 sheets in bay order, without 504");
  }

  @Test
  void aFolderInThePlaceOfAJobIsCounted() throws IOException {
    Garage garage = Garage.in(folder);
    Files.createDirectory(garage.job("504"));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says(JOBS + "504.yaml:1:1: error: this is a folder, but a file is expected.");
    run.says("3 of 4 sheets were written");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aJobThatIsALinkToNowhereIsCounted() throws IOException {
    Garage garage = Garage.in(folder);
    Files.createSymbolicLink(garage.job("504"), garage.root.resolve("gone.yaml"));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says(JOBS + "504.yaml:1:1: error: this is a link to something that does not exist");
    run.says("3 of 4 sheets were written");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aDayThatCannotBeListedIsNotCalledUnplanned() throws IOException {
    Garage garage = Garage.in(folder);
    Path day = garage.root.resolve("2026-04-09");
    Files.createSymbolicLink(day, garage.root.resolve("gone"));
    Garage.Run run = garage.run("sheets", day.toString(), "-o", garage.out.toString());
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says("this is a link to something that does not exist, but a folder is expected");
    assertFalse((run.out() + run.err()).contains("no jobs are planned"), run.out());
  }

  /** One cause, one message: the names that the folder holds are not reported as unknown. */
  @ParameterizedTest
  @ValueSource(strings = {"procedures", "vehicles"})
  void nothingIsReadOfAShopWithAFolderThatCannotBeListed(String own) throws IOException {
    Garage garage = Garage.in(folder);
    Path named = garage.root.resolve(own);
    Files.move(named, garage.root.resolve("moved"));
    Files.createFile(named);
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says(own + ":1:1: error: this is a file, but a folder is expected.");
    run.says("1 error in 1 file: 0 of 3 sheets were written");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeNamedAsAJobStopsNothing() throws IOException, InterruptedException {
    Garage garage = Garage.in(folder);
    String pipe = garage.job("504").toString();
    assertEquals(0, new ProcessBuilder("mkfifo", pipe).start().waitFor());
    garage.sheets().says("3 of 4 sheets were written");
    Garage.Run alone = garage.run("sheets", pipe, "-o", garage.out.toString());
    assertEquals(Exit.PROBLEMS, alone.exit(), alone.err());
    alone.says("this is not a regular file");
  }

  @Test
  void aFolderWithinADayIsNamedAndItsSheetsAreMade() throws IOException {
    Garage garage = Garage.in(folder);
    garage.write(JOBS + "later/504.yaml", "job: 504\n");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.says(JOBS + "later:1:1: error: this is a folder that is not read.");
    run.says("all 3 sheets were written");
  }

  @Test
  void notesAreNamedAsNotReadAndNothingElse() throws IOException {
    Garage garage = Garage.in(folder);
    garage.write(JOBS + "call-back.txt", "call G. Olmarsh");
    garage.write(JOBS + ".501.yaml.swp", "x");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("warning: these files are not read: .501.yaml.swp, call-back.txt.");
  }

  @ParameterizedTest
  @CsvSource({
    "procedures/wheel-off.yml, misnamed-file",
    "procedures/old/link.yaml, unexpected-file",
    "vehicles/hollin-wren-2014.YAML, misnamed-file",
    "vehicles/list.csv, unexpected-file",
    "catalogue/house.yml, misnamed-file",
    "Procedures/link.yaml, misnamed-folder",
    "catalog/house.yaml, misnamed-folder"
  })
  void whatIsNotReadInTheFoldersOfBooksIsNamed(String file, String code) {
    Garage garage = Garage.in(folder);
    garage.write(file, "procedure: other\n");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.out() + run.err());
    run.says("baysheet help " + code);
  }

  /** A catalogue that is not read could hold a caution: no sheet is made without it. */
  @Test
  void aCatalogueThatIsNotReadStopsAllSheets() {
    Garage garage = Garage.in(folder);
    garage.write("catalogue/house.yml", "cautions: {}\n");
    garage.sheets().says("0 of 3 sheets were written");
  }

  @Test
  void aJobBesideTheShopFileIsNamedByCheck() throws IOException {
    Garage garage = Garage.in(folder);
    Files.copy(garage.job("503"), garage.root.resolve("503.yaml"));
    garage.run("check", garage.root.toString()).says("this file is not read: 503.yaml");
  }

  @ParameterizedTest
  @ValueSource(strings = {"+12345-01-01", "2026-3-2", "1026-03-02", "2026-02-30", "02-03-2026"})
  void aFolderIsNamedAfterADayOnlyByItsExactDate(String day) throws IOException {
    Garage garage = Garage.in(folder);
    Files.move(garage.root.resolve(JOBS), garage.root.resolve(day));
    Garage.Run run =
        garage.run("sheets", garage.root.resolve(day).toString(), "-o", garage.out.toString());
    assertEquals(Exit.PROBLEMS, run.exit(), run.out() + run.err());
    run.says("is not named after a day");
    assertFalse(Files.exists(garage.out.resolve(day)), "nothing is written for such a day");
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-4-9", "20260409", "09.04.2026", "2026-04-09 Thursday"})
  void aFolderThatIsNearlyNamedAfterTheDayIsNamed(String name) throws IOException {
    Garage garage = Garage.in(folder);
    Path written = Files.createDirectory(garage.root.resolve(name));
    Files.move(garage.job("503"), written.resolve("503.yaml"));
    for (String command : List.of("sheets", "day")) {
      Garage.Run run = garage.run(command, garage.root.resolve("2026-04-09").toString());
      assertEquals(Exit.PROBLEMS, run.exit(), run.out() + run.err());
      run.says(name + ":1:1: error: a folder with this name is not read.");
      run.says("Expected: the name 2026-04-09.");
    }
    // The folders of other days say nothing of it: their sheets are all there.
    assertEquals(Exit.DONE, garage.sheets().exit());
  }

  @Test
  void anotherDayIsNoSpellingOfThisOne() throws IOException {
    Garage garage = Garage.in(folder);
    Path written = Files.createDirectory(garage.root.resolve("2026-09-04"));
    Files.move(garage.job("503"), written.resolve("503.yaml"));
    Garage.Run run = garage.run("sheets", garage.root.resolve("2026-04-09").toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
  }

  @Test
  void aTextThatASignCutsIsWarnedOf() {
    Garage garage = Garage.in(folder);
    garage.change(JOBS + "501.yaml", "customer: D. Nettlefold", "customer: Bolt #3 is cracked");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says(JOBS + "501.yaml:2:16: warning: the text ends before this #");
  }
}
