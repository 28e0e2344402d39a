package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.plan.SmallShop;
import baysheet.sheet.Sheet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What stands between the steps of the procedures where the vehicle comes to another height: the
 * parking brake, the look round, pads, locks, stands, and the push that tries them.
 */
class HeightStepsTest {
  private static final String BRAKE = "height/ground/ground/brake";
  private static final String HELD = "height/wheels-clear/ground/brake";

  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              """
              items:
                handbrake: {name: parking brake, kinds: [parking-brake]}
                motor: {name: brake motor, kinds: [electric-parking-brake]}
              """)
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "two")
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure(
              "low", "at: vehicle\nbehind: [raise]\nwork: [{do: Look low, height: wheels-clear}]")
          .procedure(
              "level",
              "at: vehicle\nbehind: [raise]\nwork: [{do: Look from above, height: ground}]")
          .procedure(
              "high", "at: vehicle\nbehind: [raise]\nwork: [{do: Look high, height: working}]");

  private static List<String> ids(SmallShop shop) {
    return shop.sheet().steps().stream().map(step -> step.source().id()).toList();
  }

  /** The parts of changes of height, without those of the chocks. */
  private static List<String> heights(SmallShop shop) {
    return ids(shop).stream().filter(id -> id.startsWith("height/")).toList();
  }

  private static long count(SmallShop shop, String id) {
    return ids(shop).stream().filter(id::equals).count();
  }

  private static void assertFirst(String id, SmallShop shop) {
    assertEquals(id, ids(shop).get(0));
    assertEquals(1, count(shop, id));
  }

  /** On a lift nothing else keeps the vehicle from rolling off its pads. */
  @Test
  void onALiftTheParkingBrakeIsAppliedFirst() {
    assertFirst(BRAKE, SHOP.job("hoist", "below at vehicle"));
    assertFirst(BRAKE, SHOP.job("hoist", "deep at front-left", "deep at front-right"));
  }

  @Test
  void whereAJackLiftsTheChocksHoldTheVehicle() {
    assertEquals(0, count(SHOP.job("floor", "deep at front-left"), BRAKE));
  }

  @Test
  void aVehicleThatStaysOnTheFloorNeedsNoBrake() {
    SmallShop shop = SHOP.procedure("free", "at: vehicle", "Lid off", "lid");
    assertEquals(0, count(shop.job("hoist", "free at vehicle"), BRAKE));
  }

  /** A wheel that the brake holds does not come off with the brake on. */
  @Test
  void theBrakeStaysReleasedForWorkAtTheWheelsThatItHolds() {
    assertEquals(0, count(SHOP.job("hoist", "deep at rear-left"), BRAKE));
    SmallShop front =
        new SmallShop(
            SHOP.texts()
                .replacing(
                    "vehicles/any.yaml", "name: Any", "name: Any\ntraits: [front-parking-brake]"));
    assertEquals(0, count(front.job("hoist", "deep at front-left"), BRAKE));
    assertFirst(BRAKE, front.job("hoist", "deep at rear-left"));
  }

  /** Whoever takes the brake apart, slackens its cable or releases it wants it off throughout. */
  @Test
  void aBrakeThatTheWorkReleasesIsNotAppliedFirst() {
    for (String key : List.of("undo", "slacken", "disturb")) {
      SmallShop shop =
          SHOP.procedure(
              "cable",
              "at: vehicle\nbehind: [raise]\nopen: [{do: Ease it, %s: handbrake}]".formatted(key));
      assertEquals(0, count(shop.job("hoist", "cable at vehicle"), BRAKE), key);
    }
  }

  /** A procedure that has the brake applied before the vehicle goes up says so in its own words. */
  @Test
  void aBrakeThatAProcedureAppliesIsNotAppliedASecondTime() {
    SmallShop shop =
        SHOP.procedure(
            "own",
            "at: vehicle\nbehind: [raise]\nopen: [{do: Pull the brake, ends: handbrake, moment:"
                + " before-lifting}, {do: Two off, undo: two}]");
    assertEquals(0, count(shop.job("hoist", "own at vehicle"), BRAKE));
  }

  /** What is applied while the vehicle is up does not hold it on its way there. */
  @Test
  void aBrakeThatIsTriedAboveIsAppliedBelowAsWell() {
    SmallShop shop =
        SHOP.procedure(
            "tried",
            "at: vehicle\nbehind: [raise]\nwork: [{do: Try the brake, ends: handbrake, height:"
                + " working}]");
    assertFirst(BRAKE, shop.job("hoist", "tried at vehicle"));
  }

  /** The brake would draw the tail down; an electric one needs the battery that comes off next. */
  @Test
  void onlyAHeightIsMeasuredBeforeTheBrakeIsApplied() {
    SmallShop shop =
        SHOP.procedure(
                "measured",
                "at: wheel\nopen: [{do: Measure it, measure: height, moment: before-lifting}]")
            .procedure(
                "cut",
                "at: vehicle\nopen: [{do: Battery off, disturb: lid, moment:" + " before-lifting}]")
            .procedure(
                "bush", "at: wheel\nbehind: [measured, cut, raise]\nopen: [{do: Bush, undo: one}]");
    assertEquals(
        List.of("measured/open/1", BRAKE, "cut/open/1", "hoisted/open/1"),
        ids(shop.job("hoist", "bush at front-left")).subList(0, 4));
  }

  /** Any other figure is none that the brake would change. */
  @Test
  void anotherFigureIsMeasuredWithTheBrakeOn() {
    SmallShop shop =
        SHOP.procedure(
                "measured",
                "at: wheel\nopen: [{do: Measure it, measure: tread, moment: before-lifting}]")
            .procedure(
                "bush", "at: wheel\nbehind: [measured, raise]\nopen: [{do: Bush, undo: one}]");
    assertEquals(
        List.of(BRAKE, "measured/open/1", "hoisted/open/1"),
        ids(shop.job("hoist", "bush at front-left")).subList(0, 3));
  }

  /** A wheel that touches the floor with nothing to hold it may roll. */
  @Test
  void theBrakeHoldsTheVehicleFromTheMomentItsWheelsTouchTheFloor() {
    SmallShop shop = SHOP.job("hoist", "deep at rear-left", "low at vehicle");
    List<String> ids = ids(shop);
    assertEquals(1, count(shop, HELD));
    assertEquals(ids.indexOf("hoisted/open/1/back/feet") - 1, ids.indexOf(HELD));
    assertTrue(ids.indexOf("low/work/1") < ids.indexOf(HELD), ids.toString());
  }

  @Test
  void aBrakeThatIsOnIsNotAppliedAgainOnTheWayDown() {
    assertEquals(0, count(SHOP.job("hoist", "low at vehicle"), HELD));
  }

  /** What is dismantled, slackened or in service mode cannot be applied. */
  @Test
  void aBrakeThatDoesNotHoldIsNotAppliedOnTheWayDown() {
    String work =
        "at: vehicle\nbehind: [raise]\nopen: [{do: Take it down, %s, height: working}]\n"
            + "close: [{do: Put it up, %s, moment: on-the-ground}]";
    for (List<String> keys :
        List.of(
            List.of("undo: handbrake", "do-up: handbrake"),
            List.of("slacken: handbrake", "do-up: handbrake"),
            List.of("disturb: motor", "ends: motor"))) {
      SmallShop shop = SHOP.procedure("apart", work.formatted(keys.get(0), keys.get(1)));
      assertEquals(
          0, count(shop.job("hoist", "apart at vehicle", "low at vehicle"), HELD), keys.toString());
    }
  }

  @Test
  void aBrakeThatIsTogetherAgainIsAppliedOnTheWayDown() {
    SmallShop shop =
        SHOP.procedure(
            "apart",
            "at: vehicle\nbehind: [raise]\nopen: [{do: Take it off, undo: handbrake,"
                + " height: working}]");
    assertEquals(1, count(shop.job("hoist", "apart at vehicle", "low at vehicle"), HELD));
  }

  /** A lift on its locks goes down only once they are free. */
  @Test
  void theLocksAreFreedBeforeTheVehicleComesDown() {
    List<String> ids = ids(SHOP.job("hoist", "below at vehicle"));
    assertEquals(
        ids.indexOf("hoisted/open/1/back/feet") - 1,
        ids.indexOf("height/working/ground/free-locks"));
    assertEquals(List.of(), heights(SHOP.job("floor", "deep at front-left")));
  }

  /** Just clear of the floor a lift does not rest on locks. */
  @Test
  void noLocksAreFreedWhereTheWheelsAreJustClear() {
    List<String> ids = ids(SHOP.job("hoist", "high at vehicle", "low at vehicle"));
    assertEquals(0, ids.stream().filter("height/working/ground/free-locks"::equals).count());
  }

  private static SmallShop turns(String... heights) {
    StringBuilder work = new StringBuilder("at: vehicle\nbehind: [raise]\nwork:\n");
    for (String height : heights) {
      work.append("  - {do: At ").append(height).append(", height: ").append(height).append("}\n");
    }
    return SHOP.procedure("turns", work.toString());
  }

  private static List<String> between(SmallShop shop, int earlier, int later) {
    List<String> ids = ids(shop);
    return ids
        .subList(ids.indexOf("turns/work/" + earlier) + 1, ids.indexOf("turns/work/" + later))
        .stream()
        .filter(id -> !id.startsWith("chocks/"))
        .toList();
  }

  private static List<String> parts(String change, String... parts) {
    return Stream.of(parts).map(part -> "height/" + change + "/" + part).toList();
  }

  @Test
  void aLiftComesOffItsLocksAndDownToTheFloorInOneGo() {
    SmallShop shop = turns("working", "ground", "working").job("hoist", "turns at vehicle");
    assertEquals(parts("working/ground", "look", "free-locks", "move"), between(shop, 1, 2));
  }

  /** The pads are tried with the wheels just clear, and once: nothing was done since. */
  @Test
  void aLiftThatGoesUpAgainIsTriedOnceOnItsWay() {
    SmallShop shop = turns("working", "ground", "working").job("hoist", "turns at vehicle");
    assertEquals(
        Stream.concat(
                parts("ground/wheels-clear", "pads", "arm-locks", "move", "push").stream(),
                parts("wheels-clear/working", "move", "locks").stream())
            .toList(),
        between(shop, 2, 3));
  }

  /** Work with the wheels just clear may have shifted it. */
  @Test
  void aLiftIsTriedAgainBeforeItGoesOnUpFromWork() {
    SmallShop shop = turns("working", "wheels-clear", "working").job("hoist", "turns at vehicle");
    assertEquals(parts("working/wheels-clear", "look", "free-locks", "move"), between(shop, 1, 2));
    assertEquals(parts("wheels-clear/working", "push", "move", "locks"), between(shop, 2, 3));
  }

  @Test
  void fromJustClearOfTheFloorALiftGoesDownWithoutLocks() {
    SmallShop shop =
        turns("wheels-clear", "ground", "wheels-clear").job("hoist", "turns at vehicle");
    assertEquals(parts("wheels-clear/ground", "look", "move"), between(shop, 1, 2));
    assertEquals(
        parts("ground/wheels-clear", "pads", "arm-locks", "move", "push"), between(shop, 2, 3));
  }

  @Test
  void aLiftWithoutArmsHasNoArmLocks() {
    SmallShop shop =
        new SmallShop(
                turns("working", "ground", "working")
                    .texts()
                    .replacing("shop.yaml", "lift: two-post", "lift: scissor"))
            .job("hoist", "turns at vehicle");
    assertTrue(heights(shop).contains("height/ground/wheels-clear/pads"));
    assertEquals(0, count(shop, "height/ground/wheels-clear/arm-locks"));
  }

  /** A jack takes the weight before a stand comes away, and before one is set. */
  @Test
  void standsComeAwayAndAreSetAgain() {
    SmallShop shop =
        SHOP.procedure(
                "turns",
                "at: axle\nbehind: [raise]\nwork:\n  - {do: On stands, height: working}\n  - {do:"
                    + " Low, height: ground}\n  - {do: On stands again, height: working}")
            .job("floor", "turns at front");
    assertEquals(
        parts("stands/ground", "look", "free-stands", "take-stands", "move"), between(shop, 1, 2));
    assertEquals(
        parts("ground/stands", "look", "jack", "set-stands", "move", "push"), between(shop, 2, 3));
  }

  /** Lowering is from a height: what stands on the floor for its last step is lifted once more. */
  @Test
  void aVehicleOnTheFloorIsLiftedClearBeforeItIsLoweredForGood() {
    List<String> lift = ids(turns("working", "ground").job("hoist", "turns at vehicle"));
    int down = lift.indexOf("hoisted/open/1/back/feet");
    assertTrue(down > 0, lift.toString());
    assertEquals(
        parts("ground/wheels-clear", "pads", "arm-locks", "move", "push"),
        lift.subList(lift.indexOf("turns/work/2") + 1, down).stream()
            .filter(id -> id.startsWith("height/"))
            .toList());
    SmallShop floor =
        SHOP.procedure(
            "turns",
            "at: axle\nbehind: [raise]\nwork: [{do: Up, height: working}, {do: Down, height:"
                + " ground}]");
    List<String> jack = ids(floor.job("floor", "turns at front"));
    assertEquals(
        parts("ground/stands", "look", "jack", "set-stands", "move", "push"),
        jack
            .subList(jack.indexOf("turns/work/2") + 1, jack.indexOf("jacked/open/1/back/feet"))
            .stream()
            .filter(id -> id.startsWith("height/"))
            .toList());
  }

  /** Whoever reads a step knows how high the vehicle is: at the old height up to the move. */
  @Test
  void eachPartSaysHowHighTheVehicleIs() {
    Sheet sheet = turns("working", "ground", "working").job("hoist", "turns at vehicle").sheet();
    List<Height> down = heightsOf(sheet, "height/working/ground/");
    assertEquals(List.of(Height.WORKING, Height.WORKING, Height.GROUND), down.subList(0, 3));
    assertEquals(
        List.of(Height.GROUND, Height.GROUND, Height.WHEELS_CLEAR, Height.WHEELS_CLEAR),
        heightsOf(sheet, "height/ground/wheels-clear/"));
    assertEquals(
        List.of(Height.WORKING, Height.WORKING), heightsOf(sheet, "height/wheels-clear/working/"));
  }

  /** The push before it goes on up is done where the vehicle is. */
  @Test
  void thePushBeforeGoingOnIsAtTheHeightOfTheWorkBefore() {
    Sheet sheet = turns("wheels-clear", "working").job("hoist", "turns at vehicle").sheet();
    List<Height> up = heightsOf(sheet, "height/wheels-clear/working/");
    assertEquals(List.of(Height.WHEELS_CLEAR, Height.WORKING, Height.WORKING), up);
  }

  private static List<Height> heightsOf(Sheet sheet, String id) {
    return sheet.steps().stream()
        .filter(step -> step.source().id().startsWith(id))
        .map(step -> step.where().height())
        .toList();
  }

  /** Whoever looks up how the vehicle is raised finds the procedure that raised it. */
  @Test
  void eachPartNamesTheProcedureThatRaisesTheVehicle() {
    Sheet sheet =
        turns("working", "ground", "working")
            .procedure("free", "at: engine\nopen: [{do: Look, height: ground}]")
            .job("hoist", "free at engine", "turns at vehicle")
            .sheet();
    List<Sheet.SheetStep> parts =
        sheet.steps().stream()
            .filter(step -> step.source().id().startsWith("height/"))
            .filter(step -> !step.procedure().equals("hoisted"))
            .toList();
    assertEquals(List.of(), parts);
    assertEquals(BRAKE, sheet.steps().get(0).source().id());
  }
}
