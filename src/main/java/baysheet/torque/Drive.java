package baysheet.torque;

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
  QUARTER("1/4", "6.3", 40),
  THREE_EIGHTHS("3/8", "10", 135),
  HALF("1/2", "12.5", 340),
  THREE_QUARTER("3/4", "20", 940),
  ONE("1", "25", 1670);

  private static final String EXPECTED = "1/4 in, 3/8 in, 1/2 in, 3/4 in or 1 in";
  private static final Pattern INCH = Pattern.compile("[\\s\\u00A0]*(?:in|inch|\"|″)$");
  private static final Pattern MILLIMETRE = Pattern.compile("[\\s\\u00A0]*mm$");

  private final String inches;
  private final String millimetres;
  private final int limit;

  Drive(String inches, String millimetres, int limit) {
    this.inches = inches;
    this.millimetres = millimetres;
    this.limit = limit;
  }

  /** Reads {@code 1/2 in}, or the nominal size in millimetres: 6.3, 10, 12.5, 20, 25 mm. */
  public static Reading<Drive> parse(String text) {
    return WrittenText.read(text, EXPECTED, Drive::read);
  }

  private static Reading<Drive> read(String text) {
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
        .<Reading<Drive>>map(Read::new)
        .orElseGet(
            () -> new Misread<>(WrittenText.quoted(text) + " is not a square drive", EXPECTED));
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
