package baysheet.verify;

import baysheet.resolve.TaskId;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A finished sheet, looked up by what is printed on it. Everything that plays a sheet back asks
 * here; no planner does.
 */
final class SheetIndex {
  private final List<Sheet.SheetStep> steps;
  private final Map<String, List<Sheet.SheetStep>> byText = new HashMap<>();
  private final Map<Integer, List<Sheet.SheetStep>> byLine = new HashMap<>();
  private final Map<String, CautionLine> cautions = new HashMap<>();

  SheetIndex(Sheet sheet) {
    steps = sheet.steps();
    for (Sheet.SheetStep step : steps) {
      byText.computeIfAbsent(step.text(), key -> new ArrayList<>()).add(step);
      for (int line : step.torque()) {
        byLine.computeIfAbsent(line, key -> new ArrayList<>()).add(step);
      }
    }
    sheet.cautions().forEach(line -> cautions.putIfAbsent(line.name(), line));
  }

  /** All steps, in order. */
  List<Sheet.SheetStep> steps() {
    return steps;
  }

  /** The steps of a task that read so. */
  List<Sheet.SheetStep> reading(String text, TaskId task) {
    List<Sheet.SheetStep> found = new ArrayList<>();
    for (Sheet.SheetStep step : byText.getOrDefault(text, List.of())) {
      if (step.procedure().equals(task.procedure()) && step.places().contains(task.place())) {
        found.add(step);
      }
    }
    return found;
  }

  /** The steps that name a torque line. */
  List<Sheet.SheetStep> naming(TorqueLine line) {
    return byLine.getOrDefault(line.n(), List.of());
  }

  /** The line of a caution. */
  Optional<CautionLine> caution(String name) {
    return Optional.ofNullable(cautions.get(name));
  }
}
