package baysheet.torque;

import java.math.BigDecimal;

/**
 * A screw thread with the 60° profile of ISO 68-1 or ASME B1.1.
 *
 * @param designation how it is printed: {@code M12x1.5}, {@code M10}, {@code 1/2-20 UNF}
 * @param diameterMm nominal diameter d in mm
 * @param pitchMm pitch P in mm
 * @param series which family of threads it belongs to
 */
public record ScrewThread(String designation, double diameterMm, double pitchMm, Series series) {
  /** Families of threads; they differ in the root that carries the load. */
  public enum Series {
    /** ISO 261; root d3 = d − 1.226869 P, rounded with H/6 (ISO 898-1). */
    METRIC(1.226869),
    /** Unified; root dr = d − 1.299038 P (ASME B1.1). */
    UNIFIED(1.299038);

    private final double rootDepthInPitches;

    Series(double rootDepthInPitches) {
      this.rootDepthInPitches = rootDepthInPitches;
    }
  }

  public ScrewThread {
    if (!(pitchMm > 0 && pitchMm * 3 < diameterMm)) {
      throw new IllegalArgumentException(
          designation + ": no thread of diameter " + diameterMm + " mm, pitch " + pitchMm + " mm");
    }
  }

  /**
   * Reads {@code M12x1.5}, {@code M10} (the coarse pitch), {@code 1/2-20 UNF}, each with {@code LH}
   * behind it when it is left-handed.
   */
  public static ParseResult<ScrewThread> parse(String text) {
    return ThreadText.parse(text);
  }

  static ScrewThread metric(String designation, BigDecimal diameter, BigDecimal pitch) {
    return new ScrewThread(designation, diameter.doubleValue(), pitch.doubleValue(), Series.METRIC);
  }

  /** Whether its designation has no pitch, so that the coarse one of ISO 261 was taken. */
  public boolean isPitchAssumed() {
    return series == Series.METRIC && designation.indexOf('x') < 0;
  }

  /**
   * Pitch diameter in mm, d2 = d − 0.649519 P.
   *
   * <p>ISO 724; the same for unified threads.
   */
  public double pitchDiameterMm() {
    return diameterMm - 0.649519 * pitchMm;
  }

  /** Minor diameter of the external thread in mm, d3; the depth is its family's. */
  public double minorDiameterMm() {
    return diameterMm - series.rootDepthInPitches * pitchMm;
  }

  /**
   * Stress area in mm², As = π/4 · ((d2 + d3)/2)².
   *
   * <p>ISO 898-1, 9.1.6; Shigley, Mechanical Engineering Design, 9th ed., table 8-2.
   */
  public double stressAreaMm2() {
    double mean = (pitchDiameterMm() + minorDiameterMm()) / 2;
    return Math.PI / 4 * mean * mean;
  }
}
