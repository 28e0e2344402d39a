package baysheet.day;

import java.util.ArrayList;
import java.util.List;

/** All orders of the first few whole numbers. */
final class Permutations {
  private Permutations() {}

  static List<List<Integer>> of(int count) {
    List<List<Integer>> all = new ArrayList<>();
    all.add(List.of());
    for (int number = 0; number < count; number++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> shorter : all) {
        for (int place = 0; place <= shorter.size(); place++) {
          List<Integer> order = new ArrayList<>(shorter);
          order.add(place, number);
          longer.add(order);
        }
      }
      all = longer;
    }
    return all;
  }
}
