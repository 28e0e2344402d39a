package baysheet.verify;

import baysheet.books.Bay;
import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Whether the vehicle goes up on blocks before anything is tightened at ride height, and comes off
 * them behind the last: nobody reaches the fasteners of a vehicle that stands on the floor, and
 * nobody drives off blocks. What the chocks do meanwhile is for {@link ChockCheck}.
 */
final class RideHeightCheck {
  private static final List<String> LIFTED_ON =
      List.of(
          "apply-brake",
          "set-lift-pads",
          "arm-locks",
          "raise-clear",
          "push",
          "raise",
          "locks",
          "put-under",
          "free-locks",
          "lower-onto",
          "tyres-on",
          "neutral",
          "let-roll",
          "settle",
          "hold-still",
          "close-up");
  private static final List<String> LIFTED_OFF =
      List.of(
          "set-lift-pads-to-leave",
          "arm-locks-to-leave",
          "raise-off",
          "push-off",
          "next-locks",
          "take-out",
          "free-locks-to-leave",
          "lower-to-floor");
  private static final List<String> JACKED_ON =
      List.of(
          "apply-brake",
          "raise-axle/front",
          "put-under-axle/front",
          "lower-axle-onto/front",
          "raise-axle/rear",
          "put-under-axle/rear",
          "lower-axle-onto/rear",
          "tyres-on",
          "leave-room",
          "neutral",
          "let-roll",
          "settle",
          "hold-still",
          "close-up");

  /** The chocks that stay are those of the wheels that do not steer. */
  private static final List<String> JACKED_OFF =
      List.of(
          "raise-axle-off/rear",
          "take-out-axle/rear",
          "lower-axle-to-floor/rear",
          "raise-axle-off/front",
          "take-out-axle/front",
          "lower-axle-to-floor/front");

  private RideHeightCheck() {}

  static List<String> faults(Sheet sheet, SheetIndex printed, Resolved resolved) {
    Set<Integer> rideHeight =
        sheet.torque().stream()
            .filter(line -> isAtRideHeight(resolved, line))
            .map(TorqueLine::n)
            .collect(Collectors.toSet());
    List<Integer> tightened =
        indices(printed, step -> step.torque().stream().anyMatch(rideHeight::contains));
    if (tightened.isEmpty()) {
      return List.of();
    }
    boolean lift = resolved.bay().equipment() == Bay.Equipment.LIFT;
    int first = tightened.get(0);
    int last = tightened.get(tightened.size() - 1);
    boolean around =
        blocks(printed, i -> i < first).equals(parts(lift ? LIFTED_ON : JACKED_ON, sheet, resolved))
            && blocks(printed, i -> i > last)
                .equals(parts(lift ? LIFTED_OFF : JACKED_OFF, sheet, resolved))
            && blocks(printed, i -> i > first && i < last).isEmpty();
    List<String> faults = new ArrayList<>();
    if (!around) {
      faults.add("blocks do not go under, and out, around ride height");
    }
    tightened.stream()
        .map(i -> printed.steps().get(i))
        .filter(step -> !step.hold())
        .forEach(step -> faults.add("nobody looks at step " + step.n() + " while it is reached"));
    measured(sheet, resolved, first, faults);
    return faults;
  }

  /** What was measured for it before the work is measured again, the vehicle settled. */
  private static void measured(Sheet sheet, Resolved resolved, int first, List<String> faults) {
    List<String> before =
        sheet.steps().subList(0, first).stream().map(it -> it.source().id()).toList();
    for (TorqueLine line : sheet.torque()) {
      for (Place place : isAtRideHeight(resolved, line) ? line.places() : List.<Place>of()) {
        boolean known =
            sheet.steps().subList(0, first).stream()
                .filter(step -> step.places().contains(place))
                .flatMap(step -> written(step, resolved, place).stream())
                .flatMap(step -> step.measure().stream())
                .anyMatch(figure -> figure.value().matches("height(,.*)?"));
        if (known
            && before.lastIndexOf("blocks/measure/" + place.word())
                < before.indexOf("blocks/settle")) {
          faults.add("the height at " + place + " is not measured again before its torque");
        }
      }
    }
  }

  private static Optional<Step> written(Sheet.SheetStep step, Resolved resolved, Place place) {
    return Optional.ofNullable(resolved.tasks().get(new TaskId(step.procedure(), place)))
        .flatMap(task -> WrittenSteps.of(step, Map.of(step.procedure(), task.procedure())));
  }

  /** A scissor lift has no arms; in service mode nobody works an electric parking brake. */
  private static List<String> parts(List<String> all, Sheet sheet, Resolved resolved) {
    boolean armless = !resolved.bay().hasArms();
    boolean service =
        sheet.steps().stream()
            .flatMap(step -> step.disturb().stream())
            .anyMatch(item -> resolved.thing(item).isOf("electric-parking-brake"));
    boolean braked = isBraked(sheet, resolved);
    return all.stream()
        .filter(part -> !braked || !part.equals("apply-brake"))
        .filter(part -> !armless || !part.startsWith("arm-locks"))
        .filter(
            part -> !service || !List.of("apply-brake", "let-roll", "hold-still").contains(part))
        .toList();
  }

  /** Whether the parking brake is applied before blocks, and no step has freed it since. */
  private static boolean isBraked(Sheet sheet, Resolved resolved) {
    boolean braked = false;
    for (Sheet.SheetStep step : sheet.steps()) {
      if (step.source() instanceof StepSource.Blocks) {
        return braked;
      }
      boolean brakes =
          step.source().id().endsWith("/ground/brake") || LeftStates.brakes(step, resolved);
      boolean frees =
          Stream.of(step.undo(), step.slacken(), step.disturb())
              .flatMap(List::stream)
              .map(resolved::thing)
              .anyMatch(it -> it.isOf("parking-brake") || it.isOf("electric-parking-brake"));
      braked = (braked || brakes) && !frees;
    }
    return braked;
  }

  /** What is done with blocks among some steps, by name and in order. */
  private static List<String> blocks(SheetIndex printed, IntPredicate where) {
    return indices(printed, step -> step.source() instanceof StepSource.Blocks).stream()
        .filter(where::test)
        .map(i -> printed.steps().get(i).source().id().substring("blocks/".length()))
        .filter(part -> !part.startsWith("measure/"))
        .toList();
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
