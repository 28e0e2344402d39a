package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Fastener;
import baysheet.books.Procedure;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Drive;
import baysheet.torque.Wrench;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Whether every tool that steps, checks and the torque table ask for is laid out, and none that the
 * work itself asks for as one for ways out only. Shares no code with the planner.
 */
final class ToolListCheck {
  private final Sheet sheet;
  private final SheetIndex printed;
  private final Resolved resolved;
  private final Map<String, Sheet.ToolLine> tools = new HashMap<>();
  private final List<String> faults = new ArrayList<>();

  private ToolListCheck(Sheet sheet, SheetIndex printed, Resolved resolved) {
    this.sheet = sheet;
    this.printed = printed;
    this.resolved = resolved;
    sheet.equipment().tools().forEach(tool -> tools.put(tool.name(), tool));
  }

  static List<String> faults(Sheet sheet, SheetIndex printed, Resolved resolved) {
    ToolListCheck laid = new ToolListCheck(sheet, printed, resolved);
    for (Task task : resolved.tasks().values()) {
      if (sheet.stage().isEmpty() || laid.hasStepOf(task)) {
        laid.needs(laid.wanted(task), "procedure " + task.procedure().name().value());
      }
    }
    printed.steps().forEach(laid::step);
    resolved.catalogue().rules().values().forEach(laid::check);
    sheet.torque().forEach(laid::line);
    return laid.faults;
  }

  private boolean hasStepOf(Task task) {
    return stepsOf(task).findAny().isPresent();
  }

  private Stream<Sheet.SheetStep> stepsOf(Task task) {
    return printed.steps().stream()
        .filter(step -> step.procedure().equals(task.id().procedure()))
        .filter(step -> step.places().contains(task.id().place()));
  }

  /** What only ways out ask for is wanted where a step on the sheet has one. */
  private List<Located<Procedure.Use>> wanted(Task task) {
    boolean stuck =
        stepsOf(task)
            .flatMap(
                step -> WrittenSteps.of(step, Map.of(step.procedure(), task.procedure())).stream())
            .anyMatch(step -> !step.teaching().ifStuck().isEmpty());
    return task.procedure().needs().uses().stream()
        .filter(use -> stuck || !use.value().ifStuck())
        .toList();
  }

  private void needs(List<Located<Procedure.Use>> uses, String what) {
    uses.forEach(use -> needs(use.value().name(), use.value().ifStuck(), what));
  }

  private void needs(String tool, String what) {
    needs(tool, false, what);
  }

  private void needs(String name, boolean ifStuck, String what) {
    Sheet.ToolLine tool = tools.get(name);
    if (tool == null) {
      faults.add(what + " asks for " + name + ", and nobody lays it out");
    } else if (tool.ifStuck() && !ifStuck) {
      faults.add(what + " asks for " + name + ", stuck or not");
    }
  }

  private void step(Sheet.SheetStep step) {
    String what = "step " + step.n();
    if (step.phase() == Sheet.Phase.CHECK) {
      Catalogue.Rule rule = resolved.catalogue().rules().get(step.procedure());
      rule.step().ifPresent(check -> needs(check.uses(), what));
    } else if (step.source() instanceof StepSource.Chocks chocks && chocks.set()) {
      needs("wheel chocks", what);
    } else if (step.source() instanceof StepSource.Blocks blocks && blocks.part().isOfAxle()) {
      resolved.tasks().values().stream()
          .filter(
              task ->
                  task.open().stream()
                      .flatMap(one -> one.undo().stream())
                      .anyMatch(item -> resolved.thing(item).isOf("support")))
          .findFirst()
          .ifPresent(task -> needs(task.procedure().needs().uses(), what));
    } else if (step.phase().isWork()) {
      Task task = resolved.tasks().get(new TaskId(step.procedure(), step.places().get(0)));
      WrittenSteps.of(step, Map.of(step.procedure(), task.procedure()))
          .ifPresent(written -> needs(written.demands().uses(), what));
    }
  }

  private void check(Catalogue.Rule rule) {
    String text = rule.check().value();
    boolean due =
        sheet.evening().contains(new Statement.Written(text))
            || sheet.checks().stream()
                .anyMatch(it -> it.name().equals(rule.name().value()) && it.text().isWritten(text));
    if (due) {
      needs(rule.uses(), "check " + rule.name().value());
    }
  }

  /** A pen marks it, a gauge turns it on; between another square and it stands an adapter. */
  private void line(TorqueLine line) {
    String what = "torque line " + line.n();
    needs("paint pen", what);
    line.refitting().remarks().stream()
        .map(remark -> remark.text().split("[;(]|[,.](?!\\d)")[0])
        .filter(note -> note.startsWith("hold ") && note.contains(": "))
        .forEach(note -> needs(note.substring(note.indexOf(": ") + 2).strip(), what));
    if (line.visits().rideHeight()) {
      needs("solid wheel blocks", what);
      needs("wheel chocks", what);
    }
    crowFoot(line).ifPresent(tool -> needs(tool, what));
    line.method()
        .rounds()
        .forEach(round -> round.wrench().ifPresent(wrench -> joined(line, wrench)));
    for (TorqueLine.StageLine stage : line.method().stages()) {
      if (stage instanceof TorqueLine.StageLine.Torque torque) {
        torque.wrench().ifPresent(wrench -> joined(line, wrench));
      } else {
        needs("angle gauge", what);
      }
    }
  }

  private Optional<String> crowFoot(TorqueLine line) {
    ItemAt item = new ItemAt(line.fastener(), line.places().get(0));
    Fastener fastener = ((Bound.OfBook) resolved.thing(item)).values();
    return fastener
        .reach()
        .filter(reach -> line.hardware().head().isPresent())
        .map(
            reach ->
                "%s %s, reach %s"
                    .formatted(
                        reach.tool().print(),
                        line.hardware().head().get().print(),
                        reach.length().print()))
        .map(ToolListCheck::typed);
  }

  /**
   * A wrench goes on the line's socket, on another for the same head that is laid out, or on one of
   * these by an adapter that is.
   */
  private void joined(TorqueLine line, String wrench) {
    Optional<Drive> square =
        resolved.shop().crib().wrenches().stream()
            .map(Located::value)
            .filter(known -> known.name().equals(wrench))
            .map(Wrench::drive)
            .findFirst();
    if (square.isEmpty() || line.hardware().socket().isEmpty()) {
      return;
    }
    Set<Drive> squares = new HashSet<>(Set.of(line.hardware().socket().get().drive()));
    sheet.equipment().sockets().stream()
        .filter(socket -> line.hardware().head().equals(Optional.of(socket.head())))
        .filter(
            socket ->
                socket.insert().isPresent() == line.hardware().socket().get().insert().isPresent())
        .forEach(socket -> squares.add(socket.drive()));
    boolean goesOn =
        squares.contains(square.get())
            || squares.stream()
                .map(
                    to -> tools.get(typed("adapter " + square.get().print() + " to " + to.print())))
                .anyMatch(adapter -> adapter != null && !adapter.ifStuck());
    if (!goesOn) {
      faults.add("torque line " + line.n() + ": no socket laid out goes on wrench " + wrench);
    }
  }

  /** As it is typed in the crib. */
  private static String typed(String name) {
    return name.replace('\u00a0', ' ');
  }
}
