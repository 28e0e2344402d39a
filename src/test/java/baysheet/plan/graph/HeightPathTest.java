package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.graph.HeightNeeds.Need;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** How high the vehicle is at each step of an order, with as few changes as the steps allow. */
class HeightPathTest {
  private static final Set<Height> LIFT =
      EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR, Height.WORKING);
  private static final Set<Height> JACK = EnumSet.of(Height.GROUND, Height.STANDS);
  private static final ItemAt FEET = new ItemAt("feet", Place.VEHICLE);
  private static final ItemAt FRONT = new ItemAt("feet", Place.FRONT);
  private static final ItemAt REAR = new ItemAt("feet", Place.REAR);
  private static final ItemAt WHEEL = new ItemAt("wheel", Place.FRONT_LEFT);
  private static final ItemAt PROP = new ItemAt("prop", Place.FRONT_LEFT);

  private static Need at(Height... heights) {
    return Need.of(Set.of(heights));
  }

  private static Need raising(ItemAt end) {
    return lifting(Set.of(end), Set.of());
  }

  private static Need lowering(ItemAt end) {
    return lifting(Set.of(), Set.of(end));
  }

  /** Belongs to raising and moves nothing: a look at the pads. */
  private static Need beside() {
    return lifting(Set.of(), Set.of());
  }

  private static Need lifting(Set<ItemAt> raises, Set<ItemAt> lowers) {
    return new Need(
        LIFT,
        Optional.of(new TaskId("raising", Place.VEHICLE)),
        raises,
        lowers,
        Set.of(),
        Set.of());
  }

  private static Need off(ItemAt item) {
    return new Need(
        EnumSet.of(Height.WORKING, Height.STANDS),
        Optional.empty(),
        Set.of(),
        Set.of(),
        Set.of(item),
        Set.of());
  }

  private static Need on(ItemAt item) {
    return new Need(
        EnumSet.of(Height.WORKING, Height.STANDS),
        Optional.empty(),
        Set.of(),
        Set.of(),
        Set.of(),
        Set.of(item));
  }

  private static HeightPath along(Set<Height> bay, Need... needs) {
    List<Integer> order = new ArrayList<>();
    IntStream.range(0, needs.length).forEach(order::add);
    return HeightPath.along(order, new HeightNeeds(bay, List.of(needs), Set.of(PROP)));
  }

  private static void assertPath(int changes, HeightPath path, Height... heights) {
    assertEquals(List.of(heights), path.heights());
    assertEquals(changes, path.changes());
  }

  /** The pads are tried with the wheels just clear before a lift goes on up. */
  @Test
  void onlyTheWayUpFromTheGroundHasAStopOnIt() {
    assertEquals(
        List.of(Height.WHEELS_CLEAR, Height.WORKING),
        HeightPath.between(Height.GROUND, Height.WORKING));
    assertEquals(List.of(Height.GROUND), HeightPath.between(Height.WORKING, Height.GROUND));
    assertEquals(List.of(Height.WORKING), HeightPath.between(Height.WHEELS_CLEAR, Height.WORKING));
    assertEquals(List.of(Height.STANDS), HeightPath.between(Height.GROUND, Height.STANDS));
    assertEquals(List.of(), HeightPath.between(Height.WORKING, Height.WORKING));
  }

  @Test
  void raisingAndLoweringAreNoChangesOfTheirOwn() {
    assertPath(
        0,
        along(LIFT, beside(), raising(FEET), at(Height.WORKING), lowering(FEET), beside()),
        Height.GROUND,
        Height.WORKING,
        Height.WORKING,
        Height.GROUND,
        Height.GROUND);
    assertPath(
        0,
        along(JACK, raising(FEET), at(Height.STANDS), lowering(FEET)),
        Height.STANDS,
        Height.STANDS,
        Height.GROUND);
  }

  /** Down with the wheels just clear is one change, up from the ground two. */
  @Test
  void eachChangeCounts() {
    assertPath(
        1,
        along(LIFT, raising(FEET), at(Height.WHEELS_CLEAR), lowering(FEET)),
        Height.WORKING,
        Height.WHEELS_CLEAR,
        Height.GROUND);
    assertPath(
        3,
        along(LIFT, raising(FEET), at(Height.GROUND), at(Height.WORKING), lowering(FEET)),
        Height.WORKING,
        Height.GROUND,
        Height.WORKING,
        Height.GROUND);
  }

  /** A step that can be done at either height does not move the vehicle. */
  @Test
  void whatCanBeDoneAtSeveralHeightsIsDoneWhereTheVehicleIs() {
    assertPath(
        1,
        along(
            LIFT,
            raising(FEET),
            at(Height.GROUND, Height.WORKING),
            at(Height.WHEELS_CLEAR),
            at(Height.WORKING, Height.WHEELS_CLEAR),
            lowering(FEET)),
        Height.WORKING,
        Height.WORKING,
        Height.WHEELS_CLEAR,
        Height.WHEELS_CLEAR,
        Height.GROUND);
  }

  /** Standing upright is better for the back: what suits both heights is done high. */
  @Test
  void ofAsManyChangesTheHigherIsTaken() {
    assertPath(
        1,
        along(
            LIFT,
            raising(FEET),
            at(Height.WORKING),
            at(Height.WORKING, Height.WHEELS_CLEAR),
            at(Height.WHEELS_CLEAR),
            lowering(FEET)),
        Height.WORKING,
        Height.WORKING,
        Height.WORKING,
        Height.WHEELS_CLEAR,
        Height.GROUND);
  }

  /** What stands on the ground is lifted clear before the task that lowers it can do so. */
  @Test
  void loweringFromTheGroundTakesOneMoreChange() {
    assertPath(
        2,
        along(LIFT, raising(FEET), at(Height.GROUND), lowering(FEET)),
        Height.WORKING,
        Height.GROUND,
        Height.GROUND);
  }

  /** With one end still up the vehicle stays where it was; it is not at the ground. */
  @Test
  void theFirstOfTwoLoweringsLeavesTheOtherEndUp() {
    assertPath(
        0,
        along(
            JACK,
            raising(FRONT),
            raising(REAR),
            lowering(FRONT),
            at(Height.STANDS),
            lowering(REAR)),
        Height.STANDS,
        Height.STANDS,
        Height.STANDS,
        Height.STANDS,
        Height.GROUND);
    assertPath(
        2,
        along(
            JACK,
            raising(FRONT),
            raising(REAR),
            at(Height.GROUND),
            lowering(FRONT),
            lowering(REAR)),
        Height.STANDS,
        Height.STANDS,
        Height.GROUND,
        Height.STANDS,
        Height.GROUND);
  }

  private static void assertNoHeights(Set<Height> bay, Need... needs) {
    assertThrows(IllegalStateException.class, () -> along(bay, needs));
  }

  /** Nothing is done high that nothing has raised. */
  @Test
  void aVehicleThatIsNotUpStaysOnTheGround() {
    assertNoHeights(LIFT, at(Height.WORKING));
    assertNoHeights(LIFT, raising(FEET), lowering(FEET), at(Height.WORKING));
    assertPath(0, along(LIFT, at(Height.GROUND)), Height.GROUND);
  }

  /** Without a wheel it would stand on its hub; just clear of the floor it may be. */
  @Test
  void withAWheelOffTheVehicleIsNotBroughtToTheGround() {
    assertNoHeights(LIFT, raising(FEET), off(WHEEL), at(Height.GROUND));
    assertPath(
        2,
        along(LIFT, raising(FEET), off(WHEEL), at(Height.WHEELS_CLEAR), on(WHEEL), lowering(FEET)),
        Height.WORKING,
        Height.WORKING,
        Height.WHEELS_CLEAR,
        Height.WORKING,
        Height.GROUND);
    assertPath(
        1,
        along(LIFT, raising(FEET), off(WHEEL), on(WHEEL), at(Height.GROUND)),
        Height.WORKING,
        Height.WORKING,
        Height.WORKING,
        Height.GROUND);
  }

  /** A wheel of the end that stays down bars only its own end. */
  @Test
  void aWheelOfTheOtherEndBarsNothing() {
    assertPath(
        1,
        along(JACK, raising(REAR), off(WHEEL), at(Height.GROUND)),
        Height.STANDS,
        Height.STANDS,
        Height.GROUND);
    assertNoHeights(JACK, raising(FRONT), off(WHEEL), at(Height.GROUND));
  }

  /** Whatever is propped up by a jack falls when the vehicle moves, up or down. */
  @Test
  void withAJackUnderAPartTheVehicleStaysAsHighAsItIs() {
    assertNoHeights(LIFT, raising(FEET), off(PROP), at(Height.WHEELS_CLEAR));
    assertPath(
        1,
        along(LIFT, raising(FEET), off(PROP), on(PROP), at(Height.WHEELS_CLEAR)),
        Height.WORKING,
        Height.WORKING,
        Height.WORKING,
        Height.WHEELS_CLEAR);
  }
}
