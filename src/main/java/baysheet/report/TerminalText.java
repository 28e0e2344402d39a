package baysheet.report;

/** Text as it may be shown on a terminal, and how it is cut and wrapped there. */
public final class TerminalText {
  private static final String ELLIPSIS = "…";

  private TerminalText() {}

  /**
   * The text with tabs and special spaces as plain ones, and with a replacement character for
   * everything that a terminal would obey instead of showing: a file must not be able to move the
   * cursor, change colours or turn the direction of writing.
   */
  public static String safe(String text) {
    return text.codePoints()
        .map(TerminalText::safe)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  private static int safe(int point) {
    if (point == '\t' || Character.getType(point) == Character.SPACE_SEPARATOR) {
      return ' ';
    }
    int type = Character.getType(point);
    boolean obeyed =
        type == Character.CONTROL
            || type == Character.SURROGATE
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR
            || type == Character.FORMAT && point != 0x200C && point != 0x200D;
    return obeyed ? 0xFFFD : point;
  }

  /** The text with every kind of space as a plain one, so that it can be compared and found. */
  static String plainSpaces(String text) {
    return text.replaceAll("\\p{Zs}", " ");
  }

  /** The text, cut to a number of code points; the last of them says that something is missing. */
  public static String bounded(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most - 1)) + ELLIPSIS;
  }

  /**
   * A stretch of a line that begins a little before the code point {@code from} where the whole
   * line is longer than {@code most}.
   */
  static String around(String line, int from, int most) {
    int[] points = line.codePoints().toArray();
    if (points.length <= most) {
      return line;
    }
    int first = Math.max(0, Math.min(from - most / 3, points.length - most));
    int last = Math.min(points.length, first + most);
    return (first > 0 ? ELLIPSIS : "")
        + new String(points, first, last - first)
        + (last < points.length ? ELLIPSIS : "");
  }

  /** The text broken between words into lines of at most {@code columns} code points. */
  static String wrapped(String text, String firstIndent, String indent, int columns) {
    StringBuilder lines = new StringBuilder();
    StringBuilder line = new StringBuilder(firstIndent);
    boolean fresh = true;
    for (String word : text.strip().split(" +")) {
      if (!fresh && line.length() + 1 + word.length() > columns) {
        lines.append(line).append('\n');
        line = new StringBuilder(indent);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    return lines.append(line).append('\n').toString();
  }
}
