package baysheet.bench;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Measures what is named on the command line, or everything, and prints one table for each. */
public final class Bench {
  private static final Set<String> ALL =
      new LinkedHashSet<>(List.of("floor", "stages", "large", "peers", "batch", "cold", "beside"));

  private Bench() {}

  /**
   * Measures.
   *
   * @param arguments any of floor, stages, large, peers, batch, cold, beside; all where there are none
   */
  public static void main(String[] arguments) throws Exception {
    Set<String> wanted = arguments.length == 0 ? ALL : new LinkedHashSet<>(List.of(arguments));
    if (!ALL.containsAll(wanted)) {
      throw new IllegalArgumentException("known are " + ALL + ", not " + wanted);
    }
    for (String part : wanted) {
      measure(part);
    }
  }

  private static void measure(String part) throws Exception {
    switch (part) {
      case "floor" -> FloorRuns.print();
      case "stages" -> Warm.print("A sheet, stage by stage", StageBench.class);
      case "large" ->
          Warm.print("The books, and planning 12 works with 200 steps", LargeJobBench.class);
      case "peers" -> Warm.printRatios("One page, by other ways", PeerBench.class, "floor");
      case "batch" -> BatchRuns.print();
      case "beside" -> BesideRuns.print();
      default -> ColdRuns.print();
    }
  }
}
