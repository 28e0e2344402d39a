package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether what is due before lifting comes before the end of the vehicle is raised that it is for,
 * and not before another end that is raised first: a parking brake that is released for work at the
 * rear no longer holds the vehicle while the front goes up. Shares no code with the planner.
 */
final class BeforeLiftingCheck {
  private final Sheet sheet;
  private final List<Sheet.SheetStep> steps;
  private final Resolved resolved;
  private final TriggerIndex bringing;
  private final AccessClosure accesses;
  private final List<Sheet.SheetStep> raising;
  private final List<String> faults = new ArrayList<>();

  private BeforeLiftingCheck(Sheet sheet, Resolved resolved, TriggerIndex bringing) {
    this.sheet = sheet;
    this.steps = sheet.steps();
    this.resolved = resolved;
    this.bringing = bringing;
    this.accesses = new AccessClosure(resolved);
    this.raising = steps.stream().filter(step -> carries(step.undo())).toList();
  }

  static List<String> faults(Sheet sheet, Resolved resolved, TriggerIndex bringing) {
    BeforeLiftingCheck before = new BeforeLiftingCheck(sheet, resolved, bringing);
    before.steps.stream().filter(before::isWrittenBeforeLifting).forEach(before::step);
    before.resolved.catalogue().rules().values().stream()
        .filter(rule -> rule.moment().value() == Moment.BEFORE_LIFTING)
        .forEach(before::rule);
    return before.faults;
  }

  private boolean isWrittenBeforeLifting(Sheet.SheetStep step) {
    return step.source() instanceof StepSource.Written written
        && written
            .at()
            .in(task(step).procedure())
            .flatMap(one -> one.moment().map(Located::value))
            .equals(Optional.of(Moment.BEFORE_LIFTING));
  }

  private void step(Sheet.SheetStep step) {
    Set<TaskId> ends = ends(step);
    boolean anyEnd = ends.isEmpty() || !step.entries().isEmpty();
    Optional<Sheet.SheetStep> first =
        raising.stream().filter(one -> anyEnd || ends.contains(task(one).id())).findFirst();
    for (Sheet.SheetStep one : raising.subList(0, first.map(raising::indexOf).orElse(0))) {
      if (at(step) < at(one) && !saysBothUp()) {
        faults.add(
            "step %s is for another end than step %s raises first".formatted(step.n(), one.n()));
      }
    }
    first
        .filter(one -> at(one) < at(step))
        .ifPresent(
            one ->
                faults.add(
                    "step %s is due before step %s raises the vehicle"
                        .formatted(step.n(), one.n())));
  }

  /** What raises the vehicle for the work of a step, and for all that lies behind it. */
  private Set<TaskId> ends(Sheet.SheetStep step) {
    Set<TaskId> ends = new LinkedHashSet<>();
    for (Task task : resolved.tasks().values()) {
      List<Task> around = accesses.of(task);
      if (concerns(step, task) || around.stream().anyMatch(access -> concerns(step, access))) {
        around.stream().filter(this::raises).map(Task::id).forEach(ends::add);
      }
    }
    return ends;
  }

  private boolean concerns(Sheet.SheetStep step, Task task) {
    boolean own =
        step.procedure().equals(task.id().procedure()) && step.places().contains(task.id().place());
    return own
        || task.open().stream().anyMatch(it -> !Collections.disjoint(it.undo(), step.undo()));
  }

  private boolean raises(Task task) {
    return task.open().stream().map(BoundStep::undo).anyMatch(this::carries);
  }

  /** The first step that raises anything says whether no end stays down. */
  private boolean saysBothUp() {
    return raising.get(0).details().contains(new Detail.BothEndsUp());
  }

  /** A check that raising brings is asked for before each raising of a vehicle that is down. */
  private void rule(Catalogue.Rule rule) {
    List<Sheet.SheetStep> brought = bringing.steps(rule.when());
    for (Sheet.SheetStep lifting : brought.stream().filter(raising::contains).toList()) {
      List<Sheet.SheetStep> since = sinceDown(lifting);
      boolean asked =
          since.stream()
              .filter(step -> step.moment() == Moment.BEFORE_LIFTING)
              .anyMatch(step -> step.source() instanceof StepSource.Checkpoint);
      boolean own =
          sheet.checks().stream()
              .filter(check -> check.name().equals(rule.name().value()))
              .map(CheckLine::because)
              .anyMatch(by -> by.contains(lifting.n()) && !isBroughtEarlier(by, since));
      if (!asked || !own) {
        faults.add(
            "nobody is asked for \"%s\" before step %s raises the vehicle"
                .formatted(rule.check().value(), lifting.n()));
      }
    }
  }

  /** The steps before one that raises, from the last on that brought the vehicle down. */
  private List<Sheet.SheetStep> sinceDown(Sheet.SheetStep lifting) {
    int from = at(lifting);
    while (from > 0 && (saysBothUp() || !carries(steps.get(from - 1).doUp()))) {
      from--;
    }
    return steps.subList(from, at(lifting));
  }

  /** Then the check stands before what was raised earlier, and only there. */
  private boolean isBroughtEarlier(List<Integer> by, List<Sheet.SheetStep> since) {
    return !since.isEmpty()
        && steps.subList(0, at(since.get(0))).stream().anyMatch(step -> by.contains(step.n()));
  }

  private int at(Sheet.SheetStep step) {
    return steps.indexOf(step);
  }

  private boolean carries(List<ItemAt> items) {
    return items.stream().anyMatch(item -> resolved.thing(item).isOf("support"));
  }

  private Task task(Sheet.SheetStep step) {
    return resolved.tasks().get(new TaskId(step.procedure(), step.places().get(0)));
  }
}
