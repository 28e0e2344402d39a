package baysheet.verify;

import baysheet.books.Catalogue;
import baysheet.books.Place;
import baysheet.books.Step;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Whether each stage says how it finds the vehicle and how it leaves it, as played back from the
 * sheet of the whole job, and whether the work may rest there. Shares no code with what divides.
 */
final class StageStateCheck {
  private final Sheet whole;
  private final Resolved resolved;
  private final int after;
  private final Set<ItemAt> off = new LinkedHashSet<>();
  private final Set<String> open = new LinkedHashSet<>();

  private StageStateCheck(Sheet whole, Resolved resolved, int after) {
    this.whole = whole;
    this.resolved = resolved;
    this.after = after;
    whole.steps().subList(0, after).forEach(this::play);
  }

  static List<String> faults(Sheet whole, List<Sheet> stages, Resolved resolved) {
    List<String> faults = new ArrayList<>();
    for (int i = 0; i + 1 < stages.size(); i++) {
      Stage stage = stages.get(i).stage().orElseThrow();
      Stage next = stages.get(i + 1).stage().orElseThrow();
      List<SheetStep> steps = stages.get(i).steps();
      StageStateCheck check = new StageStateCheck(whole, resolved, steps.get(steps.size() - 1).n());
      if (!stage.leaving().equals(next.arrival())) {
        faults.add("stage " + next.n() + " does not begin as stage " + stage.n() + " ends");
      }
      check
          .compare(stage.leaving().orElseThrow())
          .forEach(it -> faults.add("stage " + stage.n() + " ends with " + it));
      new RestCheck(whole, resolved, check.after, check.loose())
          .faults()
          .forEach(it -> faults.add("no rest behind step " + check.after + ": " + it));
    }
    return faults;
  }

  /** Whether the vehicle is off its wheels before a step. */
  static boolean isUp(Sheet whole, int step, Resolved resolved) {
    return !new StageStateCheck(whole, resolved, step - 1).raised().isEmpty();
  }

  /** Whether a step takes the vehicle off its wheels, or lets it down on to them. */
  static boolean raises(SheetStep step, Resolved resolved) {
    return step.undo().stream().anyMatch(it -> resolved.thing(it).isOf("support"))
        || step.doUp().stream().anyMatch(it -> resolved.thing(it).isOf("support"));
  }

  private void play(SheetStep step) {
    off.addAll(step.undo());
    step.doUp().forEach(off::remove);
    step.actions().circuits().stream().flatMap(it -> fluid(it).stream()).forEach(open::add);
    filled(step).forEach(open::remove);
  }

  private Optional<String> fluid(String circuit) {
    return Optional.ofNullable(resolved.catalogue().items().get(circuit))
        .flatMap(Catalogue.Item::fluid)
        .map(it -> it.value());
  }

  private List<String> filled(SheetStep step) {
    if (step.phase() == Sheet.Phase.CHECK) {
      return Optional.ofNullable(resolved.catalogue().rules().get(step.procedure()))
          .flatMap(Catalogue.Rule::step)
          .map(check -> check.fills())
          .orElse(List.of())
          .stream()
          .flatMap(circuit -> fluid(circuit.value()).stream())
          .toList();
    }
    List<String> filled = new ArrayList<>();
    for (Place place : step.places()) {
      Task task = resolved.tasks().get(new TaskId(step.procedure(), place));
      if (task != null) {
        WrittenSteps.of(step, Map.of(step.procedure(), task.procedure()))
            .ifPresent(it -> it.touched().apply().forEach(on -> filled.add(on.value().product())));
      }
    }
    return filled;
  }

  private boolean isOf(ItemAt item, String kind) {
    return resolved.thing(item).isOf(kind);
  }

  private Set<Place> raised() {
    Set<Place> raised = new HashSet<>();
    for (ItemAt item : off) {
      if (isOf(item, "support")) {
        raised.add(item.place().axle().orElse(item.place()));
      }
    }
    return raised;
  }

  private List<String> compare(VehicleState said) {
    List<String> faults = new ArrayList<>();
    SheetStep before = whole.steps().get(after - 1);
    same(faults, "step", said.after(), after);
    same(faults, "height", said.standing().height(), before.height());
    same(faults, "raised", new HashSet<>(said.standing().raised()), raised());
    same(faults, "on blocks", said.standing().onBlocks(), RestCheck.isOnBlocks(whole, after));
    same(
        faults,
        "held",
        said.held().stream().map(Stage.Held::item).collect(Collectors.toSet()),
        held());
    same(faults, "off", items(said.off()), parts());
    same(faults, "slackened", items(said.slackened()), slackened());
    same(faults, "fasteners off", fasteners(said.fasteners()), bolts());
    same(faults, "loose", fasteners(said.loose()), loose());
    same(faults, "open", new HashSet<>(said.open()), open);
    same(faults, "left", new HashSet<>(said.left()), LeftStates.of(whole, after, resolved));
    same(faults, "written", said.written(), written());
    same(faults, "needed", needed(said), needed());
    return faults;
  }

  private static void same(List<String> faults, String what, Object said, Object is) {
    if (!said.equals(is)) {
      faults.add(what + " " + said + ", and it is " + is);
    }
  }

  private static Set<ItemAt> items(List<Sheet.TallyLine> lines) {
    Set<ItemAt> items = new HashSet<>();
    lines.forEach(it -> it.places().forEach(place -> items.add(new ItemAt(it.item(), place))));
    return items;
  }

  private Set<ItemAt> fasteners(List<Stage.Row> rows) {
    Set<ItemAt> items = new HashSet<>();
    for (Stage.Row row : rows) {
      TorqueLine line = whole.torque().get(row.n() - 1);
      List<Place> places = row.places().isEmpty() ? line.places() : row.places();
      places.forEach(place -> items.add(new ItemAt(line.fastener(), place)));
    }
    return items;
  }

  private Set<ItemAt> ofTable() {
    Set<ItemAt> items = new HashSet<>();
    for (TorqueLine line : whole.torque()) {
      line.places().forEach(place -> items.add(new ItemAt(line.fastener(), place)));
    }
    return items;
  }

  /** What is off and stands in the tally. */
  private Set<ItemAt> parts() {
    Set<ItemAt> parts = new HashSet<>(off);
    parts.removeAll(ofTable());
    parts.removeIf(item -> isOf(item, "support") || isOf(item, "temporary"));
    parts.removeIf(this::isInItsPlace);
    return parts;
  }

  /** What is slackened and stands in the tally. */
  private Set<ItemAt> slackened() {
    Set<ItemAt> slackened = new HashSet<>(off);
    slackened.removeAll(ofTable());
    slackened.removeIf(item -> !isInItsPlace(item));
    return slackened;
  }

  /** What holds parts for the time being. */
  private Set<ItemAt> held() {
    return off.stream()
        .filter(item -> isOf(item, "temporary") && !isOf(item, "support"))
        .collect(Collectors.toSet());
  }

  private Set<ItemAt> bolts() {
    Set<ItemAt> bolts = new HashSet<>(off);
    bolts.retainAll(ofTable());
    bolts.removeIf(this::isInItsPlace);
    return bolts;
  }

  /** Whether the procedure of the last step that undid an item says that it only slackens it. */
  private boolean isInItsPlace(ItemAt item) {
    boolean slackened = false;
    for (SheetStep step : whole.steps().subList(0, after)) {
      if (step.undo().contains(item)) {
        slackened =
            step.places().stream()
                .map(place -> resolved.tasks().get(new TaskId(step.procedure(), place)))
                .flatMap(task -> written(step, task).stream())
                .anyMatch(it -> it.slackens(item.item()));
      }
    }
    return slackened;
  }

  private static Optional<Step> written(SheetStep step, Task task) {
    return WrittenSteps.of(step, Map.of(step.procedure(), task.procedure()));
  }

  /** What was touched and is on, and is loosened or tightened to its figure only later. */
  private Set<ItemAt> loose() {
    Set<ItemAt> loose = new HashSet<>(off);
    loose.retainAll(ofTable());
    loose.removeIf(item -> !isInItsPlace(item));
    for (TorqueLine line : whole.torque()) {
      for (Place place : line.places()) {
        ItemAt item = new ItemAt(line.fastener(), place);
        boolean touched =
            whole.steps().subList(0, after).stream()
                .anyMatch(it -> it.disturb().contains(item) || it.doUp().contains(item));
        boolean open =
            whole.steps().subList(after, whole.steps().size()).stream()
                .anyMatch(it -> it.undo().contains(item) || Visits.isOne(it, line, place));
        if (touched && open && !off.contains(item) && !isDoneForNow(item, line, place)) {
          loose.add(item);
        }
      }
    }
    return loose;
  }

  /** Whether the last that was done to a fastener that comes off again later was its torque. */
  private boolean isDoneForNow(ItemAt item, TorqueLine line, Place place) {
    boolean done = false;
    for (SheetStep step : whole.steps().subList(0, after)) {
      if (step.disturb().contains(item) || step.undo().contains(item)) {
        done = false;
      } else if (Visits.isOne(step, line, place)) {
        done = !line.visits().two() || step.phase() == Sheet.Phase.FINAL;
      }
    }
    return done;
  }

  private List<Integer> written() {
    return whole.steps().subList(0, after).stream()
        .filter(step -> !step.entries().isEmpty())
        .map(SheetStep::n)
        .toList();
  }

  private static Set<Integer> needed(VehicleState said) {
    Set<Integer> steps = new TreeSet<>();
    said.needed().forEach(it -> steps.add(it.step()));
    return steps;
  }

  private Set<Integer> needed() {
    Set<Integer> steps = new TreeSet<>();
    for (SheetStep step : whole.steps().subList(after, whole.steps().size())) {
      for (Detail detail : step.details()) {
        if (detail instanceof Detail.AtHeightOf it && it.step() <= after) {
          steps.add(it.step());
        }
      }
    }
    return steps;
  }
}
