package baysheet.box;

/**
 * Where a box stands in a greater height; {@code BASELINE} puts its first line on one baseline with
 * its neighbours that ask for the same.
 */
public enum Vertical {
  TOP,
  MIDDLE,
  BOTTOM,
  BASELINE
}
