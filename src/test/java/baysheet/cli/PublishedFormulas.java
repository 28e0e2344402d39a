package baysheet.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Formulas and tables of the trade, typed in from their publications. They share no code with the
 * program; the source stands at each.
 */
final class PublishedFormulas {
  static final MathContext FINE = new MathContext(40);

  private PublishedFormulas() {}

  /**
   * Units in N·m, exact by definition: inch 0.0254 m, pound 0.453 592 37 kg, standard gravity 9.806
   * 65 m/s² (NIST SP 811, appendix B).
   */
  static BigDecimal newtonMetres(String unit) {
    BigDecimal poundForce = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
    return switch (unit) {
      case "N·m" -> BigDecimal.ONE;
      case "lbf·ft" -> poundForce.multiply(new BigDecimal("0.3048"));
      case "lbf·in" -> poundForce.multiply(new BigDecimal("0.0254"));
      case "kgf·m" -> new BigDecimal("9.80665");
      default -> throw new AssertionError(unit);
    };
  }

  /**
   * A metric thread with its bearing face.
   *
   * @param d nominal diameter, mm
   * @param p pitch, mm
   * @param dw outer diameter of the bearing face, mm (ISO 4014 grade A, from memory)
   * @param dh clearance hole, mm (ISO 273 medium, from memory)
   */
  record Screw(String name, double d, double p, double dw, double dh) {
    /** ISO 724: d2 = d − 0.649 519 P. */
    double d2() {
      return d - 0.649519 * p;
    }

    /** ISO 898-1: As = π/4·((d2 + d3)/2)², d3 = d − 1.226 869 P. */
    double stressArea() {
      double mean = (d2() + d - 1.226869 * p) / 2;
      return Math.PI / 4 * mean * mean;
    }

    /**
     * VDI 2230: MA = F·(0.159 P + 0.577 d2·μ + μ·DKm/2), in the exact form with P/2π and 1/(2·cos
     * 30°); DKm = (dw + dh)/2. In mm, for torque in N·mm over load in N.
     */
    double lever(double friction) {
      double head = (dw + dh) / 2;
      return p / (2 * Math.PI)
          + d2() * friction / (2 * Math.cos(Math.toRadians(30)))
          + friction * head / 2;
    }
  }

  /** ISO 262 sizes with coarse and fine pitches; bearing faces as in {@link Screw}. */
  static final List<Screw> SCREWS =
      List.of(
          new Screw("M5", 5, 0.8, 6.9, 5.5),
          new Screw("M6", 6, 1, 8.9, 6.6),
          new Screw("M8", 8, 1.25, 11.6, 9),
          new Screw("M8x1", 8, 1, 11.6, 9),
          new Screw("M10", 10, 1.5, 14.6, 11),
          new Screw("M10x1.25", 10, 1.25, 14.6, 11),
          new Screw("M10x1", 10, 1, 14.6, 11),
          new Screw("M12", 12, 1.75, 16.6, 13.5),
          new Screw("M12x1.5", 12, 1.5, 16.6, 13.5),
          new Screw("M12x1.25", 12, 1.25, 16.6, 13.5),
          new Screw("M14", 14, 2, 19.6, 15.5),
          new Screw("M14x1.5", 14, 1.5, 19.6, 15.5),
          new Screw("M16", 16, 2, 22.5, 17.5),
          new Screw("M16x1.5", 16, 1.5, 22.5, 17.5),
          new Screw("M18x1.5", 18, 1.5, 25.3, 20),
          new Screw("M20", 20, 2.5, 28.2, 22),
          new Screw("M22x1.5", 22, 1.5, 31.7, 24),
          new Screw("M24x2", 24, 2, 33.6, 26));

  /** Proof stress in MPa; nothing where the class is not made in the size. */
  static Optional<Double> proof(String strength, double d) {
    // ISO 898-1:2013, table 3, and ISO 3506-1, table 2 (Rp0.2, which serves as proof).
    Map<String, Double> even =
        Map.of(
            "4.6", 225.0, "5.8", 380.0, "6.8", 440.0, "10.9", 830.0, "12.9", 970.0, "A2-50", 210.0,
            "A2-70", 450.0, "A4-80", 600.0);
    if (strength.equals("8.8")) {
      return Optional.of(d <= 16 ? 580.0 : 600.0);
    }
    // ISO 898-2: a nut of class 10 carries a bolt of 10.9 in full.
    return Optional.ofNullable(even.get(strength.equals("10") ? "10.9" : strength));
  }

  static final List<String> CLASSES =
      List.of("4.6", "5.8", "6.8", "8.8", "10.9", "12.9", "10", "A2-50", "A2-70", "A4-80");

  /** A span of friction. */
  record Span(double low, double high) {}

  /**
   * VDI 2230, table A5, as three makers' documents give it; class E has no upper end, 0.5 is common
   * practice.
   */
  static Span friction(String treatment, boolean stainless) {
    if (stainless) {
      return switch (treatment) {
        case "anti-seize" -> new Span(0.08, 0.24);
        case "oiled", "grease" -> new Span(0.20, 0.35);
        case "dry" -> new Span(0.30, 0.50);
        default -> new Span(0.20, 0.50);
      };
    }
    return switch (treatment) {
      case "anti-seize" -> new Span(0.04, 0.10);
      case "oiled", "grease" -> new Span(0.08, 0.16);
      case "dry", "locking-compound" -> new Span(0.14, 0.24);
      default -> new Span(0.08, 0.24);
    };
  }

  /** TM 9-254 (US Army), figure 4-5: S = T·L/(L + E·cos a); the factor on T. */
  static double extension(double hand, double beyond, double degrees) {
    return hand / (hand + beyond * Math.cos(Math.toRadians(degrees)));
  }

  static BigDecimal rounded(BigDecimal figure, int decimals) {
    return figure.setScale(decimals, RoundingMode.HALF_UP);
  }
}
