package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.report.Problem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A height that cannot be is reported at the step that asks for it, with what is in its way. */
class HeightRuleTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              """
              items:
                seat: {name: seat, kinds: [inside]}
                keys: {name: ignition, kinds: [ignition-switch]}
                bag: {name: airbag, kinds: [airbag]}
                belt: {name: belt, kinds: [seat-belt]}
                prop: {name: arm jack, kinds: [jacked]}
                under: {name: engine jack, kinds: [jacked]}
              """);

  private static List<Problem> inside(String text) {
    return SHOP
        .procedure("own", "at: vehicle\n" + text)
        .job("hoist", "own at vehicle")
        .problems()
        .stream()
        .filter(problem -> problem.code().word().equals("inside-raised"))
        .toList();
  }

  /** Nobody sits in a vehicle that is up, whatever he is there for. */
  @Test
  void nothingIsDoneInsideAVehicleThatIsRaised() {
    for (String item : List.of("seat", "keys", "bag", "belt")) {
      for (String key : List.of("undo", "disturb")) {
        assertEquals(
            1,
            inside("open: [{do: Sit down, %s: %s, height: working}]".formatted(key, item)).size(),
            key + " " + item);
      }
    }
    assertTrue(
        inside("open: [{do: Sit down, undo: seat, height: working}]")
            .get(0)
            .what()
            .endsWith("nobody is inside while it is at working height"));
    assertEquals(
        1,
        inside(
                "open: [{do: Off, undo: seat, height: ground}]\n"
                    + "close: [{do: On, do-up: seat, height: working}]")
            .size());
    assertEquals(1, inside("work: [{do: Turn it, disturb: keys, height: working}]").size());
  }

  /** Just clear of the floor it is reached through the door; elsewhere nobody is inside. */
  @Test
  void whatIsReachedFromTheFloorMayBeDoneInside() {
    assertEquals(List.of(), inside("work: [{do: Turn it, disturb: keys, height: ground}]"));
    assertEquals(List.of(), inside("work: [{do: Turn it, disturb: keys, height: wheels-clear}]"));
    assertEquals(List.of(), inside("work: [{do: Turn it, disturb: lid, height: working}]"));
  }

  private static Problem outOfReach(SmallShop shop) {
    List<Problem> problems = shop.problems();
    assertEquals(
        List.of("height-out-of-reach"),
        problems.stream().map(problem -> problem.code().word()).toList());
    return problems.get(0);
  }

  private static void assertSays(String why, String expected, SmallShop shop) {
    Problem problem = outOfReach(shop);
    assertTrue(problem.what().endsWith(", and " + why), problem.what());
    assertEquals(Optional.of(expected), problem.expected());
    assertEquals(1, problem.related().size());
  }

  private static final String ANOTHER =
      "other heights for this step, or another order of the steps";
  private static final String LIFT = "a bay with a lift, or other heights for this step";

  @Test
  void aJackHasNoHeightWithTheWheelsJustClear() {
    SmallShop shop =
        SHOP.procedure(
            "low", "at: wheel\nbehind: [roller-off]\nwork: [{do: Look low, height: wheels-clear}]");
    assertSays("a jack has no such height", LIFT, shop.job("floor", "low at front-left"));
    String what = outOfReach(shop.job("floor", "low at front-left")).what();
    assertTrue(what.contains("with the vehicle with its wheels just clear of the floor"), what);
  }

  @Test
  void aLiftThatIsNotUsedRaisesNothing() {
    SmallShop shop =
        SHOP.procedure("high", "at: vehicle\nwork: [{do: Look high, height: working}]");
    assertSays(
        "nothing in this job raises the vehicle", ANOTHER, shop.job("hoist", "high at vehicle"));
  }

  /** The vehicle would stand on its hub. */
  @Test
  void aWheelThatIsOffIsInTheWayOfTheGround() {
    SmallShop shop =
        SHOP.procedure(
            "level", "at: wheel\nbehind: [roller-off]\nwork: [{do: Look, height: ground}]");
    for (String bay : List.of("hoist", "floor")) {
      Problem problem = outOfReach(shop.job(bay, "level at front-right"));
      assertTrue(
          problem
              .what()
              .endsWith(
                  "on the ground, and the vehicle cannot be moved while roller at front-right is"
                      + " off"),
          problem.what());
    }
    assertSays(
        "the vehicle cannot be moved while roller at front-right is off",
        ANOTHER,
        shop.job("hoist", "level at front-right"));
  }

  /** A lift that moves tips what stands under a part. */
  @Test
  void aJackUnderAPartIsInTheWayOfEveryOtherHeight() {
    SmallShop shop =
        SHOP.procedure(
            "propped",
            "at: wheel\nbehind: [raise]\nopen: [{do: Prop it, undo: prop, height: working}]\n"
                + "work: [{do: Look, height: wheels-clear}]");
    assertSays(
        "the vehicle cannot be moved while prop at rear-left is in place",
        ANOTHER,
        shop.job("hoist", "propped at rear-left"));
  }

  /** Of several things in the way, a jack is named, for it bars every height. */
  @Test
  void aJackIsNamedBeforeAWheel() {
    SmallShop shop =
        SHOP.procedure(
            "propped",
            "at: wheel\nbehind: [roller-off]\nopen: [{do: Prop it, undo: under, height:"
                + " working}]\nwork: [{do: Look, height: ground}]");
    assertSays(
        "the vehicle cannot be moved while under at rear-left is in place",
        ANOTHER,
        shop.job("hoist", "propped at rear-left"));
  }

  /** What has to be done before the vehicle goes up cannot wait for a height. */
  @Test
  void whatComesBeforeRaisingCannotBeDoneHigh() {
    SmallShop shop =
        SHOP.procedure("early", "at: vehicle\nwork: [{do: Look high, height: working}]")
            .procedure("deep", "at: vehicle\nbehind: [raise]", "Deep", "one");
    assertSays(
        "the steps before and after it need another height",
        ANOTHER,
        shop.procedure(
                "hoisted",
                "at: vehicle\nserves: raise\nneeds: lift\nafter: [early]\n"
                    + "open: [{do: Hoist it, undo: feet}]")
            .job("hoist", "early at vehicle", "deep at vehicle"));
  }

  @Test
  void whatAnOrderAllowsIsNotReported() {
    SmallShop shop =
        SHOP.procedure(
            "turns",
            "at: wheel\nbehind: [raise]\nwork: [{do: High, height: working}, {do: Low, height:"
                + " wheels-clear}, {do: Level, height: ground}]");
    assertEquals(List.of(), shop.job("hoist", "turns at front-left").problems());
  }

  /** Where a jack lifts, working height is on stands, and the message says so. */
  @Test
  void theHeightIsNamedAsTheBayHasIt() {
    SmallShop shop =
        SHOP.procedure("early", "at: axle\nwork: [{do: Look below, height: working}]")
            .procedure(
                "jacked",
                "at: axle\nserves: raise\nneeds: jack\nafter: [early]\n"
                    + "open: [{do: Jack it up, undo: feet}]")
            .procedure("deep", "at: axle\nbehind: [raise]", "Deep", "one");
    String what = outOfReach(shop.job("floor", "early at front", "deep at front")).what();
    assertTrue(what.startsWith("\"Look below\" is done with the vehicle on stands, and "), what);
  }
}
