package baysheet.template;

import freemarker.core.ArithmeticEngine;
import freemarker.template.TemplateException;
import java.math.BigDecimal;

/** Arithmetic of a layout: exact, but on numbers that a page can print only. */
final class BoundedNumbers extends ArithmeticEngine {
  /** More than any length, figure or count on a sheet has. */
  private static final int MOST_DIGITS = 30;

  private static final ArithmeticEngine EXACT = BIGDECIMAL_ENGINE;

  @Override
  public int compareNumbers(Number first, Number second) throws TemplateException {
    return EXACT.compareNumbers(first, second);
  }

  @Override
  public Number add(Number first, Number second) throws TemplateException {
    return bounded(EXACT.add(first, second));
  }

  @Override
  public Number subtract(Number first, Number second) throws TemplateException {
    return bounded(EXACT.subtract(first, second));
  }

  @Override
  public Number multiply(Number first, Number second) throws TemplateException {
    return bounded(EXACT.multiply(first, second));
  }

  @Override
  public Number divide(Number first, Number second) throws TemplateException {
    return bounded(EXACT.divide(first, second));
  }

  @Override
  public Number modulus(Number first, Number second) throws TemplateException {
    return bounded(EXACT.modulus(first, second));
  }

  @Override
  public Number toNumber(String text) {
    if (text.length() > MOST_DIGITS) {
      throw new NumberFormatException("a number of more than " + MOST_DIGITS + " digits");
    }
    return bounded(new BigDecimal(text));
  }

  private static Number bounded(Number number) {
    BigDecimal exact = (BigDecimal) number;
    long digits = Math.max(exact.precision(), Math.abs((long) exact.precision() - exact.scale()));
    if (digits > MOST_DIGITS || exact.scale() > MOST_DIGITS) {
      throw new ArithmeticException("a number of more than " + MOST_DIGITS + " digits");
    }
    return exact;
  }
}
