package baysheet.plan.graph;

import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Which steps must come before which, with the milestones of the tasks between them. */
final class StepOrder {
  /** The milestones of a task. */
  private enum Milestone {
    OPENED,
    WORKED,
    CLOSED
  }

  private record Mark(TaskId task, Milestone milestone) {}

  private final Resolved resolved;
  private final AccessLayers layers;
  private final StepChains chains;
  private final List<PlannedStep> drafts;
  private final boolean endsInTurn;
  private final Map<Mark, Integer> marks = new LinkedHashMap<>();
  private final List<Set<Integer>> before = new ArrayList<>();
  private final Map<StepGraph.Edge, TaskId> wantedBy = new HashMap<>();

  /**
   * Pairs of steps that a task only shares, in its order: kept unless another wants it otherwise.
   */
  private final Map<StepGraph.Edge, TaskId> wishes = new LinkedHashMap<>();

  /**
   * What came off in one step, in the order in which it is put back where nothing speaks against.
   */
  private final Map<StepGraph.Edge, TaskId> habits = new LinkedHashMap<>();

  /**
   * The order of the steps of all tasks.
   *
   * @param drafts those of the chains, and behind them others that nothing here holds back
   * @param endsInTurn whether one end of the vehicle is down before the other goes up
   */
  StepOrder(
      Resolved resolved,
      AccessLayers layers,
      StepChains chains,
      List<PlannedStep> drafts,
      boolean endsInTurn) {
    this.resolved = resolved;
    this.layers = layers;
    this.chains = chains;
    this.drafts = drafts;
    this.endsInTurn = endsInTurn;
    run();
  }

  /** For each draft, and for each milestone behind them, the nodes that come before it. */
  List<Set<Integer>> before() {
    return before;
  }

  /** For each pair of nodes of which one comes before the other, a task that wants it so. */
  Map<StepGraph.Edge, TaskId> wantedBy() {
    return wantedBy;
  }

  private void run() {
    drafts.forEach(draft -> before.add(new LinkedHashSet<>()));
    resolved.ranked().forEach(this::addMarks);
    resolved.ranked().forEach(this::link);
    List<Integer> early = List.copyOf(chains.early());
    for (int i = 0; i < early.size(); i++) {
      linkEarly(early.get(i));
      if (i > 0 && isOf(early.get(i - 1), drafts.get(early.get(i)).task())) {
        edge(early.get(i - 1), early.get(i), drafts.get(early.get(i)).task());
      }
    }
    chains.onTheGround().forEach(this::linkOnTheGround);
    wishes.forEach(this::keep);
    ParkingBrake.heldWhilePulling(resolved, drafts, early)
        .forEach(edge -> habits.putIfAbsent(edge, drafts.get(edge.later()).task()));
    habits.forEach(
        (habit, task) -> {
          if (!comesBefore(habit.later(), habit.earlier())) {
            edge(habit.earlier(), habit.later(), task);
          }
        });
  }

  /**
   * Behind its task and whatever lowers the vehicle, ahead of closing what it is reached through.
   */
  private void linkOnTheGround(int node, TaskId task) {
    edge(mark(task, Milestone.CLOSED), node, task);
    for (int other = 0; other < drafts.size(); other++) {
      if (Lifting.lowers(resolved, drafts.get(other))) {
        edge(other, node, task);
      }
    }
    for (TaskId access : layers.fromTheGround(task)) {
      chains.of(access).close().forEach(closing -> edge(node, closing, task));
      edge(node, mark(access, Milestone.CLOSED), task);
    }
  }

  /**
   * Two writers may take the same things off in opposite order: then it is their owner's. What
   * contradicts only by way of other things is reported as a loop.
   */
  private void keep(StepGraph.Edge wish, TaskId task) {
    if (!comesBefore(wish.later(), wish.earlier()) || !isOppositeElsewhere(wish, task)) {
      edge(wish.earlier(), wish.later(), task);
    }
  }

  private boolean isOppositeElsewhere(StepGraph.Edge wish, TaskId task) {
    return resolved.tasks().keySet().stream()
        .filter(other -> !other.equals(task))
        .map(chains::of)
        .flatMap(own -> Stream.of(each(own.open()), each(own.work()), own.closing()))
        .anyMatch(chain -> isBefore(chain, wish.later(), wish.earlier()));
  }

  private static boolean isBefore(List<List<Integer>> chain, int one, int other) {
    int first = at(chain, one);
    int second = at(chain, other);
    return first >= 0 && first < second;
  }

  private static int at(List<List<Integer>> chain, int node) {
    for (int i = 0; i < chain.size(); i++) {
      if (chain.get(i).contains(node)) {
        return i;
      }
    }
    return -1;
  }

  private static List<List<Integer>> each(List<Integer> chain) {
    return chain.stream().map(List::of).toList();
  }

  private boolean comesBefore(int earlier, int later) {
    Set<Integer> seen = new HashSet<>();
    Deque<Integer> next = new ArrayDeque<>(List.of(later));
    while (!next.isEmpty()) {
      int node = next.remove();
      if (node == earlier) {
        return true;
      }
      before.get(node).stream().filter(seen::add).forEach(next::add);
    }
    return false;
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
    run(task.id(), List.of(), each(own.open()), opened);
    run(task.id(), List.of(opened), each(own.work()), worked);
    run(task.id(), List.of(worked), own.closing(), closed);
    for (TaskId access : task.access()) {
      int open = mark(access, Milestone.OPENED);
      ownOpen(task).forEach(node -> edge(open, node, task.id()));
      edge(open, opened, task.id());
      closeAfter(access, task, closed);
    }
    task.after().forEach(earlier -> openAfter(task, earlier));
  }

  /**
   * Chains stretches of nodes between milestones. Steps of other tasks that follow one another
   * directly are held by the task's own before and behind them; among themselves they are a wish.
   */
  private void run(TaskId task, List<Integer> from, List<List<Integer>> chain, int to) {
    List<Integer> last = from;
    List<Integer> shared = new ArrayList<>();
    for (List<Integer> stretch : chain) {
      for (int node : stretch) {
        last.forEach(earlier -> follow(task, earlier, node));
        shared.forEach(earlier -> follow(task, earlier, node));
      }
      habits(task, stretch);
      if (stretch.stream().anyMatch(node -> isOf(node, task))) {
        last = stretch;
        shared.clear();
      } else {
        shared.addAll(stretch);
      }
    }
    Stream.concat(last.stream(), shared.stream()).forEach(earlier -> edge(earlier, to, task));
  }

  private void follow(TaskId task, int earlier, int later) {
    if (isShared(earlier, task) && isShared(later, task)) {
      wishes.putIfAbsent(new StepGraph.Edge(earlier, later), task);
    } else {
      edge(earlier, later, task);
    }
  }

  private boolean isShared(int node, TaskId task) {
    return node < drafts.size() && !isOf(node, task);
  }

  private void habits(TaskId task, List<Integer> stretch) {
    for (int i = 0; i < stretch.size(); i++) {
      for (int later : stretch.subList(i + 1, stretch.size())) {
        habits.putIfAbsent(new StepGraph.Edge(stretch.get(i), later), task);
      }
    }
  }

  private boolean isOf(int node, TaskId task) {
    return drafts.get(node).task().equals(task);
  }

  private List<Integer> ownOpen(Task task) {
    return chains.of(task.id()).open().stream().filter(node -> isOf(node, task.id())).toList();
  }

  /** Nothing of an access closes before the tasks behind it are closed. */
  private void closeAfter(TaskId access, Task task, int closed) {
    StepChains.Chains own = chains.of(task.id());
    edge(closed, mark(access, Milestone.CLOSED), task.id());
    Stream<Integer> shared = chains.of(access).close().stream();
    Stream<Integer> working = chains.of(access).work().stream();
    Stream.concat(
            shared.filter(node -> !own.contains(node)),
            working.filter(node -> !drafts.get(node).doUp().isEmpty()))
        .forEach(node -> edge(closed, node, task.id()));
  }

  private void openAfter(Task task, TaskId earlier) {
    for (int done : doneBefore(task, earlier)) {
      ownOpen(task).forEach(node -> edge(done, node, task.id()));
      edge(done, mark(task.id(), Milestone.OPENED), task.id());
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
      if (closesLater(task.id(), close.get(i))) {
        List<Integer> until = new ArrayList<>(close.subList(0, i));
        until.add(mark(earlier, Milestone.WORKED));
        return until;
      }
    }
    return List.of(mark(earlier, Milestone.CLOSED));
  }

  /** Whether a step that closes something does so for a task, or for what gives access to it. */
  private boolean closesLater(TaskId task, int node) {
    return chains.of(task).contains(node)
        || layers.around(task).stream().anyMatch(access -> chains.of(access).contains(node));
  }

  private boolean takesNothingOff(Task task) {
    return Stream.of(task.open(), task.work(), task.close())
        .flatMap(List::stream)
        .flatMap(step -> Stream.of(step.undo(), step.doUp()))
        .flatMap(List::stream)
        .allMatch(item -> resolved.thing(item).isTemporary());
  }

  /** Whether neither lies behind the other, and something behind both. */
  private boolean aroundTheSame(TaskId one, TaskId other) {
    return !layers.isBehind(one, other)
        && !layers.isBehind(other, one)
        && resolved.tasks().keySet().stream()
            .anyMatch(task -> layers.isBehind(task, one) && layers.isBehind(task, other));
  }

  /**
   * A step that is due before lifting comes before whatever raises the vehicle for its work, and
   * before all that its own task takes apart; but behind what gives access to it on the ground or
   * as early. What is measured is so before anything has moved the vehicle.
   */
  private void linkEarly(int node) {
    TaskId early = drafts.get(node).task();
    for (TaskId access : layers.fromTheGround(early)) {
      edge(mark(access, Milestone.OPENED), node, early);
    }
    chains.early().stream()
        .filter(other -> layers.isBehind(early, drafts.get(other).task()))
        .forEach(other -> edge(other, node, early));
    List<Task> concerned = resolved.ranked().stream().filter(it -> concerns(node, it)).toList();
    boolean anyEnd = !endsInTurn || !drafts.get(node).entries().isEmpty();
    Set<TaskId> ends =
        anyEnd ? Set.of() : layers.raising(concerned.stream().map(Task::id).toList());
    for (int other = 0; other < drafts.size(); other++) {
      PlannedStep step = drafts.get(other);
      if (Lifting.raises(resolved, step) && (ends.isEmpty() || ends.contains(step.task()))) {
        edge(node, other, early);
      }
    }
    for (Task task : concerned) {
      edge(node, mark(task.id(), Milestone.OPENED), task.id());
      ownOpen(task).forEach(opening -> edge(node, opening, task.id()));
    }
  }

  private boolean concerns(int early, Task task) {
    PlannedStep step = drafts.get(early);
    return task.id().equals(step.task())
        || task.open().stream().anyMatch(other -> !Collections.disjoint(other.undo(), step.undo()));
  }

  private int mark(TaskId task, Milestone milestone) {
    return marks.get(new Mark(task, milestone));
  }

  private void edge(int earlier, int later, TaskId task) {
    if (earlier != later) {
      before.get(later).add(earlier);
      wantedBy.putIfAbsent(new StepGraph.Edge(earlier, later), task);
    }
  }
}
