package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A border and a distance around a box. */
public record Frame(Box child, Length border, Length padding, Span at) implements Container {
  @Override
  public List<Box> children() {
    return List.of(child);
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return child
        .without(groups)
        .map(kept -> kept == child ? this : new Frame(kept, border, padding, at));
  }

  @Override
  public List<String> groups() {
    return List.of();
  }

  @Override
  public String element() {
    return "frame";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.frame(this);
  }
}
