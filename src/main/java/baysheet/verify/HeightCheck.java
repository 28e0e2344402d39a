package baysheet.verify;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether the vehicle is at a height at which each step can be done. Every change of height must be
 * a step, nobody works while the vehicle moves, no wheel is off when it comes to the ground, and
 * nobody is inside while it is raised. Shares no code with the planner.
 */
final class HeightCheck {
  /** What is done for each change, each by itself and in this order. */
  private static final Map<List<Height>, List<HeightPart>> PARTS =
      Map.of(
          List.of(Height.GROUND, Height.WHEELS_CLEAR),
          List.of(HeightPart.PADS, HeightPart.ARM_LOCKS, HeightPart.MOVE, HeightPart.PUSH),
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
              HeightPart.LOOK,
              HeightPart.JACK,
              HeightPart.SET_STANDS,
              HeightPart.MOVE,
              HeightPart.PUSH));

  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final StepHeights heights;
  private final boolean lift;

  /** Of the cautions at the steps that raise the vehicle. */
  private final Set<String> raisingLetters = new HashSet<>();

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
    this.heights = new StepHeights(printed, resolved, bringing);
    this.lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
    printed.steps().stream()
        .filter(step -> !heights.supports(step.undo()).isEmpty())
        .forEach(step -> raisingLetters.addAll(step.letters().all()));
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
    if (step.source() instanceof StepSource.Chocks) {
      stands(step);
    } else if (step.source() instanceof StepSource.HeightChange change) {
      moved(step, change);
    } else if (!heights.supports(step.undo()).isEmpty()) {
      raised(step);
    } else if (!heights.supports(step.doUp()).isEmpty()) {
      lowered(step);
    } else if (heights.raises(step)) {
      StepHeights.writtenAt(step).ifPresent(untested::remove);
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
    up.addAll(heights.supports(step.undo()));
    now = lift ? Height.WORKING : Height.STANDS;
    boolean behind = false;
    Task task = heights.task(step);
    warned(step, task);
    for (BoundStep opening : task.open()) {
      StepSource.WrittenAt at =
          StepSource.WrittenAt.of(task.procedure(), Sheet.Phase.OPEN, opening.step());
      boolean there = printed.written(at, task.id()).stream().anyMatch(one -> one.n() > step.n());
      if (behind && opening.step().moment().isEmpty() && there) {
        untested.add(at);
      }
      behind |= !heights.supports(opening.undo()).isEmpty();
    }
  }

  /** What a step is warned of that raises the vehicle stands at the first that prepares it, too. */
  private void warned(Sheet.SheetStep step, Task task) {
    Sheet.SheetStep first =
        printed.steps().stream()
            .filter(one -> one.source().phase() == Sheet.Phase.OPEN && heights.raises(one))
            .filter(one -> heights.task(one).id().equals(task.id()))
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
    wheelsOn(step, heights.supports(step.doUp()));
    up.removeAll(heights.supports(step.doUp()));
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
    if (change.from() != change.to()) {
      lettered(step);
    }
    if (change.part() == HeightPart.FREE_LOCKS) {
      offItsLocks = true;
    }
    // Directly ahead of the step with which a procedure lowers the vehicle.
    boolean alone = begins && change.part() == HeightPart.FREE_LOCKS && lift;
    // It moves nothing; when it is due is for ChockCheck.
    boolean brakes = begins && change.part() == HeightPart.BRAKE;
    if (!alone && !brakes) {
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
    if (!resolved.bay().hasArms()) {
      moving.remove(HeightPart.ARM_LOCKS);
    }
  }

  /**
   * What is warned of where the vehicle is raised stands at each part, or at each on the way up.
   */
  private void lettered(Sheet.SheetStep step) {
    boolean down =
        step.source() instanceof StepSource.HeightChange change
            && change.to().ordinal() < change.from().ordinal();
    for (CautionLine caution : sheet.safety().cautions()) {
      boolean over = down && resolved.catalogue().cautions().get(caution.name()).raising();
      boolean ofRaising = raisingLetters.contains(caution.letter()) && !over;
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
    Set<Height> at = heights.at(step);
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

  private void fault(Sheet.SheetStep step, String what) {
    faults.add("step " + step.n() + " " + what);
  }
}
