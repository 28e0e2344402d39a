package baysheet.plan.content;

import baysheet.books.Catalogue;
import baysheet.books.Step;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.sheet.TimeNeeded;
import baysheet.torque.ThreePoint;
import java.util.List;

/**
 * The time a job needs. Steps follow one another, so means add up and variances add up (PERT:
 * Malcolm, Roseboom, Clark and Fazar, Operations Research 7, 1959); the range is the mean and two
 * standard deviations on either side.
 */
public final class TimeEstimate {
  private final Resolved resolved;

  public TimeEstimate(Resolved resolved) {
    this.resolved = resolved;
  }

  public TimeNeeded of(List<PlacedStep> lines, double saved) {
    double printed = 0;
    double pert = 0;
    double variance = 0;
    double shortest = 0;
    int untimed = 0;
    for (PlacedStep line : lines) {
      for (PlannedStep step : line.all()) {
        ThreePoint minutes = minutes(step);
        pert += minutes.mean();
        variance += minutes.variance();
        shortest += minutes.low();
      }
      printed += TimeNeeded.printed(minutes(line).mean());
      untimed += line.step().minutes().isPresent() ? 0 : 1;
    }
    double spread = 2 * Math.sqrt(variance);
    int likely = (int) Math.round(printed);
    return new TimeNeeded(
        Math.min(likely, (int) Math.floor(Math.max(shortest, pert - spread))),
        likely,
        Math.max(likely, (int) Math.ceil(pert + spread)),
        (int) Math.round(saved),
        untimed);
  }

  /**
   * A step's minutes; longer by the state's factor where its part seizes. None counts as nothing.
   */
  ThreePoint minutes(PlannedStep step) {
    return step.minutes()
        .map(minutes -> minutes.times(factor(step.seizes())))
        .orElse(ThreePoint.certain(0));
  }

  /** The minutes of a line, both sides together. */
  ThreePoint minutes(PlacedStep line) {
    ThreePoint one = minutes(line.step());
    return line.twin().isPresent() ? one.times(2) : one;
  }

  private double factor(Step.Seizes seizes) {
    double factor = 1;
    for (Located<String> name : resolved.job().condition().state()) {
      Catalogue.State state = resolved.catalogue().states().get(name.value());
      factor *=
          switch (seizes) {
            case LIKELY -> state.likelyFactor().doubleValue();
            case POSSIBLE -> state.possibleFactor().doubleValue();
            case NEVER -> 1;
          };
    }
    return factor;
  }
}
