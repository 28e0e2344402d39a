package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Which end of a vehicle goes up first where a jack lifts one after the other: the one by which the
 * vehicle is moved and the technician walks least, then the one that the job names first.
 */
class RaisingOrderTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure("drum", "at: wheel\nbehind: [roller-off]", "Drum", "two");

  private static RaisingOrder.Ordered ordered(SmallShop shop) {
    return RaisingOrder.of(shop.resolved()).orElseThrow();
  }

  @Test
  void theEndThatTheJobNamesFirstGoesUpFirst() {
    SHOP.job("floor", "drum at rear-left", "deep at front-left")
        .assertInOrder("Jack it up [rear]", "Jack it up [front]");
    SHOP.job("floor", "deep at front-left", "drum at rear-left")
        .assertInOrder("Jack it up [front]", "Jack it up [rear]");
  }

  /** Its work comes first in the job, though it waits for a look that the job names last. */
  @Test
  void theEndOfTheFirstWorkGoesUpFirstAlsoWhereThatWaits() {
    SHOP.procedure("drum", "at: wheel\nbehind: [roller-off]\nafter: [seen]", "Drum", "two")
        .procedure("seen", "at: vehicle\nopen: [{do: Look round, height: ground}]")
        .job("floor", "drum at rear-left", "deep at front-left", "seen at vehicle")
        .assertInOrder("Look round", "Jack it up [rear]", "Drum", "Jack it up [front]", "Deep");
  }

  /**
   * The gap at the front is measured once the rear is done and looked at. With the front up first
   * somebody would walk back to it in the end.
   */
  @Test
  void theEndThatSavesAWalkGoesUpFirst() {
    SHOP.procedure("seen", "at: vehicle\nafter: [drum]\nopen: [{do: Look round, height: ground}]")
        .procedure("gap", "at: axle\nafter: [seen]\nopen: [{do: Measure it, height: ground}]")
        .job("floor", "deep at front-left", "drum at rear-left", "seen at vehicle", "gap at front")
        .assertInOrder(
            "Jack it up [rear]", "Look round", "Measure it", "Jack it up [front]", "Deep");
  }

  /**
   * What is looked at on stands waits for a look on the ground, and that for the drum. With the
   * rear up last, it would come down and go up once more for that.
   */
  @Test
  void theEndThatSavesALiftGoesUpFirst() {
    SmallShop shop =
        SHOP.procedure(
                "seen", "at: vehicle\nafter: [drum]\nopen: [{do: Look round, height: ground}]")
            .procedure(
                "high", "at: vehicle\nafter: [seen]\nopen: [{do: Look below, height: working}]")
            .job(
                "floor",
                "deep at front-left",
                "drum at rear-left",
                "seen at vehicle",
                "high at vehicle");
    shop.assertInOrder("Jack it up [rear]", "Look round", "Jack it up [front]", "Look below");
    assertEquals(0, ordered(shop).found().moves());
  }

  @Test
  void endsAreUpTogetherOnlyWhereOneWorkNeedsBoth() {
    assertFalse(ordered(SHOP.job("floor", "deep at front-left", "drum at rear-left")).together());
    assertFalse(ordered(SHOP.job("floor", "deep at front-left")).together());
    assertFalse(ordered(SHOP.job("hoist", "deep at front-left", "drum at rear-left")).together());
    SmallShop both = SHOP.procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three");
    assertTrue(ordered(both.job("floor", "below at vehicle")).together());
    assertFalse(ordered(both.job("hoist", "below at vehicle")).together());
  }

  @Test
  void stepsInACircleHaveNoOrder() {
    SmallShop shop =
        SHOP.procedure("first", "at: vehicle\nafter: [second]", "First", "one")
            .procedure("second", "at: vehicle\nafter: [first]", "Second", "two");
    for (List<String> works :
        List.of(
            List.of("first at vehicle", "second at vehicle"),
            List.of(
                "first at vehicle",
                "second at vehicle",
                "deep at front-left",
                "drum at rear-left"))) {
      assertEquals(
          Optional.empty(),
          RaisingOrder.of(shop.job("floor", works.toArray(String[]::new)).resolved()));
    }
  }

  private static final SmallShop BRAKE =
      SHOP.procedure(
              "brake-off",
              "at: vehicle\nopen: [{do: Release it, disturb: three, moment: before-lifting}]")
          .procedure("drum", "at: wheel\nbehind: [brake-off, roller-off]", "Drum", "two");

  /** The brake holds the vehicle while the other end is up, whichever end that is. */
  @Test
  void theBrakeIsReleasedForTheEndThatWantsIt() {
    BRAKE
        .job("floor", "deep at front-left", "drum at rear-left")
        .assertInOrder(
            "Refit the vehicle on its wheels [front]", "Release it", "Jack it up [rear]");
    BRAKE
        .job("floor", "deep at rear-left", "drum at front-left")
        .assertInOrder(
            "Refit the vehicle on its wheels [rear]", "Release it", "Jack it up [front]");
  }

  /** Work at both ends wants it released: then it is so before either goes up. */
  @Test
  void theBrakeThatBothEndsWantReleasedIsReleasedFirst() {
    BRAKE
        .job("floor", "drum at front-left", "drum at rear-left")
        .assertInOrder("Release it", "Jack it up [front]", "Jack it up [rear]");
  }
}
