package baysheet.report;

import java.util.function.Function;

/** A value and the place where somebody wrote it. */
public record Located<T>(T value, Span at) {
  /** The same place with another value. */
  public <U> Located<U> map(Function<? super T, ? extends U> change) {
    return new Located<>(change.apply(value), at);
  }
}
