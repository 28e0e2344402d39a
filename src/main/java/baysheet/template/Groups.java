package baysheet.template;

import baysheet.template.Box.Columns;
import baysheet.template.Box.Droppable;
import baysheet.template.Box.Text;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The names under which pieces of a form give way. */
final class Groups {
  private Groups() {}

  /** Adds every group that a box or a box inside it belongs to, in reading order. */
  static void collect(Box box, Set<String> into) {
    if (box instanceof Droppable droppable) {
      into.add(droppable.group());
    } else if (box instanceof Text text) {
      text.runs().forEach(run -> run.group().ifPresent(into::add));
    }
    children(box).forEach(child -> collect(child, into));
  }

  /** The boxes directly inside a box, in reading order. */
  static Stream<Box> children(Box box) {
    if (box instanceof Box.Row row) {
      return row.cells().stream().map(Box.Cell::child);
    } else if (box instanceof Box.Column column) {
      return column.children().stream();
    } else if (box instanceof Columns columns) {
      return columns.children().stream();
    } else if (box instanceof Box.Held held) {
      return Stream.of(held.child());
    } else if (box instanceof Box.Frame frame) {
      return Stream.of(frame.child());
    } else if (box instanceof Box.Items items) {
      return items.entries().stream().flatMap(entry -> Stream.of(entry.label(), entry.body()));
    } else if (box instanceof Droppable droppable) {
      return Stream.concat(Stream.of(droppable.child()), droppable.smaller().stream());
    } else if (box instanceof Box.Table table) {
      return Stream.concat(
              Stream.of(table.header()), table.rows().stream().map(Box.TableRow::cells))
          .flatMap(List::stream)
          .map(Box.TableCell::child);
    }
    return Stream.empty();
  }
}
