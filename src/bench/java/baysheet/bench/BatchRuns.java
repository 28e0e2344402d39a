package baysheet.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Many jobs in one run of the packaged tool: sheets a second, and memory that must not grow. */
final class BatchRuns {
  private static final List<Integer> SIZES = List.of(500, 2000);

  /** After these the machine's compiler has little left to do. */
  private static final int ROUNDS = 4;

  private static final List<String> DAYS = List.of("2026-03-02", "2026-03-03");

  /** A collection's line in the log: {@code GC(7) Pause Young (…) 71M->12M(256M) 3.1ms}. */
  private static final Pattern COLLECTION = Pattern.compile(" ([0-9]+)M->([0-9]+)M\\(");

  private BatchRuns() {}

  static void print() throws IOException, InterruptedException {
    Table table =
        new Table(
            "Many jobs in one run, all cores",
            "jobs",
            "seconds",
            "sheets/s",
            "sheets/s once warm",
            "peak resident MiB",
            "peak heap MiB",
            "heap after collection MiB");
    for (int size : SIZES) {
      row(size, table);
    }
    table.print();
  }

  private static void row(int size, Table table) throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("baysheet-batch");
    Path day = jobs(folder.resolve("shop"), size);
    Path log = folder.resolve("heap.log");
    Tool.Run run =
        Tool.run(
            List.of("-Xlog:gc:file=" + log),
            List.of("sheets", day.toString(), "-o", folder.resolve("out").toString()));
    Tool.Run warm =
        Tool.rounds(
            ROUNDS, List.of("sheets", day.toString(), "-o", folder.resolve("out").toString()));
    double last = Double.parseDouble(warm.said().get(ROUNDS - 1));
    Folders.remove(folder.resolve("out"));
    table.row(
        String.valueOf(size),
        String.format(Locale.ROOT, "%.1f", run.seconds()),
        String.format(Locale.ROOT, "%.0f", size / run.seconds()),
        String.format(Locale.ROOT, "%.0f", size / last),
        String.valueOf(run.peakKilobytes() / 1024),
        String.valueOf(highest(log, 1)),
        String.valueOf(highest(log, 2)));
    Folders.remove(folder);
  }

  /** Demo jobs in turn, under numbers of their own; the day folder. */
  private static Path jobs(Path shop, int size) throws IOException {
    Folders.copy(Demo.SHOP, shop);
    List<Path> demo = new ArrayList<>();
    for (String day : DAYS) {
      try (Stream<Path> files = Files.list(shop.resolve(day))) {
        files.sorted().forEach(demo::add);
      }
    }
    Path day = Files.createDirectory(shop.resolve("2026-05-04"));
    for (int i = 0; i < size; i++) {
      String number = String.valueOf(10_000 + i);
      String text = Files.readString(demo.get(i % demo.size()), StandardCharsets.UTF_8);
      Files.writeString(
          day.resolve(number + ".yaml"), text.replaceFirst("(?m)^job: .*$", "job: " + number));
    }
    return day;
  }

  private static int highest(Path log, int group) throws IOException {
    try (Stream<String> lines = Files.lines(log)) {
      return lines
          .map(COLLECTION::matcher)
          .filter(Matcher::find)
          .mapToInt(found -> Integer.parseInt(found.group(group)))
          .max()
          .orElse(0);
    }
  }
}
