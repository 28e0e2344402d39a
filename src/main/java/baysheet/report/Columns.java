package baysheet.report;

import java.util.Arrays;

/** How many columns of a terminal a text takes, and what of it may safely be shown there. */
final class Columns {
  /** Tabs are shown as an arrow and spaces up to the next multiple of this. */
  private static final int TAB = 4;

  /**
   * First and last code point of the blocks whose characters take two columns: East Asian Width W
   * and F of Unicode Standard Annex #11, by block and so a little generous.
   */
  private static final int[][] WIDE = {
    {0x1100, 0x115F}, {0x2E80, 0x303E}, {0x3041, 0x4DBF}, {0x4E00, 0xA4CF}, {0xA960, 0xA97C},
    {0xAC00, 0xD7A3}, {0xF900, 0xFAFF}, {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6},
    {0x1F300, 0x1F64F}, {0x1F680, 0x1F6FF}, {0x1F900, 0x1F9FF}, {0x20000, 0x3FFFD}
  };

  private Columns() {}

  /** Columns that a text takes once it is {@linkplain #shown shown} from the first column on. */
  static int width(String shown) {
    return shown.codePoints().map(Columns::width).sum();
  }

  private static int width(int point) {
    if (takesNone(point)) {
      return 0;
    }
    return Arrays.stream(WIDE).anyMatch(block -> block[0] <= point && point <= block[1]) ? 2 : 1;
  }

  private static boolean takesNone(int point) {
    int type = Character.getType(point);
    return type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT;
  }

  /**
   * The text with tabs made visible, and with a stand-in for what a terminal would obey instead of
   * showing: a file must not be able to move the cursor or turn the direction of writing.
   */
  static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    int column = 0;
    for (int point : text.codePoints().toArray()) {
      String piece = point == '\t' ? tab(column) : Character.toString(safe(point));
      shown.append(piece);
      column += width(piece);
    }
    return shown.toString();
  }

  private static String tab(int column) {
    return "→" + " ".repeat(TAB - 1 - column % TAB);
  }

  private static int safe(int point) {
    int type = Character.getType(point);
    boolean obeyed =
        type == Character.CONTROL
            || type == Character.SURROGATE
            || type == Character.LINE_SEPARATOR
            || type == Character.PARAGRAPH_SEPARATOR
            || type == Character.FORMAT && point != 0x200C && point != 0x200D;
    return obeyed ? 0xFFFD : point;
  }
}
