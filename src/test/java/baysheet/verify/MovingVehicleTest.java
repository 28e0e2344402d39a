package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Height;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be under, in or on a vehicle while it is raised or lowered, and that it is tried. */
class MovingVehicleTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              items:
                jack: {name: jack, kinds: [temporary, jacked], back: Take the jack away}
              cautions:
                pads: {signal: WARNING, when: {kind: support}, do: Set the pads, hazard: it slides, consequence: it crushes, source: us}
              """)
          .procedure(
              "hoisted",
              """
              at: vehicle
              serves: raise
              needs: lift
              open:
                - {do: Hoist it, undo: feet}
                - {do: Try it}
              """)
          .procedure(
              "jacked",
              """
              at: axle
              serves: raise
              needs: jack
              open:
                - {do: Look under it}
                - {do: Jack it up, undo: feet}
                - {do: Rock it}
              close:
                - {do: Let it down, do-up: feet}
              """)
          .procedure(
              "low",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Look, undo: one, height: working}
                - {do: Press, undo: two, height: wheels-clear}
              """)
          .procedure(
              "held",
              """
              at: wheel
              behind: [raise]
              open:
                - {do: Set the jack, disturb: jack, height: wheels-clear}
                - {do: Undo it, undo: three, height: wheels-clear}
              """)
          .procedure("plain", "at: wheel\nbehind: [roller-off]", "Work", "one")
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three")
          .procedure(
              "run",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Open it, undo: three, height: working}
                - {do: Run it, undo: four, height: ground}
              """);

  private static final SmallShop LOW = SHOP.job("hoist", "low at front-left");
  private static final SmallShop HELD = SHOP.job("hoist", "held at front-left");
  private static final SmallShop RUN = SHOP.job("floor", "run at vehicle");

  private static final String UNTRIED_LIFT = "comes before hoisted/open/2";
  private static final String UNTRIED_STANDS = "comes before jacked/open/3";
  private static final String JACK = "moves the vehicle, and jack@front-left is under it";
  private static final String DOWN = "Refit the vehicle on its wheels";

  @Test
  void aPartOfAChangeThatIsLeftOutIsToldOnce() {
    Spoiled spoiled = Spoiled.of(LOW).without("height/wheels-clear/working/locks");
    assertEquals(
        List.of("step 14 comes before [LOCKS] of a change of height"),
        spoiled.faults().stream().filter(it -> it.contains("of a change of height")).toList());
  }

  @Test
  void noChockIsTakenAwayBeforeTheStandsAreTried() {
    Spoiled.of(RUN)
        .before("Rock it [rear]", "chocks/take/rear")
        .isOnly("chocks/take/rear", UNTRIED_STANDS);
  }

  @Test
  void noAxleGoesUpBeforeTheOtherIsTried() {
    Spoiled.of(RUN)
        .behind("Jack it up [rear]", "Rock it [front]")
        .is("Jack it up [rear]", UNTRIED_STANDS);
  }

  @Test
  void nothingIsLoweredBeforeItWasTried() {
    Spoiled.of(HELD).behind(DOWN, "Try it").is(DOWN, UNTRIED_LIFT);
  }

  @Test
  void noHeightIsChangedBeforeTheLiftWasTried() {
    String look = "height/working/wheels-clear/look";
    Spoiled.of(HELD).behind(look, "Try it").is(look, UNTRIED_LIFT);
  }

  /** It is out of its order, and that is said once. */
  @Test
  void aTrialThatStandsAheadOfRaisingIsNotMissedAtEachStepBehind() {
    Spoiled spoiled = Spoiled.of(HELD).before("Hoist it", "Try it");
    spoiled.with("Try it", "n", 2).with("Hoist it", "n", 3).saysNothingOf(UNTRIED_LIFT);
    spoiled.says("step 2 comes before step 3, which is written first");
  }

  @Test
  void aVehicleThatIsUpIsNotRaised() {
    Spoiled.of(LOW)
        .before("Hoist it", "height/wheels-clear/working/move")
        .is("Hoist it", "raises a vehicle that is up");
  }

  @Test
  void aVehicleThatIsDownIsNotLowered() {
    Spoiled.of(LOW).twice(DOWN).is(DOWN, "lowers a vehicle that is down");
  }

  @Test
  void noJackIsUnderAVehicleThatALiftRaises() {
    Spoiled.of(HELD).before("Hoist it", "Set the jack").is("Hoist it", JACK);
  }

  @Test
  void noJackIsUnderAVehicleThatALiftLowers() {
    Spoiled.of(HELD).behind(DOWN, "Take the jack away").is(DOWN, JACK);
  }

  @Test
  void noJackIsUnderAVehicleThatChangesItsHeight() {
    String look = "height/working/wheels-clear/look";
    Spoiled.of(HELD).before(look, "Set the jack").is(look, JACK);
  }

  @Test
  void noWheelIsOffWhenTheVehicleComesDown() {
    Spoiled.of(LOW)
        .behind(DOWN, "Refit the roller [front-left]")
        .is(DOWN, "brings the vehicle to the ground, and roller@front-left is off");
  }

  @Test
  void aWheelIsOffWhileTheOtherAxleComesDown() {
    SmallShop shop = SHOP.job("floor", "plain at front-left", "below at vehicle");
    Spoiled spoiled = Spoiled.of(shop);
    spoiled
        .behind("Let it down [rear]", "Refit the roller [front-left]")
        .behind("Let it down [rear]", "Let it down [front]")
        .is(
            "Let it down [front]",
            "brings the vehicle to the ground, and roller@front-left is off");
    assertEquals(
        1, spoiled.faults().stream().filter(it -> it.contains("brings the vehicle")).count());
  }

  @Test
  void whoeverPreparesRaisingIsWarnedAlready() {
    for (String axle : List.of("[front]", "[rear]")) {
      Spoiled.of(RUN)
          .with("Look under it " + axle, "letters", new Sheet.Letters(List.of(), List.of()))
          .isOnly("Look under it " + axle, "begins to raise the vehicle without letter A");
    }
  }

  private static void assertImpossible(SmallShop shop, String step, Height to) {
    Spoiled spoiled = Spoiled.of(shop);
    StepSource.HeightChange change = (StepSource.HeightChange) spoiled.step(step).source();
    StepSource other = new StepSource.HeightChange(change.from(), to, HeightPart.LOOK);
    String wrong = other.id();
    spoiled
        .before(step, Altered.with(spoiled.step(step), "source", other))
        .is(wrong, "brings the vehicle from " + change.from().word() + " to " + to.word());
  }

  @Test
  void noJackBringsAVehicleToAHeightOfALift() {
    assertImpossible(RUN, "height/stands/ground/look", Height.WHEELS_CLEAR);
    assertImpossible(RUN, "height/stands/ground/look", Height.WORKING);
  }

  @Test
  void noLiftBringsAVehicleOnToStands() {
    assertImpossible(LOW, "height/working/wheels-clear/look", Height.STANDS);
  }
}
