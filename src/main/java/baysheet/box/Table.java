package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A table with one header row, ruled between rows.
 *
 * @param widths one for each column
 * @param header the header cells
 * @param rows body rows; a row may have fewer cells than columns when cells span
 * @param padding around the content of every cell
 * @param between further distance between two columns
 * @param title what the table is, for a screen reader
 */
public record Table(
    List<Width> widths,
    List<Cell> header,
    List<Line> rows,
    Length padding,
    Length between,
    String title,
    Span at)
    implements Container {
  public Table {
    widths = List.copyOf(widths);
    header = List.copyOf(header);
    rows = List.copyOf(rows);
  }

  @Override
  public List<Box> children() {
    return Stream.concat(header.stream(), rows.stream().flatMap(row -> row.cells().stream()))
        .map(Cell::child)
        .toList();
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return Optional.of(new TableReduction(this, groups).table());
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "table";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.table(this);
  }

  /** A cell of a table; {@code rowHeader} marks the cell that names its row. */
  public record Cell(Box child, int span, Vertical vertical, boolean rowHeader) {
    public Cell {
      if (span < 1) {
        throw new IllegalArgumentException("span " + span);
      }
    }
  }

  /** A row of a table; {@code heavyRuleAbove} starts a new block of rows. */
  public record Line(List<Cell> cells, boolean heavyRuleAbove) {
    public Line {
      cells = List.copyOf(cells);
    }
  }
}
