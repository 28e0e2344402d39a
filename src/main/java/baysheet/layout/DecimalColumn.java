package baysheet.layout;

import java.util.List;

/**
 * How far the figures of a column reach to both sides of their decimal points, in thousandths of a
 * point.
 *
 * @param before the point: whole numbers and what stands in front of them
 * @param after the point: decimals, units and the rest of the line
 */
record DecimalColumn(long before, long after) {
  static final DecimalColumn NONE = new DecimalColumn(0, 0);

  static DecimalColumn of(List<ParagraphLines.SetLine> lines) {
    DecimalColumn figures = NONE;
    for (ParagraphLines.SetLine line : lines) {
      if (line.point() >= 0) {
        figures = figures.and(new DecimalColumn(line.point(), line.width() - line.point()));
      }
    }
    return figures;
  }

  DecimalColumn and(DecimalColumn other) {
    return new DecimalColumn(Math.max(before, other.before), Math.max(after, other.after));
  }

  long width() {
    return before + after;
  }
}
