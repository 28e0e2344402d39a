package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.plan.Lists;
import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.plan.TracedPlan;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import java.util.List;
import java.util.function.UnaryOperator;

/** The job of a small shop in two stages, parted behind a step, which hold. */
record SmallStages(Resolved resolved, Sheet whole, List<Sheet> stages) {
  static SmallStages behind(SmallShop shop, String text) {
    Resolved resolved = shop.resolved();
    TracedPlan plan = Planner.traced(resolved, new Problems()).orElseThrow();
    List<String> texts = plan.sheet().steps().stream().map(Printed::text).toList();
    int step = texts.indexOf(text) + 1;
    List<Sheet> stages =
        Division.of(
                plan.stages(),
                2,
                (sheet, room) ->
                    sheet.steps().get(0).n() > step
                        || sheet.steps().get(sheet.steps().size() - 1).n() <= step)
            .stages();
    assertEquals(2, stages.size(), texts.toString());
    assertEquals(step, stages.get(0).steps().size(), texts.toString());
    assertEquals(List.of(), StageVerifier.faults(plan.sheet(), stages, resolved));
    return new SmallStages(resolved, plan.sheet(), stages);
  }

  Sheet stage(int n) {
    return stages.get(n - 1);
  }

  List<String> faults(List<Sheet> altered) {
    return StageVerifier.faults(whole, altered, resolved);
  }

  /** The faults once a stage, counted from 1, is another. */
  List<String> faults(int n, UnaryOperator<Sheet> change) {
    return faults(Lists.replaced(stages, stage(n), change));
  }
}
