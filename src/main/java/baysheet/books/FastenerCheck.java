package baysheet.books;

import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Tightening;
import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What must fit together within one fastener. Values that stand in different files meet only when
 * one is laid over the other, so this is asked again then.
 */
public final class FastenerCheck {
  private static final BigDecimal FULL = BigDecimal.valueOf(100);

  private FastenerCheck() {}

  /** Tells every value that contradicts another one of the same fastener. */
  public static void check(FastenerText text, Problems problems) {
    text.order().ifPresent(order -> order(order, text.count(), problems));
    text.passes().ifPresent(passes -> passes(passes, text.tightening(), problems));
  }

  private static void order(
      Located<Fastener.Order> order, Optional<Located<Integer>> count, Problems problems) {
    if (order.value() instanceof Fastener.Order.Given given) {
      given(given.positions(), order.at(), count, problems);
    } else if (order.value() instanceof Fastener.Order.Rows rows) {
      rows(rows.counts(), order.at(), count, problems);
    } else {
      count
          .filter(number -> number.value() < 2)
          .ifPresent(number -> problems.add(Sentences.orderForOne(order.at(), number.value())));
    }
  }

  private static void given(
      List<Integer> positions, Span at, Optional<Located<Integer>> count, Problems problems) {
    Set<Integer> distinct = new LinkedHashSet<>(positions);
    int length = positions.size();
    if (count.isPresent() && count.get().value() != length) {
      problems.add(Sentences.orderTooLong(at, length, count.get()));
    } else if (distinct.size() < length || distinct.stream().anyMatch(it -> it > length)) {
      problems.add(Sentences.notAPermutation(at, length));
    }
  }

  private static void rows(
      List<Integer> counts, Span at, Optional<Located<Integer>> count, Problems problems) {
    int sum = counts.stream().mapToInt(Integer::intValue).sum();
    count
        .filter(number -> number.value() != sum)
        .ifPresent(number -> problems.add(Sentences.rowsDoNotSum(at, sum, number)));
  }

  private static void passes(
      Located<List<BigDecimal>> passes,
      Optional<Located<Tightening>> tightening,
      Problems problems) {
    List<BigDecimal> shares = passes.value();
    for (int i = 1; i < shares.size(); i++) {
      if (shares.get(i).compareTo(shares.get(i - 1)) <= 0) {
        problems.add(Sentences.passesDoNotRise(passes.at(), shares.get(i)));
      }
    }
    if (shares.isEmpty() || shares.get(shares.size() - 1).compareTo(FULL) != 0) {
      problems.add(Sentences.passesEndShort(passes.at()));
    }
    tightening
        .filter(torque -> !isPlain(torque.value()))
        .ifPresent(torque -> problems.add(Sentences.passesOfStages(passes.at(), torque.at())));
  }

  private static boolean isPlain(Tightening tightening) {
    return tightening instanceof Tightening.Stages stages && stages.plainTorque().isPresent();
  }
}
