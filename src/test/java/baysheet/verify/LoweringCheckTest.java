package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.sheet.DueChecks;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What comes directly before a vehicle is lowered, and directly behind. Common practice. */
class LoweringCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              consequences:
                first: {when: {undo: four}, check: Look first, moment: before-lifting, source: us}
                own-side: {when: {kind: wheel}, check: Look at the roller, moment: before-lowering, source: us}
                bled: {when: {undo: one}, check: Bleed it, moment: raised, step: {height: wheels-clear, while-off: wheel, takes: 1 min}, source: us}
              """)
          .procedure(
              "hoisted",
              "at: vehicle\nserves: raise\nneeds: lift\nopen:\n"
                  + "  - {do: Hoist it, undo: feet}\n"
                  + "close:\n"
                  + "  - {do: Let it down, do-up: feet}\n"
                  + "  - {do: Hold it, moment: on-the-ground}")
          .procedure(
              "bled",
              "at: wheel\n"
                  + "behind: [roller-off]\n"
                  + "open:\n"
                  + "  - {do: Open it, undo: one, height: working}")
          .procedure("open", "at: wheel\nbehind: [raise]", "Open", "three")
          .procedure("looked", "at: wheel\nbehind: [raise]", "Looked at", "four")
          .procedure(
              "jacked",
              """
              at: axle
              serves: raise
              needs: jack
              open:
                - {do: Jack it up, undo: feet}
              close:
                - {do: Let this end down, do-up: feet}
                - {do: Hold this end, moment: on-the-ground}
                - {do: Drive it, moment: before-moving}
              """)
          .procedure("worn", "at: wheel\nbehind: [roller-off]", "Worn", "lid")
          .job("hoist", "bled at front-left");

  private static int at(List<Sheet.SheetStep> steps, String beginning) {
    for (int i = 0; i < steps.size(); i++) {
      if (Printed.text(steps.get(i)).startsWith(beginning)) {
        return i;
      }
    }
    throw new AssertionError("no " + beginning + " in " + steps);
  }

  @Test
  void theVehicleIsHeldBeforeItsWheelsAreTorqued() {
    List<Sheet.SheetStep> steps = SHOP.sheet().steps();
    assertEquals(at(steps, "Let it down") + 1, at(steps, "From the side, chock one rear wheel"));
    assertEquals(at(steps, "Let it down") + 2, at(steps, "Hold it"));
    assertEquals(at(steps, "Hold it") + 1, at(steps, "Torque the roller nut"));
  }

  @Test
  void torquedBeforeItIsHeldIsAFault() {
    Sheet sheet = SHOP.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    Collections.swap(steps, at(steps, "Hold it"), at(steps, "Torque the roller nut"));
    assertTrue(
        SHOP.faults(AlteredSheets.inOrder(sheet, steps)).stream()
            .anyMatch(it -> it.contains("which belongs to lowering")));
  }

  /** Bled with the wheel off, low: what looks at the wheel comes behind, on the way down. */
  @Test
  void aWheelIsLookedAtOnceItIsOn() {
    Sheet sheet = SHOP.sheet();
    List<Sheet.SheetStep> steps = sheet.steps();
    DueChecks due = new DueChecks(sheet.checks(), steps);
    Sheet.SheetStep gate =
        steps.stream().filter(step -> !due.at(step).isEmpty()).findFirst().orElseThrow();
    int on =
        steps.stream()
            .filter(step -> step.doUp().stream().anyMatch(it -> it.item().equals("roller")))
            .mapToInt(Sheet.SheetStep::n)
            .findFirst()
            .orElseThrow();
    assertTrue(gate.n() > on, steps.toString());
  }

  /** What looks at a wheel would look at a hub. */
  @Test
  void nothingGoesOnBehindTheCheckOfItsPlace() {
    Spoiled spoiled = behindTheGate(SHOP, "Refit the roller");
    spoiled.says(
        "check own-side is made at step %d, and roller@front-left goes on only at step %d"
            .formatted(
                spoiled.step("checkpoint/raised").n(), spoiled.step("Refit the roller").n()));
    Spoiled.of(SHOP)
        .behind("Let it down", "Refit the roller")
        .saysNothingOf("check own-side is made");
  }

  @Test
  void somethingGoesOnElsewhereBehindACheck() {
    SmallShop shop = SHOP.job("hoist", "bled at front-left", "open at rear-left");
    behindTheGate(shop, "Refit the three").saysNothingOf("check own-side is made");
  }

  /** The sheet with a step behind the checks before lowering, both numbered as they then stand. */
  private static Spoiled behindTheGate(SmallShop shop, String step) {
    String gate = "checkpoint/raised";
    Spoiled spoiled = Spoiled.of(shop);
    int n = spoiled.step(gate).n();
    return spoiled.behind(gate, step).with(gate, "n", n - 1).with(step, "n", n);
  }

  /** Only what is looked at last must be whole. */
  @Test
  void somethingGoesOnBehindACheckBeforeLifting() {
    SmallShop shop = SHOP.job("hoist", "looked at front-left");
    assertEquals(
        List.of("first"), shop.sheet().checks().stream().map(check -> check.name()).toList());
    Spoiled.of(shop);
  }

  private static final SmallShop ENDS =
      SHOP.job("floor", "worn at front-left", "worn at rear-left");

  @Test
  void eachEndIsHeldBeforeItsWheelsAreTorqued() {
    Spoiled.of(ENDS)
        .before("Hold this end [front]", "Torque the roller nuts [front-left]")
        .says("which belongs to lowering");
    Spoiled rear =
        Spoiled.of(ENDS).before("Hold this end [rear]", "Torque the roller nuts [rear-left]");
    assertEquals(
        1, rear.faults().stream().filter(it -> it.contains("which belongs to lowering")).count());
  }

  /** It is for another time. */
  @Test
  void workOnTheGroundDoesNotBelongToLowering() {
    Spoiled.of(ENDS).before("Hold this end [rear]", "Drive it").says("which belongs to lowering");
    Spoiled.of(ENDS).saysNothingOf("which belongs to lowering");
  }
}
