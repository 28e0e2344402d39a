package baysheet.plan;

import baysheet.books.Catalogue.Trigger;
import baysheet.books.Procedure;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Which lines of a sheet set a caution or a rule off. */
final class Triggers {
  private final List<Touched> lines;
  private final Set<String> traits;
  private final Set<String> states;

  Triggers(Resolved resolved, List<Laid> lines) {
    this.traits = resolved.book().traits();
    this.states = new HashSet<>(values(resolved.job().state()));
    this.lines = touched(resolved, lines);
  }

  /**
   * What a line touches and with what, by name. Worked out once, for each line is held against some
   * hundred triggers.
   *
   * @param first whether it is its procedure's first line
   */
  private record Touched(
      Draft step,
      boolean first,
      List<String> undo,
      List<String> doUp,
      List<String> disturb,
      Set<String> kinds,
      List<String> products,
      List<String> tools) {
    static Touched of(Laid line, boolean first, Resolved resolved) {
      Set<String> kinds = new HashSet<>();
      line.undo().forEach(item -> kinds.addAll(resolved.thing(item).kinds()));
      line.disturb().forEach(item -> kinds.addAll(resolved.thing(item).kinds()));
      return new Touched(
          line.step(),
          first,
          names(line.undo()),
          names(line.doUp()),
          names(line.disturb()),
          kinds,
          line.step().apply().stream().map(BoundStep.BoundApply::product).toList(),
          toolsAt(line.step(), first, resolved));
    }
  }

  private static List<Touched> touched(Resolved resolved, List<Laid> lines) {
    List<Touched> touched = new ArrayList<>();
    Set<String> met = new HashSet<>();
    for (Laid line : lines) {
      boolean does = line.step().phase().isWork();
      // What the planner adds belongs to no task of the job, and is nobody's first line.
      boolean first = does && !met.contains(line.step().task().procedure());
      touched.add(Touched.of(line, first, resolved));
      if (does) {
        met.add(line.step().task().procedure());
      }
    }
    return touched;
  }

  /** The step's tools; those that its procedure names as a whole count at its first line. */
  private static List<String> toolsAt(Draft step, boolean first, Resolved resolved) {
    Stream<Procedure.Use> uses = step.uses().stream();
    if (first) {
      List<Located<Procedure.Use>> whole = resolved.tasks().get(step.task()).procedure().uses();
      uses = Stream.concat(uses, whole.stream().map(Located::value));
    }
    return uses.map(Procedure.Use::name).toList();
  }

  /** Indices of the lines that one of the triggers finds, in order. */
  List<Integer> lines(List<Trigger> triggers) {
    List<Trigger> asked = new ArrayList<>();
    for (Trigger trigger : triggers) {
      if (suitsJob(trigger) && asksForStep(trigger)) {
        asked.add(trigger);
      }
    }
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < lines.size() && !asked.isEmpty(); i++) {
      if (anyHolds(asked, lines.get(i))) {
        found.add(i);
      }
    }
    return found;
  }

  private static boolean anyHolds(List<Trigger> triggers, Touched line) {
    for (Trigger trigger : triggers) {
      if (holds(trigger, line)) {
        return true;
      }
    }
    return false;
  }

  /** Whether the vehicle alone sets one of them off. */
  boolean vehicle(List<Trigger> triggers) {
    return triggers.stream().anyMatch(trigger -> suitsJob(trigger) && !asksForStep(trigger));
  }

  private static boolean asksForStep(Trigger trigger) {
    return !trigger.procedure().isEmpty() || !onlyProcedure(trigger);
  }

  private boolean suitsJob(Trigger trigger) {
    return any(trigger.trait(), traits)
        && any(trigger.state(), states)
        && (trigger.without().isEmpty() || !traits.containsAll(trigger.without()));
  }

  private static boolean holds(Trigger trigger, Touched line) {
    // A check, a gate or a final torque does nothing that the steps before it have not done.
    return line.step().phase().isWork()
        && any(trigger.undo(), line.undo())
        && any(trigger.doUp(), line.doUp())
        && any(trigger.disturb(), line.disturb())
        && any(trigger.kind(), line.kinds())
        && any(trigger.circuit(), line.step().circuits())
        && any(trigger.apply(), line.products())
        && any(trigger.uses(), line.tools())
        && procedure(trigger, line)
        && (trigger.impact().isEmpty() || trigger.impact().get() == line.step().impact());
  }

  /** A trigger by procedure alone counts at the procedure's first line, not at each. */
  private static boolean procedure(Trigger trigger, Touched line) {
    return trigger.procedure().isEmpty()
        || (trigger.procedure().contains(line.step().task().procedure())
            && (!onlyProcedure(trigger) || line.first()));
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

  private static List<String> names(List<ItemAt> items) {
    return items.stream().map(ItemAt::item).toList();
  }

  private static List<String> values(List<Located<String>> written) {
    return written.stream().map(Located::value).toList();
  }
}
