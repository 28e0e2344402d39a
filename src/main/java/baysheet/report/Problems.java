package baysheet.report;

import java.util.ArrayList;
import java.util.List;

/** Collects problems beside the values that a stage hands on. Not for use by several threads. */
public final class Problems {
  private final List<Problem> list = new ArrayList<>();

  /** Adds one; a problem said twice about the same place is kept once. */
  public void add(Problem problem) {
    if (!list.contains(problem)) {
      list.add(problem);
    }
  }

  /** Adds all of another collection. */
  public void addAll(Problems other) {
    other.list.forEach(this::add);
  }

  /** Everything so far, in the order in which it was found. */
  public List<Problem> all() {
    return List.copyOf(list);
  }

  /** Whether anything so far stops the job. */
  public boolean hasErrors() {
    return list.stream().anyMatch(Problem::isError);
  }
}
