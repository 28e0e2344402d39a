package baysheet.yaml;

import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads a map by its keys. Remembers which keys were asked for, so that {@link #done} can name the
 * ones nobody knows, and whether a required one failed, so that {@link #build} knows whether there
 * is anything to build. Never throws on what people write.
 */
public final class MapReader {
  private final Mapping mapping;
  private final String whatItIs;
  private final Problems problems;
  private final Map<String, Entry> entries = new LinkedHashMap<>();
  private final Set<String> known = new LinkedHashSet<>();
  private final Set<String> free = new LinkedHashSet<>();
  private final Set<String> missing = new LinkedHashSet<>();
  private boolean complete = true;

  private MapReader(Mapping mapping, String whatItIs, Problems problems) {
    this.mapping = mapping;
    this.whatItIs = whatItIs;
    this.problems = problems;
    mapping.entries().forEach(entry -> entries.put(entry.key().text(), entry));
  }

  /**
   * A reader of this node, or a problem when it is no map.
   *
   * @param whatItIs what the map stands for, with its article: {@code a bay}
   */
  public static Optional<MapReader> of(Node node, String whatItIs, Problems problems) {
    if (node instanceof Mapping mapping) {
      return Optional.of(new MapReader(mapping, whatItIs, problems));
    }
    problems.add(
        node.isEmpty()
            ? YamlSentences.nothingWritten(node.at())
            : YamlSentences.notAMap(whatItIs, node));
    return Optional.empty();
  }

  /** The value of a key that may be left out; a key without a value is a problem. */
  public Optional<Node> optional(String key) {
    known.add(key);
    return Optional.ofNullable(entries.get(key)).flatMap(this::written);
  }

  /** The value of a key that must be there; {@link #done} reports it when it is not. */
  public Optional<Node> required(String key) {
    if (!has(key)) {
      missing.add(key);
    }
    return needed(optional(key));
  }

  /** The value of a key that may be left out; empty also when it could not be read. */
  public <T> Optional<Located<T>> optional(String key, ValueReader<T> reader) {
    return optional(key).flatMap(node -> reader.read(node, problems));
  }

  /** The value of a key that must be there; when it cannot be read nothing will be built. */
  public <T> Optional<Located<T>> required(String key, ValueReader<T> reader) {
    return needed(required(key).flatMap(node -> reader.read(node, problems)));
  }

  /** The items of a list that may be left out: no key, no items. */
  public <T> List<Located<T>> list(String key, ValueReader<T> item) {
    return optional(key, ValueReaders.list(item)).map(Located::value).orElse(List.of());
  }

  /** The same, where a single item may stand without the list's brackets. */
  public <T> List<Located<T>> listOrOne(String key, ValueReader<T> item) {
    return optional(key, ValueReaders.listOrOne(item)).map(Located::value).orElse(List.of());
  }

  /** The entries of a map with free keys that may be left out: no key, no entries. */
  public <K, V> List<Keyed<K, V>> entries(
      String key, Function<String, ParseOutcome<K>> keys, ValueReader<V> values) {
    return optional(key, ValueReaders.map(YamlSentences.underKey(key), keys, values))
        .map(Located::value)
        .orElse(List.of());
  }

  /** A yes or no that may be left out. */
  public boolean yesNo(String key, boolean ifLeftOut) {
    return optional(key, ValueReaders.yesNo()).map(Located::value).orElse(ifLeftOut);
  }

  /** The entries whose keys were not asked for so far; from here on they count as asked for. */
  public List<Entry> rest() {
    List<Entry> rest = new ArrayList<>();
    for (Entry entry : mapping.entries()) {
      if (!known.contains(entry.key().text()) && free.add(entry.key().text())) {
        rest.add(entry);
      }
    }
    return List.copyOf(rest);
  }

  /** The same, both sides read; entries that cannot be read are reported and left out. */
  public <K, V> List<Keyed<K, V>> rest(
      Function<String, ParseOutcome<K>> keys, ValueReader<V> values) {
    Map<K, Keyed<K, V>> read = new LinkedHashMap<>();
    for (Entry entry : rest()) {
      keyed(entry, keys, values).ifPresent(keyed -> addOnce(read, keyed));
    }
    return List.copyOf(read.values());
  }

  private <K, V> Optional<Keyed<K, V>> keyed(
      Entry entry, Function<String, ParseOutcome<K>> keys, ValueReader<V> values) {
    Optional<Located<K>> key = ValueReaders.parsed(entry.key(), keys, problems);
    Optional<Located<V>> value = written(entry).flatMap(node -> values.read(node, problems));
    return key.flatMap(k -> value.map(v -> new Keyed<>(k, v)));
  }

  /** Two spellings of one key, as {@code 24 mm} and {@code "24 mm "}, are one key written twice. */
  private <K, V> void addOnce(Map<K, Keyed<K, V>> read, Keyed<K, V> keyed) {
    Keyed<K, V> first = read.putIfAbsent(keyed.key().value(), keyed);
    if (first != null) {
      problems.add(YamlSentences.sameKey(keyed.key().at(), first.key().at()));
    }
  }

  /** Whether the key is written, with or without a value. */
  public boolean has(String key) {
    return entries.containsKey(key);
  }

  /** Where the key is written. */
  public Optional<Span> keyAt(String key) {
    return Optional.ofNullable(entries.get(key)).map(entry -> entry.key().at());
  }

  /** Reports it when more than one of these keys is written. */
  public void atMostOneOf(List<String> keys) {
    List<Span> written = keys.stream().flatMap(key -> keyAt(key).stream()).sorted().toList();
    if (written.size() > 1) {
      problems.add(YamlSentences.keysClash(whatItIs, keys, written));
    }
  }

  /** The whole map. */
  public Span at() {
    return mapping.at();
  }

  /** The map's first key: where to point when something is not there. */
  public Span start() {
    return mapping.start();
  }

  /** Where this reader reports what is wrong. */
  public Problems problems() {
    return problems;
  }

  /**
   * Reports the keys that nobody asked for, and the required ones that are not there under another
   * spelling either. To be called after the last key was asked for.
   */
  public void done() {
    List<Problem> unknown =
        mapping.entries().stream()
            .filter(entry -> !known.contains(entry.key().text()))
            .filter(entry -> !free.contains(entry.key().text()))
            .map(entry -> YamlSentences.unknownKey(whatItIs, entry, known))
            .toList();
    unknown.forEach(key -> key.nearest().ifPresent(missing::remove));
    reportMissing();
    unknown.forEach(problems::add);
  }

  /** Also for a reader that gave up before it was done. */
  void reportMissing() {
    missing.forEach(key -> problems.add(YamlSentences.missingKey(whatItIs, key, mapping.start())));
    missing.clear();
  }

  /**
   * Ends the reading: {@link #done}, then the record, unless a required value is not there. An
   * optional value that could not be read counts as left out here; its problem is an error, and
   * stops the job.
   */
  public <T> Optional<T> build(Supplier<T> record) {
    done();
    return complete ? Optional.of(record.get()) : Optional.empty();
  }

  private Optional<Node> written(Entry entry) {
    if (entry.value().isEmpty()) {
      problems.add(YamlSentences.emptyValue(entry.key()));
      return Optional.empty();
    }
    return Optional.of(entry.value());
  }

  private <T> Optional<T> needed(Optional<T> value) {
    complete &= value.isPresent();
    return value;
  }
}
