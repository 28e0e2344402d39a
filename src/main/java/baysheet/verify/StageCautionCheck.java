package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Trigger;
import baysheet.resolve.Resolved;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Whether a caution stands on each stage where it holds, above its first step there or on top. */
final class StageCautionCheck {
  private final Sheet whole;
  private final Sheet stage;
  private final Resolved resolved;
  private final int first;
  private final Map<Integer, SheetStep> own = new HashMap<>();
  private final TriggerIndex brought;
  private final List<String> faults = new ArrayList<>();

  private StageCautionCheck(Sheet whole, Sheet stage, Resolved resolved) {
    this.whole = whole;
    this.stage = stage;
    this.resolved = resolved;
    // Without steps a stage stands behind the last one.
    this.first =
        stage.steps().stream().mapToInt(SheetStep::n).min().orElse(whole.steps().size() + 1);
    stage.steps().forEach(step -> own.put(step.n(), step));
    this.brought = new TriggerIndex(new SheetIndex(stage), resolved);
  }

  static List<String> faults(Sheet whole, Sheet stage, Resolved resolved) {
    StageCautionCheck check = new StageCautionCheck(whole, stage, resolved);
    whole.safety().cautions().forEach(check::caution);
    return check.faults;
  }

  private void caution(CautionLine caution) {
    List<Integer> here = caution.steps().stream().filter(own::containsKey).toList();
    boolean raising = resolved.catalogue().cautions().get(caution.name()).raising();
    boolean always =
        raising
            ? !here.isEmpty() || raisesHere()
            : caution.wholeJob()
                || holdsSinceBefore(caution)
                || (here.isEmpty() && isMetAgain(caution));
    List<CautionLine> found =
        stage.safety().cautions().stream()
            .filter(it -> it.letter().equals(caution.letter()))
            .toList();
    boolean due = !here.isEmpty() || (always && (raising || !isOver(caution)));
    if (found.size() != (due ? 1 : 0)) {
      fault(caution, "stands here " + found.size() + " times");
    } else if (due) {
      CautionLine line = found.get(0);
      if (!line.equals(caution.at(here, always))) {
        fault(caution, "is another one here");
      }
      if (!isAboveItsFirstStep(line, here)) {
        fault(caution, "does not stand above its first step");
      }
    }
  }

  /** Whether a step of this stage brings the vehicle up, or on to blocks and off them. */
  private boolean raisesHere() {
    return own.values().stream()
        .anyMatch(
            step ->
                step.source() instanceof StepSource.Blocks
                    || step.undo().stream().anyMatch(it -> resolved.thing(it).isOf("support"))
                    || step.source() instanceof StepSource.HeightChange change
                        && change.from().compareTo(change.to()) < 0);
  }

  /** Whether it was met on an earlier stage and still holds. */
  private boolean holdsSinceBefore(CautionLine caution) {
    return caution.steps().stream().anyMatch(n -> n < first)
        && (caution.onTop() || (isRaised() && warnsOfRaising(caution)));
  }

  /**
   * Whether it was met on an earlier stage, and the steps of this one alone would bring it, or
   * refit what it warned of when that came off. What only damages things need not be said again.
   */
  private boolean isMetAgain(CautionLine caution) {
    List<Trigger> when = resolved.catalogue().cautions().get(caution.name()).when();
    boolean before = caution.steps().stream().anyMatch(n -> n < first);
    return before
        && caution.signal() != Catalogue.Signal.NOTICE
        && (!brought.steps(when).isEmpty()
            || own.values().stream().anyMatch(it -> refits(it, caution, when)));
  }

  private boolean refits(SheetStep step, CautionLine caution, List<Trigger> when) {
    return step.doUp().stream()
        .filter(
            item ->
                caution.steps().stream()
                    .anyMatch(n -> whole.steps().get(n - 1).undo().contains(item)))
        .anyMatch(
            item ->
                when.stream()
                    .flatMap(trigger -> trigger.names(Trigger.Condition.KIND).stream())
                    .anyMatch(resolved.thing(item)::isOf));
  }

  /** Whether it warns of raising, and the vehicle is down for good and on no blocks. */
  private boolean isOver(CautionLine caution) {
    boolean onBlocks =
        stage.steps().stream().anyMatch(step -> step.source() instanceof StepSource.Blocks);
    return warnsOfRaising(caution) && !isRaised() && !onBlocks;
  }

  private boolean isRaised() {
    return own.containsKey(first) && own.get(first).moment() == Moment.RAISED
        || StageStateCheck.isUp(whole, first, resolved);
  }

  /** Whether one of its steps on an earlier stage raises the vehicle. */
  private boolean warnsOfRaising(CautionLine caution) {
    return caution.steps().stream()
        .filter(n -> n < first)
        .anyMatch(n -> StageStateCheck.raises(whole.steps().get(n - 1), resolved));
  }

  private boolean isAboveItsFirstStep(CautionLine line, List<Integer> here) {
    return line.onTop()
        || line.collapsed()
        || line.waivedBy().isPresent()
        || !here.isEmpty() && own.get(here.get(0)).letters().above().contains(line.letter());
  }

  private void fault(CautionLine caution, String what) {
    faults.add("the caution " + caution.letter() + " " + what);
  }
}
