package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Objects;

/** Empty height. */
public record Space(Length height, Span at) implements Leaf {
  public Space {
    Objects.requireNonNull(height);
    Objects.requireNonNull(at);
  }

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
