package baysheet.torque;

import java.util.Optional;
import java.util.function.Function;

/**
 * Something written that could not be read.
 *
 * @param what what is wrong, a sentence without a full stop
 * @param expected what would have been right, words without a full stop
 * @param nearest the spelling that was most likely meant, where there is one
 */
public record ParseFailure<T>(String what, String expected, Optional<String> nearest)
    implements ParseResult<T> {
  /** Something for which no nearest spelling is known. */
  public ParseFailure(String what, String expected) {
    this(what, expected, Optional.empty());
  }

  /** The same fault, with the spelling that was most likely meant. */
  public ParseFailure<T> near(Optional<String> spelling) {
    return new ParseFailure<>(what, expected, spelling);
  }

  @Override
  public Optional<T> found() {
    return Optional.empty();
  }

  @Override
  public <U> ParseResult<U> map(Function<? super T, ? extends U> change) {
    return as();
  }

  @Override
  public <U> ParseResult<U> then(Function<? super T, ParseResult<U>> next) {
    return as();
  }

  /** The same fault, met while something else was to be read. */
  public <U> ParseFailure<U> as() {
    return new ParseFailure<>(what, expected, nearest);
  }
}
