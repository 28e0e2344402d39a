package baysheet.cli;

import static baysheet.cli.DemoWork.FOLDER;
import static baysheet.cli.DemoWork.SHOP;
import static baysheet.cli.DemoWork.has;
import static baysheet.cli.DemoWork.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.plan.Planner;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What must come first at the vehicle, and what a person who takes work over must know: common
 * practice of the trade, no source.
 */
class OrderOfWorkTest {
  private static final String PIPIT = "larkfell-pipit-2015";

  private static Sheet demo(String job) {
    return sheet(SHOP, job);
  }

  private static List<String> texts(Sheet sheet) {
    return sheet.steps().stream().map(Printed::text).toList();
  }

  private static int at(Sheet sheet, String beginning) {
    List<String> texts = texts(sheet);
    for (int i = 0; i < texts.size(); i++) {
      if (texts.get(i).startsWith(beginning)) {
        return i;
      }
    }
    throw new AssertionError(beginning + " in " + texts);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2026-03-02/2406.yaml | Press the ball joint out of the clamp       | Tighten the new nut on the joint pin
          2026-03-02/2403.yaml | Tighten the hub bolts                       | Remove the strap from the drive shaft
          2026-03-02/2403.yaml | Clean old threadlock out of the threads     | Refit the brake disc flat
          2026-03-02/2401.yaml | Clean old threadlock out of the threads     | Fit the new brake pads
          2026-03-03/2408.yaml | Clean old threadlock out of the threads     | Fit the new brake pads
          2026-03-03/2410.yaml | Turn the track rod end level                | Tighten the lock nut
          """)
  void whatMustComeFirstDoes(String job, String first, String then) {
    Sheet sheet = demo(job);
    assertTrue(at(sheet, first) < at(sheet, then), texts(sheet).toString());
  }

  /** Neither other work nor a break finds the vehicle on wheels that are loose. */
  @Test
  void wheelNutsAreSlackenedJustBeforeTheVehicleIsRaised() {
    Sheet sheet =
        sheet(
            "kettlow-sledge-2012", "floor", "[discs-and-pads at front-left, alternator at engine]");
    assertEquals(
        at(sheet, "Raise the vehicle") - 1, at(sheet, "With brake or chocks holding the vehicle"));
  }

  /** Shavings of threadlock fall on discs and linings; so the threads are cleaned before those. */
  @Test
  void noProcedureCleansThreadsBelowWhichABrakeIsTogether() {
    List<String> late = new ArrayList<>();
    for (Procedure procedure : FOLDER.procedures().values()) {
      boolean on = false;
      for (Step step : procedure.blocks().close()) {
        on |=
            step.touched().doUp().stream()
                .anyMatch(it -> it.value().matches("brake-(disc|drum|pads|shoes)|caliper.*"));
        if (on && step.text().value().startsWith("Clean old threadlock")) {
          late.add(procedure.name().value());
        }
      }
    }
    assertEquals(List.of(), late);
  }

  /** Off its blocks nobody reaches the fastener, so nobody could look at it later. */
  @ParameterizedTest
  @CsvSource({"2026-03-02/2402.yaml", "2026-03-03/2412.yaml"})
  void aSecondPersonLooksAtWhatIsTorquedAtRideHeight(String job) {
    Sheet sheet = demo(job);
    List<Sheet.SheetStep> last =
        sheet.steps().stream()
            .filter(it -> it.source().id().matches("final-torque/.*(arm|axle).*"))
            .toList();
    assertTrue(!last.isEmpty());
    last.forEach(step -> assertTrue(step.hold(), Printed.text(step)));
  }

  @Test
  void tooMuchOilIsLookedFor() {
    for (String bay : List.of("1", "floor")) {
      Sheet sheet = sheet(PIPIT, bay, "oil-service at engine");
      assertTrue(has(sheet, "oil-level-not-above", Moment.BEFORE_MOVING), bay);
    }
  }

  /** Whoever goes on after a break did not isolate, so nothing is dead for that person. */
  @Test
  void whoeverTakesOverHighVoltageWorkIsToldToProveDeadAgain() {
    assertEquals(List.of(true, true), told("2026-03-03/2413.yaml", 40, "high voltage isolated"));
  }

  /** A shaft that hangs is pulled apart in its inner joint. */
  @Test
  void aShaftInAStrapIsSaid() {
    boolean said = false;
    for (int page = 15; page < 30; page++) {
      said |= told("2026-03-02/2403.yaml", page, "drive shaft supported by a strap").contains(true);
    }
    assertTrue(said);
  }

  /** Of each state on leaving, whether it says something. */
  private static List<Boolean> told(String job, int page, String words) {
    Problems problems = new Problems();
    Resolved resolved = SHOP.resolve(job, problems).orElseThrow();
    return Division.of(
            Planner.traced(resolved, problems).orElseThrow().stages(),
            3,
            (sheet, room) -> sheet.steps().size() <= page)
        .stages()
        .stream()
        .flatMap(stage -> stage.stage().flatMap(Stage::leaving).stream())
        .map(state -> state.toString().contains(words))
        .collect(Collectors.toList());
  }
}
