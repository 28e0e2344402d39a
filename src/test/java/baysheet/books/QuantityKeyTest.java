package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A figure that cannot be is refused at every key of every file, and what was meant is offered. */
class QuantityKeyTest {
  private static final String BOOK = "vehicle: test\nname: a\nsource: b\n";
  private static final String NUT = BOOK + "fasteners: {wheels: {nut: {count: 5, ";
  private static final String TORQUE = "torque: 10 N·m, ";
  private static final String SHOP = "shop: a\npeople: {T1: {name: a, grade: technician}}\n";
  private static final String BAYS = "bays: {1: {lift: two-post, rated: 3 t}}\n";
  private static final String JOB =
      "job: test\nbay: 1\nby: T1\nwork: [oil-service at engine]\nvehicle: {book: test";

  /**
   * One key.
   *
   * @param file a file with {@code %s} at the key
   * @param good figures that a garage meets, parted by bars
   * @param slips figures that cannot be
   */
  record Row(QuantityKey key, String file, String good, String slips) {
    @Override
    public String toString() {
      return key.name();
    }
  }

  /** Figures of ordinary and of odd vehicles and tools: common practice, no source. */
  static List<Row> rows() {
    return List.of(
        row(
            "KERB_MASS",
            BOOK + "kerb-mass: %s\n",
            "900 kg|4250 lb|3.5 t",
            "2.05 kg|1480 t|20 kg|9 t"),
        row("FRONT_SHARE", BOOK + "front-share: %s\n", "38 %|61.5 %", "6 %|100 %|0.6 %"),
        row("WHEELBASE", BOOK + "wheelbase: %s\n", "1.8 m|2600 mm|145 in", "26 mm|2600 in|0.2 m"),
        row(
            "MASS_BEHIND_FRONT",
            BOOK + "wheelbase: 3 m\nmass-behind-front: %s\n",
            "1040 mm|41 in",
            "104 m|10 mm"),
        row(
            "FLUID_CAPACITY",
            BOOK + "fluids: {engine-oil: {capacity: %s}}\n",
            "4.2 L|150 mL|4.5 US qt|80 L",
            "420 L|4.2 mL"),
        row(
            "FASTENER_TORQUE",
            NUT + "torque: %s}}}\n",
            "0.3 N·m|110 N·m|70 lbf·in|55..60 N·m",
            "1600 N·m|0.05 N·m"),
        row("STAGE_ANGLE", NUT + "torque: [30 N·m, %s]}}}\n", "30°|270°", "0.9°"),
        row("PASS_SHARE", NUT + TORQUE + "passes: [%s, 100 %%]}}}\n", "30 %|50 %", "0.5 %|3 %"),
        row("RECHECK", NUT + TORQUE + "recheck: %s}}}\n", "50 mi|80 km|1500 km", "1 km|80000 km"),
        row(
            "REACH_LENGTH",
            NUT + TORQUE + "reach: {length: %s, angle: 90°}}}}\n",
            "40 mm|2 in|30 cm",
            "4 mm|40 in|0.5 mm"),
        row(
            "REACH_ANGLE",
            NUT + TORQUE + "reach: {length: 40 mm, angle: %s}}}}\n",
            "0°|90°|180°",
            "270°"),
        row("BAND", SHOP + BAYS + "crib: {}\nband: %s\n", "5 %|10 %", "0.05 %|50 %"),
        row(
            "WRENCH_ACCURACY",
            wrench("20 N·m", "100 N·m", "1 N·m", "%s", "370 mm"),
            "4 %|1 %",
            "0.04 %|40 %"),
        row(
            "WRENCH_FROM",
            wrench("%s", "1600 N·m", "1 N·m", "4 %%", "370 mm"),
            "1 N·m|20 N·m",
            "1550 N·m"),
        row(
            "WRENCH_TO",
            wrench("0.01 N·m", "%s", "0.01 N·m", "4 %%", "370 mm"),
            "6 N·m|1000 N·m",
            "0.05 N·m"),
        row(
            "WRENCH_STEP",
            wrench("20 N·m", "1000 N·m", "%s", "4 %%", "370 mm"),
            "1 N·m|2.5 N·m",
            "100 N·m"),
        row(
            "WRENCH_LENGTH",
            wrench("20 N·m", "100 N·m", "1 N·m", "4 %%", "%s"),
            "370 mm|1.2 m|20 in",
            "37 m|3.7 mm"),
        row(
            "STAND_RATED",
            SHOP + BAYS + "crib: {stands: {rated: %s, each: yes, count: 4}}\n",
            "2 t|2000 kg|6000 lb",
            "2 kg|2000 t|200 kg"),
        row(
            "BAY_RATED",
            SHOP + "crib: {}\nbays: {1: {lift: two-post, rated: %s}}\n",
            "3200 kg|4 t",
            "3.2 kg|32 kg"),
        row(
            "DRIVE_LIMIT",
            SHOP + BAYS + "crib: {}\ndrives: {1/2 in: %s}\n",
            "30 N·m|250 lbf·ft",
            "1 N·m|3 N·m"),
        row(
            "TAKES",
            "procedure: test\ntitle: a\nat: wheel\nwork: [{do: It, takes: %s}]\n",
            "0.5 min|3/5/12 min|8 h",
            "16 h|3/5/1200 min|0.05 min|0 min"),
        row("ODOMETER", JOB + ", odometer: %s}\n", "0 km|88410 km|54000 mi|812 km", "2999999 mi"),
        row("LOAD", JOB + "}\nload: {rear: %s}\n", "0 kg|120 kg|1.1 t", "4 t"));
  }

  private static Row row(String key, String file, String good, String slips) {
    return new Row(QuantityKey.valueOf(key), file, good, slips);
  }

  private static String wrench(
      String from, String to, String step, String accuracy, String length) {
    return SHOP
        + BAYS
        + "crib: {wrenches: [{name: W1, drive: 1/2 in, from: "
        + String.join(
            ", ", from, "to: " + to, "step: " + step, "accuracy: " + accuracy, "length: " + length)
        + ", calibrated: 2025-09-14}]}\n";
  }

  @ParameterizedTest
  @MethodSource("rows")
  void whatAGarageMeetsIsTaken(Row row) {
    for (String figure : row.good().split("\\|")) {
      assertEquals(List.of(), problems(row, figure), figure);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void whatCannotBeIsRefused(Row row) {
    for (String figure : row.slips().split("\\|")) {
      List<Problem> problems = problems(row, figure);
      assertEquals(1, problems.size(), figure + ": " + problems);
      assertTrue(
          Set.of(ProblemCode.OUT_OF_RANGE, ProblemCode.BAD_QUANTITY, ProblemCode.BAD_TIME)
              .contains(problems.get(0).code()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyKeyHasItsRow(QuantityKey key) {
    assertEquals(1, rows().stream().filter(row -> row.key() == key).count());
  }

  /** The figure itself is out of bounds: the thousandfold or another unit was meant. */
  @ParameterizedTest
  @MethodSource("meant")
  void whatWasMeantIsOffered(Meant meant) {
    Problem problem = problems(meant.row, meant.written).get(0);
    assertEquals(meant.nearest, problem.nearest().orElse("nothing").replace('\u00A0', ' '));
  }

  record Meant(Row row, String written, String nearest) {
    @Override
    public String toString() {
      return row + " " + written;
    }
  }

  static List<Meant> meant() {
    return Stream.of(
            "KERB_MASS;2.050 kg;2050 kg",
            "KERB_MASS;1.48 kg;1.48 t",
            "KERB_MASS;1480 t;1480 kg",
            "KERB_MASS;20 kg;nothing",
            "WHEELBASE;2.600 mm;2600 mm",
            "WHEELBASE;2.6 mm;2.6 m",
            "WRENCH_LENGTH;1.050 mm;1050 mm",
            "STAND_RATED;2.000 kg;2000 kg",
            "BAY_RATED;3.200 kg;3200 kg")
        .map(text -> text.split(";"))
        .map(part -> new Meant(rowOf(part[0]), part[1], part[2]))
        .toList();
  }

  private static Row rowOf(String key) {
    return rows().stream().filter(row -> row.key().name().equals(key)).findFirst().orElseThrow();
  }

  /** Both readings could be: 88.41 km of a new car, 88410 km of an old one. */
  @ParameterizedTest
  @MethodSource("asked")
  void aPointThatMayStandBetweenThousandsIsAskedAbout(Meant asked) {
    Problem problem = problems(asked.row, asked.written).get(0);
    assertEquals(ProblemCode.POINT_OR_THOUSANDS, problem.code());
    assertEquals(asked.nearest, problem.expected().orElseThrow().replace('\u00A0', ' '));
  }

  static List<Meant> asked() {
    String decimals = " if it is a decimal point";
    return Stream.of(
            "ODOMETER;88.410 km;88410 km, or 88.41 km",
            "ODOMETER;88.415 mi;88415 mi, or 88.4150 mi",
            "RECHECK;50.000 km;taken",
            "RECHECK;5.000 km;5000 km, or 5.00 km",
            "LOAD;1.200 kg;1200 kg, or 1.20 kg",
            "FASTENER_TORQUE;1.250 N·m;1250 N·m, or 1.25 N·m",
            "WRENCH_TO;1.000 N·m;1000 N·m, or 1.00 N·m")
        .map(text -> text.split(";"))
        .filter(part -> !part[2].equals("taken"))
        .map(part -> new Meant(rowOf(part[0]), part[1], part[2] + decimals))
        .toList();
  }

  /** A point before three digits is decimals where thousands of that could not be. */
  @Test
  void threeDecimalsAreTakenWhereThousandsCannotBe() {
    for (String text :
        List.of(
            "KERB_MASS;1.640 t",
            "FLUID_CAPACITY;4.250 L",
            "WHEELBASE;2.675 m",
            "FASTENER_TORQUE;12.500 N·m",
            "FASTENER_TORQUE;0.350 N·m",
            "RECHECK;50.000 km",
            "ODOMETER;0.088 km")) {
      String[] parts = text.split(";");
      assertEquals(List.of(), problems(rowOf(parts[0]), parts[1]), text);
    }
  }

  private static List<Problem> problems(Row row, String figure) {
    Problems problems = new Problems();
    String text = row.file().replace("%s", figure).replace("%%", "%");
    Shelf.parse(text, problems).ifPresent(node -> Shelf.read(node, text, "test", problems));
    return problems.all();
  }

  /**
   * The schemas name every key; those whose value carries a unit lead to one of these definitions.
   * A key that is new there must be declared here.
   */
  @Test
  void everyKeyThatTakesAQuantityIsDeclared() throws IOException {
    Set<String> inSchemas = new TreeSet<>();
    for (String file : List.of("job", "shop", "spec-book", "procedure", "catalogue", "values")) {
      Path path = Path.of("src/main/resources/baysheet/schema", file + ".json");
      walk("", new ObjectMapper().readTree(Files.readString(path)), inSchemas);
    }
    Set<String> declared = new TreeSet<>();
    for (QuantityKey key : EnumSet.allOf(QuantityKey.class)) {
      String[] parts = key.path().split("\\.");
      String last = parts[parts.length - 1];
      declared.add(last.equals("*") ? parts[parts.length - 2] : last);
    }
    // The axles are the keys of a load.
    if (inSchemas.removeAll(Set.of("front", "rear"))) {
      inSchemas.add("load");
    }
    assertEquals(declared, inSchemas);
  }

  private static final Set<String> OF_QUANTITIES =
      Set.of(
          "mass",
          "some-mass",
          "distance",
          "some-distance",
          "some-length",
          "some-volume",
          "some-share",
          "minutes",
          "some-torque",
          "tightening");

  private static void walk(String key, JsonNode node, Set<String> found) {
    String to = node.path("$ref").asText("");
    if (OF_QUANTITIES.contains(to.substring(to.lastIndexOf('/') + 1))) {
      found.add(key);
    }
    String pattern = node.path("pattern").asText("");
    if (!key.isEmpty() && (pattern.contains("°|º") || pattern.contains("%|[Pp]ercent"))) {
      found.add(key);
    }
    node.fields()
        .forEachRemaining(
            field -> {
              boolean names = Set.of("properties", "definitions").contains(field.getKey());
              boolean apart = field.getKey().equals("definitions");
              if (names) {
                field
                    .getValue()
                    .fields()
                    .forEachRemaining(it -> walk(apart ? "" : it.getKey(), it.getValue(), found));
              } else {
                walk(key, field.getValue(), found);
              }
            });
    List<JsonNode> items = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(items::add);
    }
    items.forEach(item -> walk(key, item, found));
  }
}
