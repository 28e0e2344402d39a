package baysheet.plan;

import baysheet.report.Nearest;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Span;
import java.util.List;

/** What problems say of a job as a whole. */
final class PlanSentences {
  private static final String LESS_WORK = "several job files with less work each";

  private PlanSentences() {}

  static Problem tooManySteps(int steps, int most, Span at) {
    return Problem.of(
            ProblemCode.TOO_MANY_STEPS,
            at,
            "the works of this job and what gives access to them have %s steps, and a job has at most %s"
                .formatted(steps, most))
        .expecting(LESS_WORK);
  }

  static Problem bothEndsUp(List<String> raising, int works, Span at) {
    return Problem.of(
            ProblemCode.BOTH_ENDS_UP,
            at,
            "the works of this job need "
                + String.join(" and ", raising)
                + " at the same time, and no wheel can be chocked")
        .expecting(
            "a bay with a lift"
                + (works > 1 ? ", or a job file of its own for the work at each end" : ""));
  }

  static Problem orderNotProven(Span at) {
    return Problem.of(
            ProblemCode.ORDER_NOT_PROVEN,
            at,
            "this job has too many possible orders to compare them all: its sequence is correct,"
                + " but another one may change places less often")
        .expecting(LESS_WORK + ", if the technician walks too much");
  }

  static Problem waiveUnused(String caution, List<String> brought, Span at) {
    return Problem.of(
            ProblemCode.WAIVE_UNUSED, at, "this job does not bring the caution \"" + caution + "\"")
        .expecting("one of " + String.join(", ", brought))
        .near(Nearest.of(caution, brought));
  }
}
