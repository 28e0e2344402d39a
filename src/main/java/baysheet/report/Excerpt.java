package baysheet.report;

import java.util.List;

/** A line of a source with the marked stretch below it: both as they are to be printed. */
record Excerpt(String line, String marks) {
  /** Columns of the source that are shown at most; with the margin it fits a 100-column window. */
  private static final int WINDOW = 88;

  /** How much of a long line is shown before what is marked. */
  private static final int BEFORE = 30;

  private static final String CUT = "…";

  /**
   * The span's first line out of {@code lines}. A span over several lines is marked to the end of
   * its first.
   */
  static Excerpt of(Span span, List<String> lines) {
    int[] points = lines.get(span.line() - 1).stripTrailing().codePoints().toArray();
    int from = Math.min(span.column() - 1, points.length);
    int lineEnd = span.endLine() > span.line() ? points.length : span.endColumn() - 1;
    int to = Math.max(from, Math.min(lineEnd, points.length));
    int first = points.length <= WINDOW ? 0 : Math.max(0, from - BEFORE);
    int last = Math.min(points.length, first + WINDOW);
    return cut(points, first, last, from, Math.min(to, last));
  }

  private static Excerpt cut(int[] points, int first, int last, int from, int to) {
    String head = (first > 0 ? CUT : "") + text(points, first, from);
    String marked = Columns.shown(head + text(points, from, to));
    String whole = Columns.shown(head + text(points, from, last));
    int before = Columns.width(Columns.shown(head));
    int carets = Math.max(1, Columns.width(marked) - before);
    return new Excerpt(
        whole + (last < points.length ? CUT : ""), " ".repeat(before) + "^".repeat(carets));
  }

  private static String text(int[] points, int from, int to) {
    return new String(points, from, to - from);
  }
}
