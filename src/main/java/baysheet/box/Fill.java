package baysheet.box;

import baysheet.report.Span;
import java.util.List;

/**
 * What height the page has left, among the outermost column's children: boxes after it stand at the
 * foot of the page. Elsewhere it has no height.
 */
public record Fill(Span at) implements Leaf {
  @Override
  public List<Printed> printed() {
    return List.of();
  }

  @Override
  public String element() {
    return "fill";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.fill(this);
  }
}
