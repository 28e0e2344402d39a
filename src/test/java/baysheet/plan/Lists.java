package baysheet.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Lists with one thing gone or other than it was; the very same thing, not its equals. */
public final class Lists {
  private Lists() {}

  public static <T> List<T> without(List<T> list, int index) {
    List<T> less = new ArrayList<>(list);
    less.remove(index);
    return less;
  }

  public static <T> List<T> less(List<T> list, T gone) {
    return list.stream().filter(one -> one != gone).toList();
  }

  public static <T> List<T> replaced(List<T> list, T one, UnaryOperator<T> by) {
    return list.stream().map(other -> other == one ? by.apply(other) : other).toList();
  }
}
