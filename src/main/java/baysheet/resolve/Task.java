package baysheet.resolve;

import baysheet.books.Procedure;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A procedure at a place, as part of a job.
 *
 * @param asked whether the job names it, or it is only access
 * @param access what is opened before and closed after it, directly
 * @param after what must be finished before it is opened
 * @param parts new parts, but for those whose place this vehicle does not have
 * @param renewed items in whose place one of its new parts goes on
 */
public record Task(
    TaskId id,
    Procedure procedure,
    boolean asked,
    List<TaskId> access,
    List<TaskId> after,
    List<BoundStep> open,
    List<BoundStep> work,
    List<BoundStep> close,
    List<Procedure.Part> parts,
    List<ItemAt> renewed) {
  public Task {
    access = List.copyOf(access);
    after = List.copyOf(after);
    open = List.copyOf(open);
    work = List.copyOf(work);
    close = List.copyOf(close);
    parts = List.copyOf(parts);
    renewed = List.copyOf(renewed);
  }

  /** All its steps, block after block. */
  Stream<BoundStep> steps() {
    return Stream.of(open, work, close).flatMap(List::stream);
  }

  /** The same without some of its steps. */
  Task keeping(Predicate<BoundStep> kept) {
    return new Task(
        id,
        procedure,
        asked,
        access,
        after,
        open.stream().filter(kept).toList(),
        work.stream().filter(kept).toList(),
        close.stream().filter(kept).toList(),
        parts,
        renewed);
  }

  /** Whether nothing of it is left to do on this vehicle. */
  boolean isEmpty() {
    return open.isEmpty() && work.isEmpty() && close.isEmpty();
  }
}
