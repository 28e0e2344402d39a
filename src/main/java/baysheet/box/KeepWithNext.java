package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A box that stays with the one after it: a heading, a caution above its step. */
public record KeepWithNext(Box child, Span at) implements Container {
  @Override
  public List<Box> children() {
    return List.of(child);
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return child.without(groups).map(kept -> kept == child ? this : new KeepWithNext(kept, at));
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "held";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.held(this);
  }
}
