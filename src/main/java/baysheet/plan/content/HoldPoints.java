package baysheet.plan.content;

import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PhaseAssigner;
import baysheet.plan.graph.PlacedStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import baysheet.sheet.TorqueLine;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * At which lines work stops until a second person has looked: where a procedure says so, and for an
 * apprentice also once the vehicle is up and before anything is put together again, on what keeps a
 * car on the road, unless a check holds there once it is together and still open to the eye. A
 * figure that does not fit its thread and class stops everybody before it is used.
 */
public final class HoldPoints {
  // What the extra stops for an apprentice concern: brakes, steering, wheels, restraint, lifting.
  private static final Set<String> CONCERN =
      Set.of(
          "support",
          "wheel",
          "brake-friction",
          "brake-caliper",
          "brake-piston",
          "brake-hydraulic",
          "parking-brake",
          "steering-joint",
          "track-rod",
          "suspension-arm",
          "ball-joint",
          "hub",
          "hub-nut",
          "wheel-bearing",
          "damper",
          "spring",
          "airbag",
          "seat-belt");

  private final Resolved resolved;
  private final List<PlacedStep> lines;

  /** Those whose figure is in doubt. */
  private final List<TorqueLine> doubtful;

  public HoldPoints(Resolved resolved, List<PlacedStep> lines, List<TorqueLine> torque) {
    this.resolved = resolved;
    this.lines = lines;
    this.doubtful = torque.stream().filter(TorqueLine::inDoubt).toList();
  }

  boolean at(int index) {
    return lines.get(index).step().hold()
        || doubts(index)
        || PhaseAssigner.isAtRideHeight(resolved, lines.get(index))
        || (resolved.with().isPresent() && forApprentice(index));
  }

  /** Whether a line tightens something to a figure that is in doubt; making it snug needs none. */
  boolean doubts(int index) {
    PlacedStep line = lines.get(index);
    return doubtful.stream()
        .anyMatch(row -> names(row, row.visits().two() ? line.tighten() : line.doUp()));
  }

  private static boolean names(TorqueLine row, List<ItemAt> items) {
    return items.stream()
        .anyMatch(
            item -> row.fastener().equals(item.item()) && row.places().contains(item.place()));
  }

  private boolean forApprentice(int index) {
    return lastOfRaising(index) || isRaisedAgain(index) || lastBeforeClosing(index);
  }

  private boolean isRaisedAgain(int index) {
    return lines.get(index).step().source() instanceof StepSource.HeightChange change
        && change.part()
            == switch (change.to()) {
              case WORKING -> HeightPart.LOCKS;
              case STANDS -> HeightPart.PUSH;
              case GROUND, WHEELS_CLEAR -> null;
            };
  }

  /** The vehicle rests on what carries it only at the last step of raising it. */
  private boolean lastOfRaising(int index) {
    TaskId task = lines.get(index).step().task();
    List<Integer> opening =
        IntStream.range(0, lines.size())
            .filter(i -> lines.get(i).step().task().equals(task))
            .filter(i -> lines.get(i).step().phase() == Sheet.Phase.OPEN)
            .boxed()
            .toList();
    return opening.indexOf(index) == opening.size() - 1
        && opening.stream().anyMatch(i -> Lifting.holds(resolved, lines.get(i).undo()));
  }

  /** The last line at a place before the first thing there goes back on. */
  private boolean lastBeforeClosing(int index) {
    Sheet.Phase phase = lines.get(index).step().phase();
    boolean opens = phase == Sheet.Phase.OPEN || phase == Sheet.Phase.WORK;
    if (index + 1 >= lines.size() || !opens) {
      return false;
    }
    PlacedStep next = lines.get(index + 1);
    boolean closes =
        next.step().phase() == Sheet.Phase.CLOSE && !Lifting.holds(resolved, next.doUp());
    return closes && concerns(next) && !seenTogether(next);
  }

  /** What a second person sees tight and marked proves more than the clean parts before. */
  private boolean seenTogether(PlacedStep next) {
    return lines.stream()
        .filter(line -> line.step().phase() == Sheet.Phase.CHECK && line.step().hold())
        .anyMatch(line -> line.places().equals(next.places()));
  }

  private boolean concerns(PlacedStep next) {
    List<ItemAt> items = taskItems(next);
    return items.stream()
        .flatMap(item -> resolved.thing(item).kinds().stream())
        .anyMatch(CONCERN::contains);
  }

  /** Everything that the task which closes there has off. */
  private List<ItemAt> taskItems(PlacedStep next) {
    return lines.stream()
        .filter(line -> line.step().task().equals(next.step().task()))
        .flatMap(line -> line.undo().stream())
        .toList();
  }
}
