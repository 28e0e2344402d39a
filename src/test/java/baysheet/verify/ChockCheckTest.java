package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.plan.CaseFolders;
import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Chocks hold the vehicle wherever wheels carry it, whatever raises it. HSE, Working under
 * vehicles: chock the wheels that stay on the ground; the rest is common practice, no source.
 */
class ChockCheckTest {
  /** A garage whose own procedures raise and lower, and say nothing of chocks. */
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}")
          .procedure(
              "jacked",
              "at: axle\nserves: raise\nneeds: jack\nopen:\n"
                  + "  - {do: Jack it up, undo: feet}\n"
                  + "  - {do: Rock it}\n"
                  + "close:\n"
                  + "  - {do: Let it down, do-up: feet}")
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "two")
          .procedure(
              "run",
              "at: vehicle\nbehind: [raise]\nopen:\n"
                  + "  - {do: Open it, undo: three, height: working}\n"
                  + "  - {do: Run it, undo: four, height: ground}");

  private static List<String> moves(SmallShop shop) {
    return shop.steps().stream()
        .map(step -> step.replaceAll(" \\[.*", ""))
        .filter(step -> step.matches("(?i).*(chock|jack it|let it down|hoist|refit the vehicle).*"))
        .toList();
  }

  @Test
  void theAxleThatStaysDownIsChockedWhateverProcedureRaises() {
    assertEquals(
        List.of(
            "Chock both rear wheels in front and behind",
            "Jack it up",
            "Let it down",
            "Chock both front wheels in front and behind",
            "Remove the chocks of the rear wheels",
            "Jack it up",
            "Let it down"),
        moves(SHOP.job("floor", "deep at front-left", "deep at rear-right")));
  }

  /** The last axle that stands keeps its chocks until it is up, too, and has them again at once. */
  @Test
  void bothEndsUpAreHeldWhileOneStandsOnItsWheels() {
    SmallShop shop = SHOP.procedure("below", "at: vehicle\nbehind: [raise]", "Below", "two");
    assertEquals(
        List.of(
            "Chock both rear wheels in front and behind",
            "Jack it up",
            "Jack it up",
            "Remove the chocks of the rear wheels",
            "Let it down",
            "Chock both front wheels in front and behind",
            "Let it down"),
        moves(shop.job("floor", "below at vehicle")));
  }

  @Test
  void aLiftThatComesDownForAStepLeavesTheVehicleChocked() {
    assertEquals(
        List.of(
            "Hoist it",
            "From the side, chock one rear wheel in front and behind at once",
            "From the side, remove every wheel chock from under the vehicle",
            "Refit the vehicle on its wheels",
            "From the side, chock one rear wheel in front and behind at once"),
        moves(SHOP.job("hoist", "run at vehicle")));
  }

  /** A shop with a brake of two parts, and a work that ends with its wheels just clear. */
  private static SmallShop braked(String opening, String closing) {
    return SHOP.with(
            "catalogue/brake.yaml",
            "items:\n"
                + "  lever: {name: lever, kinds: [parking-brake]}\n"
                + "  cable: {name: cable, kinds: [parking-brake]}\n"
                + "  motor: {name: motor, kinds: [electric-parking-brake]}\n")
        .procedure(
            "spin",
            "at: vehicle\nbehind: [raise]\n"
                + "open: [{do: Open it, undo: one, height: working}, "
                + opening
                + "]\nclose:\n"
                + "  - {do: Spin it, do-up: one, height: wheels-clear}\n"
                + closing)
        .job("hoist", "spin at vehicle");
  }

  private static List<String> lowering(SmallShop shop) {
    List<String> ids = shop.sheet().steps().stream().map(step -> step.source().id()).toList();
    return ids.subList(ids.indexOf("spin/close/1") + 1, ids.size());
  }

  /** It is in neutral, or its brake was released, and chocks lie only once it is down. */
  @Test
  void theParkingBrakeHoldsALiftedVehicleBeforeItsWheelsTouch() {
    SmallShop shop = braked("{do: Release it, disturb: lever}", "");
    List<String> down = lowering(shop);
    int brake = down.indexOf("height/wheels-clear/ground/brake");
    assertTrue(brake >= 0 && brake < down.indexOf("hoisted/open/1/back/feet"), down.toString());
    int at = shop.at("From outside the vehicle, apply the parking brake");
    assertFault(shop, steps -> steps.remove(at), "lowers wheels that no parking brake holds");
  }

  @Test
  void aParkingBrakeThatDoesNotHoldIsNotTrusted() {
    String hook = "  - {do: Hook it, do-up: cable, moment: on-the-ground}\n";
    for (SmallShop shop :
        List.of(
            braked("{do: Unhook it, undo: cable}", hook),
            braked("{do: Park it, disturb: motor}", ""))) {
      assertTrue(lowering(shop).stream().noneMatch(id -> id.endsWith("/brake")));
      assertFault(
          shop,
          steps -> {
            StepSource brake =
                new StepSource.HeightChange(
                    Height.WHEELS_CLEAR, Height.GROUND, StepSource.HeightPart.BRAKE);
            int clear = shop.at("Lower the vehicle until its wheels are just clear");
            steps.add(clear + 1, Altered.with(steps.get(clear), "source", brake));
          },
          "applies a parking brake that does not hold");
    }
  }

  private static List<String> ids(SmallShop shop) {
    return shop.sheet().steps().stream().map(step -> step.source().id()).toList();
  }

  /** Nobody releases it before the wheels are down, so it is not applied a second time. */
  @Test
  void theParkingBrakeHoldsAVehicleUntilALiftTakesIt() {
    SmallShop shop = braked("{do: Turn it}", "");
    assertEquals("height/ground/ground/brake", ids(shop).get(0));
    assertTrue(lowering(shop).stream().noneMatch(id -> id.endsWith("/brake")));
    assertFault(shop, steps -> steps.remove(0), "neither its parking brake nor a chock holds");
  }

  /** What goes back on may have any name: that step applies no parking brake. */
  @Test
  void anItemCalledBrakeIsNoParkingBrake() {
    SmallShop shop =
        SHOP.with("catalogue/brake.yaml", "items:\n  brake: {name: shoe, kinds: []}\n")
            .procedure(
                "shoes",
                "at: vehicle\nbehind: [raise]\nopen:\n"
                    + "  - {do: Open it, undo: lid}\n  - {do: Take it out, undo: brake}")
            .job("hoist", "shoes at vehicle");
    List<String> ids = shop.sheet().steps().stream().map(step -> step.source().id()).toList();
    assertTrue(ids.contains("shoes/open/2/back/brake"), ids.toString());
  }

  /** Its own step for that is enough. */
  @Test
  void aProcedureThatAppliesTheParkingBrakeIsTrusted() {
    String applied = "{do: Apply it, ends: lever, moment: before-lifting}";
    SmallShop shop = braked(applied, "");
    assertEquals(List.of("spin/open/2", "hoisted/open/1"), ids(shop).subList(0, 2));
    assertFault(shop, steps -> steps.remove(0), "neither its parking brake nor a chock holds");
  }

  /** A brake that is released or at work, or wheels of it that must turn: chocks elsewhere. */
  @Test
  void chocksHoldAVehicleWhoseParkingBrakeCannot() {
    for (SmallShop shop :
        List.of(
            braked("{do: Release it, disturb: lever}", ""),
            braked("{do: Park it, disturb: motor}", ""),
            SHOP.job("hoist", "deep at rear-left"))) {
      assertEquals("chocks/set/front", ids(shop).get(0));
      assertFault(shop, steps -> steps.remove(0), "neither its parking brake nor a chock holds");
    }
    SmallShop front = SHOP.job("hoist", "deep at front-left");
    assertEquals("height/ground/ground/brake", ids(front).get(0));
    SmallShop rear = SHOP.job("hoist", "deep at rear-left");
    assertFault(
        rear,
        steps -> steps.set(0, front.sheet().steps().get(0)),
        "removes a wheel that the parking brake holds");
  }

  /** What a garage's own raising procedure chocks is not chocked a second time. */
  @Test
  void ownChocksAreTheProceduresOwn() {
    SmallShop shop =
        SHOP.procedure(
                "jacked",
                "at: axle\nserves: raise\nneeds: jack\nopen:\n"
                    + "  - {do: Chock it, uses: [wheel chocks]}\n"
                    + "  - {do: Jack it up, undo: feet}")
            .job("floor", "deep at front-left");
    assertEquals(List.of("Chock it", "Jack it up", "Refit the vehicle on its wheels"), moves(shop));
  }

  /** Wheel nuts are slackened against chocks that are set already. */
  @Test
  void chocksAreSetBeforeAnybodyPullsAtAWheel() {
    SmallShop shop =
        SHOP.procedure(
                "roller-off",
                "at: wheel\nbehind: [raise]\nopen:\n"
                    + "  - {do: Slacken it, slacken: roller-nut, moment: before-lifting}\n"
                    + "  - {do: Nuts off, undo: roller-nut}\n"
                    + "  - {do: Roller off, undo: roller}")
            .job("floor", "deep at front-left");
    shop.assertInOrder("Chock both rear wheels", "Slacken it", "Jack it up");
    assertFault(
        shop,
        steps -> Collections.swap(steps, 0, shop.at("Slacken it")),
        "pulls at a vehicle that no chock holds");
  }

  private static void assertFault(
      SmallShop shop, Consumer<List<Sheet.SheetStep>> change, String fault) {
    Sheet sheet = shop.sheet();
    assertEquals(List.of(), shop.faults(sheet));
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    change.accept(steps);
    List<String> faults = shop.faults(AlteredSheets.inOrder(sheet, steps));
    assertTrue(faults.stream().anyMatch(it -> it.contains(fault)), faults.toString());
  }

  private static int chocks(List<Sheet.SheetStep> steps, boolean set, int nth) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).source() instanceof StepSource.Chocks chocks && chocks.set() == set) {
        found.add(i);
      }
    }
    return found.get(nth);
  }

  @Test
  void anAxleThatGoesUpWhileNothingHoldsTheOtherIsAFault() {
    SmallShop shop = SHOP.job("floor", "deep at front-left", "deep at rear-right");
    for (int nth : List.of(0, 1)) {
      assertFault(
          shop,
          steps -> steps.remove(chocks(steps, true, nth)),
          nth == 0 ? "no chock holds the wheels" : "takes away the chocks that hold");
    }
  }

  @Test
  void wheelsThatComeDownOnToChocksAreAFault() {
    SmallShop shop = SHOP.job("hoist", "run at vehicle");
    assertFault(shop, steps -> steps.remove(chocks(steps, false, 0)), "lowers wheels on to chocks");
    assertFault(
        SHOP.job("floor", "deep at front-left", "deep at rear-right"),
        steps -> steps.remove(chocks(steps, false, 0)),
        "lowers wheels on to chocks");
  }

  @Test
  void whatIsDoneOnceTheVehicleIsDownWaitsForTheChocks() {
    assertFault(
        SHOP.job("hoist", "run at vehicle"),
        steps -> {
          int chock = chocks(steps, true, 0);
          Collections.swap(steps, chock, chock + 1);
        },
        "comes before a wheel is chocked");
  }

  @Test
  void aBlockDoesNotGoWhereAChockStands() {
    for (String bay : List.of("floor", "hoist")) {
      assertFault(
          SHOP.job(bay, "bush at rear-left"),
          steps -> steps.remove(chocks(steps, false, bay.equals("hoist") ? 1 : 0)),
          "puts a block where a chock stands");
    }
  }

  @Test
  void wheelsOnBlocksAreChockedAtOnce() {
    SmallShop shop = SHOP.job("floor", "bush at rear-left");
    int onBlocks = shop.at("Chock both front wheels on their blocks");
    assertFault(shop, steps -> steps.remove(onBlocks), "comes before a wheel is chocked");
  }

  /** Hands are under a wheel, so the lift must not be able to come down. */
  @Test
  void blocksGoInAndOutWhileTheLiftIsOnItsLocks() {
    List<String> ids =
        SHOP.job("hoist", "bush at rear-left").sheet().steps().stream()
            .map(step -> step.source().id())
            .filter(id -> id.matches("blocks/.*(lock|put|take|onto|floor).*"))
            .filter(id -> !id.contains("arm-locks"))
            .toList();
    assertEquals(
        List.of(
            "blocks/locks",
            "blocks/put-under",
            "blocks/free-locks",
            "blocks/lower-onto",
            "blocks/next-locks",
            "blocks/take-out",
            "blocks/free-locks-to-leave",
            "blocks/lower-to-floor"),
        ids);
  }

  /**
   * The parking brake is proved, then the chocks go: not for a procedure to say, and never left
   * out.
   */
  @Test
  void everyChockIsTakenAwayBeforeTheVehicleMoves() {
    SmallShop small = SHOP.job("floor", "deep at front-left");
    SmallShop shop = new SmallShop(small.texts().withBuiltIn());
    Sheet sheet = shop.sheet();
    List<String> checks = sheet.checks().stream().map(CheckLine::name).toList();
    assertTrue(checks.indexOf("brake-before-chocks-out") >= 0, checks.toString());
    assertEquals(checks.indexOf("brake-before-chocks-out") + 1, checks.indexOf("chocks-out"));
    List<String> faults = shop.faults(AlteredSheets.withoutCheck(sheet, "chocks-out"));
    assertTrue(
        faults.stream().anyMatch(it -> it.contains("check chocks-out is missing")),
        faults.toString());
  }

  /** Every step with chocks of the demo is needed: without it, something rolls or is in the way. */
  @Test
  void noStepWithChocksIsIdle() {
    int tried = 0;
    for (CaseFolders.JobOf job : CaseFolders.demo()) {
      Resolved resolved = job.resolved();
      Sheet sheet = Planner.plan(resolved, new Problems()).orElseThrow();
      for (int i = 0; i < sheet.steps().size(); i++) {
        if (sheet.steps().get(i).source() instanceof StepSource.Chocks) {
          List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
          steps.remove(i);
          List<String> faults = ChockCheck.faults(AlteredSheets.inOrder(sheet, steps), resolved);
          assertTrue(!faults.isEmpty(), job + " without step " + (i + 1));
          tried++;
        }
      }
    }
    assertTrue(tried > 20, tried + " steps");
  }
}
