package baysheet.torque;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A torque with one width above it and another below, as it was written: {@code 110 +10/-5 N·m}.
 *
 * @param nominal the value, with or without its unit
 * @param above figure and unit of the width above
 * @param below figure and unit of the width below
 */
record UnevenTolerance(String nominal, Width above, Width below) {
  private static final String SIGN = "\\s*([+−–-])\\s*";
  private static final String FIGURE = "([0-9]++(?:\\.[0-9]++)?+)\\s*";

  /** A value, a signed figure, another: each may have its unit behind it. */
  private static final Pattern FORM =
      Pattern.compile("(.+?)" + SIGN + FIGURE + "([^0-9/+−–-]*?)\\s*/?" + SIGN + FIGURE + "(.*)");

  private static final Pattern ZERO = Pattern.compile("0+(?:\\.0+)?");

  /**
   * A width as written.
   *
   * @param unit empty where none stands behind the figure
   */
  record Width(String figure, String unit) {
    boolean isShare() {
      return unit.equals("%");
    }

    /** The width; its unit is another's where it has none. */
    ParseResult<Quantity> read(String otherUnit) {
      String its = unit.isEmpty() ? otherUnit : unit;
      if (!ZERO.matcher(figure).matches()) {
        return QuantityText.quantity(
            figure + " " + its, isShare() ? Dimension.SHARE : Dimension.TORQUE);
      }
      // A width of zero is no torque to be plausible.
      return QuantityText.quantity("1 " + its, isShare() ? Dimension.SHARE : Dimension.TORQUE)
          .map(one -> Quantity.of(figure, one.unit()));
    }
  }

  /** The two widths, where a text has one with a plus and one with a minus. */
  static Optional<UnevenTolerance> in(String text) {
    Matcher parts = FORM.matcher(text.strip());
    if (!parts.matches()) {
      return Optional.empty();
    }
    boolean upFirst = parts.group(2).equals("+");
    boolean upSecond = parts.group(5).equals("+");
    Width first = new Width(parts.group(3), parts.group(4).strip());
    Width second = new Width(parts.group(6), parts.group(7).strip());
    return upFirst == upSecond
        ? Optional.empty()
        : Optional.of(
            new UnevenTolerance(
                parts.group(1).strip(), upFirst ? first : second, upFirst ? second : first));
  }

  /** The target; the unit stands behind any one of the figures or behind all. */
  ParseResult<Target> read(String text) {
    String unit = unit();
    String value = QuantityText.hasUnit(nominal) ? nominal : nominal + " " + unit;
    return QuantityText.quantity(value, Dimension.TORQUE)
        .then(
            middle ->
                above
                    .read(unit)
                    .then(
                        up ->
                            below
                                .read(unit)
                                .then(down -> Tolerance.uneven(middle, up, down, text))));
  }

  private String unit() {
    if (QuantityText.hasUnit(nominal)) {
      return QuantityText.unitOf(nominal);
    }
    return below.isShare() || below.unit().isEmpty() ? above.unit() : below.unit();
  }
}
