package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
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
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The fewest changes of height in which all steps of a graph can be done, and which step is done
 * before which change.
 *
 * <p>Raising and lowering stand in the graph themselves; what is counted is every change between
 * them. Only precedence holds steps back, so at each height whatever can be done there is done.
 * Only a wheel that is off or a jack under a part bars changes; so wherever some step waits for
 * another height, leaving these be is tried as well.
 */
final class HeightSchedule {
  /** States that are looked at; no job of the tests takes a hundredth of it. */
  private static final int STATES = 20_000;

  private final StepGraph graph;
  private final HeightNeeds needs;
  private final int[] topological;
  private final Set<TaskId> lifting = new LinkedHashSet<>();
  private final List<Visit> visits;
  private State furthest;
  private int states;

  /** Steps done at one height, or those that bring the vehicle there. */
  private record Visit(BitSet done, Height height, boolean lifts) {}

  private record State(BitSet done, Height height, List<Visit> visits, int changes) {
    State then(BitSet now, Height at, boolean lifts, int more) {
      BitSet fresh = (BitSet) now.clone();
      fresh.andNot(done);
      List<Visit> longer = new ArrayList<>(visits);
      Visit last = longer.isEmpty() ? null : longer.get(longer.size() - 1);
      if (last != null && !lifts && !last.lifts() && last.height() == at) {
        fresh.or(last.done());
        longer.remove(longer.size() - 1);
      }
      if (!fresh.isEmpty()) {
        longer.add(new Visit(fresh, at, lifts));
      }
      return new State(now, at, longer, changes + more);
    }
  }

  private record Seen(BitSet done, Height height) {}

  private HeightSchedule(StepGraph graph) {
    this.graph = graph;
    this.needs = graph.heights();
    this.topological = graph.topological();
    needs.steps().forEach(need -> need.lifting().ifPresent(lifting::add));
    this.visits = search();
  }

  /** Of a graph without loops. */
  static HeightSchedule of(StepGraph graph) {
    return new HeightSchedule(graph);
  }

  /** States looked at. */
  int states() {
    return states;
  }

  /** Whether all steps can be done, and the changes that were found are the fewest. */
  boolean isProven() {
    return states <= STATES;
  }

  /**
   * A step that cannot be done at any height to which the vehicle can be brought; empty when all
   * can.
   */
  Optional<Integer> blocked() {
    if (furthest.done().cardinality() == graph.size()) {
      return Optional.empty();
    }
    BitSet done = furthest.done();
    return IntStream.of(topological)
        .filter(node -> graph.isDraft(node) && !done.get(node) && isReady(done, node))
        .boxed()
        .min(Comparator.comparing(node -> needs.steps().get(node).lifting().isPresent()));
  }

  /** What is off and bars the way to the ground for a blocked step. */
  Set<ItemAt> barring() {
    return inTheWay(furthest.done());
  }

  private List<Visit> search() {
    Deque<State> open = new ArrayDeque<>();
    Set<Seen> seen = new HashSet<>();
    State start = new State(new BitSet(graph.size()), Height.GROUND, List.of(), 0);
    furthest = start;
    worked(start).forEach(open::addLast);
    while (!open.isEmpty()) {
      State state = open.removeFirst();
      if (!seen.add(new Seen(state.done(), state.height()))) {
        continue;
      }
      if (state.done().cardinality() > furthest.done().cardinality()) {
        furthest = state;
      }
      if (state.done().cardinality() == graph.size()) {
        furthest = state;
        return state.visits();
      }
      if (++states % STATES == 0) {
        open.clear();
        seen.clear();
        state = furthest;
      }
      List<State> lifted = lifted(state);
      Collections.reverse(lifted);
      lifted.forEach(open::addFirst);
      changed(state).forEach(open::addLast);
    }
    return furthest.visits();
  }

  /** All that can be done where the vehicle is; and less where that could bar another height. */
  private List<State> worked(State state) {
    Height height = state.height();
    IntPredicate here = node -> isDoneBetween(state, node) && at(node).contains(height);
    BitSet all = closure(state.done(), here);
    List<State> next = new ArrayList<>(List.of(state.then(all, height, false, 0)));
    boolean waits =
        IntStream.range(0, needs.steps().size())
            .anyMatch(node -> !all.get(node) && !at(node).contains(height));
    if (waits) {
      for (boolean wheels : new boolean[] {true, false}) {
        BitSet less = closure(state.done(), node -> here.test(node) && isFree(node, wheels));
        next.add(state.then(less, height, false, 0));
      }
    }
    return next;
  }

  private Set<Height> at(int node) {
    return needs.steps().get(node).at();
  }

  /** Steps that raise or lower come in one go; one that is left over then comes like others. */
  private boolean isDoneBetween(State state, int node) {
    return needs
        .steps()
        .get(node)
        .lifting()
        .map(task -> isOver(state.done(), task, closes(node)))
        .orElse(true);
  }

  private boolean isOver(BitSet done, TaskId task, boolean closing) {
    return IntStream.range(0, needs.steps().size())
        .filter(node -> closing ? lowers(node) : raises(node))
        .filter(node -> needs.steps().get(node).lifting().equals(Optional.of(task)))
        .allMatch(done::get);
  }

  private boolean raises(int node) {
    return !needs.steps().get(node).raises().isEmpty();
  }

  private boolean lowers(int node) {
    return !needs.steps().get(node).lowers().isEmpty();
  }

  private boolean closes(int node) {
    return graph.drafts().get(node).phase() == Sheet.Phase.CLOSE;
  }

  private boolean isFree(int node, boolean wheels) {
    Set<ItemAt> off = needs.steps().get(node).off();
    return off.isEmpty() || (wheels && off.stream().noneMatch(needs.jacked()::contains));
  }

  /** Raising or lowering by a step of the graph, where one can be done now. */
  private List<State> lifted(State state) {
    List<State> next = new ArrayList<>();
    Set<ItemAt> up = up(state.done());
    for (TaskId task : lifting) {
      if (!isOver(state.done(), task, false)
          && (state.height() == Height.GROUND || !up.isEmpty())) {
        block(state, task, false).ifPresent(next::add);
      } else if (!isOver(state.done(), task, true) && state.height() != Height.GROUND) {
        block(state, task, true).ifPresent(next::add);
      }
    }
    List<State> worked = new ArrayList<>();
    next.forEach(one -> worked.addAll(worked(one)));
    return worked;
  }

  private Optional<State> block(State state, TaskId task, boolean closing) {
    BitSet done =
        closure(
            state.done(),
            node ->
                needs.steps().get(node).lifting().equals(Optional.of(task))
                    && closes(node) == closing);
    boolean barred =
        closing
            && IntStream.range(0, needs.steps().size())
                .filter(node -> done.get(node) && !state.done().get(node))
                .mapToObj(node -> needs.steps().get(node).lowers())
                .flatMap(Set::stream)
                .anyMatch(end -> needs.bars(end, inTheWay(done)));
    boolean jacked = inTheWay(done).stream().anyMatch(needs.jacked()::contains);
    if (barred || jacked || !isOver(done, task, closing)) {
      return Optional.empty();
    }
    Height height = up(done).isEmpty() ? Height.GROUND : closing ? state.height() : needs.raised();
    // A wheel or a jack that must be on or gone when one end comes down is so before that.
    boolean apart =
        height != state.height() || needs.steps().stream().anyMatch(need -> !need.off().isEmpty());
    return Optional.of(state.then(done, height, apart, 0));
  }

  /** Another height, one change away. */
  private List<State> changed(State state) {
    List<State> next = new ArrayList<>();
    Set<ItemAt> up = up(state.done());
    Set<ItemAt> off = inTheWay(state.done());
    for (Height height : up.isEmpty() ? Set.<Height>of() : needs.bay()) {
      if (height != state.height() && HeightPath.isOneStep(state.height(), height)) {
        boolean barred = off.stream().anyMatch(needs.jacked()::contains);
        boolean wheel =
            height == Height.GROUND && up.stream().anyMatch(end -> needs.bars(end, off));
        if (!barred && !wheel) {
          next.addAll(worked(state.then(state.done(), height, false, 1)));
        }
      }
    }
    return next;
  }

  /** What the vehicle does not stand on because it is up. */
  private Set<ItemAt> up(BitSet done) {
    Set<ItemAt> up = new LinkedHashSet<>();
    for (int node : topological) {
      if (graph.isDraft(node) && done.get(node)) {
        up.addAll(needs.steps().get(node).raises());
        up.removeAll(needs.steps().get(node).lowers());
      }
    }
    return up;
  }

  private Set<ItemAt> inTheWay(BitSet done) {
    Set<ItemAt> off = new HashSet<>();
    for (int node : topological) {
      if (graph.isDraft(node) && done.get(node)) {
        off.addAll(needs.steps().get(node).off());
        off.removeAll(needs.steps().get(node).on());
      }
    }
    return off;
  }

  private boolean isReady(BitSet done, int node) {
    return graph.before().get(node).stream().allMatch(done::get);
  }

  /** What is done once all is that can be of some steps, milestones passed. */
  private BitSet closure(BitSet done, IntPredicate steps) {
    BitSet all = (BitSet) done.clone();
    for (int node : topological) {
      if (!all.get(node) && (!graph.isDraft(node) || steps.test(node)) && isReady(all, node)) {
        all.set(node);
      }
    }
    return all;
  }

  /**
   * The graph with what the changes of height add to its order: nothing of a later visit comes
   * before anything of an earlier one, but for steps that suit the heights of both.
   */
  StepGraph ordered() {
    List<Set<Integer>> before = new ArrayList<>();
    graph.before().forEach(earlier -> before.add(new LinkedHashSet<>(earlier)));
    for (int visit = 1; visit < visits.size(); visit++) {
      int boundary = before.size();
      before.add(new LinkedHashSet<>(visit > 1 ? Set.of(boundary - 1) : Set.of()));
      last(visit - 1).filter(graph::isDraft).forEach(before.get(boundary)::add);
      visits.get(visit).done().stream()
          .filter(graph::isDraft)
          .forEach(node -> before.get(node).add(boundary));
    }
    return graph.with(before);
  }

  /** The steps that must be done by the end of a visit, and not by that of an earlier one. */
  private IntStream last(int visit) {
    return IntStream.rangeClosed(0, visit)
        .flatMap(
            earlier ->
                visits.get(earlier).done().stream()
                    .filter(node -> graph.isDraft(node) && latest(node, earlier) == visit));
  }

  private int latest(int node, int visit) {
    HeightNeeds.Need need = needs.steps().get(node);
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
