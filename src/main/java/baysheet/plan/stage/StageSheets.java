package baysheet.plan.stage;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.content.Headings;
import baysheet.plan.content.SocketNeeds;
import baysheet.plan.content.TimeEstimate;
import baysheet.plan.content.ToolList;
import baysheet.plan.content.TorqueTable.Selected;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlanPhrases;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.stage.Progress.Snapshot;
import baysheet.plan.stage.RestingPoints.Point;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Detail;
import baysheet.sheet.DueChecks;
import baysheet.sheet.Name;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The sheets of a job's stages, each of some steps that follow one another. Steps are counted here
 * as boundaries: a stage from 0 to 12 has the steps 1 to 12.
 */
public final class StageSheets {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final Sheet whole;
  private final List<Selected> torque;
  private final SocketNeeds sockets;
  private final List<CheckLine> evening;
  private final List<Snapshot> progress;

  /** The last step that tightens each fastener. */
  private final Map<ItemAt, Integer> tightened = new HashMap<>();

  /** Where each check of the sheet is due that is no step itself. */
  private final Map<Integer, Integer> dueAt = new HashMap<>();

  /** Where the parts of each task go on: at the first step of its own work. */
  private final Map<TaskId, Integer> fitted = new LinkedHashMap<>();

  /**
   * @param whole the sheet of the whole job
   * @param checks all its checks, those of the evening before among them
   */
  public StageSheets(
      Resolved resolved,
      List<PlacedStep> lines,
      Sheet whole,
      List<Selected> torque,
      SocketNeeds sockets,
      List<CheckLine> checks) {
    this.resolved = resolved;
    this.lines = List.copyOf(lines);
    this.whole = whole;
    this.torque = List.copyOf(torque);
    this.sockets = sockets;
    this.evening =
        checks.stream().filter(check -> check.moment() == Moment.EVENING_BEFORE).toList();
    this.progress = Progress.of(resolved, lines);
    for (int i = 0; i < lines.size(); i++) {
      for (ItemAt item : lines.get(i).doUp()) {
        tightened.put(item, i);
      }
      for (ItemAt item : lines.get(i).tighten()) {
        tightened.put(item, i);
      }
    }
    dueChecks();
    fittedParts();
  }

  /** What no step leads to is due at the end: before the vehicle moves, on the road, later. */
  private void dueChecks() {
    DueChecks due = new DueChecks(whole.checks(), whole.steps());
    for (SheetStep step : whole.steps()) {
      due.at(step).forEach(check -> dueAt.put(check, step.n() - 1));
    }
    for (int check : due.later()) {
      boolean early = whole.checks().get(check).moment() == Moment.BEFORE_LIFTING;
      dueAt.put(check, early ? 0 : lines.size() - 1);
    }
  }

  private void fittedParts() {
    for (int i = 0; i < lines.size(); i++) {
      for (PlannedStep step : lines.get(i).all()) {
        if (step.phase() == Sheet.Phase.WORK) {
          fitted.putIfAbsent(step.task(), i);
        }
      }
    }
    for (int i = lines.size() - 1; i >= 0; i--) {
      int line = i;
      lines.get(i).all().forEach(step -> fitted.putIfAbsent(step.task(), line));
    }
    resolved.tasks().keySet().forEach(task -> fitted.putIfAbsent(task, 0));
  }

  /** The sheet of the whole job. */
  public Sheet whole() {
    return whole;
  }

  Resolved resolved() {
    return resolved;
  }

  /** Where the work may rest. */
  List<Point> restingPoints() {
    return RestingPoints.of(resolved, lines, progress, whole);
  }

  /** The sheet of one stage. */
  Sheet sheet(int from, int to, int n, int of) {
    return new OneStage(from, to).sheet(n, of);
  }

  /** How the vehicle stands at a boundary. */
  private Stage.VehicleState state(int after) {
    Snapshot at = progress.get(after);
    return new Stage.VehicleState(
        after,
        at.height(),
        at.raised(),
        at.temporary().stream()
            .map(item -> new Stage.Held(item, Name.of(resolved.thing(item))))
            .toList(),
        whole.tally().stream().filter(it -> it.off() <= after && after < it.on()).toList(),
        rows(at.off()),
        rows(at.loose()),
        at.open(),
        whole.steps().stream()
            .filter(step -> step.n() <= after && !step.entries().isEmpty())
            .map(SheetStep::n)
            .toList(),
        needed(after));
  }

  private List<Stage.Row> rows(List<ItemAt> items) {
    List<Stage.Row> rows = new ArrayList<>();
    for (TorqueLine line : whole.torque()) {
      List<Place> places =
          line.places().stream()
              .filter(place -> items.contains(new ItemAt(line.fastener(), place)))
              .toList();
      if (!places.isEmpty()) {
        rows.add(new Stage.Row(line.n(), places.equals(line.places()) ? List.of() : places));
      }
    }
    return rows;
  }

  /** What a later step refers to was written on another sheet, and is copied on to its own. */
  private List<Stage.Figure> needed(int after) {
    Set<Integer> steps = new LinkedHashSet<>();
    for (SheetStep step : whole.steps()) {
      for (Detail detail : step.details()) {
        if (step.n() > after && detail instanceof Detail.AtHeightOf at && at.step() <= after) {
          steps.add(at.step());
        }
      }
    }
    return steps.stream()
        .map(n -> whole.steps().get(n - 1))
        .map(step -> new Stage.Figure(step.n(), step.entries(), step.places()))
        .toList();
  }

  /** The sheet of one stage in the making. */
  private final class OneStage {
    private final int from;
    private final int to;
    private final List<PlacedStep> own;
    private final List<Selected> rows = new ArrayList<>();

    /** Lines of fasteners that go on here, whether they get their final torque here or not. */
    private final List<TorqueLine> installed = new ArrayList<>();

    private final List<CheckLine> checks = new ArrayList<>();
    private final List<CautionLine> cautions = new ArrayList<>();

    OneStage(int from, int to) {
      this.from = from;
      this.to = to;
      this.own = lines.subList(from, to);
      torque.forEach(this::row);
      for (int i = 0; i < whole.checks().size(); i++) {
        check(i);
      }
      whole.cautions().forEach(caution -> caution(caution).ifPresent(cautions::add));
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
              .filter(place -> isOwn(tightened.get(new ItemAt(line.fastener(), place))))
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
      CheckLine check = whole.checks().get(index);
      List<Integer> steps = own(check.steps());
      if (!steps.isEmpty()) {
        checks.add(check.as(steps));
      } else if (check.steps().isEmpty() && isOwn(dueAt.get(index))) {
        checks.add(check);
      }
    }

    /** What holds since an earlier stage stands on top, for all of this one. */
    private Optional<CautionLine> caution(CautionLine caution) {
      List<Integer> steps = own(caution.steps());
      boolean begun = caution.steps().stream().anyMatch(n -> n <= from);
      boolean since = begun && (caution.onTop() || (isUp() && isOfRaising(caution)));
      if (steps.isEmpty() && !since && !caution.wholeJob()) {
        return Optional.empty();
      }
      return Optional.of(caution.at(steps, since || caution.wholeJob()));
    }

    private boolean isUp() {
      return !progress.get(from).raised().isEmpty();
    }

    private boolean isOfRaising(CautionLine caution) {
      return caution.steps().stream()
          .filter(n -> n <= from)
          .anyMatch(n -> !progress.get(n).raised().equals(progress.get(n - 1).raised()));
    }

    Sheet sheet(int n, int of) {
      ToolList layOut = new ToolList(resolved, own, using(), fitting());
      List<TorqueLine> table = rows.stream().map(Selected::line).toList();
      List<CheckLine> due = new ArrayList<>(checks);
      if (from == 0) {
        due.addAll(evening);
      }
      return new Sheet(
          whole.heading(),
          qualified(),
          cautions,
          from == 0 ? whole.evening() : List.of(),
          sections(),
          table,
          sockets.between(from, to),
          layOut.tools(rows, due),
          parts(layOut),
          layOut.consumables(union(table, installed)),
          whole.tally().stream().filter(line -> isOwn(line.on() - 1)).toList(),
          checks,
          support(),
          new TimeEstimate(resolved).of(own, 0),
          whole.notes(),
          Headings.sources(resolved, table),
          Optional.of(stage(n, of, table)));
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
      fitted.forEach(
          (task, line) -> {
            if (isOwn(line)) {
              own.add(task);
            }
          });
      return resolved.tasks().values().stream().filter(it -> own.contains(it.id())).toList();
    }

    private List<Task> fitting() {
      return resolved.tasks().values().stream()
          .filter(task -> isOwn(fitted.get(task.id())))
          .toList();
    }

    /** A single-use fastener that a procedure lists as well goes on where it is tightened. */
    private List<Sheet.PartLine> parts(ToolList layOut) {
      Set<String> fasteners =
          whole.parts().stream()
              .filter(Sheet.PartLine::fastener)
              .map(Sheet.PartLine::part)
              .collect(Collectors.toSet());
      return layOut.parts().stream()
          .filter(part -> part.fastener() || !fasteners.contains(part.part()))
          .toList();
    }

    private List<QualifiedWork> qualified() {
      List<String> texts = checks.stream().map(CheckLine::text).toList();
      return whole.qualified().stream()
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

    private List<Sheet.Support> support() {
      Set<String> raised = new HashSet<>();
      progress
          .subList(from, to + 1)
          .forEach(at -> at.raised().forEach(place -> raised.add(PlanPhrases.place(place))));
      List<Sheet.Support> these =
          whole.support().stream().filter(one -> raised.contains(one.raised())).toList();
      // A vehicle that is raised as a whole has a support for each axle, or one of its own name.
      return raised.isEmpty() || !these.isEmpty() ? these : whole.support();
    }

    private List<Sheet.Section> sections() {
      List<Sheet.Section> sections = new ArrayList<>();
      Optional<Sheet.Stretch> sides = Optional.empty();
      for (Sheet.Section section : whole.sections()) {
        Optional<Sheet.Stretch> before = sides;
        sides = section.oneSideFirst().or(() -> going(before, section));
        List<SheetStep> steps =
            section.steps().stream().filter(step -> isOwn(step.n() - 1)).toList();
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
      int last = Math.min(sides.last(), to);
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

    private Stage stage(int n, int of, List<TorqueLine> table) {
      boolean isLast = to == lines.size();
      return new Stage(
          n,
          of,
          from == 0 ? Optional.empty() : Optional.of(state(from)),
          isLast ? Optional.empty() : Optional.of(state(to)),
          elsewhere(table),
          isLast
              ? whole.checks().stream()
                  .flatMap(check -> check.releasedBy().stream())
                  .distinct()
                  .toList()
              : List.of());
    }

    /**
     * Lines of other stages that a step of this one names; for the last stage also those that are
     * checked again after a distance, of which the customer is told at the end.
     */
    private List<TorqueLine> elsewhere(List<TorqueLine> table) {
      Set<Integer> named = new HashSet<>();
      for (SheetStep step : whole.steps().subList(from, to)) {
        named.addAll(step.torque());
        for (Detail detail : step.details()) {
          if (detail instanceof Detail.Removed removed) {
            named.add(removed.line());
          }
        }
      }
      if (to == lines.size()) {
        whole.torque().stream()
            .filter(line -> line.recheck().isPresent())
            .forEach(line -> named.add(line.n()));
      }
      table.forEach(line -> named.remove(line.n()));
      return whole.torque().stream().filter(line -> named.contains(line.n())).toList();
    }
  }
}
