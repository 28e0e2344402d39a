package baysheet.verify;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether chocks hold the vehicle at every moment at which wheels carry it once a job raises it,
 * whatever procedure raises it: no parking brake is trusted, for it acts on one axle, which may be
 * up, and may be what is repaired; only until a lift takes the vehicle it will do. Whether chocks
 * are out of the way where wheels come down and blocks go in. Shares no code with the planner.
 */
final class ChockCheck {
  private static final List<Place> AXLES = List.of(Place.FRONT, Place.REAR);

  private final Resolved resolved;
  private final boolean lift;
  private final List<String> faults = new ArrayList<>();

  // The vehicle as the steps so far leave it.
  private final Set<ItemAt> off = new HashSet<>();
  private final Set<Place> carrying = EnumSet.copyOf(AXLES);
  private final Set<Place> chocked = EnumSet.noneOf(Place.class);

  /** Chocks at some wheel, nobody says which. */
  private boolean somewhere;

  /** Parts of a parking brake that do not hold: off, slackened, or a motor in service mode. */
  private final Set<ItemAt> slack = new HashSet<>();

  /** Procedures that raised it. */
  private final Set<String> raising = new HashSet<>();

  private boolean lowering;

  private AppliedBrake brake = AppliedBrake.RELEASED;

  private Height height = Height.GROUND;

  /** What must be chocked by the next step; the vehicle where any wheel will do. */
  private Set<Place> due = Set.of();

  private ChockCheck(Resolved resolved) {
    this.resolved = resolved;
    this.lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
  }

  static List<String> faults(Sheet sheet, Resolved resolved) {
    ChockCheck check = new ChockCheck(resolved);
    check.wheelsUnbraked(sheet);
    sheet.steps().forEach(check::play);
    if (!check.isMet()) {
      check.faults.add("the vehicle is left on its wheels, and no chock holds it");
    }
    return check.faults;
  }

  private void play(Sheet.SheetStep step) {
    chock(step);
    if (!isMet()) {
      fault(step, "comes before a wheel is chocked, and the vehicle stands on its wheels");
    }
    due = Set.of();
    if (!lift
        && step.moment() == Moment.BEFORE_LIFTING
        && !step.slacken().isEmpty()
        && !isHeld(carrying)) {
      fault(step, "pulls at a vehicle that no chock holds");
    }
    checkHeldUnderLift(step);
    raiseAxles(step, lifted(step));
    if (step.source() instanceof StepSource.Blocks blocks) {
      blocks(step, blocks);
    }
    brake(step);
    lowerAxles(step, lowered(step));
    off.addAll(step.undo());
    off.removeAll(step.doUp());
    height = step.height();
  }

  /** Where a lift is to take the vehicle, something holds it while its pads are set. */
  private void checkHeldUnderLift(Sheet.SheetStep step) {
    boolean raises =
        task(step).stream()
            .flatMap(task -> task.open().stream())
            .anyMatch(it -> !supports(it.undo()).isEmpty());
    boolean begins = step.source().phase() == Sheet.Phase.OPEN && height == Height.GROUND;
    boolean stands = !carrying.isEmpty() && brake == AppliedBrake.RELEASED && !isHeld(carrying);
    if (lift && raises && begins && stands) {
      fault(step, "begins to raise a vehicle that neither its parking brake nor a chock holds");
    }
  }

  /** The planner applies no brake where a wheel that it holds comes off and is to turn. */
  private void wheelsUnbraked(Sheet sheet) {
    boolean front = resolved.book().traits().contains("front-parking-brake");
    Place axle = front ? Place.FRONT : Place.REAR;
    boolean braked = sheet.steps().stream().anyMatch(AppliedBrake::isFirst);
    sheet.steps().stream()
        .filter(step -> braked)
        .filter(
            step ->
                step.undo().stream()
                    .filter(item -> resolved.thing(item).isOf("wheel"))
                    .anyMatch(item -> item.place().axle().equals(Optional.of(axle))))
        .forEach(step -> fault(step, "removes a wheel that the parking brake holds"));
  }

  /** A vehicle whose wheels are just clear is not lowered unbraked where its brake holds. */
  private void brake(Sheet.SheetStep step) {
    step.undo().stream().filter(it -> resolved.thing(it).isOf("parking-brake")).forEach(slack::add);
    step.disturb().stream()
        .filter(it -> resolved.thing(it).isOf("electric-parking-brake"))
        .forEach(slack::add);
    slack.removeAll(step.doUp());
    boolean lowers =
        step.source().phase() == Sheet.Phase.CLOSE && raising.contains(step.procedure());
    boolean frees = Stream.of(step.undo(), step.slacken(), step.disturb()).anyMatch(this::isBrake);
    if (frees) {
      brake = AppliedBrake.RELEASED;
    } else if (AppliedBrake.isFirst(step) || LeftStates.brakes(step, resolved)) {
      brake = AppliedBrake.APPLIED;
      return;
    }
    if (AppliedBrake.isBy(step) && !slack.isEmpty()) {
      fault(step, "applies a parking brake that does not hold: " + slack);
    } else if (brake == AppliedBrake.JUST_APPLIED && !lowers) {
      fault(step, "comes between the parking brake and lowering");
    } else if (lowers
        && !lowering
        && height == Height.WHEELS_CLEAR
        && slack.isEmpty()
        && brake == AppliedBrake.RELEASED) {
      fault(step, "lowers wheels that no parking brake holds");
    }
    if (!supports(step.undo()).isEmpty()) {
      raising.add(step.procedure());
    }
    brake = AppliedBrake.isBy(step) ? AppliedBrake.JUST_APPLIED : brake.later();
    lowering = lowers;
  }

  private boolean isBrake(List<ItemAt> items) {
    return items.stream()
        .map(resolved::thing)
        .anyMatch(it -> it.isOf("parking-brake") || it.isOf("electric-parking-brake"));
  }

  private boolean isMet() {
    return due.isEmpty()
        || (due.contains(Place.VEHICLE) ? isHeld(carrying) : chocked.containsAll(due));
  }

  private boolean isHeld(Set<Place> wheels) {
    return somewhere || wheels.stream().anyMatch(chocked::contains);
  }

  private void chock(Sheet.SheetStep step) {
    for (Place where : set(step)) {
      Set<Place> axles = axles(where);
      if (axles.size() == 1 && !carrying.containsAll(axles)) {
        fault(step, "chocks wheels that are up");
      }
      boolean every = axles.size() == 1 || onBlocks(step);
      somewhere |= !every;
      chocked.addAll(every ? axles : Set.of());
    }
    if (step.source() instanceof StepSource.Chocks chocks && !chocks.set()) {
      chocked.removeAll(axles(chocks.where()));
      somewhere &= chocks.where() != Place.VEHICLE;
      if (!carrying.isEmpty() && !isHeld(carrying)) {
        fault(step, "takes away the chocks that hold the vehicle");
      }
    }
  }

  private static boolean onBlocks(Sheet.SheetStep step) {
    return step.source() instanceof StepSource.Chocks chocks && chocks.onBlocks();
  }

  /** The places at which a step sets chocks; what raises an axle chocks the other one. */
  private Set<Place> set(Sheet.SheetStep step) {
    if (step.source() instanceof StepSource.Chocks chocks) {
      return chocks.set() ? Set.of(chocks.where()) : Set.of();
    }
    Set<Place> places = new HashSet<>();
    step.disturb().stream()
        .filter(item -> resolved.thing(item).isOf("chocks"))
        .forEach(item -> places.add(item.place().axle().orElse(Place.VEHICLE)));
    Optional<Task> task = task(step);
    if (places.isEmpty() && task.flatMap(it -> written(step, it)).filter(this::uses).isPresent()) {
      places.add(Place.VEHICLE);
    }
    Optional<Place> raised =
        task.filter(it -> it.open().stream().anyMatch(one -> !supports(one.undo()).isEmpty()))
            .filter(it -> step.phase() == Sheet.Phase.OPEN)
            .flatMap(it -> it.id().place().axle());
    return places.isEmpty() || raised.isEmpty()
        ? places
        : Set.of(raised.get() == Place.FRONT ? Place.REAR : Place.FRONT);
  }

  private Optional<Task> task(Sheet.SheetStep step) {
    TaskId id = new TaskId(step.procedure(), step.places().get(0));
    return Optional.ofNullable(resolved.tasks().get(id));
  }

  private static Optional<Step> written(Sheet.SheetStep step, Task task) {
    return WrittenSteps.of(step, Map.of(step.procedure(), task.procedure()));
  }

  private boolean uses(Step step) {
    return step.demands().uses().stream()
        .map(use -> use.value())
        .filter(use -> !use.ifStuck())
        .map(Procedure.Use::name)
        .anyMatch(name -> resolved.catalogue().vocabulary().tool(name).contains("wheel chocks"));
  }

  /** On a jack the axle that stays down holds the vehicle; a lift carries all of it. */
  private void raiseAxles(Sheet.SheetStep step, Set<Place> axles) {
    if (axles.isEmpty()) {
      return;
    }
    Set<Place> before = EnumSet.copyOf(carrying);
    carrying.removeAll(axles);
    Set<Place> holding = carrying.isEmpty() ? before : carrying;
    if (!lift
        && !holding.isEmpty()
        && holding.stream().noneMatch(chocked::contains)
        && !somewhere) {
      fault(step, "raises an axle, and no chock holds the wheels that stay down");
    }
  }

  private void blocks(Sheet.SheetStep step, StepSource.Blocks blocks) {
    switch (blocks.part()) {
      case PUT_UNDER, PUT_UNDER_AXLE -> {
        if (axles(blocks.where()).stream().anyMatch(chocked::contains)
            || (somewhere && (lift || carrying.isEmpty()))) {
          fault(step, "puts a block where a chock stands");
        }
      }
      case TAKE_OUT, TAKE_OUT_AXLE -> chocked.removeAll(axles(blocks.where()));
      default -> {
        // Nothing that chocks have to do with.
      }
    }
  }

  private void lowerAxles(Sheet.SheetStep step, Set<Place> axles) {
    // Where an axle is still down, the chock that stands somewhere may hold that one.
    boolean onto = somewhere && !axles.isEmpty() && (lift || carrying.isEmpty());
    if (axles.stream().anyMatch(chocked::contains) || onto) {
      fault(step, "lowers wheels on to chocks");
    }
    carrying.addAll(axles);
    boolean blocks =
        step.source() instanceof StepSource.Blocks it
            && (it.part() == StepSource.BlocksPart.LOWER_ONTO
                || it.part() == StepSource.BlocksPart.LOWER_AXLE_ONTO);
    due = blocks ? axles : axles.isEmpty() ? Set.of() : EnumSet.of(Place.VEHICLE);
  }

  private Set<Place> lifted(Sheet.SheetStep step) {
    if (step.source() instanceof StepSource.HeightChange change) {
      boolean up =
          change.from() == Height.GROUND
              && change.part() == (lift ? HeightPart.MOVE : HeightPart.JACK);
      return up ? ends(supports(off)) : Set.of();
    } else if (step.source() instanceof StepSource.Blocks blocks) {
      return switch (blocks.part()) {
        case RAISE_CLEAR, RAISE_OFF, RAISE_AXLE, RAISE_AXLE_OFF -> axles(blocks.where());
        default -> Set.of();
      };
    }
    Set<Place> lifted = ends(supports(step.undo()));
    lifted.retainAll(carrying);
    return lifted;
  }

  private Set<Place> lowered(Sheet.SheetStep step) {
    if (step.source() instanceof StepSource.HeightChange change) {
      boolean down = change.to() == Height.GROUND && change.part() == HeightPart.MOVE;
      Set<Place> lowered = ends(supports(off));
      lowered.removeAll(carrying);
      return down ? lowered : Set.of();
    } else if (step.source() instanceof StepSource.Blocks blocks) {
      return switch (blocks.part()) {
        case LOWER_ONTO, LOWER_AXLE_ONTO, LOWER_TO_FLOOR, LOWER_AXLE_TO_FLOOR ->
            axles(blocks.where());
        default -> Set.of();
      };
    }
    Set<Place> lowered = ends(supports(step.doUp()));
    lowered.removeAll(carrying);
    // An axle of which one wheel is still up has not come down.
    supports(off).stream()
        .filter(item -> !step.doUp().contains(item))
        .forEach(item -> lowered.removeAll(axles(item.place())));
    return lowered;
  }

  private static Set<Place> ends(Collection<ItemAt> items) {
    Set<Place> ends = EnumSet.noneOf(Place.class);
    items.forEach(item -> ends.addAll(axles(item.place())));
    return ends;
  }

  private static Set<Place> axles(Place place) {
    return place.axle().isPresent() ? EnumSet.of(place.axle().get()) : EnumSet.copyOf(AXLES);
  }

  private List<ItemAt> supports(Collection<ItemAt> items) {
    return items.stream().filter(item -> resolved.thing(item).isOf("support")).toList();
  }

  private void fault(Sheet.SheetStep step, String what) {
    faults.add("step " + step.n() + " " + what);
  }
}
