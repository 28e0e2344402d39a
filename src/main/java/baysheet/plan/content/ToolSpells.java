package baysheet.plan.content;

import baysheet.books.Procedure;
import baysheet.books.ToolNames;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import baysheet.sheet.ToolSpell;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * When special tools are in use. A tool stays where it is from the first to the last step that one
 * task does with it, and as long as it holds something: a support until it is taken away, a
 * compressed spring until it is let out. A tool that a procedure names for none of its steps is
 * used as long as the task lasts.
 */
public final class ToolSpells {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final Map<Use, int[]> spells = new LinkedHashMap<>();

  private ToolSpells(Resolved resolved, List<PlacedStep> lines) {
    this.resolved = resolved;
    this.lines = lines;
  }

  /** Who uses what: spells of one task become one. */
  private record Use(String tool, TaskId task) {}

  /** All spells, those of one tool apart from each other. */
  public static List<ToolSpell> of(
      Resolved resolved, List<PlacedStep> lines, List<TorqueTable.Selected> torque) {
    ToolSpells spells = new ToolSpells(resolved, lines);
    for (int i = 0; i < lines.size(); i++) {
      spells.ofSteps(i);
    }
    torque.forEach(spells::ofTightening);
    spells.ofProcedures();
    return spells.joined();
  }

  private void ofSteps(int line) {
    for (PlannedStep step : lines.get(line).all()) {
      for (Procedure.Use use : step.uses()) {
        if (use.special() && !use.ifStuck()) {
          add(new Use(use.name(), step.task()), line, held(line, step));
        }
      }
    }
  }

  /**
   * The line that lets go of what a step holds with its tool; the line itself where it holds
   * nothing.
   */
  private int held(int line, PlannedStep step) {
    Set<ItemAt> holds = new HashSet<>();
    Stream.concat(step.undo().stream(), step.disturb().stream())
        .filter(item -> holds(resolved.thing(item)))
        .forEach(holds::add);
    int last = line;
    for (int i = line + 1; i < lines.size() && !holds.isEmpty(); i++) {
      boolean undone = lines.get(i).all().stream().anyMatch(later -> putsBack(later, step));
      if (undone || lines.get(i).doUp().stream().anyMatch(holds::contains)) {
        last = i;
      }
    }
    return last;
  }

  /** What a step disturbs is not off, so the step that puts it back is known by its source. */
  private static boolean putsBack(PlannedStep later, PlannedStep step) {
    return later.task().equals(step.task())
        && later.source() instanceof StepSource.Back back
        && step.source() instanceof StepSource.Written written
        && back.of().equals(written.at());
  }

  private static boolean holds(Bound thing) {
    return thing.isTemporary() || thing.isOf("spring");
  }

  /** Angle gauges, crow-feet and adapters are in hand while their row is tightened. */
  private void ofTightening(TorqueTable.Selected selected) {
    List<String> tools = new ArrayList<>(selected.selection().adapters());
    TorqueLine row = selected.line();
    if (row.method().stages().stream().anyMatch(TorqueLine.StageLine.Angle.class::isInstance)) {
      tools.add(ToolNames.ANGLE_GAUGE);
    }
    row.hardware()
        .socket()
        .flatMap(TorqueLine.SocketNeed::insert)
        .ifPresent(
            reach -> tools.add(ToolNames.crowFoot(row.hardware().head().orElseThrow(), reach)));
    for (int i = 0; i < lines.size() && !tools.isEmpty(); i++) {
      for (PlannedStep step : lines.get(i).all()) {
        if (Stream.concat(step.doUp().stream(), step.tighten().stream())
            .anyMatch(item -> isOf(row, item))) {
          int line = i;
          tools.forEach(tool -> add(new Use(tool, step.task()), line, line));
        }
      }
    }
  }

  private static boolean isOf(TorqueLine row, ItemAt item) {
    return row.fastener().equals(item.item()) && row.places().contains(item.place());
  }

  private void ofProcedures() {
    for (Task task : resolved.tasks().values()) {
      for (Located<Procedure.Use> use : task.procedure().needs().uses()) {
        Use of = new Use(use.value().name(), task.id());
        if (use.value().special() && !use.value().ifStuck() && !spells.containsKey(of)) {
          for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).all().stream().anyMatch(step -> step.task().equals(task.id()))) {
              add(of, i, i);
            }
          }
        }
      }
    }
  }

  private void add(Use use, int first, int last) {
    spells.merge(
        use,
        new int[] {first + 1, last + 1},
        (one, other) -> new int[] {Math.min(one[0], other[0]), Math.max(one[1], other[1])});
  }

  /** Spells of one tool that overlap, on two sides of a vehicle, are one. */
  private List<ToolSpell> joined() {
    List<ToolSpell> joined = new ArrayList<>();
    spells.entrySet().stream()
        .map(it -> new ToolSpell(it.getKey().tool(), it.getValue()[0], it.getValue()[1]))
        .sorted(Comparator.comparing(ToolSpell::tool).thenComparingInt(ToolSpell::first))
        .forEach(
            spell -> {
              int end = joined.size() - 1;
              boolean together =
                  end >= 0
                      && joined.get(end).tool().equals(spell.tool())
                      && joined.get(end).last() >= spell.first();
              if (together) {
                ToolSpell before = joined.remove(end);
                joined.add(
                    new ToolSpell(
                        spell.tool(), before.first(), Math.max(before.last(), spell.last())));
              } else {
                joined.add(spell);
              }
            });
    return joined;
  }
}
