package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Place;
import baysheet.report.Source;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which wishes are named to somebody whose works cannot all be in the order they want. */
class CycleFinderTest {
  private static final TaskId PADS = new TaskId("pads", Place.FRONT_LEFT);
  private static final TaskId HUB = new TaskId("hub", Place.FRONT_LEFT);
  private static final TaskId HOSE = new TaskId("hose", Place.FRONT_LEFT);

  /** Steps, and behind them milestones, with who wants which before which. */
  private static final class Loop {
    private final List<PlannedStep> steps = new ArrayList<>();
    private final List<Set<Integer>> before = new ArrayList<>();
    private final Map<StepGraph.Edge, TaskId> wanted = new HashMap<>();

    Loop(int steps, int milestones) {
      for (int i = 0; i < steps; i++) {
        this.steps.add(
            PlannedStep.puttingBack(
                new TaskId("p" + i, Place.FRONT_LEFT),
                new StepSource.Check("rule", "step " + i),
                new Source("p.yaml", "").whole(),
                List.of(),
                Optional.empty()));
      }
      for (int i = 0; i < steps + milestones; i++) {
        before.add(new LinkedHashSet<>());
      }
    }

    Loop edge(int earlier, int later) {
      before.get(later).add(earlier);
      return this;
    }

    Loop edge(int earlier, int later, TaskId task) {
      wanted.put(new StepGraph.Edge(earlier, later), task);
      return edge(earlier, later);
    }

    StepGraph graph() {
      return new StepGraph(
          steps,
          before,
          List.of(),
          List.of(),
          0,
          wanted,
          List.of(),
          HeightNeeds.none(steps.size()));
    }

    Set<CycleFinder.Wish> wishes() {
      List<CycleFinder.Wish> wishes = CycleFinder.wishes(graph());
      assertEquals(wishes.size(), new HashSet<>(wishes).size(), "one wish named twice");
      return new HashSet<>(wishes);
    }

    CycleFinder.Wish wish(TaskId task, int earlier, int later) {
      return new CycleFinder.Wish(task, steps.get(earlier), steps.get(later));
    }
  }

  @Test
  void stepsInALineAreNoCircle() {
    assertEquals(
        List.of(), CycleFinder.in(new Loop(3, 0).edge(0, 1).edge(0, 2).edge(1, 2).graph()));
  }

  /** The circle begins behind a step that only leads to it. */
  @Test
  void onlyTheStepsOfACircleAreInIt() {
    Loop loop = new Loop(4, 0).edge(1, 0).edge(2, 1).edge(1, 2).edge(3, 2);
    assertEquals(Set.of(1, 2), Set.copyOf(CycleFinder.in(loop.graph())));
    assertEquals(2, CycleFinder.in(loop.graph()).size());
  }

  @Test
  void twoWorksThatWantTheOppositeAreTwoWishes() {
    Loop loop = new Loop(2, 0).edge(0, 1, PADS).edge(1, 0, HUB);
    assertEquals(Set.of(loop.wish(PADS, 0, 1), loop.wish(HUB, 1, 0)), loop.wishes());
  }

  /** Whoever has three steps in a row hears of the first and the last. */
  @Test
  void whatOneWorkWantsInARowIsOneWish() {
    for (int turn = 0; turn < 3; turn++) {
      Loop loop = new Loop(3, 0);
      loop.edge(turn, (turn + 1) % 3, PADS);
      loop.edge((turn + 1) % 3, (turn + 2) % 3, PADS);
      loop.edge((turn + 2) % 3, turn, HUB);
      assertEquals(
          Set.of(loop.wish(PADS, turn, (turn + 2) % 3), loop.wish(HUB, (turn + 2) % 3, turn)),
          loop.wishes());
    }
  }

  @Test
  void threeWorksThatCannotAllBeFollowedAreThreeWishes() {
    Loop loop = new Loop(3, 0).edge(0, 1, PADS).edge(1, 2, HUB).edge(2, 0, HOSE);
    assertEquals(
        Set.of(loop.wish(PADS, 0, 1), loop.wish(HUB, 1, 2), loop.wish(HOSE, 2, 0)), loop.wishes());
  }

  /** Where nobody is known to want it, it is the work of the step. */
  @Test
  void aWishOfNobodyIsThatOfItsStep() {
    Loop loop = new Loop(2, 0).edge(0, 1).edge(1, 0, HUB);
    TaskId own = loop.graph().drafts().get(0).task();
    assertEquals(Set.of(loop.wish(own, 0, 1), loop.wish(HUB, 1, 0)), loop.wishes());
  }

  @Test
  void theShortestCircleIsNamed() {
    Loop loop =
        new Loop(5, 0)
            .edge(0, 1, PADS)
            .edge(1, 2, HUB)
            .edge(2, 0, HOSE)
            .edge(3, 4, PADS)
            .edge(4, 3, HUB);
    assertEquals(Set.of(loop.wish(PADS, 3, 4), loop.wish(HUB, 4, 3)), loop.wishes());
  }

  /** Milestones say nothing to a reader, so that a longer circle of steps is named first. */
  @Test
  void aCircleOfStepsIsNamedBeforeAShorterOneOfMilestones() {
    Loop loop =
        new Loop(3, 2)
            .edge(0, 1, PADS)
            .edge(1, 2, HUB)
            .edge(2, 0, HOSE)
            .edge(3, 4, PADS)
            .edge(4, 3, HUB);
    assertEquals(
        Set.of(loop.wish(PADS, 0, 1), loop.wish(HUB, 1, 2), loop.wish(HOSE, 2, 0)), loop.wishes());
  }

  /** The step that a milestone stands behind is named for it. */
  @Test
  void aMilestoneIsNamedByTheStepBeforeIt() {
    Loop loop = new Loop(2, 1).edge(0, 2, PADS).edge(2, 1, HUB).edge(1, 0, HOSE);
    assertEquals(Set.of(loop.wish(HUB, 0, 1), loop.wish(HOSE, 1, 0)), loop.wishes());
  }

  /** Two works that each come after the other: their last steps stand before the milestones. */
  @Test
  void milestonesThatWaitForOneAnotherAreNamedByTheirSteps() {
    Loop loop = new Loop(2, 2).edge(0, 2, PADS).edge(1, 3, HUB).edge(2, 3, HUB).edge(3, 2, PADS);
    assertEquals(Set.of(loop.wish(HUB, 0, 1), loop.wish(PADS, 1, 0)), loop.wishes());
  }
}
