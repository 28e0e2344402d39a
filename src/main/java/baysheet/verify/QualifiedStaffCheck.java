package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Shop;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CheckLine;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Whether every step that needs a qualification names who does it, with a certificate of the shop
 * file that is valid on the day, and every hold point among them somebody else with one. Shares no
 * code with the planner.
 */
final class QualifiedStaffCheck {
  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final List<String> faults = new ArrayList<>();

  private QualifiedStaffCheck(Sheet sheet, SheetIndex printed, Resolved resolved) {
    this.sheet = sheet;
    this.printed = printed;
    this.resolved = resolved;
  }

  static List<String> faults(
      Sheet sheet, SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    QualifiedStaffCheck hands = new QualifiedStaffCheck(sheet, printed, resolved);
    for (Catalogue.Qualification it : resolved.catalogue().qualifications().values()) {
      hands.check(it, bringing);
    }
    return hands.faults;
  }

  private void check(Catalogue.Qualification it, TriggerIndex bringing) {
    String name = it.name().value();
    Set<ItemAt> open = new HashSet<>();
    List<Sheet.SheetStep> brought = bringing.steps(it.when());
    for (Sheet.SheetStep step : printed.steps()) {
      boolean closes = step.doUp().stream().anyMatch(open::contains);
      boolean needs = brought.contains(step) || closes || isAskedBy(step, name);
      if (brought.contains(step)) {
        open.addAll(step.undo());
      }
      if (step.phase().isWork() && needs) {
        step(step, name);
      }
    }
    sheet.safety().qualified().stream()
        .filter(work -> work.qualification().equals(name))
        .forEach(work -> sheet.checks().forEach(check -> held(check, work)));
  }

  /** A held check of this work alone is done by who does the work, and seen by whom it says. */
  private void held(CheckLine check, QualifiedWork work) {
    boolean only = !check.because().isEmpty() && work.steps().containsAll(check.because());
    if (!check.hold() || !only) {
      return;
    }
    if (!work.checks().contains(check.text())) {
      faults.add("check " + check.name() + " names nobody certified for " + work.words());
    } else if (check.releasedBy().isEmpty()
        && isAnybodyElseCertified(work)
        && !isLookedAt(work, work.qualification())) {
      faults.add("check " + check.name() + " is seen by nobody certified for " + work.words());
    }
  }

  private boolean isAskedBy(Sheet.SheetStep step, String qualification) {
    for (Task task : resolved.tasks().values()) {
      boolean own = task.id().procedure().equals(step.procedure());
      if (own
          && task.procedure().needs().qualifications().stream()
              .anyMatch(asked -> asked.value().equals(qualification))) {
        return true;
      }
    }
    return false;
  }

  private void step(Sheet.SheetStep step, String qualification) {
    Optional<QualifiedWork> work =
        sheet.safety().qualified().stream()
            .filter(it -> it.qualification().equals(qualification))
            .filter(it -> it.steps().contains(step.n()))
            .findFirst();
    if (work.isEmpty() || !isCertified(work.get().by(), qualification)) {
      faults.add("step " + step.n() + " names nobody certified for " + qualification);
    } else if (step.hold() && !isLookedAt(work.get(), qualification)) {
      faults.add("hold point " + step.n() + " names nobody else certified for " + qualification);
    }
  }

  private boolean isLookedAt(QualifiedWork work, String qualification) {
    return !work.second().isEmpty()
        && work.second().stream()
            .allMatch(
                it -> isCertified(it, qualification) && !it.person().equals(work.by().person()));
  }

  private boolean isAnybodyElseCertified(QualifiedWork work) {
    return resolved.shop().people().values().stream()
        .filter(person -> !person.id().value().equals(work.by().person()))
        .filter(person -> person.grade() == Shop.Grade.TECHNICIAN)
        .flatMap(person -> person.certificates().stream())
        .filter(it -> it.qualification().value().equals(work.qualification()))
        .anyMatch(it -> it.until().isEmpty() || !resolved.date().isAfter(it.until().get()));
  }

  private boolean isCertified(QualifiedWork.Holder holder, String qualification) {
    Shop.Person person = resolved.shop().people().get(holder.person());
    return person != null
        && person.certificates().stream()
            .filter(it -> it.qualification().value().equals(qualification))
            .filter(it -> it.number().value().equals(holder.certificate()))
            .anyMatch(it -> it.until().isEmpty() || !resolved.date().isAfter(it.until().get()));
  }
}
