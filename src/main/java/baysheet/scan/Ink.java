package baysheet.scan;

/**
 * What is ink on a page set straight: darker than its surroundings by the rule of Sauvola and
 * Pietikäinen (Adaptive document image binarization, Pattern Recognition 33, 2000): a pixel is ink
 * under {@code mean * (1 + K * (deviation / R - 1))}, over a window around it.
 *
 * @param dark where ink is; not copied
 * @param means of the windows: how bright the paper is there; not copied
 */
record Ink(boolean[] dark, byte[] means) {
  /** The published range of the deviation for eight bits. */
  private static final double R = 128;

  /**
   * The published 0.5 loses pale strokes on white paper; at 0.2 a pixel must be a fifth darker than
   * plain paper, five times the noise of a poor scanner.
   */
  private static final double K = 0.2;

  /** 2.5 mm to either side: wider than any stroke, narrower than shades of folds and stains. */
  private static final int HALF = 5 * BlankPage.PIXELS / 2;

  /**
   * Of a smoothed line, what is dark: one as wide as a pixel keeps three eighths of itself, and
   * half of that where every second dot is missing.
   */
  private static final double ENOUGH = 0.18;

  static Ink of(Grey page) {
    int width = page.width();
    int height = page.height();
    Sums sums = new Sums(page);
    Sums squares = new Sums(squared(page));
    boolean[] dark = new boolean[width * height];
    byte[] means = new byte[width * height];
    for (int y = 0; y < height; y++) {
      int top = Math.max(0, y - HALF);
      int bottom = Math.min(height, y + HALF + 1);
      for (int x = 0; x < width; x++) {
        int left = Math.max(0, x - HALF);
        int right = Math.min(width, x + HALF + 1);
        double count = (double) (right - left) * (bottom - top);
        double mean = sums.sum(left, top, right, bottom) / count;
        int at = y * width + x;
        means[at] = (byte) mean;
        int shade = page.pixels()[at] & 0xff;
        // Whatever the deviation, the limit lies between these two, and most paper is brighter.
        dark[at] = shade < mean * (1 - K);
        if (!dark[at] && shade < mean) {
          double square = squares.sum(left, top, right, bottom) * 256.0 / count;
          double deviation = Math.sqrt(Math.max(0, square - mean * mean));
          dark[at] = shade < mean * (1 + K * (deviation / R - 1));
        }
      }
    }
    return new Ink(dark, means);
  }

  /**
   * The same of a scan in black and white, where pale ink breaks into dots: dark is what has enough
   * black around it, so that dots run together and hairs fall off.
   */
  Ink smooth(Grey page) {
    byte[] shades = page.averaged(1).averaged(1).pixels();
    boolean[] smooth = new boolean[shades.length];
    for (int i = 0; i < shades.length; i++) {
      smooth[i] = (shades[i] & 0xff) < 255 * (1 - ENOUGH);
    }
    return new Ink(smooth, means);
  }

  /** Squares in units of 256, so that they are bytes again; the deviation needs no more. */
  private static Grey squared(Grey page) {
    byte[] squares = new byte[page.pixels().length];
    for (int i = 0; i < squares.length; i++) {
      int value = page.pixels()[i] & 0xff;
      squares[i] = (byte) (value * value >> 8);
    }
    return new Grey(page.width(), page.height(), squares);
  }
}
