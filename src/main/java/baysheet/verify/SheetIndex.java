package baysheet.verify;

import baysheet.resolve.TaskId;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
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
  private final Map<StepSource.WrittenAt, List<Sheet.SheetStep>> written = new HashMap<>();
  private final Map<StepSource.WrittenAt, List<Sheet.SheetStep>> backs = new HashMap<>();
  private final Map<Integer, List<Sheet.SheetStep>> byLine = new HashMap<>();
  private final Map<String, CautionLine> cautions = new HashMap<>();

  SheetIndex(Sheet sheet) {
    steps = sheet.steps();
    for (Sheet.SheetStep step : steps) {
      if (step.source() instanceof StepSource.Written from) {
        written.computeIfAbsent(from.at(), key -> new ArrayList<>()).add(step);
      } else if (step.source() instanceof StepSource.Back from) {
        backs.computeIfAbsent(from.of(), key -> new ArrayList<>()).add(step);
      }
      for (int line : step.torque()) {
        byLine.computeIfAbsent(line, key -> new ArrayList<>()).add(step);
      }
    }
    sheet.safety().cautions().forEach(line -> cautions.putIfAbsent(line.name(), line));
  }

  /** All steps, in order. */
  List<Sheet.SheetStep> steps() {
    return steps;
  }

  /**
   * The index of one of these steps.
   *
   * @throws IllegalArgumentException when it is none of them
   */
  int at(Sheet.SheetStep step) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i) == step) {
        return i;
      }
    }
    throw new IllegalArgumentException("step " + step.n() + " is not of this sheet");
  }

  /** The steps that a task writes there, at its place. */
  List<Sheet.SheetStep> written(StepSource.WrittenAt at, TaskId task) {
    return of(written.getOrDefault(at, List.of()), task);
  }

  /** The steps that put back, in the procedure's own words, what a step of a task took off. */
  List<Sheet.SheetStep> backs(StepSource.WrittenAt of, TaskId task) {
    return of(backs.getOrDefault(of, List.of()), task);
  }

  private static List<Sheet.SheetStep> of(List<Sheet.SheetStep> steps, TaskId task) {
    return steps.stream()
        .filter(step -> step.procedure().equals(task.procedure()))
        .filter(step -> step.places().contains(task.place()))
        .toList();
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
