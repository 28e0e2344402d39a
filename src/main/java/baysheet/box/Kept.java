package baysheet.box;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What is left of lists when some of their parts give way. */
final class Kept {
  private Kept() {}

  /** What is left of each; the very same list if all of them stay as they are. */
  static <T> List<T> of(List<T> all, Function<T, Optional<T>> reduce) {
    List<T> kept = new ArrayList<>(all.size());
    boolean same = true;
    for (T one : all) {
      Optional<T> left = reduce.apply(one);
      if (left.isPresent()) {
        kept.add(left.get());
      }
      same &= left.isPresent() && left.get() == one;
    }
    return same ? all : kept;
  }

  /** A container all of whose parts are gone goes with them; one that was empty stays. */
  static <T> Optional<Box> container(
      Box whole, List<T> all, Function<T, Optional<T>> reduce, Function<List<T>, Box> with) {
    List<T> kept = of(all, reduce);
    if (kept == all) {
      return Optional.of(whole);
    }
    return kept.isEmpty() ? Optional.empty() : Optional.of(with.apply(kept));
  }
}
