package baysheet.torque;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people write them.
 *
 * <p>Nothing is guessed: a comma, a missing unit, a unit of the wrong kind, a negative or absurd
 * value is a {@link ParseFailure}.
 */
public final class QuantityText {
  private static final String SPACE = "[\\s\\u00A0\\u202F\\u2009]*+";
  private static final String FIGURE = "(?:[0-9]++[-\\s])?+[0-9]++/[0-9]++|[0-9]++(?:\\.[0-9]++)?+";
  private static final Pattern QUANTITY =
      Pattern.compile("([+\\-−–]?)" + SPACE + "(" + FIGURE + ")" + SPACE + "(.*)", Pattern.DOTALL);

  /** As many as the odometer of a lorry has, with three decimals. */
  private static final int MOST_DIGITS = 12;

  private static final Pattern MISSING_NOUGHT = Pattern.compile("[+\\-−]?\\.[0-9].*");
  private static final Pattern SPARE_ZERO = Pattern.compile("0[0-9].*");
  private static final Pattern LEADING_ZEROS = Pattern.compile("^0++(?=[0-9])");
  private static final Pattern INNER_SPACE = Pattern.compile("\\s");
  private static final Pattern BETWEEN = Pattern.compile("\\.{2,3}|…|–|(?<=\\s)to(?=\\s)");
  private static final Pattern HYPHEN_BETWEEN =
      Pattern.compile("([0-9][^-]*)(?<=[0-9\\s])-(?=\\s*[0-9])(.*)");
  private static final Pattern LEADING_FIGURE = Pattern.compile("^[0-9.]+");
  private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+/[-−]|\\+[-−]");

  private QuantityText() {}

  /** One quantity of the expected kind: {@code 110 N·m}, {@code 3/8 in}, {@code 57 %}. */
  public static ParseResult<Quantity> quantity(String text, Dimension expected) {
    return ofAnySize(text, expected).then(PlausibleRange::check);
  }

  /** The same for a caller that has bounds of its own. */
  public static ParseResult<Quantity> ofAnySize(String text, Dimension expected) {
    return WrittenText.read(text, like(expected), it -> one(it, expected));
  }

  private static ParseResult<Quantity> one(String text, Dimension expected) {
    String trimmed = text.strip();
    Optional<ParseFailure<Quantity>> slip = FigureSlip.in(trimmed, expected);
    if (slip.isPresent()) {
      return slip.get();
    }
    Matcher parts = QUANTITY.matcher(trimmed);
    if (!parts.matches()) {
      return new ParseFailure<Quantity>(figureFault(trimmed), like(expected))
          .near(spelling("0" + trimmed, expected));
    }
    return sign(parts.group(1), text, expected)
        .then(sign -> figure(parts.group(2), text, expected).map(figure -> sign + figure))
        .then(figure -> unit(parts, text, expected).map(unit -> join(figure, unit)))
        .then(quantity -> fractionsOfInchesOnly(quantity, text));
  }

  /** A text that was changed, where it can be read so. */
  static Optional<String> spelling(String text, Dimension expected) {
    boolean right = one(text, expected).found().isPresent();
    return right ? Optional.of(text) : Optional.empty();
  }

  /**
   * A torque with the band its book gives, if any: {@code 110 N·m}, {@code 100..120 N·m}, {@code
   * 110 ± 10 N·m}, {@code 110 N·m ± 5 %}.
   */
  public static ParseResult<Target> target(String text) {
    return WrittenText.read(text, like(Dimension.TORQUE), QuantityText::banded);
  }

  private static ParseResult<Target> banded(String text) {
    Optional<UnevenTolerance> uneven = UnevenTolerance.in(text);
    if (uneven.isPresent()) {
      return uneven.get().read(text);
    }
    String[] tolerance = PLUS_MINUS.split(text, 2);
    if (tolerance.length == 2) {
      return tolerated(tolerance[0].strip(), tolerance[1].strip(), text);
    }
    Optional<Ends> ends = ends(text).or(() -> hyphenated(text));
    return ends.isPresent()
        ? ends.get().read(Dimension.TORQUE, text).then(pair -> spanned(pair, text))
        : quantity(text, Dimension.TORQUE).map(Target::plain);
  }

  /**
   * Both ends of a range such as {@code 10..24 mm}, lower first; a single value is both ends.
   *
   * @return always two quantities
   */
  public static ParseResult<List<Quantity>> range(String text, Dimension expected) {
    return WrittenText.read(
        text,
        like(expected),
        it -> ends(it).map(ends -> ends.read(expected, it)).orElseGet(() -> single(it, expected)));
  }

  private static ParseResult<List<Quantity>> single(String text, Dimension expected) {
    ParseResult<Quantity> one = quantity(text, expected);
    Optional<Ends> ends = one.found().isPresent() ? Optional.empty() : hyphenated(text);
    return ends.isPresent()
        ? new ParseFailure<>(
            quoted(text) + " has a hyphen between its ends",
            "two points: " + ends.get().low() + ".." + ends.get().high())
        : one.map(only -> List.of(only, only));
  }

  /** Minutes as one figure or three: {@code 5 min}, {@code 3/5/12 min}, {@code 0.5/1/2 h}. */
  public static ParseResult<ThreePoint> minutes(String text) {
    return WrittenText.read(text, "a time such as 5 min, or 3/5/12 min", QuantityText::estimate);
  }

  private static ParseResult<ThreePoint> estimate(String text) {
    String[] figures = text.split("/", -1);
    if (figures.length == 1) {
      return minute(text).map(ThreePoint::certain);
    }
    if (figures.length != 3) {
      return new ParseFailure<>(
          quoted(text)
              + (figures.length == 2 ? " has two figures" : " has more than three figures"),
          "one figure or three: 5 min, or 3/5/12 min");
    }
    String unit = LEADING_FIGURE.matcher(figures[2].strip()).replaceFirst("");
    return minute(figures[0] + " " + unit)
        .then(low -> minute(figures[1] + " " + unit).map(likely -> List.of(low, likely)))
        .then(two -> minute(figures[2]).then(high -> rising(two.get(0), two.get(1), high, text)));
  }

  private static ParseResult<Double> minute(String text) {
    return quantity(text, Dimension.TIME).map(time -> time.in(Unit.MINUTE));
  }

  private static ParseResult<ThreePoint> rising(
      double low, double likely, double high, String text) {
    return low <= likely && likely <= high
        ? new Parsed<>(new ThreePoint(low, likely, high))
        : new ParseFailure<>(
            quoted(text) + " is not in increasing order",
            "the best case, the usual and the worst: 3/5/12 min");
  }

  private static ParseResult<String> sign(String sign, String text, Dimension expected) {
    if (sign.isEmpty()) {
      return new Parsed<>("");
    }
    if (sign.equals("+")) {
      return new ParseFailure<>(quoted(text) + " has a sign", like(expected));
    }
    return PlausibleRange.mayBeNegative(expected)
        ? new Parsed<>("-")
        : new ParseFailure<>(quoted(text) + " is negative", like(expected));
  }

  private static ParseResult<String> figure(String figure, String text, Dimension expected) {
    if (SPARE_ZERO.matcher(figure).matches()) {
      String fewer = LEADING_ZEROS.matcher(text.strip()).replaceFirst("");
      return new ParseFailure<String>(quoted(text) + " begins with a zero too many", like(expected))
          .near(fewer.equals(text.strip()) ? Optional.empty() : spelling(fewer, expected));
    }
    if (figure.length() > MOST_DIGITS) {
      return new ParseFailure<>(quoted(text) + " has too many digits", like(expected));
    }
    String joined = INNER_SPACE.matcher(figure).replaceFirst("-");
    return figure.contains("/") && !Fraction.is(joined)
        ? new ParseFailure<>(
            quoted(text) + " is not a common fraction of an inch",
            "halves to sixty-fourths: 3/8 in")
        : new Parsed<>(joined);
  }

  private static ParseResult<Unit> unit(Matcher parts, String text, Dimension expected) {
    String spelling = parts.group(3);
    if (spelling.isEmpty()) {
      return new ParseFailure<>(quoted(text) + " has no unit", like(expected));
    }
    Optional<Unit> unit = Unit.of(spelling);
    if (unit.isEmpty()) {
      Optional<String> digits = FigureSlip.digits(text).flatMap(it -> spelling(it, expected));
      if (digits.isPresent()) {
        return new ParseFailure<Unit>(
                quoted(text) + " has a letter among its digits", like(expected))
            .near(digits);
      }
      return new ParseFailure<Unit>(
              quoted(text) + " has the unknown unit " + quoted(spelling), like(expected))
          .near(Unit.inOtherCapitals(spelling, expected).map(it -> parts.group(2) + " " + it));
    }
    Dimension found = unit.get().dimension();
    return found == expected
        ? new Parsed<>(unit.get())
        : new ParseFailure<>(
            quoted(text) + " is " + found.phrase() + ", not " + expected.phrase(), like(expected));
  }

  private static Quantity join(String figure, Unit unit) {
    return Quantity.of(figure, unit);
  }

  private static ParseResult<Quantity> fractionsOfInchesOnly(Quantity quantity, String text) {
    return quantity.unit() == Unit.INCH || !Fraction.is(quantity.figure())
        ? new Parsed<>(quantity)
        : new ParseFailure<>(
            quoted(text) + " has a fraction", "decimals; only inches are written as fractions");
  }

  private static String figureFault(String text) {
    if (text.isEmpty()) {
      return "nothing is written here";
    }
    return MISSING_NOUGHT.matcher(text).matches()
        ? quoted(text) + " has no figure before its point"
        : quoted(text) + " does not begin with a figure";
  }

  private static ParseResult<Target> spanned(List<Quantity> ends, String text) {
    Quantity low = ends.get(0);
    Quantity high = ends.get(1);
    if (low.compareTo(high) == 0) {
      return new ParseFailure<>(
          quoted(text) + " has two equal ends", "a range such as 100..120 N·m");
    }
    // All that is computed of a torque stands in one unit; what was written keeps its own.
    Quantity middle = Rounding.middle(low, high);
    Band band = new Band(low, high.to(low.unit()), Band.Origin.BOOK);
    String first = low.unit() == high.unit() ? low.figure() : low.print();
    return new Parsed<>(new Target(middle, Optional.of(band), first + "–" + high.print()));
  }

  /** {@code before ± after}: the unit stands after either figure or after both. */
  private static ParseResult<Target> tolerated(String before, String after, String text) {
    boolean percent = after.endsWith("%");
    String nominal = percent || hasUnit(before) ? before : before + " " + unitOf(after);
    String width = percent || hasUnit(after) ? after : after + " " + unitOf(before);
    Dimension of = percent ? Dimension.SHARE : Dimension.TORQUE;
    return quantity(nominal, Dimension.TORQUE)
        .then(middle -> quantity(width, of).then(wide -> Tolerance.on(middle, wide, text)));
  }

  static boolean hasUnit(String text) {
    return !unitOf(text).isEmpty();
  }

  /** What stands behind the figure; nothing where there is none. */
  static String unitOf(String text) {
    Matcher parts = QUANTITY.matcher(text);
    return parts.matches() ? parts.group(3) : "";
  }

  private static Optional<Ends> ends(String text) {
    String[] ends = BETWEEN.split(text, 2);
    boolean leadingDash = ends[0].isBlank();
    return ends.length == 2 && !leadingDash
        ? Optional.of(new Ends(ends[0].strip(), ends[1].strip()))
        : Optional.empty();
  }

  /** {@code 100-120 N·m}: only where no figure can be a fraction such as {@code 1-1/8}. */
  private static Optional<Ends> hyphenated(String text) {
    Matcher parts = HYPHEN_BETWEEN.matcher(text);
    return parts.matches()
        ? Optional.of(new Ends(parts.group(1).strip(), parts.group(2).strip()))
        : Optional.empty();
  }

  /** The two ends of a range as written; the first may leave its unit to the second. */
  private record Ends(String low, String high) {
    ParseResult<List<Quantity>> read(Dimension expected, String text) {
      String first = hasUnit(low) ? low : low + " " + unitOf(high);
      return quantity(first, expected)
          .then(from -> quantity(high, expected).then(to -> ordered(from, to, text)));
    }

    private static ParseResult<List<Quantity>> ordered(Quantity from, Quantity to, String text) {
      return from.isAbove(to)
          ? new ParseFailure<>(quoted(text) + " has the higher end first", "the lower end first")
          : new Parsed<>(List.of(from, to));
    }
  }

  private static String quoted(String text) {
    return WrittenText.quoted(text);
  }

  static String like(Dimension expected) {
    return expected.phrase() + " such as " + expected.example();
  }
}
