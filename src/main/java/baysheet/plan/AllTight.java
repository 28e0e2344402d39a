package baysheet.plan;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether every fastener that went on has a torque line, and a step that names it last; no line is
 * idle. Shares no code with the planner.
 */
final class AllTight {
  private final Printed printed;
  private final List<String> faults = new ArrayList<>();

  private AllTight(Printed printed) {
    this.printed = printed;
  }

  /**
   * What is not tightened.
   *
   * @param back what the steps did up
   */
  static List<String> faults(
      Sheet sheet, Printed printed, Resolved resolved, Collection<ItemAt> back) {
    AllTight tight = new AllTight(printed);
    Map<ItemAt, Integer> rows = rows(sheet);
    for (ItemAt item : back) {
      int count = rows.getOrDefault(item, 0);
      if (resolved.thing(item) instanceof Bound.OfBook && count != 1) {
        tight.faults.add(item + " has " + count + " torque lines");
      }
    }
    sheet.torque().forEach(tight::reached);
    return tight.faults;
  }

  /** How many torque lines each fastener has. */
  private static Map<ItemAt, Integer> rows(Sheet sheet) {
    Map<ItemAt, Integer> rows = new HashMap<>();
    for (TorqueLine line : sheet.torque()) {
      for (Place place : line.places()) {
        rows.merge(new ItemAt(line.fastener(), place), 1, Integer::sum);
      }
    }
    return rows;
  }

  private void reached(TorqueLine line) {
    List<Sheet.SheetStep> visits = printed.naming(line);
    if (visits.size() < (line.twoVisits() ? 2 : 1)) {
      faults.add("torque line " + line.n() + " is reached by " + visits.size() + " steps");
    }
    if (line.twoVisits() && visits.stream().noneMatch(AllTight::isLate)) {
      faults.add("torque line " + line.n() + " never gets its final torque on the ground");
    }
  }

  private static boolean isLate(Sheet.SheetStep step) {
    return step.phase() == Sheet.Phase.FINAL && step.moment().compareTo(Moment.ON_THE_GROUND) >= 0;
  }
}
