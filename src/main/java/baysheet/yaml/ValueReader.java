package baysheet.yaml;

import baysheet.report.Located;
import baysheet.report.Problems;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads one value from a node. Whatever is written there, it never throws: it says what is wrong
 * and gives nothing.
 */
@FunctionalInterface
public interface ValueReader<T> {
  /** The value and its place; empty when a problem was added. */
  Optional<Located<T>> read(Node node, Problems problems);

  /** The same reader, with its value turned into something else. */
  default <U> ValueReader<U> map(Function<? super T, ? extends U> change) {
    return (node, problems) -> read(node, problems).map(located -> located.map(change));
  }
}
