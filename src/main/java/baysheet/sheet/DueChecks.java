package baysheet.sheet;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.resolve.ItemAt;
import baysheet.sheet.Sheet.SheetStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which checks are due at which step. A step that sends the reader to the checks before the vehicle
 * goes up or comes down has them printed below it, so that nobody looks for them elsewhere; those
 * that are steps themselves stand in the sequence already. Checks are counted from 0.
 */
public final class DueChecks {
  private final Map<Integer, List<Integer>> byStep = new TreeMap<>();
  private final List<Integer> later = new ArrayList<>();

  public DueChecks(List<CheckLine> checks, List<SheetStep> steps) {
    List<SheetStep> gates = steps.stream().filter(DueChecks::isGate).toList();
    for (int i = 0; i < checks.size(); i++) {
      CheckLine check = checks.get(i);
      if (!check.steps().isEmpty()) {
        continue;
      }
      List<SheetStep> open = gates.stream().filter(gate -> leads(gate, check)).toList();
      if (open.isEmpty()) {
        later.add(i);
      } else {
        SheetStep gate = open.get(open.size() - 1);
        if (check.moment() == Moment.BEFORE_LIFTING && check.because().isEmpty()) {
          gate = open.get(0);
        } else if (check.moment() != Moment.BEFORE_LIFTING && !check.because().isEmpty()) {
          gate = behindAll(check, open, steps);
        }
        byStep.computeIfAbsent(gate.n(), any -> new ArrayList<>()).add(i);
      }
    }
  }

  /**
   * Of the gates before the vehicle comes down the first at which everything at the places of a
   * check is on again; the last where something is put on later still, or comes down itself.
   */
  private static SheetStep behindAll(CheckLine check, List<SheetStep> open, List<SheetStep> steps) {
    List<ItemAt> off = new ArrayList<>();
    SheetStep last = open.get(0);
    for (SheetStep step : steps) {
      if (open.contains(step)) {
        last = step;
        if (off.isEmpty()) {
          return step;
        }
      } else if (step.n() > open.get(0).n() && step.height() == Height.GROUND) {
        return last;
      }
      step.undo().stream().filter(it -> check.places().contains(it.place())).forEach(off::add);
      off.removeAll(step.doUp());
    }
    return last;
  }

  /** The checks due at a step. */
  public List<Integer> at(SheetStep step) {
    return List.copyOf(byStep.getOrDefault(step.n(), List.of()));
  }

  /** The checks that no step leads to. */
  public List<Integer> later() {
    return List.copyOf(later);
  }

  private static boolean isGate(SheetStep step) {
    return step.source() instanceof StepSource.Checkpoint;
  }

  /**
   * Before lifting it is the last gate ahead of what brings the check, or the first of all; before
   * lowering one that comes after the work, or the last of all.
   */
  private static boolean leads(SheetStep gate, CheckLine check) {
    if (check.moment() == Moment.BEFORE_LIFTING) {
      return gate.moment() == Moment.BEFORE_LIFTING
          && check.because().stream().allMatch(step -> step > gate.n());
    }
    boolean raised = check.moment() == Moment.RAISED || check.moment() == Moment.BEFORE_LOWERING;
    return raised
        && gate.moment() == Moment.RAISED
        && check.because().stream().allMatch(step -> step < gate.n());
  }
}
