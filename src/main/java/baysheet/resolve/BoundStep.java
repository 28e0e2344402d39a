package baysheet.resolve;

import baysheet.books.Step;
import java.util.List;
import java.util.Optional;

/**
 * A step at a place, every item it names bound to where that item is.
 *
 * @param undo what is off behind it, or slackened for good, so that it must be done up
 * @param slacken what it only turns back; what its procedure takes off later is disturbed here, all
 *     else is undone
 * @param ends of what it ends the state that another step has left
 * @param absent what else its text may name that this vehicle does not have, in British words
 */
public record BoundStep(
    Step step,
    List<ItemAt> undo,
    List<ItemAt> slacken,
    List<ItemAt> doUp,
    List<ItemAt> disturb,
    List<ItemAt> ends,
    List<BoundApply> apply,
    List<String> absent) {
  public BoundStep {
    undo = List.copyOf(undo);
    slacken = List.copyOf(slacken);
    doUp = List.copyOf(doUp);
    disturb = List.copyOf(disturb);
    ends = List.copyOf(ends);
    apply = List.copyOf(apply);
    absent = List.copyOf(absent);
  }

  /** A product and the item it goes on, where the step names one. */
  public record BoundApply(String product, Optional<ItemAt> item) {}
}
