package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.resolve.ItemAt;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The height at each step of an order, with as few changes as its steps allow.
 *
 * @param heights of a step that raises or lowers, the height that it leads to
 * @param changes times the height changes beside those steps
 */
record HeightPath(List<Height> heights, int changes) {
  /** The heights on the way from one to another, each one step away from that before it. */
  static List<Height> between(Height from, Height to) {
    if (from == to) {
      return List.of();
    }
    return isOneStep(from, to) ? List.of(to) : List.of(Height.WHEELS_CLEAR, to);
  }

  /** From the ground a lift first lifts the wheels clear, so that the pads are tried. */
  static boolean isOneStep(Height from, Height to) {
    return from != Height.GROUND || to != Height.WORKING;
  }

  private HeightPath then(Height height, int more) {
    List<Height> longer = new ArrayList<>(heights);
    longer.add(height);
    return new HeightPath(longer, changes + more);
  }

  /** Along an order of the nodes of a graph. */
  static HeightPath along(List<Integer> order, HeightNeeds needs) {
    // The highest first: of as many changes those where what can be done at either is done high.
    Map<Height, HeightPath> ways = new TreeMap<>(Comparator.reverseOrder());
    ways.put(Height.GROUND, new HeightPath(List.of(), 0));
    Set<ItemAt> up = new HashSet<>();
    Set<ItemAt> off = new HashSet<>();
    for (int node : order) {
      HeightNeeds.Need need = needs.steps().get(node);
      up.addAll(need.raises());
      boolean jacked = off.stream().anyMatch(needs.jacked()::contains);
      Set<Height> reachable = EnumSet.copyOf(needs.bay());
      if (up.stream().anyMatch(end -> needs.bars(end, off))) {
        reachable.remove(Height.GROUND);
      }
      up.removeAll(need.lowers());
      Map<Height, HeightPath> next = new TreeMap<>(Comparator.reverseOrder());
      for (Map.Entry<Height, HeightPath> way : ways.entrySet()) {
        if (need.lifting().isPresent()) {
          keep(next, moved(need, way.getKey(), way.getValue(), !up.isEmpty(), needs));
          continue;
        }
        for (Height height : need.at()) {
          int changes = between(way.getKey(), height).size();
          boolean moves = !up.isEmpty() && !jacked && reachable.contains(height);
          if (changes == 0 || moves) {
            keep(next, way.getValue().then(height, changes));
          }
        }
      }
      off.addAll(need.off());
      off.removeAll(need.on());
      ways = next;
    }
    return ways.values().stream()
        .min(Comparator.comparing(HeightPath::changes))
        .orElseThrow(() -> new IllegalStateException("no heights along " + order));
  }

  /**
   * Behind a step that raises or lowers or belongs to that. What was brought to the ground between
   * is lifted clear before it is lowered for good.
   */
  private static HeightPath moved(
      HeightNeeds.Need need, Height from, HeightPath way, boolean up, HeightNeeds needs) {
    if (!need.raises().isEmpty()) {
      return way.then(needs.raised(), 0);
    }
    if (need.lowers().isEmpty()) {
      return way.then(from, 0);
    }
    boolean down = from == Height.GROUND;
    return way.then(up ? (down ? needs.raised() : from) : Height.GROUND, down ? 1 : 0);
  }

  private static void keep(Map<Height, HeightPath> ways, HeightPath way) {
    ways.merge(
        way.heights().get(way.heights().size() - 1),
        way,
        (one, other) -> other.changes() < one.changes() ? other : one);
  }
}
