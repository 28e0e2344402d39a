package baysheet.report;

import java.util.List;

/**
 * A text that problems can point into.
 *
 * @param name the name printed before line and column, with {@code /} between folders
 * @param text the whole text; empty when it could not be read
 */
public record Source(String name, String text) {
  /** The text's lines, without their ends. */
  public List<String> lines() {
    return text.lines().toList();
  }

  /** The span of one point, line and column counted from 1. */
  public Span at(int line, int column) {
    return new Span(this, line, column, line, column);
  }

  /** The span that stands for the file as a whole. */
  public Span whole() {
    return at(1, 1);
  }

  @Override
  public String toString() {
    return name;
  }
}
