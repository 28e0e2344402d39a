package baysheet.scan;

/**
 * Takes lines of dirt out of a picture: dust on a feeder's glass draws a thin line along the whole
 * page, which would cross every box in its way. A streak runs through the margins at both ends,
 * where nothing is printed; a rule ends before.
 */
final class Streaks {
  /** What lies across a streak hides some of it. */
  private static final double LEAST_LENGTH = 0.5;

  /** Of the length, at either end: 5 mm of the 8 that stay white on paper. */
  private static final double MARGIN = 0.02;

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
    int[] first = new int[lines];
    int[] last = new int[lines];
    for (int i = 0; i < length; i++) {
      int[] here = i < margin ? first : i >= length - margin ? last : dark;
      for (int line = reach; line < lines - reach; line++) {
        int at = i * along + line * step;
        int beside = Math.min(pixels[at - reach * step] & 0xff, pixels[at + reach * step] & 0xff);
        if ((pixels[at] & 0xff) < beside - DARKER) {
          here[line]++;
        }
      }
    }
    boolean any = false;
    for (int line = reach; line < lines - reach; line++) {
      if (dark[line] > length * LEAST_LENGTH
          && Math.min(first[line], last[line]) > margin * LEAST_IN_MARGIN) {
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
}
