package baysheet.plan.stage;

import baysheet.books.Place;
import baysheet.plan.stage.Progress.Snapshot;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Detail;
import baysheet.sheet.Name;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.Stage;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * How the vehicle stands between two steps, in the words of its sheet.
 *
 * @param whole the sheet of the whole job
 */
record VehicleStates(Resolved resolved, Sheet whole, List<Snapshot> progress) {
  Stage.VehicleState at(int after) {
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
}
