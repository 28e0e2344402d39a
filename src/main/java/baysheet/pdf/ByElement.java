package baysheet.pdf;

import java.util.ArrayList;
import java.util.List;

/** Lists of what belongs to the elements of a page, by the elements' numbers. */
final class ByElement<T> {
  private final List<List<T>> lists = new ArrayList<>(512);

  void add(int element, T one) {
    while (lists.size() <= element) {
      lists.add(List.of());
    }
    if (lists.get(element).isEmpty()) {
      lists.set(element, new ArrayList<>(2));
    }
    lists.get(element).add(one);
  }

  /** In the order in which they came. */
  List<T> of(int element) {
    return element < lists.size() ? lists.get(element) : List.of();
  }
}
