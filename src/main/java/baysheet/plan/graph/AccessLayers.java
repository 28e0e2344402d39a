package baysheet.plan.graph;

import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What lies around each task: all that gives access to it, directly or through others. */
final class AccessLayers {
  private final Resolved resolved;
  private final Map<TaskId, Set<TaskId>> around = new HashMap<>();
  private final Map<TaskId, Set<ItemAt>> opened = new HashMap<>();
  private final Map<TaskId, Set<TaskId>> earlier = new HashMap<>();

  AccessLayers(Resolved resolved) {
    this.resolved = resolved;
    for (Task task : resolved.tasks().values()) {
      opened.put(task.id(), opened(around(task.id())));
      earlier.put(task.id(), earlier(task.id()));
    }
  }

  /** The tasks that give access to one; access never runs in a circle. */
  Set<TaskId> around(TaskId task) {
    Set<TaskId> known = around.get(task);
    if (known != null) {
      return known;
    }
    Set<TaskId> all = new LinkedHashSet<>();
    for (TaskId access : resolved.tasks().get(task).access()) {
      all.add(access);
      all.addAll(around(access));
    }
    around.put(task, all);
    return all;
  }

  /** All that is opened before a task: its access, what it comes after, and theirs. */
  private Set<TaskId> earlier(TaskId task) {
    Set<TaskId> all = new LinkedHashSet<>();
    Deque<TaskId> next = new ArrayDeque<>(List.of(task));
    while (!next.isEmpty()) {
      Task one = resolved.tasks().get(next.remove());
      Stream.concat(one.access().stream(), one.after().stream())
          .filter(all::add)
          .forEach(next::add);
    }
    return all;
  }

  /**
   * Whether a task is opened before another: it gives access to it, or the other comes after it.
   */
  boolean isOpenedBefore(TaskId task, TaskId later) {
    return earlier.get(later).contains(task);
  }

  /** What gives access to a task and takes something off, and is reached without raising. */
  List<TaskId> fromTheGround(TaskId task) {
    return around(task).stream().filter(access -> !isRaised(access) && takesOff(access)).toList();
  }

  /** Whether a task raises the vehicle, or lies behind one that does. */
  boolean isRaised(TaskId task) {
    return raises(task) || around(task).stream().anyMatch(this::raises);
  }

  /** What raises the vehicle for some tasks, or for what lies behind one of them. */
  Set<TaskId> raising(List<TaskId> tasks) {
    Set<TaskId> raising = new HashSet<>();
    for (TaskId task : resolved.tasks().keySet()) {
      if (tasks.contains(task) || tasks.stream().anyMatch(access -> isBehind(task, access))) {
        around(task).stream().filter(this::raises).forEach(raising::add);
      }
    }
    return raising;
  }

  private boolean raises(TaskId task) {
    return undoes(task).anyMatch(item -> Lifting.holds(resolved, item));
  }

  private boolean takesOff(TaskId task) {
    return undoes(task).findAny().isPresent();
  }

  private Stream<ItemAt> undoes(TaskId task) {
    return resolved.tasks().get(task).open().stream().flatMap(step -> step.undo().stream());
  }

  private Set<ItemAt> opened(Set<TaskId> tasks) {
    Set<ItemAt> items = new HashSet<>();
    for (TaskId task : tasks) {
      resolved.tasks().get(task).open().forEach(step -> items.addAll(step.undo()));
    }
    return items;
  }

  /** Whether a task lies behind another. */
  boolean isBehind(TaskId task, TaskId access) {
    return around(task).contains(access);
  }

  /**
   * Whether what gives access to a task opens an item, so that it is off before and after all of
   * the task, whoever puts it on.
   */
  boolean isOpenAround(ItemAt item, TaskId task) {
    return opened.get(task).contains(item);
  }
}
