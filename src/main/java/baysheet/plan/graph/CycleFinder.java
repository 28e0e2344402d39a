package baysheet.plan.graph;

import baysheet.resolve.TaskId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds steps that wait for one another in a circle. */
public final class CycleFinder {
  private final StepGraph graph;
  private final BitSet clear = new BitSet();
  private final BitSet onPath = new BitSet();
  private final List<Integer> path = new ArrayList<>();

  private CycleFinder(StepGraph graph) {
    this.graph = graph;
  }

  /** The nodes of one circle, each waiting for the next; empty when there is none. */
  static List<Integer> in(StepGraph graph) {
    CycleFinder search = new CycleFinder(graph);
    for (int node = 0; node < graph.size(); node++) {
      List<Integer> circle = search.from(node);
      if (!circle.isEmpty()) {
        return circle;
      }
    }
    return List.of();
  }

  private List<Integer> from(int node) {
    if (clear.get(node)) {
      return List.of();
    }
    if (onPath.get(node)) {
      return List.copyOf(path.subList(path.indexOf(node), path.size()));
    }
    path.add(node);
    onPath.set(node);
    for (int earlier : graph.before().get(node)) {
      List<Integer> circle = from(earlier);
      if (!circle.isEmpty()) {
        return circle;
      }
    }
    path.remove(path.size() - 1);
    onPath.clear(node);
    clear.set(node);
    return List.of();
  }

  /**
   * Two steps of which a task wants one before the other.
   *
   * @param task the task, or the rule of a check
   */
  public record Wish(TaskId task, PlannedStep earlier, PlannedStep later) {}

  /**
   * The wishes that cannot all be kept, along the shortest circle: what one task wants in one
   * stretch of it is one wish.
   */
  public static List<Wish> wishes(StepGraph graph) {
    List<Integer> circle = shortest(graph);
    List<Wish> wishes = new ArrayList<>();
    int first = firstTurn(graph, circle);
    int from = first;
    for (int i = 1; i <= circle.size(); i++) {
      int at = first + i;
      if (i == circle.size() || !wants(graph, circle, at).equals(wants(graph, circle, at - 1))) {
        PlannedStep earlier = stepAtOrBefore(graph, circle, from);
        PlannedStep later = stepAtOrBefore(graph, circle, at);
        if (earlier != later) {
          wishes.add(new Wish(wants(graph, circle, at - 1), earlier, later));
        }
        from = at;
      }
    }
    return wishes;
  }

  /** A place in a circle at which another task has its say than before it. */
  private static int firstTurn(StepGraph graph, List<Integer> circle) {
    for (int i = 0; i < circle.size(); i++) {
      if (!wants(graph, circle, i + circle.size() - 1).equals(wants(graph, circle, i))) {
        return i;
      }
    }
    return 0;
  }

  /** Who wants a node of a circle before the next one. */
  private static TaskId wants(StepGraph graph, List<Integer> circle, int at) {
    int earlier = circle.get(at % circle.size());
    int later = circle.get((at + 1) % circle.size());
    TaskId task = graph.wantedBy().get(new StepGraph.Edge(earlier, later));
    return task != null ? task : stepAtOrBefore(graph, circle, at).task();
  }

  /** A step, or the one that a milestone stands behind. */
  private static PlannedStep stepAtOrBefore(StepGraph graph, List<Integer> circle, int at) {
    for (int i = at + circle.size(); i > at; i--) {
      int node = circle.get(i % circle.size());
      Optional<Integer> step =
          graph.isDraft(node)
              ? Optional.of(node)
              : graph.before().get(node).stream().filter(graph::isDraft).findFirst();
      if (step.isPresent()) {
        return graph.drafts().get(step.get());
      }
    }
    throw new IllegalStateException("no step in a circle of milestones " + circle);
  }

  /**
   * The nodes of a shortest circle, each before the next; there has to be one. Circles with several
   * steps come first, for milestones say nothing to a reader.
   */
  private static List<Integer> shortest(StepGraph graph) {
    return IntStream.range(0, graph.size())
        .mapToObj(node -> through(graph, node))
        .filter(circle -> !circle.isEmpty())
        .min(
            Comparator.comparing((List<Integer> circle) -> steps(graph, circle) < 2)
                .thenComparing(List::size))
        .orElseThrow();
  }

  private static long steps(StepGraph graph, List<Integer> circle) {
    return circle.stream().filter(graph::isDraft).count();
  }

  /** A shortest circle through a node; empty when there is none. */
  private static List<Integer> through(StepGraph graph, int start) {
    Map<Integer, Integer> next = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(start));
    while (!open.isEmpty()) {
      int node = open.remove();
      for (int earlier : graph.before().get(node)) {
        if (next.putIfAbsent(earlier, node) == null && earlier != start) {
          open.add(earlier);
        }
      }
    }
    List<Integer> circle = new ArrayList<>();
    if (next.containsKey(start)) {
      int node = start;
      do {
        circle.add(node);
        node = next.get(node);
      } while (node != start);
    }
    return circle;
  }
}
