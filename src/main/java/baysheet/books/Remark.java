package baysheet.books;

import baysheet.yaml.MapReader;
import baysheet.yaml.ValueReaders;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What a book says of a fastener in words: its torque row prints it, the record keeps it. */
public record Remark(Key key, String text) {
  /** For the technician; it says by itself what it is about. */
  public static final Key NOTE = new Key("note", "note", "", "");

  private static final Pattern HOLDER =
      Pattern.compile("^hold [^:]+: (.+?)(?:,(?!\\d)|[;(]|\\.(?!\\d)|$)");

  /** All there are, in the order in which a row prints them. */
  static final List<Key> KEYS = List.of(NOTE);

  /**
   * A key of a fastener.
   *
   * @param word as a book writes it
   * @param recorded as the record writes it
   * @param british what a sheet prints before the text: {@code "colour: "}
   * @param american the same in American terms
   */
  public record Key(String word, String recorded, String british, String american) {}

  /** The tool of a note such as {@code hold nut: 21 mm spanner}. */
  public Optional<String> holder() {
    Matcher held = HOLDER.matcher(text);
    return Optional.of(held)
        .filter(it -> key.equals(NOTE) && it.find())
        .map(it -> it.group(1).strip());
  }

  static List<Remark> read(MapReader map) {
    return KEYS.stream()
        .flatMap(
            key ->
                map.optional(key.word, ValueReaders.text()).stream()
                    .map(it -> new Remark(key, it.value())))
        .toList();
  }

  /** One of each key: the book's own, or else that of the book below it. */
  static List<Remark> over(List<Remark> own, List<Remark> below) {
    return KEYS.stream()
        .flatMap(
            key ->
                Stream.of(own, below)
                    .flatMap(List::stream)
                    .filter(it -> it.key.equals(key))
                    .limit(1))
        .toList();
  }
}
