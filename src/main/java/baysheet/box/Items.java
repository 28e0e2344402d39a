package baysheet.box;

import baysheet.report.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A list; each item has a label (a number, a tick box) and a body.
 *
 * @param under whether the body's first paragraph goes on under the label instead of beside it
 */
public record Items(
    List<Entry> entries, Width label, Length gap, Length between, boolean under, Span at)
    implements Container {
  public Items {
    entries = List.copyOf(entries);
  }

  @Override
  public List<Box> children() {
    List<Box> children = new ArrayList<>(2 * entries.size());
    for (Entry entry : entries) {
      children.add(entry.label());
      children.add(entry.body());
    }
    return children;
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return Kept.container(
        this,
        entries,
        entry -> entry.without(groups),
        kept -> new Items(kept, label, gap, between, under, at));
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "items";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.items(this);
  }

  /** An entry of a list. */
  public record Entry(Box label, Box body) {
    /** An entry whose body is gone is gone; one whose label is gone keeps its place. */
    private Optional<Entry> without(Set<String> groups) {
      Box sign = label.without(groups).orElse(new Space(Length.ZERO, label.at()));
      return body.without(groups)
          .map(kept -> sign == label && kept == body ? this : new Entry(sign, kept));
    }
  }
}
