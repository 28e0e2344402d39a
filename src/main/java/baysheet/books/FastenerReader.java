package baysheet.books;

import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.torque.ParseResult;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningPasses;
import baysheet.torque.TighteningStage;
import baysheet.torque.Treatment;
import baysheet.yaml.MapReader;
import baysheet.yaml.Node;
import baysheet.yaml.Scalar;
import baysheet.yaml.Sequence;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the keys of a fastener. */
final class FastenerReader {
  /** What differs from another book, as a map: any key may be left out. */
  private static final ValueReader<FastenerText> PARTIAL_MAP =
      ValueReaders.record("a fastener", map -> read(map, false));

  /** The same, or on one line. */
  static final ValueReader<FastenerText> PARTIAL = lineOr(List.of(), PARTIAL_MAP);

  /** A fastener of a book that stands alone: count and torque must be there. */
  static final ValueReader<FastenerText> WHOLE =
      lineOr(
          List.of(FastenerText.Pieces.COUNT, "torque"),
          ValueReaders.record("a fastener", map -> read(map, true)));

  /** What is usual of a fastener: only how it is tightened, never a figure. */
  static final ValueReader<FastenerText> USUAL =
      ValueReaders.record(
          "what is usual",
          map -> {
            FastenerText text =
                new FastenerText(
                    FastenerText.Pieces.NOTHING,
                    Optional.empty(),
                    FastenerText.Method.of(
                        map.optional("order", FastenerReader.ORDER),
                        map.optional("final", FastenerReader.FINAL),
                        Optional.empty()),
                    List.of(),
                    Optional.empty());
            FastenerCheck.check(text, map.problems());
            return map.build(() -> text);
          });

  /** The largest set on a car, of sump screws, is some thirty; beyond this a digit was doubled. */
  private static final int MOST_FASTENERS = 99;

  private static final ProblemCode TORQUE_CODE = ProblemCode.BAD_TORQUE;

  private static final ValueReader<List<Located<String>>> TEXTS =
      ValueReaders.listOr(
          Words.everyOne(ValueReaders.text()), ValueReaders.listOrOne(ValueReaders.text()));
  private static final ValueReader<List<Integer>> POSITIONS =
      Words.everyOne(ValueReaders.wholeNumber(1, MOST_FASTENERS))
          .map(positions -> positions.stream().map(Located::value).toList());
  private static final ValueReader<Integer> COUNT = ValueReaders.wholeNumber(1, MOST_FASTENERS);
  private static final ValueReader<Tightening> TORQUE = FastenerReader::torque;
  private static final ValueReader<Fastener.Order> ORDER =
      ValueReaders.scalarOr(
          ValueReaders.oneOf(Map.of("circle", new Fastener.Order.Circle())),
          ValueReaders.listOr(
              FastenerReader::given, ValueReaders.record("an order", FastenerReader::rows)));
  private static final ValueReader<TighteningPasses> PASSES = FastenerReader::passes;
  private static final ValueReader<Treatment> THREADS =
      Words.oneOf(
          Stream.of(Treatment.values()).filter(it -> it != Treatment.NOT_STATED).toList(),
          Treatment::word);
  private static final ValueReader<Fastener.Lock> LOCK =
      Words.oneOf(List.of(Fastener.Lock.values()), Fastener.Lock::word);
  private static final ValueReader<Fastener.Moment> FINAL =
      Words.oneOf(List.of(Fastener.Moment.values()), Fastener.Moment::word);
  private static final ValueReader<Reach.Tool> REACH_TOOL =
      Words.oneOf(List.of(Reach.Tool.values()), Reach.Tool::word);
  private static final ValueReader<Reach> REACH =
      ValueReaders.record("a reach", FastenerReader::reach);

  /** Stands for a figure that nobody has looked up yet. */
  private static final String UNKNOWN = "unknown";

  private FastenerReader() {}

  /** A line is read as the map that says the same. */
  private static ValueReader<FastenerText> lineOr(
      List<String> needed, ValueReader<FastenerText> map) {
    return (node, problems) ->
        node instanceof Scalar scalar && !scalar.isEmpty()
            ? read(FastenerLine.of(scalar, needed, problems), map, problems)
            : map.read(node, problems);
  }

  /** Of a line with a faulty part, what is wrong in the others is reported as well. */
  private static Optional<Located<FastenerText>> read(
      FastenerLine line, ValueReader<FastenerText> map, Problems problems) {
    return line.isSound()
        ? map.read(line.mapping(), problems)
        : PARTIAL_MAP.read(line.mapping(), problems).filter(any -> false);
  }

  private static Optional<FastenerText> read(MapReader map, boolean whole) {
    FastenerText text = text(map, whole);
    FastenerCheck.check(text, map.problems());
    return map.build(() -> text);
  }

  /** Reads what is known and leaves the rest to the caller, who may have keys of its own. */
  static FastenerText text(MapReader map, boolean whole) {
    return new FastenerText(
        pieces(map, whole),
        whole ? map.required("torque", TORQUE) : map.optional("torque", TORQUE),
        new FastenerText.Method(
            map.optional("order", ORDER),
            map.optional("passes", PASSES),
            map.optional("lock", LOCK),
            map.optional("final", FINAL),
            map.optional("recheck", FigureReaders.quantity(QuantityKey.RECHECK)),
            map.optional("reach", REACH),
            map.optional("deep", ValueReaders.yesNo())),
        Remark.read(map),
        map.optional("source", ValueReaders.text()));
  }

  private static FastenerText.Pieces pieces(MapReader map, boolean whole) {
    List<Located<String>> unknown = new ArrayList<>();
    return new FastenerText.Pieces(
        figure(map, FastenerText.Pieces.COUNT, COUNT, whole, unknown),
        figure(map, FastenerText.Pieces.THREAD, FigureReaders.thread(), false, unknown),
        figure(map, FastenerText.Pieces.CLASS, FigureReaders.strength(), false, unknown),
        figure(map, FastenerText.Pieces.HEAD, FigureReaders.head(), false, unknown),
        figure(map, FastenerText.Pieces.THREADS, THREADS, false, unknown),
        figure(map, FastenerText.Pieces.REUSE, ValueReaders.yesNo(), false, unknown),
        unknown);
  }

  /** A figure; where {@code unknown} stands for it, the key is added to the list. */
  private static <T> Optional<Located<T>> figure(
      MapReader map,
      String key,
      ValueReader<T> reader,
      boolean needed,
      List<Located<String>> unknown) {
    ValueReader<Optional<T>> any =
        (node, problems) ->
            isUnknown(node)
                ? Optional.of(new Located<>(Optional.empty(), node.at()))
                : reader.<Optional<T>>map(Optional::of).read(node, problems);
    Optional<Located<Optional<T>>> read = needed ? map.required(key, any) : map.optional(key, any);
    read.filter(it -> it.value().isEmpty())
        .ifPresent(it -> unknown.add(new Located<>(key, it.at())));
    return read.flatMap(it -> it.value().map(figure -> new Located<>(figure, it.at())));
  }

  private static boolean isUnknown(Node node) {
    return node instanceof Scalar scalar && scalar.text().strip().equals(UNKNOWN);
  }

  private static Optional<Located<Tightening>> torque(Node node, Problems problems) {
    return TEXTS.read(node, problems).flatMap(stages -> tightening(stages, problems));
  }

  /**
   * A stage that cannot be read is reported where it stands, before what is wrong with all of them.
   */
  private static Optional<Located<Tightening>> tightening(
      Located<List<Located<String>>> stages, Problems problems) {
    List<String> texts = stages.value().stream().map(Located::value).toList();
    ParseResult<Tightening> read = Tightening.parse(texts);
    List<Located<String>> bad = read.found().isPresent() ? List.of() : misread(stages.value());
    bad.forEach(
        it ->
            FigureReaders.orReport(
                TORQUE_CODE, TighteningStage.parseAll(it.value()), it.at(), problems));
    return bad.isEmpty()
        ? FigureReaders.orReport(TORQUE_CODE, read, stages.at(), problems)
            .filter(it -> areInBounds(it, problems))
        : Optional.empty();
  }

  /** Whether every figure is one that a fastener can have; others are reported. */
  private static boolean areInBounds(Located<Tightening> tightening, Problems problems) {
    return FigureReaders.areInBounds(
            torques(tightening.value()), QuantityKey.FASTENER_TORQUE, tightening.at(), problems)
        & FigureReaders.areInBounds(
            angles(tightening.value()), QuantityKey.STAGE_ANGLE, tightening.at(), problems);
  }

  private static List<Quantity> torques(Tightening tightening) {
    return stages(tightening)
        .filter(TighteningStage.Torque.class::isInstance)
        .map(stage -> ((TighteningStage.Torque) stage).target())
        .flatMap(FastenerReader::figures)
        .toList();
  }

  /** The ends of a band as they were written; else the figure alone. */
  private static Stream<Quantity> figures(Target target) {
    return target.band().isPresent()
        ? Stream.of(target.band().get().low(), target.nominal(), target.band().get().high())
        : Stream.of(target.nominal());
  }

  private static List<Quantity> angles(Tightening tightening) {
    return stages(tightening)
        .filter(TighteningStage.Angle.class::isInstance)
        .map(stage -> ((TighteningStage.Angle) stage).angle())
        .toList();
  }

  private static Stream<TighteningStage> stages(Tightening tightening) {
    return tightening instanceof Tightening.Stages all ? all.stages().stream() : Stream.empty();
  }

  private static List<Located<String>> misread(List<Located<String>> stages) {
    return stages.stream()
        .filter(it -> TighteningStage.parseAll(it.value()).found().isEmpty())
        .toList();
  }

  private static Optional<Located<Fastener.Order>> given(Node node, Problems problems) {
    if (node instanceof Sequence list
        && list.items().stream().anyMatch(Sequence.class::isInstance)) {
      problems.add(BookSentences.orderOfOrders(node.at()));
      return Optional.empty();
    }
    return POSITIONS.<Fastener.Order>map(Fastener.Order.Given::new).read(node, problems);
  }

  private static Optional<Located<TighteningPasses>> passes(Node node, Problems problems) {
    return TEXTS
        .read(node, problems)
        .flatMap(
            all ->
                FigureReaders.orReport(
                    ProblemCode.BAD_PASSES,
                    TighteningPasses.parse(all.value().stream().map(Located::value).toList()),
                    all.at(),
                    problems))
        .filter(
            all ->
                FigureReaders.areInBounds(
                    all.value().percents().stream().map(FigureReaders::percent).toList(),
                    QuantityKey.PASS_SHARE,
                    all.at(),
                    problems));
  }

  private static Optional<Fastener.Order> rows(MapReader map) {
    Optional<Located<List<Integer>>> rows = map.required("rows", POSITIONS);
    return map.build(() -> new Fastener.Order.Rows(rows.get().value()));
  }

  private static Optional<Reach> reach(MapReader map) {
    Optional<Located<Quantity>> length =
        map.required("length", FigureReaders.quantity(QuantityKey.REACH_LENGTH));
    Optional<Located<Quantity>> angle =
        map.required("angle", FigureReaders.quantity(QuantityKey.REACH_ANGLE));
    Optional<Located<Reach.Tool>> tool = map.optional("tool", REACH_TOOL);
    return map.build(
        () ->
            new Reach(
                length.get().value(),
                angle.get().value(),
                tool.map(Located::value).orElse(Reach.Tool.CROW_FOOT)));
  }
}
