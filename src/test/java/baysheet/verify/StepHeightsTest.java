package baysheet.verify;

import baysheet.plan.SmallShop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** At which height of the vehicle a step is out of reach, or somebody is inside. */
class StepHeightsTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              items:
                lever: {name: lever, kinds: [inside]}
                key: {name: key, kinds: [ignition-switch]}
                bag: {name: bag, kinds: [airbag]}
                belt: {name: belt, kinds: [seat-belt]}
              consequences:
                gated: {when: {undo: one}, check: Look at it, moment: before-lowering, source: us}
                bled: {when: {undo: two}, check: Bleed it, moment: raised, step: {height: [working, wheels-clear]}, source: us}
                seen: {when: {undo: three}, check: See it, moment: raised, step: {takes: 1 min}, source: us}
              """)
          .jacked()
          .procedure("gated", "at: wheel\nbehind: [roller-off]", "Gated", "one")
          .procedure("bled", "at: wheel\nbehind: [roller-off]", "Bled", "two")
          .procedure("seen", "at: wheel\nbehind: [roller-off]", "Seen", "three")
          .procedure(
              "low",
              "at: wheel\nbehind: [roller-off]\n"
                  + "open: [{do: Low, undo: three, height: wheels-clear}]")
          .procedure("floor", "at: vehicle", "On the floor", "lid")
          .procedure("motor", "at: engine", "Under the bonnet", "lid")
          .procedure("corner", "at: wheel", "At the corner", "lid")
          .procedure(
              "early",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Ease it, slacken: four, moment: before-lifting}
                - {do: Pull it, undo: one}
              work:
                - {do: Shake it}
                - {do: Push it down, moment: on-the-ground}
              """);

  private static final String DOWN = "Refit the vehicle on its wheels";

  private static String wrong(String heights, String now) {
    return "is for [%s], and the vehicle is at %s".formatted(heights, now);
  }

  private static SmallShop inside(String touching) {
    return SHOP.procedure(
            "inside",
            """
            at: vehicle
            behind: [raise]
            open:
              - {do: Look below, undo: four}
              - {do: Reach in, %s}
            """
                .formatted(touching))
        .job("hoist", "inside at vehicle");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "undo: lever",
        "undo: key",
        "undo: bag",
        "undo: belt",
        "disturb: key, back: Turn it back"
      })
  void nobodyReachesInWhileTheVehicleIsUp(String touching) {
    Spoiled.of(inside(touching))
        .behind("Look below", "Reach in")
        .is("Reach in", wrong("GROUND", "working"));
  }

  @ParameterizedTest
  @CsvSource({
    "undo: lever, Refit the lever",
    "undo: belt; back: Buckle it up, Buckle it up",
    "disturb: key; back: Turn it back, Turn it back"
  })
  void nobodyReachesInToPutRightWhatIsInside(String touching, String back) {
    Spoiled.of(inside(touching.replace(';', ',')))
        .behind("Look below", back)
        .is(back, wrong("GROUND", "working"));
  }

  @Test
  void aVehicleThatIsUpIsNotWorkedAtFromTheFloor() {
    SmallShop shop = SHOP.job("hoist", "seen at front-left", "floor at vehicle", "motor at engine");
    for (String step : new String[] {"On the floor", "Under the bonnet"}) {
      Spoiled.of(shop).behind("Hoist it", step).is(step, wrong("GROUND, WHEELS_CLEAR", "working"));
    }
    Spoiled.of(SHOP.job("hoist", "seen at front-left", "corner at front-left"))
        .saysNothingOf("is for [");
  }

  @Test
  void onStandsAVehicleIsWorkedAtFromTheFloor() {
    SmallShop shop = SHOP.job("floor", "seen at front-left", "floor at vehicle");
    Spoiled.of(shop).behind("Jack it up", "On the floor").saysNothingOf("is for [GROUND");
  }

  @Test
  void whatIsDoneOnItsWheelsIsNotDoneUpInTheAir() {
    SmallShop shop = SHOP.job("hoist", "early at front-left");
    Spoiled.of(shop).behind("Hoist it", "Ease it").is("Ease it", wrong("GROUND", "working"));
    Spoiled.of(shop)
        .behind("Shake it", "Push it down")
        .is("Push it down", wrong("GROUND", "working"));
  }

  @Test
  void whatIsDoneUnderItIsNotDoneOnItsWheels() {
    for (String step : new String[] {"Shake it", "Pull it"}) {
      Spoiled.of(SHOP.job("hoist", "early at front-left"))
          .behind(DOWN, step)
          .is(step, wrong("WORKING", "ground"));
      Spoiled.of(SHOP.job("floor", "early at front-left"))
          .behind("Let it down", step)
          .is(step, wrong("STANDS", "ground"));
    }
  }

  @Test
  void aCheckIsMadeAtItsHeights() {
    Spoiled.of(SHOP.job("hoist", "bled at front-left"))
        .behind(DOWN, "check/bled")
        .is("check/bled", wrong("WHEELS_CLEAR, WORKING", "ground"));
    Spoiled.of(SHOP.job("floor", "bled at front-left"))
        .behind("Let it down", "check/bled")
        .is("check/bled", wrong("STANDS", "ground"));
  }

  @Test
  void aCheckWithoutHeightsIsMadeWhereItsWorkWas() {
    Spoiled.of(SHOP.job("hoist", "seen at front-left"))
        .behind(DOWN, "check/seen")
        .is("check/seen", wrong("WORKING", "ground"));
    Spoiled.of(SHOP.job("hoist", "low at front-left"))
        .behind(DOWN, "check/seen")
        .is("check/seen", wrong("WHEELS_CLEAR", "ground"));
  }

  @Test
  void theStopBeforeLoweringIsAtAVehicleThatIsUp() {
    String gate = "checkpoint/raised";
    Spoiled.of(SHOP.job("hoist", "gated at front-left"))
        .behind(DOWN, gate)
        .is(gate, wrong("WHEELS_CLEAR, WORKING", "ground"));
    Spoiled.of(SHOP.job("floor", "gated at front-left"))
        .behind("Let it down", gate)
        .is(gate, wrong("STANDS", "ground"));
    Spoiled.of(SHOP.job("hoist", "gated at front-left", "low at rear-left"))
        .behind("height/working/wheels-clear/move", gate)
        .saysNothingOf("is for [");
  }

  @Test
  void aVehicleThatNoProcedureRaisesIsOnTheGround() {
    Spoiled moved = Spoiled.of(SHOP.job("hoist", "low at front-left"));
    Spoiled.of(SHOP.job("hoist", "floor at vehicle"))
        .before("On the floor", moved.step("height/working/wheels-clear/move"))
        .is("On the floor", wrong("GROUND", "wheels-clear"));
  }
}
