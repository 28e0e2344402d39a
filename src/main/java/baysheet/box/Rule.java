package baysheet.box;

import baysheet.report.Span;
import java.util.List;

/** A line across the width it is given; decoration. */
public record Rule(Length thickness, Span at) implements Leaf {
  @Override
  public List<Printed> printed() {
    return List.of();
  }

  @Override
  public String element() {
    return "rule";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.rule(this);
  }
}
