package baysheet.torque;

import java.util.Objects;

/**
 * What to set on which wrench.
 *
 * @param wrench the wrench
 * @param setting a mark of its scale, in its unit
 * @param arrives what reaches the nut at that mark, in the target's unit, unrounded
 * @param insideBand whether everything the wrench may give at that mark is accepted
 */
public record Setting(Wrench wrench, Quantity setting, Quantity arrives, boolean insideBand) {
  public Setting {
    Objects.requireNonNull(wrench);
    Objects.requireNonNull(arrives);
    if (!wrench.holds(setting)) {
      throw new IllegalArgumentException(
          wrench.name() + " has no " + setting.print() + " on its scale");
    }
  }
}
