package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.Quantity;
import baysheet.yaml.Keyed;
import baysheet.yaml.MapReader;
import baysheet.yaml.Node;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a spec book. */
public final class SpecBookReader {
  private static final Pattern YEARS = Pattern.compile("([0-9]{4})(?:\\.\\.([0-9]{4}))?");

  private static final ValueReader<SpecBook> BOOK =
      ValueReaders.record("a spec book", SpecBookReader::book);
  private static final ValueReader<SpecBook.Checked> CHECKED =
      ValueReaders.record("a check of the book", SpecBookReader::checked);
  private static final ValueReader<Words.Unnamed<SpecBook.Fluid>> FLUID =
      ValueReaders.record("a fluid", SpecBookReader::fluid);

  private static final ValueReader<SpecBook.Seen> SEEN =
      ValueReaders.record("something that was found", SpecBookReader::seen);

  private SpecBookReader() {}

  /** The book; empty when a problem was added that leaves none. */
  public static Optional<SpecBook> read(Node node, Problems problems) {
    Optional<SpecBook> book = BOOK.read(node, problems).map(Located::value);
    book.ifPresent(it -> notLikeItself(it, problems));
    return book;
  }

  /** The same, and reports when the book is not named as its file is, without {@code .yaml}. */
  public static Optional<SpecBook> read(Node node, String fileName, Problems problems) {
    Optional<SpecBook> book = read(node, problems);
    book.ifPresent(it -> Words.sameAsFile(it.vehicle(), fileName, problems));
    return book;
  }

  /** Where another book is named, everything may be left out that it has. */
  private static Optional<SpecBook> book(MapReader map) {
    boolean whole = !map.has("like");
    SpecBook book =
        new SpecBook(
            Words.needed(map, "vehicle", ValueReaders.name(), ""),
            new SpecBook.Model(
                text(map, "name", whole),
                map.optional("years", ValueReaders.value(SpecBookReader::years))),
            map.optional("like", ValueReaders.name()),
            new SpecBook.Origin(
                text(map, "source", whole), map.optional("checked", CHECKED).map(Located::value)),
            mass(map),
            traits(map),
            new SpecBook.Points(
                Words.located(map.entries("supports", PlaceText::axle, ValueReaders.text())),
                Words.located(map.entries("jacking", PlaceText::axle, ValueReaders.text()))),
            Words.named(map.entries("fluids", ValueReaders::nameOf, FLUID)),
            fasteners(map, whole),
            partNumbers(map),
            map.list("seen", SEEN).stream().map(Located::value).toList(),
            map.at());
    return map.build(() -> book);
  }

  private static SpecBook.Traits traits(MapReader map) {
    List<Located<String>> own = Words.once(map.list("traits", ValueReaders.name()), map.problems());
    List<Located<String>> without =
        Words.once(map.listOrOne("without-traits", ValueReaders.name()), map.problems());
    for (Located<String> name : without) {
      own.stream()
          .filter(trait -> trait.value().equals(name.value()))
          .forEach(trait -> map.problems().add(BookSentences.absentAndGiven(name, trait)));
    }
    return new SpecBook.Traits(own, without);
  }

  private static Optional<Located<String>> text(MapReader map, String key, boolean needed) {
    return needed ? map.required(key, ValueReaders.text()) : map.optional(key, ValueReaders.text());
  }

  private static ParseOutcome<String> years(String text) {
    Matcher years = YEARS.matcher(text);
    boolean good =
        years.matches()
            && (years.group(2) == null || years.group(1).compareTo(years.group(2)) <= 0);
    return good ? ParseOutcome.ok(text) : BookSentences.notYears(text);
  }

  private static Optional<SpecBook.Checked> checked(MapReader map) {
    Optional<Located<String>> by = map.required("by", Words.id());
    Optional<Located<LocalDate>> on = map.required("on", ValueReaders.date());
    return map.build(() -> new SpecBook.Checked(by.get(), on.get()));
  }

  private static SpecBook.Mass mass(MapReader map) {
    map.atMostOneOf(List.of("front-share", "mass-behind-front"));
    ValueReader<Quantity> length = FigureReaders.quantity(QuantityKey.WHEELBASE);
    Optional<Located<Quantity>> behindFront =
        map.optional("mass-behind-front", FigureReaders.quantity(QuantityKey.MASS_BEHIND_FRONT));
    Optional<Located<Quantity>> wheelbase =
        map.has("mass-behind-front")
            ? map.required("wheelbase", length)
            : map.optional("wheelbase", length);
    behindFront.ifPresent(centre -> inside(centre, wheelbase, map.problems()));
    return new SpecBook.Mass(
        map.optional("kerb-mass", FigureReaders.quantity(QuantityKey.KERB_MASS)),
        map.optional("front-share", FigureReaders.quantity(QuantityKey.FRONT_SHARE)),
        wheelbase,
        behindFront);
  }

  private static void inside(
      Located<Quantity> centre, Optional<Located<Quantity>> wheelbase, Problems problems) {
    wheelbase
        .filter(length -> !centre.value().isBelow(length.value()))
        .ifPresent(
            length -> problems.add(BookSentences.massOutsideWheelbase(centre.at(), length.at())));
  }

  private static Optional<Words.Unnamed<SpecBook.Fluid>> fluid(MapReader map) {
    Optional<Located<Quantity>> capacity =
        map.optional("capacity", FigureReaders.quantity(QuantityKey.FLUID_CAPACITY));
    Optional<Located<String>> grade = map.optional("grade", ValueReaders.text());
    return map.build(() -> name -> new SpecBook.Fluid(name, capacity, grade));
  }

  private static Map<String, SpecBook.PartNumber> partNumbers(MapReader map) {
    Map<String, SpecBook.PartNumber> numbers = new LinkedHashMap<>();
    for (Keyed<String, String> entry :
        map.entries("part-numbers", ParseOutcome::ok, ValueReaders.text())) {
      numbers.put(entry.key().value(), new SpecBook.PartNumber(entry.key(), entry.value()));
    }
    return numbers;
  }

  private static Optional<SpecBook.Seen> seen(MapReader map) {
    Optional<Located<LocalDate>> on = map.required("on", ValueReaders.date());
    Optional<Located<String>> job = map.optional("job", ValueReaders.text());
    Optional<Located<String>> what = map.required("what", ValueReaders.text());
    return map.build(() -> new SpecBook.Seen(on.get(), job, what.get()));
  }

  private static List<SpecBook.Group> fasteners(MapReader map, boolean whole) {
    ValueReader<FastenerText> fastener = whole ? FastenerReader.WHOLE : FastenerReader.PARTIAL;
    ValueReader<Function<Located<PlaceGroup>, SpecBook.Group>> group =
        ValueReaders.record(
            "the fasteners of a place", inside -> Optional.of(group(inside, fastener)));
    return map.entries("fasteners", PlaceText::group, group).stream()
        .map(entry -> entry.value().value().apply(entry.key()))
        .toList();
  }

  /** What stands under a place; it wants its key for that. */
  private static Function<Located<PlaceGroup>, SpecBook.Group> group(
      MapReader map, ValueReader<FastenerText> fastener) {
    List<Located<String>> absent =
        Words.once(map.listOrOne("absent", ValueReaders.name()), map.problems());
    Map<String, SpecBook.Entry> fasteners = entries(map.rest(ValueReaders::nameOf, fastener));
    for (Located<String> name : absent) {
      Optional.ofNullable(fasteners.get(name.value()))
          .ifPresent(given -> map.problems().add(BookSentences.absentAndGiven(name, given.name())));
    }
    return places -> new SpecBook.Group(places, fasteners, absent);
  }

  private static Map<String, SpecBook.Entry> entries(List<Keyed<String, FastenerText>> written) {
    Map<String, SpecBook.Entry> entries = new LinkedHashMap<>();
    for (Keyed<String, FastenerText> fastener : written) {
      Located<String> name = fastener.key();
      entries.put(name.value(), new SpecBook.Entry(name, fastener.value().value()));
    }
    return entries;
  }

  private static void notLikeItself(SpecBook book, Problems problems) {
    book.like()
        .filter(other -> other.value().equals(book.vehicle().value()))
        .ifPresent(
            other -> problems.add(BookSentences.namesItself(other.at(), other.value(), "like")));
  }
}
