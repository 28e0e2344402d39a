package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.yaml.Sequence;
import baysheet.yaml.ValueReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A fastener on one line means what the map with the same figures means. */
class FastenerLineTest {
  private static Optional<FastenerText> read(
      ValueReader<FastenerText> reader, String text, Problems problems) {
    return Shelf.parse("- " + text, problems)
        .flatMap(node -> reader.read(((Sequence) node).items().get(0), problems))
        .map(Located::value);
  }

  /** What it says, without where it says it. */
  private static Map<String, Object> meaning(String text) {
    Problems problems = new Problems();
    FastenerText read = read(FastenerReader.WHOLE, text, problems).orElse(null);
    assertEquals(List.of(), problems.all(), text);
    Map<String, Object> meaning = new LinkedHashMap<>();
    FastenerText.Pieces pieces = read.pieces();
    meaning.put("count", pieces.count().map(Located::value));
    meaning.put("thread", pieces.thread().map(Located::value));
    meaning.put("class", pieces.strength().map(Located::value));
    meaning.put("head", pieces.head().map(Located::value));
    meaning.put("torque", read.tightening().map(Located::value));
    meaning.put("threads", pieces.threads().map(Located::value));
    meaning.put("reuse", pieces.reuse().map(Located::value));
    meaning.put("recheck", read.method().recheck().map(Located::value));
    meaning.put(
        "unknown", pieces.unknown().stream().map(Located::value).collect(Collectors.toSet()));
    return meaning;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 x, 110 N·m | count: 2, torque: 110 N·m",
        "2 × , 110 N·m | count: 2, torque: 110 N·m",
        "12 x M10, 25 N·m | count: 12, thread: M10, torque: 25 N·m",
        "2xM12x1.5, 25 N·m | count: 2, thread: M12x1.5, torque: 25 N·m",
        "2 x M12x1.5 class 10.9, snug | count: 2, thread: M12x1.5, class: '10.9', torque: snug",
        "M12x1.5, 2 x class 8.8, snug | count: 2, thread: M12x1.5, class: '8.8', torque: snug",
        "class A2-70, 1 x, snug | count: 1, class: A2-70, torque: snug",
        "1 x 1/2-13 UNC-2A, snug | count: 1, thread: 1/2-13 UNC-2A, torque: snug",
        "3 x M24x1.5 LH, snug | count: 3, thread: M24x1.5 LH, torque: snug",
        "5 x hex 19 mm, 120 Nm | count: 5, head: hex 19 mm, torque: 120 Nm",
        "1 x, 12-point 36 mm, 165 lbf·ft | count: 1, head: 12-point 36 mm, torque: 165 lbf·ft",
        "1 x, 12-point key M10, snug | count: 1, head: 12-point key M10, torque: snug",
        "1 x, six-lobe T30, snug | count: 1, head: six-lobe T30, torque: snug",
        "1 x, external six-lobe E12, snug | count: 1, head: external six-lobe E12, torque: snug",
        "1 x, hexagon key 6 mm, snug | count: 1, head: hexagon key 6 mm, torque: snug",
        "1 x, slot 6 mm, snug | count: 1, head: slot 6 mm, torque: snug",
        "1 x, cross PH2, snug | count: 1, head: cross PH2, torque: snug",
        "1 x, square 8 mm, snug | count: 1, head: square 8 mm, torque: snug",
        "1 x, 95 ± 5 N·m | count: 1, torque: 95 ± 5 N·m",
        "1 x, 90..100 N·m | count: 1, torque: 90..100 N·m",
        "1 x, 110 +10/-5 N·m | count: 1, torque: 110 +10/-5 N·m",
        "1 x, 97 in-lb | count: 1, torque: 97 in-lb",
        "1 x, 9.2 kgf·m | count: 1, torque: 9.2 kgf·m",
        "1 x, 30 N·m + 60° + 60° | count: 1, torque: [30 N·m, +60°, +60°]",
        "1 x, torque unknown | count: 1, torque: unknown",
        "1 x, snug, dry | count: 1, torque: snug, threads: dry",
        "1 x, snug, oiled | count: 1, torque: snug, threads: oiled",
        "1 x, snug, locking-compound | count: 1, torque: snug, threads: locking-compound",
        "1 x, snug, anti-seize | count: 1, torque: snug, threads: anti-seize",
        "1 x, snug, grease | count: 1, torque: snug, threads: grease",
        "1 x, snug, sealant | count: 1, torque: snug, threads: sealant",
        "1 x, snug, as-delivered | count: 1, torque: snug, threads: as-delivered",
        "1 x, snug, re-use | count: 1, torque: snug, reuse: yes",
        "1 x, snug, renew | count: 1, torque: snug, reuse: no",
        "1 x, snug, recheck 80 km | count: 1, torque: snug, recheck: 80 km",
        "snug, class unknown, head unknown, 1 x | count: 1, torque: snug, head: unknown, class: unknown",
        "count unknown, snug, threads unknown | count: unknown, torque: snug, threads: unknown",
        "1 x, snug, reuse unknown, thread unknown | count: 1, torque: snug, reuse: unknown, thread: unknown",
        "unknown | count: unknown, thread: unknown, class: unknown, head: unknown, torque: unknown, threads: unknown, reuse: unknown",
      })
  void theLineMeansWhatTheMapMeans(String line, String map) {
    assertEquals(meaning("{" + map + "}"), meaning(line));
    assertEquals(meaning("{" + map + "}"), meaning("\"" + line + "\""));
  }

  /** Each key as a map writes it, and as a line does. */
  private static final Map<String, List<List<String>>> WAYS = new LinkedHashMap<>();

  static {
    WAYS.put("count", List.of(List.of("3", "3 x"), List.of("unknown", "count unknown")));
    WAYS.put("thread", List.of(List.of("M8", "M8"), List.of("3/8-16 UNC", "3/8-16 UNC")));
    WAYS.put("class", List.of(List.of("\"10.9\"", "class 10.9"), List.of("\"8\"", "class 8")));
    WAYS.put(
        "head", List.of(List.of("hex 13 mm", "hex 13 mm"), List.of("unknown", "head unknown")));
    WAYS.put(
        "torque",
        List.of(
            List.of("25 ± 3 N·m", "25 ± 3 N·m"),
            List.of("[20 N·m, +90°]", "20 N·m + 90°"),
            List.of("unknown", "torque unknown")));
    WAYS.put("threads", List.of(List.of("oiled", "oiled"), List.of("dry", "dry")));
    WAYS.put("reuse", List.of(List.of("yes", "re-use"), List.of("no", "renew")));
  }

  @Property(tries = 300)
  void inAnyOrder(@ForAll long seed) {
    Random random = new Random(seed);
    List<String> map = new ArrayList<>();
    List<String> line = new ArrayList<>();
    WAYS.forEach(
        (key, ways) -> {
          List<String> way = ways.get(random.nextInt(ways.size()));
          if (key.equals("count") || key.equals("torque") || random.nextInt(4) > 0) {
            map.add(key + ": " + way.get(0));
            line.add(way.get(1));
          }
        });
    Collections.shuffle(line, random);
    assertEquals(meaning("{" + String.join(", ", map) + "}"), meaning(String.join(", ", line)));
  }

  private static List<String> problems(String text) {
    Problems problems = new Problems();
    Optional<FastenerText> read = read(FastenerReader.WHOLE, text, problems);
    assertEquals(Optional.empty(), read, text);
    return problems.all().stream().map(FastenerLineTest::said).toList();
  }

  /** Column, code and nearest; the text begins in column 3. */
  private static String said(Problem problem) {
    return problem.at().column()
        + " "
        + problem.code().word()
        + problem.nearest().map(it -> " " + it).orElse("");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 x, 110 N·m, re-used | 17 bad-value re-use",
        "2 x, 110 N·m, renew, 120 N·m | 24 listed-twice",
        "2 x, 3 x, 110 N·m | 8 listed-twice",
        "2 x, 110 N·m, dry, dry | 22 listed-twice",
        "2 x, 110 N·m,, dry | 16 bad-value",
        "2 x, 110 N·m, | 16 bad-value",
        "2 x, 110 N·m, 10.9 | 17 bad-value",
        "2 x, 8,5 N·m | 8 bad-torque 8.5 N·m",
        "2, 110 N·m | 3 bad-value",
        "2 x, 110 N·m, torque unknwn | 17 bad-value torque unknown",
        "2 x, 110 N·m, tourque unknown | 17 bad-value torque unknown",
        "2 x, 110 N·m, something | 17 bad-value",
        "hex 19 mm, dry | 3 missing-key;3 missing-key",
        "unknown, dry | 3 bad-value",
      })
  void aFaultyPartIsReportedAtItsPlace(String line, String expected) {
    assertEquals(List.of(expected.split(";")), problems(line));
  }

  /** The form is known, the figure is wrong: the same is said as in a map. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "head | hex 18 mn",
        "head | six-lobe 40",
        "head | 12-point 36",
        "thread | M12x9",
        "thread | M12x1.5.5",
        "class | class 11.9",
        "recheck | recheck 80 kg",
        "torque | 110 kg",
        "torque | 110 Nmm",
        "torque | 0 N·m",
        "torque | 1100000 N·m",
      })
  void aFaultyFigureIsReportedAsInAMap(String key, String part) {
    Problems inMap = new Problems();
    String value = part.replaceAll("^(class|recheck) ", "");
    read(FastenerReader.PARTIAL, "{" + key + ": " + value + "}", inMap);
    Problems inLine = new Problems();
    read(FastenerReader.PARTIAL, "2 x, " + part, inLine);
    assertEquals(1, inMap.all().size(), part);
    assertEquals(
        inMap.all().stream().map(it -> it.code() + it.what() + it.expected()).toList(),
        inLine.all().stream().map(it -> it.code() + it.what() + it.expected()).toList());
    assertEquals(8 + part.indexOf(value), inLine.all().get(0).at().column());
  }

  /** What is wrong in the other parts is said in the same run. */
  @Test
  void allFaultyPartsAreReported() {
    assertEquals(
        List.of("28 bad-value re-use", "8 bad-head", "19 bad-torque"),
        problems("2 x, hex 18 mn, 110 kgg, re-used"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"2 x, 110 N\\u00B7m, renewed\"", "'2 x, 110 N·m, it''s'"})
  void whereTheTextIsNotWrittenAsItReadsTheWholeIsPointedAt(String text) {
    assertTrue(problems(text).get(0).startsWith("3 bad-value"), problems(text).toString());
  }

  /** Over another book a line may leave out any part. */
  @Test
  void anOverlayNeedsNoCount() {
    Problems problems = new Problems();
    FastenerText read = read(FastenerReader.PARTIAL, "120 N·m", problems).orElseThrow();
    assertEquals(List.of(), problems.all());
    assertEquals(Optional.empty(), read.pieces().count());
  }
}
