package baysheet.verify;

import baysheet.books.Bay;
import baysheet.books.Catalogue;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The heights of the vehicle at which each step of a sheet can be done, as its procedure says or as
 * follows from what it touches.
 */
final class StepHeights {
  private static final List<String> WORKED_FROM_INSIDE =
      List.of("inside", "ignition-switch", "airbag", "seat-belt");

  private final Resolved resolved;
  private final TriggerIndex bringing;
  private final AccessClosure accesses;
  private final boolean lift;
  private final boolean everUp;

  StepHeights(SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    this.resolved = resolved;
    this.bringing = bringing;
    this.accesses = new AccessClosure(resolved);
    this.lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
    this.everUp = printed.steps().stream().anyMatch(step -> !supports(step.undo()).isEmpty());
  }

  /** Preparing and testing what raises, and what belongs to lowering. */
  boolean raises(Sheet.SheetStep step) {
    if (step.phase() != Sheet.Phase.OPEN && step.phase() != Sheet.Phase.CLOSE) {
      return false;
    }
    Task task = task(step);
    boolean ofRaising =
        Stream.concat(task.open().stream(), task.work().stream())
            .anyMatch(one -> !supports(one.undo()).isEmpty());
    return ofRaising && ownMoment(step).isEmpty();
  }

  /** Where a step can be done. */
  Set<Height> at(Sheet.SheetStep step) {
    if (!everUp) {
      return ownHeights(step).isEmpty() ? EnumSet.of(Height.GROUND) : ownHeights(step);
    }
    Height raised = lift ? Height.WORKING : Height.STANDS;
    if (step.phase() == Sheet.Phase.FINAL) {
      boolean gate = step.source() instanceof StepSource.Checkpoint;
      Height low = gate && lift ? Height.WHEELS_CLEAR : raised;
      return step.moment() == Moment.RAISED ? EnumSet.of(low, raised) : EnumSet.of(Height.GROUND);
    }
    if (step.phase() == Sheet.Phase.CHECK) {
      return check(step, raised);
    }
    Set<Height> own = ownHeights(step);
    boolean inside =
        Stream.concat(
                Stream.of(step.undo(), step.doUp(), step.disturb()),
                origin(step).stream()
                    .filter(one -> writtenAt(step).isEmpty())
                    .flatMap(one -> Stream.of(one.undo(), one.disturb())))
            .flatMap(List::stream)
            .anyMatch(item -> WORKED_FROM_INSIDE.stream().anyMatch(resolved.thing(item)::isOf));
    if (inside) {
      own.removeAll(EnumSet.of(Height.WORKING, Height.STANDS));
    }
    if (!own.isEmpty()) {
      return own;
    }
    boolean moment =
        ownMoment(step)
            .filter(at -> at == Moment.BEFORE_LIFTING || at.compareTo(Moment.ON_THE_GROUND) >= 0)
            .isPresent();
    if (moment || inside || step.moment().compareTo(Moment.ON_THE_GROUND) > 0) {
      return EnumSet.of(Height.GROUND);
    }
    if (isRaised(task(step))) {
      return EnumSet.of(raised);
    }
    Place place = step.places().get(0);
    boolean fromTheFloor = place == Place.ENGINE || place == Place.VEHICLE;
    return lift && fromTheFloor
        ? EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR)
        : EnumSet.of(Height.GROUND, Height.WHEELS_CLEAR, raised);
  }

  private Set<Height> check(Sheet.SheetStep step, Height raised) {
    Catalogue.Rule rule = resolved.catalogue().rules().get(step.procedure());
    Set<Height> own = inBay(rule.step().orElseThrow().heights().stream().map(Located::value));
    if (!rule.step().get().heights().isEmpty()) {
      return own;
    }
    for (Sheet.SheetStep by : bringing.steps(rule.when())) {
      boolean down = raises(by) || at(by).equals(EnumSet.of(Height.GROUND));
      own.addAll(down ? EnumSet.of(raised) : at(by));
    }
    return own;
  }

  /** The heights that the procedure itself gives for a step or for what it puts back. */
  private Set<Height> ownHeights(Sheet.SheetStep step) {
    return inBay(
        origin(step).stream().flatMap(one -> one.step().heights().stream()).map(Located::value));
  }

  /** The step of the procedure that this one is, or what it puts back was taken off by. */
  private Optional<BoundStep> origin(Sheet.SheetStep step) {
    StepSource source = step.source();
    if (source instanceof StepSource.Back back) {
      return bound(step, back.of());
    } else if (source instanceof StepSource.PutBack back) {
      return bound(step, back.of());
    }
    return writtenAt(step).flatMap(at -> bound(step, at));
  }

  private Optional<BoundStep> bound(Sheet.SheetStep step, StepSource.WrittenAt at) {
    Task task = task(step);
    Optional<Step> written = at.in(task.procedure());
    return Stream.of(task.open(), task.work(), task.close())
        .flatMap(List::stream)
        .filter(one -> written.equals(Optional.of(one.step())))
        .findFirst();
  }

  static Optional<StepSource.WrittenAt> writtenAt(Sheet.SheetStep step) {
    return step.source() instanceof StepSource.Written written
        ? Optional.of(written.at())
        : Optional.empty();
  }

  /** The moment that the procedure itself gives for a step. */
  private Optional<Moment> ownMoment(Sheet.SheetStep step) {
    return writtenAt(step)
        .flatMap(at -> bound(step, at))
        .flatMap(one -> one.step().moment())
        .map(Located::value);
  }

  private Set<Height> inBay(Stream<Height> written) {
    Set<Height> heights = EnumSet.noneOf(Height.class);
    written.forEach(
        height -> heights.add(height == Height.WORKING && !lift ? Height.STANDS : height));
    heights.remove(lift ? Height.STANDS : Height.WHEELS_CLEAR);
    return heights;
  }

  private boolean isRaised(Task task) {
    return Stream.concat(Stream.of(task), accesses.of(task).stream())
        .flatMap(one -> one.open().stream())
        .anyMatch(opening -> !supports(opening.undo()).isEmpty());
  }

  Task task(Sheet.SheetStep step) {
    Task task = resolved.tasks().get(new TaskId(step.procedure(), step.places().get(0)));
    if (task == null) {
      throw new IllegalStateException("step " + step.n() + " is of no task");
    }
    return task;
  }

  List<ItemAt> supports(List<ItemAt> items) {
    return resolved.ofKind("support", items);
  }
}
