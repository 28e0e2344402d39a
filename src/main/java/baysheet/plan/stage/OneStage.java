package baysheet.plan.stage;

import baysheet.books.Place;
import baysheet.plan.content.Headings;
import baysheet.plan.content.TimeEstimate;
import baysheet.plan.content.ToolList;
import baysheet.plan.content.TorqueTable.Selected;
import baysheet.plan.graph.PlacedStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Detail;
import baysheet.sheet.PartLine;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;

/** The sheet of one stage in the making. */
final class OneStage {
  private final StageSheets job;
  private final int from;
  private final int to;

  /** The boundary behind its last step. */
  private final int lastStep;

  private final List<PlacedStep> own;
  private final List<Selected> rows = new ArrayList<>();

  /** Lines of fasteners that go on here, whether they get their final torque here or not. */
  private final List<TorqueLine> installed = new ArrayList<>();

  private final List<CheckLine> checks = new ArrayList<>();
  private final List<CautionLine> cautions;

  OneStage(StageSheets job, int from, int to) {
    this.job = job;
    this.from = from;
    this.to = to;
    this.lastStep = Math.min(to, job.lines.size());
    this.own = job.lines.subList(from, lastStep);
    job.torque.forEach(this::row);
    for (int i = 0; i < job.whole.checks().size(); i++) {
      check(i);
    }
    this.cautions = new StageCautions(job, from, lastStep).all();
  }

  private boolean isLast() {
    return to == job.end();
  }

  private boolean isOwn(int line) {
    return from <= line && line < to;
  }

  private List<Integer> own(List<Integer> steps) {
    return steps.stream().filter(n -> isOwn(n - 1)).toList();
  }

  private void row(Selected selected) {
    TorqueLine line = selected.line();
    List<Place> places =
        line.places().stream()
            .filter(place -> isOwn(job.tightened.get(new ItemAt(line.fastener(), place))))
            .toList();
    if (!places.isEmpty()) {
      TorqueLine here = places.equals(line.places()) ? line : line.at(places);
      rows.add(new Selected(here, selected.selection()));
    }
    boolean goesOn =
        own.stream()
            .flatMap(step -> step.doUp().stream())
            .anyMatch(
                item ->
                    item.item().equals(line.fastener()) && line.places().contains(item.place()));
    if (goesOn) {
      installed.add(line);
    }
  }

  private void check(int index) {
    CheckLine check = job.whole.checks().get(index);
    List<Integer> steps = own(check.steps());
    if (!steps.isEmpty()) {
      checks.add(check.as(steps));
    } else if (check.steps().isEmpty() && isOwn(job.dueAt.get(index))) {
      checks.add(check);
    }
  }

  /**
   * @param sheetOf the number of the sheet on which a step is, counted from 0
   */
  Sheet sheet(int n, int of, IntUnaryOperator sheetOf) {
    ToolList layOut = new ToolList(job.resolved, own, using(), fitting());
    List<TorqueLine> table = rows.stream().map(Selected::line).toList();
    List<CheckLine> due = new ArrayList<>(checks);
    if (from == 0) {
      due.addAll(job.evening);
    }
    return new Sheet(
        job.whole.heading(),
        new Sheet.Safety(qualified(), cautions, job.whole.safety().protect(), support()),
        from == 0 ? job.whole.evening() : List.of(),
        sections(),
        table,
        new Sheet.Equipment(
            Headings.wrenches(job.resolved, table),
            job.sockets.between(from, lastStep),
            layOut.tools(rows, due),
            parts(layOut),
            layOut.consumables(union(table, installed), job.filled)),
        job.whole.tally().stream().filter(line -> isOwn(line.on() - 1)).toList(),
        checks,
        new TimeEstimate(job.resolved).of(own, 0),
        job.whole.notes(),
        Headings.sources(job.resolved, table),
        Optional.of(stage(n, of, table, sheetOf)));
  }

  private static List<TorqueLine> union(List<TorqueLine> some, List<TorqueLine> others) {
    Map<Integer, TorqueLine> all = new LinkedHashMap<>();
    some.forEach(line -> all.put(line.n(), line));
    others.forEach(line -> all.putIfAbsent(line.n(), line));
    return List.copyOf(all.values());
  }

  private List<Task> using() {
    Set<TaskId> own = new HashSet<>();
    this.own.forEach(line -> line.all().forEach(step -> own.add(step.task())));
    job.fitted.forEach(
        (task, line) -> {
          if (isOwn(line)) {
            own.add(task);
          }
        });
    return job.resolved.tasks().values().stream().filter(it -> own.contains(it.id())).toList();
  }

  private List<Task> fitting() {
    return job.resolved.tasks().values().stream()
        .filter(task -> isOwn(job.fitted.get(task.id())))
        .toList();
  }

  /** A single-use fastener that a procedure lists as well goes on where it is tightened. */
  private List<PartLine> parts(ToolList layOut) {
    Set<String> fasteners =
        job.whole.equipment().parts().stream()
            .filter(PartLine::fastener)
            .map(PartLine::part)
            .collect(Collectors.toSet());
    return layOut.parts().stream()
        .filter(part -> part.fastener() || !fasteners.contains(part.part()))
        .toList();
  }

  private List<QualifiedWork> qualified() {
    List<Statement> texts = checks.stream().map(CheckLine::text).toList();
    return job.whole.safety().qualified().stream()
        .map(
            work ->
                new QualifiedWork(
                    work.qualification(),
                    work.words(),
                    own(work.steps()),
                    work.by(),
                    own(work.holds()),
                    work.checks().stream().filter(texts::contains).toList(),
                    work.second()))
        .filter(work -> !work.steps().isEmpty() || !work.checks().isEmpty())
        .toList();
  }

  private List<Support> support() {
    Set<String> raised = new HashSet<>();
    job.progress()
        .subList(from, lastStep + 1)
        .forEach(at -> at.raised().forEach(place -> raised.add(place.word())));
    List<Support> these =
        job.whole.safety().support().stream().filter(one -> raised.contains(one.raised())).toList();
    // A vehicle that is raised as a whole has a support for each axle, or one of its own name.
    return raised.isEmpty() || !these.isEmpty() ? these : job.whole.safety().support();
  }

  private List<Sheet.Section> sections() {
    List<Sheet.Section> sections = new ArrayList<>();
    Optional<Sheet.Stretch> sides = Optional.empty();
    for (Sheet.Section section : job.whole.sections()) {
      Optional<Sheet.Stretch> before = sides;
      sides = section.oneSideFirst().or(() -> going(before, section));
      List<SheetStep> steps = section.steps().stream().filter(step -> isOwn(step.n() - 1)).toList();
      if (!steps.isEmpty()) {
        boolean begins = section.oneSideFirst().isPresent() || sections.isEmpty();
        sections.add(
            new Sheet.Section(
                section.title(),
                section.places(),
                sides.filter(any -> begins).flatMap(this::clipped),
                steps.stream().map(this::step).toList()));
      }
    }
    return sections;
  }

  /** A stretch that goes on into a section. */
  private static Optional<Sheet.Stretch> going(
      Optional<Sheet.Stretch> sides, Sheet.Section section) {
    return sides.filter(it -> section.steps().get(0).n() <= it.last());
  }

  private Optional<Sheet.Stretch> clipped(Sheet.Stretch sides) {
    int first = Math.max(sides.first(), from + 1);
    int last = Math.min(sides.last(), lastStep);
    return last > first ? Optional.of(new Sheet.Stretch(first, last)) : Optional.empty();
  }

  private SheetStep step(SheetStep step) {
    List<String> above =
        cautions.stream()
            .filter(it -> step.letters().all().contains(it.letter()))
            .filter(it -> !it.onTop() && !it.collapsed() && it.steps().get(0) == step.n())
            .map(CautionLine::letter)
            .toList();
    return step.with(new Sheet.Letters(step.letters().all(), above));
  }

  private Stage stage(int n, int of, List<TorqueLine> table, IntUnaryOperator sheetOf) {
    VehicleStates states = new VehicleStates(job.resolved, job.whole, job.progress());
    return new Stage(
        n,
        of,
        from == 0 ? Optional.empty() : Optional.of(states.at(from)),
        isLast() ? Optional.empty() : Optional.of(states.at(to)),
        elsewhere(table),
        sheets(table, sheetOf),
        isLast()
            ? job.whole.checks().stream()
                .flatMap(check -> check.releasedBy().stream())
                .distinct()
                .toList()
            : List.of());
  }

  private Map<Integer, Integer> sheets(List<TorqueLine> table, IntUnaryOperator sheetOf) {
    Map<Integer, Integer> sheets = new HashMap<>();
    for (TorqueLine line : job.whole.torque()) {
      int step =
          line.places().stream()
              .mapToInt(place -> job.tightened.get(new ItemAt(line.fastener(), place)))
              .max()
              .orElseThrow();
      sheets.put(line.n(), sheetOf.applyAsInt(step));
    }
    table.forEach(line -> sheets.remove(line.n()));
    return sheets;
  }

  /**
   * Lines of other stages that a step of this one names; for the last stage also those that are
   * checked again after a distance, about which the customer is informed at the end.
   */
  private List<TorqueLine> elsewhere(List<TorqueLine> table) {
    Set<Integer> named = new HashSet<>();
    for (SheetStep step : job.whole.steps().subList(from, lastStep)) {
      named.addAll(step.torque());
      for (Detail detail : step.details()) {
        if (detail instanceof Detail.Removed removed) {
          named.add(removed.line());
        } else if (detail instanceof Detail.Slackened slackened) {
          named.add(slackened.line());
        }
      }
    }
    if (isLast()) {
      job.whole.torque().stream()
          .filter(line -> line.visits().recheck().isPresent())
          .forEach(line -> named.add(line.n()));
    }
    table.forEach(line -> named.remove(line.n()));
    return job.whole.torque().stream().filter(line -> named.contains(line.n())).toList();
  }
}
