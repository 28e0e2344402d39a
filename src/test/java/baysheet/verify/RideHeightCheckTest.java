package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Lists;
import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What may not be otherwise when a bolt is tightened with the vehicle on blocks. */
class RideHeightCheckTest {
  private static final SmallShop SHOP = shop();

  private static SmallShop shop() {
    String bolt =
        ": {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100 N·m,"
            + " final: ride-height}";
    SmallShop bolted = SmallShop.bolted("deep-bolt" + bolt, "arm-bolt" + bolt);
    return new SmallShop(
            bolted
                .texts()
                .replacing(
                    "shop.yaml", "bays:\n", "bays:\n  scissors: {lift: scissor, rated: 3000 kg}\n"))
        .with(
            "catalogue/more.yaml",
            """
            items:
              arm-bolt: {name: arm bolt, kinds: [fastener]}
              motor: {name: motor, kinds: [electric-parking-brake]}
              cable: {name: cable, kinds: [parking-brake]}
            """)
        .procedure(
            "bush",
            """
            at: wheel
            behind: [roller-off]
            open:
              - {do: Measure the height, measure: height}
              - {do: Remove the deep bolt, undo: deep-bolt}
              - {do: Remove the arm bolt, undo: arm-bolt}
            """)
        .procedure(
            "looked", "at: wheel\nbehind: [roller-off]\nopen: [{do: Measure it, measure: gap}]")
        .procedure("unmeasured", "at: wheel\nbehind: [roller-off]", "Bolt out", "deep-bolt")
        .procedure(
            "service",
            "at: vehicle\nopen: [{do: Wind it back, disturb: motor, back: Wind it on,"
                + " moment: before-lifting}]")
        .procedure(
            "lever",
            "at: vehicle\nopen: [{do: Free the brake, disturb: cable, back: Apply the brake,"
                + " moment: before-lifting}]\nclose: [{do: Apply it, ends: cable}]")
        .procedure(
            "slack",
            "at: vehicle\nopen: [{do: Look at the brake, ends: cable, moment: before-lifting},"
                + " {do: Slacken it, slacken: cable, moment: before-lifting}]")
        .procedure(
            "cable-off", "at: vehicle\nbehind: [raise]\nopen: [{do: Cable off, undo: cable}]");
  }

  private static List<String> faults(Sheet sheet, Resolved resolved) {
    return RideHeightCheck.faults(sheet, new SheetIndex(sheet), resolved);
  }

  private static List<String> faults(SmallShop shop, UnaryOperator<List<Sheet.SheetStep>> change) {
    Sheet sheet = shop.sheet();
    assertEquals(List.of(), faults(sheet, shop.resolved()));
    return faults(
        AlteredSheets.inOrder(sheet, change.apply(new ArrayList<>(sheet.steps()))),
        shop.resolved());
  }

  private static int at(List<Sheet.SheetStep> steps, String id) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).source().id().equals(id)) {
        return i;
      }
    }
    throw new AssertionError(id + " in " + ids(steps));
  }

  private static List<String> ids(List<Sheet.SheetStep> steps) {
    return steps.stream().map(it -> it.source().id()).toList();
  }

  private static List<String> blocks(Sheet sheet) {
    return ids(sheet.steps()).stream()
        .filter(it -> it.startsWith("blocks/") && !it.startsWith("blocks/measure/"))
        .toList();
  }

  private static final String AROUND = "blocks do not go under, and out, around ride height";

  /** On the jack, on a lift with arms and on one without, no part is left out or out of turn. */
  @ParameterizedTest
  @ValueSource(strings = {"floor", "hoist", "scissors"})
  void everyPartOfGoingOnBlocksAndOffThemIsThereInItsTurn(String bay) {
    SmallShop shop = SHOP.job(bay, "bush at front-left");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = sheet.steps();
    Resolved resolved = shop.resolved();
    assertEquals(List.of(), faults(sheet, resolved));
    List<String> parts = blocks(sheet);
    assertEquals(bay.equals("hoist"), parts.contains("blocks/arm-locks"));
    assertEquals(bay.equals("hoist"), parts.contains("blocks/arm-locks-to-leave"));
    for (int i = 0; i < parts.size(); i++) {
      int at = at(steps, parts.get(i));
      assertEquals(
          List.of(AROUND),
          faults(AlteredSheets.inOrder(sheet, Lists.without(steps, at)), resolved),
          "without " + parts.get(i));
      if (i > 0) {
        List<Sheet.SheetStep> swapped = new ArrayList<>(steps);
        Collections.swap(swapped, at(steps, parts.get(i - 1)), at);
        assertTrue(
            faults(AlteredSheets.inOrder(sheet, swapped), resolved).contains(AROUND),
            parts.get(i) + " too early");
      }
    }
  }

  @Test
  void noBlockIsTakenOutBetweenTwoBolts() {
    assertEquals(
        List.of(AROUND),
        faults(
            SHOP.job("floor", "bush at front-left"),
            steps -> {
              Sheet.SheetStep off = steps.remove(at(steps, "blocks/raise-axle-off/rear"));
              steps.add(at(steps, "final-torque/deep-bolt"), off);
              return steps;
            }));
    assertEquals(
        List.of(AROUND),
        faults(
            SHOP.job("floor", "bush at front-left"),
            steps -> {
              Sheet.SheetStep again = steps.get(at(steps, "blocks/settle"));
              steps.add(at(steps, "final-torque/deep-bolt"), again);
              return steps;
            }));
  }

  @Test
  void withoutABoltThatIsTightenedAtRideHeightNothingIsAsked() {
    SmallShop shop = SHOP.job("floor", "cable-off at vehicle");
    assertEquals(List.of(), blocks(shop.sheet()));
    assertEquals(List.of(), faults(shop, steps -> steps));
  }

  @Test
  void somebodyLooksAtEachBoltWhileItIsReached() {
    SmallShop shop = SHOP.job("hoist", "bush at front-left");
    for (String bolt : List.of("final-torque/deep-bolt", "final-torque/arm-bolt")) {
      int step = at(shop.sheet().steps(), bolt);
      assertEquals(
          List.of("nobody looks at step " + (step + 1) + " while it is reached"),
          faults(
              shop,
              steps -> {
                steps.set(step, Altered.with(steps.get(step), "hold", false));
                return steps;
              }));
    }
  }

  /** The suspension has to settle first, or the second figure is another one. */
  @Test
  void theHeightIsMeasuredAgainOnceTheVehicleHasSettled() {
    SmallShop shop = SHOP.job("hoist", "bush at front-left", "unmeasured at rear-left");
    String fault = "the height at front-left is not measured again before its torque";
    String measure = "blocks/measure/front-left";
    assertTrue(
        faults(
                shop,
                steps -> {
                  steps.remove(at(steps, measure));
                  return steps;
                })
            .contains(fault));
    assertTrue(
        faults(
                shop,
                steps -> {
                  Sheet.SheetStep step = steps.remove(at(steps, measure));
                  steps.add(at(steps, "blocks/tyres-on"), step);
                  return steps;
                })
            .contains(fault));
    assertTrue(!ids(shop.sheet().steps()).contains("blocks/measure/rear-left"));
  }

  /** In service mode its motor has let the parking brake go, and nobody may work it. */
  @Test
  void nobodyAppliesAnElectricBrakeInServiceMode() {
    SmallShop service = SHOP.job("floor", "service at vehicle", "bush at front-left");
    for (String part : List.of("apply-brake", "let-roll", "hold-still")) {
      assertTrue(!blocks(service.sheet()).contains("blocks/" + part));
      Sheet.SheetStep brake = part(SHOP.job("floor", "bush at front-left"), part);
      assertEquals(
          List.of(AROUND),
          faults(
              service,
              steps -> {
                steps.add(at(steps, "blocks/raise-axle/front"), brake);
                return steps;
              }));
    }
  }

  private static Sheet.SheetStep part(SmallShop shop, String part) {
    List<Sheet.SheetStep> steps = shop.sheet().steps();
    return steps.get(at(steps, "blocks/" + part));
  }

  /** A brake that is on since the beginning, or since a step set it right, is not applied anew. */
  @Test
  void theBrakeIsAppliedWhereNoStepHasAppliedItOrAnotherHasFreedIt() {
    assertApplied(true, "floor", "bush at front-left");
    assertApplied(false, "hoist", "bush at front-left");
    assertApplied(true, "hoist", "cable-off at vehicle", "bush at front-left");
    assertApplied(false, "floor", "lever at vehicle", "bush at front-left");
    assertApplied(true, "floor", "slack at vehicle", "bush at front-left");
  }

  private static void assertApplied(boolean applied, String bay, String... works) {
    SmallShop shop = SHOP.job(bay, works);
    assertEquals(applied, blocks(shop.sheet()).contains("blocks/apply-brake"), bay);
    Sheet.SheetStep brake = part(SHOP.job("floor", "bush at front-left"), "apply-brake");
    List<String> faults =
        faults(
            shop,
            steps -> {
              int first = at(steps, blocks(shop.sheet()).get(0));
              if (applied) {
                steps.remove(first);
              } else {
                steps.add(first, brake);
              }
              return steps;
            });
    assertEquals(List.of(AROUND), faults, bay + List.of(works));
  }

  /** Another wheel's bolt was not measured for, and is tightened as it is. */
  @Test
  void onlyAHeightThatWasMeasuredIsMeasuredAgain() {
    SmallShop shop = SHOP.job("hoist", "unmeasured at front-left", "looked at front-left");
    List<String> ids = ids(shop.sheet().steps());
    assertTrue(ids.stream().noneMatch(it -> it.startsWith("blocks/measure")), ids.toString());
    assertEquals(List.of(), faults(shop, steps -> steps));
  }

  /** A bolt that is fitted by hand before is not tightened at ride height then. */
  @Test
  void whatIsFittedWhileRaisedIsNotYetTightened() {
    SmallShop shop = SHOP.job("hoist", "bush at front-left");
    List<Sheet.SheetStep> steps = shop.sheet().steps();
    assertTrue(
        steps.stream()
            .anyMatch(
                it -> it.phase() == Sheet.Phase.CLOSE && !it.hold() && !it.torque().isEmpty()));
    assertEquals(List.of(), faults(shop, it -> it));
  }
}
