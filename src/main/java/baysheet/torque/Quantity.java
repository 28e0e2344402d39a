package baysheet.torque;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A figure with its unit, as it was written.
 *
 * <p>Two quantities are equal when they are written the same ({@code 110 N·m} is not {@code 110.0
 * N·m}, as with {@link BigDecimal}); {@link #compareTo} compares size, across units.
 *
 * @param value the figure, in {@code unit}
 * @param unit its unit
 * @param figure the figure as it is printed: decimal, or a fraction of an inch such as {@code
 *     1-1/8}; always worth exactly {@code value}
 */
public record Quantity(BigDecimal value, Unit unit, String figure) implements Comparable<Quantity> {
  /** Thirty-four digits, far beyond any scale; only quotients are ever rounded. */
  static final MathContext EXACT = MathContext.DECIMAL128;

  private static final String NO_BREAK_SPACE = "\u00A0";

  public Quantity {
    if (Fraction.worth(figure).compareTo(value) != 0) {
      throw new IllegalArgumentException("figure " + figure + " is not worth " + value);
    }
  }

  /** A quantity whose figure is decimal and keeps the decimals of {@code value}. */
  public Quantity(BigDecimal value, Unit unit) {
    this(value, unit, value.toPlainString());
  }

  /**
   * A quantity from its figure.
   *
   * @param figure decimal with a point, or a fraction such as {@code 3/8}
   * @throws NumberFormatException when {@code figure} is neither
   */
  public static Quantity of(String figure, Unit unit) {
    return new Quantity(Fraction.worth(figure), unit, figure);
  }

  /**
   * The same size in another unit, exact but for a quotient's thirty-fourth digit.
   *
   * @throws IllegalArgumentException when {@code other} measures something else
   */
  public Quantity to(Unit other) {
    if (other == unit) {
      return this;
    }
    BigDecimal converted = inBase(other.dimension()).divide(other.factor(), EXACT);
    return new Quantity(plain(converted), other);
  }

  /** The figure in another unit of the same dimension, as a double. */
  public double in(Unit other) {
    return to(other).value().doubleValue();
  }

  /** This quantity times a bare number, in the same unit. */
  public Quantity times(BigDecimal factor) {
    return new Quantity(plain(value.multiply(factor, EXACT)), unit);
  }

  /** This quantity and another, in this one's unit. */
  public Quantity plus(Quantity other) {
    return new Quantity(plain(value.add(other.to(unit).value, EXACT)), unit);
  }

  /** Compares size; both must be of one dimension. */
  @Override
  public int compareTo(Quantity other) {
    Dimension dimension = unit.dimension();
    return inBase(dimension).compareTo(other.inBase(dimension));
  }

  /** Whether this is less than {@code other}. */
  public boolean isBelow(Quantity other) {
    return compareTo(other) < 0;
  }

  /** Whether this is more than {@code other}. */
  public boolean isAbove(Quantity other) {
    return compareTo(other) > 0;
  }

  /** Figure and unit as printed; a line never breaks between the two. */
  public String print() {
    return unit == Unit.DEGREE ? figure + unit.symbol() : figure + NO_BREAK_SPACE + unit.symbol();
  }

  /** Product with the unit's exact factor: exact, as both are decimals. */
  private BigDecimal inBase(Dimension dimension) {
    if (unit.dimension() != dimension) {
      throw new IllegalArgumentException(
          print() + " is " + unit.dimension().phrase() + ", not " + dimension.phrase());
    }
    return value.multiply(unit.factor());
  }

  /** Without trailing noughts, and 1000 rather than 1E+3. */
  private static BigDecimal plain(BigDecimal figure) {
    BigDecimal stripped = figure.stripTrailingZeros();
    return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
  }
}
