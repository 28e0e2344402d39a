package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check} reports and counts what a sheet will warn of. */
class CheckWarningsTest {
  private static final String BOOK = "vehicles/hollin-wren-2014.yaml";

  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  private List<JsonTree> check() {
    Garage.Run run = garage.run("check", garage.root.toString(), "--json");
    assertEquals(Exit.DONE, run.exit(), run.out() + run.err());
    JsonTree told = JsonTree.of(run.out().getBytes(StandardCharsets.UTF_8));
    int counted = Integer.parseInt(told.text("warnings")) + Integer.parseInt(told.text("notes"));
    assertEquals(told.list("problems").size(), counted, run.out());
    return told.list("problems");
  }

  private static List<String> codes(List<JsonTree> problems) {
    return problems.stream().map(it -> it.text("code")).sorted().toList();
  }

  private void assertOnly(String code, String file, String part) {
    List<JsonTree> told =
        check().stream().filter(it -> !it.text("code").equals("to-borrow")).toList();
    assertEquals(List.of(code), codes(told));
    assertTrue(told.get(0).text("at.file").endsWith(file), told.toString());
    assertTrue(told.get(0).text("what").replace('\u00a0', ' ').contains(part), told.toString());
  }

  @Test
  void aFigureInDoubtIsReportedWhereItStands() {
    garage.change(BOOK, "torque: 33 lbf·ft", "torque: 330 lbf·ft");
    assertOnly("does-not-fit", "hollin-wren-2014.yaml", "is wrong for this thread and class");
  }

  @Test
  void aHighFigureIsReportedOnce() {
    // VDI 2230 at friction 0.20 (from memory): M10, 8.8: 68 N·m; here for a thread of no statement.
    garage.change(BOOK, "torque: 33 lbf·ft, threads: dry", "torque: 68 N·m");
    assertOnly("high-torque", "hollin-wren-2014.yaml", "compare with the source once");
    Garage.Run run = garage.run("check", garage.root.toString());
    run.says(": note: ");
    run.says("1 note in");
  }

  @Test
  void aFigureThatNoBookGivesIsReported() {
    garage.change(BOOK, "torque: 33 lbf·ft", "torque: unknown");
    assertOnly("unknown-torque", "hollin-wren-2014.yaml", "no book gives the torque");
  }

  @Test
  void aLapsedWrenchIsReportedAtTheJob() {
    garage.change(
        "shop.yaml",
        "length: 520 mm, calibrated: 2025-12-01",
        "length: 520 mm, calibrated: 2024-12-01");
    List<JsonTree> told = check();
    assertTrue(codes(told).contains("wrench"), told.toString());
    JsonTree wrench =
        told.stream().filter(it -> it.text("code").equals("wrench")).findFirst().orElseThrow();
    assertTrue(wrench.text("what").contains("calibration overdue"), told.toString());
    assertTrue(wrench.text("at.file").contains(Garage.DAY), told.toString());
  }

  @Test
  void aWrenchCalibratedAfterTheJobsDayHasNotLapsed() {
    garage.change(
        "shop.yaml",
        "length: 520 mm, calibrated: 2025-12-01",
        "length: 520 mm, calibrated: 2026-04-08");
    List<String> told =
        check().stream()
            .filter(it -> it.text("code").equals("wrench"))
            .map(it -> it.text("what"))
            .toList();
    assertTrue(
        told.stream()
            .anyMatch(it -> it.contains("calibrated after this job's date: B2 on 2026-04-08")),
        told.toString());
    assertTrue(told.stream().noneMatch(it -> it.contains("B2 was due")), told.toString());
  }

  @Test
  void nothingToSetItWithIsReported() {
    garage.change(BOOK, "torque: 105 N·m", "torque: 15 N·m");
    garage.change(BOOK, "class: \"10\", head: hex 19 mm", "head: hex 19 mm");
    assertTrue(codes(check()).contains("wrench"));
  }

  @Test
  void aSocketToBorrowIsReported() {
    garage.change(BOOK, "head: hex 15 mm, torque: 33 lbf·ft", "head: hex 46 mm, torque: 33 lbf·ft");
    Garage.Run run = garage.run("check", garage.root.toString());
    assertEquals(Exit.DONE, run.exit());
    run.says("the shop has no hex 46 mm socket, 3/4 in, 6-point: borrow it");
  }

  /** What stands at the rows and in the list of the evening before is all there. */
  @Test
  void nothingThatASheetWarnsOfIsLeftOut() {
    garage.change(BOOK, "torque: 33 lbf·ft", "torque: unknown");
    garage.change(BOOK, "torque: 105 N·m", "torque: 305 N·m");
    garage.change(BOOK, "reach: {length: 60 mm", "reach: {length: 70 mm");
    List<String> told = check().stream().map(it -> it.text("what")).toList();
    assertEquals(Exit.DONE, garage.sheets("--record").exit());
    int warned = 0;
    for (String job : List.of("501", "502", "503")) {
      JsonTree record = JsonTree.of(Garage.bytes(garage.made(job + ".json")));
      for (JsonTree line : record.list("torque")) {
        for (JsonTree warning : line.list("warnings")) {
          warned++;
          // What other units would give stands apart in a problem.
          String text = warning.text("text").replace('\u00a0', ' ').split(", check value")[0];
          assertTrue(told.stream().anyMatch(it -> it.endsWith(text)), told + text);
        }
      }
      for (JsonTree tool : record.list("tools")) {
        warned += tool.text("owned").equals("true") ? 0 : 1;
        assertEquals(
            tool.text("owned").equals("false"),
            told.contains("the shop has no " + tool.text("name") + ": borrow it"));
      }
    }
    assertTrue(warned >= 4, warned + " warnings");
  }

  @Test
  void warningsDoNotFailTheRun() {
    garage.change(BOOK, "torque: 33 lbf·ft", "torque: unknown");
    Garage.Run run = garage.run("check", garage.root.toString());
    assertEquals(Exit.DONE, run.exit());
    run.says("3 jobs checked");
    assertFalse(run.err().contains("error"), run.err());
  }
}
