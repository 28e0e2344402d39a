package baysheet.box;

import baysheet.report.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A box that gives way when the page is tight: it leaves, or shrinks to {@code smaller}, when its
 * group's turn comes in {@link Form#groups}.
 */
public record Droppable(String group, Box child, Optional<Box> smaller, Span at)
    implements Container {
  @Override
  public List<Box> children() {
    return Stream.concat(Stream.of(child), smaller.stream()).toList();
  }

  @Override
  public Optional<Box> without(Set<String> groups) {
    return groups.contains(group)
        ? smaller.flatMap(box -> box.without(groups))
        : child.without(groups);
  }

  @Override
  public List<String> groups() {
    return List.of(group);
  }

  @Override
  public String element() {
    return "droppable";
  }

  @Override
  public <R> R accept(BoxVisitor<R> visitor) {
    return visitor.droppable(this);
  }
}
