package baysheet.bench;

import baysheet.cli.Workshop;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

/**
 * This program beside a process that only writes the same items with the PDF library, and beside
 * what somebody would write instead: one sheet from a cold start, many from a cold start on one
 * thread, and one when warm. All ways take their turn in each of three rounds.
 */
final class BesideRuns {
  private static final int ROUNDS = 3;
  private static final int MANY = 200;
  private static final String FLOOR = "floor";
  private static final String INSTEAD = "instead";
  private static final String OURS = "baysheet, java -jar";
  private static final String INSTALLED = "baysheet, installed";

  private final Path folder = Files.createTempDirectory("baysheet-beside");
  private final Map<String, List<List<Double>>> figures = new LinkedHashMap<>();

  private BesideRuns() throws IOException {}

  static void print() throws IOException, InterruptedException {
    BesideRuns runs = new BesideRuns();
    for (String way : List.of(FLOOR, OURS, INSTALLED, INSTEAD)) {
      runs.figures.put(way, List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
    }
    runs.prepare();
    for (int round = 0; round < ROUNDS; round++) {
      runs.round();
    }
    runs.table().print();
    Folders.remove(runs.folder);
  }

  private void prepare() throws IOException, InterruptedException {
    Workshop workshop = new Workshop(Demo.SHOP);
    var sheet = workshop.plan(workshop.resolve(Demo.ONE_PAGE.job()));
    DrawnPage page = DrawnPage.of(workshop.fit(workshop.fill(sheet)).page());
    try (ObjectOutputStream out =
        new ObjectOutputStream(Files.newOutputStream(folder.resolve("page")))) {
      out.writeObject(page);
    }
    Path shop = folder.resolve("shop");
    Folders.copy(Demo.SHOP, shop);
    Path day = Files.createDirectory(shop.resolve("2026-05-04"));
    String job = Files.readString(Demo.ONE_PAGE.job());
    for (int i = 0; i < MANY; i++) {
      int number = 10_000 + i;
      Files.writeString(
          day.resolve(number + ".yaml"), job.replaceFirst("(?m)^job: .*$", "job: " + number));
    }
    try (var archives = Files.newDirectoryStream(Path.of("target"), "baysheet-*.tar.gz")) {
      Path archive = archives.iterator().next();
      Tool.process(
          List.of("tar", "xzf", archive.toString(), "-C", folder.toString(), "--strip-components=1"),
          Map.of());
    }
    installed("sheets", Demo.ONE_PAGE.job().toString(), "-o", folder.resolve("first").toString());
  }

  private void round() throws IOException, InterruptedException {
    String job = Demo.ONE_PAGE.job().toString();
    String day = folder.resolve("shop/2026-05-04").toString();
    for (String way : List.of(FLOOR, INSTEAD)) {
      add(way, 0, own(way, 1).seconds());
      Tool.Run many = own(way, MANY);
      add(way, 1, MANY / many.seconds());
      add(way, 2, Double.parseDouble(many.said().get(many.said().size() - 1)));
    }
    add(OURS, 0, Tool.run(List.of(), line(job)).seconds());
    add(OURS, 1, MANY / Tool.run(List.of(), line(day)).seconds());
    List<String> warm = own("baysheet", MANY).said();
    add(OURS, 2, Double.parseDouble(warm.get(warm.size() - 1)));
    add(INSTALLED, 0, installed(line(job).toArray(String[]::new)).seconds());
    add(INSTALLED, 1, MANY / installed(line(day).toArray(String[]::new)).seconds());
  }

  private List<String> line(String what) throws IOException {
    Path out = Files.createTempDirectory(folder, "out");
    return List.of("sheets", what, "-o", out.toString(), "--jobs", "1", "-q");
  }

  private Tool.Run installed(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(folder.resolve("bin/baysheet").toString()));
    command.addAll(List.of(arguments));
    return Tool.process(command, Map.of("XDG_CACHE_HOME", folder.resolve("cache").toString()));
  }

  /** A process of this class. */
  private Tool.Run own(String way, int count) throws IOException, InterruptedException {
    return Tool.java(
        List.of(
            "-cp",
            System.getProperty("java.class.path"),
            BesideRuns.class.getName(),
            way,
            String.valueOf(count),
            folder.toString()));
  }

  /** Makes some sheets in one way, writes each to a file, and prints the milliseconds when warm. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[2]);
    Callable<byte[]> way = way(arguments[0], folder);
    int count = Integer.parseInt(arguments[1]);
    List<Double> millis = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      long start = System.nanoTime();
      Files.write(folder.resolve(arguments[0] + ".pdf"), way.call());
      millis.add((System.nanoTime() - start) / 1e6);
    }
    System.out.println(median(millis.subList(count / 2, count)));
  }

  private static Callable<byte[]> way(String way, Path folder) throws Exception {
    if (way.equals(FLOOR)) {
      try (ObjectInputStream in =
          new ObjectInputStream(Files.newInputStream(folder.resolve("page")))) {
        DrawnPage page = (DrawnPage) in.readObject();
        Floor floor = new Floor(page);
        return () -> floor.write(page);
      }
    }
    if (way.equals(INSTEAD)) {
      Instead instead = new Instead(Demo.SHOP);
      return () -> instead.write(Demo.ONE_PAGE.job());
    }
    Workshop workshop = new Workshop(Demo.SHOP);
    return () -> workshop.sheets(Demo.ONE_PAGE.job()).get(0);
  }

  private void add(String way, int what, double figure) {
    figures.get(way).get(what).add(figure);
  }

  private Table table() {
    Table table =
        new Table(
            "The demo job of one page beside other ways, median (least to most) of three rounds",
            "way", "cold s", "x floor", "sheets/s of " + MANY, "x floor", "warm ms", "x floor");
    figures.forEach(
        (way, all) -> {
          List<String> row = new ArrayList<>(List.of(way));
          for (int what = 0; what < all.size(); what++) {
            List<Double> own = all.get(what);
            row.add(own.isEmpty() ? "" : spread(own));
            double floor = median(figures.get(FLOOR).get(what));
            row.add(own.isEmpty() ? "" : two(median(own) / floor));
          }
          table.row(row.toArray(String[]::new));
        });
    return table;
  }

  private static String spread(List<Double> figures) {
    List<Double> sorted = figures.stream().sorted().toList();
    return two(median(figures))
        + " ("
        + two(sorted.get(0))
        + " to "
        + two(sorted.get(sorted.size() - 1))
        + ")";
  }

  private static double median(List<Double> figures) {
    return figures.stream().sorted().toList().get(figures.size() / 2);
  }

  private static String two(double figure) {
    return String.format(Locale.ROOT, "%.2f", figure);
  }
}
