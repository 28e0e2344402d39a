package baysheet.sheet;

/**
 * A stretch of a sheet's sequence during which a special tool is in use.
 *
 * @param tool its name in the crib
 * @param first number of the step that takes it
 * @param last number of the last step that needs it
 */
public record ToolSpell(String tool, int first, int last) {
  public ToolSpell {
    if (first < 1 || last < first) {
      throw new IllegalArgumentException(tool + " from step " + first + " to step " + last);
    }
  }
}
