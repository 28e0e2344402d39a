package baysheet.plan.graph;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Whether steps that stand next to one another in the order may change their turns. */
final class DependencyQuery {
  private final StepGraph graph;

  /** By the step itself, not by what it says: no two nodes are one step. */
  private final Map<PlannedStep, Integer> nodes = new IdentityHashMap<>();

  DependencyQuery(StepGraph graph) {
    this.graph = graph;
    for (int node = 0; node < graph.drafts().size(); node++) {
      nodes.put(graph.drafts().get(node), node);
    }
  }

  /**
   * Whether any of some steps must come before any of those that follow directly.
   *
   * @param earlier steps of the order, none of them later than those of {@code next}
   * @param next the steps directly behind them, so that nothing but milestones lies between
   */
  boolean isHeldBack(List<PlacedStep> next, List<PlacedStep> earlier) {
    BitSet first = nodes(earlier);
    BitSet seen = nodes(next);
    Deque<Integer> open = new ArrayDeque<>();
    seen.stream().forEach(open::add);
    while (!open.isEmpty()) {
      for (int before : graph.before().get(open.remove())) {
        if (first.get(before)) {
          return true;
        }
        if (!graph.isDraft(before) && !seen.get(before)) {
          seen.set(before);
          open.add(before);
        }
      }
    }
    return false;
  }

  private BitSet nodes(List<PlacedStep> lines) {
    BitSet all = new BitSet();
    lines.forEach(line -> line.all().forEach(step -> all.set(nodes.get(step))));
    return all;
  }
}
