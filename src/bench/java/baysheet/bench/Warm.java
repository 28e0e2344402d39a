package baysheet.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs a benchmark class in a process of its own, on one thread, and prints medians. */
final class Warm {
  /**
   * Twice as many seconds: the compiler is done with the longest chain after some forty on a slow
   * machine with two cores.
   */
  private static final int WARM_UPS = 20;

  private static final int ROUNDS = 5;

  private Warm() {}

  static void print(String title, Class<?> measured) throws RunnerException {
    Table table = new Table(title, "what", "job", "median ms", "90 % under ms");
    for (RunResult run : run(measured)) {
      table.row(name(run), job(run), millis(at(run, 50)), millis(at(run, 90)));
    }
    table.print();
  }

  /** The same, with each as a multiple of one of them. */
  static void printRatios(String title, Class<?> measured, String base) throws RunnerException {
    Collection<RunResult> runs = run(measured);
    double one =
        runs.stream().filter(run -> name(run).equals(base)).mapToDouble(run -> at(run, 50)).sum();
    Table table = new Table(title, "what", "median ms", "times the " + base);
    for (RunResult run : runs) {
      double median = at(run, 50);
      table.row(name(run), millis(median), String.format(Locale.ROOT, "%.1f", median / one));
    }
    table.print();
  }

  private static Collection<RunResult> run(Class<?> measured) throws RunnerException {
    Options options =
        new OptionsBuilder()
            .include("^" + measured.getName().replace(".", "\\.") + "\\.")
            .mode(Mode.SampleTime)
            .timeUnit(TimeUnit.MILLISECONDS)
            .forks(1)
            .threads(1)
            .warmupIterations(WARM_UPS)
            .warmupTime(TimeValue.seconds(2))
            .measurementIterations(ROUNDS)
            .measurementTime(TimeValue.seconds(1))
            .verbosity(VerboseMode.SILENT)
            .build();
    return new Runner(options).run();
  }

  private static double at(RunResult run, double percent) {
    Result<?> result = run.getPrimaryResult();
    return result.getStatistics().getPercentile(percent);
  }

  private static String name(RunResult run) {
    return run.getPrimaryResult().getLabel();
  }

  private static String job(RunResult run) {
    String demo = run.getParams().getParam("demo");
    return demo == null ? "" : demo.toLowerCase(Locale.ROOT);
  }

  private static String millis(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
