package baysheet.layout;

import baysheet.box.TextStyle;
import baysheet.layout.Measured.Placed;
import baysheet.layout.TableMeasurer.RowOfCells;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Lines up the figures of a table's columns on their decimal points. A column in which that would
 * not fit stays as it is, with every line at the left.
 */
final class DecimalColumns {
  private final DecimalColumn[] figures;
  private final long[] rooms;

  private DecimalColumns(int columns) {
    figures = new DecimalColumn[columns];
    rooms = new long[columns];
    Arrays.fill(figures, DecimalColumn.NONE);
    Arrays.fill(rooms, Long.MAX_VALUE);
  }

  static List<RowOfCells> lineUp(List<RowOfCells> rows, int columns) {
    DecimalColumns decimals = new DecimalColumns(columns);
    rows.forEach(decimals::gather);
    List<RowOfCells> moved = new ArrayList<>(rows.size());
    for (RowOfCells row : rows) {
      moved.add(decimals.moved(row));
    }
    return moved;
  }

  private void gather(RowOfCells row) {
    for (RowOfCells.Cell cell : row.cells()) {
      if (cell.tag().span() == 1) {
        gather(cell.content(), cell.column(), cell.room());
      }
    }
  }

  private void gather(Measured box, int column, long room) {
    if (box instanceof ParagraphLines lines && stands(lines, room)) {
      figures[column] = figures[column].and(lines.figures());
      rooms[column] = Math.min(rooms[column], room);
    } else if (box instanceof Measured.Group group) {
      for (Placed child : group.children()) {
        gather(child.box(), column, room);
      }
    }
  }

  private RowOfCells moved(RowOfCells row) {
    List<RowOfCells.Cell> cells = new ArrayList<>();
    for (RowOfCells.Cell cell : row.cells()) {
      DecimalColumn column = figures[cell.column()];
      boolean moves = cell.tag().span() == 1 && column.width() <= rooms[cell.column()];
      cells.add(moves ? cell.with(moved(cell.content(), cell.room(), column.before())) : cell);
    }
    return new RowOfCells(cells);
  }

  private static Measured moved(Measured box, long room, long point) {
    if (box instanceof ParagraphLines lines) {
      return stands(lines, room) ? lines.withPointAt(point) : lines;
    } else if (box instanceof Measured.Group group) {
      List<Placed> children = new ArrayList<>(group.children().size());
      for (Placed child : group.children()) {
        children.add(new Placed(moved(child.box(), room, point), child.x(), child.y()));
      }
      return new Measured.Group(group.width(), group.height(), children);
    }
    return box;
  }

  /** Only what has the cell's whole width stands in the column; a box in a row has its own. */
  private static boolean stands(ParagraphLines lines, long room) {
    return lines.align() == TextStyle.Align.DECIMAL && lines.width() == room;
  }
}
