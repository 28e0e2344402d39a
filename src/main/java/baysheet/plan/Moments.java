package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import java.util.ArrayList;
import java.util.Comparator;
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

  /**
   * The lines of a job with their moments: the sequence, the final torques directly behind the
   * lowering that they wait for, and at the end what the procedures leave for later.
   */
  static List<Laid> lines(Resolved resolved, List<Draft> order, StepGraph graph) {
    Moments moments = new Moments(resolved, order);
    List<Laid> merged = Sides.merge(resolved, moments.sequence(order), new Waits(graph));
    List<Laid> lines = moments.withFinals(merged);
    graph.late().forEach(step -> lines.add(Laid.single(step, step.moment().orElseThrow())));
    return lines;
  }

  /**
   * The same lines with the final torques. Those on the ground come as soon as the vehicle is down:
   * the other end is not raised while wheels are only snug. Those at ride height come behind the
   * last lowering.
   */
  private List<Laid> withFinals(List<Laid> merged) {
    List<Laid> lines = new ArrayList<>();
    List<Waiting> waiting = new ArrayList<>();
    Set<ItemAt> up = new LinkedHashSet<>();
    int last = lastLowering(merged);
    for (int i = 0; i < merged.size(); i++) {
      Laid line = merged.get(i);
      lines.add(line);
      line.all().forEach(step -> waiting.addAll(waits(step, line.moment())));
      line.undo().stream().filter(this::supports).forEach(up::add);
      up.removeAll(line.doUp());
      if (i == last) {
        lines.addAll(finals(waiting));
      } else if (up.isEmpty() && Lifting.holds(resolved, line.doUp())) {
        List<Waiting> due =
            waiting.stream().filter(one -> one.when() == Fastener.Moment.ON_THE_GROUND).toList();
        lines.addAll(finals(due));
        waiting.removeAll(due);
      }
    }
    return lines;
  }

  /** The line that brings the vehicle down for good; the last of all where it is never up. */
  private int lastLowering(List<Laid> lines) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      if (Lifting.holds(resolved, lines.get(i).doUp())) {
        return i;
      }
    }
    return lines.size() - 1;
  }

  private List<Laid> sequence(List<Draft> order) {
    List<Laid> laid = new ArrayList<>();
    Set<ItemAt> up = new LinkedHashSet<>();
    boolean raisedYet = false;
    for (Draft step : order) {
      boolean moving = Lifting.raises(resolved, step) || Lifting.lowers(resolved, step);
      laid.add(Laid.single(step, moment(!up.isEmpty() || moving, raisedYet)));
      step.undo().stream().filter(this::supports).forEach(up::add);
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
    return Lifting.holds(resolved, item);
  }

  /** What a step did up while the vehicle was up, and whose final torque waits for the ground. */
  private record Waiting(Draft step, ItemAt item, Fastener.Moment when, int depth) {}

  /**
   * Those on the ground before those at ride height; in each, what gave access to others first: the
   * wheel must be tight before anything is tightened through it.
   */
  private List<Laid> finals(List<Waiting> waiting) {
    List<Laid> finals =
        waiting.stream()
            .sorted(Comparator.comparing(Waiting::when).thenComparing(Waiting::depth))
            .map(this::finalTorque)
            .toList();
    return onBlocks(Sides.pair(resolved, finals));
  }

  /**
   * What is tightened at ride height is reached from below, so the vehicle goes up on blocks before
   * the first of it, its wheels loaded, and comes off them behind the last.
   */
  private List<Laid> onBlocks(List<Laid> finals) {
    List<Laid> all = new ArrayList<>();
    boolean up = false;
    for (Laid line : finals) {
      if (!up && isAtRideHeight(line)) {
        all.add(blocks(line.step(), BlockWords.under(resolved)));
        up = true;
      }
      all.add(line);
    }
    if (up) {
      Draft last = finals.get(finals.size() - 1).step();
      all.add(blocks(last, BlockWords.out(resolved)));
    }
    return all;
  }

  private boolean isAtRideHeight(Laid line) {
    return line.tighten().stream()
        .anyMatch(
            item ->
                resolved.thing(item) instanceof Bound.OfBook fastener
                    && fastener.values().moment() == Fastener.Moment.RIDE_HEIGHT);
  }

  private static Laid blocks(Draft at, String text) {
    TaskId whole = new TaskId(at.task().procedure(), Place.VEHICLE);
    Draft step = Draft.last(whole, at.origin(), text, List.of());
    return Laid.single(step.using(BlockWords.TOOLS), Moment.ON_THE_GROUND);
  }

  private List<Waiting> waits(Draft step, Moment moment) {
    List<Waiting> waiting = new ArrayList<>();
    for (ItemAt item : moment == Moment.RAISED ? step.doUp() : List.<ItemAt>of()) {
      if (resolved.thing(item) instanceof Bound.OfBook fastener
          && fastener.values().moment() != Fastener.Moment.AT_ONCE) {
        waiting.add(new Waiting(step, item, fastener.values().moment(), depth(step.task())));
      }
    }
    return waiting;
  }

  /** How many layers of access lie before a task. */
  private int depth(TaskId id) {
    Task task = resolved.tasks().get(id);
    return task.access().stream().mapToInt(access -> depth(access) + 1).max().orElse(0);
  }

  private Laid finalTorque(Waiting waiting) {
    String text = Words.finalTorque(resolved.thing(waiting.item()), resolved.shop().terms());
    Draft step = waiting.step();
    return Laid.single(
        Draft.last(step.task(), step.origin(), text, List.of(waiting.item())),
        Moment.ON_THE_GROUND);
  }
}
