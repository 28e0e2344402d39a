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
  private final Resolved resolved;
  private final List<Laid> lines;
  private final Set<String> traits;
  private final Set<String> states;

  Triggers(Resolved resolved, List<Laid> lines) {
    this.resolved = resolved;
    this.lines = lines;
    this.traits = resolved.book().traits();
    this.states = new HashSet<>(values(resolved.job().state()));
  }

  /** Indices of the lines that one of the triggers finds, in order. */
  List<Integer> lines(List<Trigger> triggers) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      int index = i;
      if (triggers.stream().anyMatch(trigger -> asksForStep(trigger) && holds(trigger, index))) {
        found.add(i);
      }
    }
    return found;
  }

  /** Whether the vehicle alone sets one of them off. */
  boolean vehicle(List<Trigger> triggers) {
    return triggers.stream().anyMatch(trigger -> !asksForStep(trigger) && suitsJob(trigger));
  }

  private static boolean asksForStep(Trigger trigger) {
    return !trigger.procedure().isEmpty() || !onlyProcedure(trigger);
  }

  private boolean suitsJob(Trigger trigger) {
    return any(trigger.trait(), traits)
        && any(trigger.state(), states)
        && (trigger.without().isEmpty() || !traits.containsAll(trigger.without()));
  }

  private boolean holds(Trigger trigger, int index) {
    Laid line = lines.get(index);
    List<ItemAt> moved = Stream.of(line.undo(), line.disturb()).flatMap(List::stream).toList();
    return suitsJob(trigger)
        // A check, a gate or a final torque does nothing that the steps before it have not done.
        && line.step().phase().isWork()
        && any(trigger.undo(), names(line.undo()))
        && any(trigger.doUp(), names(line.doUp()))
        && any(trigger.disturb(), names(line.disturb()))
        && any(trigger.kind(), kinds(moved))
        && any(trigger.circuit(), line.step().circuits())
        && any(trigger.apply(), products(line))
        && any(trigger.uses(), tools(line, index))
        && procedure(trigger, line, index)
        && trigger.impact().map(impact -> impact == line.step().impact()).orElse(true);
  }

  /** A trigger by procedure alone counts at the procedure's first line, not at each. */
  private boolean procedure(Trigger trigger, Laid line, int index) {
    String name = line.step().task().procedure();
    return trigger.procedure().isEmpty()
        || (trigger.procedure().contains(name)
            && (!onlyProcedure(trigger) || isFirst(name, index)));
  }

  private static boolean onlyProcedure(Trigger trigger) {
    return trigger.impact().isEmpty()
        && Stream.of(
                trigger.undo(),
                trigger.doUp(),
                trigger.disturb(),
                trigger.kind(),
                trigger.circuit(),
                trigger.apply(),
                trigger.uses())
            .allMatch(List::isEmpty);
  }

  private boolean isFirst(String procedure, int index) {
    return lines.subList(0, index).stream()
        .map(Laid::step)
        .filter(earlier -> earlier.phase().isWork())
        .noneMatch(earlier -> earlier.task().procedure().equals(procedure));
  }

  /** No name asked for, or one of them there. */
  private static boolean any(List<String> asked, Collection<String> there) {
    return asked.isEmpty() || !Collections.disjoint(asked, there);
  }

  private static List<String> names(List<ItemAt> items) {
    return items.stream().map(ItemAt::item).toList();
  }

  private List<String> kinds(List<ItemAt> items) {
    return items.stream().flatMap(item -> resolved.thing(item).kinds().stream()).toList();
  }

  private static List<String> products(Laid line) {
    return line.step().apply().stream().map(BoundStep.BoundApply::product).toList();
  }

  /** The step's tools; those that its procedure names as a whole count at its first line. */
  private List<String> tools(Laid line, int index) {
    Stream<Procedure.Use> uses = line.step().uses().stream();
    if (isFirst(line.step().task().procedure(), index)) {
      List<Located<Procedure.Use>> whole =
          resolved.tasks().get(line.step().task()).procedure().uses();
      uses = Stream.concat(uses, whole.stream().map(Located::value));
    }
    return uses.map(Procedure.Use::name).toList();
  }

  private static List<String> values(List<Located<String>> written) {
    return written.stream().map(Located::value).toList();
  }
}
