package baysheet.verify;

import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Whether things go back on in the order in which they are layered, as the playback sees it. */
final class ReinstallOrder {
  private final Resolved resolved;
  private final AccessClosure accesses;
  private final Map<ItemAt, List<Opening>> openings = new HashMap<>();

  /**
   * The opening step, counted from 0, in which a task that leaves closing to the mirror takes
   * something off.
   */
  private record Opening(Task task, int step) {}

  ReinstallOrder(Resolved resolved, AccessClosure accesses) {
    this.resolved = resolved;
    this.accesses = accesses;
    resolved.tasks().values().stream().filter(it -> it.close().isEmpty()).forEach(this::add);
  }

  private void add(Task task) {
    for (int i = 0; i < task.open().size(); i++) {
      for (ItemAt item : task.open().get(i).undo()) {
        openings.computeIfAbsent(item, key -> new ArrayList<>()).add(new Opening(task, i));
      }
    }
  }

  /**
   * What came off after an item, in a procedure that leaves closing to the mirror, is on before it.
   *
   * @param off what is off when the step does the item up
   */
  List<String> faults(Sheet.SheetStep step, ItemAt item, Set<ItemAt> off) {
    List<String> faults = new ArrayList<>();
    for (Opening opening : openings.getOrDefault(item, List.of())) {
      Task task = opening.task();
      if (!saysWhen(task, item)) {
        later(task.open(), opening.step())
            .filter(off::contains)
            .filter(other -> !opensAnyway(task, other) && !saysWhen(task, other))
            .filter(other -> !isOppositeElsewhere(task, item, other))
            .forEach(other -> faults.add(over(step, item, other)));
      }
    }
    return faults;
  }

  private static String over(Sheet.SheetStep step, ItemAt item, ItemAt other) {
    return "step " + step.n() + " does up " + item + " over " + other + ", which is still off";
  }

  /** Whether another task puts on the one before the other: then neither has to lie below. */
  private boolean isOppositeElsewhere(Task task, ItemAt item, ItemAt other) {
    return resolved.tasks().values().stream()
        .filter(elsewhere -> !elsewhere.equals(task))
        .anyMatch(elsewhere -> isPutOnBefore(elsewhere, item, other));
  }

  /** What came off later goes on first; of one step, what the closing has words of its own for. */
  private static boolean isPutOnBefore(Task task, ItemAt item, ItemAt other) {
    int offItem = step(task.open(), opening -> opening.undo().contains(item));
    int offOther = step(task.open(), opening -> opening.undo().contains(other));
    int onItem = step(task.close(), closing -> closing.doUp().contains(item));
    int onOther = step(task.close(), closing -> closing.doUp().contains(other));
    if (offItem < 0 || offOther < 0) {
      return false;
    }
    return onItem >= 0 && onOther >= 0
        ? onItem < onOther
        : offOther < offItem || (offOther == offItem && onItem >= 0);
  }

  /** The first step of a kind, counted from 0; -1 where none is. */
  private static int step(List<BoundStep> steps, Predicate<BoundStep> which) {
    return IntStream.range(0, steps.size())
        .filter(i -> which.test(steps.get(i)))
        .findFirst()
        .orElse(-1);
  }

  /** Whether what gives access to a task takes an item off, or says when it goes on. */
  private boolean opensAnyway(Task task, ItemAt item) {
    return accesses.of(task).stream()
        .flatMap(access -> Stream.of(access.open(), access.work(), access.close()))
        .flatMap(List::stream)
        .anyMatch(step -> step.undo().contains(item) || step.doUp().contains(item));
  }

  /** Whether a task's opening or work says by itself when an item goes on; the mirror does not. */
  private static boolean saysWhen(Task task, ItemAt item) {
    return Stream.of(task.open(), task.work())
        .flatMap(List::stream)
        .anyMatch(step -> step.doUp().contains(item));
  }

  private static Stream<ItemAt> later(List<BoundStep> open, int index) {
    return open.subList(index + 1, open.size()).stream().flatMap(step -> step.undo().stream());
  }
}
