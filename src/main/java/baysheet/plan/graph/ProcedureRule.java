package baysheet.plan.graph;

import baysheet.books.Moment;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
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
    off.forEach(
        (item, at) ->
            problems.add(
                Problem.of(ProblemCode.LEFT_OFF, at, named(item) + " is removed and never refitted")
                    .expecting(
                        "a step with do-up after the one with undo, or no step with do-up")));
  }

  private void play(PlannedStep step) {
    inTime(step);
    for (ItemAt item : step.undo()) {
      if (off.putIfAbsent(item, step.origin()) != null && reported.add(item)) {
        String what = named(item) + " is removed, but it is already off";
        problems.add(twice(step, what, off.get(item)));
      }
      everOff.add(item);
    }
    for (ItemAt item : step.doUp()) {
      boolean wasOff = off.remove(item) != null;
      if (everOff.contains(item) && !wasOff) {
        if (reported.add(item)) {
          String what = named(item) + " is refitted, but it is already on";
          problems.add(twice(step, what, step.origin()));
        }
      } else if (!offInJob.contains(item)) {
        problems.add(
            Problem.of(
                    ProblemCode.NEVER_OFF,
                    step.origin(),
                    named(item) + " is refitted, but no step of this job removes it")
                .expecting("a step with undo before it, or no do-up of it"));
      }
    }
  }

  private Problem twice(PlannedStep step, String what, Span first) {
    Problem problem =
        Problem.of(ProblemCode.DONE_TWICE, step.origin(), what)
            .expecting("each item removed once and refitted once in a procedure");
    return first.equals(step.origin()) ? problem : problem.seeAlso("removed", first);
  }

  private static String named(ItemAt item) {
    return item.item() + " at " + item.place();
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
      problems.add(
          Problem.of(
                  ProblemCode.WRONG_MOMENT,
                  step.origin(),
                  "nothing can be %s at the moment %s"
                      .formatted(takesOff ? "removed" : "refitted", moment.word()))
              .expecting("no key moment, or the moment at which the work is done"));
    }
  }
}
