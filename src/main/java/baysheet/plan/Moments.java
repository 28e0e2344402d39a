package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Gives every step its moment from whether the vehicle is up, and adds the final torques that are
 * due once it is down.
 */
final class Moments {
  private final Resolved resolved;
  private final boolean everRaised;

  private Moments(Resolved resolved, List<Draft> order) {
    this.resolved = resolved;
    this.everRaised = order.stream().anyMatch(step -> Lifting.raises(resolved, step));
  }

  /** The order with moments, before sides are merged: main sequence only. */
  static List<Laid> sequence(Resolved resolved, List<Draft> order) {
    return new Moments(resolved, order).sequence(order);
  }

  /**
   * The steps after the vehicle is down: final torques, then what the procedures leave for then.
   */
  static List<Laid> finish(Resolved resolved, List<Draft> order, List<Draft> late) {
    return new Moments(resolved, order).finish(order, late);
  }

  private List<Laid> sequence(List<Draft> order) {
    List<Laid> laid = new ArrayList<>();
    Set<ItemAt> up = new LinkedHashSet<>();
    boolean raisedYet = false;
    for (Draft step : order) {
      boolean moving = Lifting.raises(resolved, step) || Lifting.lowers(resolved, step);
      laid.add(Laid.single(step, moment(!up.isEmpty() || moving, raisedYet)));
      up.addAll(step.undo().stream().filter(this::supports).toList());
      up.removeAll(step.doUp());
      raisedYet |= moving;
    }
    return laid;
  }

  private Moment moment(boolean raised, boolean raisedYet) {
    if (raised) {
      return Moment.RAISED;
    }
    return everRaised && !raisedYet ? Moment.BEFORE_LIFTING : Moment.ON_THE_GROUND;
  }

  private boolean supports(ItemAt item) {
    return Lifting.holds(resolved, List.of(item));
  }

  private List<Laid> finish(List<Draft> order, List<Draft> late) {
    List<Laid> finish = new ArrayList<>();
    for (Fastener.Moment when :
        List.of(Fastener.Moment.ON_THE_GROUND, Fastener.Moment.RIDE_HEIGHT)) {
      for (Draft step : order) {
        step.doUp().stream()
            .filter(item -> twoVisits(resolved, item, everRaised) && when(item) == when)
            .forEach(item -> finish.add(finalTorque(step, item)));
      }
    }
    late.forEach(step -> finish.add(Laid.single(step, step.moment().orElseThrow())));
    return finish;
  }

  private Laid finalTorque(Draft step, ItemAt item) {
    String text = Words.finalTorque(resolved.thing(item), when(item), resolved.shop().terms());
    return Laid.single(
        Draft.last(step.task(), step.origin(), text, List.of(item)), Moment.ON_THE_GROUND);
  }

  private Fastener.Moment when(ItemAt item) {
    return values(resolved, item).moment();
  }

  private static Fastener values(Resolved resolved, ItemAt item) {
    return ((Bound.OfBook) resolved.thing(item)).values();
  }

  /** Whether a fastener is only made snug when it goes on, because its final torque waits. */
  static boolean twoVisits(Resolved resolved, ItemAt item, boolean raised) {
    return raised
        && resolved.thing(item) instanceof Bound.OfBook fastener
        && fastener.values().moment() != Fastener.Moment.AT_ONCE;
  }
}
