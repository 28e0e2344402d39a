package baysheet.resolve;

import baysheet.books.Step;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A step at a place, every item it names bound to where that item is.
 *
 * @param absent what else its text may name that this vehicle does not have, in British words
 */
public record BoundStep(
    Step step,
    List<ItemAt> undo,
    List<ItemAt> doUp,
    List<ItemAt> disturb,
    List<BoundApply> apply,
    List<String> absent) {
  public BoundStep {
    Objects.requireNonNull(step);
    undo = List.copyOf(undo);
    doUp = List.copyOf(doUp);
    disturb = List.copyOf(disturb);
    apply = List.copyOf(apply);
    absent = List.copyOf(absent);
  }

  /** A product and the item it goes on, where the step names one. */
  public record BoundApply(String product, Optional<ItemAt> item) {}
}
