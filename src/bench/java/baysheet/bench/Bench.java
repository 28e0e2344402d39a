package baysheet.bench;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.openjdk.jmh.runner.RunnerException;

/** Measures what is named on the command line, or everything, and prints one table for each. */
public final class Bench {
  private static final Set<String> ALL =
      new LinkedHashSet<>(List.of("stages", "large", "peers", "batch", "cold"));

  private Bench() {}

  /**
   * Measures.
   *
   * @param arguments any of stages, large, peers, batch, cold; all where there are none
   */
  public static void main(String[] arguments)
      throws RunnerException, IOException, InterruptedException {
    Set<String> wanted = arguments.length == 0 ? ALL : new LinkedHashSet<>(List.of(arguments));
    if (!ALL.containsAll(wanted)) {
      throw new IllegalArgumentException("known are " + ALL + ", not " + wanted);
    }
    for (String part : wanted) {
      measure(part);
    }
  }

  private static void measure(String part)
      throws RunnerException, IOException, InterruptedException {
    switch (part) {
      case "stages" -> Warm.print("A sheet, stage by stage", StageBench.class);
      case "large" -> Warm.print("The books, and planning 12 works with 200 steps", LargeJobBench.class);
      case "peers" -> Warm.printRatios("One page, by other ways", PeerBench.class, "floor");
      case "batch" -> BatchRuns.print();
      default -> ColdRuns.print();
    }
  }
}
