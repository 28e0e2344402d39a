package baysheet.torque;

/**
 * Where a fastener stands in a drawing of its set, seen from the front of the fasteners.
 *
 * @param x −1 at the left to 1 at the right
 * @param y −1 at the bottom to 1 at the top
 */
public record DrawingPoint(double x, double y) {
  public DrawingPoint {
    if (!(Math.abs(x) <= 1 && Math.abs(y) <= 1)) {
      throw new IllegalArgumentException("(" + x + ", " + y + ") lies outside the drawing");
    }
  }
}
