package baysheet.verify;

import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.Map;
import java.util.Optional;

/** The steps of procedures from which the steps of a finished sheet come. */
final class WrittenSteps {
  private WrittenSteps() {}

  /** The step as its procedure has it; none where the planner made it. */
  static Optional<Step> of(Sheet.SheetStep step, Map<String, Procedure> procedures) {
    return step.source() instanceof StepSource.Written from
        ? Optional.ofNullable(procedures.get(step.procedure())).flatMap(from.at()::in)
        : Optional.empty();
  }
}
