package baysheet.verify;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Plays a finished sheet back, step by step, and says where it does not hold. It looks at what is
 * printed and at what the procedures say; it shares no code with the planner.
 */
public final class PlanVerifier {
  private final SheetIndex printed;
  private final Resolved resolved;
  private State state = new State(Set.of(), Set.of(), Set.of());
  private final AccessClosure accesses;
  private final ReinstallOrder backOrder;
  private final List<String> faults = new ArrayList<>();

  /**
   * How far the vehicle has come apart.
   *
   * @param off what is off
   * @param everOff what was off at some time
   * @param back what was put on
   */
  private record State(Set<ItemAt> off, Set<ItemAt> everOff, Set<ItemAt> back) {
    State {
      off = new LinkedHashSet<>(off);
      everOff = new LinkedHashSet<>(everOff);
      back = new LinkedHashSet<>(back);
    }

    State copy() {
      return new State(off, everOff, back);
    }
  }

  private PlanVerifier(SheetIndex printed, Resolved resolved) {
    this.printed = printed;
    this.resolved = resolved;
    this.accesses = new AccessClosure(resolved);
    this.backOrder = new ReinstallOrder(resolved, accesses);
  }

  /**
   * Nothing, when the sheet holds.
   *
   * @throws IllegalStateException with every fault when it does not
   */
  public static void prove(Sheet sheet, Resolved resolved) {
    List<String> faults = faults(sheet, resolved);
    if (!faults.isEmpty()) {
      throw new IllegalStateException(
          "the plan of job "
              + sheet.heading().job()
              + " does not hold:\n  "
              + String.join("\n  ", faults));
    }
  }

  /** Every fault, in the order in which it is met. */
  public static List<String> faults(Sheet sheet, Resolved resolved) {
    SheetIndex printed = new SheetIndex(sheet);
    TriggerIndex bringing = new TriggerIndex(printed, resolved);
    PlanVerifier playback = new PlanVerifier(printed, resolved);
    playback.walk();
    playback.allBack();
    playback.allDone();
    playback.faults.addAll(
        ListingCheck.faults(sheet, printed, resolved, playback.state.everOff, playback.state.back));
    playback.faults.addAll(FigureCheck.faults(sheet, resolved));
    playback.faults.addAll(ToolListCheck.faults(sheet, printed, resolved));
    playback.faults.addAll(ProcedureCheck.faults(sheet, printed, resolved));
    playback.faults.addAll(ConsequenceCheck.faults(sheet, printed, resolved, bringing));
    playback.faults.addAll(RideHeightCheck.faults(sheet, printed, resolved));
    playback.faults.addAll(UnverifiedTorqueCheck.faults(sheet, printed, resolved));
    playback.faults.addAll(QualifiedStaffCheck.faults(sheet, printed, resolved, bringing));
    playback.faults.addAll(HeightCheck.faults(sheet, printed, resolved, bringing));
    playback.faults.addAll(BeforeLiftingCheck.faults(sheet, resolved, bringing));
    playback.faults.addAll(ChockCheck.faults(sheet, resolved));
    playback.faults.addAll(LoweringCheck.faults(sheet, resolved));
    playback.faults.addAll(CheckOrderRule.faults(sheet, printed, resolved, bringing));
    return playback.faults;
  }

  /** Steps that are ticked at the same places stand together; they are worked through at each. */
  private void walk() {
    List<Sheet.SheetStep> steps = printed.steps();
    int i = 0;
    while (i < steps.size()) {
      int end = i;
      while (end < steps.size() && steps.get(end).places().equals(steps.get(i).places())) {
        end++;
      }
      inAnyWay(steps.subList(i, end), steps.get(i).places());
      i = end;
    }
  }

  /**
   * Both sides may be worked through one after the other, from either, or line by line: each way
   * must hold. The first that does not is reported, with what it leaves for the rest.
   */
  private void inAnyWay(List<Sheet.SheetStep> steps, List<Place> places) {
    if (places.size() == 1) {
      sideBySide(steps, places);
      return;
    }
    List<Place> lastFirst = new ArrayList<>(places);
    Collections.reverse(lastFirst);
    List<Runnable> ways =
        List.of(
            () -> lineByLine(steps, places),
            () -> sideBySide(steps, lastFirst),
            () -> sideBySide(steps, places));
    State before = state;
    int known = faults.size();
    for (Runnable way : ways) {
      if (faults.size() == known) {
        state = before.copy();
        way.run();
      }
    }
  }

  private void lineByLine(List<Sheet.SheetStep> steps, List<Place> places) {
    steps.forEach(step -> places.forEach(place -> play(step, place)));
  }

  private void sideBySide(List<Sheet.SheetStep> steps, List<Place> places) {
    places.forEach(place -> steps.forEach(step -> play(step, place)));
  }

  private void play(Sheet.SheetStep step, Place place) {
    List<ItemAt> undo = at(step.undo(), step, place);
    List<ItemAt> doUp = at(step.doUp(), step, place);
    standsAsSaid(step);
    keepsAnEndDown(step, undo);
    if (step.phase().isWork() && !isAfterAll(step, place)) {
      accessOpen(step, place, undo);
    }
    for (ItemAt item : undo) {
      if (!state.off.add(item)) {
        faults.add("step " + step.n() + " undoes " + item + ", which is off already");
      }
      state.everOff.add(item);
    }
    for (ItemAt item : doUp) {
      if (!state.off.remove(item)) {
        String why = state.everOff.contains(item) ? "is on already" : "was never off";
        faults.add("step " + step.n() + " does up " + item + ", which " + why);
      }
      state.back.add(item);
      faults.addAll(backOrder.faults(step, item, state.off));
    }
  }

  /** Whether a step is written for a moment at which everything is closed again. */
  private boolean isAfterAll(Sheet.SheetStep step, Place place) {
    return moment(step, place).filter(at -> at.compareTo(Moment.ON_THE_GROUND) > 0).isPresent();
  }

  /** Whether a step is written for a moment at which the vehicle stands on its wheels. */
  private boolean isOnItsWheels(Sheet.SheetStep step, Place place) {
    return moment(step, place)
        .filter(at -> at == Moment.BEFORE_LIFTING || at == Moment.ON_THE_GROUND)
        .isPresent();
  }

  /** The moment that a step has of its own in its procedure. */
  private Optional<Moment> moment(Sheet.SheetStep step, Place place) {
    Procedure procedure = task(step, place).procedure();
    return WrittenSteps.of(step, Map.of(step.procedure(), procedure))
        .flatMap(written -> written.moment().map(Located::value));
  }

  /** A step's moment is the state in which the vehicle is when the sequence comes to it. */
  private void standsAsSaid(Sheet.SheetStep step) {
    boolean up = carries(state.off);
    boolean moves = carries(step.undo()) || carries(step.doUp());
    if (!moves && up != (step.moment() == Moment.RAISED)) {
      faults.add(
          "step "
              + step.n()
              + " is for "
              + step.moment()
              + ", and the vehicle is "
              + (up ? "up" : "on its wheels"));
    }
  }

  /** While one end is up the wheels of the other are chocked; else the sheet says that none is. */
  private void keepsAnEndDown(Sheet.SheetStep step, List<ItemAt> undo) {
    for (ItemAt item : undo) {
      boolean other = state.off.stream().anyMatch(up -> carries(up) && !isOneEnd(up, item));
      if (carries(item) && other && !saysBothUp()) {
        faults.add("step " + step.n() + " raises a second end, and no step before says so");
      }
    }
  }

  /** The first step that raises anything says whether no end stays down. */
  private boolean saysBothUp() {
    return printed.steps().stream()
        .filter(step -> carries(step.undo()))
        .limit(1)
        .anyMatch(step -> step.details().contains(new Detail.BothEndsUp()));
  }

  private static boolean isOneEnd(ItemAt one, ItemAt other) {
    return one.place().axle().orElse(one.place()) == other.place().axle().orElse(other.place());
  }

  private boolean carries(Collection<ItemAt> items) {
    for (ItemAt item : items) {
      if (carries(item)) {
        return true;
      }
    }
    return false;
  }

  private boolean carries(ItemAt item) {
    return resolved.thing(item).isOf("support");
  }

  /** A merged step's items on one side; on the first also those that belong to neither. */
  private static List<ItemAt> at(List<ItemAt> items, Sheet.SheetStep step, Place place) {
    if (step.places().size() == 1) {
      return items;
    }
    boolean first = step.places().get(0) == place;
    return items.stream()
        .filter(item -> item.place() == place || (first && !step.places().contains(item.place())))
        .toList();
  }

  private Task task(Sheet.SheetStep step, Place place) {
    Task task = resolved.tasks().get(new TaskId(step.procedure(), place));
    if (task == null) {
      throw new IllegalStateException(
          "step " + step.n() + " is of no task: " + step.procedure() + " at " + place);
    }
    return task;
  }

  /**
   * Whatever the access to this task takes off must be off. What is due on the wheels, as loosening
   * a nut through the wheel, needs only the access that is reached without raising.
   */
  private void accessOpen(Sheet.SheetStep step, Place place, List<ItemAt> undoing) {
    boolean down = isOnItsWheels(step, place);
    for (Task access : accesses.of(task(step, place))) {
      if (!down || !needsRaising(access)) {
        for (BoundStep opening : access.open()) {
          needsOff(step, opening.undo(), undoing);
        }
      }
    }
  }

  private boolean needsRaising(Task access) {
    return Stream.concat(Stream.of(access), accesses.of(access).stream())
        .flatMap(task -> task.open().stream())
        .anyMatch(opening -> carries(opening.undo()));
  }

  private void needsOff(Sheet.SheetStep step, List<ItemAt> items, List<ItemAt> undoing) {
    for (ItemAt item : items) {
      if (!state.off.contains(item) && !undoing.contains(item)) {
        faults.add("step " + step.n() + " needs " + item + " off, and it is on");
      }
    }
  }

  private void allBack() {
    state.off.forEach(item -> faults.add(item + " comes off and never goes back on"));
  }

  /** Every item that a procedure of the job undoes or does up is on the sheet. */
  private void allDone() {
    for (Task task : resolved.tasks().values()) {
      task.open().stream()
          .flatMap(step -> step.undo().stream())
          .filter(item -> !state.everOff.contains(item))
          .forEach(item -> faults.add(task.id() + " undoes " + item + ", and no step does"));
      task.close().stream()
          .flatMap(step -> step.doUp().stream())
          .filter(item -> !state.back.contains(item))
          .forEach(item -> faults.add(task.id() + " does up " + item + ", and no step does"));
    }
  }
}
