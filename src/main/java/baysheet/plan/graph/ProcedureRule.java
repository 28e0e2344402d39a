package baysheet.plan.graph;

import baysheet.books.Moment;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.Sheet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether each procedure makes sense by itself: what it takes off was on, goes back on once, and
 * comes off while somebody works at it. A slip here is the writer's, and is reported at the step.
 */
public final class ProcedureRule {
  private final Task task;

  /** What any task of the job takes off. */
  private final Set<ItemAt> offInJob;

  private final Problems problems;
  private final Map<ItemAt, Span> off = new LinkedHashMap<>();
  private final Set<ItemAt> everOff = new LinkedHashSet<>();

  /** Removing an item twice also refits it twice: one slip, one message. */
  private final Set<ItemAt> reported = new LinkedHashSet<>();

  private ProcedureRule(Task task, Set<ItemAt> offInJob, Problems problems) {
    this.task = task;
    this.offInJob = offInJob;
    this.problems = problems;
  }

  /** Adds what does not make sense in any of the tasks. */
  public static void check(Resolved resolved, Problems problems) {
    Set<ItemAt> offInJob = offInJob(resolved);
    for (Task task : resolved.ranked()) {
      new ProcedureRule(task, offInJob, problems).run(ClosingSteps.closing(resolved, task));
    }
  }

  private static Set<ItemAt> offInJob(Resolved resolved) {
    Set<ItemAt> off = new HashSet<>();
    for (Task task : resolved.tasks().values()) {
      Stream.of(task.open(), task.work(), task.close())
          .flatMap(List::stream)
          .forEach(step -> off.addAll(step.undo()));
    }
    return off;
  }

  private void run(List<PlannedStep> closing) {
    task.open().forEach(step -> play(PlannedStep.written(task, Sheet.Phase.OPEN, step)));
    task.work().forEach(step -> play(PlannedStep.written(task, Sheet.Phase.WORK, step)));
    closing.forEach(this::play);
    off.forEach((item, at) -> problems.add(GraphSentences.leftOff(item, at)));
  }

  private void play(PlannedStep step) {
    inTime(step);
    for (ItemAt item : step.undo()) {
      if (off.putIfAbsent(item, step.origin()) != null && reported.add(item)) {
        Problem problem = GraphSentences.offAlready(item, step.origin());
        Span first = off.get(item);
        problems.add(first.equals(step.origin()) ? problem : problem.seeAlso("removed", first));
      }
      everOff.add(item);
    }
    for (ItemAt item : step.doUp()) {
      boolean wasOff = off.remove(item) != null;
      if (everOff.contains(item) && !wasOff) {
        if (reported.add(item)) {
          problems.add(GraphSentences.onAlready(item, step.origin()));
        }
      } else if (!offInJob.contains(item)) {
        problems.add(GraphSentences.neverOff(item, step.origin()));
      }
    }
  }

  /**
   * The evening before nobody takes anything apart, before lifting nothing is put together yet, and
   * after lowering all of it is.
   */
  private void inTime(PlannedStep step) {
    Moment moment = step.moment().orElse(Moment.RAISED);
    boolean late = moment.compareTo(Moment.ON_THE_GROUND) >= 0;
    boolean takesOff = !step.undo().isEmpty() && (moment == Moment.EVENING_BEFORE || late);
    boolean putsOn = !step.doUp().isEmpty() && moment.compareTo(Moment.RAISED) < 0;
    if (takesOff || putsOn) {
      problems.add(GraphSentences.wrongMoment(takesOff, moment, step.origin()));
    }
  }
}
