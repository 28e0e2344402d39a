package baysheet.sheet;

import baysheet.torque.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * What carries the raised vehicle.
 *
 * @param raised front, rear or whole
 * @param on what it rests on
 * @param load on the raised axle, or of the whole vehicle on a lift
 * @param each the share of one stand; absent on a lift
 * @param cargo what the job says is on board, in the load; absent where it says nothing
 * @param rated what one stand, or the lift, may carry
 * @param points where it is supported
 */
public record Support(
    String raised,
    Statement on,
    Quantity load,
    Optional<Quantity> each,
    Optional<Quantity> cargo,
    Quantity rated,
    List<Statement> points) {
  public Support {
    points = List.copyOf(points);
  }
}
