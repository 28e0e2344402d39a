package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** At which heights a step can be done, from what it says, where it is, and what it belongs to. */
class HeightNeedsTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              """
              items:
                seat: {name: seat, kinds: [inside]}
                keys: {name: ignition, kinds: [ignition-switch]}
                prop: {name: arm jack, kinds: [jacked]}
              """)
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "two");

  private static final Set<Height> GROUND = EnumSet.of(Height.GROUND);
  private static final Set<Height> WORKING = EnumSet.of(Height.WORKING);
  private static final Set<Height> STANDS = EnumSet.of(Height.STANDS);
  private static final Set<Height> ALL =
      EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR, Height.WORKING);

  private record Step(PlannedStep step, HeightNeeds.Need need) {}

  private static Step step(SmallShop shop, String id) {
    StepGraph graph = StepGraph.of(shop.resolved());
    for (int node = 0; node < graph.drafts().size(); node++) {
      if (graph.drafts().get(node).source().id().equals(id)) {
        return new Step(graph.drafts().get(node), graph.heights().steps().get(node));
      }
    }
    throw new IllegalArgumentException(id);
  }

  private static Set<Height> at(SmallShop shop, String id) {
    return step(shop, id).need().at();
  }

  /** Who reaches a thing only from below works where the vehicle rests on locks or stands. */
  @Test
  void whatLiesBehindRaisingIsDoneWhereTheVehicleRests() {
    assertEquals(WORKING, at(SHOP.job("hoist", "deep at front-left"), "deep/open/1"));
    assertEquals(STANDS, at(SHOP.job("floor", "deep at front-left"), "deep/open/1"));
    assertEquals(
        WORKING, at(SHOP.job("hoist", "deep at front-left"), "roller-off/open/1/back/roller"));
  }

  @Test
  void whereNothingRaisesTheVehicleAllIsOnTheGround() {
    SmallShop shop = SHOP.procedure("free", "at: wheel", "Free", "one");
    assertEquals(GROUND, at(shop.job("hoist", "free at front-left"), "free/open/1"));
  }

  /** Nobody reaches into the engine bay of a vehicle above his head; a wheel he does. */
  @Test
  void workFromAboveIsNotDoneHigh() {
    SmallShop shop =
        SHOP.procedure("engine", "at: engine", "Engine", "three")
            .procedure("whole", "at: vehicle", "Whole", "four")
            .procedure("wheel", "at: wheel", "Wheel", "three")
            .job(
                "hoist",
                "deep at front-left",
                "engine at engine",
                "whole at vehicle",
                "wheel at rear-left");
    Set<Height> low = EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR);
    assertEquals(low, at(shop, "engine/open/1"));
    assertEquals(low, at(shop, "whole/open/1"));
    assertEquals(ALL, at(shop, "wheel/open/1"));
  }

  @Test
  void aStepThatNamesItsHeightsIsDoneThere() {
    SmallShop shop =
        SHOP.procedure(
            "low",
            "at: wheel\nbehind: [raise]\nopen: [{do: Low, undo: three, height: [ground,"
                + " wheels-clear]}]");
    assertEquals(
        EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR),
        at(shop.job("hoist", "low at front-left"), "low/open/1"));
    assertEquals(
        EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR),
        at(shop.job("hoist", "low at front-left"), "low/open/1/back/three"));
    assertEquals(GROUND, at(shop.job("floor", "low at front-left"), "low/open/1"));
  }

  /** Nobody is inside a vehicle that is raised, also where that lies behind raising. */
  @Test
  void whatIsDoneInsideIsDoneOnTheGroundAndPutBackThere() {
    for (String key : List.of("undo: seat", "disturb: keys")) {
      SmallShop shop =
          SHOP.procedure(
                  "inner",
                  "at: vehicle\nbehind: [raise]\nopen: [{do: Sit down, %s}, {do: Up, undo: three}]"
                      .formatted(key))
              .job("hoist", "inner at vehicle");
      assertEquals(GROUND, at(shop, "inner/open/1"), key);
      assertEquals(WORKING, at(shop, "inner/open/2"), key);
    }
    SmallShop seat =
        SHOP.procedure("inner", "at: vehicle\nbehind: [raise]", "Seat out", "seat")
            .job("hoist", "inner at vehicle");
    assertEquals(GROUND, at(seat, "inner/open/1/back/seat"));
    SmallShop own =
        SHOP.procedure(
                "inner",
                "at: vehicle\nbehind: [raise]\nopen: [{do: Seat out, undo: seat}]\n"
                    + "close: [{do: Seat in, do-up: seat}]")
            .job("hoist", "inner at vehicle");
    assertEquals(GROUND, at(own, "inner/close/1"));
  }

  @Test
  void whatIsDueBeforeLiftingIsDoneOnTheGround() {
    SmallShop shop =
        SHOP.procedure(
                "early",
                "at: wheel\nbehind: [raise]\nopen: [{do: Slacken it, slacken: lid, moment:"
                    + " before-lifting}, {do: Off, undo: three, moment: raised}]")
            .job("hoist", "early at front-left");
    assertEquals(GROUND, at(shop, "early/open/1"));
    assertEquals(WORKING, at(shop, "early/open/2"));
  }

  private static final SmallShop HOISTED =
      SHOP.procedure(
          "hoisted",
          "at: vehicle\nserves: raise\nneeds: lift\nopen:\n"
              + "  - {do: Measure, measure: height, moment: before-lifting}\n"
              + "  - {do: Set the pads}\n"
              + "  - {do: Hoist it, undo: feet}\n"
              + "work: [{do: Look round}]\n"
              + "close: [{do: Look below}, {do: Lower it, do-up: feet}, {do: Stow, moment:"
              + " on-the-ground}]");

  /**
   * Raising is one go from its first preparation on; what waits for its own moment is not in it.
   */
  @Test
  void thePreparationsOfRaisingBelongToIt() {
    SmallShop shop = HOISTED.job("hoist", "below at vehicle");
    for (String id :
        List.of("hoisted/open/2", "hoisted/open/3", "hoisted/close/1", "hoisted/close/2")) {
      Step step = step(shop, id);
      assertEquals(Optional.of(step.step().task()), step.need().lifting(), id);
      assertEquals(ALL, step.need().at(), id);
    }
    assertEquals(Optional.empty(), step(shop, "hoisted/open/1").need().lifting());
    assertEquals(GROUND, at(shop, "hoisted/open/1"));
    assertEquals(Optional.empty(), step(shop, "hoisted/work/1").need().lifting());
    assertEquals(Optional.empty(), step(shop, "below/open/1").need().lifting());
  }

  @Test
  void onlyWhatTheVehicleStandsOnRaisesAndLowersIt() {
    SmallShop shop = HOISTED.job("hoist", "below at vehicle");
    ItemAt feet = new ItemAt("feet", Place.VEHICLE);
    assertEquals(Set.of(feet), step(shop, "hoisted/open/3").need().raises());
    assertEquals(Set.of(), step(shop, "hoisted/open/3").need().lowers());
    assertEquals(Set.of(feet), step(shop, "hoisted/close/2").need().lowers());
    assertEquals(Set.of(), step(shop, "below/open/1").need().raises());
    assertEquals(Set.of(), step(shop, "below/open/1/back/two").need().lowers());
  }

  /** A wheel that is off and a jack under a part are in the way, and nothing else is. */
  @Test
  void wheelsAndJacksUnderPartsAreInTheWayOfMoving() {
    SmallShop shop =
        SHOP.procedure("propped", "at: wheel\nbehind: [roller-off]", "Prop it", "prop", "lid")
            .job("hoist", "propped at front-left");
    ItemAt roller = new ItemAt("roller", Place.FRONT_LEFT);
    ItemAt prop = new ItemAt("prop", Place.FRONT_LEFT);
    assertEquals(Set.of(roller), step(shop, "roller-off/open/1").need().off());
    assertEquals(Set.of(roller), step(shop, "roller-off/open/1/back/roller").need().on());
    assertEquals(Set.of(prop), step(shop, "propped/open/1").need().off());
    assertEquals(Set.of(prop), step(shop, "propped/open/1/back/prop").need().on());
    assertEquals(Set.of(), step(shop, "propped/open/1/back/lid").need().on());
    assertEquals(Set.of(prop), StepGraph.of(shop.resolved()).heights().jacked());
  }

  /** What stands on its own end only is barred by a wheel of that end. */
  @Test
  void aWheelBarsTheEndThatItCarries() {
    ItemAt prop = new ItemAt("prop", Place.FRONT_LEFT);
    HeightNeeds needs = new HeightNeeds(ALL, List.of(), Set.of(prop));
    Set<ItemAt> wheel = Set.of(new ItemAt("roller", Place.FRONT_LEFT));
    assertTrue(needs.bars(new ItemAt("feet", Place.VEHICLE), wheel));
    assertTrue(needs.bars(new ItemAt("feet", Place.FRONT), wheel));
    assertFalse(needs.bars(new ItemAt("feet", Place.REAR), wheel));
    assertFalse(needs.bars(new ItemAt("feet", Place.FRONT), Set.of(prop)));
    assertFalse(needs.bars(new ItemAt("feet", Place.VEHICLE), Set.of()));
  }

  private static SmallShop checked(String step, String... works) {
    return SHOP.with(
            "catalogue/checks.yaml",
            """
            consequences:
              seen: {when: {undo: [one, three]}, check: See it, moment: raised, step: {%s}, source: us}
            """
                .formatted(step))
        .procedure("level", "at: engine\nopen: [{do: Level, undo: three, height: ground}]")
        .procedure(
            "low",
            "at: wheel\nbehind: [raise]\nopen: [{do: Low, undo: three, height:" + " wheels-clear}]")
        .job("hoist", works);
  }

  /** Whoever did the work looks at it where he did it. */
  @Test
  void aCheckIsMadeWhereTheWorkIsDoneThatBringsIt() {
    assertEquals(WORKING, at(checked("", "deep at front-left"), "check/seen"));
    assertEquals(
        EnumSet.of(Height.WHEELS_CLEAR), at(checked("", "low at front-left"), "check/seen"));
  }

  @Test
  void aCheckThatNamesItsHeightsIsMadeThere() {
    assertEquals(
        EnumSet.of(Height.WHEELS_CLEAR),
        at(checked("height: wheels-clear", "deep at front-left"), "check/seen"));
  }

  /** A check of the raised vehicle is made raised, though its work stays on the ground. */
  @Test
  void aCheckOfWorkOnTheGroundIsMadeWhileTheVehicleIsRaised() {
    assertEquals(WORKING, at(checked("", "level at engine", "below at vehicle"), "check/seen"));
  }

  /** A check that is due while the vehicle is raised is made in a job that does not raise it. */
  @Test
  void aCheckOfAVehicleThatIsNeverRaisedIsMadeOnTheGround() {
    SmallShop shop = checked("", "level at engine");
    assertEquals(GROUND, at(shop, "check/seen"));
    assertTrue(shop.at("See it") > shop.at("Level"), shop.steps().toString());
  }

  /** What is shut once the vehicle is down, under a lid that is then still off. */
  @Test
  void whatIsDueOnTheGroundIsDoneThereAlsoBehindRaising() {
    SmallShop shop =
        SHOP.procedure("lidded", "at: wheel", "Lid off", "lid")
            .procedure(
                "filled",
                "at: wheel\nbehind: [lidded, raise]\nopen: [{do: Drain it, undo: three}]\n"
                    + "close: [{do: Fill it, do-up: three, moment: on-the-ground}]")
            .job("hoist", "filled at front-left");
    assertEquals(WORKING, at(shop, "filled/open/1"));
    assertEquals(GROUND, at(shop, "filled/close/1"));
    shop.assertInOrder("Refit the vehicle", "Fill it", "Refit the lid");
  }

  /** What is switched off from the seat is switched on from there. */
  @Test
  void whatIsLeftInsideIsEndedOnTheGround() {
    SmallShop shop =
        SHOP.procedure(
                "inner",
                "at: vehicle\nbehind: [raise]\n"
                    + "open: [{do: Switch off, disturb: keys, back: Switch on}]")
            .job("hoist", "inner at vehicle");
    assertEquals(GROUND, at(shop, "inner/open/1/back"));
  }

  @Test
  void stepsMeetWhereSomeHeightSuitsBoth() {
    HeightNeeds needs =
        new HeightNeeds(
            ALL,
            List.of(
                HeightNeeds.Need.of(GROUND),
                HeightNeeds.Need.of(WORKING),
                HeightNeeds.Need.of(ALL)),
            Set.of());
    assertFalse(needs.meet(0, 1));
    assertTrue(needs.meet(0, 2));
    assertTrue(needs.meet(2, 1));
  }

  /** A milestone of a task is no step: it puts nothing on. */
  @Test
  void onlyStepsPutSomethingOn() {
    ItemAt roller = new ItemAt("roller", Place.FRONT_LEFT);
    HeightNeeds.Need on =
        new HeightNeeds.Need(ALL, Optional.empty(), Set.of(), Set.of(), Set.of(), Set.of(roller));
    HeightNeeds needs = new HeightNeeds(ALL, List.of(HeightNeeds.Need.of(ALL), on), Set.of());
    assertEquals(Set.of(), needs.on(0));
    assertEquals(Set.of(roller), needs.on(1));
    assertEquals(Set.of(), needs.on(2));
  }
}
