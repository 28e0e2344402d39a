package baysheet.plan;

import baysheet.books.Catalogue.Trigger;
import baysheet.books.Procedure;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which lines of a sheet set a caution or a rule off. Lines are kept by the names of what they
 * touch and with what: of some hundred triggers most ask for names that a job has nowhere.
 */
final class Triggers {
  private final Resolved resolved;
  private final Set<String> traits;
  private final Set<String> states = new HashSet<>();

  /** Lines of a procedure's own work. */
  private final BitSet work = new BitSet();

  private final BitSet impact = new BitSet();
  private final BitSet withoutImpact = new BitSet();
  private final Named undo = new Named();
  private final Named doUp = new Named();
  private final Named disturb = new Named();
  private final Named kinds = new Named();
  private final Named circuits = new Named();
  private final Named products = new Named();
  private final Named tools = new Named();
  private final Named procedures = new Named();

  /** The first line of each procedure. */
  private final Named firsts = new Named();

  Triggers(Resolved resolved, List<Laid> lines) {
    this.resolved = resolved;
    this.traits = resolved.book().traits();
    resolved.job().state().forEach(state -> states.add(state.value()));
    for (int i = 0; i < lines.size(); i++) {
      // A check, a gate or a final torque does nothing that the steps before it have not done.
      if (lines.get(i).step().phase().isWork()) {
        add(i, lines.get(i));
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

    boolean has(String name) {
      return lines.containsKey(name);
    }

    /**
     * Leaves of {@code found} what has one of the names asked for; all of it where none is. Whether
     * anything is left.
     */
    boolean narrow(BitSet found, List<String> asked) {
      if (!asked.isEmpty()) {
        BitSet any = new BitSet();
        for (String name : asked) {
          any.or(lines.getOrDefault(name, NONE));
        }
        found.and(any);
      }
      return !found.isEmpty();
    }
  }

  private void add(int line, Laid laid) {
    Draft step = laid.step();
    work.set(line);
    (step.impact() ? impact : withoutImpact).set(line);
    laid.undo().forEach(item -> add(undo, item, line));
    laid.doUp().forEach(item -> doUp.add(item.item(), line));
    laid.disturb().forEach(item -> add(disturb, item, line));
    step.circuits().forEach(circuit -> circuits.add(circuit, line));
    for (BoundStep.BoundApply apply : step.apply()) {
      products.add(apply.product(), line);
    }
    step.uses().forEach(use -> tools.add(use.name(), line));
    procedure(line, step);
  }

  /** What comes off or is disturbed counts by its kinds as well. */
  private void add(Named by, ItemAt item, int line) {
    by.add(item.item(), line);
    resolved.thing(item).kinds().forEach(kind -> kinds.add(kind, line));
  }

  /** The tools that a procedure names as a whole count at its first line. */
  private void procedure(int line, Draft step) {
    String name = step.task().procedure();
    if (!firsts.has(name)) {
      firsts.add(name, line);
      for (Located<Procedure.Use> use : resolved.tasks().get(step.task()).procedure().uses()) {
        tools.add(use.value().name(), line);
      }
    }
    procedures.add(name, line);
  }

  /** Indices of the lines that one of the triggers finds, in order. */
  List<Integer> lines(List<Trigger> triggers) {
    BitSet found = new BitSet();
    for (Trigger trigger : triggers) {
      if (suitsJob(trigger) && asksForStep(trigger)) {
        add(trigger, found);
      }
    }
    return found.isEmpty() ? List.of() : found.stream().boxed().toList();
  }

  /** Adds the lines that a trigger finds. */
  private void add(Trigger trigger, BitSet all) {
    BitSet found = (BitSet) work.clone();
    // A trigger by procedure alone counts at the procedure's first line, not at each.
    Named places = onlyProcedure(trigger) ? firsts : procedures;
    if (kinds.narrow(found, trigger.kind())
        && undo.narrow(found, trigger.undo())
        && doUp.narrow(found, trigger.doUp())
        && disturb.narrow(found, trigger.disturb())
        && circuits.narrow(found, trigger.circuit())
        && products.narrow(found, trigger.apply())
        && tools.narrow(found, trigger.uses())
        && places.narrow(found, trigger.procedure())) {
      trigger.impact().ifPresent(with -> found.andNot(with ? withoutImpact : impact));
      all.or(found);
    }
  }

  /** Whether the vehicle alone sets one of them off. */
  boolean vehicle(List<Trigger> triggers) {
    for (Trigger trigger : triggers) {
      if (!asksForStep(trigger) && suitsJob(trigger)) {
        return true;
      }
    }
    return false;
  }

  private static boolean asksForStep(Trigger trigger) {
    return !trigger.procedure().isEmpty() || !onlyProcedure(trigger);
  }

  private boolean suitsJob(Trigger trigger) {
    return any(trigger.trait(), traits)
        && any(trigger.state(), states)
        && (trigger.without().isEmpty() || !traits.containsAll(trigger.without()));
  }

  private static boolean onlyProcedure(Trigger trigger) {
    return trigger.impact().isEmpty()
        && trigger.undo().isEmpty()
        && trigger.doUp().isEmpty()
        && trigger.disturb().isEmpty()
        && trigger.kind().isEmpty()
        && trigger.circuit().isEmpty()
        && trigger.apply().isEmpty()
        && trigger.uses().isEmpty();
  }

  /** No name asked for, or one of them there. */
  private static boolean any(List<String> asked, Collection<String> there) {
    return asked.isEmpty() || !Collections.disjoint(asked, there);
  }
}
