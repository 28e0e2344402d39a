package baysheet.plan.stage;

import baysheet.books.Catalogue;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.stage.Progress.Snapshot;
import baysheet.report.Located;
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
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the vehicle stands between two steps, in the words of its sheet.
 *
 * @param whole the sheet of the whole job
 */
record VehicleStates(Resolved resolved, Sheet whole, List<Snapshot> progress) {
  Stage.VehicleState at(int after) {
    Snapshot at = progress.get(after);
    Map<Boolean, List<Sheet.TallyLine>> off =
        whole.tally().stream()
            .filter(it -> it.off() <= after && after < it.on())
            .collect(Collectors.partitioningBy(it -> isSlackened(it, at)));
    return new Stage.VehicleState(
        after,
        new Stage.Standing(at.height(), at.raised(), at.onBlocks()),
        at.temporary().stream()
            .map(item -> new Stage.Held(item, Name.of(resolved.thing(item))))
            .toList(),
        off.get(false),
        off.get(true),
        rows(at.off().stream().filter(item -> !at.slackened().contains(item)).toList()),
        rows(Stream.concat(at.slackened().stream(), at.loose().stream()).toList()),
        at.open(),
        left(at),
        whole.steps().stream()
            .filter(step -> step.n() <= after && !step.entries().isEmpty())
            .map(SheetStep::n)
            .toList(),
        needed(after));
  }

  /** What an item or a check says of how it leaves the vehicle, each once. */
  private List<String> left(Snapshot at) {
    Stream<String> checks =
        whole.checks().stream()
            .filter(check -> check.moment() == Moment.BEFORE_LIFTING)
            .map(check -> resolved.catalogue().rules().get(check.name()))
            .filter(Objects::nonNull)
            .flatMap(rule -> rule.left().stream())
            .map(Located::value);
    Stream<String> items = at.left().stream().flatMap(item -> left(resolved, item).stream());
    return Stream.concat(items, checks).distinct().toList();
  }

  /** How a step that touches an item leaves the vehicle. */
  static Optional<String> left(Resolved resolved, ItemAt item) {
    return Optional.ofNullable(resolved.catalogue().items().get(item.item()))
        .flatMap(Catalogue.Item::left)
        .map(Located::value);
  }

  private static boolean isSlackened(Sheet.TallyLine line, Snapshot at) {
    return at.slackened().contains(new ItemAt(line.item(), line.places().get(0)));
  }

  private List<Stage.Row> rows(List<ItemAt> items) {
    List<Stage.Row> rows = new ArrayList<>();
    for (TorqueLine line : whole.torque()) {
      List<Place> places =
          line.places().stream()
              .filter(place -> items.contains(new ItemAt(line.fastener(), place)))
              .toList();
      if (!places.isEmpty()) {
        Name name = Name.of(resolved.thing(new ItemAt(line.fastener(), places.get(0))));
        List<Place> some = places.equals(line.places()) ? List.of() : places;
        rows.add(new Stage.Row(line.n(), name, line.count() * places.size(), some));
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
