package baysheet.cli;

import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.yaml.Entry;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import baysheet.yaml.YamlFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Every value and every free key of a file, with the keys that lead to it: {@code
 * procedure/open/undo}, {@code book/fasteners/*}. Lists leave no trace, and what the writer calls
 * freely is a star; a star with a colon is the free key itself.
 */
record NamedPlaces(String path, Scalar scalar) {
  /** Maps whose keys are the writer's own. */
  private static final Set<String> FREE =
      Set.of(
          "shop/bays",
          "shop/people",
          "shop/people/*/qualifications",
          "book/fluids",
          "book/part-numbers",
          "book/fasteners",
          "book/fasteners/*",
          "book/supports",
          "book/jacking",
          "procedure/not-with",
          "job/override",
          "job/qualified",
          "job/waive",
          "job/load",
          "catalogue/items",
          "catalogue/cautions",
          "catalogue/consequences",
          "catalogue/states",
          "catalogue/qualifications",
          "catalogue/traits",
          "catalogue/kinds",
          "catalogue/fluids",
          "catalogue/measures",
          "catalogue/tools",
          "catalogue/products",
          "catalogue/terms");

  /** What kind of file a path within a shop folder is. */
  static String kind(String file) {
    if (file.equals("shop.yaml")) {
      return "shop";
    }
    return switch (file.substring(0, file.indexOf('/'))) {
      case "vehicles" -> "book";
      case "procedures" -> "procedure";
      case "catalogue" -> "catalogue";
      default -> "job";
    };
  }

  /** All of a file, in its order. */
  static List<NamedPlaces> of(String kind, String text) {
    Problems problems = new Problems();
    Node node =
        YamlFile.parse(new Source("file", text), problems)
            .orElseThrow(() -> new AssertionError(problems.all()));
    List<NamedPlaces> found = new ArrayList<>();
    walk(node, kind, found);
    return found;
  }

  private static void walk(Node node, String path, List<NamedPlaces> found) {
    if (node instanceof Scalar scalar) {
      found.add(new NamedPlaces(path, scalar));
    } else if (node instanceof Sequence list) {
      list.items().forEach(item -> walk(item, path, found));
    } else if (node instanceof Mapping map) {
      map.entries().forEach(entry -> walk(entry, path, found));
    }
  }

  private static void walk(Entry entry, String path, List<NamedPlaces> found) {
    // Among the fasteners of a place stands one key that is none.
    boolean absent = path.equals("book/fasteners/*") && entry.key().text().equals("absent");
    boolean free = FREE.contains(path) && !absent;
    if (free) {
      found.add(new NamedPlaces(path + "/*:", entry.key()));
    }
    walk(entry.value(), path + "/" + (free ? "*" : entry.key().text()), found);
  }

  /** A file's text with values replaced: what the function gives for each, from the last back. */
  static String replaced(String kind, String text, Function<NamedPlaces, String> by) {
    List<NamedPlaces> places = new ArrayList<>(of(kind, text));
    places.sort(Comparator.comparing((NamedPlaces place) -> place.scalar().at()).reversed());
    List<StringBuilder> lines = new ArrayList<>();
    text.lines().forEach(line -> lines.add(new StringBuilder(line)));
    for (NamedPlaces place : places) {
      String value = by.apply(place);
      if (!value.equals(place.scalar().text())) {
        replace(lines, place.scalar(), value);
      }
    }
    return String.join("\n", lines) + "\n";
  }

  private static void replace(List<StringBuilder> lines, Scalar scalar, String value) {
    StringBuilder line = lines.get(scalar.at().line() - 1);
    int from = line.offsetByCodePoints(0, scalar.at().column() - 1);
    int to = line.offsetByCodePoints(0, scalar.at().endColumn() - 1);
    line.replace(from, to, scalar.quoted() ? '"' + value + '"' : value);
  }
}
