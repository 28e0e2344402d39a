package baysheet.plan.graph;

import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.Name;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.PutBack.What;
import baysheet.torque.ThreePoint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The closing steps of a task: what was undone, in reverse order, except what the procedure closes
 * by itself. Its own closing steps keep their order among themselves; each stands where the mirror
 * comes to the first item it does up, and those before it in the procedure stand just before it.
 */
final class ClosingSteps {
  private final Resolved resolved;
  private final Task task;
  private final List<PlannedStep> closing = new ArrayList<>();
  private final List<BoundStep> own;
  private int emitted;

  private ClosingSteps(Resolved resolved, Task task) {
    this.resolved = resolved;
    this.task = task;
    this.own = task.close();
  }

  static List<PlannedStep> closing(Resolved resolved, Task task) {
    return new ClosingSteps(resolved, task).run();
  }

  private List<PlannedStep> run() {
    Set<ItemAt> covered = new HashSet<>();
    own.forEach(step -> covered.addAll(step.doUp()));
    List<BoundStep> opened = new ArrayList<>(task.open());
    opened.addAll(task.work());
    covered.addAll(doneUpInWork());
    Collections.reverse(opened);
    for (BoundStep step : opened) {
      emitOwn(step);
      putBack(step, covered);
    }
    emitOwnUntil(own.size());
    return closing;
  }

  private List<ItemAt> doneUpInWork() {
    return task.work().stream().flatMap(step -> step.doUp().stream()).toList();
  }

  /** The procedure's own steps, up to the last that does up something this step undid. */
  private void emitOwn(BoundStep step) {
    for (int i = own.size() - 1; i >= emitted; i--) {
      if (!Collections.disjoint(own.get(i).doUp(), step.undo())) {
        emitOwnUntil(i + 1);
      }
    }
  }

  private void emitOwnUntil(int end) {
    for (; emitted < end; emitted++) {
      closing.add(PlannedStep.written(task, Sheet.Phase.CLOSE, own.get(emitted)));
    }
  }

  private void putBack(BoundStep step, Set<ItemAt> covered) {
    List<ItemAt> left = new ArrayList<>(step.undo());
    left.removeAll(covered);
    Optional<String> back = step.step().back().map(Located::value);
    boolean whole = left.size() == step.undo().size();
    if (back.isPresent() && whole) {
      Collections.reverse(left);
      add(step, new StepSource.Back(at(step), back.get()), left, again(step), step.disturb());
      return;
    }
    Optional<ThreePoint> minutes = again(step);
    Collections.reverse(left);
    for (ItemAt item : left) {
      add(step, putBack(step, item), List.of(item), minutes, List.of());
      minutes = minutes.map(first -> ThreePoint.certain(0));
    }
  }

  private void add(
      BoundStep step,
      StepSource source,
      List<ItemAt> items,
      Optional<ThreePoint> minutes,
      List<ItemAt> ends) {
    closing.add(
        PlannedStep.puttingBack(task.id(), source, step.step().at(), items, minutes)
            .at(HeightNeeds.putBack(resolved, step))
            .ending(ends));
  }

  private StepSource.WrittenAt at(BoundStep step) {
    Sheet.Phase chain = task.open().contains(step) ? Sheet.Phase.OPEN : Sheet.Phase.WORK;
    return StepSource.WrittenAt.of(task.procedure(), chain, step.step());
  }

  /**
   * Putting back takes what taking off takes when nothing is stuck: the shortest of the step's
   * times. Common practice, no source.
   */
  private static Optional<ThreePoint> again(BoundStep step) {
    return step.step().demands().takes().map(takes -> ThreePoint.certain(takes.value().low()));
  }

  private StepSource putBack(BoundStep step, ItemAt item) {
    Bound thing = resolved.thing(item);
    Optional<String> text = thing.entry().flatMap(entry -> entry.back().map(Located::value));
    int count = thing instanceof Bound.OfBook it ? it.values().count().value() : 1;
    return new StepSource.PutBack(
        at(step), item.item(), text, Name.of(thing), what(step, item), count);
  }

  private What what(BoundStep step, ItemAt item) {
    Bound thing = resolved.thing(item);
    if (step.slacken().contains(item)) {
      return What.SLACKENED;
    }
    return thing instanceof Bound.OfBook
        ? What.FASTENER
        : thing.isTemporary() ? What.TEMPORARY : What.OTHER;
  }
}
