package baysheet.box;

/** The size of a box for a pen, in thousandths of a point: wanted, and the least that will do. */
public record PenSize(long width, long height, long leastWidth, long leastHeight) {
  public PenSize {
    if (leastWidth < 1 || leastHeight < 1 || width < leastWidth || height < leastHeight) {
      throw new IllegalArgumentException(
          "pen size %s x %s, least %s x %s".formatted(width, height, leastWidth, leastHeight));
    }
  }
}
