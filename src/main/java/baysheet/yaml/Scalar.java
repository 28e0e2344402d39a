package baysheet.yaml;

import baysheet.report.Span;

/**
 * A single value, as raw text: {@code no}, {@code 010} and {@code 1:30} stay what was written.
 *
 * @param text the text without its quotes; lines of a long text are joined as YAML joins them
 * @param quoted whether quotes, {@code |} or {@code >} stood around it
 * @param at the token, quotes included
 */
public record Scalar(String text, boolean quoted, Span at) implements Node {
  @Override
  public String shape() {
    return "a single value";
  }

  @Override
  public boolean isEmpty() {
    return !quoted && text.isEmpty();
  }
}
