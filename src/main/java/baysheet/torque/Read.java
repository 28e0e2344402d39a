package baysheet.torque;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value that could be read.
 *
 * @param value the value
 */
public record Read<T>(T value) implements Reading<T> {
  public Read {
    Objects.requireNonNull(value);
  }

  @Override
  public Optional<T> found() {
    return Optional.of(value);
  }

  @Override
  public <U> Reading<U> map(Function<? super T, ? extends U> change) {
    return new Read<>(change.apply(value));
  }

  @Override
  public <U> Reading<U> then(Function<? super T, Reading<U>> next) {
    return next.apply(value);
  }
}
