package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The legal order with the fewest changes of the vehicle's height, among those one with the fewest
 * changes of place, and among those the one nearest to the job's own order. {@link HeightSchedule}
 * says what is done before which change of height, each step as early as it can be; among orders
 * that keep to that, changes of place are compared.
 *
 * <p>Doing whatever can be done at the place where one stands never makes the rest longer, since
 * only precedence holds steps back; so only the choice of the next place has to be searched. {@link
 * VisitSearch} knows whether a choice keeps the number of changes; of those that do, the one is
 * taken to which the job comes first.
 */
public final class StepSequence {
  /**
   * Nodes that a search may look at, over all its states. The demo's jobs take less than a
   * hundredth of it; more would take longer than all the rest of a sheet.
   */
  private static final int NODES = 3_000_000;

  private final StepGraph graph;
  private final List<List<Integer>> after;
  private final VisitSearch search;

  /** For each node, the first of the job's works that waits for it. */
  private final int[] firstWork;

  /**
   * An order of all steps.
   *
   * @param heights the height of the vehicle at each of them
   * @param moves changes of height beside those of the steps that raise and lower
   * @param changes times the place changes
   * @param proven whether no legal order has fewer changes; else the budget was used up
   * @param states states that the search looked at
   */
  public record Found(
      List<PlannedStep> order,
      List<Height> heights,
      int moves,
      int changes,
      boolean proven,
      int states) {}

  private StepSequence(StepGraph written, StepGraph scheduled, int budget) {
    this.graph = scheduled;
    this.after = StepGraph.after(graph.before());
    this.search = new VisitSearch(graph, budget);
    this.firstWork = written.firstWork();
  }

  /**
   * The steps in order; empty when they wait for one another in a circle, or one of them for a
   * height to which the vehicle cannot be brought.
   */
  static Optional<Found> order(StepGraph graph) {
    return order(graph, budget(graph));
  }

  /** States that a search may look at: the larger a graph is, the longer each of them takes. */
  static int budget(StepGraph graph) {
    return NODES / Math.max(1, graph.size());
  }

  /** The same with another budget of states. */
  static Optional<Found> order(StepGraph graph, int budget) {
    if (!CycleFinder.in(graph).isEmpty()) {
      return Optional.empty();
    }
    HeightSchedule heights = HeightSchedule.of(graph);
    if (heights.blocked().isPresent()) {
      return Optional.empty();
    }
    List<StepGraph> schedules = heights.ordered();
    List<Found> found =
        schedules.stream()
            .map(one -> new StepSequence(graph, one, budget / schedules.size()).search())
            .toList();
    Found fewest = found.stream().min(Comparator.comparingInt(Found::changes)).orElseThrow();
    return Optional.of(
        new Found(
            fewest.order(),
            fewest.heights(),
            fewest.moves(),
            fewest.changes(),
            heights.isProven() && found.stream().allMatch(Found::proven),
            found.stream().mapToInt(Found::states).sum()));
  }

  /** Times the place changes along an order. */
  static int changes(List<PlannedStep> order) {
    int changes = 0;
    for (int i = 1; i < order.size(); i++) {
      if (order.get(i).place() != order.get(i - 1).place()) {
        changes++;
      }
    }
    return changes;
  }

  private Found search() {
    Optional<List<Integer>> fewest = search.fewest().flatMap(this::nearestToJob);
    List<Integer> nodes = fewest.orElseGet(this::good);
    HeightPath path = HeightPath.along(nodes, graph.heights());
    List<PlannedStep> order = nodes.stream().map(graph.drafts()::get).toList();
    return new Found(
        order, path.heights(), path.changes(), changes(order), fewest.isPresent(), search.states());
  }

  /** The order in so many visits that comes to the job's works first as the job lists them. */
  private Optional<List<Integer>> nearestToJob(int visits) {
    State state = new State();
    for (int left = visits - 1; !state.isDone(); left--) {
      Optional<State> next = nextWithin(state, left);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      state = next.get();
    }
    return Optional.of(state.order);
  }

  private Optional<State> nextWithin(State state, int visits) {
    for (Place place : state.choices()) {
      State moved = state.copy();
      moved.workAt(place);
      if (search.canFinish(moved.done, visits)) {
        return Optional.of(moved);
      }
    }
    return Optional.empty();
  }

  private List<Integer> good() {
    State state = new State();
    search.goodVisits().forEach(state::workAt);
    return state.order;
  }

  private boolean closes(int node) {
    return step(node).phase() == Sheet.Phase.CLOSE;
  }

  private boolean slackens(int node) {
    return step(node).moment().equals(Optional.of(Moment.BEFORE_LIFTING))
        && !step(node).slacken().isEmpty();
  }

  private PlannedStep step(int node) {
    return graph.drafts().get(node);
  }

  /** What is done so far, and in which order. */
  private final class State {
    private final BitSet done;
    private final int[] waiting;
    private final List<Integer> order;

    /** When the first step of a task was done. */
    private final Map<TaskId, Integer> begun;

    State() {
      done = new BitSet(graph.size());
      waiting = graph.before().stream().mapToInt(Set::size).toArray();
      order = new ArrayList<>();
      begun = new HashMap<>();
      passMilestones();
    }

    private State(State other) {
      done = (BitSet) other.done.clone();
      waiting = other.waiting.clone();
      order = new ArrayList<>(other.order);
      begun = new HashMap<>(other.begun);
    }

    State copy() {
      return new State(this);
    }

    boolean isDone() {
      return order.size() == graph.drafts().size();
    }

    /** Places with something to do, in the order in which the job comes to them. */
    List<Place> choices() {
      Map<Place, Integer> best = new EnumMap<>(Place.class);
      for (int node = nextReady(0); node >= 0; node = nextReady(node + 1)) {
        best.merge(step(node).place(), node, this::sooner);
      }
      List<Place> places = new ArrayList<>(best.keySet());
      places.sort((one, other) -> inTurn(best.get(one), best.get(other)));
      return places;
    }

    /** The next node that could be done, from {@code node} on; -1 when there is none. */
    private int nextReady(int node) {
      for (int i = done.nextClearBit(node);
          i < graph.drafts().size();
          i = done.nextClearBit(i + 1)) {
        if (waiting[i] == 0) {
          return i;
        }
      }
      return -1;
    }

    private int sooner(int one, int other) {
      return inTurn(one, other) <= 0 ? one : other;
    }

    /**
     * Opening and working in the job's order, before closing; closing what was opened last first,
     * as anybody puts together what is layered. What is slackened for lifting comes last: nothing
     * else is done, and no work rests, on wheels that are loose.
     */
    private int inTurn(int one, int other) {
      if (slackens(one) != slackens(other)) {
        return slackens(one) ? 1 : -1;
      }
      boolean closes = closes(one);
      if (closes != closes(other)) {
        return closes ? 1 : -1;
      }
      int begunLast = closes ? Integer.compare(begun(other), begun(one)) : 0;
      int work = Integer.compare(firstWork[one], firstWork[other]);
      return begunLast != 0 ? begunLast : work != 0 ? work : Integer.compare(one, other);
    }

    private int begun(int node) {
      return begun.getOrDefault(step(node).task(), order.size());
    }

    /**
     * Does everything that can be done at a place, going on with the task at hand where it can. All
     * that is opened there is so before anything is closed: nobody builds up what the next work
     * loads, levers at or reaches past.
     */
    void workAt(Place place) {
      for (int node = nextAt(place); node >= 0; node = nextAt(place)) {
        begun.putIfAbsent(step(node).task(), order.size());
        finish(node);
        order.add(node);
        passMilestones();
      }
    }

    private int nextAt(Place place) {
      int next = -1;
      for (int node = nextReady(0); node >= 0; node = nextReady(node + 1)) {
        if (step(node).place() == place && (next < 0 || isRather(node, next))) {
          next = node;
        }
      }
      return next;
    }

    private boolean isRather(int one, int other) {
      // Nothing comes between the steps that raise the vehicle, or those that lower it.
      if (isMoving(one) != isMoving(other)) {
        return isMoving(one);
      }
      if (closes(one) != closes(other)) {
        return closes(other);
      }
      boolean goesOn = goesOn(one);
      return goesOn == goesOn(other) ? inTurn(one, other) < 0 : goesOn;
    }

    private boolean isMoving(int node) {
      return goesOn(node)
          && graph.heights().steps().get(node).lifting().isPresent()
          && step(order.get(order.size() - 1)).phase() == step(node).phase();
    }

    private boolean goesOn(int node) {
      return !order.isEmpty() && step(order.get(order.size() - 1)).task().equals(step(node).task());
    }

    private void passMilestones() {
      boolean moved = true;
      while (moved) {
        moved = false;
        for (int node = done.nextClearBit(graph.drafts().size());
            node < graph.size();
            node = done.nextClearBit(node + 1)) {
          if (waiting[node] == 0) {
            finish(node);
            moved = true;
          }
        }
      }
    }

    private void finish(int node) {
      done.set(node);
      after.get(node).forEach(later -> waiting[later]--);
    }
  }
}
