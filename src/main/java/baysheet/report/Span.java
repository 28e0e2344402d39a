package baysheet.report;

/**
 * A stretch of a source. Lines and columns count from 1, columns in code points; the end column is
 * the one after the last character, and equals the start for a mere point.
 */
public record Span(Source source, int line, int column, int endLine, int endColumn)
    implements Comparable<Span> {
  public Span {
    if (line < 1 || column < 1 || endLine < line || (endLine == line && endColumn < column)) {
      throw new IllegalArgumentException(
          "span " + line + ":" + column + " to " + endLine + ":" + endColumn);
    }
  }

  /** By source name, then by position. */
  @Override
  public int compareTo(Span other) {
    int byName = source.name().compareTo(other.source.name());
    if (byName != 0) {
      return byName;
    }
    return line != other.line
        ? Integer.compare(line, other.line)
        : Integer.compare(column, other.column);
  }

  /** {@code file:line:column}. */
  @Override
  public String toString() {
    return source.name() + ":" + line + ":" + column;
  }
}
