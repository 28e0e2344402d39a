package baysheet.plan.graph;

import baysheet.books.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The fewest visits to places in which all steps of a graph can be done. Used once.
 *
 * <p>Only precedence holds steps back, so a visit does whatever can be done at its place; a state
 * is the set of nodes that are done. Two facts keep the search small:
 *
 * <ul>
 *   <li><b>Lower bound.</b> A path through the steps still to do that enters a place <i>k</i> times
 *       needs <i>k</i> visits to it. Every visit is to one place, so the largest such <i>k</i> of
 *       each place may be added up.
 *   <li><b>Dominance.</b> The next visit to a place can do no step that waits for another step of
 *       the same place through a third one elsewhere. When all others of the place can be done now,
 *       going there now is best: any order may be changed to begin with that visit and is no longer
 *       for it.
 * </ul>
 *
 * The states looked at are counted. Beyond the budget the search gives up, and {@link
 * #goodVisits()} finds a good order without proof.
 */
final class VisitSearch {
  /** States kept at each depth of the search without proof. */
  static final int BEAM = 24;

  private final StepGraph graph;
  private final List<List<Integer>> after;
  private final int[] topological;

  /** For each place the visits still needed from a node on, by place and node. */
  private final int[][] needed;

  /** For each state, visits in which it was shown that it cannot be finished. */
  private final Map<BitSet, Integer> failed = new HashMap<>();

  /** For each state, visits in which it can be finished. */
  private final Map<BitSet, Integer> finished = new HashMap<>();

  // Of the state looked at last: the places of what a node waits for; and of those the ones behind
  // which the vehicle is left and come back to before the node.
  private final int[] waitsFor;
  private final int[] leftBefore;

  private final int budget;
  private int states;

  /**
   * @param graph a graph without loops
   * @param budget states that may be looked at
   */
  VisitSearch(StepGraph graph, int budget) {
    this.graph = graph;
    this.after = StepGraph.after(graph.before());
    this.topological = graph.topological();
    this.needed = needed();
    this.waitsFor = new int[graph.size()];
    this.leftBefore = new int[graph.size()];
    this.budget = budget;
  }

  /** States looked at so far. */
  int states() {
    return states;
  }

  private boolean isExhausted() {
    return states > budget;
  }

  /** The fewest visits that do everything; empty when the budget does not suffice to know. */
  Optional<Integer> fewest() {
    int visits = lowerBound(new BitSet());
    while (!canFinish(new BitSet(), visits)) {
      if (isExhausted()) {
        return Optional.empty();
      }
      visits++;
    }
    return Optional.of(visits);
  }

  /** Whether a state can be finished in so many visits; no when the budget is used up. */
  boolean canFinish(BitSet done, int visits) {
    if (isDone(done) || finished.getOrDefault(done, visits + 1) <= visits) {
      return true;
    }
    if (isExhausted() || failed.getOrDefault(done, -1) >= visits) {
      return false;
    }
    states++;
    boolean can = lowerBound(done) <= visits && anyFinishes(next(done), visits - 1);
    if (can) {
      finished.merge(done, visits, Math::min);
    } else if (!isExhausted()) {
      failed.merge(done, visits, Math::max);
    }
    return can;
  }

  private boolean isDone(BitSet done) {
    return done.nextClearBit(0) >= graph.drafts().size();
  }

  private boolean anyFinishes(Collection<BitSet> next, int visits) {
    for (BitSet state : next) {
      if (canFinish(state, visits)) {
        return true;
      }
    }
    return false;
  }

  /** What is done after each visit worth trying; only one where that dominates all others. */
  private Collection<BitSet> next(BitSet done) {
    lookAt(done);
    Map<Integer, BitSet> next = new LinkedHashMap<>();
    int held = 0;
    int open = 0;
    for (int node : topological) {
      if (!done.get(node) && graph.isDraft(node)) {
        int place = place(node);
        boolean now = (waitsFor[node] & ~(1 << place)) == 0;
        open |= now ? 1 << place : 0;
        held |= !now && (leftBefore[node] >> place & 1) == 0 ? 1 << place : 0;
      }
    }
    int best = open & ~held;
    for (int place = 0; place < needed.length; place++) {
      boolean isBest = best == 0 || Integer.numberOfTrailingZeros(best) == place;
      if ((open >> place & 1) == 1 && isBest) {
        next.put(place, visited(done, place));
      }
    }
    return next.values();
  }

  /** What is done after a visit to a place; of the state looked at last. */
  private BitSet visited(BitSet done, int place) {
    BitSet all = (BitSet) done.clone();
    for (int node : topological) {
      boolean here = !graph.isDraft(node) || place(node) == place;
      if (here && !done.get(node) && (waitsFor[node] & ~(1 << place)) == 0) {
        all.set(node);
      }
    }
    return all;
  }

  /** Sets for each node still to do which places it waits for. */
  private void lookAt(BitSet done) {
    for (int node : topological) {
      int waits = 0;
      int left = 0;
      for (int earlier : done.get(node) ? Set.<Integer>of() : graph.before().get(node)) {
        if (!done.get(earlier)) {
          int here = graph.isDraft(earlier) ? 1 << place(earlier) : 0;
          waits |= waitsFor[earlier] | here;
          left |= leftBefore[earlier] | (here == 0 ? 0 : waitsFor[earlier] & ~here);
        }
      }
      waitsFor[node] = waits;
      leftBefore[node] = left;
    }
  }

  /** Visits that are needed in any order, from a state on. */
  private int lowerBound(BitSet done) {
    int[] most = new int[needed.length];
    for (int node = done.nextClearBit(0); node < graph.size(); node = done.nextClearBit(node + 1)) {
      for (int place = 0; place < most.length; place++) {
        most[place] = Math.max(most[place], needed[place][node]);
      }
    }
    return Arrays.stream(most).sum();
  }

  private int place(int node) {
    return graph.drafts().get(node).place().ordinal();
  }

  /** For each place and node the most visits on a path from that node on. */
  private int[][] needed() {
    int places = Place.values().length;
    int[][] fromElsewhere = new int[places][graph.size()];
    int[] onStay = new int[graph.size()];
    for (int place = 0; place < places; place++) {
      for (int i = topological.length - 1; i >= 0; i--) {
        int node = topological[i];
        int stay = 0;
        int come = 0;
        for (int later : after.get(node)) {
          stay = Math.max(stay, onStay[later]);
          come = Math.max(come, fromElsewhere[place][later]);
        }
        boolean here = graph.isDraft(node) && place(node) == place;
        boolean milestone = !graph.isDraft(node);
        fromElsewhere[place][node] = here ? stay + 1 : come;
        onStay[node] = here || milestone ? stay : come;
      }
    }
    return fromElsewhere;
  }

  /** A state on the way of the search without proof. */
  private record Reached(BitSet done, int bound, List<Place> visits) {}

  /**
   * The places of a good order, one a visit: a beam search, which keeps at each depth the states
   * with the smallest lower bound and of those the ones with most done.
   */
  List<Place> goodVisits() {
    List<Reached> beam = List.of(new Reached(new BitSet(), 0, List.of()));
    while (true) {
      Map<BitSet, Reached> next = new LinkedHashMap<>();
      for (Reached from : beam) {
        if (isDone(from.done())) {
          return from.visits();
        }
        states++;
        for (BitSet done : next(from.done())) {
          next.computeIfAbsent(done, key -> reached(from, key));
        }
      }
      beam =
          next.values().stream()
              .sorted(
                  Comparator.comparingInt(Reached::bound)
                      .thenComparing(one -> -one.done().cardinality()))
              .limit(BEAM)
              .toList();
    }
  }

  private Reached reached(Reached from, BitSet done) {
    BitSet fresh = (BitSet) done.clone();
    fresh.andNot(from.done());
    List<Place> visits = new ArrayList<>(from.visits());
    fresh.stream()
        .filter(graph::isDraft)
        .limit(1)
        .forEach(node -> visits.add(graph.drafts().get(node).place()));
    return new Reached(done, lowerBound(done), visits);
  }
}
