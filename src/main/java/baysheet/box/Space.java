package baysheet.box;

import baysheet.report.Span;
import java.util.List;

/** Empty height. */
public record Space(Length height, Span at) implements Leaf {
  @Override
  public List<Printed> printed() {
    return List.of();
  }

  @Override
  public String element() {
    return "space";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.space(this);
  }
}
