package baysheet.yaml;

import baysheet.report.Span;

/** One value of a file, with the place where it was written. */
public sealed interface Node permits Scalar, Sequence, Mapping {
  /** From the value's first character to the one after its last. */
  Span at();

  /** What this is, in a person's words and with its article: {@code a list}. */
  String shape();

  /** Whether nothing was written where a value belongs, as in {@code bay:}. */
  default boolean isEmpty() {
    return false;
  }
}
