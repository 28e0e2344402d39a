package baysheet.plan.graph;

import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a step does to the vehicle.
 *
 * @param slacken what it turns back and leaves in place; undone unless its procedure takes it off
 *     later
 * @param ends of what it ends the state that another step has left
 * @param tighten fasteners that are already on and get their final torque here
 */
public record Touched(
    List<ItemAt> undo,
    List<ItemAt> slacken,
    List<ItemAt> doUp,
    List<ItemAt> disturb,
    List<ItemAt> ends,
    List<ItemAt> tighten,
    List<String> circuits,
    List<BoundStep.BoundApply> apply) {
  public Touched {
    undo = List.copyOf(undo);
    slacken = List.copyOf(slacken);
    doUp = List.copyOf(doUp);
    disturb = List.copyOf(disturb);
    ends = List.copyOf(ends);
    tighten = List.copyOf(tighten);
    circuits = List.copyOf(circuits);
    apply = List.copyOf(apply);
  }

  static final Touched NOTHING = on(List.of(), List.of());

  /** Nothing but items that go on and fasteners that get their final torque. */
  static Touched on(List<ItemAt> doUp, List<ItemAt> tighten) {
    return new Touched(
        List.of(), List.of(), doUp, List.of(), List.of(), tighten, List.of(), List.of());
  }

  Touched without(ItemAt item) {
    return new Touched(
        less(undo, item),
        less(slacken, item),
        less(doUp, item),
        disturb,
        ends,
        tighten,
        circuits,
        apply);
  }

  /** The same with an item slackened that other work takes off, as its own later step would. */
  Touched slackening(ItemAt item) {
    List<ItemAt> touched = Stream.concat(disturb.stream(), Stream.of(item)).toList();
    return new Touched(less(undo, item), slacken, doUp, touched, ends, tighten, circuits, apply);
  }

  private static List<ItemAt> less(List<ItemAt> items, ItemAt item) {
    return items.stream().filter(other -> !other.equals(item)).toList();
  }
}
