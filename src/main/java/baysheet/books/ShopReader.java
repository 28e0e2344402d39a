package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.torque.Dimension;
import baysheet.torque.Drive;
import baysheet.torque.Quantity;
import baysheet.torque.Unit;
import baysheet.yaml.Keyed;
import baysheet.yaml.MapReader;
import baysheet.yaml.Mapping;
import baysheet.yaml.Node;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads {@code shop.yaml}. */
public final class ShopReader {
  /** Accepted band where neither book nor shop says: common practice, no source. */
  private static final Quantity USUAL_BAND = Quantity.of("5", Unit.PERCENT);

  /** ISO 6789-1: a year, or 5000 turns, unless the user's own control says otherwise. */
  private static final int USUAL_INTERVAL = 12;

  private static final int LONGEST_INTERVAL = 60;

  private static final ValueReader<Shop> SHOP = ValueReaders.record("a shop", ShopReader::shop);
  static final ValueReader<Shop.Units> UNITS = ValueReaders.record("the units", ShopReader::units);
  private static final ValueReader<Words.Unnamed<Bay>> BAY =
      ValueReaders.record("a bay", ShopReader::bay);
  private static final ValueReader<Words.Unnamed<Shop.Person>> PERSON =
      ValueReaders.record("a person", ShopReader::person);
  private static final ValueReader<Shop.Paper> PAPER =
      Words.oneOf(List.of(Shop.Paper.values()), Shop.Paper::word);
  private static final ValueReader<Integer> INTERVAL =
      ValueReaders.wholeNumber(1, LONGEST_INTERVAL);
  private static final Shop.Crib NO_TOOLS =
      new Shop.Crib(List.of(), List.of(), List.of(), Optional.empty());
  private static final ValueReader<Shop.Terms> TERMS = words(Shop.Terms.values());
  private static final ValueReader<Shop.Grade> GRADE = words(Shop.Grade.values());

  private ShopReader() {}

  /** The shop; empty when a problem was added that leaves none. */
  public static Optional<Shop> read(Node node, Problems problems) {
    return SHOP.read(node, problems).map(Located::value);
  }

  private static Optional<Shop> shop(MapReader map) {
    Shop shop =
        new Shop(
            Words.needed(map, "shop", ValueReaders.text(), ""),
            or(map.optional("paper", PAPER), Shop.Paper.A4),
            or(map.optional("units", UNITS), Shop.Units.USUAL),
            or(map.optional("terms", TERMS), Shop.Terms.BRITISH),
            new Shop.WrenchUse(
                or(map.optional("band", FigureReaders.quantity(QuantityKey.BAND)), USUAL_BAND),
                or(map.optional("calibration-interval", INTERVAL), USUAL_INTERVAL),
                drives(map)),
            Words.needed(map, "crib", CribReader.CRIB, NO_TOOLS).value(),
            atLeastOne(map, "bays", BAY, "at least one bay"),
            atLeastOne(map, "people", PERSON, "at least one person"),
            ClockReader.hours(map),
            map.optional("out", ValueReaders.text()),
            map.at());
    return map.build(() -> shop);
  }

  private static <T> T or(Optional<Located<T>> written, T ifLeftOut) {
    return written.map(Located::value).orElse(ifLeftOut);
  }

  private static <T extends Enum<T>> ValueReader<T> words(T[] values) {
    Function<T, String> word = value -> value.name().toLowerCase(Locale.ROOT);
    return Words.oneOf(List.of(values), word);
  }

  private static Optional<Shop.Units> units(MapReader map) {
    Optional<List<Unit>> torque =
        map.optional("torque", ValueReaders.listOrOne(FigureReaders.unit(Dimension.TORQUE)))
            .flatMap(list -> oneOrTwo(list, map.problems()));
    Optional<Located<Unit>> distance =
        map.optional("distance", FigureReaders.unit(Dimension.DISTANCE));
    Optional<Located<Unit>> mass = map.optional("mass", FigureReaders.unit(Dimension.MASS));
    return map.build(
        () ->
            new Shop.Units(
                torque.orElse(Shop.Units.USUAL.torque()),
                or(distance, Shop.Units.USUAL.distance()),
                or(mass, Shop.Units.USUAL.mass())));
  }

  private static Optional<List<Unit>> oneOrTwo(
      Located<List<Located<Unit>>> list, Problems problems) {
    List<Unit> units = list.value().stream().map(Located::value).toList();
    Words.once(list.value().stream().map(it -> it.map(Unit::symbol)).toList(), problems);
    if (units.isEmpty() || units.size() > 2) {
      problems.add(BookSentences.tooManyUnits(list.at()));
      return Optional.empty();
    }
    return Optional.of(units);
  }

  private static Map<Drive, Quantity> drives(MapReader map) {
    Map<Drive, Quantity> limits = new LinkedHashMap<>();
    map.entries("drives", FigureReaders::driveOf, FigureReaders.quantity(QuantityKey.DRIVE_LIMIT))
        .forEach(entry -> limits.put(entry.key().value(), entry.value().value()));
    return limits;
  }

  private static <T> Map<String, T> atLeastOne(
      MapReader map, String key, ValueReader<Words.Unnamed<T>> value, String expected) {
    ValueReader<List<Keyed<String, Words.Unnamed<T>>>> entries =
        ValueReaders.map("what stands under \"" + key + "\"", Words::idOf, value);
    ValueReader<List<Keyed<String, Words.Unnamed<T>>>> some =
        (node, problems) -> {
          if (node instanceof Mapping none && none.entries().isEmpty()) {
            problems.add(BookSentences.empty(node.at(), expected));
          }
          return entries.read(node, problems);
        };
    return map.required(key, some).map(found -> Words.named(found.value())).orElse(Map.of());
  }

  private static Optional<Words.Unnamed<Bay>> bay(MapReader map) {
    List<String> keys = Stream.of(Bay.Equipment.values()).map(Bay.Equipment::word).toList();
    map.atMostOneOf(keys);
    if (keys.stream().noneMatch(map::has)) {
      map.problems().add(BookSentences.neitherOf("a bay", keys, map.start()));
    }
    List<Raised> raised =
        Stream.of(Bay.Equipment.values()).flatMap(it -> raised(map, it).stream()).toList();
    Optional<Located<Quantity>> rated =
        map.required("rated", FigureReaders.quantity(QuantityKey.BAY_RATED));
    Optional<Words.Unnamed<Bay>> bay =
        raised.stream()
            .findFirst()
            .map(by -> name -> new Bay(name, by.equipment, by.description, rated.get()));
    return map.build(() -> bay).flatMap(it -> it);
  }

  /** What raises a vehicle, and of what kind it is. */
  private record Raised(Bay.Equipment equipment, Located<String> description) {}

  private static Optional<Raised> raised(MapReader map, Bay.Equipment equipment) {
    return map.optional(equipment.word(), ValueReaders.text())
        .map(kind -> new Raised(equipment, kind));
  }

  private static Optional<Words.Unnamed<Shop.Person>> person(MapReader map) {
    Optional<Located<String>> name = map.required("name", ValueReaders.text());
    Optional<Located<Shop.Grade>> grade = map.required("grade", GRADE);
    List<Shop.Certificate> certificates = CertificateReader.read(map);
    return map.build(
        () -> id -> new Shop.Person(id, name.get(), grade.get().value(), certificates));
  }

  /** Reads what somebody is certified for. */
  private static final class CertificateReader {
    /** In place of a date, where a certificate has no end. */
    private static final String UNLIMITED = "unlimited";

    private static final ValueReader<Words.Unnamed<Shop.Certificate>> PROOF =
        ValueReaders.record("a certificate", CertificateReader::proof);
    private static final ValueReader<List<Keyed<String, Words.Unnamed<Shop.Certificate>>>> ENTRY =
        ValueReaders.map("a qualification", ValueReaders::nameOf, PROOF);
    private static final ValueReader<Optional<LocalDate>> UNTIL =
        ValueReaders.value(CertificateReader::untilOf);

    private CertificateReader() {}

    /** A list of maps of one qualification each, or one map of them all. */
    static List<Shop.Certificate> read(MapReader map) {
      List<Keyed<String, Words.Unnamed<Shop.Certificate>>> all =
          map.listOrOne("qualifications", ENTRY).stream()
              .flatMap(entry -> entry.value().stream())
              .toList();
      Words.once(all.stream().map(Keyed::key).toList(), map.problems());
      return all.stream().map(entry -> entry.value().value().named(entry.key())).toList();
    }

    private static Optional<Words.Unnamed<Shop.Certificate>> proof(MapReader map) {
      Optional<Located<String>> number = map.required("certificate", ValueReaders.text());
      Optional<Located<Optional<LocalDate>>> until = map.required("until", UNTIL);
      return map.build(() -> name -> new Shop.Certificate(name, number.get(), until.get().value()));
    }

    private static ParseOutcome<Optional<LocalDate>> untilOf(String text) {
      return text.equals(UNLIMITED)
          ? ParseOutcome.ok(Optional.empty())
          : ValueReaders.dateOf(text).map(Optional::of);
    }
  }
}
