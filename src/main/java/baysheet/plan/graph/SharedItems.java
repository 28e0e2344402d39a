package baysheet.plan.graph;

import baysheet.books.Moment;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which task undoes an item and which does it up, where several would. Who takes it off does so
 * before one that only slackens it. What gives access does both, for it opens first and closes
 * last; else who comes first by {@code after}, and then who ranks first, undoes, and who has words
 * of its own for doing up does so before one that only mirrors the opening.
 */
final class SharedItems {
  private final Map<ItemAt, TaskId> undoing = new LinkedHashMap<>();
  private final Map<ItemAt, TaskId> doingUp = new LinkedHashMap<>();

  private SharedItems() {}

  /**
   * The owners among the steps of a job.
   *
   * @param written opening and working steps by task, in order of rank
   * @param closing closing steps by task
   */
  static SharedItems of(
      AccessLayers layers,
      List<Map<TaskId, List<PlannedStep>>> written,
      Map<TaskId, List<PlannedStep>> closing) {
    Map<ItemAt, Set<TaskId>> undo = new LinkedHashMap<>();
    Map<ItemAt, Set<TaskId>> slackening = new LinkedHashMap<>();
    Map<ItemAt, Set<TaskId>> own = new LinkedHashMap<>();
    Map<ItemAt, Set<TaskId>> mirrored = new LinkedHashMap<>();
    List<PlannedStep> steps = new ArrayList<>();
    written.forEach(phase -> phase.values().forEach(steps::addAll));
    closing.values().forEach(steps::addAll);
    Map<ItemAt, Set<TaskId>> late = new LinkedHashMap<>();
    for (PlannedStep step : steps) {
      Map<ItemAt, Set<TaskId>> doing = isLate(step) ? late : step.mirrored() ? mirrored : own;
      step.undo().stream()
          .filter(item -> !step.slacken().contains(item))
          .forEach(item -> add(undo, item, step.task()));
      step.slacken().stream()
          .filter(step.undo()::contains)
          .forEach(item -> add(slackening, item, step.task()));
      step.doUp().forEach(item -> add(doing, item, step.task()));
    }
    mirrored.forEach((item, tasks) -> tasks.forEach(task -> add(own, item, task)));
    // What others put on in its turn waits for the ground only where one who gives them access
    // says.
    late.forEach((item, tasks) -> tasks.forEach(task -> add(own, item, task)));
    SharedItems owners = new SharedItems();
    // Where one takes off what another only slackens, it is taken off.
    slackening.forEach(undo::putIfAbsent);
    undo.forEach((item, tasks) -> owners.undoing.put(item, openedFirst(layers, tasks)));
    own.forEach((item, tasks) -> owners.doingUp.put(item, outermost(layers, tasks)));
    return owners;
  }

  private static boolean isLate(PlannedStep step) {
    return step.moment().filter(at -> at.compareTo(Moment.ON_THE_GROUND) >= 0).isPresent();
  }

  boolean undoes(ItemAt item, TaskId task) {
    return undoing.get(item).equals(task);
  }

  boolean doesUp(ItemAt item, TaskId task) {
    return doingUp.get(item).equals(task);
  }

  private static void add(Map<ItemAt, Set<TaskId>> all, ItemAt item, TaskId task) {
    all.computeIfAbsent(item, key -> new LinkedHashSet<>()).add(task);
  }

  /** The first that none of the others is opened before; where they run in a circle, as access. */
  private static TaskId openedFirst(AccessLayers layers, Set<TaskId> tasks) {
    for (TaskId task : tasks) {
      if (tasks.stream().noneMatch(other -> layers.isOpenedBefore(other, task))) {
        return task;
      }
    }
    return outermost(layers, tasks);
  }

  /** The first that no other of them gives access to; access never runs in a circle. */
  private static TaskId outermost(AccessLayers layers, Set<TaskId> tasks) {
    for (TaskId task : tasks) {
      if (Collections.disjoint(layers.around(task), tasks)) {
        return task;
      }
    }
    throw new IllegalStateException("access in a circle among " + tasks);
  }
}
