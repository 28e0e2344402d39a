package baysheet.verify;

import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The steps of procedures from which the steps of a finished sheet come. */
final class WrittenSteps {
  private WrittenSteps() {}

  /** The step as its procedure has it; none where the planner made it, or where two read alike. */
  static List<Step> of(Sheet.SheetStep step, Map<String, Procedure> procedures) {
    Procedure procedure = procedures.get(step.procedure());
    List<Step> written = new ArrayList<>();
    for (Step one : procedure == null ? List.<Step>of() : phase(procedure, step.phase())) {
      if (one.text().value().equals(step.text())) {
        written.add(one);
      }
    }
    return written.size() == 1 ? written : List.of();
  }

  private static List<Step> phase(Procedure procedure, Sheet.Phase phase) {
    return switch (phase) {
      case OPEN -> procedure.open();
      case WORK -> procedure.work();
      case CLOSE -> procedure.close();
      case CHECK, FINAL -> List.of();
    };
  }
}
