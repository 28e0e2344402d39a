package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Boxes beside one another, on a common top edge unless a cell says otherwise. */
public record Row(List<Cell> cells, Length gap, Span at) implements Container {
  public Row {
    cells = List.copyOf(cells);
  }

  @Override
  public List<Box> children() {
    return cells.stream().map(Cell::child).toList();
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return Kept.container(
        this, cells, cell -> cell.without(groups), kept -> new Row(kept, gap, at));
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "row";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.row(this);
  }

  /** A cell of a row: its width, its box, and where it stands in the row's height. */
  public record Cell(Width width, Box child, Vertical vertical) {
    private Optional<Cell> without(Set<String> groups) {
      return child
          .without(groups)
          .map(kept -> kept == child ? this : new Cell(width, kept, vertical));
    }
  }
}
