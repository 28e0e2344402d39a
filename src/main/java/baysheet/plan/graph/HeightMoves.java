package baysheet.plan.graph;

import baysheet.books.Height;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** What can be done next with a vehicle at some height, and with some steps of a graph done. */
final class HeightMoves {
  private final StepGraph graph;
  private final HeightNeeds needs;
  private final int[] topological;
  private final Set<TaskId> lifting = new LinkedHashSet<>();

  HeightMoves(StepGraph graph) {
    this.graph = graph;
    this.needs = graph.heights();
    this.topological = graph.topological();
    needs.steps().forEach(need -> need.lifting().ifPresent(lifting::add));
  }

  /** Steps done at one height, or those that bring the vehicle there. */
  record Visit(BitSet done, Height height, boolean lifts) {}

  /**
   * A state of the search.
   *
   * @param lifted the tasks that raised or lowered the vehicle, in order
   */
  record State(BitSet done, Height height, List<Visit> visits, List<TaskId> lifted, int changes) {
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
      return new State(now, at, longer, lifted, changes + more);
    }

    State lifted(TaskId task) {
      List<TaskId> longer = new ArrayList<>(lifted);
      longer.add(task);
      return new State(done, height, visits, longer, changes);
    }
  }

  /** All that can be done where the vehicle is; and less where that could bar another height. */
  List<State> worked(State state) {
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
  List<State> lifted(State state) {
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
    return Optional.of(state.then(done, height, apart, 0).lifted(task));
  }

  /** Another height, one change away. */
  List<State> changed(State state) {
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

  /** Steps that wait for nothing but a height. */
  IntStream ready(BitSet done) {
    return IntStream.of(topological)
        .filter(node -> graph.isDraft(node) && !done.get(node) && isReady(done, node));
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

  /** Wheels that are off, and jacks that are under a part. */
  Set<ItemAt> inTheWay(BitSet done) {
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
    for (int earlier : graph.before().get(node)) {
      if (!done.get(earlier)) {
        return false;
      }
    }
    return true;
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
}
