package baysheet.layout;

import baysheet.template.Box;
import baysheet.template.Width;
import java.util.ArrayList;
import java.util.List;

/** What the columns of a table need, by their cells that stand in one column alone. */
record TableColumns(List<Width> widths, List<Extent> extents, long gaps) {
  static TableColumns of(Box.Table table, Extents extents) {
    List<Extent> contents = new ArrayList<>();
    List<Figures> figures = new ArrayList<>();
    table.widths().forEach(width -> contents.add(Extent.NONE));
    table.widths().forEach(width -> figures.add(Figures.NONE));
    gather(table.header(), contents, figures, extents);
    table.rows().forEach(row -> gather(row.cells(), contents, figures, extents));
    long padding = 2 * table.padding().at(extents.setting().body());
    List<Extent> columns = new ArrayList<>();
    for (int i = 0; i < contents.size(); i++) {
      Extent linedUp = new Extent(contents.get(i).least(), figures.get(i).width());
      Extent padded = contents.get(i).or(linedUp).plus(padding);
      columns.add(extents.column(table.widths().get(i), padded));
    }
    long gaps = Math.max(0, columns.size() - 1) * table.between().at(extents.setting().body());
    return new TableColumns(table.widths(), List.copyOf(columns), gaps);
  }

  private static void gather(
      List<Box.TableCell> cells, List<Extent> contents, List<Figures> figures, Extents extents) {
    int column = 0;
    for (Box.TableCell cell : cells) {
      if (cell.span() == 1) {
        contents.set(column, contents.get(column).or(extents.of(cell.child())));
        figures.set(column, figures.get(column).and(extents.figures(cell.child())));
      }
      column += cell.span();
    }
  }

  Extent total() {
    return extents.stream().reduce(Extent.NONE, Extent::and).plus(gaps);
  }

  long[] divide(long room, long body) {
    return Widths.divide(widths, extents, Math.max(0, room - gaps), body);
  }
}
