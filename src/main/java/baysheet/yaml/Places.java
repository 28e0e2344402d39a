package baysheet.yaml;

import baysheet.report.Source;
import baysheet.report.Span;
import java.util.List;
import org.yaml.snakeyaml.error.Mark;

/** Turns the parser's marks, which count from 0, into spans of a source. */
final class Places {
  private final Source source;
  private final List<String> lines;

  Places(Source source, List<String> lines) {
    this.source = source;
    this.lines = lines;
  }

  /** The point of a mark; a mark behind the last line is drawn back to that line's end. */
  Span at(Mark mark) {
    return span(mark, mark);
  }

  Span span(Mark from, Mark to) {
    Span start = point(from.getLine(), from.getColumn());
    return join(start, point(to.getLine(), to.getColumn()));
  }

  /** A point of a line, both counted from 1. */
  Span pointAt(int line, int column) {
    return source.at(line, column);
  }

  private Span point(int line, int column) {
    if (line < lines.size()) {
      return source.at(line + 1, column + 1);
    }
    return lines.isEmpty() ? source.whole() : endOf(lines.size());
  }

  /**
   * From one span's start to another's end. An end before the first column of a line is drawn back
   * over empty lines to the last line that has text: the parser's ends of blocks lie there.
   */
  Span join(Span from, Span to) {
    Span end = to;
    while (end.endColumn() == 1 && end.endLine() > from.line()) {
      end = endOf(end.endLine() - 1);
    }
    return isBefore(end, from) ? from : spanTo(from, end);
  }

  private static boolean isBefore(Span end, Span start) {
    return end.endLine() < start.line()
        || (end.endLine() == start.line() && end.endColumn() < start.column());
  }

  private Span spanTo(Span from, Span end) {
    return new Span(source, from.line(), from.column(), end.endLine(), end.endColumn());
  }

  /** The point behind the last visible character of a line, counted from 1. */
  private Span endOf(int line) {
    String text = lines.get(line - 1).stripTrailing();
    return source.at(line, text.codePointCount(0, text.length()) + 1);
  }

  /** A line, counted from 1, without its end; empty where there is none. */
  String line(int line) {
    return line < 1 || line > lines.size() ? "" : lines.get(line - 1);
  }

  /** What stands behind a span on its last line. */
  String behind(Span span) {
    String text = line(span.endLine());
    int points = text.codePointCount(0, text.length());
    return text.substring(text.offsetByCodePoints(0, Math.min(span.endColumn() - 1, points)));
  }

  /** Where a line's text begins. */
  Span textOf(int line) {
    return source.at(line, indentOf(line) + 1);
  }

  /** How many spaces stand before a line's text. */
  int indentOf(int line) {
    String text = line(line);
    return text.length() - text.stripLeading().length();
  }

  /** The nearest line above this one that has text other than a comment; 0 when there is none. */
  int textAbove(int line) {
    int above = line - 1;
    while (above > 0 && (line(above).isBlank() || line(above).strip().startsWith("#"))) {
      above--;
    }
    return above;
  }

  Span whole() {
    return source.whole();
  }
}
