package baysheet.layout;

import baysheet.layout.Measured.Placed;
import baysheet.layout.TableMeasurer.RowOfCells;
import baysheet.template.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * Lines up the figures of a table's columns on their decimal points. A column in which that would
 * not fit stays as it is, with every line at the left.
 */
final class DecimalColumns {
  private final Span[] columns;

  private DecimalColumns(int columns) {
    this.columns = new Span[columns];
    for (int i = 0; i < columns; i++) {
      this.columns[i] = new Span(0, 0, Long.MAX_VALUE);
    }
  }

  static List<RowOfCells> lineUp(List<RowOfCells> rows, int columns) {
    DecimalColumns decimals = new DecimalColumns(columns);
    rows.forEach(decimals::gather);
    return rows.stream().map(decimals::moved).toList();
  }

  private void gather(RowOfCells row) {
    for (RowOfCells.Cell cell : row.cells()) {
      if (cell.tag().span() == 1) {
        lines(cell.content()).forEach(l -> widen(cell, l));
      }
    }
  }

  private void widen(RowOfCells.Cell cell, Lines lines) {
    for (Lines.SetLine line : lines.lines()) {
      if (line.point() >= 0) {
        Span old = columns[cell.column()];
        columns[cell.column()] =
            new Span(
                Math.max(old.before(), line.point()),
                Math.max(old.after(), line.width() - line.point()),
                Math.min(old.room(), cell.room()));
      }
    }
  }

  private RowOfCells moved(RowOfCells row) {
    List<RowOfCells.Cell> cells = new ArrayList<>();
    for (RowOfCells.Cell cell : row.cells()) {
      Span span = columns[cell.column()];
      boolean moves = cell.tag().span() == 1 && span.fits();
      cells.add(moves ? cell.with(moved(cell.content(), span.before())) : cell);
    }
    return new RowOfCells(cells);
  }

  private static List<Lines> lines(Measured box) {
    if (box instanceof Lines lines) {
      return lines.align() == Box.Align.DECIMAL ? List.of(lines) : List.of();
    } else if (box instanceof Measured.Group group) {
      return group.children().stream().flatMap(child -> lines(child.box()).stream()).toList();
    }
    return List.of();
  }

  private static Measured moved(Measured box, long point) {
    if (box instanceof Lines lines) {
      return lines.align() == Box.Align.DECIMAL ? lines.withPointAt(point) : lines;
    } else if (box instanceof Measured.Group group) {
      List<Placed> children =
          group.children().stream()
              .map(c -> new Placed(moved(c.box(), point), c.x(), c.y()))
              .toList();
      return new Measured.Group(group.width(), group.height(), children);
    }
    return box;
  }

  /** The widest figure before and after the point, and the narrowest room. */
  private record Span(long before, long after, long room) {
    boolean fits() {
      return before + after > 0 && before + after <= room;
    }
  }
}
