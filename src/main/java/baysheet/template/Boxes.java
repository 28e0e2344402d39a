package baysheet.template;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

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
    for (Box child : children(box)) {
      walk(child, all);
    }
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

  /** The boxes directly inside a box, in reading order. */
  static List<Box> children(Box box) {
    if (box instanceof Box.Column column) {
      return column.children();
    } else if (box instanceof Box.Columns columns) {
      return columns.children();
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
    if (box instanceof Box.Row row) {
      row.cells().forEach(cell -> children.add(cell.child()));
    } else if (box instanceof Box.Items items) {
      items.entries().forEach(entry -> children.addAll(List.of(entry.label(), entry.body())));
    } else if (box instanceof Box.Table table) {
      table.header().forEach(cell -> children.add(cell.child()));
      table.rows().forEach(row -> row.cells().forEach(cell -> children.add(cell.child())));
    }
    return children;
  }
}
