package baysheet.plan;

import baysheet.books.Moment;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether each procedure makes sense by itself: what it takes off was on, goes back on once, and
 * comes off while somebody works at it. A slip here is the writer's, and is told at the step.
 */
final class TaskRule {
  private final Task task;

  /** What any task of the job takes off. */
  private final Set<ItemAt> offInJob;

  private final Problems problems;
  private final Map<ItemAt, Span> off = new LinkedHashMap<>();
  private final Set<ItemAt> everOff = new LinkedHashSet<>();

  private TaskRule(Task task, Set<ItemAt> offInJob, Problems problems) {
    this.task = task;
    this.offInJob = offInJob;
    this.problems = problems;
  }

  /** Adds what does not make sense in any of the tasks. */
  static void check(Resolved resolved, Problems problems) {
    Set<ItemAt> offInJob = offInJob(resolved);
    for (Task task : resolved.ranked()) {
      new TaskRule(task, offInJob, problems).run(Mirror.closing(resolved, task));
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

  private void run(List<Draft> closing) {
    Stream.of(task.open(), task.work())
        .flatMap(List::stream)
        .map(step -> Draft.written(task.id(), Sheet.Phase.WORK, step))
        .forEach(this::play);
    closing.forEach(this::play);
    off.forEach(
        (item, at) ->
            problems.add(
                Problem.of(ProblemCode.LEFT_OFF, at, item + " comes off and does not go on again")
                    .expecting("a step that does it up after it came off, or none at all")));
  }

  private void play(Draft step) {
    inTime(step);
    for (ItemAt item : step.undo()) {
      if (off.putIfAbsent(item, step.origin()) != null) {
        problems.add(twice(step, item + " is taken off, and it is off already", off.get(item)));
      }
      everOff.add(item);
    }
    for (ItemAt item : step.doUp()) {
      boolean wasOff = off.remove(item) != null;
      if (everOff.contains(item) && !wasOff) {
        problems.add(twice(step, item + " is put on, and it is on already", step.origin()));
      } else if (!offInJob.contains(item)) {
        problems.add(
            Problem.of(
                    ProblemCode.NEVER_OFF,
                    step.origin(),
                    item + " is put on, and no step of this job takes it off")
                .expecting("a step that undoes it first, or no do-up of it"));
      }
    }
  }

  private Problem twice(Draft step, String what, Span first) {
    Problem problem =
        Problem.of(ProblemCode.DONE_TWICE, step.origin(), what)
            .expecting("each item taken off once and put on once in a procedure");
    return first.equals(step.origin()) ? problem : problem.seeAlso("taken off", first);
  }

  /**
   * The evening before nobody takes anything apart, before lifting nothing is put together yet, and
   * after lowering all of it is.
   */
  private void inTime(Draft step) {
    Moment moment = step.moment().orElse(Moment.RAISED);
    boolean late = moment.compareTo(Moment.ON_THE_GROUND) >= 0;
    boolean takesOff = !step.undo().isEmpty() && (moment == Moment.EVENING_BEFORE || late);
    boolean putsOn = !step.doUp().isEmpty() && moment.compareTo(Moment.RAISED) < 0;
    if (takesOff || putsOn) {
      problems.add(
          Problem.of(
                  ProblemCode.WRONG_MOMENT,
                  step.origin(),
                  "nothing is %s at the moment %s"
                      .formatted(takesOff ? "taken off" : "put on", moment.word()))
              .expecting("no moment, or one at which the work is done"));
    }
  }
}
