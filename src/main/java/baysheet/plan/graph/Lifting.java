package baysheet.plan.graph;

import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
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

  /** Whether any of these items is what the vehicle stands on. */
  public static boolean holds(Resolved resolved, List<ItemAt> items) {
    for (ItemAt item : items) {
      if (holds(resolved, item)) {
        return true;
      }
    }
    return false;
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
