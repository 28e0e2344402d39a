package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Boxes that flow down one column and go on at the top of the next; the breaks are chosen so that
 * the tallest column is as short as can be. A child is never broken; one that {@link KeepWithNext}
 * keeps with its follower is never last in a column.
 *
 * @param counts how many columns there may be; the number is taken that needs the least height
 */
public record Columns(List<Integer> counts, List<Box> children, Length gap, Length between, Span at)
    implements Container {
  public Columns {
    counts = List.copyOf(counts);
    children = List.copyOf(children);
    if (counts.isEmpty() || counts.stream().anyMatch(count -> count < 1)) {
      throw new IllegalArgumentException("columns: " + counts);
    }
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return Kept.container(
        this,
        children,
        child -> child.without(groups),
        kept -> new Columns(counts, kept, gap, between, at));
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
