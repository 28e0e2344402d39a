package baysheet.box;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A box that holds nothing else and never gives way by itself. */
public sealed interface Leaf extends Box permits Rule, Field, Drawing, Stamp, Space, Fill {
  @Override
  default List<Box> children() {
    return List.of();
  }

  @Override
  default Optional<Box> without(Set<String> groups) {
    return Optional.of(this);
  }

  @Override
  default List<String> groups() {
    return List.of();
  }
}
