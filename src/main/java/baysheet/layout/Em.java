package baysheet.layout;

/** Lengths that grow with a font's size. */
final class Em {
  private Em() {}

  /**
   * Thousandths of an em at a font size, in thousandths of a point; a part of a thousandth counts
   * as a whole one, so that what fits in sum fits on paper.
   */
  static long at(long thousandthsOfEm, long size) {
    return -Math.floorDiv(-thousandthsOfEm * size, 1000);
  }
}
