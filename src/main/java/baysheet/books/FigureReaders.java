package baysheet.books;

import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Dimension;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.ParseFailure;
import baysheet.torque.ParseResult;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import baysheet.torque.ScrewThread;
import baysheet.torque.StrengthClass;
import baysheet.torque.ThreePoint;
import baysheet.torque.Unit;
import baysheet.yaml.ParseOutcome;
import baysheet.yaml.ValueReader;
import baysheet.yaml.ValueReaders;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words of package {@code torque} as readers: what it misreads becomes a problem. */
final class FigureReaders {
  private static final Pattern FACTOR = Pattern.compile("[1-9](\\.[0-9]{1,3})?|10(\\.0)?");

  private FigureReaders() {}

  /** The quantity at a key, within the key's bounds. */
  static ValueReader<Quantity> quantity(QuantityKey key) {
    return ValueReaders.value(key::read);
  }

  /** Whether figures that were read as parts of something are within a key's bounds. */
  static boolean areInBounds(List<Quantity> figures, QuantityKey key, Span at, Problems problems) {
    return figures.stream()
        .map(figure -> orReport(key.check(figure), at, problems).isPresent())
        .reduce(true, Boolean::logicalAnd);
  }

  static Quantity percent(BigDecimal figure) {
    return new Quantity(figure, Unit.PERCENT);
  }

  /** A unit of one kind, in any of its spellings. */
  static ValueReader<Unit> unit(Dimension dimension) {
    return ValueReaders.value(
        text ->
            Unit.of(text)
                .filter(unit -> unit.dimension() == dimension)
                .map(ParseOutcome::ok)
                .orElseGet(
                    () -> BookSentences.notAUnit(text, dimension.phrase(), symbols(dimension))));
  }

  private static List<String> symbols(Dimension dimension) {
    return Stream.of(Unit.values())
        .filter(unit -> unit.dimension() == dimension)
        .map(Unit::symbol)
        .toList();
  }

  static ValueReader<ThreePoint> minutes() {
    return ValueReaders.value(
        text ->
            then(
                outcome(ProblemCode.BAD_TIME, QuantityText.minutes(text)), FigureReaders::bounded));
  }

  private static ParseOutcome<ThreePoint> bounded(ThreePoint time) {
    return then(
        QuantityKey.TAKES.check(minutes(time.low())),
        low -> QuantityKey.TAKES.check(minutes(time.high())).map(high -> time));
  }

  private static Quantity minutes(double figure) {
    return new Quantity(BigDecimal.valueOf(figure), Unit.MINUTE);
  }

  static ValueReader<ScrewThread> thread() {
    return reading(ProblemCode.BAD_THREAD, ScrewThread::parse);
  }

  static ValueReader<StrengthClass> strength() {
    return reading(ProblemCode.BAD_CLASS, StrengthClass::parse);
  }

  static ValueReader<Head> head() {
    return reading(ProblemCode.BAD_HEAD, Head::parse);
  }

  static ValueReader<Drive> drive() {
    return ValueReaders.value(FigureReaders::driveOf);
  }

  /** The same as {@link #drive()}, for keys. */
  static ParseOutcome<Drive> driveOf(String text) {
    return outcome(ProblemCode.BAD_DRIVE, Drive.parse(text));
  }

  /** What a state does to minutes: {@code 1.5}; a state never makes work quicker. */
  static ValueReader<BigDecimal> factor() {
    return ValueReaders.value(
        text ->
            FACTOR.matcher(text).matches()
                ? ParseOutcome.ok(new BigDecimal(text))
                : BookSentences.notAFactor(text));
  }

  private static <T> ValueReader<T> reading(
      ProblemCode code, Function<String, ParseResult<T>> parse) {
    return ValueReaders.value(text -> outcome(code, parse.apply(text)));
  }

  /** The reading as an outcome, its misread under {@code code}. */
  static <T> ParseOutcome<T> outcome(ProblemCode code, ParseResult<T> reading) {
    return reading instanceof ParseFailure<T> misread
        ? new ParseOutcome.Bad<>(code, misread.what(), misread.expected(), misread.nearest())
        : ParseOutcome.ok(reading.found().orElseThrow());
  }

  /** The value read, or its misreading reported at {@code at}. */
  static <T> Optional<Located<T>> orReport(
      ProblemCode code, ParseResult<T> reading, Span at, Problems problems) {
    return orReport(outcome(code, reading), at, problems);
  }

  private static <T> Optional<Located<T>> orReport(
      ParseOutcome<T> outcome, Span at, Problems problems) {
    return outcome.fold(
        value -> Optional.of(new Located<>(value, at)),
        bad -> {
          problems.add(BookSentences.of(bad, at));
          return Optional.empty();
        });
  }

  /** The outcome handed to a further reading; what is wrong stays as it is. */
  static <T, U> ParseOutcome<U> then(ParseOutcome<T> outcome, Function<T, ParseOutcome<U>> next) {
    return outcome.fold(
        next, bad -> new ParseOutcome.Bad<>(bad.code(), bad.what(), bad.expected(), bad.nearest()));
  }
}
