package baysheet.plan.graph;

import baysheet.books.Place;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Raising and lowering: undoing and doing up an item of kind {@code support}. */
public final class Lifting {
  private static final String SUPPORT = "support";

  private Lifting() {}

  public static boolean raises(Resolved resolved, PlannedStep step) {
    return holds(resolved, step.undo());
  }

  static boolean lowers(Resolved resolved, PlannedStep step) {
    return holds(resolved, step.doUp());
  }

  /** Whether a step belongs to raising, from its first preparation to the last test. */
  public static boolean isRaising(Resolved resolved, PlannedStep step) {
    return step.phase() == Sheet.Phase.OPEN && moves(resolved, step);
  }

  /** Whether a step belongs to lowering, from the brake to what is done once it is down. */
  public static boolean isLowering(Resolved resolved, PlannedStep step) {
    boolean brakes =
        step.source() instanceof StepSource.HeightChange change
            && change.part() == StepSource.HeightPart.BRAKE
            && change.from() != change.to();
    return brakes || (step.phase() == Sheet.Phase.CLOSE && moves(resolved, step));
  }

  private static boolean moves(Resolved resolved, PlannedStep step) {
    return raises(resolved, step)
        || lowers(resolved, step)
        || (step.moment().isEmpty() && !supports(resolved, step.task()).isEmpty());
  }

  /** What the vehicle stands on that a task takes away, so raising it. */
  static List<ItemAt> supports(Resolved resolved, TaskId task) {
    List<ItemAt> supports = new ArrayList<>();
    for (BoundStep opening : resolved.tasks().get(task).open()) {
      supports.addAll(resolved.ofKind(SUPPORT, opening.undo()));
    }
    return supports;
  }

  /** Whether any of these items is what the vehicle stands on. */
  public static boolean holds(Resolved resolved, List<ItemAt> items) {
    for (ItemAt item : items) {
      if (holds(resolved, item)) {
        return true;
      }
    }
    return false;
  }

  /** For each line, how many times the vehicle was up and is down again. */
  public static int[] timesDown(Resolved resolved, List<PlacedStep> lines) {
    int[] times = new int[lines.size()];
    Set<ItemAt> up = new LinkedHashSet<>();
    int down = 0;
    for (int i = 0; i < times.length; i++) {
      times[i] = down;
      up.addAll(resolved.ofKind(SUPPORT, lines.get(i).undo()));
      down += up.removeAll(lines.get(i).doUp()) && up.isEmpty() ? 1 : 0;
    }
    return times;
  }

  /** The ends of the vehicle that some steps raise: an axle, or a place that belongs to none. */
  static Set<Place> ends(Resolved resolved, List<PlannedStep> steps) {
    Set<Place> ends = new LinkedHashSet<>();
    for (PlannedStep step : steps) {
      for (ItemAt item : step.undo()) {
        if (holds(resolved, item)) {
          ends.add(end(item));
        }
      }
    }
    return ends;
  }

  /** The end of the vehicle that stands on an item. */
  static Place end(ItemAt item) {
    return item.place().axle().orElse(item.place());
  }

  public static boolean holds(Resolved resolved, ItemAt item) {
    return resolved.thing(item).isOf(SUPPORT);
  }
}
