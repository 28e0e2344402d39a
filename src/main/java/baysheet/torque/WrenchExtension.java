package baysheet.torque;

import java.math.BigDecimal;

/**
 * How an extension changes what a torque wrench must be set to.
 *
 * <p>S = T·L/(L + E·cos a), L from square to hand, E the extension's length, a its angle to the
 * wrench: TM 9-254 (US Army), figure 4-5; AC 43.13-1B (FAA), figure 7-2. Straight on, a = 0° and E
 * counts in full; at 90° not at all; at 180° it points back and is taken off.
 *
 * @param wrenchLength L in mm
 * @param reachLength L + E·cos a in mm
 */
record WrenchExtension(BigDecimal wrenchLength, BigDecimal reachLength) {
  /** The lever of a wrench with nothing on its square. */
  static final WrenchExtension BARE = new WrenchExtension(BigDecimal.ONE, BigDecimal.ONE);

  /** The lever of a wrench with an extension on its square. */
  static WrenchExtension with(Quantity length, Reach reach) {
    BigDecimal hand = length.to(Unit.MILLIMETRE).value();
    BigDecimal beyond = reach.length().to(Unit.MILLIMETRE).value();
    return new WrenchExtension(hand, hand.add(beyond.multiply(cosine(reach.angle()))));
  }

  /** Whether the nut still lies beyond the hand; otherwise there is no setting. */
  boolean turnsTheNut() {
    return reachLength.signum() > 0;
  }

  /** What to set for {@code atNut}. */
  Quantity setting(Quantity atNut) {
    return scaled(atNut, wrenchLength, reachLength);
  }

  /** What arrives at the nut of {@code setting}. */
  Quantity arriving(Quantity setting) {
    return scaled(setting, reachLength, wrenchLength);
  }

  private static Quantity scaled(Quantity torque, BigDecimal over, BigDecimal under) {
    return over.compareTo(under) == 0 ? torque : torque.times(over.divide(under, Quantity.EXACT));
  }

  /** Exact at the right angles people write, so that 90° corrects nothing at all. */
  private static BigDecimal cosine(Quantity angle) {
    BigDecimal degrees = angle.value().remainder(new BigDecimal(360)).abs();
    return switch (degrees.stripTrailingZeros().toPlainString()) {
      case "0" -> BigDecimal.ONE;
      case "90", "270" -> BigDecimal.ZERO;
      case "180" -> BigDecimal.ONE.negate();
      default -> BigDecimal.valueOf(StrictMath.cos(StrictMath.toRadians(degrees.doubleValue())));
    };
  }
}
