package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Boxes under one another.
 *
 * @param keepTogether whether a break between columns may not fall inside
 */
public record Column(List<Box> children, Length gap, boolean keepTogether, Span at)
    implements Container {
  public Column {
    children = List.copyOf(children);
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return Kept.container(
        this,
        children,
        child -> child.without(groups),
        kept -> new Column(kept, gap, keepTogether, at));
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "column";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.column(this);
  }
}
