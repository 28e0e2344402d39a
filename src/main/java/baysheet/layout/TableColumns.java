package baysheet.layout;

import baysheet.template.Box;
import java.util.ArrayList;
import java.util.List;

/** What the columns of a table need, by their cells that stand in one column alone. */
record TableColumns(List<Box.Width> widths, List<Extent> extents) {
  static TableColumns of(Box.Table table, Extents extents) {
    List<Extent> columns = new ArrayList<>();
    long padding = 2 * table.padding().at(extents.setting().body());
    table.widths().forEach(width -> columns.add(Extent.NONE.plus(padding)));
    gather(table.header(), columns, padding, extents);
    table.rows().forEach(row -> gather(row.cells(), columns, padding, extents));
    for (int i = 0; i < columns.size(); i++) {
      columns.set(i, extents.column(table.widths().get(i), columns.get(i)));
    }
    return new TableColumns(table.widths(), List.copyOf(columns));
  }

  private static void gather(
      List<Box.TableCell> cells, List<Extent> columns, long padding, Extents extents) {
    int column = 0;
    for (Box.TableCell cell : cells) {
      if (cell.span() == 1) {
        Extent content = extents.of(cell.child()).plus(padding);
        columns.set(column, columns.get(column).or(content));
      }
      column += cell.span();
    }
  }

  Extent total() {
    return extents.stream().reduce(Extent.NONE, Extent::and);
  }

  long[] divide(long room, long body) {
    return Widths.divide(widths, extents, room, body);
  }
}
