package baysheet.box;

import baysheet.report.Span;
import java.util.List;

/**
 * A line drawing in a square of its own, coordinates in thousandths of its width from its top left
 * corner.
 *
 * @param alternate what it shows, for a screen reader
 */
public record Drawing(Length width, Length height, List<Mark> marks, String alternate, Span at)
    implements Leaf {
  public Drawing {
    marks = List.copyOf(marks);
  }

  @Override
  public List<Printed> printed() {
    return marks.stream().flatMap(mark -> mark.printed().stream()).toList();
  }

  @Override
  public String element() {
    return "drawing";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.drawing(this);
  }
}
