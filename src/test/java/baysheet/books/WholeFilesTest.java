package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of every kind of file, tried on one that has all its keys. */
class WholeFilesTest {
  /** Slips in every fifth value leave what stands around them whole. */
  private static final int STRIDE = 5;

  private static final String STRANGE = "strange-key";

  private static final List<String> SLIPS =
      List.of(
          "no",
          "010",
          "1:30",
          "~",
          " ",
          "-5 kg",
          "1,5 N·m",
          "110",
          "100..90 N·m",
          "+90°",
          "a at ",
          " at front",
          "grease on",
          "[",
          "\u0000",
          "\uD83D\uDE97",
          "9".repeat(500),
          "M12x",
          "0/0 in");

  @ParameterizedTest
  @ValueSource(strings = {"shop", "test-book", "like-book", "test-arm", "2417", "catalogue"})
  void slipsInAnyValuesAreReportedWithinTheFile(String name) {
    Node whole = Shelf.whole(name + ".yaml");
    int values = scalars(whole).size();
    assertTrue(values > STRIDE, "values: " + values);
    for (String slip : SLIPS) {
      int found = 0;
      for (int first = 0; first < STRIDE; first++) {
        for (Problem problem : problems(slipped(whole, first, slip), name).all()) {
          assertEquals(name + ".yaml", problem.at().source().name());
          found++;
        }
      }
      // Names and texts may be nearly anything but blank.
      int least = slip.isBlank() ? values : values / 8;
      assertTrue(found >= least, found + " of " + values + " for " + slip);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"shop", "test-book", "like-book", "test-arm", "2417", "catalogue"})
  void noKeyIsReadThatTheWholeFilesLack(String name) throws IOException {
    Set<String> asked = new TreeSet<>();
    Node whole = Shelf.whole(name + ".yaml");
    problems(withStrangeKeys(whole), name).all().stream()
        .filter(problem -> problem.code().word().equals("unknown-key"))
        .flatMap(problem -> Pattern.compile(", |one of ").splitAsStream(problem.expected().get()))
        .forEach(asked::add);
    asked.remove("");
    assertTrue(asked.size() > 5, "keys: " + asked);
    asked.removeAll(keysOfWholeFiles());
    assertEquals(Set.of(), asked);
  }

  private static Problems problems(Node node, String name) {
    Problems problems = new Problems();
    Shelf.read(node, firstKey(node) + ":", name, problems);
    return problems;
  }

  private static String firstKey(Node node) {
    return ((Mapping) node).entries().get(0).key().text();
  }

  /** The tree with a slip in place of every fifth scalar, keys not counted. */
  private static Node slipped(Node whole, int first, String slip) {
    int[] met = {0};
    return each(
        whole,
        node ->
            node instanceof Scalar scalar && met[0]++ % STRIDE == first
                ? new Scalar(slip, false, scalar.at())
                : node);
  }

  /** The tree with every node passed through {@code change}, the inner ones first. */
  private static Node each(Node node, UnaryOperator<Node> change) {
    if (node instanceof Sequence list) {
      List<Node> items = list.items().stream().map(item -> each(item, change)).toList();
      return change.apply(new Sequence(items, list.at()));
    }
    if (node instanceof Mapping map) {
      List<Entry> entries =
          map.entries().stream()
              .map(entry -> new Entry(entry.key(), each(entry.value(), change)))
              .toList();
      return change.apply(new Mapping(entries, map.at()));
    }
    return change.apply(node);
  }

  private static List<Scalar> scalars(Node node) {
    List<Scalar> found = new ArrayList<>();
    each(
        node,
        part -> {
          if (part instanceof Scalar scalar) {
            found.add(scalar);
          }
          return part;
        });
    return found;
  }

  private static Node withStrangeKeys(Node whole) {
    return each(whole, node -> node instanceof Mapping map ? withStrangeKey(map) : node);
  }

  private static Mapping withStrangeKey(Mapping map) {
    List<Entry> entries = new ArrayList<>(map.entries());
    entries.add(
        new Entry(new Scalar(STRANGE, false, map.start()), new Scalar("x", false, map.start())));
    return new Mapping(entries, map.at());
  }

  private static Set<String> keysOfWholeFiles() throws IOException {
    Set<String> keys = new TreeSet<>();
    try (var files = Files.list(Shelf.CASES.resolve("whole"))) {
      for (var file : files.toList()) {
        Matcher key =
            Pattern.compile("[\\w-]+(?=: )|[\\w-]+(?=:$)", Pattern.MULTILINE)
                .matcher(Files.readString(file, StandardCharsets.UTF_8));
        key.results().forEach(result -> keys.add(result.group()));
      }
    }
    return keys;
  }
}
