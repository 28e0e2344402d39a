package baysheet.report;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects problems beside the values that a stage hands on. Not for use by several threads. */
public final class Problems {
  /** Ten times what is printed of one file; a file can hold a hundred thousand slips. */
  static final int MOST_PER_FILE = 200;

  /** In the order of arrival; a map, so that ten thousand problems are not compared pairwise. */
  private final Map<Cause, Problem> found = new LinkedHashMap<>();

  /** How many there are of each file, by its name. */
  private final Map<String, Integer> perFile = new HashMap<>();

  private boolean stopped;

  /** What makes two problems the same, whichever job or step met them. */
  private record Cause(ProblemCode code, Span at, String what) {
    static Cause of(Problem problem) {
      return new Cause(problem.code(), problem.at(), problem.what());
    }
  }

  /** Adds one; of several that say the same about one place the first is kept. */
  public void add(Problem problem) {
    if (found.containsKey(Cause.of(problem))) {
      return;
    }
    int count = perFile.merge(problem.at().source().name(), 1, Integer::sum);
    Problem kept = count <= MOST_PER_FILE ? problem : andMore(problem);
    found.putIfAbsent(Cause.of(kept), kept);
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
    other.found.values().forEach(this::add);
    stopped |= other.stopped;
  }

  /**
   * Adds those of another collection that are at places of which nothing is reported yet: a value
   * with a problem causes others further on.
   */
  public void addElsewhere(Problems other) {
    Set<Span> places = new HashSet<>();
    found.values().forEach(problem -> places.add(start(problem)));
    other.all().stream().filter(it -> !places.contains(start(it))).forEach(this::add);
    stopped |= other.stopped;
  }

  private static Span start(Problem problem) {
    return problem.at().source().at(problem.at().line(), problem.at().column());
  }

  /** Stops the job because of an error in another file, which is reported where it is. */
  public void stop() {
    stopped = true;
  }

  /** Everything so far, in the order in which it was found. */
  public List<Problem> all() {
    return List.copyOf(found.values());
  }

  /** Whether anything so far stops the job. */
  public boolean hasErrors() {
    return stopped || found.values().stream().anyMatch(Problem::isError);
  }
}
