package baysheet.bench;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The words of a page by its structure, without places, as other ways to a page take them.
 *
 * @param words what stands in it itself, empty where only its children have words
 */
record Outline(Tag.Type type, int span, String words, List<Outline> children) {

  static Outline of(Page page) {
    Map<Integer, List<String>> texts = new TreeMap<>();
    for (Item item : page.items()) {
      if (item instanceof Item.Glyphs glyphs) {
        texts.computeIfAbsent(glyphs.element(), key -> new ArrayList<>()).add(glyphs.text());
      }
    }
    return of(page.structure(), texts);
  }

  private static Outline of(Page.Element element, Map<Integer, List<String>> texts) {
    return new Outline(
        element.tag().type(),
        element.tag().span(),
        String.join(" ", texts.getOrDefault(element.id(), List.of())),
        element.children().stream().map(child -> of(child, texts)).toList());
  }

  /** Everything in it, in reading order. */
  String allWords() {
    return (words
            + " "
            + children.stream().map(Outline::allWords).collect(Collectors.joining(" ")))
        .strip();
  }

  /** The list with the most entries below: the sequence, which is set in columns. */
  Optional<Outline> longestList() {
    Optional<Outline> own = type == Tag.Type.L ? Optional.of(this) : Optional.empty();
    return java.util.stream.Stream.concat(
            own.stream(), children.stream().flatMap(child -> child.longestList().stream()))
        .max(Comparator.comparingInt(list -> list.children().size()));
  }

  /** The rows of a table, however they are grouped. */
  List<Outline> rows() {
    if (type == Tag.Type.TR) {
      return List.of(this);
    }
    return children.stream().flatMap(child -> child.rows().stream()).toList();
  }
}
