package baysheet.verify;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether the work may rest behind a step: nothing moves, nothing hangs, and wheels are tight. */
final class RestCheck {
  private final Sheet whole;
  private final Resolved resolved;
  private final int after;
  private final Set<ItemAt> loose;

  /**
   * @param loose what is on and not tight behind the step
   */
  RestCheck(Sheet whole, Resolved resolved, int after, Set<ItemAt> loose) {
    this.whole = whole;
    this.resolved = resolved;
    this.after = after;
    this.loose = loose;
  }

  /** Why the work must not rest here. */
  List<String> faults() {
    List<String> why = new ArrayList<>();
    SheetStep before = whole.steps().get(after - 1);
    boolean onBlocks = isOnBlocks(whole, after);
    if (after == whole.steps().size()) {
      return isFinished(before) && !onBlocks ? List.of() : List.of("the work is not finished");
    }
    if (before.height() == Height.GROUND && !onBlocks && !loose.isEmpty()) {
      why.add("the vehicle stands on its wheels, and these are not tight: " + loose);
    }
    if (before.moment().compareTo(Moment.ON_THE_GROUND) > 0) {
      why.add("the vehicle is about to move");
    }
    if (before.source() instanceof StepSource.Checkpoint) {
      why.add("the checks before it belong to the next step");
    }
    if (isBleeding(before, whole.steps().get(after))) {
      why.add("a circuit is being bled, or an engine run");
    }
    StepSource next = whole.steps().get(after).source();
    boolean moves = next instanceof StepSource.HeightChange;
    if (next instanceof StepSource.Chocks) {
      why.add("the chocks of step " + (after + 1) + " belong to what is done before");
    }
    if (before.source() instanceof StepSource.HeightChange change
        && (moves || change.part() == StepSource.HeightPart.FREE_LOCKS)) {
      why.add("the vehicle is being moved");
    }
    if (onBlocks && !isChocked()) {
      why.add("the vehicle stands on blocks without a chock at every wheel");
    }
    if (onBlocks && !isBetweenWays()) {
      why.add("the vehicle is being brought onto its blocks, or off them");
    }
    dangling().ifPresent(it -> why.add("nothing holds " + it));
    return why;
  }

  /** Whether the vehicle stands on its wheels, every fastener tight, and does not move yet. */
  private boolean isFinished(SheetStep last) {
    return loose.isEmpty()
        && last.height() == Height.GROUND
        && last.moment().compareTo(Moment.ON_THE_GROUND) <= 0;
  }

  /** Between two checks that are steps, or around a bleed screw that a procedure opens in place. */
  private boolean isBleeding(SheetStep before, SheetStep next) {
    if (before.source() instanceof StepSource.Check) {
      return next.source() instanceof StepSource.Check;
    }
    return isOfOneChain(before, next)
        && whole.steps().stream()
            .filter(step -> isOfOneChain(step, next))
            .flatMap(step -> step.disturb().stream())
            .anyMatch(item -> resolved.thing(item).isOf("bleed-screw"));
  }

  private static boolean isOfOneChain(SheetStep one, SheetStep other) {
    return one.procedure().equals(other.procedure())
        && one.places().equals(other.places())
        && one.source().phase() == other.source().phase();
  }

  /** A part that is still on without its fasteners, or on again before they are. */
  private Optional<ItemAt> dangling() {
    int last = after - 1;
    while (last >= 0 && isStill(whole.steps().get(last))) {
      last--;
    }
    int next = after;
    while (next < whole.steps().size() && isStill(whole.steps().get(next))) {
      next++;
    }
    if (last < 0 || next == whole.steps().size()) {
      return Optional.empty();
    }
    SheetStep done = whole.steps().get(last);
    SheetStep due = whole.steps().get(next);
    boolean one = done.procedure().equals(due.procedure()) && done.places().equals(due.places());
    if (one && done.undo().stream().anyMatch(this::isBolt) && part(done.undo()).isEmpty()) {
      return part(due.undo());
    }
    boolean bolted = due.doUp().stream().anyMatch(this::isBolt) && part(due.doUp()).isEmpty();
    return one && bolted ? part(done.doUp()) : Optional.empty();
  }

  private static boolean isStill(SheetStep step) {
    return step.undo().isEmpty() && step.doUp().isEmpty();
  }

  private boolean isBolt(ItemAt item) {
    return resolved.thing(item) instanceof Bound.OfBook;
  }

  private Optional<ItemAt> part(List<ItemAt> items) {
    return items.stream().filter(item -> !isBolt(item)).findFirst();
  }

  /** Whether the vehicle stands on blocks behind a step, or is on the way there or back. */
  static boolean isOnBlocks(Sheet whole, int after) {
    List<StepSource.BlocksPart> before = blocks(whole.steps().subList(0, after));
    List<StepSource.BlocksPart> behind = blocks(whole.steps().subList(after, whole.steps().size()));
    if (before.isEmpty()) {
      return false;
    }
    return before.get(before.size() - 1).isOn() || (!behind.isEmpty() && !behind.get(0).isOn());
  }

  /** Whether every step that brings it onto its blocks is done, and none that takes it off. */
  private boolean isBetweenWays() {
    return blocks(whole.steps().subList(0, after)).stream().allMatch(StepSource.BlocksPart::isOn)
        && blocks(whole.steps().subList(after, whole.steps().size())).stream()
            .noneMatch(StepSource.BlocksPart::isOn);
  }

  /** Whether chocks on the blocks hold the wheels of both axles. */
  private boolean isChocked() {
    Set<Place> chocked = EnumSet.noneOf(Place.class);
    for (SheetStep step : whole.steps().subList(0, after)) {
      if (step.source() instanceof StepSource.Chocks chocks) {
        Set<Place> axles =
            chocks.where() == Place.VEHICLE
                ? EnumSet.of(Place.FRONT, Place.REAR)
                : EnumSet.of(chocks.where());
        chocked.removeAll(axles);
        chocked.addAll(chocks.set() && chocks.onBlocks() ? axles : Set.of());
      }
    }
    return chocked.equals(EnumSet.of(Place.FRONT, Place.REAR));
  }

  private static List<StepSource.BlocksPart> blocks(List<SheetStep> steps) {
    return steps.stream()
        .map(SheetStep::source)
        .filter(StepSource.Blocks.class::isInstance)
        .map(source -> ((StepSource.Blocks) source).part())
        .toList();
  }
}
