package baysheet.wording;

import static baysheet.wording.SampleLines.check;
import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Moment;
import baysheet.sheet.DueChecks;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import baysheet.wording.SampleLines.StepMaker;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two axles that come down one after the other: steps 3 and 6 lead to checks, step 1 as well. */
class DueChecksTest {
  private static final List<SheetStep> STEPS =
      List.of(
          step(1, Phase.FINAL, Moment.BEFORE_LIFTING),
          step(2, Phase.OPEN, Moment.RAISED),
          step(3, Phase.FINAL, Moment.RAISED),
          step(4, Phase.CLOSE, Moment.RAISED),
          step(5, Phase.OPEN, Moment.RAISED),
          step(6, Phase.FINAL, Moment.RAISED));

  @Test
  void checkBeforeLiftingStandsAtTheFirst() {
    assertEquals(1, gate(Moment.BEFORE_LIFTING, 5));
  }

  @Test
  void checkStandsAtTheFirstStepAfterWhatBroughtIt() {
    assertEquals(3, gate(Moment.BEFORE_LOWERING, 2));
    assertEquals(6, gate(Moment.BEFORE_LOWERING, 2, 5));
  }

  @Test
  void checkThatNothingBroughtStandsAtTheLast() {
    assertEquals(6, gate(Moment.RAISED));
  }

  @Test
  void checkThatNoStepLeadsToIsLeftForLater() {
    assertEquals(0, gate(Moment.ROAD_TEST, 2));
    assertEquals(0, gate(Moment.BEFORE_LOWERING, 7));
  }

  /** The step at which a check is printed; 0 where it is left for later. */
  private static int gate(Moment moment, Integer... because) {
    DueChecks due = new DueChecks(List.of(check(moment, "Look", because)), STEPS);
    List<Integer> at =
        STEPS.stream().filter(step -> !due.at(step).isEmpty()).map(SheetStep::n).toList();
    assertEquals(1, at.size() + due.later().size());
    return at.isEmpty() ? 0 : at.get(0);
  }

  private static SheetStep step(int n, Phase phase, Moment moment) {
    StepMaker step = new StepMaker(n, "Do it");
    return phase == Phase.FINAL
        ? step.from(new StepSource.Checkpoint(moment, true), moment, Samples.CAR)
        : step.at(phase, moment, Samples.CAR);
  }
}
