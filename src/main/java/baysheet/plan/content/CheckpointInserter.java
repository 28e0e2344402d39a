package baysheet.plan.content;

import baysheet.books.Moment;
import baysheet.plan.graph.Lifting;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.resolve.Resolved;
import baysheet.sheet.CheckLine;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    Optional<Integer> first = beforeLifting();
    boolean lowering = due(Moment.RAISED) || due(Moment.BEFORE_LOWERING);
    boolean worked = false;
    for (int i = 0; i < lines.size(); i++) {
      PlacedStep line = lines.get(i);
      if (first.equals(Optional.of(i))) {
        gated.add(gate(line, Moment.BEFORE_LIFTING));
      }
      boolean lowers = lowers(line);
      if (lowering && lowers && worked) {
        gated.add(gate(line, Moment.RAISED));
      }
      // Two axles that come down one directly after the other share a gate.
      worked = !lowers && (worked || line.moment() == Moment.RAISED);
      gated.add(line);
    }
    return gated;
  }

  private PlacedStep gate(PlacedStep at, Moment moment) {
    PlannedStep step = at.step();
    StepSource source = new StepSource.Checkpoint(moment, lines.stream().anyMatch(this::raises));
    return PlacedStep.single(
        PlannedStep.last(step.task(), source, step.origin(), List.of()), moment);
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
        .filter(i -> raises(lines.get(i)) || brings(i) || (asks && opens(lines.get(i))))
        .boxed()
        .findFirst()
        .or(() -> Optional.of(0));
  }

  private static boolean opens(PlacedStep line) {
    return !line.undo().isEmpty();
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

  private boolean lowers(PlacedStep line) {
    return Lifting.holds(resolved, line.doUp());
  }

  private boolean due(Moment moment) {
    return checks.stream().anyMatch(check -> check.moment() == moment && check.steps().isEmpty());
  }
}
