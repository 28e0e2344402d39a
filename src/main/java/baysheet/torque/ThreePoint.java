package baysheet.torque;

/**
 * A time in minutes, as a three-point estimate.
 *
 * <p>Mean (a + 4m + b)/6 and deviation (b − a)/6: the beta approximation of PERT (Malcolm,
 * Roseboom, Clark and Fazar, Operations Research 7, 1959).
 *
 * @param low minutes when all goes well
 * @param likely minutes most often
 * @param high minutes when it goes badly
 */
public record ThreePoint(double low, double likely, double high) {
  public ThreePoint {
    if (!(0 <= low && low <= likely && likely <= high && high < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "not in rising order: " + low + ", " + likely + ", " + high + " min");
    }
  }

  /** A time known by one figure. */
  public static ThreePoint certain(double minutes) {
    return new ThreePoint(minutes, minutes, minutes);
  }

  /** Expected minutes. */
  public double mean() {
    return (low + 4 * likely + high) / 6;
  }

  /** Standard deviation in minutes. */
  public double deviation() {
    return (high - low) / 6;
  }

  /** Variance in minutes squared; variances of independent steps add up, deviations do not. */
  public double variance() {
    return deviation() * deviation();
  }

  /** The same estimate, {@code factor} times as long. */
  public ThreePoint times(double factor) {
    return new ThreePoint(low * factor, likely * factor, high * factor);
  }
}
