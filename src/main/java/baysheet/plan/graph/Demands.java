package baysheet.plan.graph;

import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.torque.ThreePoint;
import java.util.List;
import java.util.Optional;

/**
 * What a step needs and brings with it.
 *
 * @param minutes absent where nobody gave any
 */
public record Demands(
    List<Procedure.Use> uses,
    List<String> hazards,
    Optional<ThreePoint> minutes,
    boolean impact,
    Step.Seizes seizes) {
  public Demands {
    uses = List.copyOf(uses);
    hazards = List.copyOf(hazards);
  }

  static Demands written(Step.Demands step) {
    return new Demands(
        PlannedStep.values(step.uses()),
        PlannedStep.values(step.hazards()),
        step.takes().map(Located::value),
        step.impact(),
        step.seizes());
  }

  /** Nothing but tools and time. */
  static Demands of(List<Procedure.Use> uses, Optional<ThreePoint> minutes) {
    return new Demands(uses, List.of(), minutes, false, Step.Seizes.NEVER);
  }
}
