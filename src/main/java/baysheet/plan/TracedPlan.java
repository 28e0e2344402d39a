package baysheet.plan;

import baysheet.plan.content.WrenchSelection;
import baysheet.plan.stage.StageSheets;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.List;

/**
 * A sheet with the reasons for its wrenches and sockets.
 *
 * @param selections what was selected for each torque line, in the order of the lines
 * @param stages divides it among several sheets
 */
public record TracedPlan(Sheet sheet, List<WrenchSelection> selections, StageSheets stages) {
  public TracedPlan {
    selections = List.copyOf(selections);
    if (selections.size() != sheet.torque().size()) {
      throw new IllegalArgumentException(
          selections.size() + " selections for " + sheet.torque().size() + " lines");
    }
  }

  /** What was selected for a torque line of the sheet. */
  public WrenchSelection selection(TorqueLine line) {
    return selections.get(line.n() - 1);
  }
}
