package baysheet.template;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A layout's text in which every start tag carries its own line and column as the attribute {@value
 * #MARK}.
 *
 * <p>A filled layout has other lines than the layout: lists repeat, conditions leave out. The mark
 * travels with its tag through the filling, so that a mistake found in the result can be shown
 * where it was written. Columns that FreeMarker reports count the marks as well; {@link #original}
 * takes them out again.
 */
final class MarkedText {
  static final String MARK = "at";

  private static final Pattern MARKS = Pattern.compile(" " + MARK + "=\"[0-9]+:[0-9]+\"");

  private final String text;
  private final List<Insertion> insertions;

  private MarkedText(String text, List<Insertion> insertions) {
    this.text = text;
    this.insertions = List.copyOf(insertions);
  }

  /** Marks a layout's text. */
  static MarkedText of(String layout) {
    return new Scan(layout).run();
  }

  /** The text with its marks. */
  String text() {
    return text;
  }

  /** The place in the layout that a line and column of the marked text stand for. */
  Position original(int line, int column) {
    int before =
        insertions.stream()
            .filter(each -> each.line == line && each.column < column)
            .mapToInt(each -> Math.min(each.length, column - each.column))
            .sum();
    return new Position(Math.max(1, line), Math.max(1, column - before));
  }

  /** A filled layout, or a part of it, as it would be without marks. */
  static String unmarked(String filled) {
    return MARKS.matcher(filled).replaceAll("");
  }

  /** So many characters put in at a line and a column of the marked text. */
  private record Insertion(int line, int column, int length) {}

  /** One pass over a layout, left to right. */
  private static final class Scan {
    private final String in;
    private final StringBuilder out = new StringBuilder();
    private final List<Insertion> insertions = new ArrayList<>();
    private int i;
    private int line = 1;
    private int lineStart;
    private int outLineStart;

    Scan(String in) {
      this.in = in;
    }

    MarkedText run() {
      while (i < in.length()) {
        step();
      }
      return new MarkedText(out.toString(), insertions);
    }

    private void step() {
      if (in.startsWith("<#--", i)) {
        copyThrough("-->");
      } else if (in.startsWith("<!--", i)) {
        copyThrough("-->");
      } else if (startsDirective()) {
        copyDirective();
      } else if (in.startsWith("${", i)) {
        copyInterpolation();
      } else if (startsElement()) {
        markElement();
      } else {
        copy();
      }
    }

    private boolean startsDirective() {
      int name = in.startsWith("</", i) ? i + 2 : i + 1;
      return in.charAt(i) == '<' && name < in.length() && "#@".indexOf(in.charAt(name)) >= 0;
    }

    private boolean startsElement() {
      return in.charAt(i) == '<' && i + 1 < in.length() && Character.isLetter(in.charAt(i + 1));
    }

    private void markElement() {
      int column = in.codePointCount(lineStart, i) + 1;
      copy();
      while (i < in.length() && isNamePart(in.charAt(i))) {
        copy();
      }
      String mark = " " + MARK + "=\"" + line + ":" + column + "\"";
      insertions.add(new Insertion(line, out.length() - outLineStart + 1, mark.length()));
      out.append(mark);
    }

    private static boolean isNamePart(char c) {
      return Character.isLetterOrDigit(c) || "-_.:".indexOf(c) >= 0;
    }

    private void copyThrough(String end) {
      int found = in.indexOf(end, i);
      int stop = found < 0 ? in.length() : found + end.length();
      while (i < stop) {
        copy();
      }
    }

    /** Copies a directive's tag; a greater-than sign in a string or in brackets does not end it. */
    private void copyDirective() {
      int depth = 0;
      while (i < in.length()) {
        char c = in.charAt(i);
        depth += bracket(c);
        copyPiece();
        if (c == '>' && depth <= 0) {
          return;
        }
      }
    }

    private void copyInterpolation() {
      copy();
      copy();
      int depth = 1;
      while (i < in.length() && depth > 0) {
        depth += bracket(in.charAt(i));
        copyPiece();
      }
    }

    private static int bracket(char c) {
      return "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
    }

    private void copyPiece() {
      char c = in.charAt(i);
      if (c == '"' || c == '\'') {
        copyString(c);
      } else {
        copy();
      }
    }

    private void copyString(char quote) {
      copy();
      while (i < in.length() && in.charAt(i) != quote) {
        if (in.charAt(i) == '\\') {
          copy();
        }
        copy();
      }
      copy();
    }

    private void copy() {
      if (i >= in.length()) {
        return;
      }
      char c = in.charAt(i++);
      out.append(c);
      if (c == '\n') {
        line++;
        lineStart = i;
        outLineStart = out.length();
      }
    }
  }
}
