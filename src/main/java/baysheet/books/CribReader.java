package baysheet.books;

import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Socket;
import baysheet.torque.Wrench;
import baysheet.yaml.MapReader;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the garage's tools. */
final class CribReader {
  static final ValueReader<Shop.Crib> CRIB = ValueReaders.record("a crib", CribReader::crib);

  private static final int MOST_TOOLS = 999;
  private static final int SIX = 6;
  private static final int TWELVE = 12;

  /** A crow-foot as a book asks for it: it goes on wrenches of one square only. */
  private static final Pattern CROW_FOOT = Pattern.compile("(flare-nut )?crow-foot .*, reach .*");

  private static final ValueReader<Wrench> WRENCH =
      ValueReaders.record("a torque wrench", CribReader::wrench);
  private static final ValueReader<Socket> SOCKET =
      ValueReaders.record("a socket", CribReader::socket);
  private static final ValueReader<Shop.Special> SPECIAL =
      ValueReaders.record("a special tool", CribReader::special);
  private static final ValueReader<Shop.Stands> STANDS =
      ValueReaders.record("a set of stands", CribReader::stands);
  private static final ValueReader<Integer> POINTS = ValueReaders.value(CribReader::pointsOf);
  private static final ValueReader<Integer> COUNT = ValueReaders.wholeNumber(1, MOST_TOOLS);

  private CribReader() {}

  private static Optional<Shop.Crib> crib(MapReader map) {
    List<Located<Wrench>> wrenches = map.list("wrenches", WRENCH);
    Words.once(wrenches.stream().map(it -> it.map(Wrench::name)).toList(), map.problems());
    List<Located<Socket>> sockets = map.list("sockets", SOCKET);
    List<Shop.Special> special = map.list("special", SPECIAL).stream().map(Located::value).toList();
    Words.once(special.stream().map(Shop.Special::name).toList(), map.problems());
    Optional<Shop.Stands> stands = map.optional("stands", STANDS).map(Located::value);
    return map.build(() -> new Shop.Crib(wrenches, sockets, special, stands));
  }

  private static Optional<Wrench> wrench(MapReader map) {
    Optional<Located<String>> name = map.required("name", Words.id());
    Optional<Located<Drive>> drive = map.required("drive", FigureReaders.drive());
    Optional<Located<Quantity>> from =
        map.required("from", FigureReaders.quantity(QuantityKey.WRENCH_FROM));
    Optional<Located<Quantity>> to =
        map.required("to", FigureReaders.quantity(QuantityKey.WRENCH_TO));
    Optional<Located<Quantity>> step =
        map.required("step", FigureReaders.quantity(QuantityKey.WRENCH_STEP));
    Optional<Located<Quantity>> accuracy =
        map.required("accuracy", FigureReaders.quantity(QuantityKey.WRENCH_ACCURACY));
    Optional<Located<Quantity>> length =
        map.optional("length", FigureReaders.quantity(QuantityKey.WRENCH_LENGTH));
    Optional<Located<LocalDate>> calibrated = map.required("calibrated", ValueReaders.date());
    return map.build(
            () ->
                Wrench.read(
                    name.get().value(),
                    drive.get().value(),
                    from.get().value(),
                    to.get().value(),
                    step.get().value(),
                    accuracy.get().value().value(),
                    length.map(Located::value),
                    calibrated.get().value()))
        .flatMap(
            read ->
                FigureReaders.orReport(
                    ProblemCode.BAD_WRENCH, read, name.get().at(), map.problems()))
        .map(Located::value);
  }

  private static Optional<Socket> socket(MapReader map) {
    Located<Drive> drive = Words.needed(map, "drive", FigureReaders.drive(), Drive.HALF);
    Optional<Sizes> sizes = sizes(map);
    Optional<Integer> points = points(map, sizes.map(Sizes::form));
    boolean impact = map.yesNo("impact", false);
    boolean deep = map.yesNo("deep", false);
    Optional<Socket> socket =
        sizes.flatMap(all -> points.map(n -> all.socket(drive.value(), n, impact, deep)));
    return map.build(() -> socket).flatMap(it -> it);
  }

  /** The form that is the socket's key, and the sizes under it. */
  private record Sizes(Head.Form form, List<String> sizes) {
    Socket socket(Drive drive, int points, boolean impact, boolean deep) {
      return new Socket(drive, form, sizes, points, impact, deep);
    }
  }

  private static Optional<Sizes> sizes(MapReader map) {
    List<String> keys = Stream.of(Head.Form.values()).map(CribReader::key).toList();
    map.atMostOneOf(keys);
    if (keys.stream().noneMatch(map::has)) {
      map.problems().add(BookSentences.neitherOf("a socket", keys, map.start()));
    }
    List<Sizes> written =
        Stream.of(Head.Form.values()).flatMap(form -> sizes(map, form).stream()).toList();
    return written.stream().findFirst();
  }

  private static Optional<Sizes> sizes(MapReader map, Head.Form form) {
    ValueReader<List<String>> size =
        ValueReaders.value(
            text -> FigureReaders.outcome(ProblemCode.BAD_HEAD, Socket.sizes(form, text)));
    Optional<Located<List<Located<List<String>>>>> written =
        map.optional(key(form), ValueReaders.listOrOne(size));
    written
        .filter(list -> list.value().isEmpty())
        .ifPresent(list -> map.problems().add(BookSentences.empty(list.at(), "at least one size")));
    return written.map(list -> new Sizes(form, flat(list.value())));
  }

  private static List<String> flat(List<Located<List<String>>> sizes) {
    return sizes.stream().flatMap(size -> size.value().stream()).toList();
  }

  private static String key(Head.Form form) {
    return form.word().replace(' ', '-');
  }

  /** Six points slip on a 12-point head, so a hexagon socket must say which it has. */
  private static Optional<Integer> points(MapReader map, Optional<Head.Form> form) {
    if (map.has(key(Head.Form.HEX))) {
      return map.required("points", POINTS).map(Located::value);
    }
    boolean twelve = form.equals(Optional.of(Head.Form.TWELVE_POINT));
    map.optional("points", POINTS)
        .filter(written -> form.isPresent() && !(twelve && written.value() == TWELVE))
        .ifPresent(it -> map.problems().add(BookSentences.pointsOutOfPlace(it.at())));
    return Optional.of(twelve ? TWELVE : SIX);
  }

  private static ParseOutcome<Integer> pointsOf(String text) {
    return switch (text) {
      case "6" -> ParseOutcome.ok(SIX);
      case "12" -> ParseOutcome.ok(TWELVE);
      default -> BookSentences.notPoints(text);
    };
  }

  private static Optional<Shop.Special> special(MapReader map) {
    Optional<Located<String>> name = map.required("name", ValueReaders.text());
    Optional<Located<Integer>> count = map.required("count", COUNT);
    boolean crowFoot = name.filter(it -> CROW_FOOT.matcher(it.value()).matches()).isPresent();
    Optional<Located<Drive>> drive =
        crowFoot
            ? map.required("drive", FigureReaders.drive())
            : map.optional("drive", FigureReaders.drive());
    return map.build(() -> new Shop.Special(name.get(), count.get(), drive));
  }

  /** Whether the figure is for each stand or for a pair must be said: it halves what they carry. */
  private static Optional<Shop.Stands> stands(MapReader map) {
    Optional<Located<Quantity>> rated =
        map.required("rated", FigureReaders.quantity(QuantityKey.STAND_RATED));
    Optional<Located<Boolean>> each = map.required("each", ValueReaders.yesNo());
    Optional<Located<Integer>> count = map.required("count", COUNT);
    return map.build(() -> new Shop.Stands(rated.get(), each.get().value(), count.get()));
  }
}
