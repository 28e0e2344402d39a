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
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether the vehicle is at a height at which each step can be done. Every change of height must be
 * a step, nobody works while the vehicle moves, no wheel is off when it comes to the ground, and
 * nobody is inside while it is raised. Shares no code with the planner.
 */
final class HeightCheck {
  private static final List<String> WORKED_FROM_INSIDE =
      List.of("inside", "ignition-switch", "airbag", "seat-belt");

  /** What is done for each change, each by itself and in this order. */
  private static final Map<List<Height>, List<HeightPart>> PARTS =
      Map.of(
          List.of(Height.GROUND, Height.WHEELS_CLEAR),
          List.of(HeightPart.PADS, HeightPart.MOVE, HeightPart.PUSH),
          List.of(Height.WHEELS_CLEAR, Height.WORKING),
          List.of(HeightPart.PUSH, HeightPart.MOVE, HeightPart.LOCKS),
          List.of(Height.WORKING, Height.WHEELS_CLEAR),
          List.of(HeightPart.LOOK, HeightPart.FREE_LOCKS, HeightPart.MOVE),
          List.of(Height.WORKING, Height.GROUND),
          List.of(HeightPart.LOOK, HeightPart.FREE_LOCKS, HeightPart.MOVE),
          List.of(Height.WHEELS_CLEAR, Height.GROUND),
          List.of(HeightPart.LOOK, HeightPart.MOVE),
          List.of(Height.STANDS, Height.GROUND),
          List.of(HeightPart.LOOK, HeightPart.FREE_STANDS, HeightPart.TAKE_STANDS, HeightPart.MOVE),
          List.of(Height.GROUND, Height.STANDS),
          List.of(
              HeightPart.CHOCKS,
              HeightPart.JACK,
              HeightPart.SET_STANDS,
              HeightPart.MOVE,
              HeightPart.PUSH));

  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final TriggerIndex bringing;
  private final AccessClosure accesses;
  private final boolean lift;
  private final boolean everUp;
  private final List<String> faults = new ArrayList<>();

  // The vehicle as the steps so far leave it.
  private Height now = Height.GROUND;
  private final Set<ItemAt> up = new LinkedHashSet<>();
  private final Set<ItemAt> wheelsOff = new HashSet<>();
  private final Set<ItemAt> jacksUnder = new HashSet<>();

  /** What is left of the change of height that was begun. */
  private final List<HeightPart> moving = new ArrayList<>();

  /** From where to where it goes. */
  private List<Height> bound = List.of();

  private boolean offItsLocks;
  private boolean tried;

  /** What still has to be done before the vehicle that is being raised is tested. */
  private final List<StepSource.WrittenAt> untested = new ArrayList<>();

  private HeightCheck(Sheet sheet, SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    this.sheet = sheet;
    this.printed = printed;
    this.resolved = resolved;
    this.bringing = bringing;
    this.accesses = new AccessClosure(resolved);
    this.lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
    this.everUp = printed.steps().stream().anyMatch(step -> !supports(step.undo()).isEmpty());
  }

  static List<String> faults(
      Sheet sheet, SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    HeightCheck replay = new HeightCheck(sheet, printed, resolved, bringing);
    printed.steps().forEach(replay::play);
    return replay.faults;
  }

  private void play(Sheet.SheetStep step) {
    if (!moving.isEmpty() && !(step.source() instanceof StepSource.HeightChange)) {
      fault(step, "comes before " + moving + " of a change of height");
      moving.clear();
    }
    if (step.source() instanceof StepSource.HeightChange change) {
      moved(step, change);
    } else if (!supports(step.undo()).isEmpty()) {
      raised(step);
    } else if (!supports(step.doUp()).isEmpty()) {
      lowered(step);
    } else if (raises(step)) {
      writtenAt(step).ifPresent(untested::remove);
    } else {
      worked(step);
    }
    boolean moves = step.source() instanceof StepSource.HeightChange;
    offItsLocks &= moves;
    tried &= moves;
    if (step.height() != now) {
      fault(step, "says " + step.height().word() + ", and the vehicle is at " + now.word());
    }
    inTheWay(step.undo(), true);
    inTheWay(step.doUp(), false);
  }

  private void inTheWay(List<ItemAt> items, boolean off) {
    for (ItemAt item : items) {
      Set<ItemAt> kept =
          resolved.thing(item).isOf("wheel")
              ? wheelsOff
              : resolved.thing(item).isOf("jacked") ? jacksUnder : new HashSet<>();
      if (off) {
        kept.add(item);
      } else {
        kept.remove(item);
      }
    }
  }

  /** Raising by a procedure: its steps after that one are tests, and come before any work. */
  private void raised(Sheet.SheetStep step) {
    if (now != Height.GROUND && up.isEmpty()) {
      fault(step, "raises a vehicle that is up");
    }
    noJack(step);
    stands(step);
    up.addAll(supports(step.undo()));
    now = lift ? Height.WORKING : Height.STANDS;
    boolean behind = false;
    Task task = task(step);
    warned(step, task);
    for (BoundStep opening : task.open()) {
      StepSource.WrittenAt at =
          StepSource.WrittenAt.of(task.procedure(), Sheet.Phase.OPEN, opening.step());
      boolean there = printed.written(at, task.id()).stream().anyMatch(one -> one.n() > step.n());
      if (behind && opening.step().moment().isEmpty() && there) {
        untested.add(at);
      }
      behind |= !supports(opening.undo()).isEmpty();
    }
  }

  /** What a step is warned of that raises the vehicle stands at the first that prepares it, too. */
  private void warned(Sheet.SheetStep step, Task task) {
    Sheet.SheetStep first =
        printed.steps().stream()
            .filter(one -> one.source().phase() == Sheet.Phase.OPEN && raises(one))
            .filter(one -> task(one).id().equals(task.id()))
            .findFirst()
            .orElse(step);
    step.letters().all().stream()
        .filter(letter -> !first.letters().all().contains(letter))
        .forEach(letter -> fault(first, "begins to raise the vehicle without letter " + letter));
  }

  private void lowered(Sheet.SheetStep step) {
    noJack(step);
    stands(step);
    if (now == Height.GROUND) {
      fault(step, "lowers a vehicle that is down");
    }
    if (now == Height.WORKING && !offItsLocks) {
      fault(step, "lowers a lift that rests on its locks");
    }
    wheelsOn(step, supports(step.doUp()));
    up.removeAll(supports(step.doUp()));
    now = up.isEmpty() ? Height.GROUND : now;
  }

  /** One part of a change of height; the vehicle is at its new height behind the move itself. */
  private void moved(Sheet.SheetStep step, StepSource.HeightChange change) {
    stands(step);
    boolean begins = moving.isEmpty();
    if (change.from() != now && begins) {
      fault(step, "begins at " + change.from().word() + ", and the vehicle is at " + now.word());
    }
    noJack(step);
    lettered(step);
    if (change.part() == HeightPart.FREE_LOCKS) {
      offItsLocks = true;
    }
    // Directly ahead of the step with which a procedure lowers the vehicle.
    boolean alone = begins && change.part() == HeightPart.FREE_LOCKS && lift;
    if (!alone) {
      part(step, change, begins);
    }
    tried = change.part() == HeightPart.PUSH;
  }

  private void part(Sheet.SheetStep step, StepSource.HeightChange change, boolean begins) {
    if (begins) {
      begun(step, change);
    }
    boolean inTurn =
        !moving.isEmpty()
            && moving.get(0) == change.part()
            && bound.equals(List.of(change.from(), change.to()));
    moving.remove(change.part());
    if (!inTurn) {
      fault(step, "is out of turn among the parts of a change of height");
    }
    if (change.part() == HeightPart.MOVE) {
      if (change.to() == Height.GROUND) {
        wheelsOn(step, up);
      }
      now = change.to();
    }
    boolean high = change.to() == Height.WORKING || change.to() == Height.STANDS;
    if (high && moving.isEmpty() && resolved.with().isPresent() && !step.hold()) {
      fault(step, "raises the vehicle again, and nobody looks before an apprentice goes under");
    }
  }

  private void begun(Sheet.SheetStep step, StepSource.HeightChange change) {
    Height to = change.to();
    boolean possible = lift ? to != Height.STANDS : to == Height.STANDS || to == Height.GROUND;
    boolean untried = lift && now == Height.GROUND && to == Height.WORKING;
    if (!possible || untried || to == now || up.isEmpty()) {
      fault(step, "brings the vehicle from " + now.word() + " to " + to.word());
    }
    bound = List.of(change.from(), to);
    moving.addAll(PARTS.getOrDefault(bound, List.of(HeightPart.MOVE)));
    if (tried && to == Height.WORKING) {
      moving.remove(HeightPart.PUSH);
    }
  }

  /** What is warned of where the vehicle is raised stands at each part, too. */
  private void lettered(Sheet.SheetStep step) {
    for (CautionLine caution : sheet.cautions()) {
      boolean ofRaising =
          printed.steps().stream()
              .filter(one -> !supports(one.undo()).isEmpty())
              .anyMatch(one -> one.letters().all().contains(caution.letter()));
      if (ofRaising && !step.letters().all().contains(caution.letter())) {
        fault(step, "moves the vehicle without the letter of caution " + caution.name());
      }
    }
  }

  private void noJack(Sheet.SheetStep step) {
    jacksUnder.forEach(jack -> fault(step, "moves the vehicle, and " + jack + " is under it"));
  }

  private void wheelsOn(Sheet.SheetStep step, Collection<ItemAt> supports) {
    for (ItemAt wheel : wheelsOff) {
      if (supports.stream()
          .map(ItemAt::place)
          .anyMatch(end -> end == Place.VEHICLE || end.wheels().contains(wheel.place()))) {
        fault(step, "brings the vehicle to the ground, and " + wheel + " is off");
      }
    }
  }

  private void worked(Sheet.SheetStep step) {
    stands(step);
    Set<Height> at = at(step);
    if (!at.contains(now)) {
      fault(step, "is for " + at + ", and the vehicle is at " + now.word());
    }
  }

  /** Nothing is done at a vehicle that nobody has yet tried on its supports. */
  private void stands(Sheet.SheetStep step) {
    if (!untested.isEmpty()) {
      fault(step, "comes before " + untested.get(0));
    }
  }

  /** Preparing and testing what raises, and what belongs to lowering. */
  private boolean raises(Sheet.SheetStep step) {
    if (step.phase() != Sheet.Phase.OPEN && step.phase() != Sheet.Phase.CLOSE) {
      return false;
    }
    Task task = task(step);
    boolean ofRaising =
        Stream.concat(task.open().stream(), task.work().stream())
            .anyMatch(one -> !supports(one.undo()).isEmpty());
    return ofRaising && ownMoment(step).isEmpty();
  }

  private Set<Height> at(Sheet.SheetStep step) {
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

  private static Optional<StepSource.WrittenAt> writtenAt(Sheet.SheetStep step) {
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

  private Task task(Sheet.SheetStep step) {
    Task task = resolved.tasks().get(new TaskId(step.procedure(), step.places().get(0)));
    if (task == null) {
      throw new IllegalStateException("step " + step.n() + " is of no task");
    }
    return task;
  }

  private List<ItemAt> supports(List<ItemAt> items) {
    return items.stream().filter(item -> resolved.thing(item).isOf("support")).toList();
  }

  private void fault(Sheet.SheetStep step, String what) {
    faults.add("step " + step.n() + " " + what);
  }
}
