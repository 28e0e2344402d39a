package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.CaseFolders;
import baysheet.plan.SmallShop;
import baysheet.report.Source;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Shapes of jobs for which comparing orders takes longest. What counts is how many states the
 * search looks at, on any machine the same.
 */
class SearchBudgetTest {
  private static final List<Place> PLACES = List.of(Place.values());

  /** Steps and which come before which, in the making. */
  private static final class Shape {
    private final Random random;
    private final List<PlannedStep> steps = new ArrayList<>();
    private final List<Set<Integer>> before = new ArrayList<>();

    Shape(long seed) {
      random = new Random(seed);
    }

    int add(Place place) {
      steps.add(
          PlannedStep.puttingBack(
              new TaskId("p" + steps.size(), place),
              new StepSource.Check("rule", "step " + steps.size()),
              new Source("p.yaml", "").whole(),
              List.of(),
              Optional.empty()));
      before.add(new LinkedHashSet<>());
      return steps.size() - 1;
    }

    Place any() {
      return PLACES.get(random.nextInt(PLACES.size()));
    }

    StepGraph graph() {
      return new StepGraph(steps, before);
    }
  }

  /** Tasks at any places: accesses behind up to two earlier ones, works behind one to three. */
  private static StepGraph tasks(long seed, int accesses, int works) {
    Shape shape = new Shape(seed);
    int[] open = new int[accesses + works];
    int[] close = new int[accesses + works];
    for (int task = 0; task < accesses + works; task++) {
      Place place = shape.any();
      open[task] = shape.add(place);
      close[task] = shape.add(place);
      shape.before.get(close[task]).add(open[task]);
      int behind = shape.random.nextInt(3) + (task < accesses ? 0 : 1);
      for (int i = 0; i < behind && task > 0; i++) {
        int access = shape.random.nextInt(Math.min(task, accesses));
        shape.before.get(open[task]).add(open[access]);
        shape.before.get(close[access]).add(close[task]);
      }
    }
    return shape.graph();
  }

  /** Chains of steps, each at another place than the one before it. */
  private static StepGraph chains(long seed, int chains, int length) {
    Shape shape = new Shape(seed);
    for (int chain = 0; chain < chains; chain++) {
      int last = shape.add(shape.any());
      for (int i = 1; i < length; i++) {
        Place here = shape.steps.get(last).place();
        Place next = shape.any();
        int step =
            shape.add(next == here ? PLACES.get((next.ordinal() + 1) % PLACES.size()) : next);
        shape.before.get(step).add(last);
        last = step;
      }
    }
    return shape.graph();
  }

  /** Access in random layers is harder than on any vehicle; even so the budget mostly suffices. */
  @Test
  void fewestChangesAreProvenForMostFortyEightTasks() {
    long proven =
        LongStream.range(0, 12)
            .mapToObj(seed -> tasks(seed, 32, 16))
            .peek(SearchBudgetTest::bounded)
            .filter(graph -> StepSequence.order(graph).orElseThrow().proven())
            .count();
    assertTrue(proven >= 10, proven + " of 12");
  }

  @ParameterizedTest
  @MethodSource("baysheet.plan.CaseFolders#demo")
  void aDemoJobTakesAFractionOfTheBudget(CaseFolders.JobOf job) {
    StepGraph graph = StepGraph.of(job.resolved());
    StepSequence.Found found = StepSequence.order(graph).orElseThrow();
    assertTrue(found.proven());
    assertTrue(found.states() < StepSequence.budget(graph) / 50, found.states() + " states");
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7})
  void thirtySixTasksTakeAFractionOfTheBudget(long seed) {
    StepGraph graph = tasks(seed, 24, 12);
    StepSequence.Found found = StepSequence.order(graph).orElseThrow();
    assertTrue(found.proven());
    assertTrue(found.states() < StepSequence.budget(graph) / 4, found.states() + " states");
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3, 4, 5, 6, 7})
  void twelveWorksOverFortyAccessesStayWithinTheBudget(long seed) {
    bounded(tasks(seed, 40, 12));
  }

  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3})
  void chainsThatChangePlacesAreGivenUpInTime(long seed) {
    bounded(chains(seed, 12, 12));
    bounded(chains(seed, 20, 50));
  }

  /** Of so many chains no search can prove an order; the good one is still far from the worst. */
  @ParameterizedTest
  @ValueSource(longs = {0, 1, 2, 3})
  void anUnprovenOrderIsAGoodOne(long seed) {
    StepGraph graph = chains(seed, 20, 50);
    StepSequence.Found found = StepSequence.order(graph).orElseThrow();
    assertFalse(found.proven());
    assertEquals(graph.drafts().size(), found.order().size());
    assertTrue(found.changes() < graph.drafts().size() / 4, found.changes() + " changes");
  }

  /**
   * The search without proof looks at some states at each visit, and there are fewer than steps.
   */
  private static void bounded(StepGraph graph) {
    int most = StepSequence.budget(graph) + VisitSearch.BEAM * graph.drafts().size();
    StepSequence.Found found = StepSequence.order(graph).orElseThrow();
    assertTrue(found.states() <= most, found.states() + " states, of at most " + most);
  }

  /** Works behind chains of access that change places: more orders than anybody compares. */
  @Test
  void aJobBeyondTheBudgetGetsItsSheetWithANotice() {
    SmallShop shop = SmallShop.empty();
    List<String> places =
        List.of(
            "wheel at front-left",
            "wheel at rear-right",
            "axle at front",
            "side at left",
            "engine at engine",
            "wheel at front-right",
            "axle at rear");
    Random random = new Random(1);
    List<String> works = new ArrayList<>();
    for (int chain = 0; chain < 12; chain++) {
      String behind = "";
      for (int i = 0; i < 10; i++) {
        String[] place = places.get(random.nextInt(places.size())).split(" at ");
        String name = "c" + chain + "-" + i;
        shop =
            shop.procedure(
                name, "at: %s\nbehind: [%s]\nopen: [{do: Open}]".formatted(place[0], behind));
        behind = name + " at " + place[1];
      }
      works.add(behind);
    }
    SmallShop hard = shop.job("hoist", works.toArray(String[]::new));
    assertEquals(
        List.of("order-not-proven"),
        hard.problems().stream().map(problem -> problem.code().word()).toList());
    assertEquals(120, hard.sheet().steps().size());
  }
}
