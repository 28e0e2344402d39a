package baysheet.box;

/**
 * How text is set.
 *
 * @param hand whether its size goes by that of text read in the hand instead of the body's
 * @param scale thousandths of that size
 * @param floor never smaller, in thousandths of a point
 * @param ceiling never larger, in thousandths of a point
 */
public record TextStyle(boolean hand, int scale, long floor, long ceiling, Align align) {
  public TextStyle {
    if (scale < 1 || floor < 1 || ceiling < floor) {
      throw new IllegalArgumentException("style " + scale + ", " + floor + ".." + ceiling);
    }
  }

  /** Where text stands in its width; {@code DECIMAL} lines up on the decimal point of a column. */
  public enum Align {
    LEFT,
    CENTRE,
    RIGHT,
    DECIMAL
  }
}
