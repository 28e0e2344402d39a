package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts the same work on both sides into one set of lines. Two runs of steps at mirrored places, one
 * directly after the other, become one when every step of the first has its twin in the second:
 * written in the same place, on the same items, with the same values. Where anything differs, or
 * one side must wait for the other, both stay as they are.
 */
public final class SideMerger {
  private final Resolved resolved;

  private SideMerger(Resolved resolved) {
    this.resolved = resolved;
  }

  static List<PlacedStep> merge(Resolved resolved, List<PlacedStep> lines, DependencyQuery waits) {
    return new SideMerger(resolved).merge(runs(lines), waits);
  }

  /** Stretches at one place, moment and height. */
  static List<List<PlacedStep>> runs(List<PlacedStep> lines) {
    List<List<PlacedStep>> runs = new ArrayList<>();
    for (PlacedStep line : lines) {
      if (runs.isEmpty() || !together(last(last(runs)), line)) {
        runs.add(new ArrayList<>());
      }
      last(runs).add(line);
    }
    return runs;
  }

  private static boolean together(PlacedStep one, PlacedStep next) {
    return one.places().equals(next.places()) && isAsHigh(one, next);
  }

  private static boolean isAsHigh(PlacedStep one, PlacedStep other) {
    return one.moment() == other.moment() && one.height() == other.height();
  }

  private static <T> T last(List<T> list) {
    return list.get(list.size() - 1);
  }

  /**
   * Whoever works from merged lines may do either side first, or each line on both; so one side may
   * not wait for the other. Nor does one merged stretch follow another at the same places: together
   * they would read as one, with all of one side before the other.
   */
  private List<PlacedStep> merge(List<List<PlacedStep>> runs, DependencyQuery waits) {
    List<PlacedStep> merged = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      if (i + 1 < runs.size() && areTwins(runs.get(i), runs.get(i + 1), waits)) {
        List<PlacedStep> both = zip(runs.get(i), runs.get(i + 1));
        boolean follows =
            !merged.isEmpty()
                && last(merged).places().equals(both.get(0).places())
                && last(merged).height() == both.get(0).height();
        if (!follows) {
          merged.addAll(both);
          i++;
          continue;
        }
      }
      merged.addAll(runs.get(i));
    }
    return merged;
  }

  private boolean areTwins(List<PlacedStep> one, List<PlacedStep> other, DependencyQuery waits) {
    return twins(one, other) && !waits.isHeldBack(other, one);
  }

  /** Final steps of the two sides, each with its twin wherever that stands. */
  static List<PlacedStep> pair(Resolved resolved, List<PlacedStep> finals) {
    SideMerger sides = new SideMerger(resolved);
    List<PlacedStep> paired = new ArrayList<>();
    List<PlacedStep> rest = new ArrayList<>(finals);
    while (!rest.isEmpty()) {
      PlannedStep one = rest.remove(0).step();
      Optional<PlacedStep> twin =
          rest.stream().filter(other -> sides.twins(one, other.step())).findFirst();
      twin.ifPresent(rest::remove);
      paired.add(
          twin.map(other -> leftFirst(one, other.step(), Moment.ON_THE_GROUND, Height.GROUND))
              .orElseGet(() -> PlacedStep.onTheGround(one, Moment.ON_THE_GROUND)));
    }
    return paired;
  }

  private boolean twins(List<PlacedStep> one, List<PlacedStep> other) {
    if (one.size() != other.size() || !isAsHigh(one.get(0), other.get(0))) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (!twins(one.get(i).step(), other.get(i).step())) {
        return false;
      }
    }
    return true;
  }

  private boolean twins(PlannedStep one, PlannedStep other) {
    return one.place().mirror().equals(Optional.of(other.place()))
        && !moves(one)
        && one.origin().equals(other.origin())
        && one.mirrored() == other.mirrored()
        && one.source().equals(other.source())
        && one.remarks().equals(other.remarks())
        && same(one.undo(), other.undo())
        && same(one.doUp(), other.doUp())
        && same(one.disturb(), other.disturb())
        && same(one.tighten(), other.tighten());
  }

  /**
   * The vehicle is down only once both sides are: no line behind that may be done on one before.
   */
  private boolean moves(PlannedStep step) {
    return Lifting.raises(resolved, step) || Lifting.lowers(resolved, step);
  }

  private boolean same(List<ItemAt> ours, List<ItemAt> theirs) {
    if (ours.size() != theirs.size()) {
      return false;
    }
    for (int i = 0; i < ours.size(); i++) {
      if (!sameThing(resolved, ours.get(i), theirs.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether two items are the same thing on the two sides, with the same values. */
  public static boolean sameThing(Resolved resolved, ItemAt one, ItemAt other) {
    Optional<Place> across = one.place().mirror();
    return one.item().equals(other.item())
        && across.equals(Optional.of(other.place()))
        && sameValues(resolved.thing(one), resolved.thing(other));
  }

  private static boolean sameValues(Bound one, Bound other) {
    if (one instanceof Bound.OfBook ours && other instanceof Bound.OfBook theirs) {
      return ours.values().equals(theirs.values())
          && ours.source().equals(theirs.source())
          && ours.overridden() == theirs.overridden();
    }
    return one instanceof Bound.OfCatalogue && other instanceof Bound.OfCatalogue;
  }

  private static List<PlacedStep> zip(List<PlacedStep> one, List<PlacedStep> other) {
    List<PlacedStep> zipped = new ArrayList<>();
    for (int i = 0; i < one.size(); i++) {
      PlacedStep line = one.get(i);
      zipped.add(leftFirst(line.step(), other.get(i).step(), line.moment(), line.height()));
    }
    return zipped;
  }

  /** Left before right, whichever side is put together first: neither twin waits for the other. */
  private static PlacedStep leftFirst(
      PlannedStep one, PlannedStep other, Moment moment, Height height) {
    return one.place().isLeft()
        ? new PlacedStep(one, Optional.of(other), moment, height)
        : new PlacedStep(other, Optional.of(one), moment, height);
  }
}
