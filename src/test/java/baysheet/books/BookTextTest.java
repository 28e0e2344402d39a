package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.YamlFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** New lines in a book as people write one: comments, blank lines, long entries, line ends. */
class BookTextTest {
  private static final List<String> ROOT =
      List.of(
          "vehicle: v", "# a comment", "", "name: N", "source: s", "notes: |\n  two\n  lines\n");

  private static final List<String> ENTRIES =
      List.of(
          "a-bolt: {count: 1, torque: 9 N·m}    # why",
          "b-bolt: {count: 1,\n      torque: 9 N·m}",
          "c-bolt:\n      count: 1\n      torque: 9 N·m",
          "d-bolt: {count: 1, torque: [9 N·m,\n   +90°]}\n    # below it",
          "f-bolt:\n      count: 1\n      torque: 9 N·m\n      note: |+\n        text\n\n",
          "absent:\n      - x\n      - y\n",
          "e-bolt:\n      count: 1\n      torque: 9 N·m\n      note: >-\n        long\n        text\n\n");

  @Provide
  Arbitrary<String> books() {
    Arbitrary<List<String>> groups =
        Arbitraries.subsetOf("wheels", "front-wheels", "engine").map(ArrayList::new);
    Arbitrary<List<String>> entries = Arbitraries.subsetOf(ENTRIES).map(ArrayList::new);
    Arbitrary<String> end = Arbitraries.of("\n", "\r\n");
    Arbitrary<String> tail = Arbitraries.of("", "\n", "\n# the end\n", "\nfluids: {}\n", "\n\n\n");
    return Combinators.combine(groups, entries, end, tail, Arbitraries.of(true, false))
        .as(
            (places, some, lineEnd, last, first) -> {
              StringBuilder text = new StringBuilder(String.join("\n", ROOT));
              if (!places.isEmpty() || first) {
                text.append("\nfasteners:");
              }
              for (String place : places) {
                text.append("\n  ").append(place).append(":");
                some.forEach(entry -> text.append("\n    ").append(entry));
              }
              return text.append(last).toString().replace("\n", lineEnd);
            });
  }

  @Property(tries = 500)
  void noByteChangesAndAllThatIsNewCanBeRead(@ForAll("books") String text) {
    Map<String, List<String>> added = new LinkedHashMap<>();
    added.put("engine", List.of("# new", "new-bolt: {count: 2, torque: unknown}"));
    added.put("rear", List.of("new-nut: {count: 3, torque: unknown}"));
    Source source = new Source("v", text);
    String longer =
        BookText.with(
                source, YamlFile.parse(source, new Problems()).orElseThrow(), added, new Problems())
            .orElseThrow();
    assertTrue(isWithin(text, longer), longer);
    Map<String, String> before = fasteners(text);
    Map<String, String> after = fasteners(longer);
    before.put("engine new-bolt", "2");
    before.put("rear new-nut", "3");
    assertEquals(before, after, longer);
  }

  /** Whether a text is left when whole lines are taken from another. */
  private static boolean isWithin(String text, String longer) {
    List<String> old = text.lines().toList();
    int found = 0;
    for (String line : longer.lines().toList()) {
      found += found < old.size() && old.get(found).equals(line) ? 1 : 0;
    }
    return found == old.size() && longer.contains("\r\n") == text.contains("\r\n");
  }

  /** The counts by group and name; notes is no key of a book, and nobody minds here. */
  private static Map<String, String> fasteners(String text) {
    Map<String, String> counts = new LinkedHashMap<>();
    YamlFile.parse(new Source("v", text), new Problems())
        .flatMap(node -> Optional.of((baysheet.yaml.Mapping) node))
        .orElseThrow()
        .entries()
        .stream()
        .filter(it -> it.key().text().equals("fasteners"))
        .flatMap(it -> entries(it.value()))
        .forEach(
            group ->
                entries(group.value())
                    .forEach(
                        it ->
                            counts.put(
                                group.key().text() + " " + it.key().text(),
                                entries(it.value())
                                    .filter(key -> key.key().text().equals("count"))
                                    .map(key -> ((baysheet.yaml.Scalar) key.value()).text())
                                    .findFirst()
                                    .orElse("-"))));
    return new java.util.TreeMap<>(counts);
  }

  private static java.util.stream.Stream<baysheet.yaml.Entry> entries(baysheet.yaml.Node node) {
    return node instanceof baysheet.yaml.Mapping map
        ? map.entries().stream()
        : java.util.stream.Stream.empty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{vehicle: v, fasteners: {}}",
        "vehicle: v\nfasteners: {}\n",
        "vehicle: v\nfasteners:\n  engine: {absent: [a]}\n",
      })
  void whatStandsInBracesIsRefused(String text) {
    Source source = new Source("v", text);
    Problems problems = new Problems();
    Map<String, List<String>> added = Map.of("engine", List.of("b: {count: 2, torque: unknown}"));
    assertEquals(
        Optional.empty(),
        BookText.with(source, YamlFile.parse(source, problems).orElseThrow(), added, problems));
    assertEquals(
        List.of(ProblemCode.IN_BRACES), problems.all().stream().map(Problem::code).toList());
  }
}
