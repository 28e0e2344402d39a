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
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which triggers a finished sheet meets, read from its steps and from the procedures. Shares no
 * code with the planner.
 */
final class Bringing {
  private final List<Done> done = new ArrayList<>();

  /** Those that the sheet has a step of, by name. */
  private final Map<String, Procedure> procedures = new LinkedHashMap<>();

  private final Set<String> traits;
  private final Set<String> states = new HashSet<>();

  Bringing(Sheet sheet, Resolved resolved) {
    traits = resolved.book().traits();
    resolved.job().state().forEach(state -> states.add(state.value()));
    List<Sheet.SheetStep> steps = sheet.steps();
    for (Task task : resolved.tasks().values()) {
      if (steps.stream().anyMatch(step -> isOf(step, task.procedure()))) {
        procedures.put(task.id().procedure(), task.procedure());
      }
    }
    for (Sheet.SheetStep step : steps) {
      if (step.phase().isWork()) {
        done.add(done(step, resolved));
      }
    }
  }

  /**
   * What a step touches and with what, by name; worked out once for all triggers.
   *
   * @param written the step as its procedure has it, if one can be told
   */
  private record Done(
      Sheet.SheetStep step,
      List<Step> written,
      List<String> undo,
      List<String> doUp,
      List<String> disturb,
      List<String> kinds,
      List<String> products,
      List<String> tools) {}

  private Done done(Sheet.SheetStep step, Resolved resolved) {
    List<Step> written = written(step);
    List<ItemAt> moved = new ArrayList<>(step.undo());
    moved.addAll(step.disturb());
    return new Done(
        step,
        written,
        names(step.undo()),
        names(step.doUp()),
        names(step.disturb()),
        moved.stream().flatMap(item -> resolved.thing(item).kinds().stream()).toList(),
        products(written),
        tools(written));
  }

  /** Whether one of the triggers is met by procedures as a whole. */
  boolean wholly(List<Catalogue.Trigger> triggers) {
    return triggers.stream().anyMatch(trigger -> suits(trigger) && wholly(trigger));
  }

  /** The steps that one of the triggers finds by what they touch and with what. */
  List<Sheet.SheetStep> steps(List<Catalogue.Trigger> triggers) {
    List<Sheet.SheetStep> found = new ArrayList<>();
    List<Catalogue.Trigger> asked =
        triggers.stream().filter(trigger -> !asksForWhole(trigger)).filter(this::suits).toList();
    for (Done one : done) {
      if (!asked.isEmpty() && asked.stream().anyMatch(trigger -> brings(trigger, one))) {
        found.add(one.step());
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

  private static boolean brings(Catalogue.Trigger trigger, Done one) {
    return !asksForWhole(trigger)
        && meets(trigger.undo(), one.undo())
        && meets(trigger.doUp(), one.doUp())
        && meets(trigger.disturb(), one.disturb())
        && meets(trigger.kind(), one.kinds())
        && meets(trigger.circuit(), one.step().circuits())
        && meets(trigger.apply(), one.products())
        && meets(trigger.uses(), one.tools())
        && meets(trigger.procedure(), List.of(one.step().procedure()))
        && (trigger.impact().isEmpty() || isOn(one, trigger.impact().get()));
  }

  private static boolean isOn(Done one, boolean impact) {
    return one.written().stream().anyMatch(step -> step.impact() == impact);
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
    boolean only =
        touchesNothing(trigger) && trigger.apply().isEmpty() && trigger.impact().isEmpty();
    return only
        && procedures.values().stream()
            .anyMatch(
                one ->
                    meets(trigger.procedure(), List.of(one.name().value()))
                        && meets(trigger.uses(), uses(one.uses())));
  }

  private static boolean isOf(Sheet.SheetStep step, Procedure procedure) {
    return step.procedure().equals(procedure.name().value());
  }

  /** The step as its procedure has it; none where the planner made it, or where two read alike. */
  private List<Step> written(Sheet.SheetStep step) {
    List<Step> written =
        Stream.ofNullable(procedures.get(step.procedure()))
            .flatMap(procedure -> phase(procedure, step.phase()).stream())
            .filter(one -> one.text().value().equals(step.text()))
            .toList();
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
    return steps.stream()
        .flatMap(step -> step.apply().stream())
        .map(apply -> apply.value().product())
        .toList();
  }

  private static List<String> tools(List<Step> steps) {
    return steps.stream().flatMap(step -> uses(step.uses()).stream()).toList();
  }

  private static List<String> uses(List<Located<Procedure.Use>> uses) {
    return uses.stream().map(use -> use.value().name()).toList();
  }

  private static boolean meets(List<String> asked, Collection<String> there) {
    return asked.isEmpty() || !Collections.disjoint(asked, there);
  }

  private static List<String> names(List<ItemAt> items) {
    return items.stream().map(ItemAt::item).toList();
  }
}
