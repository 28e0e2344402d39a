package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Trigger;
import baysheet.report.Located;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether each check that is a step of its own comes in its turn: behind all that brings it and all
 * that must be back on for it, ahead of what would hide it. Shares no code with the planner.
 */
final class CheckOrderRule {
  /** A step that brings a check, at one of its places. */
  private record Brought(Sheet.SheetStep by, Place place) {}

  private final SheetIndex printed;
  private final Resolved resolved;
  private final TriggerIndex bringing;
  private final Map<TaskId, Set<ItemAt>> items = new HashMap<>();
  private final List<String> faults = new ArrayList<>();

  private CheckOrderRule(SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    this.printed = printed;
    this.resolved = resolved;
    this.bringing = bringing;
  }

  static List<String> faults(
      Sheet sheet, SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    CheckOrderRule turns = new CheckOrderRule(printed, resolved, bringing);
    for (Catalogue.Rule rule : resolved.catalogue().rules().values()) {
      rule.step().ifPresent(step -> turns.rule(rule, step));
    }
    sheet.checks().forEach(turns::listed);
    return turns.faults;
  }

  /** The list of checks names the steps that a check is, and their moment. */
  private void listed(CheckLine line) {
    List<Sheet.SheetStep> steps = checks(line.name());
    if (!steps.stream().map(Sheet.SheetStep::n).toList().equals(line.steps())) {
      faults.add("check " + line.name() + " is said to be steps " + line.steps() + ", and is not");
    } else if (!steps.isEmpty() && steps.get(0).moment() != line.moment()) {
      faults.add("check " + line.name() + " is at another moment than step " + steps.get(0).n());
    }
  }

  private void rule(Catalogue.Rule rule, Catalogue.CheckStep step) {
    List<Brought> brought = brought(rule);
    List<Sheet.SheetStep> checks = checks(rule.name().value());
    for (Brought one : brought) {
      if (checks.stream().noneMatch(check -> answers(check, step, one))) {
        faults.add(
            "no step for check " + rule.name().value() + ", brought by step " + one.by().n());
      }
    }
    for (Sheet.SheetStep check : checks) {
      says(check, rule);
      turn(check, rule, step, brought.stream().filter(one -> answers(check, step, one)).toList());
    }
  }

  /** What brings a check, once for each place; what waits for the ground brings no step. */
  private List<Brought> brought(Catalogue.Rule rule) {
    return bringing.steps(rule.when()).stream()
        .filter(step -> !bringing.waits(step))
        .flatMap(step -> step.places().stream().map(place -> new Brought(step, place)))
        .toList();
  }

  private List<Sheet.SheetStep> checks(String rule) {
    List<Sheet.SheetStep> checks = new ArrayList<>();
    for (Sheet.SheetStep step : printed.steps()) {
      if (step.source() instanceof StepSource.Check check && check.rule().equals(rule)) {
        checks.add(step);
      }
    }
    return checks;
  }

  /** One look for several places is named by one of them, by their axle or by the vehicle. */
  private static boolean answers(Sheet.SheetStep check, Catalogue.CheckStep step, Brought brought) {
    return check.places().contains(brought.place())
        || (step.once()
            && check.places().stream()
                .anyMatch(
                    place -> place == Place.VEHICLE || place.wheels().contains(brought.place())));
  }

  private void says(Sheet.SheetStep check, Catalogue.Rule rule) {
    if (!check.source().equals(new StepSource.Check(rule.name().value(), rule.check().value()))
        || check.hold() != rule.others().hold()
        || !check.entries().containsAll(asked(rule))) {
      faults.add("step " + check.n() + " does not say what check " + rule.name().value() + " asks");
    }
  }

  private static List<Statement> asked(Catalogue.Rule rule) {
    return rule.needs().stream()
        .map(needs -> needs.value())
        .<Statement>map(
            needs ->
                needs.endsWith("as found")
                    ? new Statement.Written(needs)
                    : new Statement.FromData(needs))
        .toList();
  }

  private void turn(
      Sheet.SheetStep check, Catalogue.Rule rule, Catalogue.CheckStep step, List<Brought> brought) {
    for (Brought one : brought) {
      if (at(check) < at(one.by())) {
        faults.add(
            "check step %s comes before step %s, which brings it"
                .formatted(check.n(), one.by().n()));
      }
    }
    Set<ItemAt> items = items(tasks(step, brought));
    Set<ItemAt> own = items(tasks(brought));
    Set<ItemAt> carrying = carrying(own);
    int broughtBy = brought.stream().mapToInt(one -> at(one.by())).max().orElse(at(check));
    for (Sheet.SheetStep before : printed.steps().subList(0, at(check))) {
      for (ItemAt item : hiding(before, step, at(before) > broughtBy ? items : own, carrying)) {
        faults.add(
            "step %s puts %s on before check step %s".formatted(before.n(), item, check.n()));
      }
    }
    hiddenElsewhere(check, step, items, brought);
    List<Brought> taken =
        brought.stream().filter(one -> !things(rule, List.of(one)).isEmpty()).toList();
    Set<ItemAt> needed = items;
    if (step.beforeCovered() && !taken.isEmpty()) {
      needed = things(rule, taken);
      uncovered(check, broughtBy, needed, items(tasks(taken)));
    }
    behind(check, step, items, carrying, needed);
  }

  /**
   * Another work may put on what has to be off there, only not between what brings the check and
   * it.
   */
  private void hiddenElsewhere(
      Sheet.SheetStep check, Catalogue.CheckStep step, Set<ItemAt> items, List<Brought> brought) {
    int broughtBy = brought.stream().mapToInt(one -> at(one.by())).max().orElse(at(check));
    for (int i = broughtBy + 1; i < at(check); i++) {
      Sheet.SheetStep between = printed.steps().get(i);
      between.doUp().stream()
          .filter(item -> !items.contains(item) && isOffAt(check, step, item))
          .forEach(
              item ->
                  faults.add(
                      "step %s puts %s on before check step %s"
                          .formatted(between.n(), item, check.n())));
    }
  }

  private boolean hidesElsewhere(
      Sheet.SheetStep next, Sheet.SheetStep check, Catalogue.CheckStep step) {
    return next.doUp().stream().anyMatch(item -> isOffAt(check, step, item));
  }

  private boolean isOffAt(Sheet.SheetStep check, Catalogue.CheckStep step, ItemAt item) {
    return isOff(step, item)
        && check.places().stream().anyMatch(place -> place.meets(item.place()));
  }

  private boolean isOff(Catalogue.CheckStep check, ItemAt item) {
    for (Located<String> off : check.whileOff()) {
      if (item.item().equals(off.value()) || resolved.thing(item).isOf(off.value())) {
        return true;
      }
    }
    return false;
  }

  /** What a check looks at: of what the steps that bring it took off, what its rule names. */
  private Set<ItemAt> things(Catalogue.Rule rule, List<Brought> brought) {
    Set<ItemAt> all = new LinkedHashSet<>();
    for (Brought one : brought) {
      one.by().undo().stream()
          .filter(item -> one.by().places().size() == 1 || item.place() == one.place())
          .forEach(all::add);
    }
    all.removeIf(item -> !isNamed(rule, item));
    return all;
  }

  private boolean isNamed(Catalogue.Rule rule, ItemAt item) {
    for (Trigger when : rule.when()) {
      if (when.items().contains(item.item())
          || !Collections.disjoint(when.items(), resolved.thing(item).kinds())) {
        return true;
      }
    }
    return false;
  }

  /** Nothing went on over the things since the last of them was on, and the check brought. */
  private void uncovered(
      Sheet.SheetStep check, int broughtBy, Set<ItemAt> things, Set<ItemAt> items) {
    int last = broughtBy;
    for (int i = 0; i < printed.steps().size(); i++) {
      if (!Collections.disjoint(printed.steps().get(i).doUp(), things)) {
        last = Math.max(last, i);
      }
    }
    for (int i = last + 1; i < at(check); i++) {
      Sheet.SheetStep over = printed.steps().get(i);
      over.doUp().stream()
          .filter(items::contains)
          .forEach(
              item ->
                  faults.add(
                      "step %s covers what check step %s looks at with %s"
                          .formatted(over.n(), check.n(), item)));
    }
  }

  /** From the check up to the first thing that had to wait for it, nothing needed goes on. */
  private void behind(
      Sheet.SheetStep check,
      Catalogue.CheckStep step,
      Set<ItemAt> items,
      Set<ItemAt> carrying,
      Set<ItemAt> needed) {
    for (Sheet.SheetStep next : printed.steps().subList(at(check), printed.steps().size())) {
      if (!hiding(next, step, items, carrying).isEmpty() || hidesElsewhere(next, check, step)) {
        return;
      }
      if (!bringing.waits(next)) {
        next.doUp().stream()
            .filter(needed::contains)
            .forEach(
                item -> faults.add("check step " + check.n() + " comes before " + item + " is on"));
      }
    }
  }

  private int at(Sheet.SheetStep step) {
    return printed.at(step);
  }

  /**
   * What carries the vehicle for some work. Of a vehicle that is raised as a whole that is all; of
   * one raised end by end only what that work lies behind.
   */
  private Set<ItemAt> carrying(Set<ItemAt> ofWork) {
    Set<ItemAt> all = new LinkedHashSet<>();
    printed.steps().forEach(step -> all.addAll(resolved.ofKind("support", step.undo())));
    boolean whole =
        all.stream().map(it -> it.place().axle().orElse(it.place())).distinct().count() < 2;
    if (!whole) {
      all.retainAll(ofWork);
    }
    return all;
  }

  private List<ItemAt> hiding(
      Sheet.SheetStep step, Catalogue.CheckStep check, Set<ItemAt> items, Set<ItemAt> carrying) {
    List<ItemAt> hiding = new ArrayList<>();
    for (ItemAt item : step.doUp()) {
      if (items.contains(item) && (isOff(check, item) || carrying.contains(item))) {
        hiding.add(item);
      }
    }
    return hiding;
  }

  private Collection<Task> tasks(Catalogue.CheckStep step, List<Brought> brought) {
    return step.allBack() ? resolved.tasks().values() : tasks(brought);
  }

  private List<Task> tasks(List<Brought> brought) {
    return brought.stream()
        .map(one -> resolved.tasks().get(new TaskId(one.by().procedure(), one.place())))
        .toList();
  }

  /**
   * What these tasks and those that give access to them take off and put on. What a step is written
   * to put on after lowering no check while raised can wait for.
   */
  private Set<ItemAt> items(Collection<Task> tasks) {
    Set<ItemAt> items = new LinkedHashSet<>();
    for (Task task : tasks) {
      items.addAll(items(task));
    }
    return items;
  }

  private Set<ItemAt> items(Task task) {
    Set<ItemAt> known = items.get(task.id());
    if (known != null) {
      return known;
    }
    Set<ItemAt> found = new LinkedHashSet<>();
    for (List<BoundStep> steps : List.of(task.open(), task.work(), task.close())) {
      for (BoundStep step : steps) {
        if (!isLate(step)) {
          found.addAll(step.undo());
          found.addAll(step.doUp());
        }
      }
    }
    task.access().forEach(access -> found.addAll(items(resolved.tasks().get(access))));
    items.put(task.id(), found);
    return found;
  }

  private static boolean isLate(BoundStep step) {
    return step.step()
        .moment()
        .filter(moment -> moment.value().compareTo(Moment.ON_THE_GROUND) >= 0)
        .isPresent();
  }
}
