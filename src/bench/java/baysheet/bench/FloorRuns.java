package baysheet.bench;

import baysheet.box.Form;
import baysheet.cli.Workshop;
import baysheet.layout.PageFit;
import baysheet.sheet.Sheet;
import baysheet.resolve.Resolved;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

/**
 * The demo job of one page, and the floor, in turns in one process: each turn gives the ratio of every
 * stage and of the whole chain to the floor of the same turn. Neighbours on the machine and changes
 * of its clock touch both, so the ratio stays where the times do not. Times are those that the
 * thread computed, without the waiting; the compiler and the garbage collection, which have threads
 * of their own, are not in them.
 */
final class FloorRuns {
  /** Computing time again: a machine with neighbours takes longer, and measures as much. */
  private static final long WARM_UP = 40_000_000_000L;

  private static final long MEASURED = 30_000_000_000L;

  /** A floor is short: several give a steadier figure. */
  private static final int FLOORS = 4;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private final Map<String, Callable<?>> parts = new LinkedHashMap<>();
  private final Map<String, List<Double>> millis = new LinkedHashMap<>();
  private final Map<String, List<Double>> ratios = new LinkedHashMap<>();

  /** What was made last, so that no work is left out because nobody looks at its result. */
  private Object made;

  private FloorRuns() throws IOException {
    Path job = Demo.ONE_PAGE.job();
    Workshop workshop = new Workshop(Demo.SHOP);
    Resolved resolved = workshop.resolve(job);
    Sheet sheet = workshop.plan(resolved);
    Form form = workshop.fill(sheet);
    PageFit.Fitted fitted = workshop.fit(form);
    byte[] record = workshop.record(sheet, fitted);
    DrawnPage drawn = DrawnPage.of(fitted.page());
    Floor floor = new Floor(drawn);
    parts.put("floor", () -> floor.write(drawn));
    parts.put("sheet", () -> workshop.sheets(job));
    parts.put("resolve", () -> workshop.resolve(job));
    parts.put("plan", () -> workshop.plan(resolved));
    parts.put("fill", () -> workshop.fill(sheet));
    parts.put("fit", () -> workshop.fit(form));
    parts.put("record", () -> workshop.record(sheet, fitted));
    parts.put("draw", () -> workshop.draw(sheet, fitted, record));
  }

  static void print() throws Exception {
    FloorRuns runs = new FloorRuns();
    runs.turns(WARM_UP);
    runs.millis.clear();
    runs.ratios.clear();
    runs.turns(MEASURED);
    Table table =
        new Table(
            "The long job against the floor, " + runs.millis.get("floor").size() + " turns",
            "what", "median ms", "times the floor", "middle half");
    for (String part : runs.parts.keySet()) {
      List<Double> ratio = runs.ratios.get(part).stream().sorted().toList();
      table.row(
          part,
          two(at(runs.millis.get(part).stream().sorted().toList(), 50)),
          two(at(ratio, 50)),
          two(at(ratio, 25)) + " to " + two(at(ratio, 75)));
    }
    table.print();
  }

  private void turns(long nanoseconds) throws Exception {
    long start = THREADS.getCurrentThreadCpuTime();
    while (THREADS.getCurrentThreadCpuTime() - start < nanoseconds) {
      double floor = 0;
      for (Map.Entry<String, Callable<?>> part : parts.entrySet()) {
        boolean base = part.getKey().equals("floor");
        double taken = millis(part.getValue(), base ? FLOORS : 1);
        floor = base ? taken : floor;
        add(millis, part.getKey(), taken);
        add(ratios, part.getKey(), taken / floor);
      }
    }
  }

  private double millis(Callable<?> part, int times) throws Exception {
    long start = THREADS.getCurrentThreadCpuTime();
    for (int i = 0; i < times; i++) {
      made = part.call();
    }
    return (THREADS.getCurrentThreadCpuTime() - start) / 1e6 / times;
  }

  private static void add(Map<String, List<Double>> to, String part, double figure) {
    to.computeIfAbsent(part, key -> new ArrayList<>()).add(figure);
  }

  private static double at(List<Double> sorted, int percent) {
    return sorted.get((sorted.size() - 1) * percent / 100);
  }

  private static String two(double figure) {
    return String.format(Locale.ROOT, "%.2f", figure);
  }
}
