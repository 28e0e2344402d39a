package baysheet.books;

import baysheet.report.Span;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * A file with one slip in it, for every map of the file and every key of the map. Maps with the
 * same keys are alike, and of these the first is enough.
 */
final class Slips {
  private final List<Slip> slips = new ArrayList<>();
  private static final String MISSPELT = " misspelt";

  private final Set<String> seen = new HashSet<>();

  /**
   * A file with a slip.
   *
   * @param line of the map in which it stands
   */
  record Slip(Node file, String what, int line) {
    boolean isMisspelt() {
      return what.endsWith(MISSPELT);
    }
  }

  /** The slips that no file before had. */
  List<Slip> in(Node file) {
    slips.clear();
    walk(file, changed -> changed);
    return List.copyOf(slips);
  }

  private void walk(Node node, UnaryOperator<Node> whole) {
    if (node instanceof Sequence list) {
      for (Node item : list.items()) {
        walk(item, changed -> whole.apply(new Sequence(List.of(changed), list.at())));
      }
    } else if (node instanceof Mapping map) {
      for (Entry entry : map.entries()) {
        entry(around(map, entry), entry, whole);
      }
    }
  }

  /**
   * In a map of many maps the keys are names, and in a list all items are alike: what stands beside
   * would only cost time.
   */
  private static Mapping around(Mapping map, Entry entry) {
    boolean names =
        map.entries().size() >= 5
            && map.entries().stream().allMatch(other -> other.value() instanceof Mapping);
    return names ? new Mapping(List.of(entry), map.at()) : map;
  }

  private void entry(Mapping map, Entry entry, UnaryOperator<Node> whole) {
    if (seen.add(map.entries().stream().map(it -> it.key().text()).toList() + entry.key().text())) {
      slips(map, entry, whole);
    }
    walk(
        entry.value(),
        value -> whole.apply(replaced(map, entry, List.of(new Entry(entry.key(), value)))));
  }

  private void slips(Mapping map, Entry entry, UnaryOperator<Node> whole) {
    String key = entry.key().text();
    add(whole.apply(replaced(map, entry, List.of())), "without " + key, map);
    Scalar misspelt = new Scalar(key + "z", false, entry.key().at());
    Entry renamed = new Entry(misspelt, entry.value());
    add(whole.apply(replaced(map, entry, List.of(renamed))), key + MISSPELT, map);
    for (Node wrong : wrong(entry.key().at())) {
      if (isDateObject(entry.value(), wrong)) {
        continue;
      }
      Entry other = new Entry(entry.key(), wrong);
      add(whole.apply(replaced(map, entry, List.of(other))), key + " as " + shown(wrong), map);
    }
  }

  /** To a validator a map without keys may be the date object of a loader. */
  private static boolean isDateObject(Node right, Node wrong) {
    return right instanceof Scalar scalar
        && scalar.text().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")
        && wrong instanceof Mapping map
        && map.entries().isEmpty();
  }

  private void add(Node file, String what, Mapping map) {
    slips.add(new Slip(file, "line " + map.at().line() + ", " + what, map.at().line()));
  }

  /** Values of other kinds, where the right one stood. */
  private static List<Node> wrong(Span at) {
    Stream<Node> scalars =
        Stream.of("", "?", "no", "0", "-1", "7.5", "99999", "At Once", "110 kg", "3 N", "x at y")
            .map(text -> new Scalar(text, false, at));
    Scalar key = new Scalar("wrong", false, at);
    Stream<Node> trees =
        Stream.of(
            new Mapping(List.of(new Entry(key, key)), at),
            new Mapping(List.of(), at),
            new Sequence(List.of(), at),
            new Sequence(List.of(new Sequence(List.of(), at)), at));
    return Stream.concat(scalars, trees).toList();
  }

  private static String shown(Node node) {
    return node instanceof Scalar scalar ? '"' + scalar.text() + '"' : node.shape();
  }

  private static Node replaced(Mapping map, Entry entry, List<Entry> with) {
    List<Entry> entries = new ArrayList<>(map.entries());
    int at = entries.indexOf(entry);
    entries.remove(at);
    entries.addAll(at, with);
    return new Mapping(entries, map.at());
  }
}
