package baysheet.layout;

/**
 * How wide a content must be and would like to be, in thousandths of a point.
 *
 * @param least its widest word or fixed thing
 * @param natural its width with no line broken
 */
record Extent(long least, long natural) {
  static final Extent NONE = new Extent(0, 0);

  Extent {
    natural = Math.max(least, natural);
  }

  static Extent fixed(long width) {
    return new Extent(width, width);
  }

  /** Of two contents under one another. */
  Extent or(Extent other) {
    return new Extent(Math.max(least, other.least), Math.max(natural, other.natural));
  }

  /** Of two contents beside one another. */
  Extent and(Extent other) {
    return new Extent(least + other.least, natural + other.natural);
  }

  Extent plus(long width) {
    return new Extent(least + width, natural + width);
  }
}
