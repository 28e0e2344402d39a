package baysheet.plan.content;

import baysheet.books.Fastener;
import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.Arrangement;
import baysheet.torque.TighteningOrder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Letters for order drawings; torque lines that share an order share the drawing. */
final class SequenceLetters {
  // Fewer than four have no order worth a drawing.
  private static final int FEWEST_DRAWN = 4;

  private static final int ALPHABET = 26;

  private record Shape(Arrangement arrangement, List<Integer> rows, List<Integer> order) {}

  private final Map<Shape, String> letters = new LinkedHashMap<>();

  /** The positions in the order in which they are tightened; empty where none is given. */
  static List<Integer> positions(Fastener fastener) {
    int count = fastener.count().value();
    Optional<Fastener.Order> order =
        fastener.written().method().order().map(written -> written.value());
    if (order.isEmpty() || count < 2) {
      return List.of();
    }
    if (order.get() instanceof Fastener.Order.Rows rows) {
      return TighteningOrder.rows(rows.counts());
    }
    if (order.get() instanceof Fastener.Order.Given given) {
      return given.positions();
    }
    return TighteningOrder.circle(count);
  }

  /** The drawing of a fastener's order, if it is worth one. */
  Optional<TorqueLine.OrderDrawing> drawing(Fastener fastener) {
    List<Integer> order = positions(fastener);
    if (order.size() < FEWEST_DRAWN) {
      return Optional.empty();
    }
    List<Integer> rows = rows(fastener);
    Arrangement arrangement = arrangement(fastener);
    Shape shape = new Shape(arrangement, rows, order);
    String letter = letters.computeIfAbsent(shape, key -> letter(letters.size()));
    return Optional.of(new TorqueLine.OrderDrawing(letter, arrangement, rows));
  }

  /** A, B … Z, AA, AB … */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % ALPHABET));
    return index < ALPHABET ? last : letter(index / ALPHABET - 1) + last;
  }

  private static Arrangement arrangement(Fastener fastener) {
    Fastener.Order order = fastener.written().method().order().orElseThrow().value();
    if (order instanceof Fastener.Order.Rows) {
      return Arrangement.ROWS;
    }
    return order instanceof Fastener.Order.Given
        ? Arrangement.NUMBERED_BY_THE_SOURCE
        : Arrangement.CIRCLE;
  }

  private static List<Integer> rows(Fastener fastener) {
    List<Integer> rows = new ArrayList<>();
    fastener
        .written()
        .method()
        .order()
        .map(written -> written.value())
        .filter(Fastener.Order.Rows.class::isInstance)
        .map(Fastener.Order.Rows.class::cast)
        .ifPresent(order -> rows.addAll(order.counts()));
    return rows;
  }
}
