package baysheet.torque;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a converted figure is rounded for the sheet; the book's own figure never is.
 *
 * <p>N·m from 20 up to 1, from 5 to 20 to 0.5, below to 0.1; lbf·ft from 15 up to 1, below as
 * lbf·in to 1; no more than four significant digits: common practice, no source.
 */
public final class Rounding {
  private static final BigDecimal ONE = BigDecimal.ONE;
  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final BigDecimal TENTH = new BigDecimal("0.1");
  private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");
  private static final BigDecimal WHOLE_FROM = new BigDecimal(20);
  private static final BigDecimal HALVES_FROM = new BigDecimal(5);
  // Digits beyond the fourth say more than any wrench can do.
  private static final int MOST_DIGITS = 4;
  // A printed band is narrower than the true one by a quarter of it at most. No source.
  private static final BigDecimal LEAST_WIDTH = new BigDecimal("0.75");
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
    boolean asWritten = !isOther(quantity, to);
    // On which side it lies is asked of the figure as written: a quotient may miss an end by its
    // last digit.
    return asWritten ? quantity : within(quantity.to(unit), band.side(quantity), band);
  }

  /** Whether a figure in {@code to} says anything that the figure as written does not. */
  public static boolean isOther(Quantity quantity, Unit to) {
    Unit own = quantity.unit();
    return !own.isAsLargeAs(to) && !own.isAsLargeAs(printed(quantity, to));
  }

  /**
   * {@code quantity} in {@code to}, rounded whatever the band.
   *
   * <p>Also when it is in {@code to} already: for figures computed here, as what arrives at a nut.
   */
  public static Quantity plain(Quantity quantity, Unit to) {
    Quantity exact = quantity.to(printed(quantity, to));
    return stepped(exact, step(exact), RoundingMode.HALF_UP);
  }

  /**
   * A figure computed here rounded in its own unit, but never across an end of the band: then with
   * more digits, and from the fourth digit on away from that end.
   */
  public static Quantity within(Quantity exact, Band band) {
    return within(exact, band.side(exact), band);
  }

  private static Quantity within(Quantity exact, int side, Band band) {
    BigDecimal step = step(exact);
    Optional<Quantity> rounded = onSide(side, exact, step, band);
    // Ends: at the latest a step as fine as the figure's own last digit changes nothing.
    while (rounded.isEmpty()) {
      step = finer(step);
      rounded = onSide(side, exact, step, band);
    }
    return rounded.get();
  }

  private static Optional<Quantity> onSide(int side, Quantity exact, BigDecimal step, Band band) {
    List<RoundingMode> ways = new ArrayList<>(List.of(RoundingMode.HALF_UP));
    if (digits(exact.value(), step) >= MOST_DIGITS) {
      ways.add(RoundingMode.FLOOR);
      ways.add(RoundingMode.CEILING);
    }
    return ways.stream()
        .map(way -> stepped(exact, step, way))
        .filter(rounded -> band.side(rounded) == side)
        .findFirst();
  }

  /** The middle of two figures, as it is unless it has more digits than anybody prints. */
  static Quantity middle(Quantity low, Quantity high) {
    Quantity exact = low.plus(high).times(HALF);
    return isPrintable(exact.value())
        ? exact
        : within(exact, new Band(low, high, Band.Origin.BOOK));
  }

  /**
   * A band with its ends rounded towards the middle, to a tenth (kgf·m to a hundredth), or finer
   * where that would narrow it much. Ends of a book's own band stay where they can be printed.
   */
  static Band inward(Band band) {
    BigDecimal width = width(band.low(), band.high()).multiply(LEAST_WIDTH);
    BigDecimal step = bandStep(band.high());
    while (true) {
      Quantity low = end(band.low(), step, RoundingMode.CEILING, band.origin());
      Quantity high = end(band.high(), step, RoundingMode.FLOOR, band.origin());
      // Ends: a step as fine as the ends' last digits narrows nothing.
      if (width(low, high).compareTo(width) >= 0) {
        return new Band(low, high, band.origin());
      }
      step = step.movePointLeft(1);
    }
  }

  private static BigDecimal width(Quantity low, Quantity high) {
    return high.to(low.unit()).value().subtract(low.value());
  }

  private static Quantity end(
      Quantity end, BigDecimal step, RoundingMode towards, Band.Origin origin) {
    boolean printable = isPrintable(end.value()) && origin == Band.Origin.BOOK;
    boolean fineEnough = end.value().scale() <= step.scale();
    return printable || fineEnough ? end : stepped(end, step, towards);
  }

  private static BigDecimal bandStep(Quantity end) {
    BigDecimal usual =
        switch (end.unit()) {
          // Ten times the size of a newton metre, so one digit more.
          case KILOGRAM_FORCE_METRE, DECANEWTON_METRE -> HUNDREDTH;
          default -> TENTH;
        };
    return usual.max(coarsest(end.value()));
  }

  /** From halves to tenths, and so on by tens. */
  private static BigDecimal finer(BigDecimal step) {
    boolean power = step.stripTrailingZeros().unscaledValue().equals(BigInteger.ONE);
    return power ? step.movePointLeft(1) : step.multiply(new BigDecimal("0.2"));
  }

  private static Unit printed(Quantity quantity, Unit to) {
    return switch (to) {
      case POUND_FORCE_FOOT -> quantity.isBelow(SMALLEST_POUND_FEET) ? Unit.POUND_FORCE_INCH : to;
      case FOOT_POUND -> quantity.isBelow(SMALLEST_POUND_FEET) ? Unit.INCH_POUND : to;
      default -> to;
    };
  }

  /** To what a figure of this unit and size is rounded. */
  private static BigDecimal step(Quantity exact) {
    BigDecimal usual =
        switch (exact.unit()) {
          case NEWTON_METRE -> newtonMetreStep(exact.value());
          // Ten times the size of a newton metre, so one digit more.
          case KILOGRAM_FORCE_METRE, DECANEWTON_METRE ->
              newtonMetreStep(exact.value().movePointRight(1)).movePointLeft(1);
          case TONNE, LITRE, BAR, METRE -> TENTH;
          default -> ONE;
        };
    return usual.max(coarsest(exact.value()));
  }

  private static BigDecimal newtonMetreStep(BigDecimal figure) {
    if (figure.compareTo(WHOLE_FROM) >= 0) {
      return ONE;
    }
    return figure.compareTo(HALVES_FROM) >= 0 ? HALF : TENTH;
  }

  /** The step that leaves the most digits that are printed. */
  private static BigDecimal coarsest(BigDecimal value) {
    return ONE.scaleByPowerOfTen(value.precision() - value.scale() - MOST_DIGITS);
  }

  /** How many significant digits a figure has when it is rounded to a step. */
  private static int digits(BigDecimal value, BigDecimal step) {
    return value.precision() - value.scale() + step.stripTrailingZeros().scale();
  }

  private static boolean isPrintable(BigDecimal value) {
    return value.stripTrailingZeros().precision() <= MOST_DIGITS;
  }

  private static Quantity stepped(Quantity exact, BigDecimal step, RoundingMode towards) {
    BigDecimal count = exact.value().divide(step, 0, towards);
    return new Quantity(count, exact.unit()).times(step);
  }
}
