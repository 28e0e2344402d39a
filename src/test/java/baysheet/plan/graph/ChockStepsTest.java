package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Where chocks are set and taken away. HSE, Working under vehicles: chock the wheels that stay on
 * the ground; the rest is common practice, no source.
 */
class ChockStepsTest {
  private static final String JACKED =
      "at: axle\nserves: raise\nneeds: jack\nopen:\n"
          + "  - {do: Jack it up, undo: feet}\n"
          + "close:\n"
          + "  - {do: Let it down, do-up: feet}";

  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              "items:\n"
                  + "  wedge: {name: wedge, kinds: [chocks]}\n"
                  + "  lever: {name: lever, kinds: [parking-brake]}\n")
          .procedure("jacked", JACKED)
          .procedure("near", "at: wheel\nbehind: [raise]", "Work", "one")
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three");

  private static SmallShop jacked(String preparing) {
    return SHOP.procedure("jacked", JACKED.replace("open:\n", "open:\n  - " + preparing + "\n"));
  }

  private static final String REAR = "Chock both rear wheels in front and behind";
  private static final String FRONT = "Chock both front wheels in front and behind";
  private static final String REAR_AWAY = "Remove the chocks of the rear wheels";

  private static List<String> moves(SmallShop shop) {
    return shop.steps().stream()
        .map(step -> step.replaceAll(" \\[.*", ""))
        .filter(
            step ->
                step.matches(
                    "(?i).*(chock|jack|let it down|hoist|refit the vehicle|run it|lower).*"))
        .toList();
  }

  private static SmallShop both(SmallShop shop) {
    return shop.job("floor", "near at front-left", "near at rear-left");
  }

  @Test
  void noAxleGoesUpBeforeTheOtherIsChocked() {
    assertEquals(
        List.of(REAR, "Jack it up", "Let it down", FRONT, REAR_AWAY, "Jack it up", "Let it down"),
        moves(both(SHOP)));
  }

  @Test
  void theAxleThatGoesUpLastLosesItsChocksOnceItIsUp() {
    assertEquals(
        List.of(REAR, "Jack it up", "Jack it up", REAR_AWAY, "Let it down", FRONT, "Let it down"),
        moves(SHOP.job("floor", "below at vehicle")));
  }

  /** What raises an axle and has chocks among its tools chocks the other one. */
  @Test
  void aRaisingThatChocksTheOtherAxleItselfNeedsNoMore() {
    assertEquals(
        List.of(
            "Chock the others",
            "Jack it up",
            "Let it down",
            "Chock the others",
            REAR_AWAY,
            "Jack it up",
            "Let it down"),
        moves(both(jacked("{do: Chock the others, uses: wheel chocks}"))));
  }

  /** What is fetched only where something is stuck is not at the wheels. */
  @Test
  void chocksForWhereSomethingIsStuckHoldNothing() {
    assertEquals(
        List.of(REAR, "Look around", "Jack it up", "Let it down"),
        shorter(
            jacked("{do: Look around, uses: [{if-stuck: wheel chocks}]}")
                .job("floor", "near at front-left")));
  }

  @Test
  void anotherToolChocksNothing() {
    assertEquals(
        List.of(REAR, "Look around", "Jack it up", "Let it down"),
        shorter(jacked("{do: Look around, uses: [torch]}").job("floor", "near at front-left")));
  }

  private static List<String> shorter(SmallShop shop) {
    return shop.steps().stream()
        .map(step -> step.replaceAll(" \\[.*", ""))
        .filter(step -> step.matches("(Chock|Look|Jack|Let|Wedge|Turn|Roll|Remove the chocks).*"))
        .toList();
  }

  private static SmallShop prepared(String... steps) {
    return SHOP.procedure(
            "near",
            "at: wheel\nbehind: [raise]\nopen:\n  - "
                + String.join("\n  - ", steps)
                + "\n  - {do: Work, undo: one}")
        .job("floor", "near at front-left");
  }

  private static final String WEDGE =
      "{do: Wedge the rear, disturb: wedge at rear, moment: before-lifting}";
  private static final String PULL = "{do: Turn the nut, slacken: two, moment: before-lifting}";

  @Test
  void whoWedgesTheOtherAxleBeforehandNeedsNoChocks() {
    assertEquals(
        List.of("Wedge the rear", "Turn the nut", "Jack it up", "Let it down"),
        shorter(prepared(WEDGE, PULL)));
  }

  /** Nobody pulls at a nut of a vehicle that may roll, whatever is set up after that. */
  @Test
  void whoPullsBeforeHeWedgesHasChocksFirst() {
    assertEquals(
        List.of(REAR, "Turn the nut", "Wedge the rear", "Jack it up", "Let it down"),
        shorter(prepared(PULL, WEDGE)));
  }

  @Test
  void wedgesUnderTheAxleThatGoesUpHoldNothing() {
    assertEquals(
        List.of(
            REAR,
            "Wedge the front",
            "Remove the chocks of the front wheels",
            "Jack it up",
            "Let it down"),
        shorter(prepared(WEDGE.replace("rear", "front"))));
  }

  /** The vehicle is rolled to its place between the two. */
  @Test
  void wedgesThatAreTakenAwayBeforeTheJackHoldNothing() {
    assertEquals(
        List.of(REAR, "Wedge the rear", "Roll it back", "Jack it up", "Let it down"),
        shorter(
            prepared(
                WEDGE, "{do: Roll it back, takes-away: wedge at rear, moment: before-lifting}")));
  }

  /** The vehicle comes down for a look between two works at the same end. */
  private static SmallShop run(String equipment) {
    return SHOP.procedure(
            "run",
            "at: wheel\nbehind: [raise]\nopen:\n"
                + "  - {do: Open it, undo: three, height: [stands, working]}\n"
                + "  - {do: Run it, undo: four, height: ground}")
        .job(equipment, "run at front-left");
  }

  @Test
  void chocksStayWhileAJackLetsTheSameAxleDownForAStep() {
    List<String> moves = moves(run("floor"));
    assertEquals(1, moves.stream().filter(REAR::equals).count(), moves.toString());
    assertEquals(REAR, moves.get(0));
    assertEquals(List.of(), moves.stream().filter(move -> move.startsWith("Remove")).toList());
  }

  @Test
  void onALiftThatComesDownForAStepChocksHoldTheVehicleUntilItIsUpAgain() {
    assertEquals(
        List.of(
            "Hoist it",
            "Lower the vehicle to the floor",
            "From the side, chock one rear wheel in front and behind at once",
            "Run it",
            "From the side, remove every wheel chock from under the vehicle",
            "Refit the vehicle on its wheels",
            "From the side, chock one rear wheel in front and behind at once"),
        moves(run("hoist")));
  }

  /** Somebody drives it a little: then it is chocked anew before anything of the raising. */
  @Test
  void whatWasDrivenIsChockedAnewBeforeAJackTakesItAgain() {
    List<String> steps =
        SHOP.procedure(
                "run",
                "at: wheel\nbehind: [raise]\nopen:\n  - "
                    + WEDGE
                    + "\n  - {do: Open it, undo: three, height: stands}\n"
                    + "  - {do: Run it, undo: four, height: ground, takes-away: wedge at rear}\n"
                    + "  - {do: Work, undo: one, height: stands}")
            .job("floor", "run at front-left")
            .steps();
    int run = steps.indexOf("Run it [front-left]");
    assertTrue(steps.get(0).startsWith("Wedge the rear"), steps.toString());
    assertTrue(steps.get(run + 1).startsWith(REAR), steps.toString());
    assertTrue(steps.get(run + 2).startsWith("Check that nobody"), steps.toString());
  }

  private static SmallShop released(SmallShop shop) {
    return shop.procedure(
            "near",
            "at: wheel\nbehind: [raise]\nopen:\n"
                + "  - {do: Release it, disturb: lever, moment: before-lifting}\n"
                + "  - {do: Work, undo: one}")
        .job("hoist", "near at front-left");
  }

  /** The brake acts on one axle: chocks at the other hold also while that is repaired. */
  @Test
  void aLiftRaisesWhatChocksHoldWhereTheBrakeIsReleased() {
    assertEquals(List.of(FRONT, "Hoist it"), moves(released(SHOP)).subList(0, 2));
    SmallShop front =
        new SmallShop(
            SHOP.texts()
                .replacing(
                    "vehicles/any.yaml",
                    "fasteners: {}\n",
                    "traits: [front-parking-brake]\nfasteners: {}\n"));
    assertEquals(List.of(REAR, "Hoist it"), moves(released(front)).subList(0, 2));
  }

  private static final SmallShop TWO_WRITERS =
      SHOP.procedure("near", "at: wheel\nbehind: [raise]\nopen: [" + PULL + ", {do: W, undo: one}]")
          .procedure("wedged", "at: vehicle\nopen: [" + WEDGE + "]")
          .procedure(
              "freed",
              "at: vehicle\n" + "open: [{do: Release it, disturb: lever, moment: before-lifting}]");

  /** Each writer knows his own step only: the vehicle is held by whatever holds it. */
  @Test
  void nobodyPullsAtANutBeforeAnotherWorkHasWedgedTheVehicle() {
    SmallShop shop = TWO_WRITERS.job("floor", "near at front-left", "wedged at vehicle");
    Precedence.of(shop).comesBefore("wedged/open/1", "near/open/1");
    assertEquals(
        List.of("Wedge the rear", "Turn the nut", "Jack it up", "Let it down"), shorter(shop));
  }

  @Test
  void nobodyReleasesTheBrakeBeforeTheNutsArePulled() {
    SmallShop shop = TWO_WRITERS.job("floor", "freed at vehicle", "near at rear-left");
    Precedence.of(shop).comesBefore("near/open/1", "freed/open/1");
    shop.assertInOrder(FRONT, "Turn the nut", "Release it", "Jack it up");
  }

  /** A bush is tightened on blocks: the lift takes the vehicle off its wheels once more. */
  @Test
  void chocksGoOnceALiftHoldsTheVehicleForTheBlocks() {
    SmallShop shop =
        SmallShop.bolted(
                "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque:"
                    + " 100 N·m, final: ride-height}")
            .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "two")
            .job("hoist", "bush at rear-left");
    List<String> ids = shop.sheet().steps().stream().map(step -> step.source().id()).toList();
    // Nobody reaches under a wheel before the lift rests on its locks.
    assertEquals(
        List.of(
            "blocks/raise-clear",
            "blocks/push",
            "blocks/raise",
            "blocks/locks",
            "chocks/take/vehicle",
            "blocks/put-under"),
        ids.subList(ids.indexOf("blocks/raise-clear"), ids.indexOf("blocks/put-under") + 1));
    assertEquals("chocks/set/on-blocks/vehicle", ids.get(ids.indexOf("blocks/lower-onto") + 1));
    assertEquals("chocks/set/vehicle", ids.get(ids.indexOf("blocks/lower-to-floor") + 1));
    assertEquals("blocks/push-off", ids.get(ids.indexOf("blocks/raise-off") + 1));
  }
}
