package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.plan.SmallShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What comes before what between the steps of several works, whatever order the job has. */
class StepOrderTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("lid-off", "at: engine", "Lid off", "lid")
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one");

  private static void assertLoop(SmallShop shop) {
    assertEquals(
        List.of("order-loop"),
        shop.problems().stream().map(problem -> problem.code().word()).toList());
  }

  /** Who marks a nut once it is cracked loose marks it where it came to rest. */
  @Test
  void stepsBeforeLiftingKeepTheOrderOfTheirProcedure() {
    SmallShop shop =
        SHOP.procedure(
                "deep",
                "at: wheel\nbehind: [roller-off]\nopen:\n"
                    + "  - {do: Crack the nut, slacken: four, moment: before-lifting}\n"
                    + "  - {do: Mark the nut, disturb: two, moment: before-lifting}\n"
                    + "  - {do: Deep, undo: one}")
            .job("hoist", "deep at front-left");
    Precedence.of(shop).comesBefore("deep/open/1", "deep/open/2");
    shop.assertInOrder("Crack the nut", "Mark the nut", "Hoist it");
  }

  /** Two works own an item each; a third can take neither off but in its own order. */
  @Test
  void aWorkThatSharesAllItsStepsHasThemInItsOrder() {
    SmallShop shop =
        SHOP.procedure("inner", "at: wheel", "Inner off", "two")
            .procedure("outer", "at: wheel", "Outer off", "one")
            .procedure(
                "both",
                "at: wheel\nopen:\n"
                    + "  - {do: First, undo: one}\n"
                    + "  - {do: Then, undo: two}\n"
                    + "  - {do: Last, undo: three}")
            .job("hoist", "inner at front-left", "outer at front-left", "both at front-left");
    Precedence.of(shop)
        .comesBefore("outer/open/1", "inner/open/1")
        .comesBefore("inner/open/1/back/two", "outer/open/1/back/one");
    shop.assertInOrder("Outer off", "Inner off", "Last", "Refit the two", "Refit the one");
  }

  /** A plate and its gasket come off in one pull: the plate, off last, is on first. */
  @Test
  void whatCameOffInOneStepGoesOnTheOtherWayRound() {
    SmallShop shop =
        SHOP.procedure(
                "second", "at: wheel\nopen: [{do: S, undo: two}]\nclose: [{do: 2 on, do-up: two}]")
            .procedure(
                "first", "at: wheel\nopen: [{do: F, undo: one}]\nclose: [{do: 1 on, do-up: one}]")
            .procedure("pair", "at: wheel", "Pair off", "one", "two", "three")
            .job("hoist", "second at front-left", "first at front-left", "pair at front-left");
    Precedence.of(shop)
        .comesBefore("second/close/1", "first/close/1")
        .comesBefore("pair/open/1/back/three", "second/close/1");
    shop.assertInOrder("Refit the three", "2 on", "1 on");
  }

  /** Where one writer pulls both at once, the other's two steps say more. */
  @Test
  void anOrderThatIsWrittenOutweighsThatOfOneStep() {
    SmallShop shop =
        SHOP.procedure("pair", "at: wheel", "Pair off", "one", "two")
            .procedure(
                "singly",
                "at: wheel\nopen: [{do: 2, undo: two}, {do: 1, undo: one}, {do: 3, undo: three}]")
            .job("hoist", "pair at front-left", "singly at front-left");
    Precedence.of(shop).comesBefore("pair/open/1/back/one", "pair/open/1/back/two");
    shop.assertInOrder("Pair off", "3", "Refit the three", "Refit the one", "Refit the two");
  }

  private static final String UP =
      "at: wheel\nopen: [{do: One off, undo: one}, {do: Two off, undo: two}]";
  private static final String DOWN =
      "at: wheel\nopen: [{do: 2 off, undo: two}, {do: 1 off, undo: one}, {do: 3 off, undo: three}]";

  /** The owner of both items knows them; whom the job lists first does not matter. */
  @Test
  void theOwnersOrderHoldsAgainstAWorkThatTheJobListsFirst() {
    SmallShop shop =
        SHOP.procedure("up", UP)
            .procedure("down", DOWN + "\nafter: [up]")
            .job("hoist", "down at front-left", "up at front-left");
    Precedence.of(shop).comesBefore("up/open/1", "up/open/2");
  }

  /** All of what lies in front is off before the own step, in whatever order it came off. */
  @Test
  void anOwnStepWaitsForAllThatOthersTakeOffForIt() {
    SmallShop shop =
        SHOP.procedure("up", UP)
            .procedure("down", DOWN)
            .job("hoist", "up at front-left", "down at front-left");
    Precedence.of(shop)
        .comesBefore("up/open/1", "down/open/3")
        .comesBefore("up/open/2", "down/open/3")
        .comesBefore("down/open/3/back/three", "up/open/1/back/one")
        .comesBefore("down/open/3/back/three", "up/open/2/back/two");
  }

  /**
   * A third writer wants off first what lies behind the other thing. Nobody wrote the opposite of
   * it as steps in a row, so that a person has to decide.
   */
  @Test
  void anOrderThatOnlyAccessPreventsIsReported() {
    SmallShop shop =
        SHOP.procedure("outer", "at: wheel", "Two off", "two")
            .procedure(
                "inner",
                "at: wheel\nbehind: [outer]\n"
                    + "open: [{do: Four off, undo: four}, {do: One off, undo: one}]")
            .procedure(
                "both",
                "at: wheel\nopen: [{do: 1, undo: one}, {do: 2, undo: two}, {do: 3, undo: three}]");
    assertLoop(shop.job("hoist", "inner at front-left", "both at front-left"));
  }

  /** A look that comes after a work comes once that is put together again. */
  @Test
  void workWithoutAnOpeningComesAfterWhatItIsToFollow() {
    SmallShop shop =
        SHOP.procedure("look", "at: wheel\nafter: [side]\nwork: [{do: Look, disturb: four}]")
            .procedure("side", "at: wheel", "Side off", "three")
            .job("hoist", "look at front-left", "side at front-left");
    Precedence.of(shop).comesBefore("side/open/1/back/three", "look/work/1");
    shop.assertInOrder("Side off", "Refit the three", "Look");
  }

  /** Hoses are connected before the system that they belong to is filled. */
  @Test
  void whatIsDueOnTheGroundWaitsUntilItsOwnWorkIsClosed() {
    SmallShop shop =
        SHOP.procedure(
                "filled",
                "at: engine\nbehind: [lid-off]\n"
                    + "open: [{do: Drain, undo: one}]\n"
                    + "work: [{do: Fill up, disturb: three, moment: on-the-ground}]")
            .job("hoist", "filled at engine");
    Precedence.of(shop)
        .comesBefore("filled/open/1/back/one", "filled/work/1")
        .comesBefore("filled/work/1", "lid-off/open/1/back/lid");
    shop.assertInOrder("Lid off", "Drain", "Refit the one", "Fill up", "Refit the lid");
  }

  /** A level is read on wheels, whoever has had the vehicle up. */
  @Test
  void whatIsDueOnTheGroundWaitsUntilTheVehicleIsDownFromAnotherWork() {
    SmallShop shop =
        SHOP.procedure(
                "filled",
                "at: engine\nbehind: [lid-off]\n"
                    + "work: [{do: Fill up, disturb: three, moment: on-the-ground}]")
            .job("hoist", "filled at engine", "deep at front-left");
    Precedence.of(shop)
        .comesBefore("hoisted/open/1/back/feet", "filled/work/1")
        .mayComeBehind("filled/work/1", "hoisted/open/1/back/feet");
    shop.assertInOrder("Refit the vehicle on its wheels", "Fill up", "Refit the lid");
  }

  /** A work that opens nothing itself still looks at what lies behind its access. */
  @Test
  void workWithoutAnOpeningWaitsForItsAccess() {
    SmallShop shop =
        SHOP.procedure("look", "at: engine\nbehind: [lid-off]\nwork: [{do: Look, disturb: three}]")
            .job("hoist", "look at engine");
    Precedence.of(shop)
        .comesBefore("lid-off/open/1", "look/work/1")
        .comesBefore("look/work/1", "lid-off/open/1/back/lid");
    shop.assertInOrder("Lid off", "Look", "Refit the lid");
  }

  private static final SmallShop DOOR =
      SHOP.procedure(
              "door-open",
              "at: engine\n"
                  + "open: [{do: Door open, undo: lid}]\n"
                  + "work: [{do: Oil the hinge, disturb: four}, {do: Door shut, do-up: lid}]")
          .procedure("lamp", "at: engine\nbehind: [door-open]", "Lamp out", "one")
          .job("hoist", "lamp at engine");

  @Test
  void accessThatShutsInItsWorkDoesSoBehindAllThatLiesBehindIt() {
    Precedence.of(DOOR).comesBefore("lamp/open/1/back/one", "door-open/work/2");
    DOOR.assertInOrder("Door open", "Lamp out", "Refit the one", "Door shut");
  }

  /** While the door is open anyway: nothing of it is shut by a drop of oil. */
  @Test
  void workOfTheAccessThatShutsNothingDoesNotWaitForWhatLiesBehindIt() {
    Precedence.of(DOOR).mayComeBehind("lamp/open/1/back/one", "door-open/work/1");
    DOOR.assertInOrder("Door open", "Oil the hinge", "Refit the one");
  }

  /** Once the first cover is on again nobody reaches what lies behind both: no order is right. */
  @Test
  void aCoverThatWaitsForAnotherToBeOnDoesNotGiveAccessTogetherWithIt() {
    SmallShop shop =
        SHOP.procedure("cover", "at: wheel\nafter: [plate]", "Cover off", "two")
            .procedure("plate", "at: wheel", "Plate off", "three")
            .procedure("within", "at: wheel\nbehind: [cover, plate]", "Within", "four")
            .job("hoist", "within at front-left");
    assertLoop(shop);
  }

  /** A prop goes in once the cover is off where both stay so for the work. */
  @Test
  void aPropWaitsOnlyUntilTheOtherAccessIsOpen() {
    SmallShop shop =
        SHOP.procedure("prop", "at: wheel\nafter: [plate]\n" + propped())
            .procedure("plate", "at: wheel", "Plate off", "three")
            .procedure("within", "at: wheel\nbehind: [prop, plate]", "Within", "four")
            .job("hoist", "within at front-left");
    Precedence.of(shop)
        .comesBefore("plate/open/1", "prop/open/1")
        .mayComeBehind("plate/open/1/back/three", "prop/open/1");
  }

  /** Where the prop is for one work and the plate for another, the plate is on again first. */
  @Test
  void aPropOfAnotherWorkWaitsUntilThePlateIsOn() {
    SmallShop shop =
        SHOP.procedure("plate", "at: wheel", "Plate off", "three")
            .procedure("prop", "at: wheel\nafter: [plate]\n" + propped())
            .procedure("propped", "at: wheel\nbehind: [prop]", "Propped", "four")
            .procedure("plated", "at: wheel\nbehind: [plate]", "Plated", "two");
    Precedence.of(shop.job("hoist", "propped at front-left", "plate at front-left"))
        .comesBefore("plate/open/1/back/three", "prop/open/1");
    Precedence.of(shop.job("hoist", "prop at front-left", "plated at front-left"))
        .comesBefore("plate/open/1/back/three", "prop/open/1");
  }

  private static String propped() {
    return "open: [{do: Prop in, disturb: stay}]";
  }

  /** Somebody reaches the cap under the lid before the vehicle is out of reach. */
  @Test
  void aStepBeforeLiftingComesBehindItsAccessOnTheGround() {
    SmallShop shop =
        SHOP.procedure(
                "eased",
                "at: engine\nbehind: [lid-off]\n"
                    + "open: [{do: Ease the cap, disturb: two, moment: before-lifting}]")
            .procedure("drained", "at: vehicle\nbehind: [raise, eased]", "Drain", "one")
            .job("hoist", "drained at vehicle");
    Precedence.of(shop)
        .comesBefore("lid-off/open/1", "eased/open/1")
        .comesBefore("eased/open/1", "hoisted/open/1");
  }

  /** The guard is set up before the cap that it is for is eased, both on the ground. */
  @Test
  void aStepBeforeLiftingComesBehindThoseOfItsAccess() {
    SmallShop shop =
        SHOP.procedure(
                "guarded",
                "at: vehicle\nopen: [{do: Guard up, disturb: two, moment: before-lifting}]")
            .procedure(
                "eased",
                "at: engine\nbehind: [guarded]\n"
                    + "open: [{do: Ease it, disturb: three, moment: before-lifting}, {do: Off,"
                    + " undo: four}]")
            .job("hoist", "eased at engine", "deep at front-left");
    Precedence.of(shop).comesBefore("guarded/open/1", "eased/open/1");
    shop.assertInOrder("Guard up", "Ease it", "Hoist it");
  }

  /** A vehicle that stays down: what is measured is so before it is taken apart. */
  @Test
  void aStepBeforeLiftingComesBeforeItsOwnWorkWhereNothingIsRaised() {
    SmallShop shop =
        SHOP.procedure(
                "set",
                "at: engine\nopen: [{do: Crack it, slacken: two, moment: before-lifting}, {do: Take it"
                    + " apart, undo: one}]")
            .procedure(
                "seen",
                "at: engine\n"
                    + "open: [{do: Measure it, disturb: three, moment: before-lifting}]\n"
                    + "work: [{do: Set it, disturb: four}]")
            .job("hoist", "seen at engine", "set at engine");
    Precedence.of(shop)
        .comesBefore("set/open/1", "set/open/2")
        .comesBefore("seen/open/1", "seen/work/1");
    shop.assertInOrder("Crack it", "Take it apart");
  }
}
