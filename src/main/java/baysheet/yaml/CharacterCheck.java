package baysheet.yaml;

import baysheet.report.Problem;
import baysheet.report.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Looks through a text for characters that would make it read other than it looks. */
final class CharacterCheck {
  private final List<String> lines;
  private final Source source;

  CharacterCheck(Source source, List<String> lines) {
    this.source = source;
    this.lines = lines;
  }

  /** Letters of Hebrew, Arabic, Syriac, N'Ko and their like (Unicode bidirectional classes). */
  static boolean runsFromRightToLeft(int point) {
    byte direction = Character.getDirectionality(point);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }

  /** The first character that cannot be seen, or that looks like one that YAML needs and is not. */
  Optional<Problem> firstUnfit() {
    for (int i = 0; i < lines.size(); i++) {
      Optional<Problem> unfit =
          isPlain(lines.get(i)) ? Optional.empty() : firstUnfit(lines.get(i), i + 1);
      if (unfit.isPresent()) {
        return unfit;
      }
    }
    return Optional.empty();
  }

  /** Whether a text is of printable ASCII alone, as most are: nothing in it is unfit. */
  static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char character = text.charAt(i);
      if (character < ' ' || character > '~') {
        return false;
      }
    }
    return true;
  }

  private Optional<Problem> firstUnfit(String text, int line) {
    int[] points = text.codePoints().toArray();
    for (int j = 0; j < points.length; j++) {
      Optional<Problem> unfit = unfit(points, j, line);
      if (unfit.isPresent()) {
        return unfit;
      }
    }
    return Optional.empty();
  }

  private Optional<Problem> unfit(int[] points, int at, int line) {
    int point = points[at];
    if (point != '\t' && isUnfit(point)) {
      return Optional.of(FileSentences.controlCharacter(source.at(line, at + 1), point));
    }
    return isOddSpace(point) && divides(points, at)
        ? Optional.of(FileSentences.oddSpace(source.at(line, at + 1), point))
        : Optional.empty();
  }

  /** Spaces that YAML takes for letters, as the one that keeps a figure and its unit together. */
  private static boolean isOddSpace(int point) {
    return point != ' ' && Character.getType(point) == Character.SPACE_SEPARATOR;
  }

  /** Whether a space at this place would make an indentation or part a mark from its value. */
  private static boolean divides(int[] points, int at) {
    return indents(points, at)
        || points[at - 1] == ':'
        || points[at - 1] == '-' && indents(points, at - 1);
  }

  private static boolean indents(int[] points, int at) {
    return Arrays.stream(points, 0, at).allMatch(Character::isSpaceChar);
  }

  /**
   * Control characters, characters without width, those that turn the direction of writing, line
   * ends other than CR and LF, halves of surrogate pairs and characters that are none (Unicode 15,
   * general categories Cc, Cs, Zl, Zp and Cf). Of Cf the joiners U+200C and U+200D stay allowed:
   * some scripts need them.
   */
  static boolean isUnfit(int point) {
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      case Character.FORMAT -> point != 0x200C && point != 0x200D;
      default -> (point & 0xFFFE) == 0xFFFE;
    };
  }

  /** The first line that is indented with a tab, and how many more there are. */
  Optional<Problem> firstTabIndent() {
    List<Integer> tabbed = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (tabInIndent(lines.get(i)) >= 0) {
        tabbed.add(i);
      }
    }
    if (tabbed.isEmpty()) {
      return Optional.empty();
    }
    int first = tabbed.get(0);
    return Optional.of(
        FileSentences.tabIndent(
            source.at(first + 1, tabInIndent(lines.get(first)) + 1), tabbed.size() - 1));
  }

  /** Index of the first tab before the line's text, or -1. */
  private static int tabInIndent(String line) {
    int i = 0;
    while (i < line.length() && line.charAt(i) == ' ') {
      i++;
    }
    return i < line.length() && line.charAt(i) == '\t' ? i : -1;
  }
}
