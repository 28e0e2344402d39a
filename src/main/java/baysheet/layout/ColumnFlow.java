package baysheet.layout;

import baysheet.box.Box;
import baysheet.box.Column;
import baysheet.box.Columns;
import baysheet.box.Items;
import baysheet.box.KeepWithNext;
import baysheet.box.SimpleVisitor;
import baysheet.layout.Measured.Placed;
import baysheet.layout.Measured.Tagged;
import baysheet.layout.Tag.Type;
import java.util.ArrayList;
import java.util.List;

/** Lets boxes flow through columns so that the tallest column is as short as can be. */
record ColumnFlow(Measurer measurer) {
  Measured measure(Columns columns, long width) {
    return measurer.lowest(columns.counts(), count -> measure(columns, count, width));
  }

  private Measured measure(Columns columns, int count, long width) {
    long between = measurer.length(columns.between());
    long gutters = (count - 1) * between;
    measurer.note("columns", columns.at(), gutters - width);
    long one = Math.floorDiv(Math.max(0, width - gutters), count);
    long gap = measurer.length(columns.gap());
    List<Unit> units = unitsOf(columns.children(), gap, gap, one);
    units.removeIf(unit -> unit.box().height() == 0);
    List<Chunk> chunks = chunks(units);
    long height = leastHeight(chunks, count);
    List<List<Chunk>> filled = fill(chunks, height);
    List<Placed> placed = new ArrayList<>();
    long x = 0;
    long tallest = 0;
    for (List<Chunk> column : filled) {
      Measured stack = stack(column, one);
      placed.add(new Placed(stack, x, 0));
      tallest = Math.max(tallest, stack.height());
      x += one + between;
    }
    return new Measured.Group(width, tallest, placed);
  }

  /** Lists and columns that may break are taken apart; everything else is one unit. */
  private List<Unit> units(Box box, long gap, long width) {
    return box.accept(
        new SimpleVisitor<List<Unit>>() {
          @Override
          public List<Unit> column(Column column) {
            return column.keepTogether()
                ? defaultAction(column)
                : unitsOf(column.children(), gap, measurer.length(column.gap()), width);
          }

          @Override
          public List<Unit> items(Items items) {
            return entries(items, gap, width);
          }

          @Override
          public List<Unit> held(KeepWithNext held) {
            return List.of(new Unit(measurer.measure(held, width), gap, true));
          }

          @Override
          protected List<Unit> defaultAction(Box whole) {
            return List.of(new Unit(measurer.measure(whole, width), gap, false));
          }
        });
  }

  private List<Unit> unitsOf(List<Box> boxes, long before, long between, long width) {
    List<Unit> units = new ArrayList<>();
    long gap = before;
    for (Box box : boxes) {
      units.addAll(units(box, gap, width));
      gap = between;
    }
    return units;
  }

  private List<Unit> entries(Items items, long before, long width) {
    Tag list = Tag.of(Type.L);
    List<Unit> units = new ArrayList<>();
    long gap = before;
    for (Measured entry : new ListMeasurer(measurer).entries(items, width)) {
      units.add(new Unit(new Tagged(list, entry), gap, false));
      gap = measurer.length(items.between());
    }
    return units;
  }

  private static List<Chunk> chunks(List<Unit> units) {
    List<Chunk> chunks = new ArrayList<>();
    List<Unit> open = new ArrayList<>();
    for (Unit unit : units) {
      open.add(unit);
      if (!unit.held()) {
        chunks.add(Chunk.of(open));
        open.clear();
      }
    }
    if (!open.isEmpty()) {
      chunks.add(Chunk.of(open));
    }
    return chunks;
  }

  /** The least height at which filling one column after another needs no more than there are. */
  static long leastHeight(List<Chunk> chunks, int count) {
    long tooLow = -1;
    long enough = 0;
    for (Chunk chunk : chunks) {
      tooLow = Math.max(tooLow, chunk.height() - 1);
      enough += chunk.gap() + chunk.height();
    }
    while (enough - tooLow > 1) {
      long middle = tooLow + (enough - tooLow) / 2;
      if (columns(chunks, middle) <= count) {
        enough = middle;
      } else {
        tooLow = middle;
      }
    }
    return enough;
  }

  /** How many columns {@link #fill} takes. */
  private static int columns(List<Chunk> chunks, long height) {
    int columns = 0;
    long filled = 0;
    for (Chunk chunk : chunks) {
      filled += chunk.gap() + chunk.height();
      if (columns == 0 || filled > height) {
        columns++;
        filled = chunk.height();
      }
    }
    return columns;
  }

  /** As many chunks in each column as its height holds, at least one. */
  static List<List<Chunk>> fill(List<Chunk> chunks, long height) {
    List<List<Chunk>> columns = new ArrayList<>();
    long filled = 0;
    for (Chunk chunk : chunks) {
      long more = filled + chunk.gap() + chunk.height();
      if (columns.isEmpty() || more > height) {
        columns.add(new ArrayList<>());
        more = chunk.height();
      }
      columns.get(columns.size() - 1).add(chunk);
      filled = more;
    }
    return columns;
  }

  private static Measured stack(List<Chunk> chunks, long width) {
    List<Placed> placed = new ArrayList<>();
    long y = 0;
    for (Chunk chunk : chunks) {
      for (Unit unit : chunk.units()) {
        y += placed.isEmpty() ? 0 : unit.gap();
        placed.add(new Placed(unit.box(), 0, y));
        y += unit.box().height();
      }
    }
    return new Measured.Group(width, y, placed);
  }

  /** A box that no break divides, the gap above it, and whether it stays with the one after it. */
  record Unit(Measured box, long gap, boolean held) {}

  /**
   * Units that stay together.
   *
   * @param gap above the first unit; not there at the top of a column
   * @param height from the first unit's top to the last one's bottom
   */
  record Chunk(List<Unit> units, long gap, long height) {
    static Chunk of(List<Unit> units) {
      long gap = units.get(0).gap();
      long height = -gap;
      for (Unit unit : units) {
        height += unit.gap() + unit.box().height();
      }
      return new Chunk(List.copyOf(units), gap, height);
    }
  }
}
