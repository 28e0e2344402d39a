package baysheet.layout;

/** Characters that steer line breaking and are not drawn as themselves. */
final class BreakCharacters {
  /** A space at which no line breaks. */
  static final int NO_BREAK_SPACE = 0x00A0;

  /** Forbids a break and has no width. */
  static final int WORD_JOINER = 0x2060;

  private BreakCharacters() {}

  static boolean neverDrawn(int codePoint) {
    return codePoint == WORD_JOINER || codePoint == '\n';
  }

  /** Whether no line may break on either side. */
  static boolean holdsTogether(int codePoint) {
    return codePoint == NO_BREAK_SPACE || codePoint == WORD_JOINER;
  }

  /**
   * A no-break space is drawn as a plain one: some fonts give both one glyph, and then the text
   * that a reader copies would depend on which of the two the font maps first.
   */
  static int drawnAs(int codePoint) {
    return codePoint == NO_BREAK_SPACE ? ' ' : codePoint;
  }

  /** The text as it is drawn. */
  static String drawn(String text) {
    if (text.indexOf(NO_BREAK_SPACE) < 0 && text.indexOf(WORD_JOINER) < 0) {
      return text;
    }
    StringBuilder drawn = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      if (!neverDrawn(text.charAt(i))) {
        drawn.append((char) drawnAs(text.charAt(i)));
      }
    }
    return drawn.toString();
  }
}
