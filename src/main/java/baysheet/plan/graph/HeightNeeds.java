package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * At which heights of the vehicle each step of a graph can be done, and what the steps themselves
 * do to the height.
 *
 * @param bay the heights that the bay has
 * @param steps by the number of the step
 * @param jacked jacks under parts, as long as which are there the vehicle stays as high as it is
 */
record HeightNeeds(Set<Height> bay, List<Need> steps, Set<ItemAt> jacked) {
  /** Kinds of what is worked from inside the vehicle, where nobody is while it is raised. */
  private static final Set<String> INSIDE =
      Set.of("inside", "ignition-switch", "airbag", "seat-belt");

  /**
   * What a step asks of the height and does to it.
   *
   * @param at where it can be done; all where it is itself part of raising or lowering
   * @param lifting the task that raises and lowers, for its steps; nothing comes between them
   * @param raises what the vehicle stood on that it takes off, raising that end
   * @param lowers what the vehicle stands on afterwards
   * @param off what it takes off or sets up so that the vehicle cannot be moved freely: wheels,
   *     jacks under parts of it
   * @param on what it puts on or takes away of these
   */
  record Need(
      Set<Height> at,
      Optional<TaskId> lifting,
      Set<ItemAt> raises,
      Set<ItemAt> lowers,
      Set<ItemAt> off,
      Set<ItemAt> on) {
    /** A step that does nothing to the height. */
    static Need of(Set<Height> at) {
      return new Need(at, Optional.empty(), Set.of(), Set.of(), Set.of(), Set.of());
    }
  }

  static HeightNeeds of(
      Resolved resolved, AccessLayers layers, List<PlannedStep> steps, CheckSteps checks) {
    return new Derivation(resolved, layers, steps, checks).all();
  }

  /** For steps that all stay on the ground. */
  static HeightNeeds none(int steps) {
    Need ground = Need.of(EnumSet.of(Height.GROUND));
    return new HeightNeeds(
        EnumSet.of(Height.GROUND),
        IntStream.range(0, steps).mapToObj(i -> ground).toList(),
        Set.of());
  }

  /** Where the vehicle stands once it is raised. */
  Height raised() {
    return bay.contains(Height.STANDS) ? Height.STANDS : Height.WORKING;
  }

  /** Whether a wheel that is off keeps the vehicle from standing on something. */
  boolean bars(ItemAt support, Collection<ItemAt> off) {
    Place end = support.place();
    return off.stream()
        .filter(item -> !jacked.contains(item))
        .anyMatch(item -> end == Place.VEHICLE || end.wheels().contains(item.place()));
  }

  /** What a node puts on, or takes away from under a part; nothing for a milestone. */
  Set<ItemAt> on(int node) {
    return node < steps.size() ? steps.get(node).on() : Set.of();
  }

  /** Whether two steps can be done at the same height. */
  boolean meet(int one, int other) {
    return !Collections.disjoint(steps.get(one).at(), steps.get(other).at());
  }

  /** Whether a step is done inside the vehicle. */
  static boolean isInside(Resolved resolved, BoundStep step) {
    return isInside(resolved, List.of(step.undo(), step.doUp(), step.disturb()));
  }

  /** Where what a step took off or set up is put back: where it was done, if the step says so. */
  static Set<Height> putBack(Resolved resolved, BoundStep step) {
    Set<Height> heights = EnumSet.noneOf(Height.class);
    step.step().heights().forEach(height -> heights.add(height.value()));
    return heights.isEmpty() && isInside(resolved, step) ? EnumSet.of(Height.GROUND) : heights;
  }

  private static boolean isInside(Resolved resolved, List<List<ItemAt>> items) {
    return items.stream()
        .flatMap(List::stream)
        .anyMatch(item -> INSIDE.stream().anyMatch(resolved.thing(item)::isOf));
  }

  /** How the needs follow from what files say. */
  private static final class Derivation {
    private final Resolved resolved;
    private final AccessLayers layers;
    private final List<PlannedStep> steps;
    private final CheckSteps checks;
    private final Set<Height> bay;
    private final boolean everRaised;
    private final Set<TaskId> lifting = new HashSet<>();
    private final Set<ItemAt> jacked = new HashSet<>();

    Derivation(Resolved resolved, AccessLayers layers, List<PlannedStep> steps, CheckSteps checks) {
      this.resolved = resolved;
      this.layers = layers;
      this.steps = steps;
      this.checks = checks;
      this.everRaised = steps.stream().anyMatch(step -> Lifting.raises(resolved, step));
      this.bay = everRaised ? Height.of(resolved.bay().equipment()) : EnumSet.of(Height.GROUND);
      steps.stream()
          .filter(step -> Lifting.raises(resolved, step) || Lifting.lowers(resolved, step))
          .forEach(step -> lifting.add(step.task()));
    }

    HeightNeeds all() {
      List<Need> needs = new ArrayList<>();
      for (int node = 0; node < steps.size(); node++) {
        needs.add(need(node));
      }
      return new HeightNeeds(bay, needs, jacked);
    }

    private Need need(int node) {
      PlannedStep step = steps.get(node);
      boolean lifts = lifts(step);
      return new Need(
          lifts ? bay : at(node),
          lifts ? Optional.of(step.task()) : Optional.empty(),
          supports(step.undo()),
          supports(step.doUp()),
          inTheWay(step.undo()),
          inTheWay(step.doUp()));
    }

    /** All steps of raising and lowering, but for those that wait for a moment of their own. */
    private boolean lifts(PlannedStep step) {
      boolean own = step.phase() == Sheet.Phase.OPEN || step.phase() == Sheet.Phase.CLOSE;
      return Lifting.raises(resolved, step)
          || Lifting.lowers(resolved, step)
          || (own && step.moment().isEmpty() && lifting.contains(step.task()));
    }

    private Set<ItemAt> supports(List<ItemAt> items) {
      Set<ItemAt> supports = new HashSet<>(items);
      supports.removeIf(item -> !Lifting.holds(resolved, item));
      return supports;
    }

    private Set<ItemAt> inTheWay(List<ItemAt> items) {
      Set<ItemAt> all = new HashSet<>();
      for (ItemAt item : items) {
        Bound thing = resolved.thing(item);
        if (thing.isOf("jacked")) {
          jacked.add(item);
        }
        if (thing.isOf("wheel") || thing.isOf("jacked")) {
          all.add(item);
        }
      }
      return all;
    }

    private Set<Height> at(int node) {
      PlannedStep step = steps.get(node);
      if (step.phase() == Sheet.Phase.CHECK) {
        return check(node);
      }
      if (!step.heights().isEmpty()) {
        return Height.in(resolved.bay().equipment(), step.heights());
      }
      boolean down =
          step.moment()
              .filter(at -> at == Moment.BEFORE_LIFTING || at.compareTo(Moment.ON_THE_GROUND) >= 0)
              .isPresent();
      boolean inside = isInside(resolved, List.of(step.undo(), step.doUp(), step.disturb()));
      if (down || inside || !everRaised) {
        return EnumSet.of(Height.GROUND);
      }
      if (layers.isRaised(step.task())) {
        return EnumSet.of(Height.raised(resolved.bay().equipment()));
      }
      Set<Height> all = EnumSet.copyOf(bay);
      if (step.place() == Place.ENGINE || step.place() == Place.VEHICLE) {
        all.remove(Height.WORKING);
      }
      return all;
    }

    /**
     * Where its rule says, or where the work is done that brings it; while the vehicle is raised,
     * for work that is done on the ground only.
     */
    private Set<Height> check(int node) {
      if (!everRaised) {
        return EnumSet.of(Height.GROUND);
      }
      if (!steps.get(node).heights().isEmpty()) {
        return Height.in(resolved.bay().equipment(), steps.get(node).heights());
      }
      Set<Height> at = EnumSet.noneOf(Height.class);
      Set<Height> ground = EnumSet.of(Height.GROUND);
      Set<Height> raised = EnumSet.of(Height.raised(resolved.bay().equipment()));
      for (int by : checks.bringing(node)) {
        boolean down = lifts(steps.get(by)) || at(by).equals(ground);
        at.addAll(down ? raised : at(by));
      }
      return at;
    }
  }
}
