package baysheet.plan;

import baysheet.plan.content.WrenchSelection;
import baysheet.plan.stage.StageSheets;
import baysheet.sheet.Evening;
import baysheet.sheet.Sheet;
import baysheet.sheet.ToolSpell;
import baysheet.sheet.TorqueLine;
import java.util.List;

/**
 * A sheet with the reasons for its wrenches and sockets, and with what a whole day is planned from.
 *
 * @param selections what was selected for each torque line, in the order of the lines
 * @param stages divides it among several sheets
 * @param evening what has to be done the evening before, by what it asks for
 * @param tools when special tools are in use
 */
public record TracedPlan(
    Sheet sheet,
    List<WrenchSelection> selections,
    StageSheets stages,
    Evening evening,
    List<ToolSpell> tools) {
  public TracedPlan {
    tools = List.copyOf(tools);
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
