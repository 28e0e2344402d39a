package baysheet.torque;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * How a converted figure is rounded for the sheet; the book's own figure never is.
 *
 * <p>N·m from 20 up to 1, from 5 to 20 to 0.5, below to 0.1; lbf·ft from 15 up to 1, below as
 * lbf·in to 1: common practice, no source.
 */
public final class Rounding {
  private static final BigDecimal ONE = BigDecimal.ONE;
  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final BigDecimal TENTH = new BigDecimal("0.1");
  private static final BigDecimal WHOLE_FROM = new BigDecimal(20);
  private static final BigDecimal HALVES_FROM = new BigDecimal(5);
  private static final Quantity SMALLEST_POUND_FEET = Quantity.of("15", Unit.POUND_FORCE_FOOT);

  private Rounding() {}

  /**
   * {@code quantity} in another unit, rounded, but never across an end of the band: then with more
   * digits.
   *
   * @return the quantity itself when it is in {@code to} already; lbf·in for small lbf·ft
   */
  public static Quantity converted(Quantity quantity, Unit to, Band band) {
    Unit unit = printed(quantity, to);
    boolean asWritten = quantity.unit() == to || quantity.unit() == unit;
    return asWritten ? quantity : within(quantity.to(unit), band);
  }

  /**
   * {@code quantity} in {@code to}, rounded whatever the band.
   *
   * <p>Also when it is in {@code to} already: for figures computed here, as what arrives at a nut.
   */
  public static Quantity plain(Quantity quantity, Unit to) {
    Quantity exact = quantity.to(printed(quantity, to));
    return stepped(exact, step(exact));
  }

  /** A figure computed here rounded in its own unit, but never across an end of the band. */
  public static Quantity within(Quantity exact, Band band) {
    BigDecimal step = step(exact);
    Quantity rounded = stepped(exact, step);
    // Ends: at the latest a step as fine as the figure's own last digit changes nothing.
    while (band.side(rounded) != band.side(exact)) {
      step = finer(step);
      rounded = stepped(exact, step);
    }
    return rounded;
  }

  /** From halves to tenths, and so on by tens. */
  private static BigDecimal finer(BigDecimal step) {
    boolean power = step.stripTrailingZeros().unscaledValue().equals(BigInteger.ONE);
    return power ? step.movePointLeft(1) : step.multiply(new BigDecimal("0.2"));
  }

  private static Unit printed(Quantity quantity, Unit to) {
    return to == Unit.POUND_FORCE_FOOT && quantity.isBelow(SMALLEST_POUND_FEET)
        ? Unit.POUND_FORCE_INCH
        : to;
  }

  /** To what a figure of this unit and size is rounded. */
  private static BigDecimal step(Quantity exact) {
    return switch (exact.unit()) {
      case NEWTON_METRE -> newtonMetreStep(exact.value());
      // Ten times the size of a newton metre, so one digit more.
      case KILOGRAM_FORCE_METRE, DECANEWTON_METRE ->
          newtonMetreStep(exact.value().movePointRight(1)).movePointLeft(1);
      case TONNE, LITRE, BAR, METRE -> TENTH;
      default -> ONE;
    };
  }

  private static BigDecimal newtonMetreStep(BigDecimal figure) {
    if (figure.compareTo(WHOLE_FROM) >= 0) {
      return ONE;
    }
    return figure.compareTo(HALVES_FROM) >= 0 ? HALF : TENTH;
  }

  private static Quantity stepped(Quantity exact, BigDecimal step) {
    BigDecimal count = exact.value().divide(step, 0, RoundingMode.HALF_UP);
    return new Quantity(count, exact.unit()).times(step);
  }
}
