package baysheet.plan;

import baysheet.books.Place;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
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
  private final List<List<Integer>> after = new ArrayList<>();
  private final Map<BitSet, Integer> failed = new HashMap<>();

  private Sequence(StepGraph graph) {
    this.graph = graph;
    for (int node = 0; node < graph.size(); node++) {
      after.add(new ArrayList<>());
    }
    for (int node = 0; node < graph.size(); node++) {
      for (int earlier : graph.before().get(node)) {
        after.get(earlier).add(node);
      }
    }
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

  /** What is done so far, and in which order. */
  private final class State {
    private final BitSet done;
    private final int[] waiting;
    private final List<Integer> order;

    State(StepGraph graph) {
      done = new BitSet(graph.size());
      waiting = graph.before().stream().mapToInt(Set::size).toArray();
      order = new ArrayList<>();
      passMilestones();
    }

    private State(State other) {
      done = (BitSet) other.done.clone();
      waiting = other.waiting.clone();
      order = new ArrayList<>(other.order);
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
        places.add(graph.drafts().get(node).place());
      }
      here.ifPresent(places::remove);
      return places.size();
    }

    /** Places with something to do, in the order in which the job comes to them. */
    List<Place> choices() {
      return ready().stream().map(node -> graph.drafts().get(node).place()).distinct().toList();
    }

    /**
     * What could be done next: opening and working in the job's order, before closing; closing what
     * was opened last first, as anybody puts together what is layered.
     */
    private List<Integer> ready() {
      List<Integer> ready = new ArrayList<>();
      for (int node = next(0); node < graph.drafts().size(); node = next(node + 1)) {
        if (waiting[node] == 0) {
          ready.add(node);
        }
      }
      ready.sort(Comparator.comparing(this::closes).thenComparing(this::turn));
      return ready;
    }

    private int next(int node) {
      return done.nextClearBit(node);
    }

    private boolean closes(int node) {
      return graph.drafts().get(node).phase() == Sheet.Phase.CLOSE;
    }

    private int turn(int node) {
      return closes(node) ? -begun(graph.drafts().get(node)) : node;
    }

    /** When the first step of a step's task was done. */
    private int begun(Draft step) {
      for (int i = 0; i < order.size(); i++) {
        if (graph.drafts().get(order.get(i)).task().equals(step.task())) {
          return i;
        }
      }
      return order.size();
    }

    /**
     * Does everything that can be done at a place, going on with the task at hand where it can. All
     * that is opened there is so before anything is closed: nobody builds up what the next work
     * loads, levers at or reaches past.
     */
    void workAt(Place place) {
      Optional<Integer> next = nextAt(place);
      while (next.isPresent()) {
        finish(next.get());
        order.add(next.get());
        passMilestones();
        next = nextAt(place);
      }
    }

    private Optional<Integer> nextAt(Place place) {
      List<Integer> here =
          ready().stream().filter(node -> graph.drafts().get(node).place() == place).toList();
      return here.stream()
          .filter(node -> goesOn(node) && closes(node) == closes(here.get(0)))
          .findFirst()
          .or(() -> here.stream().findFirst());
    }

    private boolean goesOn(int node) {
      return !order.isEmpty()
          && graph
              .drafts()
              .get(order.get(order.size() - 1))
              .task()
              .equals(graph.drafts().get(node).task());
    }

    private void passMilestones() {
      boolean moved = true;
      while (moved) {
        moved = false;
        for (int node = graph.drafts().size(); node < graph.size(); node++) {
          if (!done.get(node) && waiting[node] == 0) {
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
