package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.ItemAt;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import baysheet.verify.StageVerifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whether something comes off or is only slackened is said by its key, whatever the words. */
class SlackenedItemsTest {
  private static final String BOOK =
      """
      vehicle: any
      name: Any
      source: Any sheet
      kerb-mass: 1500 kg
      front-share: 55 %
      supports: {front: the notch, rear: the notch}
      fasteners:
        vehicle:
          deep-bolt: {count: 2, thread: M12x1.5, class: "10", head: hex 19 mm, torque: 100 N·m}
      """;

  private static final ItemAt BOLT = new ItemAt("deep-bolt", Place.VEHICLE);
  private static final ItemAt LID = new ItemAt("lid", Place.VEHICLE);

  private static SmallShop shop(String... openings) {
    SmallShop shop = SmallShop.empty().with("vehicles/any.yaml", BOOK);
    List<String> works = new ArrayList<>();
    for (int i = 0; i < openings.length; i++) {
      String text =
          "at: vehicle\nbehind: [raise]\nopen: [%s]\nwork: [{do: Look}, {do: Look again}]";
      shop = shop.procedure("work-" + i, text.formatted(openings[i]));
      works.add("work-" + i + " at vehicle");
    }
    return shop.job("hoist", works.toArray(String[]::new));
  }

  /** The sheets of a job that is divided behind a step. */
  private static List<Sheet> divided(TracedPlan plan, int step) {
    return Division.of(
            plan.stages(),
            2,
            (sheet, room) ->
                sheet.steps().get(0).n() > step
                    || sheet.steps().get(sheet.steps().size() - 1).n() <= step)
        .stages();
  }

  private static TracedPlan traced(SmallShop shop) {
    return Planner.traced(shop.resolved(), new Problems()).orElseThrow();
  }

  private static VehicleState behind(SmallShop shop, int step) {
    VehicleState state =
        divided(traced(shop), step).stream()
            .flatMap(sheet -> sheet.stage().orElseThrow().leaving().stream())
            .filter(it -> it.after() == step)
            .findFirst()
            .orElseThrow();
    assertEquals(step, state.after());
    return state;
  }

  private static int lookAt(SmallShop shop) {
    return shop.sheet().steps().stream()
        .filter(step -> step.phase() == Sheet.Phase.WORK)
        .findFirst()
        .orElseThrow()
        .n();
  }

  @Test
  void aSlackenedBoltIsInItsThreadWhateverTheSentenceSays() {
    for (String words : List.of("Slacken both bolts", "Turn both bolts back", "Ease both bolts")) {
      SmallShop shop = shop("{do: %s, slacken: deep-bolt}".formatted(words));
      VehicleState state = behind(shop, lookAt(shop));
      assertEquals(List.of(), state.fasteners(), words);
      assertEquals(1, state.loose().size(), words);
    }
  }

  @Test
  void aBoltThatComesOffIsNotInPlaceWhateverTheSentenceSays() {
    for (String words : List.of("Remove both bolts", "Undo both bolts", "Drill both bolts out")) {
      SmallShop shop = shop("{do: %s, undo: deep-bolt}".formatted(words));
      VehicleState state = behind(shop, lookAt(shop));
      assertEquals(1, state.fasteners().size(), words);
      assertEquals(List.of(), state.loose(), words);
    }
  }

  @Test
  void aSlackenedClampIsNotCalledRemoved() {
    SmallShop shop = shop("{do: Slacken the lid, slacken: lid}");
    VehicleState state = behind(shop, lookAt(shop));
    assertEquals(List.of(), state.off());
    assertEquals(List.of("lid"), state.slackened().stream().map(Sheet.TallyLine::item).toList());
  }

  @Test
  void whatIsSlackenedFirstAndTakenOffLaterGoesOnOnce() {
    SmallShop shop =
        shop("{do: Slacken the bolts, slacken: deep-bolt}, {do: Remove them, undo: deep-bolt}");
    Sheet sheet = shop.sheet();
    assertEquals(1, sheet.steps().stream().filter(it -> it.undo().contains(BOLT)).count());
    assertEquals(1, sheet.steps().stream().filter(it -> it.doUp().contains(BOLT)).count());
    assertEquals(1, behind(shop, lookAt(shop)).fasteners().size());
  }

  @Test
  void whatOneWorkSlackensAndAnotherTakesOffIsTakenOff() {
    SmallShop shop = shop("{do: Slacken it, slacken: lid}", "{do: Remove it, undo: lid}");
    List<SheetStep> steps =
        shop.sheet().steps().stream().filter(it -> it.undo().contains(LID)).toList();
    assertEquals(1, steps.size());
    assertEquals("work-1", steps.get(0).procedure());
    assertFalse(steps.get(0).slacken().contains(LID));
  }

  /** What the planner says is held against the key in the procedure, not against what it says. */
  @Test
  void aStepThatSaysTheOtherThingIsFound() {
    for (String key : List.of("slacken", "undo")) {
      SmallShop shop = shop("{do: Turn it, %s: lid}".formatted(key));
      Sheet sheet = shop.sheet();
      List<Sheet.Section> sections = new ArrayList<>();
      for (Sheet.Section section : sheet.sections()) {
        List<SheetStep> steps =
            section.steps().stream()
                .map(step -> step.undo().contains(LID) ? turned(step) : step)
                .toList();
        sections.add(Altered.with(section, "steps", steps));
      }
      List<String> faults = shop.faults(Altered.with(sheet, "sections", sections));
      assertTrue(faults.stream().anyMatch(it -> it.contains("procedure says otherwise")), key);
    }
  }

  private static SheetStep turned(SheetStep step) {
    List<ItemAt> other = step.slacken().contains(LID) ? List.of() : List.of(LID);
    return Altered.with(step, "actions", Altered.with(step.actions(), "slacken", other));
  }

  @Test
  void aStateThatCallsASlackenedThingRemovedIsFound() {
    SmallShop shop = shop("{do: Slacken the lid, slacken: lid}");
    TracedPlan traced = traced(shop);
    List<Sheet> stages = divided(traced, lookAt(shop));
    assertEquals(2, stages.size());
    VehicleState state = stages.get(0).stage().orElseThrow().leaving().orElseThrow();
    assertEquals(1, state.slackened().size());
    VehicleState removed =
        Altered.with(Altered.with(state, "off", state.slackened()), "slackened", List.<Object>of());
    List<Sheet> wrong =
        List.of(said(stages.get(0), "leaving", removed), said(stages.get(1), "arrival", removed));
    assertEquals(List.of(), StageVerifier.faults(traced.sheet(), stages, shop.resolved()));
    assertFalse(StageVerifier.faults(traced.sheet(), wrong, shop.resolved()).isEmpty());
  }

  private static Sheet said(Sheet sheet, String when, VehicleState state) {
    Stage stage = Altered.with(sheet.stage().orElseThrow(), when, Optional.of(state));
    return Altered.with(sheet, "stage", Optional.of(stage));
  }
}
