package baysheet.resolve;

import baysheet.books.Catalogue;
import baysheet.books.Fastener;
import baysheet.books.FastenerCheck;
import baysheet.books.FastenerText;
import baysheet.books.Job;
import baysheet.books.Place;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Tightening;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which entry of the book a fastener's name means at a place: it is looked up there, then at what
 * contains the place; the group with the fewest places wins; the job's override comes last.
 */
final class FastenerRule {
  private final List<Job.Replacement> overrides;
  private final String job;
  private final Catalogue catalogue;
  private final Problems problems;
  private final Set<String> unknown = new TreeSet<>();
  private final Set<Open> open = new LinkedHashSet<>();

  /** The book's entries by name, whatever their places. */
  private final Map<String, List<Map.Entry<EffectiveBook.Key, EffectiveBook.Merged>>> named =
      new HashMap<>();

  /** A figure without which there is no sheet, where it is written {@code unknown}. */
  private record Open(String fastener, Located<String> key) {}

  /**
   * The fasteners of a book.
   *
   * @param overrides what the job puts in place of the book's figures
   * @param job its number
   */
  FastenerRule(
      EffectiveBook book,
      List<Job.Replacement> overrides,
      String job,
      Catalogue catalogue,
      Problems problems) {
    this.overrides = List.copyOf(overrides);
    this.job = job;
    this.catalogue = catalogue;
    this.problems = problems;
    for (Map.Entry<EffectiveBook.Key, EffectiveBook.Merged> entry : book.entries().entrySet()) {
      named.computeIfAbsent(entry.getKey().name(), key -> new ArrayList<>()).add(entry);
    }
  }

  /**
   * The figures of bound fasteners without which no sheet can be made: {@code count of wheel-nut}.
   */
  Set<String> unknown() {
    return unknown;
  }

  /** Where the book has this name, seen from a place; empty when it has it nowhere around. */
  Optional<Place> home(String name, Place from) {
    if (!named.containsKey(name)) {
      return Optional.empty();
    }
    return from.outward().stream().filter(place -> !candidates(name, place).isEmpty()).findFirst();
  }

  /** The fastener at its home; empty when its entry is not whole, or with a problem not clear. */
  Optional<Bound> bind(ItemAt item, Span asked) {
    List<Map.Entry<EffectiveBook.Key, EffectiveBook.Merged>> found =
        candidates(item.item(), item.place());
    if (found.size() > 1 && places(found.get(0)) == places(found.get(1))) {
      problems.add(ambiguous(item, asked, found));
      return Optional.empty();
    }
    List<Job.Replacement> changes = overrides(item);
    if (changes.size() > 1 && reach(changes.get(0)) == reach(changes.get(1))) {
      problems.add(ambiguous(item, asked, changes.get(0), changes.get(1)));
      return Optional.empty();
    }
    return bind(item, found.get(0).getValue());
  }

  private List<Map.Entry<EffectiveBook.Key, EffectiveBook.Merged>> candidates(
      String name, Place place) {
    return named.getOrDefault(name, List.of()).stream()
        .filter(entry -> entry.getKey().group().contains(place))
        .sorted(Comparator.comparingInt(FastenerRule::places))
        .toList();
  }

  private static int places(Map.Entry<EffectiveBook.Key, EffectiveBook.Merged> entry) {
    return entry.getKey().group().places().size();
  }

  private static Problem ambiguous(
      ItemAt item, Span asked, List<Map.Entry<EffectiveBook.Key, EffectiveBook.Merged>> found) {
    String groups = found.get(0).getKey().group() + " and " + found.get(1).getKey().group();
    return Problem.of(
            ProblemCode.AMBIGUOUS_PLACE,
            asked,
            "%s at %s is listed under both %s, and neither is more specific"
                .formatted(item.item(), item.place(), groups))
        .seeAlso("first entry", found.get(0).getValue().name().at())
        .seeAlso("second entry", found.get(1).getValue().name().at());
  }

  private static Problem ambiguous(
      ItemAt item, Span asked, Job.Replacement one, Job.Replacement other) {
    return Problem.of(
            ProblemCode.AMBIGUOUS_PLACE,
            asked,
            "%s at %s is overridden at both %s and %s"
                .formatted(item.item(), item.place(), one.place(), other.place()))
        .seeAlso("first override", one.item().at())
        .seeAlso("second override", other.item().at());
  }

  private Optional<Bound> bind(ItemAt item, EffectiveBook.Merged merged) {
    List<Located<String>> chain = new ArrayList<>();
    FastenerText text = merged.text();
    Optional<Job.Replacement> override = overrides(item).stream().findFirst();
    if (override.isPresent()) {
      Job.Replacement change = override.get();
      text = change.values().over(text);
      chain.add(new Located<>("override of job " + job, change.item().at()));
    }
    chain.addAll(merged.chain());
    // Each file was checked alone; a count and an order may come from two.
    FastenerCheck.check(text, problems);
    Optional<Catalogue.Item> entry = Optional.ofNullable(catalogue.items().get(item.item()));
    FastenerText written = text;
    Optional<Located<FastenerText>> usual =
        entry.flatMap(Catalogue.Item::usual).filter(it -> written.lacks(it.value()));
    if (usual.isPresent()) {
      text = written.over(usual.get().value());
      chain.add(new Located<>("usual for " + item.item(), usual.get().at()));
    }
    List<Located<String>> missing = text.pieces().missing().toList();
    if (!missing.isEmpty()) {
      for (Located<String> key : missing) {
        unknown.add(key.value() + " of " + item.item());
        open.add(new Open(item.item(), key));
      }
      return Optional.empty();
    }
    Optional<Fastener> whole = text.complete(merged.name());
    if (whole.isEmpty()) {
      // Reported already, with the whole book.
      return Optional.empty();
    }
    return Optional.of(
        new Bound.OfBook(
            item,
            entry,
            whole.get(),
            override.isPresent(),
            replaced(override, merged),
            source(override, merged),
            chain));
  }

  /** The book's own torque, where it has one and the job gives another. */
  private static Optional<Tightening> replaced(
      Optional<Job.Replacement> override, EffectiveBook.Merged merged) {
    return override
        .filter(change -> change.values().tightening().isPresent())
        .flatMap(change -> merged.text().tightening())
        .map(Located::value);
  }

  /**
   * A count or a head decides what a sheet lists, and cannot be left open as a torque can. What a
   * file lacks is one problem, so that it is filled in one go.
   */
  void reportUnknown() {
    Map<String, List<Open>> files = new LinkedHashMap<>();
    open.stream()
        .sorted(Comparator.comparingInt(it -> it.key().at().line()))
        .forEach(
            it ->
                files
                    .computeIfAbsent(it.key().at().source().name(), key -> new ArrayList<>())
                    .add(it));
    files.values().forEach(all -> problems.add(unknown(all)));
  }

  private static Problem unknown(List<Open> all) {
    Map<String, List<String>> keys = new LinkedHashMap<>();
    Map<String, List<String>> lines = new LinkedHashMap<>();
    for (Open it : all) {
      String key = it.key().value();
      keys.computeIfAbsent(it.fastener(), name -> new ArrayList<>()).add("the " + key);
      lines.computeIfAbsent(key, name -> new ArrayList<>()).add("" + it.key().at().line());
    }
    Map<String, List<String>> names = new LinkedHashMap<>();
    keys.forEach(
        (name, some) ->
            names.computeIfAbsent(String.join(" and ", some), what -> new ArrayList<>()).add(name));
    String what =
        names.entrySet().stream()
            .map(it -> it.getKey() + " of " + String.join(", ", it.getValue()))
            .collect(Collectors.joining("; "));
    boolean one = all.size() == 1;
    return Problem.of(
            ProblemCode.UNKNOWN_FIGURE,
            all.get(0).key().at(),
            "%s %s unknown, and the work needs %s"
                .formatted(what, one ? "is" : "are", one ? "it" : "them"))
        .expecting(one ? words(all.get(0).key().value()) : byLines(lines));
  }

  /** Joins the words for keys that stand in the same lines. */
  private static String byLines(Map<String, List<String>> linesByKey) {
    Map<String, List<String>> words = new LinkedHashMap<>();
    linesByKey.forEach(
        (key, lines) ->
            words.computeIfAbsent(inLines(lines), any -> new ArrayList<>()).add(words(key)));
    return words.entrySet().stream()
        .map(it -> it.getKey() + String.join(", and ", it.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static String inLines(List<String> lines) {
    return "in line" + (lines.size() == 1 ? " " : "s ") + String.join(", ", lines) + ", ";
  }

  private static String words(String key) {
    return key.equals("count")
        ? "how many there are at one place, as counted on the vehicle or in its data"
        : "the size and form of the head, such as hex 17 mm or six-lobe T30";
  }

  /** What an entry lacks that every fastener needs. */
  static Problem incomplete(String what, EffectiveBook.Merged merged) {
    String lacks = merged.text().pieces().count().isEmpty() ? "count" : "torque";
    return Problem.of(ProblemCode.MISSING_KEY, merged.name().at(), what + " has no " + lacks)
        .expecting("the key " + lacks + ", here or in the book under like:");
  }

  /**
   * Where the values come from: with a new figure from the override; where that leaves the figure,
   * from both.
   */
  private static String source(Optional<Job.Replacement> override, EffectiveBook.Merged merged) {
    String book =
        merged
            .text()
            .source()
            .or(() -> merged.source().origin().source())
            .map(Located::value)
            .orElse("not stated");
    return override
        .map(
            change ->
                change.values().tightening().isPresent()
                    ? change.source().value()
                    : book + "; " + change.source().value())
        .orElse(book);
  }

  /** The overrides that hold at an item, the one that reaches least far first. */
  private List<Job.Replacement> overrides(ItemAt item) {
    return overrides.stream()
        .filter(change -> change.item().value().equals(item.item()))
        .filter(change -> covers(change.place(), item.place()))
        .sorted(Comparator.comparingInt(FastenerRule::reach))
        .toList();
  }

  private static int reach(Job.Replacement change) {
    return change.place().wheels().size();
  }

  /** Whether an override written for one place holds at another. */
  static boolean covers(Place written, Place at) {
    return written == at || written.wheels().contains(at);
  }
}
