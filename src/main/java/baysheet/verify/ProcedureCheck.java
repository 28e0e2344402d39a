package baysheet.verify;

import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether everything that the procedures of a job write is on its sheet: their steps in their
 * order, what they disturb set right again, their stops, their parts. Shares no code with the
 * planner.
 */
final class ProcedureCheck {
  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final List<String> faults = new ArrayList<>();

  private ProcedureCheck(Sheet sheet, SheetIndex printed, Resolved resolved) {
    this.sheet = sheet;
    this.printed = printed;
    this.resolved = resolved;
  }

  static List<String> faults(Sheet sheet, SheetIndex printed, Resolved resolved) {
    ProcedureCheck complete = new ProcedureCheck(sheet, printed, resolved);
    for (Task task : resolved.tasks().values()) {
      complete.chain(task, Sheet.Phase.OPEN, task.open());
      complete.chain(task, Sheet.Phase.WORK, task.work());
      complete.chain(task, Sheet.Phase.CLOSE, task.close());
      task.open().forEach(step -> complete.setRight(task, Sheet.Phase.OPEN, step));
      task.work().forEach(step -> complete.setRight(task, Sheet.Phase.WORK, step));
    }
    printed.steps().forEach(complete::written);
    printed.steps().forEach(complete::slackened);
    resolved.tasks().values().forEach(complete::takesOff);
    resolved.tasks().values().forEach(complete::takesAway);
    complete.parts();
    complete.freshFasteners();
    return complete.faults;
  }

  /** The steps of one phase of a task, in the order in which they are written. */
  private void chain(Task task, Sheet.Phase phase, List<BoundStep> steps) {
    int last = 0;
    for (BoundStep step : steps) {
      Optional<Sheet.SheetStep> found = find(task, phase, step, last);
      if (found.isEmpty()) {
        missing(task, step);
        continue;
      }
      int n = found.get().n();
      if (step.step().moment().isEmpty()) {
        if (n < last) {
          faults.add("step " + n + " comes before step " + last + ", which is written first");
        }
        last = n;
      }
      if (step.step().hold() && !found.get().hold()) {
        faults.add("step " + n + " is no hold point, and its procedure wants one");
      }
    }
  }

  /** What the sheet has of a step, behind step {@code last} if there are several. */
  private Optional<Sheet.SheetStep> find(Task task, Sheet.Phase phase, BoundStep bound, int last) {
    List<Sheet.SheetStep> found = printed.written(at(task, phase, bound), task.id());
    return found.stream()
        .filter(step -> step.n() > last)
        .findFirst()
        .or(() -> found.stream().findFirst());
  }

  /** A step that names a place in a procedure is written there, in these words. */
  private void written(Sheet.SheetStep step) {
    StepSource source = step.source();
    boolean holds = true;
    if (source instanceof StepSource.Written it) {
      Optional<Step> there = in(step, it.at());
      holds = there.filter(written -> written.text().value().equals(it.text())).isPresent();
    } else if (source instanceof StepSource.Back it) {
      Optional<String> there =
          in(step, it.of()).flatMap(written -> written.back().map(Located::value));
      holds = there.filter(it.text()::equals).isPresent();
    } else if (source instanceof StepSource.PutBack it) {
      holds = in(step, it.of()).isPresent();
    }
    if (!holds) {
      faults.add("step " + step.n() + " says that it is " + source.id() + ", and is not");
    }
  }

  /** A step slackens what its procedure says that it slackens, and nothing else. */
  private void slackened(Sheet.SheetStep step) {
    Optional<Step> there =
        step.source() instanceof StepSource.Written it ? in(step, it.at()) : Optional.empty();
    Stream.of(step.undo(), step.disturb(), step.slacken())
        .flatMap(List::stream)
        .filter(
            item ->
                step.slacken().contains(item)
                    != there.filter(written -> written.slackens(item.item())).isPresent())
        .forEach(
            item ->
                faults.add(
                    "step "
                        + step.n()
                        + (step.slacken().contains(item) ? " only slackens " : " takes off ")
                        + item
                        + ", and its procedure says otherwise"));
  }

  /** What a procedure takes off is off, and not only slackened by a step of another one. */
  private void takesOff(Task task) {
    Set<ItemAt> off = new LinkedHashSet<>();
    Stream.of(task.open(), task.work())
        .flatMap(List::stream)
        .forEach(
            step ->
                step.undo().stream()
                    .filter(item -> !step.step().slackens(item.item()))
                    .forEach(off::add));
    for (Sheet.SheetStep step : printed.steps()) {
      step.undo().stream()
          .filter(item -> off.contains(item) && step.slacken().contains(item))
          .forEach(item -> faults.add("step " + step.n() + " only slackens " + item));
    }
  }

  /** What a step has left is taken away where a procedure of the job says so. */
  private void takesAway(Task task) {
    List<Step> bound =
        Stream.of(task.open(), task.work(), task.close())
            .flatMap(List::stream)
            .map(BoundStep::step)
            .toList();
    for (Step step : task.procedure().blocks().steps().toList()) {
      if (!step.onlyIn().isEmpty() && step.isFor(resolved.bay()) != bound.contains(step)) {
        faults.add("\"" + step.text().value() + "\" is for another lift, or missing");
      }
      for (Located<String> item : step.touched().takesAway()) {
        printed.steps().stream()
            .filter(it -> !bound.contains(step) && step.isFor(resolved.bay()))
            .filter(it -> leaves(it, Step.withoutPlace(item.value())))
            .forEach(
                it ->
                    faults.add(
                        "step " + it.n() + " leaves " + item.value() + ", and none takes it away"));
      }
    }
  }

  private static boolean leaves(Sheet.SheetStep step, String item) {
    return Stream.concat(step.undo().stream(), step.disturb().stream())
        .anyMatch(it -> it.item().equals(item));
  }

  private Optional<Step> in(Sheet.SheetStep step, StepSource.WrittenAt at) {
    return Optional.ofNullable(
            resolved.tasks().get(new TaskId(step.procedure(), step.places().get(0))))
        .flatMap(task -> at.in(task.procedure()));
  }

  private static StepSource.WrittenAt at(Task task, Sheet.Phase chain, BoundStep bound) {
    return StepSource.WrittenAt.of(task.procedure(), chain, bound.step());
  }

  /** A step may be gone when it only takes off or puts on what others take off or put on. */
  private void missing(Task task, BoundStep step) {
    boolean evening = moment(step.step()).filter(Moment.EVENING_BEFORE::equals).isPresent();
    boolean doesMore =
        (step.undo().isEmpty() && step.doUp().isEmpty())
            || !step.disturb().isEmpty()
            || !step.step().touched().circuits().isEmpty()
            || !step.apply().isEmpty();
    String text = step.step().text().value();
    if (evening ? !sheet.evening().contains(new Statement.Written(text)) : doesMore) {
      faults.add("\"" + text + "\" of " + task.id() + " is not on the sheet");
    }
  }

  private static Optional<Moment> moment(Step step) {
    return step.moment().map(Located::value);
  }

  /** What is only disturbed has no item to go back on: its `back` has to be there as a step. */
  private void setRight(Task task, Sheet.Phase chain, BoundStep step) {
    Optional<String> back = step.step().back().map(Located::value);
    if (back.isPresent()
        && step.undo().isEmpty()
        && printed.backs(at(task, chain, step), task.id()).isEmpty()) {
      faults.add("\"" + back.get() + "\" of " + task.id() + " is not on the sheet");
    }
  }

  private void parts() {
    Map<String, Integer> wanted = new LinkedHashMap<>();
    for (Task task : resolved.tasks().values()) {
      for (Procedure.Part part : task.parts()) {
        wanted.merge(part.name().value(), part.count().value(), Integer::sum);
      }
    }
    wanted.forEach(
        (name, count) -> {
          // A part that is a fastener of the book is counted there.
          boolean listed =
              sheet.equipment().parts().stream()
                  .filter(part -> part.part().equals(name))
                  .anyMatch(part -> part.fastener() || part.count() == count);
          if (!listed) {
            faults.add("the job wants " + count + " × " + name + ", and the parts list has not");
          }
        });
  }

  private void freshFasteners() {
    Map<String, Integer> wanted = new LinkedHashMap<>();
    for (TorqueLine line : sheet.torque()) {
      if (line.refitting().reuse() == TorqueLine.Reuse.NEW) {
        wanted.merge(line.words(), line.count() * line.places().size(), Integer::sum);
      }
    }
    wanted.forEach(
        (words, count) -> {
          boolean listed =
              sheet.equipment().parts().stream()
                  .filter(part -> part.fastener() && part.part().equalsIgnoreCase(words))
                  .anyMatch(part -> part.count() == count);
          if (!listed) {
            faults.add("the job wants " + count + " new × " + words + ", and the list has not");
          }
        });
  }
}
