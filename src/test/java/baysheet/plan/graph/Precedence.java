package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which steps of a small shop's job must come before which, directly or through others. A sheet may
 * have two steps in the right order by chance; this tells whether it has to. A step is named by
 * what it comes from, as {@code deep/open/1}, and by its place where a job has it at several.
 */
final class Precedence {
  private final StepGraph graph;

  private Precedence(StepGraph graph) {
    this.graph = graph;
  }

  static Precedence of(SmallShop shop) {
    return new Precedence(StepGraph.of(shop.resolved()));
  }

  Precedence comesBefore(String earlier, String later) {
    assertTrue(isBefore(earlier, later), earlier + " may come behind " + later);
    return this;
  }

  Precedence mayComeBehind(String one, String other) {
    assertFalse(isBefore(one, other), one + " always comes before " + other);
    return this;
  }

  private boolean isBefore(String earlier, String later) {
    int goal = node(earlier);
    Set<Integer> seen = new HashSet<>();
    Deque<Integer> next = new ArrayDeque<>(List.of(node(later)));
    while (!next.isEmpty()) {
      for (int node : graph.before().get(next.remove())) {
        if (seen.add(node)) {
          next.add(node);
        }
      }
    }
    return seen.contains(goal);
  }

  private int node(String name) {
    List<Integer> nodes =
        IntStream.range(0, graph.drafts().size())
            .filter(node -> named(graph.drafts().get(node), name))
            .boxed()
            .toList();
    assertTrue(nodes.size() == 1, name + " names " + nodes.size() + " of " + names());
    return nodes.get(0);
  }

  private List<String> names() {
    return graph.drafts().stream().map(Precedence::full).toList();
  }

  private static boolean named(PlannedStep step, String name) {
    return name.equals(step.source().id()) || name.equals(full(step));
  }

  private static String full(PlannedStep step) {
    return step.source().id() + " at " + step.place().word();
  }
}
