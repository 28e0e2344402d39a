package baysheet.verify;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether everything that came off or went on stands in its table: every fastener that went on in
 * the torque table, with a step that names its line last, and whatever else was off in the tally.
 * Shares no code with the planner.
 */
final class ListingCheck {
  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final List<String> faults = new ArrayList<>();

  private ListingCheck(Sheet sheet, SheetIndex printed, Resolved resolved) {
    this.sheet = sheet;
    this.printed = printed;
    this.resolved = resolved;
  }

  /**
   * What is not listed, or listed and not done.
   *
   * @param off what the steps undid
   * @param back what they did up
   */
  static List<String> faults(
      Sheet sheet, SheetIndex printed, Resolved resolved, Set<ItemAt> off, Set<ItemAt> back) {
    ListingCheck listed = new ListingCheck(sheet, printed, resolved);
    listed.rows(back);
    sheet.torque().forEach(listed::reached);
    listed.tallied(off);
    return listed.faults;
  }

  private void rows(Set<ItemAt> back) {
    Map<ItemAt, Integer> rows = new HashMap<>();
    for (TorqueLine line : sheet.torque()) {
      for (Place place : line.places()) {
        rows.merge(new ItemAt(line.fastener(), place), 1, Integer::sum);
      }
    }
    for (ItemAt item : back) {
      int count = rows.getOrDefault(item, 0);
      if (resolved.thing(item) instanceof Bound.OfBook && count != 1) {
        faults.add(item + " has " + count + " torque lines");
      }
    }
  }

  /** No line is idle, and one of two visits gets its figure on the ground. */
  private void reached(TorqueLine line) {
    List<Sheet.SheetStep> visits = printed.naming(line);
    if (visits.size() < (line.visits().two() ? 2 : 1)) {
      faults.add("torque line " + line.n() + " is reached by " + visits.size() + " steps");
    }
    if (line.visits().two() && visits.stream().noneMatch(ListingCheck::isLate)) {
      faults.add("torque line " + line.n() + " never gets its final torque on the ground");
    }
  }

  private static boolean isLate(Sheet.SheetStep step) {
    return step.phase() == Sheet.Phase.FINAL && step.moment().compareTo(Moment.ON_THE_GROUND) >= 0;
  }

  private void tallied(Set<ItemAt> off) {
    Set<ItemAt> tally = new HashSet<>();
    for (Sheet.TallyLine row : sheet.tally()) {
      row.places().forEach(place -> tally.add(new ItemAt(row.item(), place)));
    }
    for (ItemAt item : off) {
      Bound thing = resolved.thing(item);
      boolean listed = !thing.isOf("support") && !thing.isOf("temporary");
      if (thing instanceof Bound.OfCatalogue && listed && !tally.contains(item)) {
        faults.add(item + " was off and is not in the tally");
      }
    }
  }
}
