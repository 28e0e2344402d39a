package baysheet.wording;

import baysheet.sheet.TorqueLine;
import baysheet.sheet.TorqueLine.Arrangement;
import baysheet.sheet.TorqueLine.OrderDrawing;
import baysheet.torque.DrawingPoint;
import baysheet.torque.TighteningOrder;
import baysheet.wording.TorqueTableText.DrawingText;
import baysheet.wording.TorqueTableText.PositionText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Tightening sequences as drawings, at each position its turn, seen from the front; and as numbered
 * lists, for those that are too large to draw or whose source does not say where the positions are.
 */
final class SequenceDrawing {
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

  /** A drawing with more positions is slower to follow than a list. */
  private static final int MOST_DRAWN = 64;

  /** A wider drawing leaves no room for words beside it in a third of a page, in millimetres. */
  private static final double NARROW = 45;

  /** A wider drawing fits no paper within its margins, in millimetres. */
  private static final double WIDEST = 190;

  /** The box markup draws nothing that is taller than this many widths. */
  private static final double TALLEST = 4;

  /** So many turns stand on one line of a list, so that the place is found again. */
  private static final int TURNS_A_LINE = 10;

  private SequenceDrawing() {}

  /** One drawing for each letter, in the order of the letters. */
  static List<DrawingText> all(List<TorqueLine> lines) {
    Map<String, List<TorqueLine>> byLetter = new LinkedHashMap<>();
    for (TorqueLine line : lines) {
      line.method()
          .drawing()
          .map(OrderDrawing::letter)
          .ifPresent(
              letter -> byLetter.computeIfAbsent(letter, any -> new ArrayList<>()).add(line));
    }
    // After z comes aa.
    Comparator<String> letters =
        Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());
    return byLetter.entrySet().stream()
        .sorted(Map.Entry.comparingByKey(letters))
        .map(entry -> of(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static DrawingText of(String letter, List<TorqueLine> lines) {
    TorqueLine first = lines.get(0);
    OrderDrawing drawing = first.method().drawing().orElseThrow();
    List<Integer> order = first.method().order();
    Scale scale = scale(drawing, first.count());
    boolean drawn = scale.isDrawn() && order.size() <= MOST_DRAWN && isKnown(drawing);
    return new DrawingText(
        letter,
        Phrases.counted("row", lines.stream().map(TorqueLine::n).toList()),
        scale.thousandths(scale.height()),
        (int) scale.width(),
        scale.thousandths(RING),
        scale.thousandths(FIGURE),
        drawn ? positions(points(drawing, first.count()), order, scale) : List.of(),
        drawn && scale.width() > NARROW,
        turns(order),
        numbering(drawing.arrangement()),
        says(letter, drawing, order));
  }

  private static boolean isKnown(OrderDrawing drawing) {
    return drawing.arrangement() != Arrangement.NUMBERED_BY_THE_SOURCE;
  }

  private static List<DrawingPoint> points(OrderDrawing drawing, int count) {
    return drawing.arrangement() == Arrangement.ROWS
        ? TighteningOrder.rowPositions(drawing.rows())
        : TighteningOrder.circlePositions(count);
  }

  private static List<PositionText> positions(
      List<DrawingPoint> points, List<Integer> order, Scale scale) {
    return IntStream.range(0, points.size())
        .mapToObj(
            i -> {
              int turn = order.indexOf(i + 1) + 1;
              DrawingPoint point = points.get(i);
              return new PositionText(
                  scale.x(point), scale.y(point), String.valueOf(turn), turn == 1);
            })
        .toList();
  }

  /** {@code 1–10: 1, 33, 17 …}: which turns, then their positions. */
  private static List<String> turns(List<Integer> order) {
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < order.size(); from += TURNS_A_LINE) {
      int to = Math.min(order.size(), from + TURNS_A_LINE);
      String turns = to - from == 1 ? String.valueOf(to) : (from + 1) + "–" + to;
      lines.add(turns + ": " + Phrases.numbers(order.subList(from, to)));
    }
    return List.copyOf(lines);
  }

  private static String numbering(Arrangement arrangement) {
    return switch (arrangement) {
      case CIRCLE -> "positions numbered clockwise from the top";
      case ROWS -> "positions numbered row by row from the front left";
      case NUMBERED_BY_THE_SOURCE -> "positions numbered as in the source of the torque";
    };
  }

  private static String says(String letter, OrderDrawing drawing, List<Integer> order) {
    return "Tightening sequence %s: positions %s; %s, seen from the front of the fasteners"
        .formatted(letter, Phrases.numbers(order), numbering(drawing.arrangement()));
  }

  private static Scale scale(OrderDrawing drawing, int count) {
    if (drawing.arrangement() != Arrangement.ROWS) {
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

    boolean isDrawn() {
      return width <= WIDEST && height <= TALLEST * width;
    }

    int x(DrawingPoint point) {
      return thousandths(width / 2 + point.x() * across);
    }

    int y(DrawingPoint point) {
      return thousandths(height / 2 - point.y() * down);
    }

    int thousandths(double millimetres) {
      return (int) Math.round(1000 * millimetres / width);
    }
  }
}
