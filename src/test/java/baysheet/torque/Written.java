package baysheet.torque;

import java.math.BigDecimal;
import java.util.List;

/** Values for tests, read from what people would write. */
final class Written {
  private Written() {}

  static <T> T value(ParseResult<T> reading) {
    return reading.found().orElseThrow(() -> new AssertionError(reading));
  }

  static <T> ParseFailure<T> fault(ParseResult<T> reading) {
    if (reading instanceof ParseFailure<T> misread) {
      return misread;
    }
    throw new AssertionError("could be read: " + reading);
  }

  static Quantity torque(String text) {
    return value(QuantityText.quantity(text, Dimension.TORQUE));
  }

  static Quantity length(String text) {
    return value(QuantityText.quantity(text, Dimension.LENGTH));
  }

  static Quantity mass(String text) {
    return value(QuantityText.quantity(text, Dimension.MASS));
  }

  static Quantity percent(String figure) {
    return Quantity.of(figure, Unit.PERCENT);
  }

  static Quantity newtonMetres(double figure) {
    return new Quantity(BigDecimal.valueOf(figure), Unit.NEWTON_METRE);
  }

  static Reach reach(String length, String angle) {
    return new Reach(length(length), value(QuantityText.quantity(angle, Dimension.ANGLE)));
  }

  static Target target(String text) {
    return value(QuantityText.target(text));
  }

  static Band band(String range) {
    return target(range).band().orElseThrow();
  }

  static ScrewThread thread(String text) {
    return value(ScrewThread.parse(text));
  }

  static StrengthClass strength(String text) {
    return value(StrengthClass.parse(text));
  }

  static Head head(String text) {
    return value(Head.parse(text));
  }

  static Tightening tightening(String... stages) {
    return value(Tightening.parse(List.of(stages)));
  }

  /**
   * How far a computed figure may lie from a printed one: a share of it, or so many units of its
   * last printed digit where that is more.
   */
  static double slack(String printed, double share, double units) {
    BigDecimal figure = new BigDecimal(printed);
    return Math.max(units * Math.pow(10, -figure.scale()), share * figure.doubleValue());
  }
}
