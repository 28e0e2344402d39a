package baysheet.plan.graph;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Steps for which the vehicle cannot be brought to the height that they ask for. */
public final class HeightRule {
  private HeightRule() {}

  /** Adds steps that would have somebody inside a vehicle that is raised. */
  public static void check(Resolved resolved, Problems problems) {
    for (Task task : resolved.ranked()) {
      Stream.of(task.open(), task.work(), task.close())
          .flatMap(List::stream)
          .filter(step -> HeightNeeds.isInside(resolved, step))
          .forEach(step -> raisedWithSomebodyIn(step).ifPresent(problems::add));
    }
  }

  private static Optional<Problem> raisedWithSomebodyIn(BoundStep step) {
    return step.step().heights().stream()
        .filter(at -> at.value() == Height.WORKING || at.value() == Height.STANDS)
        .findFirst()
        .map(
            at ->
                Problem.of(
                        ProblemCode.INSIDE_RAISED,
                        at.at(),
                        "this step is done inside the vehicle, and nobody is inside while it is "
                            + words(at.value()))
                    .expecting(
                        "ground, or wheels-clear for what is reached from outside the vehicle"));
  }

  /** What a step is in the way of, where no order of the steps brings the vehicle to its height. */
  public static Optional<Problem> outOfReach(Resolved resolved) {
    StepGraph graph = StepGraph.of(resolved, false);
    return outOfReach(resolved, graph, HeightSchedule.budget(graph));
  }

  /** The same with a budget of states. */
  static Optional<Problem> outOfReach(Resolved resolved, StepGraph graph, int budget) {
    if (!CycleFinder.in(graph).isEmpty()) {
      return Optional.empty();
    }
    HeightSchedule schedule = HeightSchedule.of(graph, budget);
    return schedule.blocked().map(node -> outOfReach(resolved, graph, node, schedule));
  }

  private static Problem outOfReach(
      Resolved resolved, StepGraph graph, int node, HeightSchedule schedule) {
    PlannedStep step = graph.drafts().get(node);
    Set<Height> at = graph.heights().steps().get(node).at();
    boolean jack = resolved.bay().equipment() == Bay.Equipment.JACK;
    Set<ItemAt> jacked = graph.heights().jacked();
    // A jack bars every height, a wheel only the ground.
    Optional<ItemAt> barring =
        schedule.barring().stream()
            .min(
                Comparator.comparing((ItemAt item) -> !jacked.contains(item))
                    .thenComparing(ItemAt::item)
                    .thenComparing(ItemAt::place));
    String why;
    if (!schedule.isProven()) {
      why = "no order was found that allows it; not all orders were compared";
    } else if (at.isEmpty() || graph.heights().bay().size() == 1) {
      why = jack ? "a jack has no such height" : "nothing in this job raises the vehicle";
    } else if (barring.isEmpty()) {
      why = "the steps before and after it need another height";
    } else {
      ItemAt item = barring.get();
      why =
          "the vehicle cannot be moved while %s at %s is %s"
              .formatted(item.item(), item.place(), jacked.contains(item) ? "in place" : "off");
    }
    String heights = String.join(" or ", words(step, at));
    return Problem.of(
            ProblemCode.HEIGHT_OUT_OF_REACH,
            step.origin(),
            "\"%s\" is done with the vehicle %s, and %s"
                .formatted(PlanPhrases.words(step), heights, why))
        .expecting(
            !schedule.isProven()
                ? "several job files with less work each"
                : jack
                    ? "a bay with a lift, or other heights for this step"
                    : "other heights for this step, or another order of the steps")
        .seeAlso("bay", resolved.bay().name().at());
  }

  private static List<String> words(PlannedStep step, Set<Height> at) {
    return (at.isEmpty() ? step.heights() : at).stream().sorted().map(HeightRule::words).toList();
  }

  private static String words(Height height) {
    return switch (height) {
      case GROUND -> "on the ground";
      case WHEELS_CLEAR -> "with its wheels just clear of the floor";
      case WORKING -> "at working height";
      case STANDS -> "on stands";
    };
  }
}
