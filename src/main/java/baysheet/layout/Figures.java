package baysheet.layout;

import java.util.List;

/**
 * How far the figures of a column reach to both sides of their decimal points, in thousandths of a
 * point.
 *
 * @param before the point: whole numbers and what stands in front of them
 * @param after the point: decimals, units and the rest of the line
 */
record Figures(long before, long after) {
  static final Figures NONE = new Figures(0, 0);

  static Figures of(List<Lines.SetLine> lines) {
    Figures figures = NONE;
    for (Lines.SetLine line : lines) {
      if (line.point() >= 0) {
        figures = figures.and(new Figures(line.point(), line.width() - line.point()));
      }
    }
    return figures;
  }

  Figures and(Figures other) {
    return new Figures(Math.max(before, other.before), Math.max(after, other.after));
  }

  long width() {
    return before + after;
  }
}
