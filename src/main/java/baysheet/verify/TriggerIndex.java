package baysheet.verify;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.books.Trigger;
import baysheet.books.Trigger.Condition;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which triggers a finished sheet meets, read from its steps and from the procedures. Shares no
 * code with the planner.
 */
final class TriggerIndex {
  private final Resolved resolved;
  private final List<Done> done = new ArrayList<>();

  /** What all steps do: a trigger that asks for anything else is met by none of them. */
  private final Names all = Names.nothing();

  /** Those that the sheet has a step of, by name. */
  private final Map<String, Procedure> procedures = new LinkedHashMap<>();

  private final Set<String> traits;
  private final Set<String> states = new HashSet<>();

  TriggerIndex(SheetIndex printed, Resolved resolved) {
    this.resolved = resolved;
    traits = resolved.book().traits();
    resolved.job().condition().state().forEach(state -> states.add(state.value()));
    Set<String> named = new HashSet<>();
    printed.steps().forEach(step -> named.add(step.procedure()));
    for (Task task : resolved.tasks().values()) {
      if (named.contains(task.procedure().name().value())) {
        procedures.put(task.id().procedure(), task.procedure());
      }
    }
    for (Sheet.SheetStep step : printed.steps()) {
      Names names = step.phase().isWork() ? names(step) : ofPlanner(step);
      done.add(new Done(step, names));
      all.add(names);
    }
  }

  /** A step and what it touches and with what; worked out once for all triggers. */
  private record Done(Sheet.SheetStep step, Names names) {}

  /**
   * What is touched, how and with what, by name.
   *
   * @param there names by what a trigger may ask for
   * @param impact of the steps as their procedures have them, where these are known
   */
  private record Names(Map<Condition, Collection<String>> there, Collection<Boolean> impact) {
    static Names nothing() {
      return new Names(new EnumMap<>(Condition.class), new HashSet<>());
    }

    void add(Condition condition, Collection<String> names) {
      there.computeIfAbsent(condition, key -> new HashSet<>()).addAll(names);
    }

    void add(Names more) {
      more.there.forEach(this::add);
      impact.addAll(more.impact);
    }

    boolean meet(Trigger trigger) {
      for (Condition condition : trigger.asked().keySet()) {
        if (!condition.isOfVehicle()
            && condition != Condition.WHERE_UNUSED
            && !meets(trigger.names(condition), there.getOrDefault(condition, Set.of()))) {
          return false;
        }
      }
      return trigger.impact().isEmpty() || impact.contains(trigger.impact().get());
    }
  }

  /**
   * What no procedure writes: blocks and chocks go under wheels, heights are measured again, checks
   * have their tools.
   */
  private Names ofPlanner(Sheet.SheetStep step) {
    List<String> used = new ArrayList<>();
    List<String> at = new ArrayList<>(places(step));
    if (step.source() instanceof StepSource.Blocks blocks) {
      at.addAll(ends(blocks.where()));
      switch (blocks.part()) {
        case PUT_UNDER, PUT_UNDER_AXLE, LOWER_AXLE_ONTO -> used.add("solid wheel blocks");
        case MEASURE -> used.addAll(uses(procedures.get(step.procedure()).needs().uses()));
        default -> {
          // Nothing is used that a caution asks for.
        }
      }
    } else if (step.source() instanceof StepSource.Chocks chocks && chocks.set()) {
      used.add("wheel chocks");
      at.addAll(ends(chocks.where()));
    } else if (step.source() instanceof StepSource.Check check) {
      Optional.ofNullable(resolved.catalogue().rules().get(check.rule()))
          .flatMap(rule -> rule.step())
          .ifPresent(asked -> used.addAll(uses(asked.uses())));
    }
    Names names = Names.nothing();
    if (!used.isEmpty()) {
      names.add(Condition.USES, used);
      names.add(Condition.AT, at);
      names.impact.add(false);
    }
    return names;
  }

  private static List<String> ends(Place where) {
    return where == Place.VEHICLE ? List.of("front", "rear") : List.of(where.word());
  }

  private Names names(Sheet.SheetStep step) {
    List<Step> written = WrittenSteps.of(step, procedures).stream().toList();
    Names names = Names.nothing();
    names.add(Condition.UNDO, items(step.undo()));
    names.add(Condition.DO_UP, items(step.doUp()));
    names.add(Condition.DISTURB, items(step.disturb()));
    names.add(Condition.KIND, kinds(step.undo()));
    names.add(Condition.KIND, kinds(step.disturb()));
    names.add(Condition.DO_UP_KIND, kinds(step.doUp()));
    names.add(Condition.RENEW_KIND, kinds(renewed(step.doUp())));
    names.add(Condition.CIRCUIT, step.actions().circuits());
    names.add(Condition.APPLY, products(written));
    names.add(Condition.USES, tools(written));
    names.add(Condition.MEASURE, measured(written));
    names.add(Condition.PROCEDURE, List.of(step.procedure()));
    names.add(Condition.SERVES, roles(step.procedure()));
    names.add(Condition.AT, places(step));
    written.forEach(one -> names.impact.add(one.demands().impact()));
    return names;
  }

  /** A wheel is at its axle and on its side, and everything at the vehicle. */
  private static List<String> places(Sheet.SheetStep step) {
    return step.places().stream().flatMap(it -> it.outward().stream()).map(Place::word).toList();
  }

  private List<String> kinds(List<ItemAt> items) {
    List<String> kinds = new ArrayList<>();
    items.forEach(item -> kinds.addAll(resolved.thing(item).kinds()));
    return kinds;
  }

  /**
   * Those in whose place a new part goes on, and fasteners of which a new one goes on each time.
   */
  private List<ItemAt> renewed(List<ItemAt> items) {
    List<ItemAt> renewed = new ArrayList<>();
    for (Task task : resolved.tasks().values()) {
      items.stream().filter(task.renewed()::contains).forEach(renewed::add);
    }
    for (ItemAt item : items) {
      if (resolved.thing(item) instanceof Bound.OfBook fastener
          && fastener.values().isSingleUse()) {
        renewed.add(item);
      }
    }
    return renewed;
  }

  private List<String> roles(String procedure) {
    return Optional.ofNullable(procedures.get(procedure))
        .flatMap(one -> one.serves())
        .map(role -> List.of(role.value()))
        .orElse(List.of());
  }

  /** Whether one of the triggers is met by procedures as a whole. */
  boolean wholly(List<Trigger> triggers) {
    return triggers.stream().anyMatch(it -> suits(it) && wholly(it));
  }

  /** The steps that one of the triggers finds by what they touch and with what. */
  List<Sheet.SheetStep> steps(List<Trigger> triggers) {
    List<Trigger> asked = new ArrayList<>();
    for (Trigger trigger : triggers) {
      if (!asksForWhole(trigger) && suits(trigger) && all.meet(trigger)) {
        asked.add(trigger);
      }
    }
    List<Trigger> whole =
        triggers.stream()
            .filter(trigger -> trigger.asksForStep() || trigger.asksForProcedure())
            .filter(trigger -> suits(trigger) && wholly(trigger))
            .toList();
    List<Sheet.SheetStep> found = new ArrayList<>();
    Set<TaskId> begun = new HashSet<>();
    for (Done one : asked.isEmpty() && whole.isEmpty() ? List.<Done>of() : done) {
      boolean begins = one.step().phase().isWork() && begins(one.step(), begun);
      if (isMetBy(one, asked) || (begins && isOfAny(one.step().procedure(), whole))) {
        found.add(one.step());
      }
    }
    return found;
  }

  private boolean isMetBy(Done one, List<Trigger> triggers) {
    return triggers.stream().anyMatch(it -> one.names().meet(it) && holdsAt(one.step(), it));
  }

  /** Not where a tool that a trigger excludes is used at each place of a step. */
  private boolean holdsAt(Sheet.SheetStep step, Trigger trigger) {
    List<String> tools = trigger.names(Condition.WHERE_UNUSED);
    return tools.isEmpty() || step.places().stream().anyMatch(it -> !isUsedAt(it, tools));
  }

  private boolean isUsedAt(Place place, List<String> tools) {
    return done.stream()
        .filter(one -> one.step().places().contains(place))
        .anyMatch(one -> meets(tools, one.names().there().getOrDefault(Condition.USES, Set.of())));
  }

  /** Whether a step is the first of its procedure at one of its places. */
  private static boolean begins(Sheet.SheetStep step, Set<TaskId> begun) {
    boolean begins = false;
    for (Place place : step.places()) {
      begins |= begun.add(new TaskId(step.procedure(), place));
    }
    return begins;
  }

  private boolean isOfAny(String procedure, List<Trigger> triggers) {
    Procedure own = procedures.get(procedure);
    return own != null && triggers.stream().anyMatch(it -> isOf(own, it));
  }

  /** Whether a step is written for a moment after the vehicle is down. */
  boolean waits(Sheet.SheetStep step) {
    return WrittenSteps.of(step, procedures).stream()
        .flatMap(one -> one.moment().stream())
        .anyMatch(moment -> moment.value().compareTo(Moment.ON_THE_GROUND) >= 0);
  }

  private boolean suits(Trigger trigger) {
    List<String> without = trigger.names(Condition.WITHOUT);
    return meets(trigger.names(Condition.TRAIT), traits)
        && meets(trigger.names(Condition.STATE), states)
        && meets(trigger.names(Condition.BAY), List.of(resolved.bay().equipment().word()))
        && (without.isEmpty() || !traits.containsAll(without));
  }

  /** A trigger that no single step can meet: by procedure alone, or by the vehicle alone. */
  private static boolean asksForWhole(Trigger trigger) {
    return asksForNothingBut(trigger, Set.of());
  }

  /** Whether it asks for procedures and the vehicle alone, and for those conditions besides. */
  private static boolean asksForNothingBut(Trigger trigger, Set<Condition> besides) {
    for (Condition condition : trigger.asked().keySet()) {
      if (!condition.isOfVehicle()
          && !condition.isOfProcedure()
          && condition != Condition.WHERE_UNUSED
          && !besides.contains(condition)) {
        return false;
      }
    }
    return trigger.impact().isEmpty();
  }

  /** Whether procedures of the sheet meet a trigger by their names and by the tools they name. */
  private boolean wholly(Trigger trigger) {
    if (!asksForNothingBut(trigger, Set.of(Condition.USES))) {
      return false;
    }
    for (Procedure one : procedures.values()) {
      if (isOf(one, trigger)) {
        return true;
      }
    }
    return false;
  }

  private boolean isOf(Procedure procedure, Trigger trigger) {
    String name = procedure.name().value();
    return meets(trigger.names(Condition.PROCEDURE), List.of(name))
        && meets(trigger.names(Condition.SERVES), roles(name))
        && meets(trigger.names(Condition.USES), uses(procedure.needs().uses()));
  }

  private List<String> products(List<Step> steps) {
    List<String> products = new ArrayList<>();
    for (Step step : steps) {
      step.touched()
          .apply()
          .forEach(
              apply ->
                  products.addAll(
                      resolved.catalogue().vocabulary().product(apply.value().product())));
    }
    return products;
  }

  private static List<String> measured(List<Step> steps) {
    List<String> figures = new ArrayList<>();
    steps.forEach(step -> step.measure().forEach(figure -> figures.add(figure.value())));
    return figures;
  }

  private List<String> tools(List<Step> steps) {
    List<String> tools = new ArrayList<>();
    steps.forEach(step -> tools.addAll(uses(step.demands().uses())));
    return tools;
  }

  private List<String> uses(List<Located<Procedure.Use>> uses) {
    List<String> names = new ArrayList<>();
    uses.forEach(use -> names.addAll(resolved.catalogue().vocabulary().tool(use.value().name())));
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
