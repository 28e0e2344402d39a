package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.TaskId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the graph of a job says of its nodes. */
class StepGraphTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("lid-off", "at: engine", "Lid off", "lid")
          .procedure("lamp", "at: engine\nbehind: [lid-off]", "Lamp out", "one")
          .procedure("belt", "at: engine\nbehind: [lid-off]", "Belt off", "two");

  private final StepGraph graph =
      StepGraph.of(SHOP.job("hoist", "lamp at engine", "belt at engine").resolved());

  private static StepGraph nodes(List<Set<Integer>> before) {
    return new StepGraph(List.of(), before);
  }

  @Test
  void accessIsNoWorkOfTheJob() {
    assertEquals(
        List.of(new TaskId("lamp", Place.ENGINE), new TaskId("belt", Place.ENGINE)), graph.works());
  }

  /** The lid is off for the lamp, which the job lists first; nobody's turn waits for closing. */
  @Test
  void accessHasTheTurnOfTheFirstWorkThatWaitsForIt() {
    Map<String, Integer> turns = new HashMap<>();
    int[] first = graph.firstWork();
    for (int node = 0; node < graph.drafts().size(); node++) {
      turns.put(graph.drafts().get(node).source().id(), first[node]);
    }
    assertEquals(
        Map.of(
            "lid-off/open/1",
            0,
            "lamp/open/1",
            0,
            "belt/open/1",
            1,
            "lamp/open/1/back/one",
            Integer.MAX_VALUE,
            "belt/open/1/back/two",
            Integer.MAX_VALUE,
            "lid-off/open/1/back/lid",
            Integer.MAX_VALUE),
        turns);
  }

  @Test
  void everyNodeStandsBehindThoseThatItWaitsFor() {
    assertArrayEquals(
        new int[] {2, 1, 0}, nodes(List.of(Set.of(1), Set.of(2), Set.of())).topological());
  }

  @Test
  void nodesInALoopHaveNoOrder() {
    StepGraph loop = nodes(List.of(Set.of(), Set.of(0, 2), Set.of(1)));
    String said = assertThrows(IllegalStateException.class, () -> loop.topological()).getMessage();
    assertTrue(said.startsWith("2 nodes"), said);
  }

  @Test
  void whatComesAfterIsTheOtherWayRound() {
    assertEquals(
        List.of(List.of(1, 2), List.of(2), List.of()),
        StepGraph.after(List.of(Set.of(), Set.of(0), Set.of(0, 1))));
  }

  /** Milestones are nodes, but nobody does them. */
  @Test
  void milestonesAreNoSteps() {
    assertEquals(6, graph.drafts().size());
    assertTrue(graph.isDraft(5));
    assertTrue(!graph.isDraft(6));
    assertTrue(graph.size() > 6);
  }
}
