package baysheet.plan.graph;

import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Every step of a job and which must come before which.
 *
 * <p>A task is three chains of steps: open, work, close. Its open chain follows the open chains of
 * its access, its close chain precedes theirs. An item that several tasks undo is undone by one
 * step, which stands in the chains of all of them; so it comes off before the first that needs it
 * off and goes on after the last.
 *
 * @param drafts the steps, each once
 * @param before for each node the nodes that must come before it; nodes beyond the drafts are
 *     milestones of a task
 * @param late steps that wait for a moment after the vehicle is down, in order
 * @param evening steps for the evening before
 * @param saved minutes of the steps that sharing made unnecessary
 * @param wantedBy for pairs of nodes of which one comes before the other, a task that wants it so
 * @param heights at which heights of the vehicle the steps can be done
 * @param works what the job asks for, in its order
 */
public record StepGraph(
    List<PlannedStep> drafts,
    List<Set<Integer>> before,
    List<PlannedStep> late,
    List<PlannedStep> evening,
    double saved,
    Map<Edge, TaskId> wantedBy,
    List<TaskId> works,
    HeightNeeds heights) {

  /** Two nodes of which one comes before the other. */
  record Edge(int earlier, int later) {}

  /** A graph of steps that all stay on the ground. */
  StepGraph(List<PlannedStep> drafts, List<Set<Integer>> before) {
    this(
        drafts,
        before,
        List.of(),
        List.of(),
        0,
        Map.of(),
        List.of(),
        HeightNeeds.none(drafts.size()));
  }

  public static StepGraph of(Resolved resolved) {
    return of(resolved, true);
  }

  /**
   * The same, saying whether the ends of a vehicle are raised in turn, so that what is checked once
   * while it is up is checked at each end.
   */
  public static StepGraph of(Resolved resolved, boolean endsInTurn) {
    AccessLayers layers = new AccessLayers(resolved);
    StepChains chains = StepChains.of(resolved, layers);
    CheckSteps checks = CheckSteps.of(resolved, layers, chains, endsInTurn);
    StepOrder order = new StepOrder(resolved, layers, chains, checks.drafts(), endsInTurn);
    List<Set<Integer>> before = order.before();
    HeightNeeds heights = HeightNeeds.of(resolved, layers, checks.drafts(), checks);
    checks.link(before, heights);
    return new StepGraph(
        checks.drafts(),
        before,
        chains.late(),
        chains.evening(),
        chains.saved(),
        order.wantedBy(),
        resolved.ranked().stream().filter(Task::asked).map(Task::id).toList(),
        heights);
  }

  /** For each node those that come after it, from those that come before each. */
  static List<List<Integer>> after(List<Set<Integer>> before) {
    List<List<Integer>> after = new ArrayList<>();
    before.forEach(node -> after.add(new ArrayList<>()));
    for (int node = 0; node < before.size(); node++) {
      for (int earlier : before.get(node)) {
        after.get(earlier).add(node);
      }
    }
    return after;
  }

  /** The same steps with another precedence. */
  StepGraph with(List<Set<Integer>> otherBefore) {
    return with(drafts, otherBefore);
  }

  /** The same with other steps in the place of these, and another precedence. */
  StepGraph with(List<PlannedStep> otherDrafts, List<Set<Integer>> otherBefore) {
    return new StepGraph(otherDrafts, otherBefore, late, evening, saved, wantedBy, works, heights);
  }

  /**
   * For each node the number of the first work of the job that waits for it; the largest number
   * where none does. Closing waits for nobody's turn: only steps that open and do a work are that
   * work's.
   */
  int[] firstWork() {
    List<List<Integer>> after = after(before);
    int[] first = new int[size()];
    int[] order = topological();
    for (int i = order.length - 1; i >= 0; i--) {
      int node = order[i];
      boolean doing = isDraft(node) && drafts.get(node).phase() != Sheet.Phase.CLOSE;
      int own = doing ? works.indexOf(drafts.get(node).task()) : -1;
      first[node] = own < 0 ? Integer.MAX_VALUE : own;
      for (int later : after.get(node)) {
        first[node] = Math.min(first[node], first[later]);
      }
    }
    return first;
  }

  /** Number of nodes, milestones included. */
  int size() {
    return before.size();
  }

  boolean isDraft(int node) {
    return node < drafts.size();
  }

  /**
   * The nodes, each behind those that come before it.
   *
   * @throws IllegalStateException when they wait for one another in a loop
   */
  int[] topological() {
    List<List<Integer>> after = after(before);
    int[] waiting = before.stream().mapToInt(Set::size).toArray();
    Deque<Integer> ready = new ArrayDeque<>();
    for (int node = 0; node < waiting.length; node++) {
      if (waiting[node] == 0) {
        ready.add(node);
      }
    }
    int[] order = new int[waiting.length];
    int placed = 0;
    while (!ready.isEmpty()) {
      int node = ready.remove();
      order[placed++] = node;
      for (int later : after.get(node)) {
        if (--waiting[later] == 0) {
          ready.add(later);
        }
      }
    }
    if (placed < order.length) {
      throw new IllegalStateException((order.length - placed) + " nodes wait in a loop");
    }
    return order;
  }
}
