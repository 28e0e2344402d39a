package baysheet.scan;

/** Sums over rectangles of a grey picture, each from four figures. */
final class Sums {
  private final int width;
  private final int height;
  private final int[] sums;

  Sums(Grey grey) {
    width = grey.width();
    height = grey.height();
    sums = new int[(width + 1) * (height + 1)];
    byte[] pixels = grey.pixels();
    for (int y = 0; y < height; y++) {
      int row = 0;
      int above = y * (width + 1);
      for (int x = 0; x < width; x++) {
        row += pixels[y * width + x] & 0xff;
        // Sums of a large picture overflow; their differences do not.
        sums[above + width + 1 + x + 1] = sums[above + x + 1] + row;
      }
    }
  }

  /** The sum over a rectangle that lies inside the picture. */
  long sum(int left, int top, int right, int bottom) {
    int up = top * (width + 1);
    int down = bottom * (width + 1);
    return Integer.toUnsignedLong(
        sums[down + right] - sums[down + left] - sums[up + right] + sums[up + left]);
  }
}
