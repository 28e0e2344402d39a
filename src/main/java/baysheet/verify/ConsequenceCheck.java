package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.books.Trigger;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether everything that follows from what a sheet's steps touch is on it: each caution at each of
 * its steps, each check at its moment, and in front of lifting and lowering a step that leads to
 * the checks. Shares no code with the planner.
 */
final class ConsequenceCheck {
  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final TriggerIndex bringing;
  private final Set<String> checks = new HashSet<>();

  /** When the procedures' own checks are due, by their text. */
  private final Map<Statement, Moment> ownChecks = new HashMap<>();

  private final boolean everRaised;
  private final List<String> faults = new ArrayList<>();

  private ConsequenceCheck(
      Sheet sheet, SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    this.sheet = sheet;
    this.printed = printed;
    this.resolved = resolved;
    this.bringing = bringing;
    sheet.checks().forEach(check -> checks.add(check.name()));
    for (Task task : resolved.tasks().values()) {
      for (Procedure.Check own : task.procedure().checks()) {
        ownChecks.putIfAbsent(new Statement.Written(own.text().value()), own.moment().value());
      }
    }
    everRaised = printed.steps().stream().anyMatch(step -> holds(step.undo()));
  }

  static List<String> faults(
      Sheet sheet, SheetIndex printed, Resolved resolved, TriggerIndex bringing) {
    ConsequenceCheck followed = new ConsequenceCheck(sheet, printed, resolved, bringing);
    resolved.catalogue().cautions().values().forEach(followed::warned);
    followed.hazards();
    followed.protection();
    resolved.catalogue().rules().values().forEach(followed::checked);
    resolved.tasks().values().forEach(followed::ownChecks);
    sheet.torque().forEach(followed::lookedAtAgain);
    sheet.checks().stream().filter(check -> check.steps().isEmpty()).forEach(followed::inTime);
    return followed.faults;
  }

  /** Whoever works from any sheet of the job wears what its cautions ask for. */
  private void protection() {
    for (CautionLine caution : sheet.safety().cautions()) {
      if (caution.waivedBy().isEmpty()
          && !sheet.safety().protect().containsAll(caution.protect())) {
        faults.add(
            "caution "
                + caution.name()
                + " needs protective equipment that the sheet does not list");
      }
    }
  }

  private void warned(Catalogue.Caution caution) {
    String name = caution.name().value();
    List<Sheet.SheetStep> steps = bringing.steps(caution.when());
    boolean brought = !steps.isEmpty() || bringing.wholly(caution.when());
    Optional<CautionLine> line = printed.caution(name);
    if (brought && line.isEmpty()) {
      faults.add("caution " + name + " is missing, and a step, a tool or a procedure brings it");
    }
    line.ifPresent(found -> steps.forEach(step -> lettered(found, step)));
  }

  private void lettered(CautionLine line, Sheet.SheetStep step) {
    boolean waived = resolved.job().exceptions().waive().containsKey(line.name());
    if (waived != line.waivedBy().isPresent()) {
      faults.add("caution " + line.name() + " is waived by nobody, or by somebody unsaid");
    }
    if (!waived && !step.letters().all().contains(line.letter())) {
      faults.add("step " + step.n() + " lacks the letter of caution " + line.name());
    }
  }

  /** What a step names as its hazard, whichever step then does its work. */
  private void hazards() {
    for (Task task : resolved.tasks().values()) {
      task.open().forEach(step -> hazards(task, Sheet.Phase.OPEN, step));
      task.work().forEach(step -> hazards(task, Sheet.Phase.WORK, step));
      task.close().forEach(step -> hazards(task, Sheet.Phase.CLOSE, step));
    }
  }

  private void hazards(Task task, Sheet.Phase chain, BoundStep bound) {
    StepSource.WrittenAt at = StepSource.WrittenAt.of(task.procedure(), chain, bound.step());
    for (Located<String> hazard : bound.step().demands().hazards()) {
      Optional<CautionLine> line = printed.caution(hazard.value());
      if (line.isEmpty()) {
        faults.add("caution " + hazard.value() + " is missing, and " + at + " names it");
      }
      List<Sheet.SheetStep> steps = printed.written(at, task.id());
      boolean waived = resolved.job().exceptions().waive().containsKey(hazard.value());
      line.filter(
              caution ->
                  !waived
                      && !steps.isEmpty()
                      && steps.stream()
                          .noneMatch(step -> step.letters().all().contains(caution.letter())))
          .ifPresent(caution -> faults.add(at + " lacks the letter of " + hazard.value()));
    }
  }

  private void checked(Catalogue.Rule rule) {
    List<Sheet.SheetStep> steps = bringing.steps(rule.when());
    boolean evening = rule.moment().value() == Moment.EVENING_BEFORE;
    boolean there =
        evening
            ? sheet.evening().contains(new Statement.Written(rule.check().value()))
            : checks.contains(rule.name().value());
    boolean brought = !steps.isEmpty() || bringing.wholly(rule.when());
    if (brought && !there) {
      faults.add(
          "check "
              + rule.name().value()
              + " is missing, and a step, a tool or a procedure brings it");
    }
  }

  /** What a procedure itself asks to be checked, at each of its places. */
  private void ownChecks(Task task) {
    for (Procedure.Check own : task.procedure().checks()) {
      Statement text = new Statement.Written(own.text().value());
      boolean there =
          sheet.checks().stream()
                  .anyMatch(it -> it.text().equals(text) && it.places().contains(task.id().place()))
              || sheet.evening().contains(text);
      if (!there) {
        faults.add("\"" + own.text().value() + "\" is missing, a check of " + task.id());
      }
    }
  }

  /** What the book wants looked at again, or whatever holds a wheel that was off. */
  private void lookedAtAgain(TorqueLine line) {
    ItemAt item = new ItemAt(line.fastener(), line.places().get(0));
    boolean due =
        resolved.thing(item) instanceof Bound.OfBook book
            && book.values().written().method().recheck().isPresent();
    boolean there =
        sheet.checks().stream()
            .filter(check -> check.moment() == Moment.RE_CHECK)
            .anyMatch(
                check ->
                    check.name().equals("recheck-" + line.fastener())
                        && check.places().containsAll(line.places()));
    if ((due || holdsWheel(item)) && !there) {
      faults.add("line " + line.n() + " is not looked at again after a distance");
    }
  }

  /** Whether the next part that its work takes off where it was undone is a wheel. */
  private boolean holdsWheel(ItemAt item) {
    Optional<Sheet.SheetStep> undone =
        printed.steps().stream().filter(step -> step.undo().contains(item)).findFirst();
    return undone.isPresent()
        && printed.steps().stream()
            .filter(step -> step.n() >= undone.get().n())
            .filter(step -> step.procedure().equals(undone.get().procedure()))
            .flatMap(step -> step.undo().stream())
            .filter(part -> part.place().equals(item.place()))
            .filter(part -> !(resolved.thing(part) instanceof Bound.OfBook))
            .findFirst()
            .filter(part -> resolved.thing(part).isOf("wheel"))
            .isPresent();
  }

  /**
   * A check is due at the moment that its rule or procedure says; later only where the steps that
   * bring it come later, or where the vehicle is never up.
   */
  private void inTime(CheckLine check) {
    List<Sheet.SheetStep> because =
        printed.steps().stream().filter(step -> check.because().contains(step.n())).toList();
    Optional<Moment> written = written(check);
    if (written.isEmpty() && resolved.catalogue().rules().containsKey(check.name())) {
      faults.add("check \"" + check.name() + "\" says something else than its rule and its rows");
    }
    boolean excused =
        because.stream().anyMatch(step -> step.moment() == check.moment())
            || (!everRaised && check.moment() == Moment.ON_THE_GROUND);
    written
        .filter(moment -> check.moment() != moment)
        .filter(moment -> check.moment().compareTo(moment) < 0 || !excused)
        .ifPresent(
            moment ->
                faults.add(
                    "check \"" + check.name() + "\" is due " + moment + ", not " + check.moment()));
    for (Sheet.SheetStep step : because) {
      gated(check, step);
    }
  }

  private Optional<Moment> written(CheckLine check) {
    return Optional.ofNullable(resolved.catalogue().rules().get(check.name()))
        .filter(rule -> says(check, rule))
        .map(rule -> rule.moment().value())
        .or(() -> Optional.ofNullable(ownChecks.get(check.text())));
  }

  /** Whether a check is in the words of its rule, and names each row that it is about. */
  private boolean says(CheckLine check, Catalogue.Rule rule) {
    List<Integer> rows =
        sheet.torque().stream()
            .filter(line -> rule.rows() && isNamed(rule, line))
            .map(TorqueLine::n)
            .toList();
    String words = rule.check().value();
    Statement due =
        rows.isEmpty() ? new Statement.Written(words) : new Statement.OfRows(words, rows);
    return due.equals(check.text());
  }

  private boolean isNamed(Catalogue.Rule rule, TorqueLine line) {
    ItemAt fastener = new ItemAt(line.fastener(), line.places().get(0));
    return rule.when().stream()
        .flatMap(trigger -> trigger.names(Trigger.Condition.KIND).stream())
        .anyMatch(resolved.thing(fastener)::isOf);
  }

  /** Somebody who only follows the sequence comes to each check in time. */
  private void gated(CheckLine check, Sheet.SheetStep step) {
    int at = printed.at(step);
    if (check.moment() == Moment.BEFORE_LIFTING) {
      List<Sheet.SheetStep> before = printed.steps().subList(0, at);
      if (before.stream().noneMatch(one -> isGate(one, Moment.BEFORE_LIFTING))) {
        faults.add("no step before step " + step.n() + " leads to \"" + check.name() + "\"");
      }
    } else if (check.moment().compareTo(step.moment()) < 0) {
      faults.add("check \"" + check.name() + "\" is due before step " + step.n());
    } else if (check.moment().compareTo(Moment.BEFORE_LOWERING) <= 0) {
      lowering(check, step, at);
    }
  }

  private void lowering(CheckLine check, Sheet.SheetStep step, int at) {
    boolean gate = false;
    for (Sheet.SheetStep next : printed.steps().subList(at, printed.steps().size())) {
      gate |= isGate(next, Moment.RAISED);
      if (holds(next.doUp()) && next != step) {
        if (!gate) {
          faults.add(
              "the vehicle comes down at step " + next.n() + " before \"" + check.name() + "\"");
        }
        return;
      }
    }
  }

  private static boolean isGate(Sheet.SheetStep step, Moment moment) {
    return step.source() instanceof StepSource.Checkpoint && step.moment() == moment;
  }

  private boolean holds(List<ItemAt> items) {
    for (ItemAt item : items) {
      if (resolved.thing(item).isOf("support")) {
        return true;
      }
    }
    return false;
  }
}
