package baysheet.verify;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Whether the vehicle goes up on blocks before anything is tightened at ride height, and comes off
 * them behind the last: nobody reaches the fasteners of a vehicle that stands on the floor, and
 * nobody drives off blocks.
 */
final class RideHeightCheck {
  private RideHeightCheck() {}

  static List<String> faults(Sheet sheet, SheetIndex printed, Resolved resolved) {
    Set<Integer> rideHeight =
        sheet.torque().stream()
            .filter(line -> isAtRideHeight(resolved, line))
            .map(TorqueLine::n)
            .collect(Collectors.toSet());
    List<Integer> tightened =
        indices(printed, step -> step.torque().stream().anyMatch(rideHeight::contains));
    List<Integer> blocks = indices(printed, step -> step.source() instanceof StepSource.Blocks);
    if (tightened.isEmpty()) {
      return List.of();
    }
    boolean around =
        blocks.size() == 2
            && blocks.get(0) < tightened.get(0)
            && blocks.get(1) > tightened.get(tightened.size() - 1);
    return around ? List.of() : List.of("blocks do not go under, and out, around ride height");
  }

  /** By the book, not by what the line says of itself. */
  private static boolean isAtRideHeight(Resolved resolved, TorqueLine line) {
    return resolved.thing(new ItemAt(line.fastener(), line.places().get(0)))
            instanceof Bound.OfBook book
        && book.values().moment() == Fastener.Moment.RIDE_HEIGHT;
  }

  /** The final steps on the ground of a kind. */
  private static List<Integer> indices(SheetIndex printed, Predicate<Sheet.SheetStep> kind) {
    List<Sheet.SheetStep> steps = printed.steps();
    return IntStream.range(0, steps.size())
        .filter(i -> steps.get(i).phase() == Sheet.Phase.FINAL)
        .filter(i -> steps.get(i).moment() == Moment.ON_THE_GROUND)
        .filter(i -> kind.test(steps.get(i)))
        .boxed()
        .toList();
  }
}
