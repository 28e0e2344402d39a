package baysheet.report;

import java.util.Comparator;
import java.util.List;

/** The order in which problems are printed: by file and place, and at one place as found. */
final class InOrder {
  private InOrder() {}

  static List<Problem> of(List<Problem> problems) {
    return problems.stream().sorted(Comparator.comparing(Problem::at)).toList();
  }
}
