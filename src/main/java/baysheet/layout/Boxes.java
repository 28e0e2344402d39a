package baysheet.layout;

import baysheet.template.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Walks trees of boxes. */
final class Boxes {
  private Boxes() {}

  /** A box and all boxes in it, in reading order, those that may be dropped included. */
  static List<Box> walk(Box box) {
    List<Box> all = new ArrayList<>();
    walk(box, all);
    return all;
  }

  /** The names of all groups in a box that may be dropped, whole boxes and runs of a text. */
  static Set<String> groups(Box box) {
    Set<String> groups = new TreeSet<>();
    for (Box inner : walk(box)) {
      if (inner instanceof Box.Droppable droppable) {
        groups.add(droppable.group());
      } else if (inner instanceof Box.Text text) {
        text.runs().forEach(run -> run.group().ifPresent(groups::add));
      }
    }
    return groups;
  }

  private static void walk(Box box, List<Box> all) {
    all.add(box);
    children(box).forEach(child -> walk(child, all));
  }

  private static List<Box> children(Box box) {
    if (box instanceof Box.Column column) {
      return column.children();
    } else if (box instanceof Box.Columns columns) {
      return columns.children();
    } else if (box instanceof Box.Row row) {
      return row.cells().stream().map(Box.Cell::child).toList();
    } else if (box instanceof Box.Held held) {
      return List.of(held.child());
    } else if (box instanceof Box.Frame frame) {
      return List.of(frame.child());
    } else if (box instanceof Box.Droppable droppable) {
      List<Box> both = new ArrayList<>(List.of(droppable.child()));
      droppable.smaller().ifPresent(both::add);
      return both;
    }
    return manyChildren(box);
  }

  private static List<Box> manyChildren(Box box) {
    List<Box> children = new ArrayList<>();
    if (box instanceof Box.Items items) {
      items.entries().forEach(entry -> children.addAll(List.of(entry.label(), entry.body())));
    } else if (box instanceof Box.Table table) {
      table.header().forEach(cell -> children.add(cell.child()));
      table.rows().forEach(row -> row.cells().forEach(cell -> children.add(cell.child())));
    }
    return children;
  }
}
