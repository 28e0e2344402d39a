package baysheet.torque;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Units people write, each with the spellings in use and its exact size.
 *
 * <p>Sizes are exact by definition: the international yard and pound agreement of 1959 (inch 25.4
 * mm, pound 0.45359237 kg), standard gravity 9.80665 m/s² (CGPM 1901), and so the pound-force
 * 4.4482216152605 N and the kilogram-force 9.80665 N; gallons as NIST SP 811 (2008), appendix B,
 * gives them.
 */
public enum Unit {
  NEWTON_METRE(Dimension.TORQUE, "N·m", "1", "Nm|N·m", "newton metre|newton metres|newton meters"),
  POUND_FORCE_FOOT(Dimension.TORQUE, "lbf·ft", "1.3558179483314004", "", Spelling.POUND_FOOT),
  POUND_FORCE_INCH(Dimension.TORQUE, "lbf·in", "0.1129848290276167", "", Spelling.POUND_INCH),
  // The same two as American garages write them: what is written so is printed so.
  FOOT_POUND(Dimension.TORQUE, "ft-lb", "1.3558179483314004", "", Spelling.FOOT_POUND),
  INCH_POUND(Dimension.TORQUE, "in-lb", "0.1129848290276167", "", Spelling.INCH_POUND),
  KILOGRAM_FORCE_METRE(
      Dimension.TORQUE, "kgf·m", "9.80665", "kgf·m|kgfm|kg·m|kgm|m·kg|mkg|kp·m|kpm|m·kp|mkp", ""),
  KILOGRAM_FORCE_CENTIMETRE(
      Dimension.TORQUE, "kgf·cm", "0.0980665", "kgf·cm|kgfcm|kg·cm|kgcm|cm·kg|cmkg|kp·cm|kpcm", ""),
  DECANEWTON_METRE(Dimension.TORQUE, "daN·m", "10", "daN·m|daNm", ""),
  NEWTON_CENTIMETRE(Dimension.TORQUE, "N·cm", "0.01", "N·cm|Ncm", ""),

  // A masculine ordinal stands where the degree sign should on several keyboards.
  DEGREE(Dimension.ANGLE, "°", "1", "°|º", "deg|degs|degree|degrees"),

  MILLIMETRE(Dimension.LENGTH, "mm", "1", "mm", "millimetre|millimetres|millimeters"),
  CENTIMETRE(Dimension.LENGTH, "cm", "10", "cm", "centimetre|centimetres|centimeters"),
  METRE(Dimension.LENGTH, "m", "1000", "m", "metre|metres|meter|meters"),
  INCH(Dimension.LENGTH, "in", "25.4", "\"|″|”", "in|inch|inches"),
  FOOT(Dimension.LENGTH, "ft", "304.8", "", "ft|foot|feet"),

  KILOMETRE(Dimension.DISTANCE, "km", "1", "km", "kilometre|kilometres|kilometers"),
  MILE(Dimension.DISTANCE, "mi", "1.609344", "mi", "mile|miles"),

  KILOGRAM(Dimension.MASS, "kg", "1", "kg|Kg|KG", "kilogram|kilograms"),
  POUND(Dimension.MASS, "lb", "0.45359237", "", "lb|lbs|pound|pounds"),
  TONNE(Dimension.MASS, "t", "1000", "t", "tonne|tonnes"),

  LITRE(Dimension.VOLUME, "L", "1", "L|l", "litre|litres|liter|liters"),
  MILLILITRE(Dimension.VOLUME, "mL", "0.001", "mL|ml|cm³|cm3|cc", "millilitre|millilitres"),
  // A quart or gallon without its country is refused: the two differ by a fifth.
  US_GALLON(Dimension.VOLUME, "US gal", "3.785411784", "", "us gal|us gallon|us gallons"),
  US_QUART(Dimension.VOLUME, "US qt", "0.946352946", "", "us qt|us quart|us quarts"),
  US_PINT(Dimension.VOLUME, "US pt", "0.473176473", "", "us pt|us pint|us pints"),
  IMPERIAL_GALLON(Dimension.VOLUME, "imp gal", "4.54609", "", "imp gal|imp gallon|imp gallons"),
  IMPERIAL_PINT(Dimension.VOLUME, "imp pt", "0.56826125", "", "imp pt|imp pint|imp pints"),

  MINUTE(Dimension.TIME, "min", "1", "min", "mins|minute|minutes"),
  HOUR(Dimension.TIME, "h", "60", "h", "hr|hrs|hour|hours"),

  PERCENT(Dimension.SHARE, "%", "1", "%", "percent|per cent"),

  DEGREE_CELSIUS(Dimension.TEMPERATURE, "°C", "1", "°C|ºC|degC|deg C", "degrees celsius"),

  // Base: newton per square inch, the only simple one in which both bar and psi end.
  BAR(Dimension.PRESSURE, "bar", "64.516", "bar", ""),
  KILOPASCAL(Dimension.PRESSURE, "kPa", "0.64516", "kPa", ""),
  PSI(Dimension.PRESSURE, "psi", "4.4482216152605", "", "psi|lbf/in²|lbf/in2");

  private static final Map<String, Unit> EXACT = new TreeMap<>();
  private static final Map<String, Unit> FOLDED = new TreeMap<>();

  static {
    for (Unit unit : values()) {
      Spelling.enter(EXACT, unit.exact, unit);
      Spelling.enter(FOLDED, unit.folded, unit);
    }
  }

  private final Dimension dimension;
  private final String symbol;
  private final BigDecimal factor;
  private final String exact;
  private final String folded;

  /**
   * @param exact spellings in which capitals count, parted by bars: mN·m and MN·m are not N·m
   * @param folded spellings in which they do not
   */
  Unit(Dimension dimension, String symbol, String factor, String exact, String folded) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.factor = new BigDecimal(factor);
    this.exact = exact;
    this.folded = folded;
  }

  /**
   * The unit behind a spelling; dots, hyphens, stars and spaces between its parts are all the same.
   */
  public static Optional<Unit> of(String spelling) {
    String joined = Spelling.joined(spelling);
    return Optional.ofNullable(EXACT.get(joined))
        .or(() -> Optional.ofNullable(FOLDED.get(joined.toLowerCase(Locale.ROOT))));
  }

  /** The symbol of the unit of a kind that a spelling names but for its capitals. */
  static Optional<String> inOtherCapitals(String spelling, Dimension expected) {
    String small = Spelling.joined(spelling).toLowerCase(Locale.ROOT);
    return EXACT.entrySet().stream()
        .filter(entry -> entry.getValue().dimension == expected)
        .filter(entry -> entry.getKey().toLowerCase(Locale.ROOT).equals(small))
        .map(entry -> entry.getValue().symbol)
        .findFirst();
  }

  /** What it measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** The one form in which it is printed. */
  public String symbol() {
    return symbol;
  }

  /**
   * Its exact size in the base of its dimension: N·m, degree, mm, km, kg, L, min, percent, °C,
   * N/in².
   */
  public BigDecimal factor() {
    return factor;
  }

  /** Whether it is as large: only its name is another. */
  public boolean isAsLargeAs(Unit other) {
    return dimension == other.dimension && factor.compareTo(other.factor) == 0;
  }

  /** How spellings are compared. */
  private static final class Spelling {
    static final String POUND_FOOT =
        "lbf·ft|lbft|lbfft|lb·ft|lbs·ft|pound·foot|pound·feet|pound·force·foot|pound·force·feet";
    static final String FOOT_POUND = "ft·lb|ft·lbs|ft·lbf|ftlb|ftlbs|ftlbf|foot·pound|foot·pounds";
    static final String POUND_INCH = "lbf·in|lbin|lbfin|lb·in|lbs·in|pound·inch|pound·inches";
    static final String INCH_POUND =
        "in·lb|in·lbs|in·lbf|inlb|inlbs|inlbf|inch·pound|inch·pounds|inch·lb|inch·lbs";

    private static final Pattern JOINTS = Pattern.compile("[\\s\\u00A0\\u202F\\u2009·⋅•∙‧*.‐‑-]+");

    static String joined(String spelling) {
      return JOINTS.matcher(spelling.strip()).replaceAll("·");
    }

    static void enter(Map<String, Unit> book, String spellings, Unit unit) {
      for (String spelling : spellings.split("\\|")) {
        Unit other = spelling.isEmpty() ? null : book.put(joined(spelling), unit);
        if (other != null) {
          throw new IllegalStateException(spelling + " means both " + other + " and " + unit);
        }
      }
    }
  }
}
