package baysheet.torque;

import java.util.Optional;
import java.util.function.Function;

/**
 * What came of reading something a person wrote: a value, or what is wrong with it.
 *
 * @param <T> what was to be read
 */
public sealed interface ParseResult<T> permits Parsed, ParseFailure {
  /** The value, when it could be read. */
  Optional<T> found();

  /** The value passed through {@code change}; a misread stays as it is. */
  <U> ParseResult<U> map(Function<? super T, ? extends U> change);

  /** The value handed to a further reading; a misread stays as it is. */
  <U> ParseResult<U> then(Function<? super T, ParseResult<U>> next);
}
