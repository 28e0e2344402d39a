package baysheet.books;

import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Dimension;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Misread;
import baysheet.torque.Quantity;
import baysheet.torque.QuantityText;
import baysheet.torque.Reading;
import baysheet.torque.StrengthClass;
import baysheet.torque.Thread;
import baysheet.torque.ThreePoint;
import baysheet.torque.Unit;
import baysheet.yaml.Outcome;
import baysheet.yaml.Read;
import baysheet.yaml.ValueReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words of package {@code torque} as readers: what it misreads becomes a problem. */
final class Figures {
  private static final Pattern FACTOR = Pattern.compile("[1-9](\\.[0-9]{1,3})?|10(\\.0)?");

  private Figures() {}

  /** The quantity at a key, within the key's bounds. */
  static ValueReader<Quantity> quantity(QuantityKey key) {
    return Read.value(key::read);
  }

  /** Whether figures that were read as parts of something are within a key's bounds. */
  static boolean areInBounds(List<Quantity> figures, QuantityKey key, Span at, Problems problems) {
    return figures.stream()
        .map(figure -> told(key.check(figure), at, problems).isPresent())
        .reduce(true, Boolean::logicalAnd);
  }

  static Quantity percent(BigDecimal figure) {
    return new Quantity(figure, Unit.PERCENT);
  }

  /** A unit of one kind, in any of its spellings. */
  static ValueReader<Unit> unit(Dimension dimension) {
    return Read.value(
        text ->
            Unit.of(text)
                .filter(unit -> unit.dimension() == dimension)
                .map(Outcome::ok)
                .orElseGet(() -> Sentences.notAUnit(text, dimension.phrase(), symbols(dimension))));
  }

  private static List<String> symbols(Dimension dimension) {
    return Stream.of(Unit.values())
        .filter(unit -> unit.dimension() == dimension)
        .map(Unit::symbol)
        .toList();
  }

  static ValueReader<ThreePoint> minutes() {
    return Read.value(
        text -> then(outcome(ProblemCode.BAD_TIME, QuantityText.minutes(text)), Figures::bounded));
  }

  private static Outcome<ThreePoint> bounded(ThreePoint time) {
    return then(
        QuantityKey.TAKES.check(minutes(time.low())),
        low -> QuantityKey.TAKES.check(minutes(time.high())).map(high -> time));
  }

  private static Quantity minutes(double figure) {
    return new Quantity(BigDecimal.valueOf(figure), Unit.MINUTE);
  }

  static ValueReader<Thread> thread() {
    return reading(ProblemCode.BAD_THREAD, Thread::parse);
  }

  static ValueReader<StrengthClass> strength() {
    return reading(ProblemCode.BAD_CLASS, StrengthClass::parse);
  }

  static ValueReader<Head> head() {
    return reading(ProblemCode.BAD_HEAD, Head::parse);
  }

  static ValueReader<Drive> drive() {
    return Read.value(Figures::driveOf);
  }

  /** The same as {@link #drive()}, for keys. */
  static Outcome<Drive> driveOf(String text) {
    return outcome(ProblemCode.BAD_DRIVE, Drive.parse(text));
  }

  /** What a state does to minutes: {@code 1.5}; a state never makes work quicker. */
  static ValueReader<BigDecimal> factor() {
    return Read.value(
        text ->
            FACTOR.matcher(text).matches()
                ? Outcome.ok(new BigDecimal(text))
                : Sentences.notAFactor(text));
  }

  private static <T> ValueReader<T> reading(ProblemCode code, Function<String, Reading<T>> parse) {
    return Read.value(text -> outcome(code, parse.apply(text)));
  }

  /** The reading as an outcome, its misread under {@code code}. */
  static <T> Outcome<T> outcome(ProblemCode code, Reading<T> reading) {
    return reading instanceof Misread<T> misread
        ? new Outcome.Bad<>(code, misread.what(), misread.expected(), misread.nearest())
        : Outcome.ok(reading.found().orElseThrow());
  }

  /** The value read, or its misread told at {@code at}. */
  static <T> Optional<Located<T>> told(
      ProblemCode code, Reading<T> reading, Span at, Problems problems) {
    return told(outcome(code, reading), at, problems);
  }

  private static <T> Optional<Located<T>> told(Outcome<T> outcome, Span at, Problems problems) {
    return outcome.fold(
        value -> Optional.of(new Located<>(value, at)),
        bad -> {
          problems.add(Sentences.of(bad, at));
          return Optional.empty();
        });
  }

  /** The outcome handed to a further reading; what is wrong stays as it is. */
  static <T, U> Outcome<U> then(Outcome<T> outcome, Function<T, Outcome<U>> next) {
    return outcome.fold(
        next, bad -> new Outcome.Bad<>(bad.code(), bad.what(), bad.expected(), bad.nearest()));
  }
}
