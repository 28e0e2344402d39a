package baysheet.torque;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Something written that could not be read.
 *
 * @param what what is wrong, a sentence without a full stop
 * @param expected what would have been right, words without a full stop
 * @param nearest the spelling that was most likely meant, where there is one
 */
public record Misread<T>(String what, String expected, Optional<String> nearest)
    implements Reading<T> {
  public Misread {
    Objects.requireNonNull(what);
    Objects.requireNonNull(expected);
    Objects.requireNonNull(nearest);
  }

  /** Something for which no nearest spelling is known. */
  public Misread(String what, String expected) {
    this(what, expected, Optional.empty());
  }

  /** The same fault, with the spelling that was most likely meant. */
  public Misread<T> near(Optional<String> spelling) {
    return new Misread<>(what, expected, spelling);
  }

  @Override
  public Optional<T> found() {
    return Optional.empty();
  }

  @Override
  public <U> Reading<U> map(Function<? super T, ? extends U> change) {
    return as();
  }

  @Override
  public <U> Reading<U> then(Function<? super T, Reading<U>> next) {
    return as();
  }

  /** The same fault, met while something else was to be read. */
  public <U> Misread<U> as() {
    return new Misread<>(what, expected, nearest);
  }
}
