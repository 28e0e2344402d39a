package baysheet.plan;

import baysheet.books.Moment;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 */
record StepGraph(
    List<Draft> drafts,
    List<Set<Integer>> before,
    List<Draft> late,
    List<Draft> evening,
    double saved) {

  static StepGraph of(Resolved resolved) {
    return new Build(resolved).run();
  }

  /** Number of nodes, milestones included. */
  int size() {
    return before.size();
  }

  boolean isDraft(int node) {
    return node < drafts.size();
  }

  /** The milestones of a task. */
  private enum Milestone {
    OPENED,
    WORKED,
    CLOSED
  }

  private record Mark(TaskId task, Milestone milestone) {}

  /** The chains of a task, as numbers of drafts. */
  private record Chains(List<Integer> open, List<Integer> work, List<Integer> close) {}

  /** Collects the graph; used once. */
  private static final class Build {
    private final Resolved resolved;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Draft> late = new ArrayList<>();
    private final List<Draft> evening = new ArrayList<>();
    private final List<Integer> early = new ArrayList<>();
    private final Map<TaskId, Chains> chains = new LinkedHashMap<>();
    private final Map<Mark, Integer> marks = new LinkedHashMap<>();
    private final List<Set<Integer>> before = new ArrayList<>();
    private final Map<ItemAt, Integer> undoes = new LinkedHashMap<>();
    private final Map<ItemAt, Integer> doesUp = new LinkedHashMap<>();
    private double saved;

    Build(Resolved resolved) {
      this.resolved = resolved;
    }

    StepGraph run() {
      resolved.ranked().forEach(this::addChains);
      drafts.forEach(draft -> before.add(new LinkedHashSet<>()));
      resolved.ranked().forEach(this::addMarks);
      resolved.ranked().forEach(this::link);
      early.forEach(this::linkEarly);
      late.sort(Comparator.comparing(draft -> draft.moment().orElseThrow()));
      return new StepGraph(drafts, before, late, evening, saved);
    }

    private void addChains(Task task) {
      List<Integer> open =
          chain(
              task.open().stream()
                  .map(s -> Draft.written(task.id(), Sheet.Phase.OPEN, s))
                  .toList());
      List<Integer> work =
          chain(
              task.work().stream()
                  .map(s -> Draft.written(task.id(), Sheet.Phase.WORK, s))
                  .toList());
      List<Integer> close = chain(Mirror.closing(resolved, task));
      chains.put(task.id(), new Chains(open, work, close));
    }

    private List<Integer> chain(List<Draft> steps) {
      List<Integer> chain = new ArrayList<>();
      steps.stream().filter(this::inPlace).forEach(step -> addShared(step, chain));
      return chain;
    }

    /** Whether a step stands where its chain has it; one with a moment of its own may not. */
    private boolean inPlace(Draft step) {
      Moment moment = step.moment().orElse(Moment.RAISED);
      if (moment == Moment.EVENING_BEFORE) {
        evening.add(step);
      } else if (moment.compareTo(Moment.ON_THE_GROUND) >= 0) {
        late.add(step);
      } else if (moment == Moment.BEFORE_LIFTING) {
        drafts.add(step);
        early.add(drafts.size() - 1);
      } else {
        return true;
      }
      return false;
    }

    /**
     * Adds a step to a chain; items that another task's step already handles are left to that one.
     */
    private void addShared(Draft step, List<Integer> chain) {
      Draft rest = step;
      List<Integer> first = new ArrayList<>();
      List<Integer> then = new ArrayList<>();
      for (ItemAt item : step.undo()) {
        rest = share(item, undoes, rest, first);
      }
      for (ItemAt item : step.doUp()) {
        rest = share(item, doesUp, rest, then);
      }
      chain.addAll(first);
      if (rest.isIdle() && !step.isIdle()) {
        saved += step.minutes().map(minutes -> minutes.mean()).orElse(0.0);
      } else {
        chain.add(own(rest));
      }
      chain.addAll(then);
    }

    private Draft share(ItemAt item, Map<ItemAt, Integer> owners, Draft step, List<Integer> by) {
      Integer owner = owners.get(item);
      if (owner == null || drafts.get(owner).task().equals(step.task())) {
        return step;
      }
      if (!by.contains(owner)) {
        by.add(owner);
      }
      return step.without(item, Words.handledElsewhere(resolved, item, owners == undoes));
    }

    private int own(Draft step) {
      int number = drafts.size();
      drafts.add(step);
      step.undo().forEach(item -> undoes.putIfAbsent(item, number));
      step.doUp().forEach(item -> doesUp.putIfAbsent(item, number));
      return number;
    }

    private void addMarks(Task task) {
      for (Milestone milestone : Milestone.values()) {
        marks.put(new Mark(task.id(), milestone), before.size());
        before.add(new LinkedHashSet<>());
      }
    }

    private void link(Task task) {
      Chains own = chains.get(task.id());
      int opened = mark(task.id(), Milestone.OPENED);
      int worked = mark(task.id(), Milestone.WORKED);
      int closed = mark(task.id(), Milestone.CLOSED);
      Optional<Integer> none = Optional.empty();
      run(none, own.open(), opened);
      run(Optional.of(opened), own.work(), worked);
      run(Optional.of(worked), own.close(), closed);
      for (TaskId access : task.access()) {
        int open = mark(access, Milestone.OPENED);
        own.open().stream().filter(node -> isOf(node, task)).forEach(node -> edge(open, node));
        edge(open, opened);
        closeAfter(access, closed);
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

    /** Nothing of an access closes before the tasks behind it are closed. */
    private void closeAfter(TaskId access, int closed) {
      edge(closed, mark(access, Milestone.CLOSED));
      chains.get(access).close().stream()
          .filter(node -> drafts.get(node).task().equals(access))
          .forEach(node -> edge(closed, node));
    }

    private void openAfter(Task task, TaskId earlier) {
      int closed = mark(earlier, Milestone.CLOSED);
      List<Integer> open = chains.get(task.id()).open();
      open.stream().filter(node -> isOf(node, task)).forEach(node -> edge(closed, node));
      edge(closed, mark(task.id(), Milestone.OPENED));
    }

    private boolean isOf(int node, Task task) {
      return drafts.get(node).task().equals(task.id());
    }

    /** A step that is due before lifting comes before whatever raises the vehicle. */
    private void linkEarly(int node) {
      for (int other = 0; other < drafts.size(); other++) {
        if (Lifting.raises(resolved, drafts.get(other))) {
          edge(node, other);
        }
      }
      edge(node, mark(drafts.get(node).task(), Milestone.OPENED));
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
}
