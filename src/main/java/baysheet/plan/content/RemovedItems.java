package baysheet.plan.content;

import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The rows of the tally: like items that come off and go on in the same steps share one. */
final class RemovedItems {
  private record Row(String item, String words, int off, int on) {}

  private RemovedItems() {}

  /**
   * The rows in the order in which the items come off.
   *
   * @param off the step that takes each item off
   * @param on the step that puts it back
   */
  static List<Sheet.TallyLine> of(
      Resolved resolved, Map<ItemAt, Integer> off, Map<ItemAt, Integer> on) {
    Map<Row, List<Place>> rows = new LinkedHashMap<>();
    off.forEach(
        (item, step) -> {
          String words = resolved.thing(item).in(resolved.shop().terms());
          // An item that never goes on is a fault, found when the plan is played back.
          Row row = new Row(item.item(), words, step, on.getOrDefault(item, 0));
          rows.computeIfAbsent(row, key -> new ArrayList<>()).add(item.place());
        });
    List<Sheet.TallyLine> tally = new ArrayList<>();
    rows.forEach(
        (row, places) ->
            tally.add(
                new Sheet.TallyLine(row.item(), row.words(), places, 1, row.off(), row.on())));
    return tally;
  }
}
