package baysheet.layout;

import baysheet.box.Table;
import baysheet.box.Vertical;
import baysheet.layout.Measured.Placed;
import baysheet.layout.Measured.Tagged;
import baysheet.layout.Tag.Type;
import java.util.ArrayList;
import java.util.List;

/** Measures a table: a header row, body rows, a rule between each two and around all. */
final class TableMeasurer {
  private static final long THIN_RULE = 400;
  private static final long HEAVY_RULE = 1200;

  private final Measurer measurer;
  private final Table table;
  private final long width;
  private final long padding;
  private final long between;
  private final long[] widths;

  TableMeasurer(Measurer measurer, Table table, long width) {
    this.measurer = measurer;
    this.table = table;
    this.width = width;
    padding = measurer.length(table.padding());
    between = measurer.length(table.between());
    widths = TableColumns.of(table, measurer.extents()).divide(width, measurer.setting().body());
  }

  Measured measure() {
    measurer.note("table", table.at(), across() - width);
    List<RowOfCells> rows = new ArrayList<>();
    if (!table.header().isEmpty()) {
      rows.add(cells(table.header(), true));
    }
    table.rows().forEach(row -> rows.add(cells(row.cells(), false)));
    List<RowOfCells> lined = DecimalColumns.lineUp(rows, widths.length);
    Measured body = ruled(lined);
    return new Tagged(new Tag(Type.TABLE, "", table.title(), 1), body);
  }

  private RowOfCells cells(List<Table.Cell> cells, boolean header) {
    List<RowOfCells.Cell> measured = new ArrayList<>();
    int column = 0;
    for (Table.Cell cell : cells) {
      long room = Math.max(0, spanned(column, cell.span()) - 2 * padding);
      Measured content = measurer.measure(cell.child(), room);
      Tag tag = Tag.cell(type(cell, header), cell.span());
      measured.add(new RowOfCells.Cell(column, tag, cell.vertical(), content, room));
      column += cell.span();
    }
    // A reader that walks the table by columns needs a cell in each of them.
    if (column < widths.length) {
      Tag tag = Tag.cell(header ? Type.TH_COLUMN : Type.TD, widths.length - column);
      measured.add(new RowOfCells.Cell(column, tag, Vertical.TOP, Measured.nothing(0), 0));
    }
    return new RowOfCells(measured);
  }

  private static Type type(Table.Cell cell, boolean header) {
    if (header) {
      return Type.TH_COLUMN;
    }
    return cell.rowHeader() ? Type.TH_ROW : Type.TD;
  }

  private long spanned(int column, int span) {
    long sum = 0;
    for (int i = column; i < column + span; i++) {
      sum += widths[i];
    }
    return sum + Math.max(0, span - 1) * between;
  }

  /** From the left edge of the first column to the right edge of the last. */
  private long across() {
    return spanned(0, widths.length);
  }

  private Measured ruled(List<RowOfCells> rows) {
    boolean headed = !table.header().isEmpty();
    Tag head = Tag.of(Type.THEAD);
    Tag body = Tag.of(Type.TBODY);
    List<Placed> placed = new ArrayList<>();
    long y = 0;
    for (int i = 0; i < rows.size(); i++) {
      int bodyRow = headed ? i - 1 : i;
      y = addRule(placed, y, isHeavy(i, bodyRow));
      Measured row = row(rows.get(i));
      Tag part = bodyRow < 0 ? head : body;
      placed.add(new Placed(new Tagged(part, new Tagged(Tag.of(Type.TR), row)), 0, y));
      y += row.height();
    }
    y = addRule(placed, y, true);
    return new Measured.Group(width, y, placed);
  }

  private long left(int column) {
    return column == 0 ? 0 : spanned(0, column) + between;
  }

  /** The table's own edges, the line under the header, and where the layout asks for one. */
  private boolean isHeavy(int row, int bodyRow) {
    return row == 0 || bodyRow == 0 || table.rows().get(bodyRow).heavyRuleAbove();
  }

  private long addRule(List<Placed> placed, long y, boolean heavy) {
    Measured rule = new Measured.Ruled(across(), heavy ? HEAVY_RULE : THIN_RULE);
    placed.add(new Placed(rule, 0, y));
    return y + rule.height();
  }

  private Measured row(RowOfCells row) {
    List<Measured> boxes = new ArrayList<>();
    List<Vertical> verticals = new ArrayList<>();
    long[] xs = new long[row.cells().size()];
    for (int i = 0; i < xs.length; i++) {
      RowOfCells.Cell cell = row.cells().get(i);
      boxes.add(new Tagged(cell.tag(), cell.content()));
      verticals.add(cell.vertical());
      xs[i] = left(cell.column()) + padding;
    }
    Measured beside = RowMeasurer.beside(boxes, verticals, xs, width);
    return new Measured.Group(
        width, beside.height() + 2 * padding, List.of(new Placed(beside, 0, padding)));
  }

  /** A measured row before its height is known. */
  record RowOfCells(List<Cell> cells) {
    RowOfCells {
      cells = List.copyOf(cells);
    }

    /** A measured cell, the column it starts in, and the room its content has. */
    record Cell(int column, Tag tag, Vertical vertical, Measured content, long room) {
      Cell with(Measured content) {
        return new Cell(column, tag, vertical, content, room);
      }
    }
  }
}
