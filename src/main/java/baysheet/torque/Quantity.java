package baysheet.torque;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A figure with its unit, as it was written; the figure keeps its decimals.
 *
 * @param value the figure, in {@code unit}
 * @param unit its unit
 */
public record Quantity(BigDecimal value, Unit unit) {
  public Quantity {
    Objects.requireNonNull(value);
    Objects.requireNonNull(unit);
  }
}
