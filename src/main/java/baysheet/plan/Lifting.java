package baysheet.plan;

import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.List;

/** Raising and lowering: undoing and doing up an item of kind {@code support}. */
final class Lifting {
  private static final String SUPPORT = "support";

  private Lifting() {}

  static boolean raises(Resolved resolved, Draft step) {
    return holds(resolved, step.undo());
  }

  static boolean lowers(Resolved resolved, Draft step) {
    return holds(resolved, step.doUp());
  }

  /** Whether any of these items is what the vehicle stands on. */
  static boolean holds(Resolved resolved, List<ItemAt> items) {
    for (ItemAt item : items) {
      if (holds(resolved, item)) {
        return true;
      }
    }
    return false;
  }

  static boolean holds(Resolved resolved, ItemAt item) {
    return resolved.thing(item).isOf(SUPPORT);
  }
}
