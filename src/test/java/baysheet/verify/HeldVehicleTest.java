package baysheet.verify;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import org.junit.jupiter.api.Test;

/** What holds a vehicle that stands on wheels: where chocks are, and whether a brake holds. */
class HeldVehicleTest {
  private static final String JACKED =
      """
      at: axle
      serves: raise
      needs: jack
      open:
        - {do: Jack it up, undo: feet}
      close:
        - {do: Let it down, do-up: feet}
      """;

  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                lever: {name: lever, kinds: [parking-brake]}
                wedge: {name: wedge, kinds: [chocks]}
              """)
          .procedure("jacked", JACKED)
          .procedure("near", "at: wheel\nbehind: [raise]", "Work", "one")
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "two")
          .procedure(
              "run",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Open it, undo: three, height: working}
                - {do: Run it, undo: four, height: ground}
              """);

  private static final String UNHELD =
      "raises an axle, and no chock holds the wheels that stay down";
  private static final String ONTO_CHOCKS = "lowers wheels on to chocks";
  private static final String UP = "chocks wheels that are up";

  private static SmallShop both() {
    return SHOP.job("floor", "near at front-left", "near at rear-left");
  }

  private static SmallShop jacked(String preparing) {
    return SHOP.procedure("jacked", JACKED.replace("open:\n", "open:\n  - " + preparing + "\n"));
  }

  /** The step that sets or takes chocks, elsewhere. */
  private static Sheet.SheetStep at(Sheet.SheetStep step, boolean set, Place where) {
    return Altered.with(step, "source", new StepSource.Chocks(set, where, false));
  }

  @Test
  void noAxleIsChockedThatIsUp() {
    Spoiled.of(both()).before("Let it down [front]", "chocks/set/front").is("chocks/set/front", UP);
  }

  @Test
  void anAxleIsUpWhileOneOfItsWheelsIs() {
    SmallShop shop =
        SHOP.procedure("jacked", JACKED.replace("axle", "wheel"))
            .job("floor", "near at front-left", "near at front-right");
    Spoiled spoiled = Spoiled.of(shop);
    spoiled
        .behind("Jack it up [front-right]", "Let it down [front-left]")
        .before("Work [front-right]", at(spoiled.step("chocks/set/rear"), true, Place.FRONT))
        .is("chocks/set/front", UP);
  }

  @Test
  void whatStaysDownLastIsHeldUntilItIsUpToo() {
    Spoiled.of(SHOP.job("floor", "below at vehicle"))
        .without("chocks/set/rear")
        .is("Jack it up [rear]", UNHELD);
  }

  @Test
  void chocksAtTheAxleThatGoesUpHoldNothing() {
    Spoiled spoiled = Spoiled.of(SHOP.job("floor", "near at front-left"));
    spoiled
        .with("chocks/set/rear", "source", new StepSource.Chocks(true, Place.FRONT, false))
        .is("Jack it up [front]", UNHELD);
  }

  @Test
  void theVehicleIsHeldWhileAJackTakesItAgain() {
    Spoiled.of(SHOP.job("floor", "run at vehicle"))
        .without("chocks/set/vehicle")
        .is("height/ground/stands/jack", UNHELD);
  }

  @Test
  void chocksOnTheFloorAreInTheWayUntilSomebodyTakesThemAway() {
    Spoiled.of(SHOP.job("hoist", "bush at rear-left"))
        .before("blocks/tyres-on", "chocks/take/vehicle")
        .says(ONTO_CHOCKS);
    Spoiled spoiled = Spoiled.of(SHOP.job("hoist", "bush at rear-left"));
    spoiled.without("chocks/take/vehicle").without("chocks/take/vehicle");
    spoiled.is("blocks/lower-to-floor", ONTO_CHOCKS);
  }

  /** A procedure that raises an axle chocks the other one, whatever it calls that. */
  @Test
  void ownChocksOfRaisingStandAtTheOtherAxle() {
    SmallShop shop =
        jacked("{do: Chock it, uses: [wheel chocks]}")
            .job("floor", "near at front-left", "near at rear-left");
    Spoiled.of(shop).without("chocks/take/rear").is("Let it down [rear]", ONTO_CHOCKS);
  }

  @Test
  void chocksThatOnlyAWayOutAsksForHoldNothing() {
    SmallShop shop =
        jacked("{do: Look, uses: [{if-stuck: wheel chocks}], if-stuck: [Push it]}")
            .job("floor", "near at front-left");
    Spoiled.of(shop).without("chocks/set/rear").is("Jack it up [front]", UNHELD);
  }

  private static SmallShop wedged(String at) {
    return SHOP.procedure(
            "wedged",
            """
            at: wheel
            open:
              - {do: Wedge it, disturb: wedge, moment: before-lifting}
              - {do: Two, undo: two}
            """)
        .job("floor", "near at " + at, "wedged at front-left");
  }

  /** Only what raises an axle chocks the other one; any other work chocks its own. */
  @Test
  void workThatDoesNotRaiseChocksItsOwnWheels() {
    Spoiled.of(wedged("rear-left"));
    Spoiled.of(wedged("rear-left")).without("Wedge it").is("Jack it up [rear]", UNHELD);
    Spoiled.of(wedged("front-left")).without("chocks/set/rear").is("Jack it up [front]", UNHELD);
  }

  /** Once an axle is down, what its lowering ends with chocks that axle. */
  @Test
  void loweringChocksTheAxleThatCameDown() {
    SmallShop shop =
        SHOP.procedure(
                "jacked", JACKED + "  - {do: Wedge it, disturb: wedge, moment: on-the-ground}\n")
            .job("floor", "near at front-left", "near at rear-left");
    Spoiled.of(shop).without("Wedge it [front]").is("Jack it up [rear]", UNHELD);
  }

  @Test
  void aPartThatIsNoWheelComesOffABrakedAxle() {
    Spoiled.of(SHOP.job("hoist", "near at rear-left"))
        .without("height/ground/ground/brake")
        .isOnly(
            "Hoist it",
            "begins to raise a vehicle that neither its parking brake nor a chock holds");
  }

  @Test
  void aBrakeThatAProcedureReleasesIsAppliedAgain() {
    SmallShop shop =
        SHOP.procedure(
                "spin",
                """
                at: vehicle
                behind: [raise]
                open:
                  - {do: Apply it, ends: lever, moment: before-lifting}
                  - {do: Open it, undo: one, height: working}
                  - {do: Release it, disturb: lever}
                close:
                  - {do: Spin it, do-up: one, height: wheels-clear}
                """)
            .job("hoist", "spin at vehicle");
    Spoiled.of(shop)
        .without("height/wheels-clear/ground/brake")
        .isOnly("Refit the vehicle", "lowers wheels that no parking brake holds");
  }

  /** A chock that stands somewhere is looked for under a lift only; it is under a jack, too. */
  @Test
  void chocksThatAreLeftUnderAVehicleOnStandsAreInItsWay() {
    Spoiled.of(SHOP.job("floor", "run at vehicle"))
        .without("chocks/take/vehicle")
        .says(ONTO_CHOCKS);
  }
}
