package baysheet.torque;

import java.util.Optional;
import java.util.function.Function;

/**
 * A value that could be read.
 *
 * @param value the value
 */
public record Parsed<T>(T value) implements ParseResult<T> {
  @Override
  public Optional<T> found() {
    return Optional.of(value);
  }

  @Override
  public <U> ParseResult<U> map(Function<? super T, ? extends U> change) {
    return new Parsed<>(change.apply(value));
  }

  @Override
  public <U> ParseResult<U> then(Function<? super T, ParseResult<U>> next) {
    return next.apply(value);
  }
}
