package baysheet.scan;

/** Where points lie, and how far they spread along their longer axis and across it. */
final class Moments {
  private int count;
  private double sumX;
  private double sumY;
  private double sumXx;
  private double sumXy;
  private double sumYy;

  void add(int x, int y) {
    count++;
    sumX += x;
    sumY += y;
    sumXx += (double) x * x;
    sumXy += (double) x * y;
    sumYy += (double) y * y;
  }

  double x() {
    return sumX / count;
  }

  double y() {
    return sumY / count;
  }

  /** The mean square of distances along the longer axis, or across it. */
  double spread(boolean along) {
    double half = (varianceX() + varianceY()) / 2;
    double root = Math.hypot((varianceX() - varianceY()) / 2, covariance());
    return Math.max(0, along ? half + root : half - root);
  }

  /** The direction of the longer axis, a quarter to either side of the first axis. */
  double angle() {
    return Math.atan2(2 * covariance(), varianceX() - varianceY()) / 2;
  }

  private double varianceX() {
    return sumXx / count - x() * x();
  }

  private double varianceY() {
    return sumYy / count - y() * y();
  }

  private double covariance() {
    return sumXy / count - x() * y();
  }
}
