package baysheet.scan;

/**
 * Takes lines of dirt out of a picture: dust on a feeder's glass draws a thin line along the whole
 * page, which would cross every box in its way. A streak runs through the margins at both ends,
 * where nothing is printed; a rule ends before.
 */
final class Streaks {
  /** What lies across a streak hides some of it. */
  private static final double LEAST_LENGTH = 0.5;

  /** Of the length, at either end of the paper: 5 mm of the 8 that stay white. */
  private static final double MARGIN = 0.02;

  /** Of the length, where the paper begins: the glass beyond it may be dark, and a page askew. */
  private static final double BEYOND = 0.1;

  /** The dark glass is below this, paper is above. */
  private static final int PAPER = 128;

  private static final double LEAST_IN_MARGIN = 0.5;

  /** The darkest of dust is wider than this part of the width nowhere: 0.5 mm of a page. */
  private static final double REACH = 0.0025;

  private static final int DARKER = 24;

  private Streaks() {}

  /** The picture without streaks in either direction. */
  static Grey without(Grey picture) {
    byte[] pixels = picture.pixels().clone();
    int width = picture.width();
    int height = picture.height();
    boolean down = clear(pixels, width, height, 1, width);
    boolean across = clear(pixels, height, width, width, 1);
    return down || across ? new Grey(width, height, pixels) : picture;
  }

  /**
   * @param lines how many lines there may be
   * @param step from a line to the next
   * @param along from a pixel of a line to the next
   */
  private static boolean clear(byte[] pixels, int lines, int length, int step, int along) {
    int reach = Math.max(2, (int) Math.round(Math.min(lines, length) * REACH));
    int margin = (int) (length * MARGIN);
    int[] dark = new int[lines];
    for (int i = margin; i < length - margin; i++) {
      for (int line = reach; line < lines - reach; line++) {
        int at = i * along + line * step;
        dark[line] += isDarker(pixels, at, reach * step) ? 1 : 0;
      }
    }
    boolean any = false;
    for (int line = reach; line < lines - reach; line++) {
      if (dark[line] > length * LEAST_LENGTH
          && isInMargin(pixels, line * step, along, length, reach * step)
          && isInMargin(pixels, line * step + (length - 1) * along, -along, length, reach * step)) {
        any = true;
        for (int i = 0; i < length; i++) {
          int at = i * along + line * step;
          // Writing across a streak is dark on both of its sides, and stays.
          int beside = Math.max(pixels[at - reach * step] & 0xff, pixels[at + reach * step] & 0xff);
          pixels[at] = (byte) Math.max(pixels[at] & 0xff, beside);
        }
      }
    }
    return any;
  }

  private static boolean isDarker(byte[] pixels, int at, int aside) {
    return (pixels[at] & 0xff) < beside(pixels, at, aside) - DARKER;
  }

  private static int beside(byte[] pixels, int at, int aside) {
    return Math.min(pixels[at - aside] & 0xff, pixels[at + aside] & 0xff);
  }

  /** Whether a line is dark on the first paper that it meets. */
  private static boolean isInMargin(byte[] pixels, int from, int along, int length, int aside) {
    int margin = (int) (length * MARGIN);
    int paper = 0;
    int dark = 0;
    for (int i = 0; i < length * BEYOND && paper < margin; i++) {
      int at = from + i * along;
      if (beside(pixels, at, aside) > PAPER) {
        paper++;
        dark += isDarker(pixels, at, aside) ? 1 : 0;
      }
    }
    return dark > margin * LEAST_IN_MARGIN;
  }
}
