package baysheet.template;

import baysheet.box.Length;
import java.util.Optional;

/**
 * Reads lengths as layouts write them: up to four digits, up to four more after a point, and {@code
 * mm}, {@code pt} or {@code em}. A filled layout holds a thousand of them, so no patterns here.
 */
final class LengthText {
  private static final int MOST_DIGITS = 4;
  private static final int UNIT = 2;

  private LengthText() {}

  /** The length; empty where the text is none. */
  static Optional<Length> parse(String text) {
    int end = text.length() - UNIT;
    int point = text.indexOf('.');
    int whole = point < 0 ? end : point;
    boolean figure = areDigits(text, 0, whole) && (point < 0 || areDigits(text, point + 1, end));
    return figure
        ? inUnit(tenThousandths(text, whole, end), text.substring(end))
        : Optional.empty();
  }

  private static boolean areDigits(String text, int from, int to) {
    if (to <= from || to - from > MOST_DIGITS) {
      return false;
    }
    for (int i = from; i < to; i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  private static long tenThousandths(String text, int whole, int end) {
    long figure = 0;
    for (int i = 0; i < whole + 1 + MOST_DIGITS; i++) {
      if (i != whole) {
        figure = 10 * figure + (i < end ? text.charAt(i) - '0' : 0);
      }
    }
    return figure;
  }

  private static Optional<Length> inUnit(long tenThousandths, String unit) {
    return switch (unit) {
      case "pt" -> Optional.of(new Length(rounded(tenThousandths, 1, 10), false));
      case "em" -> Optional.of(new Length(rounded(tenThousandths, 1, 10), true));
      // 1 in = 25.4 mm = 72 pt
      case "mm" ->
          Optional.of(new Length(rounded(tenThousandths, 72_000 * 10, 254 * 10_000), false));
      default -> Optional.empty();
    };
  }

  /** Half a thousandth goes up. */
  private static long rounded(long figure, long times, long over) {
    return (2 * figure * times + over) / (2 * over);
  }
}
