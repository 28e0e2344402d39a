package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import baysheet.sheet.StepSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** When each step is due, and what is done once the vehicle is down or at ride height. */
class PhaseAssignerTest {
  private static final String DEEP =
      "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100 N·m,"
          + " final: ride-height}";

  private static final SmallShop SHOP =
      new SmallShop(
              SmallShop.bolted(DEEP)
                  .texts()
                  .replacing(
                      "vehicles/any.yaml",
                      "name: Any",
                      "name: Any\njacking: {front: the front beam, rear: the rear beam}"))
          .with(
              "catalogue/more.yaml",
              """
              items:
                motor: {name: brake motor, kinds: [electric-parking-brake]}
              tools:
                tape: {means: measures}
                trolley: {means: lifts an axle}
              """)
          .procedure(
              "jacked",
              "at: axle\nserves: raise\nneeds: jack\nuses: trolley\n"
                  + "open: [{do: Put the jack there}, {do: Jack it up, undo: feet}]")
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "two")
          .procedure("level", "at: engine\nopen: [{do: Look at it, height: ground}]")
          .procedure(
              "last", "at: vehicle\nafter: [deep, bush]\nopen: [{do: Start it, height: ground}]");

  private static List<String> ids(SmallShop shop) {
    return shop.sheet().steps().stream().map(step -> step.source().id()).toList();
  }

  private static void assertOneAfterTheOther(SmallShop shop, String... ids) {
    List<String> all = ids(shop);
    assertEquals(
        List.of(ids), all.stream().filter(List.of(ids)::contains).toList(), all.toString());
  }

  private static Moment moment(SmallShop shop, int at) {
    return shop.sheet().steps().get(at).where().moment();
  }

  /** Wheels that are only snug carry nothing but the standing vehicle. */
  @Test
  void finalTorquesComeBeforeOtherWorkOnTheGround() {
    SmallShop shop = SHOP.job("hoist", "deep at front-left", "last at vehicle");
    assertOneAfterTheOther(
        shop, "hoisted/open/1/back/feet", "final-torque/roller-nut", "last/open/1");
  }

  @Test
  void rideHeightComesBehindTheLastLoweringAndNotAtTheEndOfTheJob() {
    SmallShop shop = SHOP.job("hoist", "bush at front-left", "last at vehicle");
    assertOneAfterTheOther(
        shop, "hoisted/open/1/back/feet", "final-torque/deep-bolt", "last/open/1");
  }

  /** Whoever lowers finishes that first: an arm under the sill is in the way of the wrench. */
  @Test
  void finalTorquesWaitForTheLastStepOfLowering() {
    SmallShop shop =
        SHOP.procedure(
                "hoisted",
                "at: vehicle\nserves: raise\nneeds: lift\nopen: [{do: Hoist it, undo: feet}]\n"
                    + "close: [{do: Lower it, do-up: feet}, {do: Swing the arms out}, {do: Look"
                    + " below}]")
            .job("hoist", "deep at front-left");
    assertOneAfterTheOther(
        shop, "hoisted/close/1", "hoisted/close/2", "hoisted/close/3", "final-torque/roller-nut");
  }

  private static final String JACKED =
      "at: axle\nserves: raise\nneeds: jack\nopen: [{do: Jack it up, undo: feet}]\n"
          + "close: [{do: Lower it, do-up: feet}, {do: Jack away, moment: on-the-ground},"
          + " {do: Stow the jack, moment: before-moving}]";

  /** The jack is away before somebody kneels there with a wrench, and at each end. */
  @Test
  void whatTheLoweringLeavesForTheGroundComesBeforeTheTorques() {
    List<String> steps =
        SHOP.procedure("jacked", JACKED)
            .procedure(
                "deep",
                "at: wheel\nbehind: [roller-off]\nopen: [{do: Deep, undo: one}]\n"
                    + "close: [{do: Wipe it, moment: on-the-ground}]")
            .job("floor", "deep at front-left", "deep at rear-right")
            .steps();
    assertEquals(
        List.of(
            "Lower it [front]",
            "Jack away [front]",
            "Torque the roller nuts [front-left]",
            "Lower it [rear]",
            "Jack away [rear]",
            "Torque the roller nuts [rear-right]",
            "Wipe it [front-left]",
            "Wipe it [rear-right]"),
        steps.stream().filter(it -> it.matches("(Lower it|Jack away|Torque|Wipe).*")).toList());
  }

  /** Before the vehicle rolls away is later than once it is down. */
  @Test
  void whatIsDueBeforeMovingStandsAtTheEnd() {
    List<String> steps =
        SHOP.procedure("jacked", JACKED).job("floor", "deep at front-left").steps();
    assertEquals(
        List.of(
            "Jack away [front]", "Torque the roller nuts [front-left]", "Stow the jack [front]"),
        steps.stream().filter(it -> it.matches("(Jack away|Torque|Stow).*")).toList());
  }

  /** Both ends are up together: nothing gets its final torque while one of them still is. */
  @Test
  void nothingIsTorquedBetweenTwoLoweringsOfOneVehicle() {
    SmallShop shop =
        SHOP.procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three")
            .job("floor", "below at vehicle", "deep at front-left", "deep at rear-right");
    List<String> steps =
        shop.steps().stream().filter(it -> it.matches("(Refit the vehicle|Torque).*")).toList();
    assertEquals(4, steps.size(), steps.toString());
    assertTrue(steps.get(0).startsWith("Refit the vehicle"), steps.toString());
    assertTrue(steps.get(1).startsWith("Refit the vehicle"), steps.toString());
  }

  @Test
  void stepsAreBeforeLiftingUntilTheVehicleGoesUpAndOnTheGroundOnceItIsDown() {
    SmallShop shop = SHOP.job("hoist", "level at engine", "deep at front-left", "last at vehicle");
    assertEquals(Moment.BEFORE_LIFTING, moment(shop, shop.at("Look at it")));
    assertEquals(Moment.RAISED, moment(shop, shop.at("Hoist it")));
    assertEquals(Moment.RAISED, moment(shop, shop.at("Deep")));
    assertEquals(Moment.RAISED, moment(shop, shop.at("Refit the vehicle")));
    assertEquals(Moment.ON_THE_GROUND, moment(shop, shop.at("Start it")));
  }

  @Test
  void whereNothingRaisesTheVehicleAllIsOnTheGround() {
    SmallShop shop = SHOP.job("hoist", "level at engine");
    assertEquals(Moment.ON_THE_GROUND, moment(shop, shop.at("Look at it")));
  }

  /** Before the second end goes up, what is due there is before lifting once more. */
  @Test
  void whatPreparesTheSecondEndIsBeforeLiftingAgain() {
    SmallShop shop =
        SHOP.procedure(
                "brake-off",
                "at: vehicle\nopen: [{do: Release it, disturb: three, moment: before-lifting}]")
            .procedure("drum", "at: wheel\nbehind: [brake-off, roller-off]", "Drum", "four")
            .job("floor", "deep at front-left", "drum at rear-right");
    assertTrue(shop.at("Refit the vehicle on its wheels [front]") < shop.at("Release it"));
    assertEquals(Moment.BEFORE_LIFTING, moment(shop, shop.at("Release it")));
    assertEquals(Moment.BEFORE_LIFTING, moment(shop, shop.at("Put the jack there [rear]")));
    assertEquals(Moment.RAISED, moment(shop, shop.at("Jack it up [rear]")));
  }

  /** Ordinary work on the ground between the two is not. */
  @Test
  void workBetweenTwoRaisingsIsOnTheGround() {
    SmallShop shop =
        SHOP.procedure(
                "between",
                "at: vehicle\nafter: [deep]\nbefore: [drum]\n"
                    + "open: [{do: Look between, height: ground}]")
            .procedure("drum", "at: wheel\nbehind: [roller-off]", "Drum", "four")
            .job("floor", "deep at front-left", "between at vehicle", "drum at rear-right");
    shop.assertInOrder("Jack it up [front]", "Look between", "Jack it up [rear]");
    assertEquals(Moment.ON_THE_GROUND, moment(shop, shop.at("Look between")));
  }

  private static final SmallShop MEASURED =
      SHOP.procedure(
              "measured",
              "at: wheel\nopen: [{do: Measure it, measure: height, uses: tape, moment:"
                  + " before-lifting}]")
          .procedure(
              "bush", "at: wheel\nbehind: [measured, roller-off]", "Bush", "deep-bolt", "two")
          .procedure("strut", "at: wheel\nbehind: [measured, roller-off]", "Strut", "one");

  private static List<String> measured(SmallShop shop) {
    return ids(shop).stream().filter(id -> id.startsWith("blocks/measure")).toList();
  }

  /** Only a bush that is tightened at ride height asks whether the vehicle stands as before. */
  @Test
  void theHeightIsMeasuredAgainAtTheWheelsOfWhatIsTightenedAtIt() {
    SmallShop shop = MEASURED.job("hoist", "bush at front-left", "strut at rear-right");
    assertTrue(shop.at("Measure it [rear-right]") >= 0);
    assertEquals(List.of("blocks/measure/front-left"), measured(shop));
    assertEquals(
        List.of("blocks/measure/front-left", "blocks/measure/rear-left"),
        measured(MEASURED.job("hoist", "bush at rear-left", "bush at front-left")));
  }

  private static List<PlacedStep> lines(SmallShop shop) {
    Resolved resolved = shop.resolved();
    RaisingOrder.Ordered order = RaisingOrder.of(resolved).orElseThrow();
    return PhaseAssigner.lines(resolved, order.found(), order.graph());
  }

  private static Set<String> tools(List<PlacedStep> lines, String id) {
    PlacedStep line =
        lines.stream().filter(it -> it.step().source().id().equals(id)).findFirst().orElseThrow();
    return line.step().uses().stream().map(Procedure.Use::name).collect(Collectors.toSet());
  }

  @Test
  void theSecondMeasuringTakesTheToolsOfTheFirst() {
    List<PlacedStep> lines = lines(MEASURED.job("hoist", "bush at front-left"));
    assertEquals(Set.of("tape"), tools(lines, "blocks/measure/front-left"));
  }

  /** An axle is raised with what raised it before; neutral is selected with no tool at all. */
  @Test
  void theJackIsUsedForAnAxleAndTheBlocksWhereTheyGoUnder() {
    List<PlacedStep> lines = lines(SHOP.job("floor", "bush at front-left"));
    assertEquals(Set.of("trolley"), tools(lines, "blocks/raise-axle/front"));
    assertEquals(Set.of("trolley"), tools(lines, "blocks/raise-axle-off/rear"));
    assertTrue(tools(lines, "blocks/put-under-axle/front").contains("solid wheel blocks"));
    assertEquals(Set.of(), tools(lines, "blocks/neutral"));
    assertEquals(Set.of(), tools(lines, "blocks/apply-brake"));
  }

  /**
   * Both axles go up, and each has its own point for the jack; nothing else is said to have one.
   */
  @Test
  void eachAxleIsRaisedAtItsOwnPoint() {
    Map<String, String> points = new TreeMap<>();
    for (PlacedStep line : lines(SHOP.job("floor", "bush at front-left"))) {
      if (line.step().source() instanceof StepSource.Blocks blocks) {
        blocks.jacking().ifPresent(point -> points.put(blocks.id(), point));
      }
    }
    assertEquals(
        Map.of(
            "blocks/raise-axle/front", "the front beam",
            "blocks/raise-axle/rear", "the rear beam",
            "blocks/raise-axle-off/front", "the front beam",
            "blocks/raise-axle-off/rear", "the rear beam"),
        points);
  }

  /** Off the blocks the front comes last, so that chocks stay at wheels that do not steer. */
  @Test
  void theRearComesOffTheBlocksFirst() {
    assertOneAfterTheOther(
        SHOP.job("floor", "bush at front-left"),
        "blocks/raise-axle/front",
        "blocks/raise-axle/rear",
        "blocks/lower-axle-to-floor/rear",
        "blocks/lower-axle-to-floor/front");
  }

  private static final List<String> BRAKE =
      List.of("blocks/apply-brake", "blocks/let-roll", "blocks/hold-still");

  /** An electric brake in service mode is released, and nobody may wake its motor. */
  @Test
  void inServiceModeNobodyTouchesTheBrakeAtRideHeight() {
    SmallShop shop =
        SHOP.procedure(
            "mode",
            "at: vehicle\nopen: [{do: Set service mode, disturb: motor, moment:"
                + " before-lifting}]\nclose: [{do: End service mode, ends: motor, moment:"
                + " before-moving}]");
    List<String> ids = ids(shop.job("floor", "mode at vehicle", "bush at rear-left"));
    assertTrue(ids.contains("blocks/settle"), ids.toString());
    assertFalse(BRAKE.stream().anyMatch(ids::contains), ids.toString());
    assertTrue(ids(shop.job("floor", "bush at rear-left")).containsAll(BRAKE));
  }

  /** Parts of the blocks that are no brake's stay as they are. */
  @Test
  void inServiceModeTheVehicleStillGoesOntoItsBlocksAndOff() {
    SmallShop shop =
        SHOP.procedure(
            "mode",
            "at: vehicle\nopen: [{do: Set service mode, disturb: motor, moment: before-lifting}]");
    List<String> with = blocks(shop.job("floor", "mode at vehicle", "bush at rear-left"));
    List<String> without = blocks(shop.job("floor", "bush at rear-left"));
    assertEquals(without.stream().filter(id -> !BRAKE.contains(id)).toList(), with);
  }

  private static List<String> blocks(SmallShop shop) {
    return ids(shop).stream().filter(id -> id.startsWith("blocks/")).toList();
  }

  /** The wheel is tight before anything is tightened through it. */
  @Test
  void whatGaveAccessIsTightenedFirst() {
    String hub =
        "hub-nut: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque:"
            + " 100 N·m, final: on-the-ground}";
    SmallShop shop =
        SmallShop.bolted(hub)
            .with("catalogue/more.yaml", "items:\n  hub-nut: {name: hub nut, kinds: [fastener]}\n")
            .procedure("hub", "at: wheel\nbehind: [roller-off]", "Hub", "hub-nut")
            .job("hoist", "hub at front-left");
    assertOneAfterTheOther(shop, "final-torque/roller-nut", "final-torque/hub-nut");
  }

  /** What goes on while the vehicle stands on its wheels gets its final torque there and then. */
  @Test
  void whatGoesOnOnTheGroundWaitsForNothing() {
    SmallShop shop =
        SHOP.procedure("level", "at: wheel\nopen: [{do: Undo it, undo: deep-bolt, height: ground}]")
            .job("hoist", "level at front-left");
    assertEquals(
        Optional.empty(),
        ids(shop).stream().filter(id -> id.startsWith("final-torque")).findFirst());
  }
}
