package baysheet.verify;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CheckLine;
import baysheet.sheet.DueChecks;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands directly ahead of lowering and behind it: a check of something comes once all is on
 * at its place, and what a procedure has done once the vehicle is down is done before other work.
 * Shares no code with the planner.
 */
final class LoweringCheck {
  private final Resolved resolved;
  private final Set<ItemAt> up = new HashSet<>();
  private final List<Sheet.SheetStep> sinceDown = new ArrayList<>();
  private final Set<String> lowering = new HashSet<>();
  private final List<String> faults = new ArrayList<>();

  private LoweringCheck(Resolved resolved) {
    this.resolved = resolved;
  }

  static List<String> faults(Sheet sheet, Resolved resolved) {
    LoweringCheck check = new LoweringCheck(resolved);
    DueChecks due = new DueChecks(sheet.checks(), sheet.steps());
    for (Sheet.SheetStep step : sheet.steps()) {
      check.play(step);
      due.at(step).forEach(line -> check.allOn(step, sheet, sheet.checks().get(line)));
    }
    return check.faults;
  }

  /** Nothing goes on at the places of a check between its gate and the ground. */
  private void allOn(Sheet.SheetStep gate, Sheet sheet, CheckLine line) {
    if (gate.moment() != Moment.RAISED) {
      return;
    }
    for (Sheet.SheetStep next : sheet.steps().subList(gate.n(), sheet.steps().size())) {
      if (next.height() == Height.GROUND) {
        return;
      }
      next.doUp().stream()
          .filter(item -> line.places().contains(item.place()))
          .filter(item -> supports(List.of(item)).isEmpty())
          .forEach(
              item ->
                  faults.add(
                      "check %s is made at step %s, and %s goes on only at step %s"
                          .formatted(line.name(), gate.n(), item, next.n())));
    }
  }

  private void play(Sheet.SheetStep step) {
    up.addAll(supports(step.undo()));
    if (up.removeAll(supports(step.doUp()))) {
      lowering.add(step.procedure());
      sinceDown.clear();
    } else if (up.isEmpty() && !lowering.isEmpty()) {
      onTheGround(step);
    } else {
      lowering.clear();
    }
  }

  private void onTheGround(Sheet.SheetStep step) {
    if (step.source() instanceof StepSource.Chocks) {
      return;
    } else if (lowering.contains(step.procedure()) && isWrittenForTheGround(step)) {
      sinceDown.forEach(
          before ->
              faults.add(
                  "step %s is done on the ground before step %s, which belongs to lowering"
                      .formatted(before.n(), step.n())));
    } else {
      sinceDown.add(step);
    }
  }

  private boolean isWrittenForTheGround(Sheet.SheetStep step) {
    Task task = resolved.tasks().get(new TaskId(step.procedure(), step.places().get(0)));
    return task != null
        && WrittenSteps.of(step, Map.of(step.procedure(), task.procedure()))
            .flatMap(written -> written.moment())
            .filter(moment -> moment.value() == Moment.ON_THE_GROUND)
            .isPresent();
  }

  private List<ItemAt> supports(List<ItemAt> items) {
    return resolved.ofKind("support", items);
  }
}
