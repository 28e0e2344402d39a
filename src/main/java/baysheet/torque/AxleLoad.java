package baysheet.torque;

import java.math.BigDecimal;

/** What stands on an axle, and on a stand under it, as masses. */
public final class AxleLoad {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  private AxleLoad() {}

  /**
   * Load on the front axle.
   *
   * @param kerbMass mass of the vehicle
   * @param frontShare share of it that stands on the front axle
   */
  public static Quantity front(Quantity kerbMass, Quantity frontShare) {
    return kerbMass.times(share(frontShare));
  }

  /** Load on the rear axle: the rest. */
  public static Quantity rear(Quantity kerbMass, Quantity frontShare) {
    return kerbMass.times(BigDecimal.ONE.subtract(share(frontShare)));
  }

  /**
   * Load on the front axle from the centre of mass.
   *
   * <p>Moments about the rear axle: Wf = W·b/L, b the centre's distance ahead of the rear axle, L
   * the wheelbase.
   *
   * @param behindFront distance of the centre of mass behind the front axle, L − b
   * @throws IllegalArgumentException when the centre does not lie between the axles
   */
  public static Quantity front(Quantity mass, Quantity wheelbase, Quantity behindFront) {
    BigDecimal length = wheelbase.to(Unit.MILLIMETRE).value();
    BigDecimal ahead = length.subtract(behindFront.to(Unit.MILLIMETRE).value());
    if (ahead.signum() < 0 || ahead.compareTo(length) > 0) {
      throw new IllegalArgumentException(
          "centre of mass at " + behindFront.print() + " of " + wheelbase.print());
    }
    return mass.times(ahead.divide(length, Quantity.EXACT));
  }

  /** Load on the rear axle from the centre of mass: Wr = W·a/L, a behind the front axle. */
  public static Quantity rear(Quantity mass, Quantity wheelbase, Quantity behindFront) {
    Quantity ahead = wheelbase.plus(behindFront.times(BigDecimal.ONE.negate()));
    return front(mass, wheelbase, ahead);
  }

  /** Load on each of the two stands under a raised axle. */
  public static Quantity perStand(Quantity axleLoad) {
    return axleLoad.times(HALF);
  }

  private static BigDecimal share(Quantity percent) {
    return percent.to(Unit.PERCENT).value().movePointLeft(2);
  }
}
