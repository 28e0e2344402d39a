package baysheet.books;

import baysheet.report.Located;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningOrder;
import java.util.List;
import java.util.Optional;

/**
 * What must fit together within one fastener. Values that stand in different files meet only when
 * one is laid over the other, so this is asked again then.
 */
public final class FastenerCheck {
  private FastenerCheck() {}

  /** Reports every value that contradicts another one of the same fastener. */
  public static void check(FastenerText text, Problems problems) {
    text.method().order().ifPresent(order -> order(order, text.pieces().count(), problems));
    text.method()
        .passes()
        .ifPresent(passes -> text.tightening().ifPresent(it -> passes(passes.at(), it, problems)));
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
          .ifPresent(number -> problems.add(BookSentences.orderForOne(order.at(), number.value())));
    }
  }

  private static void given(
      List<Integer> positions, Span at, Optional<Located<Integer>> count, Problems problems) {
    int all = count.map(Located::value).orElse(Math.max(1, positions.size()));
    FigureReaders.orReport(
        ProblemCode.BAD_ORDER, TighteningOrder.given(positions, all), at, problems);
  }

  private static void rows(
      List<Integer> counts, Span at, Optional<Located<Integer>> count, Problems problems) {
    int sum = counts.stream().mapToInt(Integer::intValue).sum();
    count
        .filter(number -> number.value() != sum)
        .ifPresent(number -> problems.add(BookSentences.rowsDoNotSum(at, sum, number)));
  }

  private static void passes(Span at, Located<Tightening> torque, Problems problems) {
    if (!isPlain(torque.value())) {
      problems.add(BookSentences.passesOfStages(at, torque.at()));
    }
  }

  private static boolean isPlain(Tightening tightening) {
    return tightening instanceof Tightening.Stages stages && stages.plainTorque().isPresent();
  }
}
