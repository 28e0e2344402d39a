package baysheet.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of plain text under one another: a word on the left, what belongs to it on the right, both
 * aligned; long texts go on below their own beginning.
 */
final class Rows {
  // The longest word on the left is "overridden"; a terminal is taken to have a hundred columns.
  private static final int LEFT = 12;
  private static final int WIDTH = 100;
  private static final String INDENT = "  ";

  private final List<String> lines = new ArrayList<>();

  /** A line of its own, at the margin. */
  void heading(String text) {
    lines.add(text);
  }

  /** A word and what belongs to it; the word is left out where the line before had the same. */
  void row(String word, String text) {
    String left = INDENT + word + " ".repeat(Math.max(1, LEFT - word.length()));
    for (String line : wrapped(text)) {
      lines.add(left + line);
      left = INDENT + " ".repeat(LEFT);
    }
  }

  /** Several texts under one word. */
  void rows(String word, List<String> texts) {
    String left = word;
    for (String text : texts) {
      row(left, text);
      left = "";
    }
  }

  /** Broken at blanks only: a figure stays with its unit, a path stays whole. */
  private static List<String> wrapped(String text) {
    List<String> wrapped = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      boolean full = line.length() + 1 + word.length() > WIDTH - LEFT - INDENT.length();
      if (full && !line.isEmpty()) {
        wrapped.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    wrapped.add(line.toString());
    return wrapped;
  }

  /**
   * Lines parted by line feeds, the last one ended as well. What kept a figure with its unit has
   * done its work by now: a common blank can be searched for and copied.
   */
  String print() {
    return (String.join("\n", lines) + "\n").replace('\u00A0', ' ');
  }
}
