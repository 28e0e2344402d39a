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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Whether the vehicle goes up on blocks before anything is tightened at ride height, and comes off
 * them behind the last: nobody reaches the fasteners of a vehicle that stands on the floor, and
 * nobody drives off blocks.
 */
final class RideHeightCheck {
  private static final List<String> LIFTED_ON =
      List.of(
          "set-lift-pads",
          "raise-clear",
          "push",
          "take-chocks",
          "raise",
          "put-under",
          "lower-onto",
          "chock",
          "let-roll",
          "settle",
          "hold-still");
  private static final List<String> LIFTED_OFF =
      List.of("set-lift-pads-to-leave", "raise-off", "push-off", "take-out", "lower-to-floor");

  /** What comes first with a jack, by the axle that it raised last for the work. */
  private static final Map<Place, List<String>> CHOCKS =
      Map.of(
          Place.FRONT,
          List.of("check-chocks-of-axle/rear"),
          Place.REAR,
          List.of("chock-axle-on-floor/rear", "take-chocks-of-axle/front"),
          Place.VEHICLE,
          List.of("chock-axle-on-floor/rear"));

  private static final List<String> JACKED_ON =
      List.of(
          "raise-axle/front",
          "put-under-axle/front",
          "lower-axle-onto/front",
          "chock-axle/front",
          "take-chocks-of-axle/rear",
          "raise-axle/rear",
          "put-under-axle/rear",
          "lower-axle-onto/rear",
          "chock-axle/rear",
          "leave-room",
          "let-roll",
          "settle",
          "hold-still",
          "close-up");
  private static final List<String> JACKED_OFF =
      List.of(
          "raise-axle-off/front",
          "take-out-axle/front",
          "lower-axle-to-floor/front",
          "chock-axle-on-floor/front",
          "raise-axle-off/rear",
          "take-out-axle/rear",
          "lower-axle-to-floor/rear",
          "chock-axle-on-floor/rear");

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
        blocks(printed, i -> i < first).equals(lift ? LIFTED_ON : jackedOn(sheet, resolved))
            && blocks(printed, i -> i > last).equals(lift ? LIFTED_OFF : JACKED_OFF)
            && blocks(printed, i -> i > first && i < last).isEmpty();
    List<String> faults = new ArrayList<>();
    if (!around) {
      faults.add("blocks do not go under, and out, around ride height");
    }
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

  /** A chock must not stand where a block goes, and wheels that stay down must have theirs. */
  private static List<String> jackedOn(Sheet sheet, Resolved resolved) {
    Set<ItemAt> up = new LinkedHashSet<>();
    Place last = Place.VEHICLE;
    for (Sheet.SheetStep step : sheet.steps()) {
      for (ItemAt item : step.undo()) {
        if (resolved.thing(item).isOf("support")) {
          up.add(item);
          Set<Place> ends = up.stream().map(RideHeightCheck::end).collect(Collectors.toSet());
          last = ends.size() == 1 ? end(item) : Place.VEHICLE;
        }
      }
      up.removeAll(step.doUp());
    }
    List<String> all = new ArrayList<>(CHOCKS.getOrDefault(last, CHOCKS.get(Place.VEHICLE)));
    all.addAll(JACKED_ON);
    return all;
  }

  /** Several supports may carry one axle. */
  private static Place end(ItemAt support) {
    return support.place().axle().orElse(Place.VEHICLE);
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
