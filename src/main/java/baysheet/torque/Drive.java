package baysheet.torque;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Square drives, smallest first.
 *
 * <p>Working limits are about 60 % of the test torques believed to stand in ISO 1711-1 (from
 * memory: 68.6, 225, 569, 1569, 2795 N·m): common practice, no source. A shop may set its own.
 */
public enum Drive {
  QUARTER("1/4", "6.3", 40, new Largest(15, 10, 40, 12, 8)),
  THREE_EIGHTHS("3/8", "10", 135, new Largest(36, 14, 60, 20, 12)),
  HALF("1/2", "12.5", 340, new Largest(41, 22, 80, 24, 18)),
  THREE_QUARTER("3/4", "20", 940, new Largest(60, 36, 100, 32, 24)),
  ONE("1", "25", 1670, Largest.ANY);

  private static final String EXPECTED = "1/4 in, 3/8 in, 1/2 in, 3/4 in or 1 in";
  private static final Pattern INCH = Pattern.compile("[\\s\\u00A0]*(?:in|inch|\"|″)$");
  private static final Pattern MILLIMETRE = Pattern.compile("[\\s\\u00A0]*mm$");

  private final String inches;
  private final String millimetres;
  private final int limit;
  private final Largest largest;

  Drive(String inches, String millimetres, int limit, Largest largest) {
    this.inches = inches;
    this.millimetres = millimetres;
    this.limit = limit;
    this.largest = largest;
  }

  /**
   * The largest sizes in which sockets and bits are sold for a square: common practice, no source.
   *
   * @param hex across flats, in millimetres; 3/8 in up to 36 mm, as for oil filter caps
   * @param key hexagon keys, in millimetres
   * @param lobe six-lobe bits, the number after T
   * @param outerLobe external six-lobe sockets, the number after E
   * @param twelve twelve-point bits, the number after M
   */
  private record Largest(int hex, int key, int lobe, int outerLobe, int twelve) {
    static final Largest ANY =
        new Largest(
            Integer.MAX_VALUE,
            Integer.MAX_VALUE,
            Integer.MAX_VALUE,
            Integer.MAX_VALUE,
            Integer.MAX_VALUE);

    int of(Head.Form form) {
      return switch (form) {
        case HEX, TWELVE_POINT -> hex;
        case HEX_KEY -> key;
        case SIX_LOBE -> lobe;
        case EXTERNAL_SIX_LOBE -> outerLobe;
        case TWELVE_POINT_KEY -> twelve;
        case SQUARE, SLOT, CROSS -> Integer.MAX_VALUE;
      };
    }
  }

  /** Whether what turns this head is made for the square. */
  public boolean isMadeFor(Head head) {
    return head.measure().compareTo(BigDecimal.valueOf(largest.of(head.form()))) <= 0;
  }

  /** Reads {@code 1/2 in}, or the nominal size in millimetres: 6.3, 10, 12.5, 20, 25 mm. */
  public static ParseResult<Drive> parse(String text) {
    return WrittenText.read(text, EXPECTED, Drive::read);
  }

  private static ParseResult<Drive> read(String text) {
    String size = INCH.matcher(text.strip()).replaceAll("").strip();
    String metric = MILLIMETRE.matcher(size.toLowerCase(Locale.ROOT)).replaceAll("");
    boolean hasMetricUnit = !metric.equals(size);
    boolean hasInchUnit = !size.equals(text.strip());
    return Arrays.stream(values())
        .filter(
            drive ->
                hasMetricUnit
                    ? metric.equals(drive.millimetres)
                    : hasInchUnit && size.equals(drive.inches))
        .findFirst()
        .<ParseResult<Drive>>map(Parsed::new)
        .orElseGet(
            () ->
                new ParseFailure<>(WrittenText.quoted(text) + " is not a square drive", EXPECTED));
  }

  /** As printed. */
  public String print() {
    return inches + "\u00A0in";
  }

  /** Torque up to which it is used, unless the shop says otherwise. */
  public Quantity workingLimit() {
    return Quantity.of(Integer.toString(limit), Unit.NEWTON_METRE);
  }
}
