package baysheet.layout;

import baysheet.box.Table;
import baysheet.box.Width;
import java.util.ArrayList;
import java.util.List;

/**
 * What the columns of a table need: by their cells that stand in one column alone, and by the least
 * of those that stand across several.
 */
record TableColumns(List<Width> widths, List<Extent> extents, long gaps) {
  static TableColumns of(Table table, Extents extents) {
    List<Extent> contents = new ArrayList<>();
    List<DecimalColumn> figures = new ArrayList<>();
    table.widths().forEach(width -> contents.add(Extent.NONE));
    table.widths().forEach(width -> figures.add(DecimalColumn.NONE));
    gather(table.header(), contents, figures, extents);
    table.rows().forEach(row -> gather(row.cells(), contents, figures, extents));
    long padding = 2 * table.padding().at(extents.setting().body());
    List<Extent> columns = new ArrayList<>();
    for (int i = 0; i < contents.size(); i++) {
      Extent linedUp = new Extent(contents.get(i).least(), figures.get(i).width());
      Extent padded = contents.get(i).or(linedUp).plus(padding);
      columns.add(extents.column(table.widths().get(i), padded));
    }
    long between = table.between().at(extents.setting().body());
    Spans spans = new Spans(table.widths(), columns, between, padding);
    spans.widen(table.header(), extents);
    table.rows().forEach(row -> spans.widen(row.cells(), extents));
    long gaps = Math.max(0, columns.size() - 1) * between;
    return new TableColumns(table.widths(), List.copyOf(columns), gaps);
  }

  private static void gather(
      List<Table.Cell> cells, List<Extent> contents, List<DecimalColumn> figures, Extents extents) {
    int column = 0;
    for (Table.Cell cell : cells) {
      if (cell.span() == 1) {
        contents.set(column, contents.get(column).or(extents.of(cell.child())));
        figures.set(column, figures.get(column).and(extents.figures(cell.child())));
      }
      column += cell.span();
    }
  }

  /**
   * Makes room for cells across several columns, whose own cells may all be empty. Only the least
   * counts: a sentence across the table breaks and must not push its columns apart.
   */
  private record Spans(List<Width> widths, List<Extent> columns, long between, long padding) {
    void widen(List<Table.Cell> cells, Extents extents) {
      int first = 0;
      for (Table.Cell cell : cells) {
        if (cell.span() > 1) {
          widen(first, cell.span(), extents.of(cell.child()).least() + padding);
        }
        first += cell.span();
      }
    }

    private void widen(int first, int span, long least) {
      long there = (span - 1) * between;
      int wider = -1;
      for (int i = first; i < first + span; i++) {
        there += columns.get(i).least();
        boolean gives = wider < 0 || !(widths.get(wider) instanceof Width.Share);
        wider = gives && !(widths.get(i) instanceof Width.Fixed) ? i : wider;
      }
      if (wider >= 0 && least > there) {
        long needed = columns.get(wider).least() + least - there;
        columns.set(wider, columns.get(wider).or(new Extent(needed, needed)));
      }
    }
  }

  Extent total() {
    return extents.stream().reduce(Extent.NONE, Extent::and).plus(gaps);
  }

  long[] divide(long room, long body) {
    return Widths.divide(widths, extents, Math.max(0, room - gaps), body);
  }
}
