package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.yaml.Keyed;
import baysheet.yaml.MapReader;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.Sequence;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;

/** What the readers share: words with a meaning, short names, maps by name. */
final class Words {
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9]++(?:-[A-Za-z0-9]++)*+");

  private Words() {}

  /** One of some values by its word. */
  static <T> ValueReader<T> oneOf(List<T> values, Function<T, String> word) {
    Map<String, T> spellings = new LinkedHashMap<>();
    values.forEach(value -> spellings.put(word.apply(value), value));
    return ValueReaders.oneOf(spellings);
  }

  static ValueReader<Moment> moment() {
    return oneOf(List.of(Moment.values()), Moment::word);
  }

  /** The names of one list, then those of another that it does not have. */
  static List<Located<String>> both(List<Located<String>> one, List<Located<String>> other) {
    List<Located<String>> both = new ArrayList<>(one);
    other.stream()
        .filter(name -> one.stream().noneMatch(it -> it.value().equals(name.value())))
        .forEach(both::add);
    return List.copyOf(both);
  }

  static ValueReader<Height> height() {
    return oneOf(List.of(Height.values()), Height::word);
  }

  /** What a garage calls a bay, a person or a job: {@code 1}, {@code floor}, {@code T1}. */
  static ValueReader<String> id() {
    return ValueReaders.value(Words::idOf);
  }

  /** The same as {@link #id()}, for keys. */
  static ParseOutcome<String> idOf(String text) {
    return isId(text) ? ParseOutcome.ok(text) : BookSentences.notAnId(text);
  }

  static boolean isId(String text) {
    return ID.matcher(text).matches();
  }

  /**
   * A value that must be there. Where it is not, something stands in for it, so that all the other
   * keys are read and reported as well; {@link MapReader#build} then drops the record.
   */
  static <T> Located<T> needed(MapReader map, String key, ValueReader<T> reader, T standIn) {
    return map.required(key, reader).orElseGet(() -> unread(map, standIn));
  }

  /** What stands in for a value that could not be read. */
  static <T> Located<T> unread(MapReader map, T standIn) {
    return new Located<>(standIn, map.at());
  }

  /** The values of a map, each with the place where it stands. */
  static <K, V> Map<K, Located<V>> located(List<Keyed<K, V>> entries) {
    Map<K, Located<V>> values = new LinkedHashMap<>();
    entries.forEach(entry -> values.put(entry.key().value(), entry.value()));
    return values;
  }

  /** A value that wants its key to be whole. */
  @FunctionalInterface
  interface Unnamed<T> {
    T named(Located<String> name);
  }

  /** The values of a map, each with its key for a name. */
  static <T> Map<String, T> named(List<Keyed<String, Unnamed<T>>> entries) {
    Map<String, T> values = new LinkedHashMap<>();
    for (Keyed<String, Unnamed<T>> entry : entries) {
      values.put(entry.key().value(), entry.value().value().named(entry.key()));
    }
    return values;
  }

  /**
   * A list of which every item could be read, or nothing: with one left out, a list of stages or
   * positions would mean something else.
   */
  static <T> ValueReader<List<Located<T>>> everyOne(ValueReader<T> item) {
    return (node, problems) ->
        ValueReaders.list(item)
            .read(node, problems)
            .filter(
                list -> node instanceof Sequence all && list.value().size() == all.items().size());
  }

  /** Reports what stands more than once in a list. */
  static <T> List<Located<T>> once(List<Located<T>> list, Problems problems) {
    Map<T, Located<T>> seen = new LinkedHashMap<>();
    for (Located<T> value : list) {
      Located<T> first = seen.putIfAbsent(value.value(), value);
      if (first != null) {
        problems.add(BookSentences.listedTwice(value, first));
      }
    }
    return list;
  }

  /** Reports when a file holds something else than its name says. */
  static void sameAsFile(Located<String> name, String fileName, Problems problems) {
    if (!name.value().equals(fileName)) {
      problems.add(BookSentences.nameDiffers(name, fileName));
    }
  }
}
