package baysheet.plan.graph;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Puts a step of its own where the vehicle must be brought to another height. */
public final class HeightSteps {
  private HeightSteps() {}

  /** The lines with every change of height that none of them makes itself. */
  public static List<PlacedStep> between(Resolved resolved, List<PlacedStep> lines) {
    List<PlacedStep> all = new ArrayList<>();
    Height height = Height.GROUND;
    PlannedStep raising = null;
    Set<ItemAt> slack = new HashSet<>();
    boolean braked = false;
    boolean first = isBrakedFirst(resolved, lines);
    for (PlacedStep line : lines) {
      if (first && line.step().entries().stream().noneMatch(PlannedStep::isHeight)) {
        all.add(braking(resolved, lines));
        braked = true;
        first = false;
      }
      raising = Lifting.raises(resolved, line.step()) ? line.step() : raising;
      for (Height next : HeightPath.between(height, before(resolved, line, height))) {
        for (HeightPart part : parts(resolved.bay(), height, next, isTried(all))) {
          all.add(change(raising, new StepSource.HeightChange(height, next, part), line.moment()));
        }
        height = next;
      }
      boolean lands = height == Height.WHEELS_CLEAR && Lifting.isLowering(resolved, line.step());
      if (lands && slack.isEmpty() && !braked) {
        all.add(
            change(
                raising,
                new StepSource.HeightChange(height, Height.GROUND, HeightPart.BRAKE),
                line.moment()));
        braked = true;
      }
      if (height == Height.WORKING && Lifting.lowers(resolved, line.step())) {
        StepSource.HeightChange free =
            new StepSource.HeightChange(height, Height.GROUND, HeightPart.FREE_LOCKS);
        all.add(change(raising, free, line.moment()));
      }
      height = line.height();
      if (!braked || !isBrakeApplied(line)) {
        all.add(line);
      }
      braked |= ParkingBrake.isApplied(resolved, line);
      braked &= !ParkingBrake.isFreed(resolved, line);
      Stream.concat(line.undo().stream(), line.disturb().stream())
          .filter(item -> isSlack(resolved, line, item))
          .forEach(slack::add);
      slack.removeAll(line.doUp());
    }
    return all;
  }

  /**
   * Whether the parking brake holds the vehicle before it leaves the floor on a lift. It is applied
   * first of all, before a battery is off that works it; only a height is measured before.
   */
  private static boolean isBrakedFirst(Resolved resolved, List<PlacedStep> lines) {
    return resolved.bay().equipment() == Bay.Equipment.LIFT
        && lines.stream().anyMatch(line -> Lifting.raises(resolved, line.step()))
        && ParkingBrake.staysApplied(resolved, lines)
        && lines.stream()
            .takeWhile(line -> !Lifting.raises(resolved, line.step()))
            .noneMatch(line -> ParkingBrake.isApplied(resolved, line));
  }

  private static PlacedStep braking(Resolved resolved, List<PlacedStep> lines) {
    StepSource.HeightChange brake =
        new StepSource.HeightChange(Height.GROUND, Height.GROUND, HeightPart.BRAKE);
    return lines.stream()
        .map(PlacedStep::step)
        .filter(step -> Lifting.raises(resolved, step))
        .findFirst()
        .map(raising -> change(raising, brake, Moment.BEFORE_LIFTING))
        .orElseThrow();
  }

  /** Whether a parking brake does not hold behind a line: off, slackened, or in service mode. */
  private static boolean isSlack(Resolved resolved, PlacedStep line, ItemAt item) {
    return resolved.thing(item).isOf("electric-parking-brake")
        || (line.undo().contains(item) && resolved.thing(item).isOf("parking-brake"));
  }

  private static boolean isBrakeApplied(PlacedStep line) {
    return line.step().source() instanceof StepSource.Blocks blocks
        && blocks.part() == StepSource.BlocksPart.APPLY_BRAKE;
  }

  /** Whether nothing was done since the vehicle was tried with its wheels just clear. */
  private static boolean isTried(List<PlacedStep> lines) {
    return !lines.isEmpty()
        && lines.get(lines.size() - 1).step().source() instanceof StepSource.HeightChange last
        && last.part() == HeightPart.PUSH;
  }

  /** What is done to bring the vehicle from one height to the next, in order. */
  private static List<HeightPart> parts(Bay bay, Height from, Height to, boolean tried) {
    return switch (to) {
      case GROUND ->
          from == Height.STANDS
              ? List.of(
                  HeightPart.LOOK, HeightPart.FREE_STANDS, HeightPart.TAKE_STANDS, HeightPart.MOVE)
              : lowering(from);
      case WHEELS_CLEAR ->
          from == Height.GROUND
              ? Stream.of(HeightPart.PADS, HeightPart.ARM_LOCKS, HeightPart.MOVE, HeightPart.PUSH)
                  .filter(part -> part != HeightPart.ARM_LOCKS || bay.hasArms())
                  .toList()
              : lowering(from);
      case WORKING ->
          tried
              ? List.of(HeightPart.MOVE, HeightPart.LOCKS)
              : List.of(HeightPart.PUSH, HeightPart.MOVE, HeightPart.LOCKS);
      case STANDS ->
          List.of(
              HeightPart.LOOK,
              HeightPart.JACK,
              HeightPart.SET_STANDS,
              HeightPart.MOVE,
              HeightPart.PUSH);
    };
  }

  private static List<HeightPart> lowering(Height from) {
    return from == Height.WORKING
        ? List.of(HeightPart.LOOK, HeightPart.FREE_LOCKS, HeightPart.MOVE)
        : List.of(HeightPart.LOOK, HeightPart.MOVE);
  }

  /** To which height the vehicle is brought before a line; lowering needs one that is raised. */
  private static Height before(Resolved resolved, PlacedStep line, Height now) {
    if (Lifting.raises(resolved, line.step())) {
      return now;
    }
    boolean lowers = Lifting.lowers(resolved, line.step());
    boolean lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
    Height clear = lift ? Height.WHEELS_CLEAR : Height.STANDS;
    return !lowers ? line.height() : now == Height.GROUND ? clear : now;
  }

  /** It carries the name of what raised the vehicle, for it does the same. */
  private static PlacedStep change(PlannedStep raising, StepSource.HeightChange change, Moment at) {
    TaskId whole = new TaskId(raising.task().procedure(), Place.VEHICLE);
    PlannedStep step = PlannedStep.move(whole, change, raising.origin());
    // Before it goes on up, the vehicle is pushed while its wheels are just clear.
    boolean before = change.part() == HeightPart.PUSH && change.to() == Height.WORKING;
    boolean there = change.part().compareTo(HeightPart.MOVE) >= 0 && !before;
    return PlacedStep.single(step, at, there ? change.to() : change.from());
  }
}
