package baysheet.torque;

import java.util.function.Function;

/** What all readers of this package do with a text before they look into it. */
final class WrittenText {
  /** Three times the longest quantity in use; what is longer is a sentence in the wrong place. */
  private static final int LONGEST = 200;

  /** As much of a text as a message shows. */
  private static final int LONGEST_QUOTE = 40;

  private WrittenText() {}

  /** The reading of a text that is short enough to be a value; patterns see no other text. */
  static <T> ParseResult<T> read(
      String text, String expected, Function<String, ParseResult<T>> reader) {
    return text.length() <= LONGEST
        ? reader.apply(text)
        : new ParseFailure<>(quoted(text) + " is too long for a value", expected);
  }

  /** The text in quotes, cut where it is long. */
  static String quoted(String text) {
    return '"' + cut(text.strip()) + '"';
  }

  private static String cut(String text) {
    return text.codePointCount(0, text.length()) <= LONGEST_QUOTE
        ? text
        : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE - 1)) + "…";
  }
}
