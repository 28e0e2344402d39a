package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import baysheet.report.ProblemCode;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong in one job is reported with its place, and keeps no other job from its sheet. */
class FaultyFilesTest {
  private static final String JOB = "2026-04-07/501.yaml";

  @TempDir private Path folder;

  /**
   * A way to spoil job 501.
   *
   * @param where file, line and column, counted by hand in what {@code spoil} leaves behind
   */
  record Fault(String code, String where, Consumer<Garage> spoil) {
    @Override
    public String toString() {
      return code + " at " + where;
    }
  }

  static List<Fault> faults() {
    return List.of(
        changed("unknown-book", "3:17", "book: hollin-wren-2014", "book: hollin-wren-2041"),
        changed("unknown-key", "2:1", "customer:", "custommer:"),
        changed("bad-quantity", "3:63", "90110 km", "90110"),
        changed("tab-indent", "4:1", "bay: 2", "\tbay: 2"),
        changed("duplicate-key", "5:1", "bay: 2", "bay: 2\nbay: 1"),
        changed("unknown-bay", "4:6", "bay: 2", "bay: 22"),
        changed("unknown-person", "5:5", "by: T1", "by: T7"),
        changed("apprentice-alone", "5:5", "by: T1", "by: A1"),
        changed("unknown-procedure", "7:5", "link at", "lnik at"),
        changed("unknown-place", "7:5", "front-left", "front-lefft"),
        changed("no-work", "6:1", "  - link at front-left", ""),
        changed("no-glyph", "2:11", "D. Nettlefold", "D. Nettlefold \uD83D\uDE97"),
        changed(
            "unknown-fastener",
            "9:3",
            "front-left\n",
            "front-left\noverride:\n  link-uper-nut at front-left: {torque: 46 N·m, source: me}\n"),
        changed(
            "override-unused",
            "9:3",
            "front-left\n",
            "front-left\noverride:\n  wheel-nut at rear-left: {torque: 46 N·m, source: me}\n"),
        changed(
            "alias-not-allowed",
            "2:11",
            "D. Nettlefold",
            "&a [x, x]\nb: &b [*a, *a, *a]\nc: &c [*b, *b, *b]\nd: [*c, *c, *c]"),
        new Fault("access-loop", "procedures/skirt.yaml:4:10", FaultyFilesTest::loop),
        new Fault("too-large", JOB + ":1:1", FaultyFilesTest::sparse),
        new Fault("bad-quantity", "vehicles/dove.yaml:3:12", FaultyFilesTest::faultyBook));
  }

  private static Fault changed(String code, String at, String what, String with) {
    return new Fault(code, JOB + ":" + at, garage -> garage.change(JOB, what, with));
  }

  private static void loop(Garage garage) {
    String words = "at: vehicle\nopen: []\nwork: [{do: Look, takes: 1 min}]\nclose: []\n";
    garage.write(
        "procedures/skirt.yaml",
        "procedure: skirt\ntitle: Skirt\n# comes off behind the flap\nbehind: [flap]\n" + words);
    garage.write("procedures/flap.yaml", "procedure: flap\ntitle: Flap\nbehind: [skirt]\n" + words);
    garage.change(JOB, "link at front-left", "flap at vehicle");
  }

  /** A hundred megabytes that take no room on the disk. */
  private static void sparse(Garage garage) {
    try (RandomAccessFile file = new RandomAccessFile(garage.job("501").toFile(), "rw")) {
      file.setLength(100L << 20);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot stretch the job", e);
    }
  }

  /** A book with an error is no book to work by. */
  private static void faultyBook(Garage garage) {
    garage.write("vehicles/dove.yaml", "vehicle: dove\nname: Dove\nkerb-mass: 1100\n");
    garage.change(JOB, "hollin-wren-2014", "dove");
  }

  @ParameterizedTest
  @MethodSource("faults")
  void aFaultyJobIsReportedWithItsPlaceAndTheOthersAreMade(Fault fault) {
    Garage garage = Garage.in(folder);
    fault.spoil().accept(garage);
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.reports(fault.where(), fault.code());
    assertEquals(
        Set.of("2026-04-07/502.pdf", "2026-04-07/503.pdf", "2026-04-07/all.pdf"),
        garage.written().keySet());
    run.says("2 of 3 sheets were written; 1 job has no sheet");
    run.says("all  2 of 3 sheets in bay order");
    assertEquals(2, Paper.of(Garage.bytes(garage.made("all.pdf"))).pages());
    assertFalse(run.err().contains("\tat "), run.err());
    assertTrue(ProblemCode.of(fault.code()).isPresent());
  }

  @Test
  void anErrorInABookIsReportedThereAndNotAgainAtItsJobs() {
    Garage garage = Garage.in(folder);
    faultyBook(garage);
    Garage.Run run = garage.sheets();
    run.reports("vehicles/dove.yaml:3:12", "bad-quantity");
    run.says("has no unit");
    run.says(" in 1 file: 2 of 3 sheets");
  }

  /** The file with an error has nothing to do with the name, so the name is reported too. */
  @Test
  void anUnknownProcedureIsReportedBesideAProcedureWithErrors() {
    Garage garage = Garage.in(folder);
    garage.change("procedures/wheel-check.yaml", "takes: 2 min", "takes: 2");
    garage.change(JOB, "link at front-left", "upholstery at front-left");
    Garage.Run run = garage.sheets();
    run.reports(JOB + ":7:5", "unknown-procedure");
    run.says("there is no procedure \"upholstery\"");
  }

  /** A name in another procedure is reported, and one that the faulty file has is not. */
  @Test
  void anUnknownAccessIsReportedBesideAProcedureWithErrors() {
    Garage garage = Garage.in(folder);
    garage.change("procedures/wheel-check.yaml", "takes: 2 min", "takes: 2");
    garage.change(
        "procedures/link.yaml", "behind: [wheel-off]", "behind: [wheel-off]\nafter: [quilting]");
    garage.sheets().says("there is no procedure \"quilting\"");
    garage.change("procedures/link.yaml", "quilting", "cushions");
    garage.change("procedures/wheel-check.yaml", "at: wheel", "serves: cushions\nat: wheel");
    Garage.Run run = garage.sheets();
    assertFalse(run.err().contains("there is no procedure"), run.err());
    assertFalse(run.err().contains("no-access"), run.err());
  }

  @Test
  void aFaultyShopFileLeavesEverySheet() {
    Garage garage = Garage.in(folder);
    garage.change("shop.yaml", "rated: 3200 kg", "rated: 3200");
    Garage.Run run = garage.sheets();
    assertEquals(Exit.PROBLEMS, run.exit());
    run.says("0 of 3 sheets were written");
    assertEquals(Set.of(), garage.written().keySet());
  }

  @Test
  void everyFaultOfAFileIsReportedInOneRun() {
    Garage garage = Garage.in(folder);
    garage.change(JOB, "customer:", "custommer:");
    garage.change(JOB, "bay: 2", "bay: 22");
    garage.change(JOB, "by: T1", "buy: T1");
    Garage.Run run = garage.sheets();
    run.reports(JOB + ":2:1", "unknown-key");
    run.reports(JOB + ":5:1", "unknown-key");
  }

  @Test
  void aPlateWithLeadingZerosStaysAsItIs() {
    Garage garage = Garage.in(folder);
    garage.change(JOB, "plate: HW 14-501", "plate: 0012");
    garage.sheets();
    assertTrue(Paper.of(Garage.bytes(garage.made("501.pdf"))).text().contains(" 0012 "));
  }

  /**
   * What check refuses in a book or a procedure that a job uses, sheets refuses as well. The van's
   * book would print the figure of the book that it is like.
   */
  @ParameterizedTest
  @CsvSource({
    "vehicles/hollin-wren-van-2016.yaml, wheel-nut:, wheel-nutt:, 9:5, missing-key",
    "vehicles/hollin-wren-2014.yaml, 'traits: [', 'traits: [abss, ', 7:10, unknown-trait",
    "vehicles/hollin-wren-2014.yaml, 'traits: [', 'checked: {by: T11, on: 2026-01-02}\n"
        + "traits: [', 7:15, unknown-person",
  })
  void whatIsWrongInABookThatAJobUsesLeavesItWithoutSheet(
      String file, String what, String with, String at, String code) {
    Garage garage = Garage.in(folder);
    garage.change(JOB, "book: hollin-wren-2014", "book: hollin-wren-van-2016");
    garage.change(file, what, with);
    Garage.Run run = garage.sheets(garage.job("501").toString());
    assertEquals(Exit.PROBLEMS, run.exit(), run.err());
    run.reports(file + ":" + at, code);
    assertFalse(garage.written().containsKey("2026-04-07/501.pdf"));
    assertTrue(garage.run("check", garage.root.toString()).err().contains(file + ":" + at));
  }

  @Test
  void whatIsWrongInAProcedureThatNoJobUsesKeepsNoSheet() {
    Garage garage = Garage.in(folder);
    garage.write(
        "procedures/spare.yaml",
        "procedure: spare\ntitle: Spare\nat: vehicle\nwork: [{do: Look, hazards: [no-such]}]\n");
    assertEquals(Exit.DONE, garage.sheets(garage.job("501").toString()).exit());
    assertEquals(Exit.PROBLEMS, garage.run("check", garage.root.toString()).exit());
  }
}
