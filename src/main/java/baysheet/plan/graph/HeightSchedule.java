package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.plan.graph.HeightMoves.State;
import baysheet.plan.graph.HeightMoves.Visit;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The fewest changes of height in which all steps of a graph can be done, and which step is done
 * before which change.
 *
 * <p>Raising and lowering stand in the graph themselves; what is counted is every change between
 * them. Only precedence holds steps back, so at each height whatever can be done there is done.
 * Only a wheel that is off or a jack under a part bars changes; so wherever some step waits for
 * another height, leaving these be is tried as well.
 *
 * <p>Where several ends are up together, each sequence of raising and lowering them that takes the
 * fewest changes is a schedule of its own.
 *
 * <p>The states looked at are counted. When the budget is used up, the search goes on from the
 * state in which most steps are done, as long as that brings it further; what it finds then is not
 * proven to be the fewest.
 */
final class HeightSchedule {
  /**
   * Nodes that a search may look at, over all its states, until it goes on from the best of them.
   */
  private static final int NODES = 1_000_000;

  /** Times it goes on so; each takes the whole budget again. */
  private static final int ROUNDS = 4;

  /** Sequences of raising and lowering that are kept; front and rear have six. */
  private static final int MOST_WAYS = 24;

  private final StepGraph graph;
  private final HeightMoves moves;
  private final List<List<Visit>> ways;
  private State furthest;
  private int states;
  private boolean proven = true;

  private record Seen(BitSet done, Height height, List<TaskId> lifted) {}

  private HeightSchedule(StepGraph graph, int budget) {
    this.graph = graph;
    this.moves = new HeightMoves(graph);
    this.ways = search(budget);
  }

  /** Of a graph without loops. */
  static HeightSchedule of(StepGraph graph) {
    return of(graph, budget(graph));
  }

  /** States that are looked at: the larger a graph is, the longer each of them takes. */
  static int budget(StepGraph graph) {
    return NODES / Math.max(1, graph.size());
  }

  /** The same with another budget of states. */
  static HeightSchedule of(StepGraph graph, int budget) {
    return new HeightSchedule(graph, budget);
  }

  /** States looked at. */
  int states() {
    return states;
  }

  /**
   * Whether the search looked at all states that matter: no schedule has fewer changes, and where
   * none was found, there is none.
   */
  boolean isProven() {
    return proven;
  }

  /**
   * A step that cannot be done at any height to which the vehicle can be brought, or for which the
   * search found no way to bring it there; empty when all can.
   */
  Optional<Integer> blocked() {
    if (!ways.isEmpty()) {
      return Optional.empty();
    }
    return moves.ready(furthest.done()).boxed().min(Comparator.comparing(this::lifts));
  }

  private boolean lifts(int node) {
    return graph.heights().steps().get(node).lifting().isPresent();
  }

  /** What is off and bars the way to the ground for a blocked step. */
  Set<ItemAt> barring() {
    return moves.inTheWay(furthest.done());
  }

  /** The visits of each sequence of raising and lowering with the fewest changes. */
  private List<List<Visit>> search(int budget) {
    furthest = new State(new BitSet(graph.size()), Height.GROUND, List.of(), List.of(), 0);
    List<List<Visit>> found = search(moves.worked(furthest), budget);
    int done = 0;
    for (int round = 1; found.isEmpty() && !proven && round < ROUNDS; round++) {
      if (furthest.done().cardinality() > done) {
        done = furthest.done().cardinality();
        found = search(List.of(furthest), budget);
      }
    }
    return found;
  }

  /** The same from some states on, until the budget is used up. */
  private List<List<Visit>> search(List<State> from, int budget) {
    List<List<Visit>> found = new ArrayList<>();
    Set<Seen> seen = new HashSet<>();
    // Changes of the states never fall along the queue.
    Deque<State> open = new ArrayDeque<>(from);
    while (!open.isEmpty() && (found.isEmpty() || open.peek().changes() == furthest.changes())) {
      if (seen.size() == budget || found.size() == MOST_WAYS) {
        proven = false;
        return found;
      }
      State state = open.remove();
      if (seen.add(new Seen(state.done(), state.height(), state.lifted()))) {
        states++;
        boolean further = state.done().cardinality() > furthest.done().cardinality();
        furthest = further ? state : furthest;
        if (state.done().cardinality() == graph.size()) {
          found.add(state.visits());
        }
        List<State> lifted = moves.lifted(state);
        Collections.reverse(lifted);
        lifted.forEach(open::addFirst);
        moves.changed(state).forEach(open::addLast);
      }
    }
    return found;
  }

  /**
   * The graph with what the changes of height add to its order, for each schedule: nothing of a
   * later visit comes before anything of an earlier one, but for steps that suit the heights of
   * both.
   */
  List<StepGraph> ordered() {
    return ways.stream().map(this::ordered).toList();
  }

  private StepGraph ordered(List<Visit> visits) {
    List<Set<Integer>> before = new ArrayList<>();
    graph.before().forEach(earlier -> before.add(new LinkedHashSet<>(earlier)));
    for (int visit = 1; visit < visits.size(); visit++) {
      int boundary = before.size();
      before.add(new LinkedHashSet<>(visit > 1 ? Set.of(boundary - 1) : Set.of()));
      last(visits, visit - 1).filter(graph::isDraft).forEach(before.get(boundary)::add);
      visits.get(visit).done().stream()
          .filter(graph::isDraft)
          .forEach(node -> before.get(node).add(boundary));
    }
    return graph.with(before);
  }

  /** The steps that must be done by the end of a visit, and not by that of an earlier one. */
  private IntStream last(List<Visit> visits, int visit) {
    return IntStream.rangeClosed(0, visit)
        .flatMap(
            earlier ->
                visits.get(earlier).done().stream()
                    .filter(node -> graph.isDraft(node) && latest(visits, node, earlier) == visit));
  }

  private int latest(List<Visit> visits, int node, int visit) {
    HeightNeeds.Need need = graph.heights().steps().get(node);
    boolean anytime = need.lifting().isEmpty() && need.off().isEmpty() && need.on().isEmpty();
    int latest = visit;
    while (anytime
        && latest + 1 < visits.size()
        && need.at().contains(visits.get(latest + 1).height())) {
      latest++;
    }
    return latest;
  }
}
