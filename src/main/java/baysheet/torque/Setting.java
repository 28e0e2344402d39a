package baysheet.torque;

import java.math.BigDecimal;

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
    if (!wrench.holds(setting)) {
      throw new IllegalArgumentException(
          wrench.name() + " has no " + setting.print() + " on its scale");
    }
  }

  /**
   * The accepted band as this wrench shows it: in the unit of its scale, what an extension adds
   * taken off. Ends are rounded inward, as all that is printed of a band is.
   */
  public Band reading(Band band) {
    Unit unit = setting.unit();
    BigDecimal shown = setting.value().divide(arrives.to(unit).value(), Quantity.EXACT);
    return new Band(
            band.low().to(unit).times(shown), band.high().to(unit).times(shown), band.origin())
        .printed();
  }

  /** Whether the wrench shows anything but what arrives at the nut, in the unit it is given in. */
  public boolean readsOtherwise() {
    return !setting.unit().isAsLargeAs(arrives.unit()) || setting.compareTo(arrives) != 0;
  }
}
