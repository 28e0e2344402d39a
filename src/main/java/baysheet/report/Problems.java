package baysheet.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects problems beside the values that a stage hands on. Not for use by several threads. */
public final class Problems {
  /** Keeps the order of arrival; a set, so that ten thousand slips are not compared pairwise. */
  private final Set<Problem> found = new LinkedHashSet<>();

  /** Adds one; a problem said twice about the same place is kept once. */
  public void add(Problem problem) {
    found.add(problem);
  }

  /** Adds all of another collection. */
  public void addAll(Problems other) {
    found.addAll(other.found);
  }

  /** Everything so far, in the order in which it was found. */
  public List<Problem> all() {
    return List.copyOf(found);
  }

  /** Whether anything so far stops the job. */
  public boolean hasErrors() {
    return found.stream().anyMatch(Problem::isError);
  }
}
