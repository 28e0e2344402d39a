package baysheet.plan;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.ItemAt;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
    return all().map(Draft::place).toList();
  }

  List<ItemAt> undo() {
    return all().flatMap(draft -> draft.undo().stream()).toList();
  }

  List<ItemAt> doUp() {
    return all().flatMap(draft -> draft.doUp().stream()).toList();
  }

  List<ItemAt> disturb() {
    return all().flatMap(draft -> draft.disturb().stream()).toList();
  }

  List<ItemAt> tighten() {
    return all().flatMap(draft -> draft.tighten().stream()).toList();
  }

  /** The steps it stands for, one or two. */
  Stream<Draft> all() {
    return Stream.concat(Stream.of(step), twin.stream());
  }
}
