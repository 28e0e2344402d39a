package baysheet.plan;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A line of the sheet before it has its number: a step, or a step and its twin on the other side.
 *
 * @param step the step, at the side that is done first
 * @param twin the same step on the other side
 * @param moment the state of the vehicle in which it is done
 */
record Laid(Draft step, Optional<Draft> twin, Moment moment) {

  static Laid single(Draft step, Moment moment) {
    return new Laid(step, Optional.empty(), moment);
  }

  /** The places at which it is done; a tick box for each. */
  List<Place> places() {
    return twin.isEmpty() ? List.of(step.place()) : List.of(step.place(), twin.get().place());
  }

  List<ItemAt> undo() {
    return both(Draft::undo);
  }

  List<ItemAt> doUp() {
    return both(Draft::doUp);
  }

  List<ItemAt> disturb() {
    return both(Draft::disturb);
  }

  List<ItemAt> tighten() {
    return both(Draft::tighten);
  }

  /** Asked for at every turn, so without the way through a stream. */
  private List<ItemAt> both(Function<Draft, List<ItemAt>> items) {
    List<ItemAt> ours = items.apply(step);
    if (twin.isEmpty()) {
      return ours;
    }
    List<ItemAt> both = new ArrayList<>(ours);
    both.addAll(items.apply(twin.get()));
    return both;
  }

  /** The steps it stands for, one or two. */
  List<Draft> all() {
    return twin.isEmpty() ? List.of(step) : List.of(step, twin.get());
  }
}
