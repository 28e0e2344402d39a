package baysheet.verify;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.resolve.Resolved;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.Statement;
import baysheet.sheet.Support;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whether the sheets of a job's stages say together what the sheet of the whole job says, each
 * thing once and at its turn, and each of them all that its steps need. Shares no code with what
 * divides.
 */
public final class StageVerifier {
  private final Sheet whole;
  private final List<Sheet> stages;
  private final Resolved resolved;
  private final List<String> faults = new ArrayList<>();

  private StageVerifier(Sheet whole, List<Sheet> stages, Resolved resolved) {
    this.whole = whole;
    this.stages = stages;
    this.resolved = resolved;
  }

  /**
   * Nothing, when the stages hold.
   *
   * @param whole the sheet of the whole job, which was proved by itself
   * @throws IllegalStateException with every fault when they do not
   */
  public static void prove(Sheet whole, List<Sheet> stages, Resolved resolved) {
    List<String> faults = faults(whole, stages, resolved);
    if (!faults.isEmpty()) {
      throw new IllegalStateException(
          "the stages of job "
              + whole.heading().job()
              + " do not hold:\n  "
              + String.join("\n  ", faults));
    }
  }

  /** Every fault. */
  public static List<String> faults(Sheet whole, List<Sheet> stages, Resolved resolved) {
    StageVerifier verifier = new StageVerifier(whole, stages, resolved);
    verifier.numbers();
    if (verifier.faults.isEmpty()) {
      verifier.union();
      stages.forEach(verifier::stage);
      verifier.faults.addAll(StageStateCheck.faults(whole, stages, resolved));
    }
    return verifier.faults;
  }

  /** The stages are counted, and their steps are those of the job in their order. */
  private void numbers() {
    List<Stage> expected = stages.stream().flatMap(it -> it.stage().stream()).toList();
    for (int i = 0; i < stages.size(); i++) {
      boolean counted =
          expected.size() == stages.size()
              && expected.get(i).n() == i + 1
              && expected.get(i).of() == stages.size();
      if (!counted) {
        faults.add("the sheet " + (i + 1) + " of " + stages.size() + " is not that stage");
      }
    }
    List<SheetStep> steps = stages.stream().flatMap(it -> it.steps().stream()).toList();
    if (!steps.stream()
        .map(StageVerifier::bare)
        .toList()
        .equals(whole.steps().stream().map(StageVerifier::bare).toList())) {
      faults.add("the steps of the stages are not those of the job");
    }
    for (Sheet stage : stages.subList(0, Math.max(0, stages.size() - 1))) {
      if (stage.steps().isEmpty()) {
        faults.add("a stage without steps is not the last");
      }
    }
  }

  /** A step without what may stand above it anew at the beginning of a stage. */
  private static SheetStep bare(SheetStep step) {
    return step.with(new Sheet.Letters(step.letters().all(), List.of()));
  }

  private void union() {
    whole.torque().forEach(this::row);
    whole.checks().forEach(this::check);
    whole.safety().qualified().forEach(this::qualified);
    once("removed item", Sheet::tally);
    once("work of the evening before", Sheet::evening);
    covered("tool", sheet -> sheet.equipment().tools().stream().map(Sheet.ToolLine::name));
    covered("consumable", sheet -> sheet.equipment().consumables().stream());
    covered("source", sheet -> sheet.sources().stream());
    covered("caution", sheet -> sheet.safety().cautions().stream().map(CautionLine::name));
    covered("support", sheet -> sheet.safety().support().stream().map(Support::raised));
    covered(
        "socket",
        sheet -> sheet.equipment().sockets().stream().map(it -> it.drive() + " " + it.head()));
    if (stages.stream().anyMatch(it -> !it.safety().protect().equals(whole.safety().protect()))) {
      faults.add("a stage does not say what to wear for the job");
    }
    if (!parts(List.of(whole)).equals(parts(stages))) {
      faults.add(
          "the stages have other new parts: " + parts(stages) + ", not " + parts(List.of(whole)));
    }
  }

  private static Map<String, Integer> parts(List<Sheet> sheets) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Sheet sheet : sheets) {
      sheet
          .equipment()
          .parts()
          .forEach(part -> counts.merge(part.part(), part.count(), Integer::sum));
    }
    return counts;
  }

  private <T> void once(String what, Function<Sheet, List<T>> lines) {
    List<T> all = stages.stream().flatMap(it -> lines.apply(it).stream()).toList();
    boolean same = all.size() == lines.apply(whole).size();
    if (!same || !new HashSet<>(all).equals(new HashSet<>(lines.apply(whole)))) {
      faults.add("not every " + what + " of the job stands on one stage: " + all);
    }
  }

  private <T> void covered(String what, Function<Sheet, Stream<T>> names) {
    Set<T> all = stages.stream().flatMap(names).collect(Collectors.toSet());
    Set<T> wanted = names.apply(whole).collect(Collectors.toSet());
    if (!all.equals(wanted)) {
      faults.add("the stages have other " + what + "s: " + all + ", not " + wanted);
    }
  }

  /** Each place of a line stands where its final torque is given. */
  private void row(TorqueLine line) {
    for (Place place : line.places()) {
      List<Integer> on = new ArrayList<>();
      for (Sheet stage : stages) {
        for (TorqueLine own : stage.torque()) {
          if (own.n() == line.n() && own.places().contains(place)) {
            on.add(stage.stage().orElseThrow().n());
            if (!own.at(line.places()).equals(line)) {
              faults.add("torque line " + line.n() + " is another one on its stage");
            }
          }
        }
      }
      int due = stageOf(Visits.last(whole, line, place));
      if (!on.equals(List.of(due))) {
        faults.add(
            "torque line %s at %s stands on the stages %s, and is tightened on stage %s"
                .formatted(line.n(), place, on, due));
      }
    }
  }

  /** The stage of a step; 0 where there is none. */
  private int stageOf(int step) {
    return stages.stream()
        .filter(stage -> stage.steps().stream().anyMatch(it -> it.n() == step))
        .map(stage -> stage.stage().orElseThrow().n())
        .findFirst()
        .orElse(0);
  }

  private void check(CheckLine check) {
    List<Integer> on = new ArrayList<>();
    Set<Integer> steps = new HashSet<>();
    for (Sheet stage : stages) {
      for (CheckLine own : stage.checks()) {
        if (own.as(check.steps()).equals(check)) {
          on.add(stage.stage().orElseThrow().n());
          steps.addAll(own.steps());
        }
      }
    }
    boolean same = whole.checks().stream().filter(check::equals).count() > 1;
    if (!steps.equals(new HashSet<>(check.steps()))) {
      faults.add("the check " + check.name() + " is not at its steps");
    } else if (check.steps().isEmpty() && !same && on.size() != 1) {
      faults.add("the check " + check.name() + " stands on " + on.size() + " stages");
    } else if (check.steps().isEmpty()) {
      on.stream().filter(n -> !isInTime(check, n)).forEach(n -> late(check, n));
    }
  }

  private void late(CheckLine check, int stage) {
    faults.add("the check " + check.name() + ", " + check.moment() + ", stands on stage " + stage);
  }

  /** A check comes after what brings it, before the vehicle leaves the state in which it is due. */
  private boolean isInTime(CheckLine check, int n) {
    if (check.moment().compareTo(Moment.ON_THE_GROUND) >= 0) {
      return n == stages.size();
    }
    List<SheetStep> own = stages.get(n - 1).steps();
    if (check.moment() == Moment.BEFORE_LIFTING) {
      return isBeforeLifting(check, own);
    }
    boolean brought = check.because().stream().allMatch(step -> stageOf(step) <= n);
    // A procedure's own check has its name, and looks at what all of its work leaves.
    boolean worked =
        whole.steps().stream()
            .filter(step -> step.procedure().equals(check.name()))
            .filter(step -> step.phase() == Sheet.Phase.OPEN || step.phase() == Sheet.Phase.WORK)
            .allMatch(step -> stageOf(step.n()) <= n);
    boolean last = n == stageOf(whole.steps().size());
    return brought && worked && (last || own.stream().anyMatch(StageVerifier::isUp));
  }

  /**
   * Whether some steps leave the vehicle on the ground once, with what brings a check still to come
   * and no other raising in between.
   */
  private boolean isBeforeLifting(CheckLine check, List<SheetStep> own) {
    int brought = check.because().stream().min(Integer::compare).orElse(0);
    int down =
        own.stream()
            .filter(step -> !isUp(step) && (brought == 0 || step.n() < brought))
            .mapToInt(SheetStep::n)
            .max()
            .orElse(0);
    if (brought == 0) {
      return !own.isEmpty()
          && whole.steps().stream()
              .filter(StageVerifier::isUp)
              .allMatch(step -> step.n() >= own.get(0).n());
    }
    int raisings = 0;
    for (int n = down; down > 0 && n < brought; n++) {
      boolean up = isUp(whole.steps().get(n));
      raisings += up && !isUp(whole.steps().get(n - 1)) ? 1 : 0;
    }
    return down > 0 && raisings <= 1;
  }

  private static boolean isUp(SheetStep step) {
    return step.moment() == Moment.RAISED;
  }

  private void qualified(QualifiedWork work) {
    Set<Integer> steps = new HashSet<>();
    Set<Integer> holds = new HashSet<>();
    Set<Statement> checks = new HashSet<>();
    for (Sheet stage : stages) {
      for (QualifiedWork own : stage.safety().qualified()) {
        if (own.qualification().equals(work.qualification())) {
          boolean same = own.by().equals(work.by()) && own.second().equals(work.second());
          boolean here =
              own.steps().stream().allMatch(n -> stageOf(n) == stage.stage().orElseThrow().n());
          if (!same || !here) {
            faults.add("the work on the " + work.words() + " is another one on its stage");
          }
          steps.addAll(own.steps());
          holds.addAll(own.holds());
          checks.addAll(own.checks());
        }
      }
    }
    if (!steps.equals(new HashSet<>(work.steps()))
        || !holds.equals(new HashSet<>(work.holds()))
        || !checks.equals(new HashSet<>(work.checks()))) {
      faults.add("not all work on the " + work.words() + " is named on a stage");
    }
  }

  /** What a stage needs stands on its own sheet. */
  private void stage(Sheet stage) {
    SheetIndex printed = new SheetIndex(stage);
    ToolListCheck.faults(stage, printed, resolved).forEach(fault -> add(stage, fault));
    StageCautionCheck.faults(whole, stage, resolved).forEach(fault -> add(stage, fault));
    Set<Integer> known =
        Stream.concat(stage.torque().stream(), stage.stage().orElseThrow().elsewhere().stream())
            .map(TorqueLine::n)
            .collect(Collectors.toSet());
    for (SheetStep step : stage.steps()) {
      Visits.named(step).stream()
          .filter(n -> !known.contains(n))
          .forEach(
              n -> add(stage, "step " + step.n() + " names line " + n + ", which is not here"));
    }
    stage.stage().orElseThrow().elsewhere().stream()
        .filter(line -> !whole.torque().contains(line))
        .forEach(line -> add(stage, "line " + line.n() + " is another one in the job"));
    if (!stage.notes().equals(whole.notes()) || !stage.heading().equals(whole.heading())) {
      add(stage, "heading or notes are not those of the job");
    }
    sides(stage);
  }

  private void add(Sheet stage, String fault) {
    faults.add("stage " + stage.stage().orElseThrow().n() + ": " + fault);
  }

  /** Where two sides are worked one after the other the sheet says so for its own steps. */
  private void sides(Sheet stage) {
    int last = stage.steps().stream().mapToInt(SheetStep::n).max().orElse(0);
    int first = last - stage.steps().size() + 1;
    List<Sheet.Stretch> expected =
        whole.sections().stream()
            .flatMap(section -> section.oneSideFirst().stream())
            .map(it -> new Sheet.Stretch(Math.max(it.first(), first), Math.min(it.last(), last)))
            .filter(it -> it.first() < it.last())
            .toList();
    List<Sheet.Stretch> said =
        stage.sections().stream()
            .map(section -> section.oneSideFirst().orElse(null))
            .filter(Objects::nonNull)
            .toList();
    if (!said.equals(expected)) {
      add(stage, "one side first: " + said + ", not " + expected);
    }
  }
}
