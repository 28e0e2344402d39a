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
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which triggers a finished sheet meets, read from its steps and from the procedures. Shares no
 * code with the planner.
 */
final class Bringing {
  private final Sheet sheet;
  private final Resolved resolved;
  private final Set<String> states = new HashSet<>();

  Bringing(Sheet sheet, Resolved resolved) {
    this.sheet = sheet;
    this.resolved = resolved;
    resolved.job().state().forEach(state -> states.add(state.value()));
  }

  /** Whether one of the triggers is met, by a step or by procedures as a whole. */
  boolean any(List<Catalogue.Trigger> triggers) {
    return !steps(triggers).isEmpty()
        || triggers.stream().anyMatch(trigger -> suits(trigger) && wholly(trigger));
  }

  /** The steps that one of the triggers finds by what they touch and with what. */
  List<Sheet.SheetStep> steps(List<Catalogue.Trigger> triggers) {
    return sheet.steps().stream()
        .filter(step -> step.phase().isWork())
        .filter(step -> triggers.stream().anyMatch(trigger -> brings(trigger, step)))
        .toList();
  }

  /** Whether a step is written for a moment after the vehicle is down. */
  boolean waits(Sheet.SheetStep step) {
    return written(step).stream()
        .flatMap(one -> one.moment().stream())
        .anyMatch(moment -> moment.value().compareTo(Moment.ON_THE_GROUND) >= 0);
  }

  private boolean brings(Catalogue.Trigger trigger, Sheet.SheetStep step) {
    List<ItemAt> moved = new ArrayList<>(step.undo());
    moved.addAll(step.disturb());
    List<Step> written = written(step);
    return !asksForWhole(trigger)
        && suits(trigger)
        && meets(trigger.undo(), names(step.undo()))
        && meets(trigger.doUp(), names(step.doUp()))
        && meets(trigger.disturb(), names(step.disturb()))
        && meets(trigger.kind(), kinds(moved))
        && meets(trigger.circuit(), step.circuits())
        && meets(trigger.apply(), products(written))
        && meets(trigger.uses(), tools(written))
        && meets(trigger.procedure(), List.of(step.procedure()))
        && trigger.impact().stream()
            .allMatch(asked -> written.stream().anyMatch(one -> one.impact() == asked));
  }

  private boolean suits(Catalogue.Trigger trigger) {
    Set<String> traits = resolved.book().traits();
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
    return Stream.of(
            trigger.undo(), trigger.doUp(), trigger.disturb(), trigger.kind(), trigger.circuit())
        .allMatch(List::isEmpty);
  }

  /** Whether procedures of the sheet meet a trigger by their names and by the tools they name. */
  private boolean wholly(Catalogue.Trigger trigger) {
    boolean only =
        touchesNothing(trigger) && trigger.apply().isEmpty() && trigger.impact().isEmpty();
    return only
        && resolved.tasks().values().stream()
            .map(Task::procedure)
            .filter(one -> sheet.steps().stream().anyMatch(step -> isOf(step, one)))
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
        resolved.tasks().values().stream()
            .map(Task::procedure)
            .filter(procedure -> isOf(step, procedure))
            .flatMap(procedure -> phase(procedure, step.phase()).stream())
            .filter(one -> one.text().value().equals(step.text()))
            .distinct()
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

  private List<String> kinds(List<ItemAt> items) {
    return items.stream().flatMap(item -> resolved.thing(item).kinds().stream()).toList();
  }
}
