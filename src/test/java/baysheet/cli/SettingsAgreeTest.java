package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.output.Exit;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import baysheet.wording.Samples;
import baysheet.wording.TorqueTableText.TorqueLineText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The words of the sheet, its record, {@code explain}, {@code check} and {@code torque --shop} say
 * the same of what is set on which wrench, and above all of what gets no setting. Shops and
 * fasteners are drawn with fixed seeds.
 */
class SettingsAgreeTest {
  private static final int SHOPS = 25;
  private static final List<String> ITEMS =
      List.of("wheel-nut", "link-lower-nut", "link-upper-nut");

  @TempDir private Path folder;
  private final Map<String, Integer> met = new HashMap<>();

  @Test
  void allWaysOfAskingAgree() {
    for (int seed = 0; seed < SHOPS; seed++) {
      agree(seed);
    }
    // Each kind was met, so each was compared.
    for (String kind : List.of("set", "in doubt", "unknown", "no wrench", "stages")) {
      assertTrue(met.getOrDefault(kind, 0) > 3, kind + " in " + met);
    }
  }

  private void agree(int seed) {
    Garage garage = Garage.in(folder.resolve("shop" + seed));
    Drawn drawn = new Drawn(seed);
    garage.write("shop.yaml", drawn.shop());
    garage.write("vehicles/hollin-wren-2014.yaml", drawn.book());
    garage.change("2026-04-07/503.yaml", "override:", "notes: none");
    garage.change("2026-04-07/503.yaml", "  link-upper-nut at front-right", "# ");
    assertEquals(Exit.DONE, garage.sheets("--record").exit(), () -> garage.sheets().err());
    JsonTree record = JsonTree.of(Garage.bytes(garage.made("501.json")));
    List<TorqueLineText> words = words(garage);
    String checked = garage.run("check", garage.root.toString(), "--json").out();
    for (JsonTree line : record.list("torque")) {
      compare(garage, drawn, line, words.get(Integer.parseInt(line.text("n")) - 1), checked);
    }
  }

  /** The rows of the sheet of job 501, as its layout prints them. */
  private static List<TorqueLineText> words(Garage garage) {
    ShopFolders folders = new ShopFolders(DemoSheets.FONTS);
    SheetMaker maker =
        new SheetMaker(folders, LayoutTemplates.builtIn(), DemoSheets.FONTS, Optional.empty());
    Problems problems = new Problems();
    ShopFolder shop = folders.read(garage.root, problems).orElseThrow();
    MadeSheet made = maker.make(garage.job("501"), shop, problems).get(0);
    return Samples.text(made.sheet()).torque().blocks().stream()
        .flatMap(block -> block.lines().stream())
        .toList();
  }

  private void compare(
      Garage garage, Drawn drawn, JsonTree line, TorqueLineText row, String checked) {
    String item = line.text("fastener");
    Entry entry = drawn.entries.get(item);
    String explained = Paper.words(garage.run(explain(garage, line)).out());
    boolean doubtful = warns(line, "does-not-fit");
    assertEquals(doubtful, row.ask(), item);
    assertEquals(doubtful, explained.contains("setting none: the figure is in doubt"), explained);
    if (entry.torque().equals("unknown")) {
      assertEquals("unknown", line.text("kind"));
      assertTrue(explained.contains("setting none: the book gives no torque"), explained);
      assertTrue(checked.contains("unknown-torque"), checked);
      count("unknown");
      return;
    }
    assertTrue(!doubtful || checked.contains("does-not-fit"), checked);
    Garage.Run bench = garage.run(torque(garage, entry));
    assertEquals(Exit.DONE, bench.exit(), bench.err());
    JsonTree told = JsonTree.of(bench.out().getBytes(StandardCharsets.UTF_8));
    List<JsonTree> stages = line.list("stages");
    List<JsonTree> benched = told.has("stages") ? told.list("stages") : List.of(told);
    for (int i = 0; i < stages.size(); i++) {
      Optional<String> set = set(stages.get(i));
      assertEquals(set, set(benched.get(i)), () -> entry + " " + line + told);
      assertTrue(!doubtful || set.isEmpty(), item);
      set.ifPresent(it -> assertTrue(explained.contains("setting " + it), it + explained));
      assertEquals(set, printed(row, i), item);
      count(doubtful ? "in doubt" : set.isPresent() ? "set" : "no wrench");
    }
    count(stages.size() > 1 ? "stages" : "plain");
    for (JsonTree round : line.list("rounds")) {
      assertTrue(!doubtful || !round.has("setting"), item);
    }
    if (set(stages.get(0)).isEmpty() && !doubtful) {
      assertTrue(explained.contains("setting none: "), explained);
      assertTrue(warns(line, "wrench"), line.toString());
      assertTrue(row.borrow(), item);
    }
  }

  private void count(String kind) {
    met.merge(kind, 1, Integer::sum);
  }

  private static boolean warns(JsonTree line, String code) {
    return line.list("warnings").stream().anyMatch(it -> it.text("code").equals(code));
  }

  private static Optional<String> set(JsonTree stage) {
    return stage.has("setting")
        ? Optional.of(stage.text("wrench") + " at " + stage.quantity("setting"))
        : Optional.empty();
  }

  /** What the row prints of a torque stage; angles stand beside the torque before them. */
  private static Optional<String> printed(TorqueLineText row, int stage) {
    if (stage >= row.stages().size()) {
      return Optional.empty();
    }
    var text = row.stages().get(stage);
    return text.setting().isEmpty()
        ? Optional.empty()
        : Optional.of(text.wrench() + " at " + text.setting().replace('\u00a0', ' '));
  }

  private static String[] explain(Garage garage, JsonTree line) {
    return new String[] {"explain", garage.job("501").toString(), line.text("n")};
  }

  private static String[] torque(Garage garage, Entry entry) {
    List<String> words = new ArrayList<>(List.of("torque", "--json", "--on", Garage.DAY));
    words.addAll(List.of("--shop", garage.root.toString()));
    words.addAll(List.of("--thread", entry.thread(), "--class", entry.strength()));
    words.addAll(List.of("--head", "hex 15 mm"));
    if (!entry.threads().equals("not-stated")) {
      words.addAll(List.of("--treatment", entry.threads()));
    }
    if (!entry.reach().isEmpty()) {
      words.addAll(List.of("--reach", entry.reach()));
    }
    words.add(entry.torque());
    return words.toArray(String[]::new);
  }

  /** A fastener as drawn. */
  private record Entry(
      String thread, String strength, String threads, String torque, String reach) {}

  /** A shop and a book as drawn. */
  private static final class Drawn {
    private final SplittableRandom random;
    private final Map<String, Entry> entries = new HashMap<>();

    Drawn(int seed) {
      random = new SplittableRandom(seed);
      ITEMS.forEach(item -> entries.put(item, entry(item)));
    }

    private <T> T one(List<T> of) {
      return of.get(random.nextInt(of.size()));
    }

    private Entry entry(String item) {
      return new Entry(
          one(List.of("M8", "M10", "M12x1.5", "M14x1.5")),
          one(List.of("8.8", "10.9", "A2-70")),
          one(List.of("dry", "oiled", "as-delivered", "anti-seize", "not-stated")),
          torque(),
          item.equals("link-upper-nut") && random.nextBoolean() ? "60 mm" : "");
    }

    private String torque() {
      BigDecimal figure =
          new BigDecimal(8 * Math.pow(60, random.nextDouble())).setScale(0, RoundingMode.HALF_UP);
      return switch (random.nextInt(6)) {
        case 0 -> "unknown";
        case 1 -> figure + " N·m, " + figure.add(new BigDecimal(20)) + " N·m";
        case 2 -> figure + " lbf·ft";
        case 3 -> figure + " ± 1 N·m";
        default -> figure + " N·m";
      };
    }

    String shop() {
      return """
      shop: Any
      band: 5 %%
      crib:
        wrenches:
      %s%s%s
        sockets:
          - {drive: 3/8 in, hex: %d..24 mm, points: 6}
          - {drive: 1/2 in, hex: %d..24 mm, points: 6}
        stands: {rated: 2000 kg, each: yes, count: 4}
      drives: {3/8 in: 1000 N·m, 1/2 in: 1000 N·m}
      bays:
        1: {lift: two-post, rated: 3200 kg}
        2: {jack: trolley, rated: 2500 kg}
      people:
        T1: {name: O. Fennimarsh, grade: technician}
        T2: {name: L. Dunholt, grade: technician}
      """
          .formatted(wrench("R1"), wrench("R2"), wrench("R3"), smallest(), smallest());
    }

    /** The smallest socket of a square: some have one for the nuts of the book, others do not. */
    private int smallest() {
      return one(List.of(8, 16));
    }

    private String wrench(String name) {
      int from = 5 + random.nextInt(60);
      String unit = one(List.of("N·m", "N·m", "lbf·ft"));
      String format =
          "    - {name: %s, drive: %s in, from: %d %s, to: %d %s, step: %s %s, accuracy: %d %%,"
              + " length: %d mm, calibrated: %s}\n";
      return format.formatted(
          name,
          one(List.of("3/8", "1/2")),
          from,
          unit,
          from * (3 + random.nextInt(5)),
          unit,
          one(List.of("0.5", "1", "2")),
          unit,
          one(List.of(3, 4, 6)),
          300 + random.nextInt(300),
          one(List.of("2026-01-15", "2025-08-01", "2024-02-01")));
    }

    String book() {
      StringBuilder fasteners = new StringBuilder();
      for (String item : ITEMS) {
        Entry entry = entries.get(item);
        fasteners
            .append("    ")
            .append(item)
            .append(": {count: ")
            .append(item.equals("wheel-nut") ? "4, order: circle" : "1")
            .append(", head: hex 15 mm, thread: ")
            .append(entry.thread())
            .append(", class: \"")
            .append(entry.strength())
            .append("\", torque: [\"")
            .append(entry.torque().replace(", ", "\", \""))
            .append("\"]")
            .append(entry.threads().equals("not-stated") ? "" : ", threads: " + entry.threads())
            .append(entry.reach().isEmpty() ? "" : ", reach: {length: 60 mm, angle: 0°}")
            .append("}\n");
      }
      return "vehicle: hollin-wren-2014\nname: Any\nsource: Any tables\nkerb-mass: 1100 kg\n"
          + "front-share: 60 %\ntraits: [hydraulic-brakes]\nfasteners:\n  wheels:\n"
          + fasteners;
    }
  }
}
