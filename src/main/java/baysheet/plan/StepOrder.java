package baysheet.plan;

import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Which steps must come before which, with the milestones of the tasks between them. Used once. */
final class StepOrder {
  /** The milestones of a task. */
  private enum Milestone {
    OPENED,
    WORKED,
    CLOSED
  }

  private record Mark(TaskId task, Milestone milestone) {}

  private final Resolved resolved;
  private final Layers layers;
  private final StepChains chains;
  private final List<Draft> drafts;
  private final Map<Mark, Integer> marks = new LinkedHashMap<>();
  private final List<Set<Integer>> before = new ArrayList<>();

  private StepOrder(Resolved resolved, Layers layers, StepChains chains, List<Draft> drafts) {
    this.resolved = resolved;
    this.layers = layers;
    this.chains = chains;
    this.drafts = drafts;
  }

  /**
   * For each draft, and for each milestone behind them, the nodes that come before it.
   *
   * @param drafts those of the chains, and behind them others that nothing here holds back
   */
  static List<Set<Integer>> before(
      Resolved resolved, Layers layers, StepChains chains, List<Draft> drafts) {
    StepOrder order = new StepOrder(resolved, layers, chains, drafts);
    order.run();
    return order.before;
  }

  private void run() {
    drafts.forEach(draft -> before.add(new LinkedHashSet<>()));
    resolved.ranked().forEach(this::addMarks);
    resolved.ranked().forEach(this::link);
    List<Integer> early = List.copyOf(chains.early());
    for (int i = 0; i < early.size(); i++) {
      linkEarly(early.get(i));
      if (i > 0 && isSameTask(early.get(i - 1), early.get(i))) {
        edge(early.get(i - 1), early.get(i));
      }
    }
  }

  private boolean isSameTask(int one, int other) {
    return drafts.get(one).task().equals(drafts.get(other).task());
  }

  private void addMarks(Task task) {
    for (Milestone milestone : Milestone.values()) {
      marks.put(new Mark(task.id(), milestone), before.size());
      before.add(new LinkedHashSet<>());
    }
  }

  private void link(Task task) {
    StepChains.Chains own = chains.of(task.id());
    int opened = mark(task.id(), Milestone.OPENED);
    int worked = mark(task.id(), Milestone.WORKED);
    int closed = mark(task.id(), Milestone.CLOSED);
    run(Optional.empty(), own.open(), opened);
    run(Optional.of(opened), own.work(), worked);
    run(Optional.of(worked), own.close(), closed);
    for (TaskId access : task.access()) {
      int open = mark(access, Milestone.OPENED);
      ownOpen(task).forEach(node -> edge(open, node));
      edge(open, opened);
      closeAfter(access, own, closed);
    }
    task.after().forEach(earlier -> openAfter(task, earlier));
  }

  /** Chains the nodes between two milestones. */
  private void run(Optional<Integer> from, List<Integer> chain, int to) {
    Optional<Integer> last = from;
    for (int node : chain) {
      last.ifPresent(earlier -> edge(earlier, node));
      last = Optional.of(node);
    }
    last.ifPresent(earlier -> edge(earlier, to));
  }

  private List<Integer> ownOpen(Task task) {
    return chains.of(task.id()).open().stream()
        .filter(node -> drafts.get(node).task().equals(task.id()))
        .toList();
  }

  /** Nothing of an access closes before the tasks behind it are closed. */
  private void closeAfter(TaskId access, StepChains.Chains own, int closed) {
    edge(closed, mark(access, Milestone.CLOSED));
    Stream<Integer> shared = chains.of(access).close().stream();
    Stream<Integer> working = chains.of(access).work().stream();
    Stream.concat(
            shared.filter(node -> !own.contains(node)),
            working.filter(node -> !drafts.get(node).doUp().isEmpty()))
        .forEach(node -> edge(closed, node));
  }

  private void openAfter(Task task, TaskId earlier) {
    for (int done : doneBefore(task, earlier)) {
      ownOpen(task).forEach(node -> edge(done, node));
      edge(done, mark(task.id(), Milestone.OPENED));
    }
  }

  /**
   * What of an earlier task a later one waits for: all of it, but where both close something
   * together only what comes before that. What takes nothing off itself, as a prop or a stand,
   * waits only until the other is open where both stay so around the same work.
   */
  private List<Integer> doneBefore(Task task, TaskId earlier) {
    if (takesNothingOff(task) && aroundTheSame(task.id(), earlier)) {
      return List.of(mark(earlier, Milestone.WORKED));
    }
    List<Integer> close = chains.of(earlier).close();
    for (int i = 0; i < close.size(); i++) {
      if (chains.of(task.id()).contains(close.get(i))) {
        List<Integer> until = new ArrayList<>(close.subList(0, i));
        until.add(mark(earlier, Milestone.WORKED));
        return until;
      }
    }
    return List.of(mark(earlier, Milestone.CLOSED));
  }

  private static boolean takesNothingOff(Task task) {
    return Stream.of(task.open(), task.work(), task.close())
        .flatMap(List::stream)
        .allMatch(step -> step.undo().isEmpty() && step.doUp().isEmpty());
  }

  /** Whether neither lies behind the other, and something behind both. */
  private boolean aroundTheSame(TaskId one, TaskId other) {
    return !isBehind(one, other)
        && !isBehind(other, one)
        && resolved.tasks().keySet().stream()
            .anyMatch(task -> isBehind(task, one) && isBehind(task, other));
  }

  private boolean isBehind(TaskId task, TaskId access) {
    return layers.isBehind(task, access);
  }

  /**
   * A step that is due before lifting comes before whatever raises the vehicle, and before all that
   * its own task takes apart.
   */
  private void linkEarly(int node) {
    for (int other = 0; other < drafts.size(); other++) {
      if (Lifting.raises(resolved, drafts.get(other))) {
        edge(node, other);
      }
    }
    for (Task task : resolved.ranked()) {
      boolean concerns =
          task.id().equals(drafts.get(node).task())
              || task.open().stream()
                  .anyMatch(
                      step -> step.undo().stream().anyMatch(drafts.get(node).undo()::contains));
      if (concerns) {
        edge(node, mark(task.id(), Milestone.OPENED));
        ownOpen(task).forEach(opening -> edge(node, opening));
      }
    }
  }

  private int mark(TaskId task, Milestone milestone) {
    return marks.get(new Mark(task, milestone));
  }

  private void edge(int earlier, int later) {
    if (earlier != later) {
      before.get(later).add(earlier);
    }
  }
}
