package baysheet.plan.graph;

import baysheet.books.Height;
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
 * @param height how high the vehicle is then; of a step that moves it, afterwards
 */
public record PlacedStep(
    PlannedStep step, Optional<PlannedStep> twin, Moment moment, Height height) {

  public static PlacedStep single(PlannedStep step, Moment moment, Height height) {
    return new PlacedStep(step, Optional.empty(), moment, height);
  }

  /** One for which the vehicle stands on its wheels. */
  public static PlacedStep onTheGround(PlannedStep step, Moment moment) {
    return single(step, moment, Height.GROUND);
  }

  /** The places at which it is done; a tick box for each. */
  public List<Place> places() {
    return twin.isEmpty() ? List.of(step.place()) : List.of(step.place(), twin.get().place());
  }

  public List<ItemAt> undo() {
    return both(PlannedStep::undo);
  }

  public List<ItemAt> slacken() {
    return both(PlannedStep::slacken);
  }

  public List<ItemAt> doUp() {
    return both(PlannedStep::doUp);
  }

  public List<ItemAt> disturb() {
    return both(PlannedStep::disturb);
  }

  public List<ItemAt> ends() {
    return both(PlannedStep::ends);
  }

  public List<ItemAt> tighten() {
    return both(PlannedStep::tighten);
  }

  /** Asked for at every turn, so without the way through a stream. */
  private List<ItemAt> both(Function<PlannedStep, List<ItemAt>> items) {
    List<ItemAt> ours = items.apply(step);
    if (twin.isEmpty()) {
      return ours;
    }
    List<ItemAt> both = new ArrayList<>(ours);
    both.addAll(items.apply(twin.get()));
    return both;
  }

  /** The steps it stands for, one or two. */
  public List<PlannedStep> all() {
    return twin.isEmpty() ? List.of(step) : List.of(step, twin.get());
  }
}
