package baysheet.files;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Natural sort order: figures within names count as numbers, so that 2 comes before 10. */
public final class NaturalOrder implements Comparator<String> {
  public static final NaturalOrder NATURAL = new NaturalOrder();

  private static final Pattern PIECE = Pattern.compile("[0-9]+|[^0-9]+");

  private NaturalOrder() {}

  @Override
  public int compare(String one, String other) {
    Matcher pieces = PIECE.matcher(one);
    Matcher others = PIECE.matcher(other);
    while (pieces.find()) {
      if (!others.find()) {
        return 1;
      }
      int order = pieces(pieces.group(), others.group());
      if (order != 0) {
        return order;
      }
    }
    // Names that differ in leading zeros alone still have one order.
    return others.find() ? -1 : one.compareTo(other);
  }

  private static int pieces(String one, String other) {
    return isNumber(one) && isNumber(other)
        ? numbers(one.replaceFirst("^0+", ""), other.replaceFirst("^0+", ""))
        : one.compareTo(other);
  }

  private static boolean isNumber(String piece) {
    return Character.isDigit(piece.charAt(0));
  }

  /** Without leading zeros the longer number is the greater; so no size is too large. */
  private static int numbers(String one, String other) {
    int length = Integer.compare(one.length(), other.length());
    return length != 0 ? length : one.compareTo(other);
  }
}
