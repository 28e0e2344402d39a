package baysheet.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** From the start of the process to its end, for one sheet, with and without a class archive. */
final class ColdRuns {
  private static final int RUNS = 9;

  private ColdRuns() {}

  static void print() throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("baysheet-cold");
    Path archive = folder.resolve("baysheet.jsa");
    List<String> one =
        List.of("sheets", Demo.ONE_PAGE.job().toString(), "-o", folder.resolve("out").toString());
    Tool.archive(archive, one);
    List<List<String>> ways =
        List.of(
            List.of(),
            List.of("-XX:SharedArchiveFile=" + archive),
            List.of("-XX:SharedArchiveFile=" + archive, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    List<String> names =
        List.of("java -jar", "with a class archive", "… and the quick compiler alone");
    print(names, seconds(ways, one));
    Folders.remove(folder);
  }

  /** In turn, so that a slow spell of the machine slows all of them. */
  private static List<List<Double>> seconds(List<List<String>> ways, List<String> arguments)
      throws IOException, InterruptedException {
    List<List<Double>> seconds = new ArrayList<>();
    ways.forEach(way -> seconds.add(new ArrayList<>()));
    for (int run = 0; run < RUNS; run++) {
      for (int way = 0; way < ways.size(); way++) {
        seconds.get(way).add(Tool.run(ways.get(way), arguments).seconds());
      }
    }
    return seconds;
  }

  private static void print(List<String> names, List<List<Double>> seconds) {
    Table table =
        new Table("One sheet, from a cold start", "how", "least s", "median s", "most s");
    for (int way = 0; way < names.size(); way++) {
      List<Double> sorted = seconds.get(way).stream().sorted().toList();
      table.row(
          names.get(way),
          two(sorted.get(0)),
          two(sorted.get(sorted.size() / 2)),
          two(sorted.get(sorted.size() - 1)));
    }
    table.print();
  }

  private static String two(double seconds) {
    return String.format(Locale.ROOT, "%.2f", seconds);
  }
}
