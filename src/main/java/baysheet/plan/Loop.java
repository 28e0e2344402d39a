package baysheet.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Finds steps that wait for one another in a circle. */
final class Loop {
  private final StepGraph graph;
  private final BitSet clear = new BitSet();
  private final BitSet onPath = new BitSet();
  private final List<Integer> path = new ArrayList<>();

  private Loop(StepGraph graph) {
    this.graph = graph;
  }

  /** The nodes of one circle, each waiting for the next; empty when there is none. */
  static List<Integer> in(StepGraph graph) {
    Loop search = new Loop(graph);
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
}
