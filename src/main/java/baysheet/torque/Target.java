package baysheet.torque;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A torque as a spec book gives it.
 *
 * @param nominal the value to aim at; the middle of a range
 * @param band the book's own range or tolerance, where it gives one
 * @param written the value as printed: {@code 100–120 N·m}, {@code 110 ± 10 N·m}
 */
public record Target(Quantity nominal, Optional<Band> band, String written) {
  public Target {
    if (nominal.unit().dimension() != Dimension.TORQUE) {
      throw new IllegalArgumentException(nominal.print() + " is no torque");
    }
  }

  /** A value for which the book gives no band. */
  public static Target plain(Quantity nominal) {
    return new Target(nominal, Optional.empty(), nominal.print());
  }

  /** The book's band, or {@code percent} either side of the nominal value as the shop's. */
  public Band bandOr(Quantity percent) {
    return band.orElseGet(() -> around(nominal, percent, Band.Origin.SHOP));
  }

  /** A band of {@code percent} either side of {@code nominal}. */
  static Band around(Quantity nominal, Quantity percent, Band.Origin origin) {
    BigDecimal share = percent.to(Unit.PERCENT).value().movePointLeft(2);
    return new Band(
        nominal.times(BigDecimal.ONE.subtract(share)),
        nominal.times(BigDecimal.ONE.add(share)),
        origin);
  }
}
