package baysheet.torque;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures written as fractions of an inch: {@code 3/8}, {@code 1-1/8}.
 *
 * <p>Only halves down to sixty-fourths are fractions here: these are the sizes made, and each is an
 * exact decimal.
 */
final class Fraction {
  private static final Pattern FORM =
      Pattern.compile("(?:([1-9][0-9]{0,2})-)?([1-9][0-9]{0,2})/(2|4|8|16|32|64)");

  private static final BigDecimal SIXTY_FOUR = new BigDecimal(64);

  private Fraction() {}

  /** A length in inches as the lowest fraction down to sixty-fourths, else as a decimal. */
  static String spell(BigDecimal inches) {
    BigDecimal[] parts = inches.multiply(SIXTY_FOUR).divideAndRemainder(BigDecimal.ONE);
    int sixtyFourths = parts[0].intValueExact();
    int whole = sixtyFourths / 64;
    int over = sixtyFourths % 64;
    if (parts[1].signum() != 0) {
      return inches.stripTrailingZeros().toPlainString();
    }
    if (over == 0) {
      return Integer.toString(whole);
    }
    int shared = Integer.lowestOneBit(over);
    String fraction = over / shared + "/" + 64 / shared;
    return whole == 0 ? fraction : whole + "-" + fraction;
  }

  /** Whether {@code figure} is such a fraction. */
  static boolean is(String figure) {
    return FORM.matcher(figure).matches();
  }

  /**
   * The exact worth of a figure, fraction or decimal.
   *
   * @throws NumberFormatException when it is neither
   */
  static BigDecimal worth(String figure) {
    if (figure.indexOf('/') < 0) {
      return new BigDecimal(figure);
    }
    Matcher fraction = FORM.matcher(figure);
    if (!fraction.matches()) {
      throw new NumberFormatException("no fraction of an inch: " + figure);
    }
    BigDecimal part = new BigDecimal(fraction.group(2)).divide(new BigDecimal(fraction.group(3)));
    return fraction.group(1) == null ? part : part.add(new BigDecimal(fraction.group(1)));
  }
}
