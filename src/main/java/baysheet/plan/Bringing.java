package baysheet.plan;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which triggers a finished sheet meets, read from its steps and from the procedures. Shares no
 * code with the planner.
 */
final class Bringing {
  private final Resolved resolved;
  private final List<Done> done = new ArrayList<>();

  /** What all steps do: a trigger that asks for anything else is met by none of them. */
  private final Names all = Names.nothing();

  /** Those that the sheet has a step of, by name. */
  private final Map<String, Procedure> procedures = new LinkedHashMap<>();

  private final Set<String> traits;
  private final Set<String> states = new HashSet<>();

  Bringing(Printed printed, Resolved resolved) {
    this.resolved = resolved;
    traits = resolved.book().traits();
    resolved.job().state().forEach(state -> states.add(state.value()));
    Set<String> named = new HashSet<>();
    printed.steps().forEach(step -> named.add(step.procedure()));
    for (Task task : resolved.tasks().values()) {
      if (named.contains(task.procedure().name().value())) {
        procedures.put(task.id().procedure(), task.procedure());
      }
    }
    for (Sheet.SheetStep step : printed.steps()) {
      if (step.phase().isWork()) {
        Names names = names(step);
        done.add(new Done(step, names));
        all.add(names);
      }
    }
  }

  /** A step and what it touches and with what; worked out once for all triggers. */
  private record Done(Sheet.SheetStep step, Names names) {}

  /**
   * What is touched, how and with what, by name.
   *
   * @param impact of the steps as their procedures have them, where these can be told
   */
  private record Names(
      Collection<String> undo,
      Collection<String> doUp,
      Collection<String> disturb,
      Collection<String> kinds,
      Collection<String> circuits,
      Collection<String> products,
      Collection<String> tools,
      Collection<String> procedures,
      Collection<Boolean> impact) {
    static Names nothing() {
      return new Names(
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>(),
          new HashSet<>());
    }

    void add(Names more) {
      undo.addAll(more.undo);
      doUp.addAll(more.doUp);
      disturb.addAll(more.disturb);
      kinds.addAll(more.kinds);
      circuits.addAll(more.circuits);
      products.addAll(more.products);
      tools.addAll(more.tools);
      procedures.addAll(more.procedures);
      impact.addAll(more.impact);
    }

    boolean meetAny(List<Catalogue.Trigger> triggers) {
      for (Catalogue.Trigger trigger : triggers) {
        if (meet(trigger)) {
          return true;
        }
      }
      return false;
    }

    boolean meet(Catalogue.Trigger trigger) {
      return meets(trigger.undo(), undo)
          && meets(trigger.doUp(), doUp)
          && meets(trigger.disturb(), disturb)
          && meets(trigger.kind(), kinds)
          && meets(trigger.circuit(), circuits)
          && meets(trigger.apply(), products)
          && meets(trigger.uses(), tools)
          && meets(trigger.procedure(), procedures)
          && (trigger.impact().isEmpty() || impact.contains(trigger.impact().get()));
    }
  }

  private Names names(Sheet.SheetStep step) {
    List<Step> written = written(step);
    return new Names(
        items(step.undo()),
        items(step.doUp()),
        items(step.disturb()),
        kinds(step),
        step.circuits(),
        products(written),
        tools(written),
        List.of(step.procedure()),
        written.stream().map(Step::impact).toList());
  }

  /** The kinds of what a step takes off or disturbs. */
  private List<String> kinds(Sheet.SheetStep step) {
    List<String> kinds = new ArrayList<>();
    step.undo().forEach(item -> kinds.addAll(resolved.thing(item).kinds()));
    step.disturb().forEach(item -> kinds.addAll(resolved.thing(item).kinds()));
    return kinds;
  }

  /** Whether one of the triggers is met by procedures as a whole. */
  boolean wholly(List<Catalogue.Trigger> triggers) {
    for (Catalogue.Trigger trigger : triggers) {
      if (suits(trigger) && wholly(trigger)) {
        return true;
      }
    }
    return false;
  }

  /** The steps that one of the triggers finds by what they touch and with what. */
  List<Sheet.SheetStep> steps(List<Catalogue.Trigger> triggers) {
    List<Catalogue.Trigger> asked = new ArrayList<>();
    for (Catalogue.Trigger trigger : triggers) {
      if (!asksForWhole(trigger) && suits(trigger) && all.meet(trigger)) {
        asked.add(trigger);
      }
    }
    List<Sheet.SheetStep> found = new ArrayList<>();
    if (!asked.isEmpty()) {
      for (Done one : done) {
        if (one.names().meetAny(asked)) {
          found.add(one.step());
        }
      }
    }
    return found;
  }

  /** Whether a step is written for a moment after the vehicle is down. */
  boolean waits(Sheet.SheetStep step) {
    return written(step).stream()
        .flatMap(one -> one.moment().stream())
        .anyMatch(moment -> moment.value().compareTo(Moment.ON_THE_GROUND) >= 0);
  }

  private boolean suits(Catalogue.Trigger trigger) {
    return meets(trigger.trait(), traits)
        && meets(trigger.state(), states)
        && (trigger.without().isEmpty() || !traits.containsAll(trigger.without()));
  }

  /** A trigger that no single step can meet: by procedure alone, or by the vehicle alone. */
  private static boolean asksForWhole(Catalogue.Trigger trigger) {
    return trigger.impact().isEmpty()
        && trigger.apply().isEmpty()
        && trigger.uses().isEmpty()
        && touchesNothing(trigger);
  }

  private static boolean touchesNothing(Catalogue.Trigger trigger) {
    return trigger.undo().isEmpty()
        && trigger.doUp().isEmpty()
        && trigger.disturb().isEmpty()
        && trigger.kind().isEmpty()
        && trigger.circuit().isEmpty();
  }

  /** Whether procedures of the sheet meet a trigger by their names and by the tools they name. */
  private boolean wholly(Catalogue.Trigger trigger) {
    if (!touchesNothing(trigger) || !trigger.apply().isEmpty() || trigger.impact().isPresent()) {
      return false;
    }
    for (Procedure one : procedures.values()) {
      if (meets(trigger.procedure(), List.of(one.name().value()))
          && (trigger.uses().isEmpty() || meets(trigger.uses(), uses(one.uses())))) {
        return true;
      }
    }
    return false;
  }

  /** The step as its procedure has it; none where the planner made it, or where two read alike. */
  private List<Step> written(Sheet.SheetStep step) {
    Procedure procedure = procedures.get(step.procedure());
    List<Step> written = new ArrayList<>();
    for (Step one : procedure == null ? List.<Step>of() : phase(procedure, step.phase())) {
      if (one.text().value().equals(step.text())) {
        written.add(one);
      }
    }
    return written.size() == 1 ? written : List.of();
  }

  private static List<Step> phase(Procedure procedure, Sheet.Phase phase) {
    return switch (phase) {
      case OPEN -> procedure.open();
      case WORK -> procedure.work();
      case CLOSE -> procedure.close();
      case CHECK, FINAL -> List.of();
    };
  }

  private static List<String> products(List<Step> steps) {
    List<String> products = new ArrayList<>();
    steps.forEach(step -> step.apply().forEach(apply -> products.add(apply.value().product())));
    return products;
  }

  private static List<String> tools(List<Step> steps) {
    List<String> tools = new ArrayList<>();
    steps.forEach(step -> tools.addAll(uses(step.uses())));
    return tools;
  }

  private static List<String> uses(List<Located<Procedure.Use>> uses) {
    List<String> names = new ArrayList<>();
    uses.forEach(use -> names.add(use.value().name()));
    return names;
  }

  private static boolean meets(List<String> asked, Collection<String> there) {
    if (asked.isEmpty()) {
      return true;
    }
    for (String name : asked) {
      if (there.contains(name)) {
        return true;
      }
    }
    return false;
  }

  private static List<String> items(List<ItemAt> items) {
    List<String> names = new ArrayList<>();
    items.forEach(item -> names.add(item.item()));
    return names;
  }
}
