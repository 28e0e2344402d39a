package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Boxes that flow down one column and go on at the top of the next; the breaks are chosen so that
 * the tallest column is as short as can be. A child is never broken; one that {@link KeepWithNext}
 * keeps with its follower is never last in a column.
 */
public record Columns(int count, List<Box> children, Length gap, Length between, Span at)
    implements Container {
  public Columns {
    children = List.copyOf(children);
    Objects.requireNonNull(gap);
    Objects.requireNonNull(between);
    Objects.requireNonNull(at);
    if (count < 1) {
      throw new IllegalArgumentException("columns: " + count);
    }
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return Kept.container(
        this,
        children,
        child -> child.without(groups),
        kept -> new Columns(count, kept, gap, between, at));
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "columns";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.columns(this);
  }
}
