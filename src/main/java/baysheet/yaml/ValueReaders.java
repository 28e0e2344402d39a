package baysheet.yaml;

import baysheet.report.Located;
import baysheet.report.Problems;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The readers of values. What a text means is decided by what the field expects, from the raw text:
 * quoted or not makes no difference.
 */
public final class ValueReaders {
  /** Nine digits: the most that always fit an {@code int}. */
  private static final Pattern WHOLE = Pattern.compile("0|[1-9][0-9]{0,8}");

  private static final Pattern DAY = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  /** Years in which anything a garage writes down can have been, or will be. */
  private static final int EARLIEST = 1950;

  private static final int LATEST = 2099;

  private ValueReaders() {}

  /** Any text that is not blank, without the spaces around it. */
  public static ValueReader<String> text() {
    return value(ParseOutcome::ok);
  }

  /** A name in small letters, digits and single hyphens: {@code front-left}. */
  public static ValueReader<String> name() {
    return value(ValueReaders::nameOf);
  }

  /** The same as {@link #name()}, as a hook for {@link #map}. */
  public static ParseOutcome<String> nameOf(String text) {
    return isName(text) ? ParseOutcome.ok(text) : YamlSentences.notAName(text);
  }

  /** A loop, not a pattern: half of all that a shop writes are names, and they are read first. */
  static boolean isName(String text) {
    boolean hyphenMay = false;
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      boolean hyphen = character == '-';
      if (hyphen ? !hyphenMay : !isSmallLetterOrDigit(character)) {
        return false;
      }
      hyphenMay = !hyphen;
    }
    return hyphenMay;
  }

  private static boolean isSmallLetterOrDigit(char character) {
    return character >= 'a' && character <= 'z' || character >= '0' && character <= '9';
  }

  /** {@code 5}; neither {@code 05} nor {@code 5.0}. */
  public static ValueReader<Integer> wholeNumber(int least, int most) {
    return value(text -> wholeNumberOf(text, least, most));
  }

  private static ParseOutcome<Integer> wholeNumberOf(String text, int least, int most) {
    if (!WHOLE.matcher(text).matches()) {
      return YamlSentences.notANumber(text, least, most);
    }
    int number = Integer.parseInt(text);
    return number < least || number > most
        ? YamlSentences.outOfRange(text, least, most)
        : ParseOutcome.ok(number);
  }

  /** {@code yes}, {@code no}, {@code true} or {@code false}, in small letters. */
  public static ValueReader<Boolean> yesNo() {
    return value(ValueReaders::yesNoOf);
  }

  private static ParseOutcome<Boolean> yesNoOf(String text) {
    if (text.equals("yes") || text.equals("true")) {
      return ParseOutcome.ok(true);
    }
    return text.equals("no") || text.equals("false")
        ? ParseOutcome.ok(false)
        : YamlSentences.notYesNo(text);
  }

  /** A day of the calendar, {@code 2026-03-02} (ISO 8601). */
  public static ValueReader<LocalDate> date() {
    return value(ValueReaders::dateOf);
  }

  /** The same as {@link #date()}, for names of folders and texts that may be something else. */
  public static ParseOutcome<LocalDate> dateOf(String text) {
    if (!DAY.matcher(text).matches()) {
      return YamlSentences.notADate(text);
    }
    try {
      LocalDate day = LocalDate.parse(text);
      return EARLIEST <= day.getYear() && day.getYear() <= LATEST
          ? ParseOutcome.ok(day)
          : YamlSentences.notOfThisTime(text, EARLIEST, LATEST);
    } catch (DateTimeParseException noSuchDay) {
      return YamlSentences.noSuchDay(text);
    }
  }

  /**
   * One of some spellings, exactly as written; the map's order is the order in which a problem
   * lists them.
   */
  public static <T> ValueReader<T> oneOf(Map<String, T> spellings) {
    Map<String, T> known = new LinkedHashMap<>(spellings);
    return value(
        text ->
            known.containsKey(text)
                ? ParseOutcome.ok(known.get(text))
                : YamlSentences.notOneOf(text, known.keySet()));
  }

  /** Any single value that {@code parse} accepts; it is given the text without spaces around it. */
  public static <T> ValueReader<T> value(Function<String, ParseOutcome<T>> parse) {
    return (node, problems) ->
        scalar(node, problems).flatMap(scalar -> parsed(scalar, parse, problems));
  }

  private static Optional<Scalar> scalar(Node node, Problems problems) {
    if (node instanceof Scalar scalar && !scalar.text().isBlank()) {
      return Optional.of(scalar);
    }
    problems.add(
        node instanceof Scalar
            ? YamlSentences.nothingWritten(node.at())
            : YamlSentences.wrongShape("a single value", node));
    return Optional.empty();
  }

  static <T> Optional<Located<T>> parsed(
      Scalar scalar, Function<String, ParseOutcome<T>> parse, Problems problems) {
    return parse
        .apply(scalar.text().strip())
        .fold(
            value -> Optional.of(new Located<>(value, scalar.at())),
            bad -> {
              problems.add(YamlSentences.of(bad, scalar.at()));
              return Optional.empty();
            });
  }

  /** A list; items that cannot be read are reported and left out. */
  public static <T> ValueReader<List<Located<T>>> list(ValueReader<T> item) {
    return (node, problems) -> {
      if (node instanceof Sequence sequence) {
        return Optional.of(new Located<>(items(sequence, item, problems), node.at()));
      }
      problems.add(
          node.isEmpty()
              ? YamlSentences.nothingWritten(node.at())
              : YamlSentences.wrongShape("a list", node));
      return Optional.empty();
    };
  }

  private static <T> List<Located<T>> items(
      Sequence sequence, ValueReader<T> item, Problems problems) {
    List<Located<T>> read = new ArrayList<>();
    for (Node node : sequence.items()) {
      item.read(node, problems).ifPresent(read::add);
    }
    return List.copyOf(read);
  }

  /** A list, or one item without the list's brackets. */
  public static <T> ValueReader<List<Located<T>>> listOrOne(ValueReader<T> item) {
    ValueReader<List<Located<T>>> list = list(item);
    return (node, problems) ->
        node instanceof Sequence
            ? list.read(node, problems)
            : item.read(node, problems).map(one -> new Located<>(List.of(one), one.at()));
  }

  /** What is a single value is read one way, a list or a map another. */
  public static <T> ValueReader<T> scalarOr(
      ValueReader<? extends T> single, ValueReader<? extends T> other) {
    return (node, problems) -> widened(node instanceof Scalar ? single : other, node, problems);
  }

  /** A list is read one way, a single value or a map another. */
  public static <T> ValueReader<T> listOr(
      ValueReader<? extends T> list, ValueReader<? extends T> other) {
    return (node, problems) -> widened(node instanceof Sequence ? list : other, node, problems);
  }

  private static <T> Optional<Located<T>> widened(
      ValueReader<? extends T> reader, Node node, Problems problems) {
    return reader.<T>map(value -> value).read(node, problems);
  }

  /**
   * A map whose keys are chosen by the writer. Entries that cannot be read are reported and left
   * out; two keys that mean the same are a problem.
   *
   * @param whatItIs with its article: {@code a map of bays}
   */
  public static <K, V> ValueReader<List<Keyed<K, V>>> map(
      String whatItIs, Function<String, ParseOutcome<K>> key, ValueReader<V> value) {
    return record(whatItIs, map -> Optional.of(map.rest(key, value)));
  }

  /**
   * A map with known keys. {@code build} asks the reader it is given for its keys, and ends with
   * {@link MapReader#build}.
   *
   * @param whatItIs with its article: {@code a bay}
   */
  public static <T> ValueReader<T> record(String whatItIs, Function<MapReader, Optional<T>> build) {
    return (node, problems) ->
        MapReader.of(node, whatItIs, problems)
            .flatMap(map -> built(map, build))
            .map(value -> new Located<>(value, node.at()));
  }

  private static <T> Optional<T> built(MapReader map, Function<MapReader, Optional<T>> build) {
    Optional<T> built = build.apply(map);
    map.reportMissing();
    return built;
  }
}
