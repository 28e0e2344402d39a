package baysheet.plan.graph;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * In which order the ends of a vehicle are raised. Wheels that stay down are chocked, so one end is
 * down again before the next goes up; only where no order allows that, as for work that needs the
 * whole vehicle up, are they up together, and the steps that raise say so. Common practice, no
 * source.
 */
public final class RaisingOrder {
  /**
   * The steps of a job in order.
   *
   * @param graph the graph that the order keeps, with what raising adds to it
   * @param together whether several ends are up at the same time
   */
  public record Ordered(StepGraph graph, StepSequence.Found found, boolean together) {}

  private final Resolved resolved;
  private final StepGraph graph;

  private RaisingOrder(Resolved resolved, StepGraph graph) {
    this.resolved = resolved;
    this.graph = graph;
  }

  /**
   * Empty when steps wait for one another in a circle, or one for a height to which the vehicle
   * cannot be brought.
   */
  public static Optional<Ordered> of(Resolved resolved) {
    return new RaisingOrder(resolved, StepGraph.of(resolved, true))
        .best()
        .or(() -> new RaisingOrder(resolved, StepGraph.of(resolved, false)).together());
  }

  private Optional<Ordered> best() {
    List<Set<Integer>> ends = ends();
    Optional<Ordered> best = Optional.empty();
    for (List<Set<Integer>> turns : ends.size() < 2 ? List.of(ends) : permutations(ends)) {
      Optional<Ordered> next = inTurns(turns);
      if (next.isPresent() && best.map(known -> isBetter(next.get(), known)).orElse(true)) {
        best = next;
      }
    }
    return best;
  }

  /**
   * Fewer changes of height, then of place; of orders with as many of both, the one whose first end
   * the job comes to first.
   */
  private static boolean isBetter(Ordered one, Ordered known) {
    return one.found().moves() != known.found().moves()
        ? one.found().moves() < known.found().moves()
        : one.found().changes() < known.found().changes();
  }

  /**
   * The steps of what raises and lowers each end: those of one axle together, in the order in which
   * the job comes to them; with what is due before lifting that end only. A parking brake that the
   * work at the rear wants released holds the vehicle while the front is up.
   */
  private List<Set<Integer>> ends() {
    Map<Place, Set<Integer>> ends = new LinkedHashMap<>();
    for (int node : inJobOrder()) {
      PlannedStep step = graph.drafts().get(node);
      for (ItemAt item : step.undo()) {
        if (Lifting.holds(resolved, item)) {
          ends.computeIfAbsent(Lifting.end(item), key -> new LinkedHashSet<>())
              .addAll(stepsOf(step));
        }
      }
    }
    addEarly(ends.values());
    return List.copyOf(ends.values());
  }

  private void addEarly(Collection<Set<Integer>> ends) {
    for (int node = 0; node < graph.drafts().size(); node++) {
      int early = node;
      List<Set<Integer>> lifted =
          ends.stream().filter(end -> end.stream().anyMatch(it -> isRaised(it, early))).toList();
      if (lifted.size() == 1 && isDueBeforeLifting(node)) {
        lifted.get(0).add(node);
      }
    }
  }

  private boolean isDueBeforeLifting(int node) {
    PlannedStep step = graph.drafts().get(node);
    return step.moment().equals(Optional.of(Moment.BEFORE_LIFTING)) && !closes(node);
  }

  /** Whether a step raises the vehicle and waits for another one. */
  private boolean isRaised(int node, int early) {
    return Lifting.raises(resolved, graph.drafts().get(node))
        && graph.before().get(node).contains(early);
  }

  private List<Integer> inJobOrder() {
    // Before it is known that there is an order at all.
    if (!CycleFinder.in(graph).isEmpty()) {
      return List.of();
    }
    int[] first = graph.firstWork();
    List<Integer> nodes = new ArrayList<>();
    for (int node = 0; node < graph.drafts().size(); node++) {
      nodes.add(node);
    }
    nodes.sort((one, other) -> Integer.compare(first[one], first[other]));
    return nodes;
  }

  private List<Integer> stepsOf(PlannedStep raising) {
    List<Integer> nodes = new ArrayList<>();
    for (int node = 0; node < graph.drafts().size(); node++) {
      if (graph.drafts().get(node).task().equals(raising.task())) {
        nodes.add(node);
      }
    }
    return nodes;
  }

  private Optional<Ordered> inTurns(List<Set<Integer>> turns) {
    if (turns.size() < 2) {
      return StepSequence.order(graph).map(found -> new Ordered(graph, found, false));
    }
    List<Set<Integer>> before = new ArrayList<>();
    graph.before().forEach(earlier -> before.add(new LinkedHashSet<>(earlier)));
    for (int i = 1; i < turns.size(); i++) {
      for (int raising : turns.get(i)) {
        if (!closes(raising)) {
          turns.get(i - 1).stream().filter(this::closes).forEach(before.get(raising)::add);
        }
      }
    }
    StepGraph ordered = graph.with(before);
    return StepSequence.order(ordered).map(found -> new Ordered(ordered, found, false));
  }

  private boolean closes(int node) {
    return graph.drafts().get(node).phase() == Sheet.Phase.CLOSE;
  }

  /** All ends up together, with a word at each step that raises one. */
  private Optional<Ordered> together() {
    List<PlannedStep> drafts = new ArrayList<>();
    for (PlannedStep step : graph.drafts()) {
      drafts.add(Lifting.raises(resolved, step) ? step.remarking(new Detail.BothEndsUp()) : step);
    }
    StepGraph said = graph.with(drafts, graph.before());
    return StepSequence.order(said).map(found -> new Ordered(said, found, true));
  }

  private static <T> List<List<T>> permutations(List<T> all) {
    if (all.isEmpty()) {
      return List.of(List.of());
    }
    List<List<T>> permutations = new ArrayList<>();
    for (T first : all) {
      List<T> rest = new ArrayList<>(all);
      rest.remove(first);
      for (List<T> others : permutations(rest)) {
        List<T> one = new ArrayList<>(List.of(first));
        one.addAll(others);
        permutations.add(one);
      }
    }
    return permutations;
  }
}
