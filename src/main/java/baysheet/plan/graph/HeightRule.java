package baysheet.plan.graph;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.report.Problem;
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
        .map(at -> GraphSentences.insideRaised(at.value(), at.at()));
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
    boolean raised = graph.heights().bay().size() > 1;
    // On a jack no wheels are just clear, whatever raises the vehicle.
    boolean jack =
        resolved.bay().equipment() == Bay.Equipment.JACK
            && (raised || step.heights().equals(Set.of(Height.WHEELS_CLEAR)));
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
      why = GraphSentences.ORDERS_NOT_COMPARED;
    } else if (at.isEmpty() || !raised) {
      why = jack ? GraphSentences.NO_SUCH_HEIGHT : GraphSentences.NOT_RAISED;
    } else {
      why =
          barring
              .map(item -> GraphSentences.barred(item, jacked.contains(item)))
              .orElse(GraphSentences.OTHERS_ELSEWHERE);
    }
    return GraphSentences.outOfReach(step, at.isEmpty() ? step.heights() : at, why)
        .expecting(
            !schedule.isProven()
                ? GraphSentences.LESS_WORK
                : jack ? GraphSentences.LIFT_OR_HEIGHTS : GraphSentences.HEIGHTS_OR_ORDER)
        .seeAlso("bay", resolved.bay().name().at());
  }
}
