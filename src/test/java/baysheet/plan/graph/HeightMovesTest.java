package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.graph.HeightNeeds.Need;
import baysheet.report.Source;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Two ends on stands: which sequences of raising and lowering there are, and what bars them. */
class HeightMovesTest {
  private static final Set<Height> JACK = EnumSet.of(Height.GROUND, Height.STANDS);
  private static final ItemAt WHEEL = new ItemAt("wheel", Place.FRONT_LEFT);
  private static final ItemAt PROP = new ItemAt("prop", Place.FRONT_LEFT);

  private final List<PlannedStep> steps = new ArrayList<>();
  private final List<Need> needs = new ArrayList<>();
  private final List<Set<Integer>> before = new ArrayList<>();

  private int add(String name, Place place, boolean closes, Need need, int... earlier) {
    StepSource source =
        closes
            ? new StepSource.Back(
                new StepSource.WrittenAt(name, Sheet.Phase.OPEN, 1), "step " + steps.size())
            : new StepSource.Check("rule", "step " + steps.size());
    steps.add(
        PlannedStep.puttingBack(
            new TaskId(name, place),
            source,
            new Source("p.yaml", "").whole(),
            List.of(),
            Optional.empty()));
    needs.add(need);
    Set<Integer> all = new LinkedHashSet<>();
    for (int one : earlier) {
      all.add(one);
    }
    before.add(all);
    return steps.size() - 1;
  }

  private static Need lifting(Place end, Set<ItemAt> raises, Set<ItemAt> lowers) {
    return new Need(
        JACK, Optional.of(new TaskId("jacked", end)), raises, lowers, Set.of(), Set.of());
  }

  private int up(Place end, int... earlier) {
    Set<ItemAt> feet = Set.of(new ItemAt("feet", end));
    return add("jacked", end, false, lifting(end, feet, Set.of()), earlier);
  }

  private int down(Place end, int... earlier) {
    Set<ItemAt> feet = Set.of(new ItemAt("feet", end));
    return add("jacked", end, true, lifting(end, Set.of(), feet), earlier);
  }

  private int beside(Place end, boolean closes, int... earlier) {
    return add("jacked", end, closes, lifting(end, Set.of(), Set.of()), earlier);
  }

  private int work(Height height, int... earlier) {
    return add("work", Place.FRONT_LEFT, false, Need.of(Set.of(height)), earlier);
  }

  private int moving(Set<ItemAt> off, Set<ItemAt> on, int... earlier) {
    Need need = new Need(EnumSet.of(Height.STANDS), Optional.empty(), Set.of(), Set.of(), off, on);
    return add("wheel", Place.FRONT_LEFT, false, need, earlier);
  }

  private StepGraph graph() {
    return new StepGraph(
        steps,
        before,
        List.of(),
        List.of(),
        0,
        Map.of(),
        List.of(),
        new HeightNeeds(JACK, needs, Set.of(PROP)));
  }

  private int ways() {
    return HeightSchedule.of(graph()).ordered().size();
  }

  private int at(StepSequence.Found found, int node) {
    return found.order().indexOf(steps.get(node));
  }

  private StepSequence.Found order() {
    return StepSequence.order(graph()).orElseThrow();
  }

  /** One after the other, in either turn, or both together in any of four. */
  @Test
  void twoEndsAreRaisedAndLoweredInSixSequences() {
    int front = up(Place.FRONT);
    down(Place.FRONT, front);
    int rear = up(Place.REAR);
    down(Place.REAR, rear);
    assertEquals(6, ways());
  }

  @Test
  void oneEndIsRaisedAndLoweredInOne() {
    int front = up(Place.FRONT);
    down(Place.FRONT, front);
    assertEquals(1, ways());
  }

  /** Work that needs both ends up leaves which goes up first and which comes down first. */
  @Test
  void workUnderTheWholeVehicleLeavesFour() {
    int front = up(Place.FRONT);
    int rear = up(Place.REAR);
    int below = work(Height.STANDS, front, rear);
    down(Place.FRONT, front, below);
    down(Place.REAR, rear, below);
    assertEquals(4, ways());
    assertEquals(0, order().moves());
  }

  /** One end is down before the next goes up. */
  @Test
  void anOrderOfTheEndsLeavesOne() {
    int front = up(Place.FRONT);
    int down = down(Place.FRONT, front);
    int rear = up(Place.REAR, down);
    down(Place.REAR, rear);
    assertEquals(1, ways());
  }

  /** Nobody does anything else between setting the jack and having the vehicle on its stands. */
  @Test
  void nothingComesBetweenTheStepsOfRaising() {
    int pad = beside(Place.FRONT, false);
    int look = work(Height.GROUND, pad);
    int front = up(Place.FRONT, pad);
    int tried = beside(Place.FRONT, false, front);
    int below = work(Height.STANDS, pad);
    down(Place.FRONT, tried);
    StepSequence.Found found = order();
    assertEquals(at(found, pad) + 1, at(found, front));
    assertEquals(at(found, front) + 1, at(found, tried));
    assertTrue(at(found, tried) < at(found, below));
    assertTrue(at(found, look) > at(found, tried));
  }

  @Test
  void nothingComesBetweenTheStepsOfLowering() {
    int front = up(Place.FRONT);
    int look = beside(Place.FRONT, true, front);
    int level = work(Height.GROUND, look);
    int down = down(Place.FRONT, look);
    int pushed = beside(Place.FRONT, true, down);
    StepSequence.Found found = order();
    assertEquals(at(found, look) + 1, at(found, down));
    assertEquals(at(found, down) + 1, at(found, pushed));
    assertTrue(at(found, level) > at(found, pushed));
    assertEquals(0, found.moves());
  }

  /** The vehicle would come down on its hub. */
  @Test
  void aWheelIsOnBeforeItsOwnEndComesDown() {
    int front = up(Place.FRONT);
    int off = moving(Set.of(WHEEL), Set.of(), front);
    int on = moving(Set.of(), Set.of(WHEEL), off);
    int down = down(Place.FRONT, front);
    StepSequence.Found found = order();
    assertTrue(at(found, on) < at(found, down), found.order().toString());
    assertEquals(0, found.moves());
  }

  /** The end that stays up keeps its wheel off while the other comes down. */
  @Test
  void aWheelOfTheOtherEndDoesNotBarLowering() {
    int front = up(Place.FRONT);
    int rear = up(Place.REAR);
    int off = moving(Set.of(WHEEL), Set.of(), front, rear);
    int down = down(Place.REAR, rear, off);
    int on = moving(Set.of(), Set.of(WHEEL), down);
    down(Place.FRONT, front, on);
    StepSequence.Found found = order();
    assertTrue(at(found, off) < at(found, down) && at(found, down) < at(found, on));
    assertEquals(0, found.moves());
  }

  /** A jack under an arm tips when either end moves. */
  @Test
  void aJackUnderAPartIsGoneBeforeAnythingMoves() {
    int front = up(Place.FRONT);
    int off = moving(Set.of(PROP), Set.of(), front);
    int on = moving(Set.of(), Set.of(PROP), off);
    int rear = up(Place.REAR, off);
    int down = down(Place.FRONT, front, rear);
    down(Place.REAR, rear);
    StepSequence.Found found = order();
    assertTrue(at(found, on) < at(found, rear) && at(found, rear) < at(found, down));
  }

  /** Where a jack must be in place for lowering there is no way at all. */
  @Test
  void nothingIsLoweredWithAJackUnderAPart() {
    int front = up(Place.FRONT);
    int off = moving(Set.of(PROP), Set.of(), front);
    int down = down(Place.FRONT, off);
    moving(Set.of(), Set.of(PROP), down);
    HeightSchedule schedule = HeightSchedule.of(graph());
    assertEquals(Optional.of(down), schedule.blocked());
    assertEquals(Set.of(PROP), schedule.barring());
    assertTrue(schedule.isProven());
  }

  /** The vehicle comes off its stands for it and goes back onto them. */
  @Test
  void workOnTheGroundBetweenTakesTwoChanges() {
    int front = up(Place.FRONT);
    int high = work(Height.STANDS, front);
    int level = work(Height.GROUND, high);
    int again = work(Height.STANDS, level);
    down(Place.FRONT, again);
    StepSequence.Found found = order();
    assertEquals(2, found.moves());
    assertEquals(
        List.of(Height.STANDS, Height.STANDS, Height.GROUND, Height.STANDS, Height.GROUND),
        found.heights());
  }
}
