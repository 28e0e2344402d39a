package baysheet.verify;

import baysheet.books.Moment;
import baysheet.plan.Lists;
import baysheet.resolve.ItemAt;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Sheets with one thing wrong, made from a sheet that holds; by what was done to them. */
public final class AlteredSheets {
  private final Sheet sheet;
  private final List<Sheet.SheetStep> steps;
  private final Map<String, Sheet> all = new LinkedHashMap<>();

  private AlteredSheets(Sheet sheet) {
    this.sheet = sheet;
    this.steps = sheet.steps();
  }

  /** Every way of spoiling a sheet that somebody could pay for. */
  public static Map<String, Sheet> all(Sheet sheet) {
    AlteredSheets spoilt = new AlteredSheets(sheet);
    for (int i = 0; i < spoilt.steps.size(); i++) {
      spoilt.step(i);
    }
    spoilt.swaps();
    spoilt.lines();
    spoilt.checks();
    return spoilt.all;
  }

  private void step(int index) {
    Sheet.SheetStep step = steps.get(index);
    boolean gate = step.phase() == Sheet.Phase.FINAL && step.torque().isEmpty();
    if (step.phase() == Sheet.Phase.CHECK) {
      outOfTurn(index);
    }
    if (step.phase() != Sheet.Phase.OPEN && step.phase() != Sheet.Phase.WORK) {
      // Without a gate only checks that some step brings come too late; others ask at any time.
      if (!gate || sheet.checks().stream().anyMatch(check -> guards(step, check))) {
        put("without step " + step.n(), Lists.without(steps, index));
      }
    }
    if (!step.undo().isEmpty()) {
      List<Sheet.SheetStep> twice = new ArrayList<>(steps);
      twice.add(index, step);
      put("step " + step.n() + " twice", twice);
    }
    unasked(index);
  }

  /** Where a figure is in doubt, without the second person who looks. */
  private void unasked(int index) {
    Sheet.SheetStep step = steps.get(index);
    boolean doubted =
        sheet.torque().stream()
            .filter(line -> step.torque().contains(line.n()) && line.inDoubt())
            .anyMatch(line -> !line.twoVisits() || step.phase() == Sheet.Phase.FINAL);
    if (doubted) {
      List<Sheet.SheetStep> changed = new ArrayList<>(steps);
      changed.set(index, withoutHold(step));
      put("step " + step.n() + " with nobody asked", changed);
    }
  }

  /** The same sheet with nothing but the text at its steps. */
  public static Sheet withoutDetails(Sheet sheet) {
    AlteredSheets spoilt = new AlteredSheets(sheet);
    spoilt.put(
        "", sheet.steps().stream().map(step -> changed(step, List.of(), step.hold())).toList());
    return spoilt.all.get("");
  }

  /** The same sheet with its steps in another order. */
  public static Sheet inOrder(Sheet sheet, List<Sheet.SheetStep> steps) {
    AlteredSheets spoilt = new AlteredSheets(sheet);
    spoilt.put("", steps);
    return spoilt.all.get("");
  }

  private static Sheet.SheetStep withoutHold(Sheet.SheetStep step) {
    return changed(step, step.details(), false);
  }

  private static Sheet.SheetStep changed(Sheet.SheetStep step, List<String> details, boolean hold) {
    return new Sheet.SheetStep(
        step.n(),
        step.phase(),
        step.moment(),
        step.places(),
        step.procedure(),
        step.text(),
        details,
        step.undo(),
        step.doUp(),
        step.disturb(),
        step.circuits(),
        step.torque(),
        step.cautions(),
        step.cautionsAbove(),
        step.minutes(),
        hold,
        step.entries(),
        step.because(),
        step.good(),
        step.ifStuck());
  }

  /** A check that is a step comes before a step that brings it. */
  private void outOfTurn(int index) {
    Sheet.SheetStep check = steps.get(index);
    for (CheckLine line : sheet.checks()) {
      if (line.steps().contains(check.n())) {
        List<Sheet.SheetStep> swapped = new ArrayList<>(steps);
        Collections.swap(swapped, index, line.because().get(0) - 1);
        put("check step " + check.n() + " too early", swapped);
      }
    }
  }

  private static boolean guards(Sheet.SheetStep gate, CheckLine check) {
    boolean lifting = gate.moment() == Moment.BEFORE_LIFTING;
    boolean stops = !check.because().isEmpty() || check.name().startsWith("torque-of-");
    return stops
        && (lifting
            ? check.moment() == Moment.BEFORE_LIFTING
            : check.moment() == Moment.RAISED || check.moment() == Moment.BEFORE_LOWERING);
  }

  /** What takes an item off changes places with what puts it on. */
  private void swaps() {
    for (int i = 0; i < steps.size(); i++) {
      for (int j = i + 1; j < steps.size(); j++) {
        if (share(steps.get(i).undo(), steps.get(j).doUp())) {
          List<Sheet.SheetStep> swapped = new ArrayList<>(steps);
          swapped.set(i, steps.get(j));
          swapped.set(j, steps.get(i));
          put("step " + steps.get(i).n() + " for step " + steps.get(j).n(), swapped);
        }
      }
    }
  }

  private static boolean share(List<ItemAt> some, List<ItemAt> others) {
    return some.stream().anyMatch(others::contains);
  }

  private void lines() {
    each(sheet.torque(), "torque line", AlteredSheets::torque);
    each(sheet.parts(), "part", AlteredSheets::parts);
    each(sheet.tally(), "tally row", AlteredSheets::tally);
    each(sheet.tools(), "tool", AlteredSheets::tools);
    for (Sheet.ToolLine tool : sheet.tools()) {
      if (!tool.ifStuck()) {
        all.put(
            tool.name() + " if stuck only",
            tools(sheet, Lists.replaced(sheet.tools(), tool, AlteredSheets::ifStuck)));
      }
    }
    List<CautionLine> grave =
        sheet.cautions().stream()
            .filter(line -> line.signal().equals("DANGER") || line.signal().equals("WARNING"))
            .toList();
    for (CautionLine line : grave) {
      if (!line.steps().isEmpty()) {
        all.put("without caution " + line.name(), cautions(Lists.less(sheet.cautions(), line)));
      }
    }
  }

  private static Sheet.ToolLine ifStuck(Sheet.ToolLine tool) {
    return new Sheet.ToolLine(tool.name(), tool.special(), tool.owned(), true);
  }

  private interface Part<T> {
    Sheet in(Sheet sheet, List<T> list);
  }

  private <T> void each(List<T> list, String what, Part<T> part) {
    IntStream.range(0, list.size())
        .forEach(
            i ->
                all.put("without " + what + " " + (i + 1), part.in(sheet, Lists.without(list, i))));
  }

  private void checks() {
    for (CheckLine check : sheet.checks()) {
      all.put(
          "without check " + check.name() + " at " + check.moment(),
          checks(Lists.less(sheet.checks(), check)));
      if (check.because().isEmpty()) {
        continue;
      }
      for (Moment moment : Moment.values()) {
        if (moment.compareTo(check.moment()) < 0 && check.moment() != Moment.RE_CHECK) {
          all.put(
              check.name() + " at " + moment,
              checks(Lists.replaced(sheet.checks(), check, one -> at(one, moment))));
        }
      }
    }
  }

  private static CheckLine at(CheckLine check, Moment moment) {
    return new CheckLine(
        check.name(),
        moment,
        check.text(),
        check.places(),
        check.because(),
        check.steps(),
        check.reason(),
        check.hold(),
        check.needs(),
        check.keepsOpen(),
        check.releasedBy(),
        check.source());
  }

  private void put(String what, List<Sheet.SheetStep> changed) {
    Sheet.Section first = sheet.sections().get(0);
    Sheet.Section one =
        new Sheet.Section(
            first.heading(),
            first.named(),
            first.note(),
            first.phase(),
            first.moment(),
            first.places(),
            changed);
    all.put(what, with(List.of(one), sheet.torque(), sheet.parts(), sheet.tally()));
  }

  private static Sheet torque(Sheet sheet, List<TorqueLine> lines) {
    return new AlteredSheets(sheet).with(sheet.sections(), lines, sheet.parts(), sheet.tally());
  }

  private static Sheet parts(Sheet sheet, List<Sheet.PartLine> lines) {
    return new AlteredSheets(sheet).with(sheet.sections(), sheet.torque(), lines, sheet.tally());
  }

  private static Sheet tally(Sheet sheet, List<Sheet.TallyLine> lines) {
    return new AlteredSheets(sheet).with(sheet.sections(), sheet.torque(), sheet.parts(), lines);
  }

  private static Sheet tools(Sheet sheet, List<Sheet.ToolLine> tools) {
    return new AlteredSheets(sheet)
        .sheet(
            sheet.cautions(),
            sheet.sections(),
            sheet.torque(),
            tools,
            sheet.parts(),
            sheet.tally(),
            sheet.checks());
  }

  private Sheet with(
      List<Sheet.Section> sections,
      List<TorqueLine> torque,
      List<Sheet.PartLine> parts,
      List<Sheet.TallyLine> tally) {
    return sheet(sheet.cautions(), sections, torque, sheet.tools(), parts, tally, sheet.checks());
  }

  private Sheet cautions(List<CautionLine> cautions) {
    return sheet(
        cautions,
        sheet.sections(),
        sheet.torque(),
        sheet.tools(),
        sheet.parts(),
        sheet.tally(),
        sheet.checks());
  }

  private Sheet checks(List<CheckLine> checks) {
    return sheet(
        sheet.cautions(),
        sheet.sections(),
        sheet.torque(),
        sheet.tools(),
        sheet.parts(),
        sheet.tally(),
        checks);
  }

  private Sheet sheet(
      List<CautionLine> cautions,
      List<Sheet.Section> sections,
      List<TorqueLine> torque,
      List<Sheet.ToolLine> tools,
      List<Sheet.PartLine> parts,
      List<Sheet.TallyLine> tally,
      List<CheckLine> checks) {
    return new Sheet(
        sheet.heading(),
        sheet.qualified(),
        cautions,
        sheet.evening(),
        sections,
        torque,
        sheet.sockets(),
        tools,
        parts,
        sheet.consumables(),
        tally,
        checks,
        sheet.support(),
        sheet.time(),
        sheet.notes(),
        sheet.sources());
  }
}
