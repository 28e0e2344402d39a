package baysheet.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds steps that wait for one another in a circle. */
final class Loop {
  private final StepGraph graph;
  private final Set<Integer> clear = new LinkedHashSet<>();
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
    if (clear.contains(node)) {
      return List.of();
    }
    int seen = path.indexOf(node);
    if (seen >= 0) {
      return List.copyOf(path.subList(seen, path.size()));
    }
    path.add(node);
    for (int earlier : graph.before().get(node)) {
      List<Integer> circle = from(earlier);
      if (!circle.isEmpty()) {
        return circle;
      }
    }
    path.remove(path.size() - 1);
    clear.add(node);
    return List.of();
  }
}
