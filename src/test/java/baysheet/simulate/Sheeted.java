package baysheet.simulate;

/**
 * A printed page, {@link #PIXELS} a millimetre, on which ink and dirt darken what is there.
 * Coordinates are millimetres from the top left corner.
 */
final class Sheeted {
  /** 305 an inch: as fine as the finest scan. */
  static final int PIXELS = 12;

  final int width;
  final int height;
  final byte[] pixels;

  Sheeted(int width, int height, byte[] pixels) {
    this.width = width;
    this.height = height;
    this.pixels = pixels;
  }

  double wide() {
    return (double) width / PIXELS;
  }

  double high() {
    return (double) height / PIXELS;
  }

  /** A dot of ink with soft edges. */
  void dot(double x, double y, double radius, int level) {
    double r = radius * PIXELS;
    double cx = x * PIXELS - 0.5;
    double cy = y * PIXELS - 0.5;
    for (int py = (int) Math.floor(cy - r - 1); py <= cy + r + 1; py++) {
      for (int px = (int) Math.floor(cx - r - 1); px <= cx + r + 1; px++) {
        double covered = Math.min(1, Math.max(0, r + 0.5 - Math.hypot(px - cx, py - cy)));
        if (covered > 0 && px >= 0 && py >= 0 && px < width && py < height) {
          int at = py * width + px;
          int was = pixels[at] & 0xff;
          int now = (int) Math.round(255 - covered * (255 - level));
          pixels[at] = (byte) Math.min(was, now);
        }
      }
    }
  }

  /** Lets through only a part of the light at a point. */
  void shade(int px, int py, double through) {
    if (px >= 0 && py >= 0 && px < width && py < height) {
      int at = py * width + px;
      pixels[at] = (byte) ((pixels[at] & 0xff) * through);
    }
  }

  void whiten(int px, int py) {
    if (px >= 0 && py >= 0 && px < width && py < height) {
      pixels[py * width + px] = (byte) 240;
    }
  }
}
