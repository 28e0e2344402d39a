package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import baysheet.files.YamlFiles;
import baysheet.output.Exit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be named on the command line, and that one bad name does not stop the others. */
class NamedPathsTest {
  private static final Set<String> WHOLE_DAY =
      Set.of(
          "2026-04-07/501.pdf", "2026-04-07/502.pdf", "2026-04-07/503.pdf", "2026-04-07/all.pdf");

  /** On Linux a regular file whose first bytes nobody can read, whoever one is. */
  private static final Path UNREADABLE = Path.of("/proc/self/mem");

  @TempDir private Path folder;
  private final List<Path> links = new ArrayList<>();
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  @AfterEach
  void removeLinks() throws IOException {
    for (Path link : links) {
      Files.delete(link);
    }
  }

  private void makeUnreadable(Path file) throws IOException {
    assumeTrue(Files.exists(UNREADABLE));
    links.add(Files.createSymbolicLink(file, UNREADABLE));
  }

  @Test
  void aPathThatDoesNotExistDoesNotStopTheOthers() {
    Garage.Run run = garage.sheets(garage.root.resolve("2026-04-07/999.yaml").toString());
    assertEquals(Exit.FILES, run.exit());
    run.says("2026-04-07/999.yaml");
    assertEquals(WHOLE_DAY, garage.written().keySet());
    assertFalse(run.err().contains("Exception"), run.err());
  }

  @Test
  void aMisspeltJobIsAnsweredWithTheNearest() {
    Garage.Run run = garage.run("sheets", garage.root.resolve("2026-04-07/50l.yaml").toString());
    assertEquals(Exit.FILES, run.exit());
    run.says("501.yaml");
  }

  @Test
  void aJobNamedWithoutItsEndingIsAnsweredWithItsFile() {
    Garage.Run run = garage.run("sheets", garage.root.resolve("2026-04-07/501").toString());
    assertEquals(Exit.FILES, run.exit());
    run.says("Did you mean 2026-04-07/501.yaml?");
  }

  /** The shop here is the demo's, which is found from the project's root. */
  @Test
  void aJobIsFoundByItsNumberAlone() {
    Garage.Run run = garage.run("sheets", "2407", "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit());
    run.says("OUT/2026-03-02/2407.pdf");
  }

  @Test
  void theProblemsOfOthersAreCheckedWhereAPathDoesNotExist() {
    garage.change("2026-04-07/501.yaml", "bay: 2", "bay: 22");
    Garage.Run run =
        garage.run("check", "--json", folder.resolve("nowhere").toString(), garage.root.toString());
    assertEquals(Exit.FILES, run.exit());
    assertTrue(run.out().contains("unknown-bay"), run.out());
    assertTrue(run.out().contains("nowhere"), run.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"vehicles/broken.yaml", "procedures/broken.yaml"})
  void anUnreadableFileThatNoJobUsesStopsNoSheet(String file) throws IOException {
    makeUnreadable(garage.root.resolve(file));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.FILES, run.exit());
    run.says(file);
    assertEquals(WHOLE_DAY, garage.written().keySet());
    assertFalse(run.err().contains("Exception"), run.err());
    assertEquals(Exit.FILES, garage.run("check", garage.root.toString()).exit());
  }

  @Test
  void anUnreadableJobStopsNoOther() throws IOException {
    makeUnreadable(garage.job("504"));
    Garage.Run run = garage.sheets();
    assertEquals(Exit.FILES, run.exit());
    run.says("2026-04-07/504.yaml");
    run.says("3 of 4 sheets were written");
    assertEquals(WHOLE_DAY, garage.written().keySet());
  }

  @Test
  void anUnreadableShopFileStopsNoOtherShop() throws IOException {
    Garage other = Garage.in(folder.resolve("other"));
    Files.delete(other.root.resolve("shop.yaml"));
    makeUnreadable(other.root.resolve("shop.yaml"));
    Garage.Run run =
        garage.run(
            "sheets",
            other.job("501").toString(),
            garage.root.resolve(Garage.DAY).toString(),
            "-o",
            garage.out.toString());
    assertEquals(Exit.FILES, run.exit());
    assertEquals(WHOLE_DAY, garage.written().keySet());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "shop.yaml", "procedures", "vehicles", "vehicles/hollin-wren-2014.yaml"})
  void whatIsNoDayIsAnsweredWithWhatToGive(String inTheShop) {
    Path path = garage.root.resolve(inTheShop);
    assertTrue(Files.exists(path), path.toString());
    Garage.Run run =
        garage.run("sheets", path.toString(), garage.job("502").toString(), "-o", garage.out + "");
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("2026-04-07");
    run.says("baysheet help not-a-day");
    assertEquals(1, run.err().lines().filter(line -> line.contains(": error")).count(), run.err());
    assertEquals(Set.of("2026-04-07/502.pdf"), garage.written().keySet());
  }

  @Test
  void aRunOfNothingDoesNotSayThatAllWasWritten() {
    Garage.Run run = garage.run("sheets", garage.root.resolve("procedures").toString());
    assertFalse(run.err().contains("all 0"), run.err());
    run.says("no sheet was written");
  }

  @Test
  void oneSheetIsNotAllOneSheets() {
    garage.change("2026-04-07/501.yaml", "bay: 2", "bay: 2\nwaive: {no-such-caution: T1}");
    Garage.Run run =
        garage.run("sheets", garage.job("501").toString(), "-o", garage.out.toString());
    assertFalse((run.out() + run.err()).contains("1 sheets were"), run.err());
  }

  @Test
  void anUnplannedDayIsNoFault() {
    // As a nightly job writes it: the day by its name, on a Sunday.
    String sunday = garage.root.resolve("2026-04-12").toString();
    Garage.Run run = garage.run("sheets", sunday, "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("no jobs are planned for 2026-04-12");
    assertEquals("", run.err());
    assertFalse(Files.exists(garage.out));
  }

  @Test
  void aDayFolderWithoutJobsIsAnUnplannedDay() throws IOException {
    Path empty = Files.createDirectories(garage.root.resolve("2026-04-08"));
    Garage.Run run = garage.run("sheets", empty.toString(), "-o", garage.out.toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("no jobs are planned for 2026-04-08");
  }

  @Test
  void anUnplannedDayBesideAPlannedOneStopsNothing() {
    Garage.Run run = garage.sheets(garage.root.resolve("2026-04-12").toString());
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("no jobs are planned for 2026-04-12");
    assertEquals(WHOLE_DAY, garage.written().keySet());
  }

  @Test
  void aDayOutsideAShopOrMisspeltIsNotUnplanned() {
    for (String path : List.of("nowhere/2026-04-12", "shop/2026-4-12", "shop/2026-02-30")) {
      Garage.Run run = garage.run("sheets", folder.resolve(path).toString());
      assertEquals(Exit.FILES, run.exit(), path);
    }
  }

  @Test
  void theFolderOfSheetsIsNoDay() throws IOException {
    String out = garage.root.resolve("out").toString();
    String day = garage.root.resolve(Garage.DAY).toString();
    assertEquals(Exit.DONE, garage.run("sheets", day, "-o", out).exit());
    Garage.Run check = garage.run("check", garage.root.toString());
    assertEquals(Exit.DONE, check.exit(), check.err());
    Garage.Run run = garage.run("sheets", out + "/" + Garage.DAY, "-o", out);
    assertEquals(Exit.PROBLEMS, run.exit());
    run.reports("out/2026-04-07:1:1", "no-jobs");
    assertTrue(Files.exists(Path.of(out, Garage.DAY, "501.pdf")));
  }

  @Test
  void anotherFolderOfTheSameNameWithdrawsNothing() throws IOException {
    garage.sheets();
    garage.write(
        "archive/2026-04-07/499.yaml",
        Files.readString(garage.job("502")).replace("job: 502", "job: 499"));
    Garage.Run run =
        garage.run("sheets", garage.root.resolve("archive/2026-04-07") + "", "-o", garage.out + "");
    assertEquals(Exit.DONE, run.exit(), run.err());
    assertTrue(
        garage.written().keySet().containsAll(Set.of("2026-04-07/499.pdf", "2026-04-07/501.pdf")));
    assertFalse(run.out().contains("withdrawn"), run.out());
  }

  /** A message must not begin with nothing. */
  @Test
  void theFolderInWhichOneStandsIsShownAsAPoint() {
    assertEquals(".", YamlFiles.shown(Path.of("")));
    assertEquals(".", YamlFiles.shown(Path.of(".")));
    assertEquals("jobs", YamlFiles.shown(Path.of("./jobs")));
  }
}
