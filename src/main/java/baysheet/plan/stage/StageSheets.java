package baysheet.plan.stage;

import baysheet.books.Moment;
import baysheet.plan.content.MissingFigures;
import baysheet.plan.content.SocketNeeds;
import baysheet.plan.content.TorqueTable.Selected;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.stage.Progress.Snapshot;
import baysheet.plan.stage.RestingPoints.Point;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.CheckLine;
import baysheet.sheet.DueChecks;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;

/**
 * The sheets of a job's stages, each of some steps that follow one another. Steps are counted here
 * as boundaries: a stage from 0 to 12 has the steps 1 to 12. The checks that are due when every
 * step is done count as one more line behind the steps, so that they can be a stage of their own.
 */
public final class StageSheets {
  final Resolved resolved;
  final List<PlacedStep> lines;

  /** Fluids that some step of the job fills in. */
  final Set<String> filled = new HashSet<>();

  final Sheet whole;
  final List<Selected> torque;
  final SocketNeeds sockets;
  final List<CheckLine> evening;
  private Optional<List<Snapshot>> progress = Optional.empty();

  /** The last step that tightens each fastener. */
  final Map<ItemAt, Integer> tightened = new HashMap<>();

  /** Where each check of the sheet is due that is no step itself. */
  final Map<Integer, Integer> dueAt = new HashMap<>();

  /** Where the parts of each task go on: at the first step that closes it up again. */
  final Map<TaskId, Integer> fitted = new LinkedHashMap<>();

  /**
   * @param whole the sheet of the whole job
   * @param checks all its checks, those of the evening before among them
   */
  public StageSheets(
      Resolved resolved,
      List<PlacedStep> lines,
      Sheet whole,
      List<Selected> torque,
      SocketNeeds sockets,
      List<CheckLine> checks) {
    this.resolved = resolved;
    this.lines = List.copyOf(lines);
    this.whole = whole;
    this.torque = List.copyOf(torque);
    this.sockets = sockets;
    this.evening =
        checks.stream().filter(check -> check.moment() == Moment.EVENING_BEFORE).toList();
    for (int i = 0; i < lines.size(); i++) {
      for (ItemAt item : lines.get(i).doUp()) {
        tightened.put(item, i);
      }
      for (ItemAt item : lines.get(i).tighten()) {
        tightened.put(item, i);
      }
    }
    dueChecks();
    fittedParts();
  }

  /**
   * What no step leads to is due at the end: before the vehicle moves, on the road, later. A check
   * of the raised vehicle without a step is due with the last one.
   */
  private void dueChecks() {
    DueChecks due = new DueChecks(whole.checks(), whole.steps());
    for (SheetStep step : whole.steps()) {
      due.at(step).forEach(check -> dueAt.put(check, step.n() - 1));
    }
    for (int check : due.later()) {
      Moment moment = whole.checks().get(check).moment();
      boolean last = moment.compareTo(Moment.ON_THE_GROUND) > 0;
      dueAt.put(
          check, moment == Moment.BEFORE_LIFTING ? 0 : last ? lines.size() : lines.size() - 1);
    }
  }

  /** The boundary behind everything. */
  int end() {
    return lines.size() + 1;
  }

  private void fittedParts() {
    for (int i = 0; i < lines.size(); i++) {
      for (PlannedStep step : lines.get(i).all()) {
        filled.addAll(MissingFigures.filled(resolved, step));
        if (step.phase() == Sheet.Phase.CLOSE) {
          fitted.putIfAbsent(step.task(), i);
        }
      }
    }
    for (int i = lines.size() - 1; i >= 0; i--) {
      int line = i;
      lines.get(i).all().forEach(step -> fitted.putIfAbsent(step.task(), line));
    }
    resolved.tasks().keySet().forEach(task -> fitted.putIfAbsent(task, 0));
  }

  /** The sheet of the whole job. */
  public Sheet whole() {
    return whole;
  }

  /** The vehicle at each boundary; worked out for jobs that are divided. */
  List<Snapshot> progress() {
    if (progress.isEmpty()) {
      progress = Optional.of(Progress.of(resolved, lines));
    }
    return progress.get();
  }

  /** Where the work may rest. */
  List<Point> restingPoints() {
    return RestingPoints.of(resolved, lines, progress(), whole);
  }

  /**
   * The sheet of one stage.
   *
   * @param sheetOf the number of the sheet on which a step is, counted from 0
   */
  Sheet sheet(int from, int to, int n, int of, IntUnaryOperator sheetOf) {
    return new OneStage(this, from, to).sheet(n, of, sheetOf);
  }
}
