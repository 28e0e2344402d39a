package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.plan.stage.Division;
import baysheet.plan.stage.Division.Divided;
import baysheet.report.Problems;
import baysheet.resolve.ItemAt;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage.VehicleState;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where small jobs are divided, and what their sheets say of the vehicle in between. */
class RestingPointsTest {
  /** Steps 1 to 3 take lid, one and two off, 4 is the work, 5 to 7 put them back. */
  private static final SmallShop LIDDED =
      SmallShop.empty()
          .procedure("lidded", "at: vehicle", "Lid off", "lid")
          .procedure(
              "inner",
              "at: vehicle\nbehind: [lidded]\nopen: [{do: One off, undo: one}, {do: Two off, undo:"
                  + " two}]\nwork: [{do: Look inside}]")
          .job("floor", "inner at vehicle");

  private static Divided divided(SmallShop shop, int least, int page) {
    return Division.of(
        Planner.traced(shop.resolved(), new Problems()).orElseThrow().stages(),
        least,
        (sheet, room) -> sheet.steps().size() <= page);
  }

  private static List<Integer> steps(Sheet sheet) {
    return sheet.steps().stream().map(Sheet.SheetStep::n).toList();
  }

  private static List<String> off(VehicleState state) {
    return state.off().stream().map(Sheet.TallyLine::item).toList();
  }

  @Test
  void aStageSaysWhatItFindsOffAndListsWhatItPutsBack() {
    List<Sheet> stages = divided(LIDDED, 1, 4).stages();
    assertEquals(2, stages.size());
    assertEquals(List.of(1, 2, 3), steps(stages.get(0)));
    assertEquals(List.of(4, 5, 6, 7), steps(stages.get(1)));
    VehicleState state = stages.get(1).stage().orElseThrow().arrival().orElseThrow();
    assertEquals(List.of("lid", "one", "two"), off(state));
    assertEquals(3, state.after());
    assertEquals(Height.GROUND, state.standing().height());
    assertEquals(List.of(), stages.get(0).tally());
    assertEquals(3, stages.get(1).tally().size());
  }

  /** As few things as can be are off, but no sheet has one step where it need not. */
  @Test
  void aJobThatFitsOnePageIsDividedWhereLittleIsOff() {
    List<Sheet> stages = divided(LIDDED, 2, 100).stages();
    assertEquals(List.of(1, 2), steps(stages.get(0)));
    VehicleState state = stages.get(0).stage().orElseThrow().leaving().orElseThrow();
    assertEquals(List.of("lid", "one"), off(state));
  }

  /** Steps 1 and 2 take nuts and wheel off, 3 is the work, 4 and 5 put them back. */
  @Test
  void aPartNeverStaysOnWithoutItsFasteners() {
    SmallShop rolled =
        SmallShop.empty()
            .with(
                "vehicles/any.yaml",
                """
                vehicle: any
                name: Any
                source: Any sheet
                fasteners:
                  vehicle:
                    roller-nut: {count: 5, thread: M12x1.5, class: "10", head: hex 19 mm, torque: 100 N·m}
                """)
            .procedure(
                "rolled",
                "at: vehicle\nopen: [{do: Nuts off, undo: roller-nut}, {do: Roller off, undo:"
                    + " roller}]\nwork: [{do: Look inside}]")
            .job("floor", "rolled at vehicle");
    for (int least : List.of(2, 3)) {
      for (Sheet stage : divided(rolled, least, 100).stages()) {
        int last = steps(stage).get(stage.steps().size() - 1);
        assertTrue(last != 1 && last != 4, "a stage ends after step " + last);
      }
    }
  }

  @Test
  void workRestsBeforeAPropIsSetRatherThanUnderIt() {
    SmallShop propped =
        SmallShop.empty()
            .procedure("lidded", "at: vehicle", "Lid off", "lid")
            .procedure(
                "inner",
                "at: vehicle\nbehind: [lidded]\nopen: [{do: Two off, undo: two}, {do: Set the stay,"
                    + " undo: stay}, {do: One off, undo: one}]\nwork: [{do: Look inside}]")
            .job("floor", "inner at vehicle");
    for (int page : List.of(100, 7)) {
      VehicleState state =
          divided(propped, 2, page).stages().get(0).stage().orElseThrow().leaving().orElseThrow();
      assertEquals(List.of(), state.held());
    }
    // No page takes all the steps between which the stay is in place.
    List<Sheet> forced = divided(propped, 1, 4).stages();
    assertTrue(
        forced.stream()
            .flatMap(it -> it.stage().orElseThrow().leaving().stream())
            .flatMap(it -> it.held().stream())
            .map(it -> it.item())
            .map(ItemAt::item)
            .anyMatch("stay"::equals),
        forced.toString());
  }

  @Test
  void aWorkThatGoesOnWithoutRestIsNotDivided() {
    SmallShop moving =
        SmallShop.empty()
            .procedure(
                "jacked",
                "at: axle\nserves: raise\nneeds: jack\nopen: [{do: Chock}, {do: Jack, undo: feet},"
                    + " {do: Stands}, {do: Push}]")
            .job("floor", "roller-off at front-left");
    Divided divided = divided(moving, 1, 3);
    assertEquals(List.of(), divided.stages());
    Sheet.Stretch steps = divided.tooLong().orElseThrow().steps().orElseThrow();
    assertTrue(steps.last() - steps.first() >= 3, steps.toString());
  }

  @Test
  void fewSheetsAreAskedWhetherTheyFit() {
    assertTrue(divided(LIDDED, 1, 4).asked() < 20, divided(LIDDED, 1, 4).toString());
  }
}
