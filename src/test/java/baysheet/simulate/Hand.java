package baysheet.simulate;

import java.util.Random;
import java.util.function.IntUnaryOperator;

/** How one person writes: size, slant, steadiness and the pen. */
final class Hand {
  /** Strokes of the ten figures in a box of one by one, x y x y …; a pen lifts between arrays. */
  private static final double[][][] FIGURES = {
    {{.5, 0, .1, .3, .15, .8, .5, 1, .9, .7, .85, .2, .5, 0}},
    {{.2, .3, .55, 0, .55, 1}},
    {{.1, .25, .4, 0, .85, .2, .6, .6, .1, 1, .9, 1}},
    {{.15, .1, .6, 0, .8, .25, .4, .48, .85, .7, .55, 1, .1, .88}},
    {{.6, 0, .1, .65, .9, .65}, {.7, .4, .68, 1}},
    {{.85, 0, .25, 0, .2, .45, .7, .45, .85, .75, .5, 1, .1, .9}},
    {{.75, 0, .3, .35, .15, .8, .5, 1, .85, .75, .5, .55, .2, .75}},
    {{.1, 0, .9, 0, .4, 1}},
    {{.5, .45, .2, .2, .5, 0, .8, .2, .5, .45, .15, .75, .5, 1, .85, .75, .5, .45}},
    {{.8, .25, .5, .45, .2, .25, .5, 0, .8, .25, .75, .6, .6, 1}},
  };

  private static final int CROSS = 2;

  private final Random chance;
  private final double slant;
  private final double jitter;
  private final double size;
  private final double pen;
  private final int level;
  private final int tickKind;
  private final boolean changes;

  Hand(long seed) {
    this(seed, 1, false);
  }

  private Hand(long seed, double haste, boolean crosses) {
    chance = new Random(seed);
    slant = between(-0.15, 0.45) * haste;
    jitter = between(0.02, 0.1) * haste;
    size = 1 + between(-0.2, 0.2) * haste;
    // From a fine ballpoint to a marker, 0.3 to 1 mm.
    pen = 0.3 + 0.7 * haste * Math.pow(chance.nextDouble(), 1.7);
    level = (int) between(15, 105);
    tickKind = crosses ? CROSS : chance.nextInt(4);
    changes = !crosses;
  }

  /**
   * Somebody who takes the time to write clearly, with a ballpoint.
   *
   * @param crosses whether every box gets a cross, which is the plainest of marks
   */
  static Hand steady(long seed, boolean crosses) {
    return new Hand(seed, 0.3, crosses);
  }

  @Override
  public String toString() {
    return "pen %.2f mm, level %d, slant %.2f, jitter %.2f, size %.2f, tick %d;"
        .formatted(pen, level, slant, jitter, size, tickKind);
  }

  private double between(double least, double most) {
    return least + chance.nextDouble() * (most - least);
  }

  /** A tick, a cross or a stroke about the middle of a box; it may well overrun. */
  void tick(Sheeted page, double x, double y, double w, double h) {
    double s = Math.min(w, h) * between(0.75, 1.35) * size;
    double cx = x + w / 2 + between(-0.12, 0.12) * w - s / 2;
    double cy = y + h / 2 + between(-0.12, 0.12) * h - s / 2;
    int kind = changes && chance.nextInt(6) == 0 ? chance.nextInt(4) : tickKind;
    switch (kind) {
      case 0, 1 -> line(page, cx, cy, s, s, .05, .5, .35, .95, 1, .0);
      case CROSS -> {
        line(page, cx, cy, s, s, .1, .1, .5, .52, .9, .9);
        line(page, cx, cy, s, s, .9, .08, .5, .5, .1, .92);
      }
      default -> line(page, cx, cy, s, s, .15, .9, .5, .5, .85, .1);
    }
  }

  /** A value of two to four figures. */
  void value(Sheeted page, double x, double y, double w, double h) {
    figures(page, x, y, w, h, 2 + chance.nextInt(2), i -> chance.nextInt(10));
  }

  /** A value that is known: figures, and a point between them. */
  void value(Sheeted page, double x, double y, double w, double h, String value) {
    figures(page, x, y, w, h, value.length(), i -> Character.digit(value.charAt(i), 10));
  }

  private void figures(
      Sheeted page, double x, double y, double w, double h, int count, IntUnaryOperator digit) {
    double high = Math.min(h * between(0.5, 0.85), 6.5) * size;
    double step = Math.min(high * between(0.55, 0.8), w * 0.95 / count);
    double from = x + Math.max(0.3, (w - step * count) * between(0.1, 0.8));
    for (int i = 0; i < count; i++) {
      double up = y + (h - high) * between(0.3, 0.7);
      int which = digit.applyAsInt(i);
      if (which < 0) {
        page.dot(from + (i + 0.4) * step, up + high, 0.4, level);
        continue;
      }
      for (double[] stroke : FIGURES[which]) {
        line(page, from + i * step, up, step * 0.75, high, stroke);
      }
    }
  }

  /** Letters of nobody's alphabet: loops and stems, no finer than this hand's pen can draw. */
  void letters(Sheeted page, double x, double y, double w, double h, int wanted) {
    int count = Math.min(wanted, Math.max(1, (int) (w / (3.5 * pen))));
    double step = w / count;
    int most = Math.max(3, (int) (step / (1.6 * pen)) + 1);
    for (int i = 0; i < count; i++) {
      int bends = Math.min(most, 4 + chance.nextInt(3));
      double[] stroke = new double[2 * bends];
      for (int b = 0; b < bends; b++) {
        stroke[2 * b] = Math.min(1, Math.max(0, (b + between(-1, 1)) / (bends - 1)));
        stroke[2 * b + 1] = b % 2 == 0 ? between(0, 0.35) : between(0.6, 1);
      }
      line(page, x + i * step, y, step * 0.95, h, stroke);
    }
  }

  void initials(Sheeted page, double x, double y, double w, double h) {
    double high = h * between(0.5, 0.85);
    double wide = Math.min(w * 0.9, high * between(1.2, 2));
    letters(page, x + (w - wide) * between(0.1, 0.9), y + (h - high) / 2, wide, high, 2);
  }

  /** A name: one line with loops, longer than high. */
  void signature(Sheeted page, double x, double y, double w, double h) {
    double wide = w * between(0.35, 0.85);
    double high = h * between(0.45, 1.05);
    double from = x + (w - wide) * between(0.1, 0.9);
    letters(page, from, y + (h - high) / 2, wide, high, 3 + chance.nextInt(6));
    if (chance.nextInt(3) == 0) {
      line(page, from, y + h * 0.7, wide, 1.5, 0, 1, .4, .2, 1, .5);
    }
  }

  /** Words on a line, standing on it. */
  void words(Sheeted page, double x, double y, double w, double h) {
    double high = Math.min(h * between(0.5, 0.8), 4.5);
    double wide = Math.min(w * 0.95, between(6, 35));
    int count = Math.max(2, (int) (wide / high / 0.7));
    letters(
        page,
        x + Math.max(0.2, (w - wide) * between(0, 0.5)),
        y + h - high - 0.4,
        wide,
        high,
        count);
  }

  /** A smooth line through points of a box, with this hand's slant, jitter and pressure. */
  private void line(Sheeted page, double x, double y, double w, double h, double... points) {
    int n = points.length / 2;
    double[] px = new double[n];
    double[] py = new double[n];
    for (int i = 0; i < n; i++) {
      double v = points[2 * i + 1] + between(-jitter, jitter);
      px[i] =
          x + (points[2 * i] + between(-jitter, jitter)) * w + slant * (0.5 - v) * Math.min(w, h);
      py[i] = y + v * h;
    }
    double press = between(0.85, 1.15);
    for (int i = 0; i + 1 < n; i++) {
      double length = Math.hypot(px[i + 1] - px[i], py[i + 1] - py[i]);
      int steps = (int) Math.ceil(length / 0.07) + 1;
      for (int s = 0; s <= steps; s++) {
        double t = (double) s / steps;
        double sx = spline(px, i, t);
        double sy = spline(py, i, t);
        double taper = n == 2 || i > 0 && i + 2 < n ? 1 : 1 - 0.25 * (i == 0 ? 1 - t : t);
        page.dot(sx, sy, pen / 2 * press * taper, level);
      }
    }
  }

  /** Catmull and Rom's. */
  private static double spline(double[] p, int i, double t) {
    double a = p[Math.max(0, i - 1)];
    double b = p[i];
    double c = p[i + 1];
    double d = p[Math.min(p.length - 1, i + 2)];
    double bend = (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t;
    return 0.5 * (2 * b + (c - a) * t + bend);
  }
}
