package baysheet.layout;

import baysheet.report.Span;

/**
 * Something that no line of its cell holds.
 *
 * @param what the word, or what else it is
 * @param by how much wider it is than its room, in thousandths of a point
 */
public record TooWide(String what, Span at, long by) {
  /** How much wider, in whole millimetres; a part of one counts as one. */
  public long millimetres() {
    return PageFit.millimetresUp(by);
  }
}
