package baysheet.torque;

/**
 * Where the friction under a hexagon head acts.
 *
 * <p>Mean diameter DKm = (dw + dh)/2 (VDI 2230-1, from memory), dw the bearing face of ISO 4014 or
 * ISO 4032 (from memory, within 0.1 mm of open data on ISO 4014), dh the clearance hole of ISO 273,
 * medium series (from memory).
 */
final class BearingFace {
  /** Rows of d, dw, dh in mm, rising. */
  private static final double[][] ROWS = {
    {3, 4.6, 3.4},
    {4, 5.9, 4.5},
    {5, 6.9, 5.5},
    {6, 8.9, 6.6},
    {8, 11.6, 9},
    {10, 14.6, 11},
    {12, 16.6, 13.5},
    {14, 19.6, 15.5},
    {16, 22.5, 17.5},
    {18, 25.3, 20},
    {20, 28.2, 22},
    {22, 31.7, 24},
    {24, 33.6, 26},
    {27, 38, 30},
    {30, 42.7, 33}
  };

  private BearingFace() {}

  /**
   * DKm in mm for a thread diameter in mm; a straight line between rows (inch sizes, M9, M11) and
   * in proportion beyond the ends.
   */
  static double meanDiameterMm(double diameterMm) {
    int above = 0;
    while (above < ROWS.length && ROWS[above][0] < diameterMm) {
      above++;
    }
    if (above == 0 || above == ROWS.length) {
      double[] end = ROWS[Math.min(above, ROWS.length - 1)];
      return mean(end) * diameterMm / end[0];
    }
    double[] low = ROWS[above - 1];
    double[] high = ROWS[above];
    double share = (diameterMm - low[0]) / (high[0] - low[0]);
    return mean(low) + share * (mean(high) - mean(low));
  }

  private static double mean(double[] row) {
    return (row[1] + row[2]) / 2;
  }
}
