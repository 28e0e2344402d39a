package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.plan.Lists;
import baysheet.resolve.ItemAt;
import baysheet.rules.Altered;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
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
    AlteredSheets altered = new AlteredSheets(sheet);
    for (int i = 0; i < altered.steps.size(); i++) {
      altered.step(i);
    }
    altered.swaps();
    altered.lines();
    altered.checks();
    return altered.all;
  }

  private void step(int index) {
    Sheet.SheetStep step = steps.get(index);
    boolean gate = step.source() instanceof StepSource.Checkpoint;
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
    otherIdentity(index);
    // The brake that is applied first of all changes no height.
    if (step.source() instanceof StepSource.HeightChange change && change.from() != change.to()) {
      asHighAsBefore(index);
      movedBy(index, -1);
      movedBy(index, 1);
      change(
          index,
          "change at step " + step.n() + " from elsewhere",
          new StepSource.HeightChange(change.to(), change.to(), change.part()));
    }
  }

  /** Without a change of height, every step up to the next one said to be as high as before. */
  private void asHighAsBefore(int index) {
    List<Sheet.SheetStep> changed = new ArrayList<>(steps.subList(0, index));
    Height height = steps.get(index - 1).height();
    int next = index + 1;
    while (next < steps.size() && steps.get(next).height() == steps.get(index).height()) {
      changed.add(at(steps.get(next), height));
      next++;
    }
    changed.addAll(steps.subList(next, steps.size()));
    put("without the change at step " + steps.get(index).n(), changed);
  }

  /** A change of height one step earlier or later, and the other step as high as it is then. */
  private void movedBy(int index, int by) {
    List<Sheet.SheetStep> changed = new ArrayList<>(steps);
    Collections.swap(changed, index, index + by);
    put("change at step " + steps.get(index).n() + " moved by " + by, changed);
  }

  private static Sheet.SheetStep at(Sheet.SheetStep step, Height height) {
    return Altered.with(step, "where", new Sheet.Where(step.moment(), height, step.places()));
  }

  /** Where a figure is in doubt, without the second person who looks. */
  private void unasked(int index) {
    Sheet.SheetStep step = steps.get(index);
    boolean doubted =
        sheet.torque().stream()
            .filter(line -> step.torque().contains(line.n()) && line.inDoubt())
            .anyMatch(line -> !line.visits().two() || step.phase() == Sheet.Phase.FINAL);
    if (doubted) {
      List<Sheet.SheetStep> changed = new ArrayList<>(steps);
      changed.set(index, Altered.with(step, "hold", false));
      put("step " + step.n() + " with nobody asked", changed);
    }
  }

  /** The same sheet with nothing but the text at its steps. */
  public static Sheet withoutDetails(Sheet sheet) {
    return inOrder(
        sheet,
        sheet.steps().stream().map(step -> Altered.with(step, "details", List.of())).toList());
  }

  /** The same sheet without a check of that name. */
  static Sheet withoutCheck(Sheet sheet, String name) {
    return Altered.with(
        sheet,
        "checks",
        sheet.checks().stream().filter(check -> !check.name().equals(name)).toList());
  }

  /** The same sheet with its steps in another order. */
  public static Sheet inOrder(Sheet sheet, List<Sheet.SheetStep> steps) {
    AlteredSheets altered = new AlteredSheets(sheet);
    altered.put("", steps);
    return altered.all.get("");
  }

  /** The steps as they stand, of which one says that it is another of its procedure. */
  private void otherIdentity(int index) {
    Sheet.SheetStep step = steps.get(index);
    if (step.source() instanceof StepSource.Written written) {
      StepSource.WrittenAt at = written.at();
      StepSource.WrittenAt next =
          new StepSource.WrittenAt(at.procedure(), at.chain(), at.index() + 1);
      change(index, "step " + step.n() + " as the next one", written(next, written.text()));
      change(index, "step " + step.n() + " in other words", written(at, "Go home"));
    }
  }

  private static StepSource written(StepSource.WrittenAt at, String text) {
    return new StepSource.Written(at, text);
  }

  private void change(int index, String what, StepSource source) {
    List<Sheet.SheetStep> changed = new ArrayList<>(steps);
    changed.set(index, Altered.with(steps.get(index), "source", source));
    put(what, changed);
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
    each(sheet.torque(), "torque line", "torque");
    each(sheet.equipment().parts(), "part", "equipment.parts");
    each(sheet.tally(), "tally row", "tally");
    each(sheet.equipment().tools(), "tool", "equipment.tools");
    for (Sheet.ToolLine tool : sheet.equipment().tools()) {
      if (!tool.ifStuck()) {
        all.put(
            tool.name() + " if stuck only",
            Altered.with(
                sheet,
                "equipment.tools",
                Lists.replaced(sheet.equipment().tools(), tool, AlteredSheets::ifStuck)));
      }
    }
    List<CautionLine> grave =
        sheet.safety().cautions().stream()
            .filter(line -> line.signal().compareTo(Catalogue.Signal.WARNING) <= 0)
            .toList();
    for (CautionLine line : grave) {
      if (!line.steps().isEmpty()) {
        all.put(
            "without caution " + line.name(),
            Altered.with(sheet, "safety.cautions", Lists.less(sheet.safety().cautions(), line)));
      }
    }
  }

  private static Sheet.ToolLine ifStuck(Sheet.ToolLine tool) {
    return new Sheet.ToolLine(tool.name(), tool.special(), tool.owned(), true);
  }

  private void each(List<?> list, String what, String component) {
    IntStream.range(0, list.size())
        .forEach(
            i ->
                all.put(
                    "without " + what + " " + (i + 1),
                    Altered.with(sheet, component, Lists.without(list, i))));
  }

  private void checks() {
    for (CheckLine check : sheet.checks()) {
      all.put(
          "without check " + check.name() + " at " + check.moment(),
          Altered.with(sheet, "checks", Lists.less(sheet.checks(), check)));
      if (check.because().isEmpty()) {
        continue;
      }
      for (Moment moment : Moment.values()) {
        if (moment.compareTo(check.moment()) < 0 && check.moment() != Moment.RE_CHECK) {
          all.put(
              check.name() + " at " + moment,
              Altered.with(
                  sheet,
                  "checks",
                  Lists.replaced(
                      sheet.checks(), check, one -> Altered.with(one, "moment", moment))));
        }
      }
    }
  }

  private void put(String what, List<Sheet.SheetStep> changed) {
    Sheet.Section one = Altered.with(sheet.sections().get(0), "steps", changed);
    all.put(what, Altered.with(sheet, "sections", List.of(one)));
  }
}
