package baysheet.layout;

/**
 * What the first lines of a paragraph leave free at their left for something that stands there.
 *
 * @param width how much
 * @param lines how many lines do
 * @param below the first line, what is added to its height
 */
record Inset(long width, int lines, long below) {
  static final Inset NONE = new Inset(0, 0, 0);
}
