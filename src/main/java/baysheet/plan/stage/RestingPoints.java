package baysheet.plan.stage;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.stage.Progress.Snapshot;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the work of a job may rest: nothing on it looks finished that is not. Best is where the
 * vehicle stands on the ground, on its stands or on the locks of the lift, nothing temporary holds
 * a part and no work is half done.
 */
final class RestingPoints {
  private static final String JACKED = "jacked";

  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final List<Snapshot> progress;

  /** The section of each step, by its number from 0. */
  private final Map<Integer, Sheet.Section> sections = new HashMap<>();

  /**
   * A point between two steps.
   *
   * @param after how many steps are done
   * @param kind how good it is
   * @param off how many things are off
   * @param between whether what is done changes here: other heading, other place
   */
  record Point(int after, Kind kind, int off, boolean between) {}

  /** How good a point is. A worse one is taken only where the better ones give no division. */
  enum Kind {
    /** A piece of work is finished. */
    WHOLE,
    /** Steps follow that could be done on one side before the other. */
    SIDES,
    /** Within the steps of one piece of work. */
    WITHIN,
    /** A prop or a plug, named on both sheets, is in place. */
    PROPPED,
    /** Some fasteners, named on both sheets, still wait for their final torque. */
    WAITING,
    /** A jack under a part, named on both sheets, is in place. */
    JACKED,
    /** It stands on solid blocks, every wheel is chocked and nothing on it is loose. */
    ON_BLOCKS,
    /** On blocks some fasteners, named on both sheets, still wait for their final torque. */
    WAITING_ON_BLOCKS,
    /**
     * The wheels are just clear, lower than any lock: for the break it goes onto the next locks.
     */
    LOW,
    /**
     * Every step is done, and checks that are no steps are left: they have a sheet of their own.
     */
    ONLY_CHECKS
  }

  private RestingPoints(
      Resolved resolved, List<PlacedStep> lines, List<Snapshot> progress, Sheet sheet) {
    this.resolved = resolved;
    this.lines = lines;
    this.progress = progress;
    for (Sheet.Section section : sheet.sections()) {
      section.steps().forEach(step -> sections.put(step.n() - 1, section));
    }
  }

  static List<Point> of(
      Resolved resolved, List<PlacedStep> lines, List<Snapshot> progress, Sheet sheet) {
    RestingPoints points = new RestingPoints(resolved, lines, progress, sheet);
    List<Point> found = new ArrayList<>();
    for (int after = 1; after <= lines.size() && !points.isDown(after - 1); after++) {
      Optional<Kind> kind = points.kind(after);
      if (kind.isPresent()) {
        Snapshot state = progress.get(after);
        found.add(new Point(after, kind.get(), state.off().size(), points.isBetween(after)));
      }
    }
    return found;
  }

  /** From the first step that is due before the vehicle moves on nothing is parted. */
  private boolean isDown(int line) {
    return lines.get(line).moment().compareTo(Moment.ON_THE_GROUND) > 0;
  }

  private Optional<Kind> kind(int after) {
    Snapshot state = progress.get(after);
    if (after == lines.size()) {
      boolean whole = state.off().isEmpty() && state.loose().isEmpty();
      boolean down = state.height() == Height.GROUND && state.raised().isEmpty();
      return Optional.of(Kind.ONLY_CHECKS).filter(any -> whole && down && !state.onBlocks());
    }
    boolean waiting = !state.loose().isEmpty();
    // On its wheels it could be driven.
    boolean couldGo = waiting && state.height() == Height.GROUND && !state.onBlocks();
    if (couldGo || isMoving(after) || isUnheld(after) || isBleeding(after)) {
      return Optional.empty();
    }
    if (state.onBlocks()) {
      return isChockedOnBlocks(after)
          ? Optional.of(waiting ? Kind.WAITING_ON_BLOCKS : Kind.ON_BLOCKS)
          : Optional.empty();
    }
    if (state.height() == Height.WHEELS_CLEAR) {
      return Optional.of(Kind.LOW);
    }
    if (state.temporary().stream().anyMatch(item -> resolved.thing(item).isOf(JACKED))) {
      return Optional.of(Kind.JACKED);
    }
    if (waiting) {
      return Optional.of(Kind.WAITING);
    }
    return Optional.of(state.temporary().isEmpty() ? within(after) : Kind.PROPPED);
  }

  /** Whether all of bringing it onto its blocks is done, and none of taking it off them. */
  private boolean isChockedOnBlocks(int after) {
    Optional<Boolean> cameOn =
        blocks(lines.subList(0, after)).reduce((first, last) -> last).map(it -> it.part().isOn());
    Optional<Boolean> comesOn =
        blocks(lines.subList(after, lines.size())).findFirst().map(it -> it.part().isOn());
    return cameOn.equals(Optional.of(true)) && comesOn.equals(Optional.of(false));
  }

  private static Stream<StepSource.Blocks> blocks(List<PlacedStep> lines) {
    return lines.stream()
        .map(line -> line.step().source())
        .filter(StepSource.Blocks.class::isInstance)
        .map(StepSource.Blocks.class::cast);
  }

  /** A part whose fasteners are out already, or not in yet, can fall. */
  private boolean isUnheld(int after) {
    Optional<PlacedStep> before = moving(lines.subList(0, after)).reduce((first, last) -> last);
    Optional<PlacedStep> next = moving(lines.subList(after, lines.size())).findFirst();
    if (before.isEmpty()
        || next.isEmpty()
        || !before.get().step().task().equals(next.get().step().task())) {
      return false;
    }
    return (areFasteners(before.get().undo()) && hasParts(next.get().undo()))
        || (hasParts(before.get().doUp()) && areFasteners(next.get().doUp()));
  }

  /**
   * Whether a circuit is being bled, or an engine run: between checks that follow one another, or
   * among the steps with which a procedure opens a bleed screw that stays in place.
   */
  private boolean isBleeding(int after) {
    PlannedStep before = lines.get(after - 1).step();
    PlannedStep next = lines.get(after).step();
    boolean checks = before.phase() == Sheet.Phase.CHECK && next.phase() == Sheet.Phase.CHECK;
    return checks
        || (before.phase() == next.phase()
            && before.task().equals(next.task())
            && lines.stream()
                .map(PlacedStep::step)
                .filter(step -> step.task().equals(next.task()) && step.phase() == next.phase())
                .anyMatch(step -> !resolved.ofKind("bleed-screw", step.disturb()).isEmpty()));
  }

  /** The steps that take something off or put something on. */
  private static Stream<PlacedStep> moving(List<PlacedStep> lines) {
    return lines.stream().filter(line -> !line.undo().isEmpty() || !line.doUp().isEmpty());
  }

  private boolean areFasteners(List<ItemAt> items) {
    return !items.isEmpty() && !hasParts(items);
  }

  private boolean hasParts(List<ItemAt> items) {
    return items.stream().anyMatch(item -> !(resolved.thing(item) instanceof Bound.OfBook));
  }

  /** Checks that are ticked belong to the step that raises or lowers, and so do its own steps. */
  private boolean isMoving(int after) {
    Sheet.Section section = sections.get(after);
    boolean moves = section.title() == Sheet.Title.RAISE || section.title() == Sheet.Title.LOWER;
    return lines.get(after - 1).step().source() instanceof StepSource.Checkpoint
        || isHalfMoved(lines.get(after - 1), lines.get(after))
        || (moves && sections.get(after - 1) == section);
  }

  /** Between the parts of one change of height, off the locks, or before chocks are seen to. */
  private static boolean isHalfMoved(PlacedStep before, PlacedStep next) {
    if (next.step().source() instanceof StepSource.Chocks) {
      return true;
    }
    return before.step().source() instanceof StepSource.HeightChange change
        && (change.part() == StepSource.HeightPart.FREE_LOCKS
            || next.step().source() instanceof StepSource.HeightChange);
  }

  /** What was put on a part waits for the part. */
  private Kind within(int after) {
    PlacedStep before = lines.get(after - 1);
    PlacedStep next = lines.get(after);
    boolean applied = !before.step().apply().isEmpty() && before.doUp().isEmpty();
    if (applied || isOneChain(before, next)) {
      return Kind.WITHIN;
    }
    boolean sides = before.places().size() > 1 && before.places().equals(next.places());
    return sides ? Kind.SIDES : Kind.WHOLE;
  }

  /** Steps that one procedure writes one after another: a bleed, a part that is brought free. */
  private static boolean isOneChain(PlacedStep before, PlacedStep next) {
    return before.step().source() instanceof StepSource.Written one
        && next.step().source() instanceof StepSource.Written other
        && one.phase() != Sheet.Phase.OPEN
        && one.phase() == other.phase()
        && before.step().task().equals(next.step().task());
  }

  private boolean isBetween(int after) {
    return sections.get(after) != sections.get(after - 1);
  }
}
