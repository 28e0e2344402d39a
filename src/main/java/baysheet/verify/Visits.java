package baysheet.verify;

import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.TorqueLine;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;

/** Which steps of a sheet tighten the fasteners of a torque line at one of its places. */
final class Visits {
  private Visits() {}

  /** The number of the last of them; 0 where there is none. */
  static int last(Sheet sheet, TorqueLine line, Place place) {
    int last = 0;
    for (SheetStep step : sheet.steps()) {
      last = isOne(step, line, place) ? step.n() : last;
    }
    return last;
  }

  static boolean isOne(SheetStep step, TorqueLine line, Place place) {
    if (!step.torque().contains(line.n())) {
      return false;
    }
    if (step.doUp().contains(new ItemAt(line.fastener(), place))) {
      return true;
    }
    // A final torque is given where the work was done, which need not be the fastener's own place.
    return step.phase() == Sheet.Phase.FINAL
        && (step.places().contains(place) || Collections.disjoint(step.places(), line.places()));
  }

  /** Numbers of all lines that a step names. */
  static Set<Integer> named(SheetStep step) {
    Set<Integer> named = new TreeSet<>(step.torque());
    for (Detail detail : step.details()) {
      if (detail instanceof Detail.Removed it) {
        named.add(it.line());
      } else if (detail instanceof Detail.Installed it) {
        named.add(it.line());
      } else if (detail instanceof Detail.Tightened it) {
        named.add(it.line());
      }
    }
    return named;
  }
}
