package baysheet.verify;

import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What gives access to a task, directly or through others, each once, as the playback sees it. */
final class AccessClosure {
  private final Resolved resolved;
  private final Map<TaskId, List<Task>> known = new HashMap<>();

  AccessClosure(Resolved resolved) {
    this.resolved = resolved;
  }

  List<Task> of(Task task) {
    List<Task> found = known.get(task.id());
    if (found != null) {
      return found;
    }
    Map<TaskId, Task> all = new LinkedHashMap<>();
    for (TaskId id : task.access()) {
      Task access = resolved.tasks().get(id);
      all.putIfAbsent(id, access);
      of(access).forEach(further -> all.putIfAbsent(further.id(), further));
    }
    known.put(task.id(), List.copyOf(all.values()));
    return known.get(task.id());
  }
}
