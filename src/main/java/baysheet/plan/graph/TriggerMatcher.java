package baysheet.plan.graph;

import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Trigger;
import baysheet.books.Trigger.Condition;
import baysheet.books.Vocabulary;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which lines of a sheet set a caution or a rule off. Lines are kept by the names of what they
 * touch and with what: of some hundred triggers most ask for names that a job has nowhere.
 */
public final class TriggerMatcher {
  private static final List<Place> AXLES = List.of(Place.FRONT, Place.REAR);

  private final Resolved resolved;
  private final Set<String> traits;
  private final Set<String> states = new HashSet<>();

  /** Lines of a procedure's own work. */
  private final BitSet work = new BitSet();

  private final List<PlacedStep> lines;
  private final BitSet impact = new BitSet();
  private final BitSet withoutImpact = new BitSet();

  /** Lines by what they do. */
  private final Map<Condition, Named> done = new EnumMap<>(Condition.class);

  /** The first lines of each procedure, one for each place. */
  private final Map<Condition, Named> firsts = new EnumMap<>(Condition.class);

  /** Items in whose place a new part of a procedure goes on. */
  private final Set<ItemAt> renewed = new HashSet<>();

  private final Set<TaskId> begun = new HashSet<>();

  public TriggerMatcher(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
    this.traits = resolved.book().traits();
    resolved.job().condition().state().forEach(state -> states.add(state.value()));
    resolved.tasks().values().forEach(task -> renewed.addAll(task.renewed()));
    for (Condition condition : Condition.values()) {
      done.put(condition, new Named());
      firsts.put(condition, new Named());
    }
    for (int i = 0; i < lines.size(); i++) {
      // A check, a gate or a final torque does nothing that the steps before it have not done;
      // what it is done with counts, as for what the planner itself sets up.
      PlannedStep step = lines.get(i).step();
      if (step.phase().isWork()) {
        add(i, lines.get(i));
      } else if (!step.uses().isEmpty()) {
        work.set(i);
        withoutImpact.set(i);
        uses(i, step);
        places(i, lines.get(i).places());
        places(i, setAt(step.source()));
      }
    }
  }

  /** Numbers of lines by a name. */
  private static final class Named {
    private static final BitSet NONE = new BitSet();

    private final Map<String, BitSet> lines = new HashMap<>();

    void add(String name, int line) {
      lines.computeIfAbsent(name, key -> new BitSet()).set(line);
    }

    /**
     * Leaves of {@code found} what has one of the names asked for; all of it where none is. Whether
     * anything is left.
     */
    boolean narrow(BitSet found, List<String> asked) {
      if (!asked.isEmpty()) {
        found.and(asked.size() == 1 ? with(asked.get(0)) : withAny(asked));
      }
      return !found.isEmpty();
    }

    private BitSet with(String name) {
      return lines.getOrDefault(name, NONE);
    }

    private BitSet withAny(List<String> names) {
      BitSet any = new BitSet();
      names.forEach(name -> any.or(with(name)));
      return any;
    }
  }

  private void add(int line, PlacedStep laid) {
    PlannedStep step = laid.step();
    work.set(line);
    (step.impact() ? impact : withoutImpact).set(line);
    laid.undo().forEach(item -> add(Condition.UNDO, Condition.KIND, item, line));
    laid.disturb().forEach(item -> add(Condition.DISTURB, Condition.KIND, item, line));
    laid.doUp().forEach(item -> add(Condition.DO_UP, Condition.DO_UP_KIND, item, line));
    for (ItemAt item : laid.doUp()) {
      if (renewed.contains(item) || isSingleUse(item)) {
        kinds(Condition.RENEW_KIND, item, line);
      }
    }
    step.circuits().forEach(circuit -> add(Condition.CIRCUIT, circuit, line));
    for (BoundStep.BoundApply apply : step.apply()) {
      vocabulary().product(apply.product()).forEach(it -> add(Condition.APPLY, it, line));
    }
    uses(line, step);
    for (Statement figure : step.entries()) {
      if (figure instanceof Statement.Written written) {
        add(Condition.MEASURE, written.text(), line);
      }
    }
    procedure(line, laid);
    places(line, laid.places());
  }

  private void uses(int line, PlannedStep step) {
    step.uses().forEach(use -> tool(use.name(), line));
  }

  private void add(Condition condition, String name, int line) {
    done.get(condition).add(name, line);
  }

  private boolean isSingleUse(ItemAt item) {
    return resolved.thing(item) instanceof Bound.OfBook thing && thing.values().isSingleUse();
  }

  private void add(Condition byName, Condition byKind, ItemAt item, int line) {
    add(byName, item.item(), line);
    kinds(byKind, item, line);
  }

  private void kinds(Condition condition, ItemAt item, int line) {
    resolved.thing(item).kinds().forEach(kind -> add(condition, kind, line));
  }

  /** A wheel counts for its axle and its side too, and everything for the vehicle. */
  private void places(int line, List<Place> places) {
    for (Place place : places) {
      place.outward().forEach(whole -> add(Condition.AT, whole.word(), line));
    }
  }

  /** Where chocks and blocks go whose step is at the vehicle; round all wheels it is both axles. */
  private static List<Place> setAt(StepSource source) {
    if (source instanceof StepSource.Chocks chocks) {
      return chocks.where() == Place.VEHICLE ? AXLES : List.of(chocks.where());
    } else if (source instanceof StepSource.Blocks blocks) {
      return blocks.where() == Place.VEHICLE ? AXLES : List.of(blocks.where());
    }
    return List.of();
  }

  private void tool(String name, int line) {
    vocabulary().tool(name).forEach(it -> add(Condition.USES, it, line));
  }

  private Vocabulary vocabulary() {
    return resolved.catalogue().vocabulary();
  }

  /**
   * What a procedure asks for as a whole counts at its first line at each place: work at both ends
   * has its cautions at both. So do the tools that it names as a whole.
   */
  private void procedure(int line, PlacedStep laid) {
    Procedure procedure = resolved.tasks().get(laid.step().task()).procedure();
    String name = procedure.name().value();
    boolean first = false;
    for (PlannedStep step : laid.all()) {
      first |= begun.add(step.task());
    }
    if (first) {
      firsts.get(Condition.PROCEDURE).add(name, line);
      procedure.serves().ifPresent(it -> firsts.get(Condition.SERVES).add(it.value(), line));
      procedure.needs().uses().forEach(use -> tool(use.value().name(), line));
    }
    add(Condition.PROCEDURE, name, line);
    procedure.serves().ifPresent(role -> add(Condition.SERVES, role.value(), line));
  }

  /** Indices of the lines that one of the triggers finds, in order. */
  public List<Integer> lines(List<Trigger> triggers) {
    BitSet found = new BitSet();
    for (Trigger trigger : triggers) {
      if (suitsJob(trigger) && asksForDeed(trigger)) {
        add(trigger, found);
      }
    }
    return found.isEmpty() ? List.of() : found.stream().boxed().toList();
  }

  /** Adds the lines that a trigger finds. */
  private void add(Trigger trigger, BitSet all) {
    BitSet found = (BitSet) work.clone();
    // A trigger by procedure alone counts at the procedure's first line, not at each.
    Map<Condition, Named> procedures = trigger.asksForStep() ? done : firsts;
    for (Condition condition : trigger.asked().keySet()) {
      Named lines = (condition.isOfProcedure() ? procedures : done).get(condition);
      if (condition == Condition.WHERE_UNUSED) {
        found.andNot(whereUsed(trigger.names(condition)));
      } else if (!condition.isOfVehicle() && !lines.narrow(found, trigger.names(condition))) {
        return;
      }
    }
    trigger.impact().ifPresent(with -> found.andNot(with ? withoutImpact : impact));
    all.or(found);
  }

  /** Lines of which every place is one where a line uses one of the tools. */
  private BitSet whereUsed(List<String> tools) {
    Set<Place> places = EnumSet.noneOf(Place.class);
    done.get(Condition.USES).withAny(tools).stream()
        .forEach(line -> places.addAll(lines.get(line).places()));
    BitSet used = new BitSet();
    for (int i = 0; i < lines.size(); i++) {
      used.set(i, places.containsAll(lines.get(i).places()));
    }
    return used;
  }

  /** Whether the vehicle alone sets one of them off. */
  public boolean vehicle(List<Trigger> triggers) {
    for (Trigger trigger : triggers) {
      if (!asksForDeed(trigger) && suitsJob(trigger)) {
        return true;
      }
    }
    return false;
  }

  private static boolean asksForDeed(Trigger trigger) {
    return trigger.asksForStep() || trigger.asksForProcedure();
  }

  private boolean suitsJob(Trigger trigger) {
    List<String> without = trigger.names(Condition.WITHOUT);
    return any(trigger.names(Condition.TRAIT), traits)
        && any(trigger.names(Condition.STATE), states)
        && any(trigger.names(Condition.BAY), List.of(resolved.bay().equipment().word()))
        && (without.isEmpty() || !traits.containsAll(without));
  }

  /** No name asked for, or one of them there. */
  private static boolean any(List<String> asked, Collection<String> there) {
    return asked.isEmpty() || !Collections.disjoint(asked, there);
  }
}
