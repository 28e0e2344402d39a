package baysheet.yaml;

import baysheet.report.ProblemCode;
import java.util.Optional;
import java.util.function.Function;

/** What came of reading a text: a value, or what is wrong with it. */
public sealed interface ParseOutcome<T> {
  /** The text was good. */
  static <T> ParseOutcome<T> ok(T value) {
    return new Ok<>(value);
  }

  /**
   * The text was bad, under the code {@code bad-value}.
   *
   * @param what what is wrong, one sentence without a full stop
   * @param expected what would have been right
   */
  static <T> ParseOutcome<T> bad(String what, String expected) {
    return bad(ProblemCode.BAD_VALUE, what, expected);
  }

  /** The text was bad, under a code of the caller's. */
  static <T> ParseOutcome<T> bad(ProblemCode code, String what, String expected) {
    return new Bad<>(code, what, expected, Optional.empty());
  }

  /** One of two things, by what came of it. */
  <R> R fold(Function<? super T, ? extends R> ifOk, Function<Bad<?>, ? extends R> ifBad);

  /** The same outcome with another value; what is wrong stays as it is. */
  default <U> ParseOutcome<U> map(Function<? super T, ? extends U> change) {
    return fold(value -> ok(change.apply(value)), Bad::of);
  }

  /** A good text. */
  record Ok<T>(T value) implements ParseOutcome<T> {
    @Override
    public <R> R fold(Function<? super T, ? extends R> ifOk, Function<Bad<?>, ? extends R> ifBad) {
      return ifOk.apply(value);
    }
  }

  /** A bad text: code, what is wrong, what was expected, and the nearest good one if there is. */
  record Bad<T>(ProblemCode code, String what, String expected, Optional<String> nearest)
      implements ParseOutcome<T> {
    @Override
    public <R> R fold(Function<? super T, ? extends R> ifOk, Function<Bad<?>, ? extends R> ifBad) {
      return ifBad.apply(this);
    }

    /** The same, with the nearest good text. */
    public Bad<T> near(Optional<String> name) {
      return new Bad<>(code, what, expected, name);
    }

    private static <U> Bad<U> of(Bad<?> other) {
      return new Bad<>(other.code, other.what, other.expected, other.nearest);
    }
  }
}
