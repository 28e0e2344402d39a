package baysheet.yaml;

import baysheet.report.Span;
import java.util.List;

/** A list, in the order in which it was written. */
public record Sequence(List<Node> items, Span at) implements Node {
  public Sequence {
    items = List.copyOf(items);
  }

  @Override
  public String shape() {
    return "a list";
  }
}
