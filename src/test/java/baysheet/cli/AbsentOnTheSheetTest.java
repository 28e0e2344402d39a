package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.MadeSheet;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.wording.Printed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the book says that a vehicle does not have stands nowhere on its sheet. */
class AbsentOnTheSheetTest {
  private static final String BOOK = "vehicles/larkfell-pipit-2015.yaml";

  @TempDir private Path folder;

  /** The steps of all sheets of a job. */
  private static List<Sheet.SheetStep> steps(List<MadeSheet> made) {
    return made.stream().flatMap(it -> it.sheet().steps().stream()).toList();
  }

  private static List<TorqueLine> rows(List<MadeSheet> made) {
    return made.stream().flatMap(it -> it.sheet().torque().stream()).toList();
  }

  private static boolean named(List<MadeSheet> made, String item) {
    return steps(made).stream()
        .anyMatch(
            step -> (step.undo() + " " + step.doUp() + " " + step.disturb()).contains(item + "@"));
  }

  /** Front discs: the screw's step is also the disc's, so it stays and says so. */
  @Test
  void aScrewThatThereIsNotHasNoRowAndNoStepOfItsOwn() {
    CopyOfTheDemo demo = CopyOfTheDemo.in(folder);
    assertTrue(named(demo.made("2401"), "disc-screw"));
    int rows = rows(demo.made("2401")).size();
    demo.replacing(BOOK, "    disc-screw:", "    # disc-screw:")
        .replacing(BOOK, "  front-wheels:\n", "  front-wheels:\n    absent: [disc-screw]\n");
    List<MadeSheet> made = demo.made("2401");
    assertFalse(named(made, "disc-screw"));
    assertEquals(rows - 1, rows(made).size());
    assertTrue(rows(made).stream().noneMatch(line -> line.fastener().equals("disc-screw")));
    assertTrue(named(made, "brake-disc"), "the disc still comes off");
    assertTrue(
        steps(made).stream().noneMatch(step -> Printed.text(step).contains("locating screw")));
  }

  /**
   * An access of which nothing is left: what was behind it is reached all the same. No book needs
   * to say that there are no screws where there is no tray.
   */
  @ParameterizedTest
  @ValueSource(strings = {"[undertray]", "[undertray, undertray-screw]"})
  void aTrayThatThereIsNotIsNeitherTakenOffNorLookedAt(String absent) {
    CopyOfTheDemo demo = CopyOfTheDemo.in(folder);
    List<MadeSheet> before = demo.made("2404");
    assertTrue(named(before, "undertray"));
    assertTrue(checks(before).contains("panels-tight"));
    String book = "vehicles/" + before.get(0).sheet().heading().vehicle().book() + ".yaml";
    demo.replacing(book, "    undertray-screw:", "    absent: " + absent + "\n    # was:");
    List<MadeSheet> made = demo.made("2404");
    assertFalse(named(made, "undertray"));
    assertFalse(named(made, "undertray-screw"));
    assertFalse(checks(made).contains("panels-tight"));
    assertTrue(steps(made).stream().noneMatch(step -> step.procedure().equals("undertray")));
    assertTrue(named(made, "on-its-wheels"), "it is raised all the same");
  }

  /** A tray that is held by clips has no screws and comes off all the same. */
  @Test
  void aTrayWithoutScrewsIsTakenOff() {
    CopyOfTheDemo demo = CopyOfTheDemo.in(folder);
    demo.replacing(
        "vehicles/larkfell-pipit-2015.yaml",
        "    undertray-screw:",
        "    absent: [undertray-screw]\n    # was:");
    assertTrue(named(demo.made("2404"), "undertray"));
  }

  private static List<String> checks(List<MadeSheet> made) {
    return made.stream().flatMap(it -> it.sheet().checks().stream()).map(CheckLine::name).toList();
  }
}
