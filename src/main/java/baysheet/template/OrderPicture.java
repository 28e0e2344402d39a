package baysheet.template;

import baysheet.plan.TorqueLine;
import baysheet.plan.TorqueLine.OrderDrawing;
import baysheet.template.TorqueTableText.DrawingText;
import baysheet.template.TorqueTableText.PositionText;
import baysheet.torque.Point;
import baysheet.torque.TighteningOrder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Drawings of tightening orders: at each position its turn, seen from the front. */
final class OrderPicture {
  /** Half the height of a ring that holds two figures of 8 pt, in millimetres. */
  private static final double RING = 2.4;

  /** Rings never touch: from middle to middle, in millimetres. */
  private static final double PITCH = 5.2;

  /** A figure of 8.2 pt, in millimetres; nothing that carries a figure is under 8 pt. */
  private static final double FIGURE = 2.9;

  /** A circle of four still looks round, in millimetres. */
  private static final double SMALLEST_CIRCLE = 4.2;

  /** Room for the line of the outermost rings, in millimetres. */
  private static final double EDGE = 0.3;

  private OrderPicture() {}

  /** One drawing for each letter, in the order of the letters. */
  static List<DrawingText> all(List<TorqueLine> lines) {
    Map<String, List<TorqueLine>> byLetter = new LinkedHashMap<>();
    for (TorqueLine line : lines) {
      line.drawing()
          .map(OrderDrawing::letter)
          .ifPresent(
              letter -> byLetter.computeIfAbsent(letter, any -> new ArrayList<>()).add(line));
    }
    return byLetter.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(entry -> of(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static DrawingText of(String letter, List<TorqueLine> lines) {
    TorqueLine first = lines.get(0);
    OrderDrawing drawing = first.drawing().orElseThrow();
    Scale scale = scale(drawing, first.count());
    List<Point> points =
        drawing.circle()
            ? TighteningOrder.circlePositions(first.count())
            : TighteningOrder.rowPositions(drawing.rows());
    return new DrawingText(
        letter,
        Phrases.counted("line", lines.stream().map(TorqueLine::n).toList()),
        scale.thousandths(scale.height()),
        (int) scale.width(),
        scale.thousandths(RING),
        scale.thousandths(FIGURE),
        positions(points, first.order(), scale),
        says(letter, drawing, first.order()));
  }

  private static List<PositionText> positions(
      List<Point> points, List<Integer> order, Scale scale) {
    return IntStream.range(0, points.size())
        .mapToObj(
            i -> {
              int turn = order.indexOf(i + 1) + 1;
              Point point = points.get(i);
              return new PositionText(
                  scale.x(point), scale.y(point), String.valueOf(turn), turn == 1);
            })
        .toList();
  }

  private static String says(String letter, OrderDrawing drawing, List<Integer> order) {
    String shape =
        drawing.circle()
            ? "on a circle, numbered clockwise from the top"
            : "in rows, numbered from the front left";
    return "Order of tightening %s: positions %s %s, seen from the front of the fasteners"
        .formatted(
            letter, order.stream().map(String::valueOf).collect(Collectors.joining(", ")), shape);
  }

  private static Scale scale(OrderDrawing drawing, int count) {
    if (drawing.circle()) {
      // The chord between neighbours on a circle of radius R is 2 R sin(π/n).
      double radius = Math.max(SMALLEST_CIRCLE, PITCH / 2 / StrictMath.sin(Math.PI / count));
      return Scale.of(radius, radius);
    }
    int widest = drawing.rows().stream().mapToInt(Integer::intValue).max().orElse(1);
    return Scale.of(PITCH * (widest - 1) / 2, PITCH * (drawing.rows().size() - 1) / 2);
  }

  /**
   * From a square of −1 to 1 to a drawing.
   *
   * @param across millimetres from the middle to the outermost position
   * @param width of the whole drawing, in whole millimetres
   */
  private record Scale(double across, double down, double width, double height) {
    static Scale of(double across, double down) {
      double border = 2 * (RING + EDGE);
      return new Scale(across, down, Math.ceil(2 * across + border), 2 * down + border);
    }

    int x(Point point) {
      return thousandths(width / 2 + point.x() * across);
    }

    int y(Point point) {
      return thousandths(height / 2 - point.y() * down);
    }

    int thousandths(double millimetres) {
      return (int) Math.round(1000 * millimetres / width);
    }
  }
}
