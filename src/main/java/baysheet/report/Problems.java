package baysheet.report;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects problems beside the values that a stage hands on. Not for use by several threads. */
public final class Problems {
  /** Ten times what is printed of one file; a file can hold a hundred thousand slips. */
  static final int MOST_PER_FILE = 200;

  /** Keeps the order of arrival; a set, so that ten thousand slips are not compared pairwise. */
  private final Set<Problem> found = new LinkedHashSet<>();

  /** How many there are of each file, by its name. */
  private final Map<String, Integer> perFile = new HashMap<>();

  /** Adds one; a problem said twice about the same place is kept once. */
  public void add(Problem problem) {
    if (found.contains(problem)) {
      return;
    }
    int count = perFile.merge(problem.at().source().name(), 1, Integer::sum);
    found.add(count <= MOST_PER_FILE ? problem : andMore(problem));
  }

  /** Stands for all further ones, with the weight of those. */
  private static Problem andMore(Problem problem) {
    String what = "this file has more problems than the first " + MOST_PER_FILE;
    Span file = problem.at().source().whole();
    return Problem.of(
        problem.isError() ? ProblemCode.MORE_PROBLEMS : ProblemCode.MORE_WARNINGS, file, what);
  }

  /** Adds all of another collection. */
  public void addAll(Problems other) {
    other.found.forEach(this::add);
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
