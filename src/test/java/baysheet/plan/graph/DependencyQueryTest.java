package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.report.Source;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Whether the left side's next step may be done before the right side's last. */
class DependencyQueryTest {
  private static final List<PlannedStep> STEPS =
      List.of(step(Place.FRONT_LEFT), step(Place.FRONT_RIGHT), step(Place.FRONT_LEFT));

  private static PlannedStep step(Place place) {
    return PlannedStep.puttingBack(
        new TaskId("p", place),
        new StepSource.Check("rule", "step"),
        new Source("p.yaml", "").whole(),
        List.of(),
        Optional.empty());
  }

  private static PlacedStep placed(int node) {
    return PlacedStep.onTheGround(STEPS.get(node), Moment.RAISED);
  }

  private static boolean isHeldBack(List<Set<Integer>> before, int next, int... earlier) {
    List<PlacedStep> lines = Arrays.stream(earlier).mapToObj(DependencyQueryTest::placed).toList();
    return new DependencyQuery(new StepGraph(STEPS, before))
        .isHeldBack(List.of(placed(next)), lines);
  }

  @Test
  void aStepIsHeldBackByOneThatComesBeforeIt() {
    List<Set<Integer>> before = List.of(Set.of(), Set.of(0), Set.of());
    assertTrue(isHeldBack(before, 1, 0));
    assertTrue(isHeldBack(before, 1, 2, 0));
    assertFalse(isHeldBack(before, 2, 0, 1));
    assertFalse(isHeldBack(before, 0, 1));
  }

  /** A work that comes after another waits for milestones of it, not for its steps. */
  @Test
  void aStepIsHeldBackThroughMilestones() {
    List<Set<Integer>> before = List.of(Set.of(), Set.of(4), Set.of(), Set.of(0), Set.of(3));
    assertTrue(isHeldBack(before, 1, 0));
    assertFalse(isHeldBack(before, 1, 2));
  }

  /** A step between two others is not among those that stand next to one another. */
  @Test
  void aStepIsNotHeldBackThroughAnotherStep() {
    List<Set<Integer>> before = List.of(Set.of(), Set.of(0), Set.of(1));
    assertFalse(isHeldBack(before, 2, 0));
    assertTrue(isHeldBack(before, 2, 0, 1));
  }

  /** What says the same at both sides is two steps all the same. */
  @Test
  void stepsWithTheSameWordsAreToldApart() {
    List<Set<Integer>> before = List.of(Set.of(), Set.of(2), Set.of());
    assertFalse(isHeldBack(before, 1, 0));
    assertTrue(isHeldBack(before, 1, 2));
  }
}
