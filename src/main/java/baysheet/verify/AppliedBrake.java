package baysheet.verify;

import baysheet.books.Height;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;

/** Whether the parking brake is applied, and since when. */
enum AppliedBrake {
  RELEASED,
  /** By the step before, for wheels that are to come down next. */
  JUST_APPLIED,
  /** By an earlier step, which need not lead to lowering. */
  APPLIED;

  /** What a step that does nothing about it leaves. */
  AppliedBrake later() {
    return this == JUST_APPLIED ? APPLIED : this;
  }

  /** Whether a step applies it for another height, whatever items and rules are called. */
  static boolean isBy(Sheet.SheetStep step) {
    return step.source() instanceof StepSource.HeightChange change
        && change.part() == HeightPart.BRAKE;
  }

  /** Whether a step applies it before anything is done, while the vehicle stays on the floor. */
  static boolean isFirst(Sheet.SheetStep step) {
    return isBy(step)
        && step.source() instanceof StepSource.HeightChange change
        && change.from() == Height.GROUND
        && change.to() == Height.GROUND;
  }
}
