package baysheet.yaml;

import baysheet.report.Problem;
import baysheet.report.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Looks through a text for characters that would make it read other than it looks. */
final class Characters {
  private final List<String> lines;
  private final Source source;

  Characters(Source source) {
    this.source = source;
    this.lines = source.lines();
  }

  /** The first character that cannot be seen or that only a program would write. */
  Optional<Problem> firstUnfit() {
    for (int i = 0; i < lines.size(); i++) {
      int[] points = lines.get(i).codePoints().toArray();
      OptionalInt at = indexOfUnfit(points);
      if (at.isPresent()) {
        return Optional.of(
            FileSentences.controlCharacter(
                source.at(i + 1, at.getAsInt() + 1), points[at.getAsInt()]));
      }
    }
    return Optional.empty();
  }

  private static OptionalInt indexOfUnfit(int[] points) {
    return IntStream.range(0, points.length)
        .filter(i -> points[i] != '\t' && isUnfit(points[i]))
        .findFirst();
  }

  /**
   * Control characters, characters without width, those that turn the direction of writing, line
   * ends other than CR and LF, halves of surrogate pairs and characters that are none (Unicode 15,
   * general categories Cc, Cs, Zl, Zp; of Cf those named below). The joiners U+200C and U+200D stay
   * allowed: some scripts need them.
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
    int[] tabbed =
        IntStream.range(0, lines.size()).filter(i -> tabInIndent(lines.get(i)) >= 0).toArray();
    if (tabbed.length == 0) {
      return Optional.empty();
    }
    int first = tabbed[0];
    return Optional.of(
        FileSentences.tabIndent(
            source.at(first + 1, tabInIndent(lines.get(first)) + 1), tabbed.length - 1));
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
