package baysheet.torque;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The order in which a set of fasteners is tightened, as positions.
 *
 * <p>Positions are numbered from 1: clockwise from the top of a circle, row by row from the front
 * left of a grid. An order lists positions, first to be tightened first.
 */
public final class TighteningOrder {
  private TighteningOrder() {}

  /**
   * A cross pattern for {@code count} fasteners on a circle.
   *
   * <p>4, 8, 12, 16, 20 and 24: the legacy cross pattern of ASME PCC-1, table 4 (12 read in a
   * reproduction, the rest from memory). 5: the wheel star, and other odd counts by the same step,
   * which never touches a neighbour. Other even counts: opposite pairs, each pair far from the
   * last.
   *
   * @param count at least 1
   */
  public static List<Integer> circle(int count) {
    requireSome(count);
    if (count % 2 == 1) {
      return star(count);
    }
    return count % 4 == 0 && count <= 24 ? legacyCross(count) : pairs(count, stride(count / 2));
  }

  /**
   * From the centre outward for rows of fasteners, each next one across the centre from the last.
   *
   * @param rows fasteners in each row, front row first; every row centred on the others
   */
  public static List<Integer> rows(List<Integer> rows) {
    List<Spot> spots = spots(rows);
    return spots.stream().sorted(Spot.OUTWARD).map(Spot::position).toList();
  }

  /** The book's own order, when it names each of {@code count} positions once. */
  public static ParseResult<List<Integer>> given(List<Integer> order, int count) {
    requireSome(count);
    Set<Integer> seen = new TreeSet<>();
    for (int position : order) {
      if (position < 1 || position > count) {
        return misread("names position " + position, count);
      }
      if (!seen.add(position)) {
        return misread("names position " + position + " twice", count);
      }
    }
    return IntStream.rangeClosed(1, count)
        .filter(position -> !seen.contains(position))
        .boxed()
        .findFirst()
        .map(position -> misread("leaves out position " + position, count))
        .orElseGet(() -> new Parsed<>(List.copyOf(order)));
  }

  /** Where the positions of a circle stand, clockwise from the top. */
  public static List<DrawingPoint> circlePositions(int count) {
    requireSome(count);
    return IntStream.range(0, count)
        .mapToDouble(step -> 2 * Math.PI * step / count)
        .mapToObj(angle -> new DrawingPoint(StrictMath.sin(angle), StrictMath.cos(angle)))
        .toList();
  }

  /** Where the positions of rows stand: the front row on top, all rows in one pitch. */
  public static List<DrawingPoint> rowPositions(List<Integer> rows) {
    double widest = Math.max(1, Collections.max(rows) - 1);
    double deepest = Math.max(1, rows.size() - 1);
    return spots(rows).stream()
        .map(spot -> new DrawingPoint(spot.across() / widest, -spot.down() / deepest))
        .toList();
  }

  private static ParseResult<List<Integer>> misread(String fault, int count) {
    return new ParseFailure<>("the order " + fault, "each position from 1 to " + count + " once");
  }

  private static void requireSome(int count) {
    if (count < 1) {
      throw new IllegalArgumentException("no order for " + count + " fasteners");
    }
  }

  /** Half the circle less a half step each time: never a neighbour, and every position once. */
  private static List<Integer> star(int count) {
    int step = Math.max(1, count / 2);
    return IntStream.range(0, count).mapToObj(turn -> turn * step % count + 1).toList();
  }

  /** Groups of four a quarter turn apart; the groups start so that gaps are halved. */
  private static List<Integer> legacyCross(int count) {
    int quarter = count / 4;
    List<Integer> order = new ArrayList<>();
    for (int start : groupStarts(quarter)) {
      order.addAll(List.of(start, start + 2 * quarter, start + quarter, start + 3 * quarter));
    }
    return List.copyOf(order);
  }

  /** First positions of the groups, as the published lists have them for each size. */
  private static List<Integer> groupStarts(int quarter) {
    return switch (quarter) {
      case 1 -> List.of(1);
      case 2 -> List.of(1, 2);
      case 3 -> List.of(1, 2, 3);
      case 4 -> List.of(1, 3, 2, 4);
      case 5 -> List.of(1, 3, 5, 2, 4);
      case 6 -> List.of(1, 4, 2, 5, 3, 6);
      default -> throw new IllegalArgumentException("no published cross of " + 4 * quarter);
    };
  }

  private static List<Integer> pairs(int count, int stride) {
    int half = count / 2;
    return IntStream.range(0, half)
        .map(turn -> turn * stride % half)
        .boxed()
        .flatMap(axis -> Stream.of(axis + 1, axis + 1 + half))
        .toList();
  }

  /** The largest step below half of {@code axes} that visits every axis. */
  private static int stride(int axes) {
    int stride = Math.max(1, (axes - 1) / 2);
    while (divisor(stride, axes) != 1) {
      stride--;
    }
    return stride;
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  private static List<Spot> spots(List<Integer> rows) {
    if (rows.isEmpty() || Collections.min(rows) < 1) {
      throw new IllegalArgumentException("no order for rows " + rows);
    }
    List<Spot> spots = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      int wide = rows.get(row);
      for (int column = 0; column < wide; column++) {
        int down = 2 * row - (rows.size() - 1);
        spots.add(new Spot(spots.size() + 1, 2 * column - (wide - 1), down));
      }
    }
    return List.copyOf(spots);
  }

  /**
   * A position in rows.
   *
   * @param across half pitches from the centre line, to the right
   * @param down half rows from the middle, away from the front
   */
  private record Spot(int position, int across, int down) {
    /** Columns outward, rows outward, then the four corners of a ring crosswise. */
    static final Comparator<Spot> OUTWARD =
        Comparator.comparingInt((Spot spot) -> Math.abs(spot.across))
            .thenComparingInt(spot -> Math.abs(spot.down))
            .thenComparingInt(Spot::corner);

    /** Front left, back right, front right, back left. */
    private int corner() {
      boolean right = across > 0;
      boolean back = down > 0;
      return (right != back ? 2 : 0) + (back ? 1 : 0);
    }
  }
}
