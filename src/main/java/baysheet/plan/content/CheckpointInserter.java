package baysheet.plan.content;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CheckLine;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A step that sends the reader to the checks which are due before the vehicle goes up or comes
 * down; without it somebody who follows the sequence would come to them too late.
 */
public final class CheckpointInserter {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final List<CheckLine> checks;

  public CheckpointInserter(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
    this.checks = new Checks(resolved, lines, List.of()).all();
  }

  public List<PlacedStep> add() {
    List<PlacedStep> gated = new ArrayList<>();
    Set<Integer> lifting = new HashSet<>(beforeNextLiftings());
    beforeLifting().ifPresent(lifting::add);
    boolean lowering = due(Moment.RAISED) || due(Moment.BEFORE_LOWERING);
    boolean worked = false;
    for (int i = 0; i < lines.size(); i++) {
      PlacedStep line = lines.get(i);
      if (lifting.contains(i)) {
        gated.add(gate(line, Moment.BEFORE_LIFTING, Height.GROUND));
      }
      boolean lowers = isLowering(line) && line.moment() == Moment.RAISED;
      if (lowering && lowers && worked) {
        beforeLowering(gated, line);
      }
      // Two axles that come down one directly after the other share a gate.
      worked = !lowers && (worked || line.moment() == Moment.RAISED);
      gated.add(line);
    }
    return gated;
  }

  /**
   * One gate at working height; but where something is still put on lower down, as wheels once the
   * brakes are bled, what looks at it has a gate of its own behind that.
   */
  private void beforeLowering(List<PlacedStep> gated, PlacedStep lowering) {
    int early = beforeLooks(gated);
    int late = behindPuttingOn(gated, early);
    boolean putOn = late > early;
    if (putOn) {
      gated.add(late, gate(lowering, Moment.RAISED, gated.get(late - 1).height()));
    }
    if (!putOn || isAnyDone(gated.subList(0, early))) {
      Height raised = Height.raised(resolved.bay().equipment());
      gated.add(early, gate(lowering, Moment.RAISED, raised));
    }
  }

  /**
   * Behind the last line that puts something on above the ground: the end where the vehicle is not
   * down yet; the same place where no line does.
   */
  private static int behindPuttingOn(List<PlacedStep> gated, int from) {
    int last = gated.size() - 1;
    while (last >= from
        && (gated.get(last).doUp().isEmpty() || gated.get(last).height() == Height.GROUND)) {
      last--;
    }
    boolean up = gated.get(gated.size() - 1).height() != Height.GROUND;
    return last < from ? from : up ? gated.size() : last + 1;
  }

  /** Whether some check can be made behind these lines: at its places everything is on again. */
  private boolean isAnyDone(List<PlacedStep> done) {
    List<ItemAt> off = new ArrayList<>();
    done.forEach(
        line -> {
          off.addAll(line.undo());
          off.removeAll(line.doUp());
        });
    int last = (int) done.stream().filter(lines::contains).count();
    return checks.stream()
        .filter(check -> isRaised(check.moment()) && check.steps().isEmpty())
        .filter(check -> !check.because().isEmpty())
        .filter(check -> check.because().stream().allMatch(n -> n <= last))
        .anyMatch(check -> off.stream().noneMatch(item -> check.places().contains(item.place())));
  }

  /**
   * The gate's checks are made at working height: it stands before what is done lower at the end of
   * the work, where none of its checks looks at that.
   */
  private int beforeLooks(List<PlacedStep> gated) {
    int at = gated.size();
    while (at > 0
        && gated.get(at - 1).height() != Height.raised(resolved.bay().equipment())
        && gated.get(at - 1).moment() == Moment.RAISED
        && !looksAt(gated.get(at - 1))) {
      at--;
    }
    return at;
  }

  private boolean looksAt(PlacedStep line) {
    Task task = resolved.tasks().get(line.step().task());
    int n = lines.indexOf(line) + 1;
    return (task != null && !task.procedure().checks().isEmpty())
        || checks.stream()
            .filter(check -> isRaised(check.moment()) && check.steps().isEmpty())
            .anyMatch(check -> check.because().contains(n));
  }

  private static boolean isRaised(Moment moment) {
    return moment == Moment.RAISED || moment == Moment.BEFORE_LOWERING;
  }

  private PlacedStep gate(PlacedStep at, Moment moment, Height height) {
    PlannedStep step = at.step();
    StepSource.Checkpoint source =
        new StepSource.Checkpoint(moment, lines.stream().anyMatch(this::raises));
    PlannedStep gate = PlannedStep.checkpoint(step.task(), source, step.origin());
    return PlacedStep.single(gate, moment, height);
  }

  /**
   * The line before which the checks due before lifting are done: the first that raises, or an
   * earlier one that brings such a check. Stored faults are gone once the battery is off, lifted or
   * not.
   */
  private Optional<Integer> beforeLifting() {
    if (!due(Moment.BEFORE_LIFTING)) {
      return Optional.empty();
    }
    // A stop that no step brings is for all that is opened.
    boolean asks =
        checks.stream()
            .filter(check -> check.moment() == Moment.BEFORE_LIFTING)
            .anyMatch(check -> check.hold() && check.because().isEmpty());
    return IntStream.range(0, lines.size())
        .filter(i -> isRaising(lines.get(i)) || brings(i) || (asks && opens(lines.get(i))))
        .boxed()
        .findFirst()
        .or(() -> Optional.of(0));
  }

  /**
   * Where the checks are done that belong to an end which is raised when another is down again:
   * before the first line that raises it, or brings one of them.
   */
  private List<Integer> beforeNextLiftings() {
    Set<Integer> due = new HashSet<>();
    for (CheckLine check : checks) {
      if (check.moment() == Moment.BEFORE_LIFTING && !check.because().isEmpty()) {
        due.add(Collections.min(check.because()) - 1);
      }
    }
    int[] down = Lifting.timesDown(resolved, lines);
    Set<Integer> asked = new HashSet<>();
    due.forEach(index -> asked.add(down[index]));
    asked.remove(0);
    List<Integer> gates = new ArrayList<>();
    for (int i = 0; i < down.length; i++) {
      if ((isRaising(lines.get(i)) || due.contains(i)) && asked.remove(down[i])) {
        gates.add(i);
      }
    }
    return gates;
  }

  private static boolean opens(PlacedStep line) {
    return !line.undo().isEmpty() || !line.slacken().isEmpty();
  }

  private boolean brings(int index) {
    String procedure = lines.get(index).step().task().procedure();
    return checks.stream()
        .filter(check -> check.moment() == Moment.BEFORE_LIFTING)
        .anyMatch(check -> check.because().contains(index + 1) || check.name().equals(procedure));
  }

  private boolean raises(PlacedStep line) {
    return Lifting.holds(resolved, line.undo());
  }

  private boolean isRaising(PlacedStep line) {
    return Lifting.isRaising(resolved, line.step());
  }

  private boolean isLowering(PlacedStep line) {
    return Lifting.isLowering(resolved, line.step());
  }

  private boolean due(Moment moment) {
    return checks.stream().anyMatch(check -> check.moment() == moment && check.steps().isEmpty());
  }
}
