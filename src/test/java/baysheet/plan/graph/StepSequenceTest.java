package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.report.Source;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The order of any steps: legal, and with as few changes of place as any legal order has. */
class StepSequenceTest {
  private static final List<Place> PLACES =
      List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT, Place.ENGINE, Place.VEHICLE);

  private static PlannedStep step(int number, Place place) {
    return PlannedStep.puttingBack(
        new TaskId("p" + number, place),
        new StepSource.Check("rule", "step " + number),
        new Source("p.yaml", "").whole(),
        List.of(),
        Optional.empty());
  }

  /**
   * Steps at any places and milestones at none, any of which wait for any that have a smaller rank.
   */
  private static StepGraph graph(long seed, int size, int milestones) {
    Random random = new Random(seed);
    List<Integer> rank = new ArrayList<>();
    List<PlannedStep> drafts = new ArrayList<>();
    List<Set<Integer>> before = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      drafts.add(step(i, PLACES.get(random.nextInt(PLACES.size()))));
    }
    for (int i = 0; i < size + milestones; i++) {
      rank.add(random.nextInt(size + milestones));
    }
    for (int i = 0; i < size + milestones; i++) {
      Set<Integer> earlier = new LinkedHashSet<>();
      for (int j = 0; j < size + milestones; j++) {
        if (rank.get(j) < rank.get(i) && random.nextInt(3) == 0) {
          earlier.add(j);
        }
      }
      before.add(earlier);
    }
    return new StepGraph(drafts, before);
  }

  @Property(tries = 2000)
  void noLegalOrderHasFewerChangesOfPlace(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 10) int size,
      @ForAll @IntRange(min = 0, max = 4) int milestones) {
    StepGraph graph = graph(seed, size, milestones);
    StepSequence.Found found = StepSequence.order(graph).orElseThrow();
    legal(graph, found.order());
    assertTrue(found.proven());
    assertEquals(fewest(graph), found.changes(), found.order().toString());
  }

  @Property(tries = 500)
  void withoutABudgetTheOrderIsLegalAndSaidToBeUnproven(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 10) int size) {
    StepGraph graph = graph(seed, size, 2);
    StepSequence.Found found = StepSequence.order(graph, -1).orElseThrow();
    legal(graph, found.order());
    assertTrue(!found.proven());
    assertTrue(found.changes() >= fewest(graph), found.order().toString());
  }

  private static void legal(StepGraph graph, List<PlannedStep> order) {
    assertEquals(Set.copyOf(graph.drafts()), Set.copyOf(order));
    assertEquals(graph.drafts().size(), order.size());
    for (int node = 0; node < graph.drafts().size(); node++) {
      for (int earlier : stepsBefore(graph, node)) {
        int at = order.indexOf(graph.drafts().get(node));
        assertTrue(order.indexOf(graph.drafts().get(earlier)) < at, earlier + " before " + node);
      }
    }
  }

  /** The steps that come before a node, directly or through milestones. */
  private static Set<Integer> stepsBefore(StepGraph graph, int node) {
    Set<Integer> steps = new LinkedHashSet<>();
    for (int earlier : graph.before().get(node)) {
      if (graph.isDraft(earlier)) {
        steps.add(earlier);
      } else {
        steps.addAll(stepsBefore(graph, earlier));
      }
    }
    return steps;
  }

  /**
   * Fewest changes over all legal orders: for every set of steps done and every last step, from
   * those one step smaller.
   */
  private static int fewest(StepGraph graph) {
    int size = graph.drafts().size();
    int[][] fewest = new int[1 << size][size];
    for (int[] row : fewest) {
      Arrays.fill(row, Integer.MAX_VALUE);
    }
    for (int done = 1; done < 1 << size; done++) {
      for (int last = 0; last < size; last++) {
        fewest[done][last] = fewest(graph, fewest, done, last);
      }
    }
    return Arrays.stream(fewest[(1 << size) - 1]).min().orElseThrow();
  }

  private static int fewest(StepGraph graph, int[][] fewest, int done, int last) {
    int rest = done & ~(1 << last);
    boolean legal =
        rest != done && stepsBefore(graph, last).stream().allMatch(one -> (rest >> one & 1) == 1);
    if (!legal) {
      return Integer.MAX_VALUE;
    }
    int best = rest == 0 ? 0 : Integer.MAX_VALUE;
    for (int previous = 0; previous < graph.drafts().size(); previous++) {
      int before = fewest[rest][previous];
      if (before < Integer.MAX_VALUE) {
        Place here = graph.drafts().get(last).place();
        best = Math.min(best, before + (graph.drafts().get(previous).place() == here ? 0 : 1));
      }
    }
    return best;
  }

  @Test
  void stepsThatWaitForOneAnotherHaveNoOrder() {
    List<PlannedStep> drafts = List.of(step(0, Place.ENGINE), step(1, Place.ENGINE));
    StepGraph loop = new StepGraph(drafts, List.of(Set.of(1), Set.of(0)));
    assertEquals(Optional.empty(), StepSequence.order(loop));
  }
}
