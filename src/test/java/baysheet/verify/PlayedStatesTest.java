package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.StepSource;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What steps and checks leave, until another step ends it, and which of them apply a brake. */
class PlayedStatesTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}",
              "blank: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque:"
                  + " unknown}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                lever: {name: lever, kinds: [parking-brake], left: brake released}
                motor: {name: motor, kinds: [electric-parking-brake], left: service mode}
                wedge: {name: wedge, kinds: [chocks], left: wheels chocked}
                spring: {name: spring, kinds: [], left: spring pressed}
                lamp: {name: lamp, kinds: [], left: lamp out}
                valve: {name: valve, kinds: [], left: valve shut}
                blank: {name: blank, kinds: [fastener]}
              consequences:
                off: {when: {undo: two}, check: Switch it off, moment: before-lifting, left: power off, source: us}
                lit: {when: {undo: two}, check: Open it, moment: raised, step: {ends: valve}, source: us}
                parked: {when: {undo: four}, check: Park it, moment: raised, step: {ends: motor}, source: us}
              """)
          .jacked()
          .procedure(
              "work",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Lamp out, undo: lamp}
                - {do: Shut it, disturb: valve}
                - {do: Press it, disturb: spring, back: Let it go}
                - {do: Two off, undo: two}
                - {do: Release it, disturb: lever}
              close:
                - {do: Two on, do-up: two}
                - {do: Lamp in, do-up: lamp}
                - {do: Apply it, ends: lever, moment: on-the-ground}
              """)
          .procedure(
              "spin",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Open it, undo: one, height: working}
                - {do: Let go, disturb: lever}
              close:
                - {do: Spin it, do-up: one, height: wheels-clear}
              """)
          .procedure(
              "motored",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Four off, undo: four}
                - {do: Start service mode, disturb: motor}
              close:
                - {do: Four on, do-up: four}
                - {do: End service mode, ends: motor, moment: on-the-ground}
              """)
          .procedure("near", "at: wheel\nbehind: [raise]", "Near", "three", "blank")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "three");

  private static final SmallShop WORK = SHOP.job("hoist", "work at vehicle");

  private static void assertLeft(SmallShop shop, String step, String... states) {
    assertLeft(shop, Spoiled.of(shop), step, states);
  }

  private static void assertLeft(SmallShop shop, Spoiled sheet, String step, String... states) {
    int after = sheet.sheet().steps().indexOf(sheet.step(step)) + 1;
    assertEquals(Set.of(states), LeftStates.of(sheet.sheet(), after, shop.resolved()), step);
  }

  @Test
  void whatAStepLeavesStaysUntilAnotherEndsIt() {
    String off = "power off";
    assertLeft(WORK, "chocks/take/vehicle", off);
    assertLeft(WORK, "Lamp out", off, "lamp out");
    assertLeft(WORK, "Press it", off, "lamp out", "valve shut", "spring pressed");
    assertLeft(WORK, "Two on", off, "lamp out", "valve shut", "spring pressed", "brake released");
    assertLeft(WORK, "Let it go", off, "lamp out", "valve shut", "brake released");
    assertLeft(WORK, "Lamp in", off, "valve shut", "brake released");
    assertLeft(WORK, "check/lit", off, "brake released");
    assertLeft(WORK, "chocks/set/vehicle", off, "brake released", "wheels chocked");
    assertLeft(WORK, "Apply it", off, "wheels chocked");
  }

  @Test
  void onlyACheckBeforeLiftingLeavesAState() {
    List<CheckLine> later =
        WORK.sheet().checks().stream()
            .map(check -> Altered.with(check, "moment", Moment.ON_THE_GROUND))
            .toList();
    Spoiled spoiled = Spoiled.of(WORK).sheet("checks", later);
    assertLeft(WORK, spoiled, "chocks/take/vehicle");
  }

  @Test
  void aCheckThatNoCatalogueKnowsLeavesNothing() {
    assertLeft(SHOP.job("floor", "near at front-left"), "Jack it up", "wheels chocked");
  }

  @Test
  void aBrakeThatIsAppliedForLoweringIsNotReleased() {
    SmallShop shop = SHOP.job("hoist", "spin at vehicle");
    assertLeft(shop, "Spin it", "brake released");
    assertLeft(shop, "height/wheels-clear/ground/brake");
  }

  @Test
  void chocksAreGoneOnlyWhereTheyWere() {
    SmallShop shop = SHOP.job("floor", "near at front-left");
    StepSource front = new StepSource.Chocks(false, Place.FRONT, false);
    StepSource rear = new StepSource.Chocks(false, Place.REAR, false);
    Spoiled other = Spoiled.of(shop);
    other.before("Near", Altered.with(other.step("chocks/set/rear"), "source", front));
    assertLeft(shop, other, "chocks/take/front", "wheels chocked");
    Spoiled same = Spoiled.of(shop);
    same.before("Near", Altered.with(same.step("chocks/set/rear"), "source", rear));
    assertLeft(shop, same, "chocks/take/rear");
  }

  @Test
  void chocksGoWithTheBlocksTheyStandOn() {
    SmallShop shop = SHOP.job("floor", "bush at front-left");
    String chocked = "wheels chocked";
    Spoiled jack = Spoiled.of(shop).without("chocks/set/rear [vehicle]").without("chocks/set/rear");
    assertLeft(shop, jack, "blocks/take-out-axle/rear", chocked);
    assertLeft(shop, jack, "blocks/take-out-axle/front");
    SmallShop hoist = SHOP.job("hoist", "bush at front-left");
    assertLeft(hoist, "blocks/raise-off", chocked);
    assertLeft(hoist, "blocks/take-out");
  }

  private static boolean brakes(SmallShop shop, String step) {
    return LeftStates.brakes(Spoiled.of(shop).step(step), shop.resolved());
  }

  @Test
  void aStepOrACheckThatEndsAReleasedBrakeAppliesIt() {
    SmallShop motored = SHOP.job("hoist", "motored at vehicle");
    assertEquals(true, brakes(WORK, "Apply it"));
    assertEquals(true, brakes(motored, "End service mode"));
    assertEquals(true, brakes(motored, "check/parked"));
    assertEquals(false, brakes(WORK, "Release it"));
    assertEquals(false, brakes(WORK, "Let it go"));
    assertEquals(false, brakes(WORK, "check/lit"));
  }
}
