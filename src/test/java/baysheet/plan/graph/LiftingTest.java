package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.report.Source;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What raises a vehicle, what lowers it, and what only belongs to that. */
class LiftingTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure(
              "jacked",
              "at: axle\nserves: raise\nneeds: jack\nopen:\n"
                  + "  - {do: Measure, measure: height, moment: before-lifting}\n"
                  + "  - {do: Put the jack there}\n"
                  + "  - {do: Jack it up, undo: feet}\n"
                  + "close: [{do: Look below}, {do: Lower it, do-up: feet}, {do: Push down}]")
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one");

  private static final SmallShop BOTH =
      SHOP.job("floor", "deep at front-left", "deep at rear-left");

  private static PlannedStep draft(SmallShop shop, String id) {
    return StepGraph.of(shop.resolved()).drafts().stream()
        .filter(step -> step.source().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isRaising(String id) {
    return Lifting.isRaising(BOTH.resolved(), draft(BOTH, id));
  }

  private static boolean isLowering(String id) {
    return Lifting.isLowering(BOTH.resolved(), draft(BOTH, id));
  }

  @Test
  void raisingIsFromItsFirstPreparationOn() {
    assertTrue(isRaising("jacked/open/2"));
    assertTrue(isRaising("jacked/open/3"));
    assertFalse(isRaising("jacked/open/1"));
    assertFalse(isRaising("jacked/close/2"));
    assertFalse(isRaising("roller-off/open/1"));
  }

  @Test
  void loweringIsUpToWhatIsDoneOnceTheVehicleIsDown() {
    assertTrue(isLowering("jacked/close/1"));
    assertTrue(isLowering("jacked/close/2"));
    assertTrue(isLowering("jacked/close/3"));
    assertFalse(isLowering("jacked/open/3"));
    assertFalse(isLowering("roller-off/open/1/back/roller"));
  }

  /** The brake that holds the vehicle as it comes down is part of that; the one before is not. */
  @Test
  void theBrakeBelongsToLoweringWhereTheVehicleComesDownWithIt() {
    assertTrue(isLowering(Height.WHEELS_CLEAR, StepSource.HeightPart.BRAKE));
    assertFalse(isLowering(Height.GROUND, StepSource.HeightPart.BRAKE));
    assertFalse(isLowering(Height.WHEELS_CLEAR, StepSource.HeightPart.MOVE));
  }

  private static boolean isLowering(Height from, StepSource.HeightPart part) {
    StepSource.HeightChange change = new StepSource.HeightChange(from, Height.GROUND, part);
    PlannedStep move =
        PlannedStep.move(
            new TaskId("jacked", Place.VEHICLE), change, new Source("p.yaml", "").whole());
    return Lifting.isLowering(BOTH.resolved(), move);
  }

  @Test
  void theEndsAreThoseThatAreRaised() {
    Resolved resolved = BOTH.resolved();
    List<PlannedStep> drafts = StepGraph.of(resolved).drafts();
    assertEquals(Set.of(Place.FRONT, Place.REAR), Lifting.ends(resolved, drafts));
    SmallShop front = SHOP.job("floor", "deep at front-left");
    assertEquals(
        Set.of(Place.FRONT),
        Lifting.ends(front.resolved(), StepGraph.of(front.resolved()).drafts()));
    SmallShop lift = SHOP.job("hoist", "deep at front-left");
    assertEquals(
        Set.of(Place.VEHICLE),
        Lifting.ends(lift.resolved(), StepGraph.of(lift.resolved()).drafts()));
  }

  /** One end comes down, the other goes up and comes down: twice down, as the lines go on. */
  @Test
  void howOftenTheVehicleIsDownAgainIsCountedBehindTheLineThatLowersIt() {
    Resolved resolved = BOTH.resolved();
    List<PlacedStep> lines =
        List.of(
            line("jacked/open/3", Place.FRONT),
            line("roller-off/open/1", Place.FRONT_LEFT),
            line("jacked/close/2", Place.FRONT),
            line("jacked/open/3", Place.REAR),
            line("jacked/close/2", Place.REAR),
            line("deep/open/1", Place.FRONT_LEFT));
    assertArrayEquals(new int[] {0, 0, 0, 1, 1, 2}, Lifting.timesDown(resolved, lines));
    List<PlacedStep> together =
        List.of(
            line("jacked/open/3", Place.FRONT),
            line("jacked/open/3", Place.REAR),
            line("jacked/close/2", Place.FRONT),
            line("roller-off/open/1", Place.REAR_LEFT),
            line("jacked/close/2", Place.REAR),
            line("deep/open/1", Place.FRONT_LEFT));
    assertArrayEquals(new int[] {0, 0, 0, 0, 0, 1}, Lifting.timesDown(resolved, together));
  }

  private static PlacedStep line(String id, Place place) {
    return StepGraph.of(BOTH.resolved()).drafts().stream()
        .filter(step -> step.source().id().equals(id) && step.place() == place)
        .map(step -> PlacedStep.onTheGround(step, Moment.ON_THE_GROUND))
        .findFirst()
        .orElseThrow();
  }
}
