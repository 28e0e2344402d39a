package baysheet.plan;

import baysheet.books.Place;
import baysheet.resolve.TaskId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The legal order with the fewest changes of place, and among those the one nearest to the job's
 * own order.
 *
 * <p>Doing whatever can be done at the place where one stands never makes the rest longer, since
 * only precedence holds steps back; so only the choice of the next place has to be searched. The
 * search deepens: no change, one change, two …; at each depth places are tried in the order in
 * which the job comes to them, so the first order found is the wanted one. A state (what is done,
 * and how many changes are left) that failed once is not tried again.
 */
final class Sequence {
  private final StepGraph graph;
  private final List<List<Integer>> after;
  private final Map<BitSet, Integer> failed = new HashMap<>();

  private Sequence(StepGraph graph) {
    this.graph = graph;
    this.after = StepGraph.after(graph.before());
  }

  /** The steps in order; empty when they wait for one another in a circle. */
  static Optional<List<Draft>> order(StepGraph graph) {
    if (!Loop.in(graph).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Sequence(graph).search());
  }

  /** Times the place changes along an order. */
  static int changes(List<Draft> order) {
    int changes = 0;
    for (int i = 1; i < order.size(); i++) {
      if (order.get(i).place() != order.get(i - 1).place()) {
        changes++;
      }
    }
    return changes;
  }

  private List<Draft> search() {
    for (int changes = 0; changes <= graph.drafts().size(); changes++) {
      failed.clear();
      Optional<List<Integer>> found = from(new State(graph), Optional.empty(), changes);
      if (found.isPresent()) {
        return found.get().stream().map(graph.drafts()::get).toList();
      }
    }
    throw new IllegalStateException(
        "no order of " + graph.drafts().size() + " steps without a loop");
  }

  private Optional<List<Integer>> from(State state, Optional<Place> here, int changes) {
    if (state.isDone()) {
      return Optional.of(state.order);
    }
    if (changes + (here.isEmpty() ? 1 : 0) < state.placesLeft(here)) {
      return Optional.empty();
    }
    Integer tried = failed.get(state.done);
    if (tried != null && tried >= changes) {
      return Optional.empty();
    }
    for (Place next : state.choices()) {
      State moved = state.copy();
      moved.workAt(next);
      int left = here.isEmpty() ? changes : changes - 1;
      Optional<List<Integer>> found =
          left < 0 ? Optional.empty() : from(moved, Optional.of(next), left);
      if (found.isPresent()) {
        return found;
      }
    }
    failed.put(state.done, changes);
    return Optional.empty();
  }

  private Draft step(int node) {
    return graph.drafts().get(node);
  }

  /** What is done so far, and in which order. */
  private final class State {
    private final BitSet done;
    private final int[] waiting;
    private final List<Integer> order;

    /** When the first step of a task was done. */
    private final Map<TaskId, Integer> begun;

    State(StepGraph graph) {
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
      return done.cardinality() == graph.size();
    }

    int placesLeft(Optional<Place> here) {
      EnumSet<Place> places = EnumSet.noneOf(Place.class);
      for (int node = done.nextClearBit(0);
          node < graph.drafts().size();
          node = done.nextClearBit(node + 1)) {
        places.add(step(node).place());
      }
      here.ifPresent(places::remove);
      return places.size();
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
     * as anybody puts together what is layered.
     */
    private int inTurn(int one, int other) {
      boolean closes = closes(one);
      if (closes != closes(other)) {
        return closes ? 1 : -1;
      }
      int begunLast = closes ? Integer.compare(begun(other), begun(one)) : 0;
      return begunLast != 0 ? begunLast : Integer.compare(one, other);
    }

    private boolean closes(int node) {
      return step(node).phase() == Sheet.Phase.CLOSE;
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
      if (closes(one) != closes(other)) {
        return closes(other);
      }
      boolean goesOn = goesOn(one);
      return goesOn == goesOn(other) ? inTurn(one, other) < 0 : goesOn;
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
