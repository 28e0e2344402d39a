package baysheet.plan.graph;

import baysheet.books.Catalogue;
import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Where the parking brake acts, and what a step does to it. */
final class ParkingBrake {
  private static final List<String> KINDS = List.of("parking-brake", "electric-parking-brake");

  private ParkingBrake() {}

  /** The axle whose wheels it holds. */
  static Place axle(Resolved resolved) {
    boolean front = resolved.book().traits().contains("front-parking-brake");
    return front ? Place.FRONT : Place.REAR;
  }

  /** Whether it can be applied before the vehicle goes up and stay so: no wheel of it must turn. */
  static boolean staysApplied(Resolved resolved, List<PlacedStep> lines) {
    return lines.stream().noneMatch(line -> isFreed(resolved, line) || isWheelOff(resolved, line));
  }

  private static boolean isWheelOff(Resolved resolved, PlacedStep line) {
    return resolved.ofKind("wheel", line.undo()).stream()
        .anyMatch(wheel -> wheel.place().axle().filter(axle(resolved)::equals).isPresent());
  }

  /** Whether it is released with a step, taken apart or set to its service mode. */
  static boolean isFreed(Resolved resolved, PlacedStep line) {
    return line.all().stream().anyMatch(step -> isFreed(resolved, step));
  }

  private static boolean isFreed(Resolved resolved, PlannedStep step) {
    return Stream.of(step.undo(), step.slacken(), step.disturb())
        .flatMap(List::stream)
        .anyMatch(item -> isPart(resolved, item));
  }

  /** Whether it is applied with a step. */
  static boolean isApplied(Resolved resolved, PlacedStep line) {
    StepSource source = line.step().source();
    boolean written =
        source instanceof StepSource.Written
            && line.ends().stream().anyMatch(item -> isPart(resolved, item));
    return written
        || (source instanceof StepSource.Check check && isApplied(resolved, check))
        || (source instanceof StepSource.HeightChange change
            && change.part() == StepSource.HeightPart.BRAKE)
        || (source instanceof StepSource.Blocks blocks
            && blocks.part() == StepSource.BlocksPart.APPLY_BRAKE);
  }

  private static boolean isApplied(Resolved resolved, StepSource.Check check) {
    Catalogue catalogue = resolved.catalogue();
    return catalogue.rules().get(check.rule()).step().stream()
        .flatMap(step -> step.ends().stream())
        .flatMap(name -> catalogue.items().get(name.value()).kinds().stream())
        .anyMatch(kind -> KINDS.contains(kind.value()));
  }

  /**
   * Whoever pulls at a nut of a wheel on the floor does so with the chocks set that the job sets
   * anyway, and before it frees the parking brake: which of these steps comes before which.
   *
   * @param early steps due before lifting, by their numbers
   */
  static List<StepGraph.Edge> heldWhilePulling(
      Resolved resolved, List<PlannedStep> steps, List<Integer> early) {
    List<StepGraph.Edge> edges = new ArrayList<>();
    for (int pulling : early) {
      PlannedStep step = steps.get(pulling);
      if (step.slacken().isEmpty() || step.place().axle().isEmpty()) {
        continue;
      }
      for (int other : early) {
        PlannedStep held = steps.get(other);
        if (held.disturb().stream().anyMatch(it -> resolved.thing(it).isOf(ChockSteps.CHOCKS))) {
          edges.add(new StepGraph.Edge(other, pulling));
        } else if (isFreed(resolved, held)) {
          edges.add(new StepGraph.Edge(pulling, other));
        }
      }
    }
    return edges;
  }

  private static boolean isPart(Resolved resolved, ItemAt item) {
    return KINDS.stream().anyMatch(resolved.thing(item)::isOf);
  }
}
