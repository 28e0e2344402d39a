package baysheet.box;

import baysheet.report.Span;
import java.util.List;

/**
 * Black and white modules for a machine to find: the code of a sheet or a square near a corner. It
 * never scales with the text and no screen reader reads it.
 *
 * @param kind what it is: code or square
 * @param text what it says; nothing for a square
 * @param size of an edge, in thousandths of a point
 * @param quiet what must stay white around it, in thousandths of a point
 * @param rows from the top, one letter a module, {@code #} for black
 */
public record Stamp(Kind kind, String text, long size, long quiet, List<String> rows, Span at)
    implements Leaf {
  /** What a machine looks for. */
  public enum Kind {
    CODE,
    SQUARE
  }

  public Stamp {
    rows = List.copyOf(rows);
    for (String row : rows) {
      if (row.length() != rows.size()) {
        throw new IllegalArgumentException(rows.size() + " rows of " + row.length());
      }
    }
  }

  @Override
  public List<Printed> printed() {
    return List.of();
  }

  @Override
  public String element() {
    return kind == Kind.CODE ? "code" : "square";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.stamp(this);
  }
}
