package baysheet.template;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** Walks trees of boxes. */
public final class Boxes {
  private Boxes() {}

  /** A box and all boxes in it, in reading order, those that may be dropped included. */
  public static List<Box> walk(Box box) {
    List<Box> all = new ArrayList<>();
    walk(box, all);
    return all;
  }

  private static void walk(Box box, List<Box> all) {
    all.add(box);
    forEachChild(box, child -> walk(child, all));
  }

  /** The names under which a box, boxes in it and runs of their texts give way. */
  public static Set<String> groups(Box box) {
    Set<String> groups = new LinkedHashSet<>();
    for (Box inner : walk(box)) {
      if (inner instanceof Box.Droppable droppable) {
        groups.add(droppable.group());
      } else if (inner instanceof Box.Text text) {
        for (Box.Run run : text.runs()) {
          run.group().ifPresent(groups::add);
        }
      }
    }
    return groups;
  }

  /** Hands on the boxes directly inside a box, in reading order. */
  static void forEachChild(Box box, Consumer<Box> action) {
    if (box instanceof Box.Column column) {
      column.children().forEach(action);
    } else if (box instanceof Box.Columns columns) {
      columns.children().forEach(action);
    } else if (box instanceof Box.Held held) {
      action.accept(held.child());
    } else if (box instanceof Box.Frame frame) {
      action.accept(frame.child());
    } else if (box instanceof Box.Droppable droppable) {
      action.accept(droppable.child());
      droppable.smaller().ifPresent(action);
    } else {
      forEachOfMany(box, action);
    }
  }

  private static void forEachOfMany(Box box, Consumer<Box> action) {
    if (box instanceof Box.Row row) {
      row.cells().forEach(cell -> action.accept(cell.child()));
    } else if (box instanceof Box.Items items) {
      for (Box.Entry entry : items.entries()) {
        action.accept(entry.label());
        action.accept(entry.body());
      }
    } else if (box instanceof Box.Table table) {
      table.header().forEach(cell -> action.accept(cell.child()));
      table.rows().forEach(row -> row.cells().forEach(cell -> action.accept(cell.child())));
    }
  }
}
