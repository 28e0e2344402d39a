package baysheet.plan.content;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.graph.PlacedStep;
import baysheet.plan.graph.PlannedStep;
import baysheet.plan.graph.SideMerger;
import baysheet.resolve.Bound;
import baysheet.resolve.BoundStep;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.TorqueLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The torque lines of a job in tightening order: those tightened as they go on, then those that
 * wait for the ground. A fastener set that is the same at mirrored places is one line.
 */
public final class TorqueTable {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final WrenchSelector selector;
  private final SocketNeeds sockets;
  private final Set<ItemAt> waiting = new LinkedHashSet<>();
  private final Set<ItemAt> known = new HashSet<>();
  private final List<Row> rows = new ArrayList<>();

  /** A line of the table before it has its number. */
  private static final class Row {
    private final List<ItemAt> items = new ArrayList<>();
    private final boolean twoVisits;
    private final int position;

    Row(ItemAt item, boolean twoVisits, int position) {
      items.add(item);
      this.twoVisits = twoVisits;
      this.position = position;
    }

    ItemAt first() {
      return items.get(0);
    }
  }

  private TorqueTable(
      Resolved resolved, List<PlacedStep> lines, WrenchSelector selector, SocketNeeds sockets) {
    this.resolved = resolved;
    this.lines = lines;
    this.selector = selector;
    this.sockets = sockets;
    lines.forEach(line -> waiting.addAll(line.tighten()));
  }

  /** A line and what was selected for it. */
  public record Selected(TorqueLine line, WrenchSelection selection) {}

  public static List<Selected> of(
      Resolved resolved, List<PlacedStep> lines, WrenchSelector selector, SocketNeeds sockets) {
    return new TorqueTable(resolved, lines, selector, sockets).run();
  }

  private List<Selected> run() {
    Map<ItemAt, Integer> last = lastTightened();
    for (int i = 0; i < lines.size(); i++) {
      for (ItemAt item : lines.get(i).doUp()) {
        if (resolved.thing(item) instanceof Bound.OfBook && known.add(item)) {
          add(item, last.get(item));
        }
      }
    }
    rows.sort(Comparator.comparing((Row row) -> row.twoVisits).thenComparing(row -> row.position));
    return number();
  }

  /** Where each fastener gets its final torque. */
  private Map<ItemAt, Integer> lastTightened() {
    Map<ItemAt, Integer> last = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      for (ItemAt item : lines.get(i).doUp()) {
        last.put(item, i);
      }
      for (ItemAt item : lines.get(i).tighten()) {
        last.put(item, i);
      }
    }
    return last;
  }

  private void add(ItemAt item, int position) {
    boolean twoVisits = waiting.contains(item);
    for (Row row : rows) {
      if (row.items.size() == 1
          && row.twoVisits == twoVisits
          && SideMerger.sameThing(resolved, row.first(), item)) {
        row.items.add(item);
        return;
      }
    }
    rows.add(new Row(item, twoVisits, position));
  }

  private List<Selected> number() {
    List<Selected> table = new ArrayList<>();
    SequenceLetters letters = new SequenceLetters();
    List<BoundStep.BoundApply> applied = applied();
    for (Row row : rows) {
      WrenchSelection selection = selector.of(row.first());
      TorqueRowBuilder text =
          new TorqueRowBuilder(resolved, applied, selection, sockets, row.items);
      List<Place> places =
          row.items.stream().map(ItemAt::place).sorted(Comparator.naturalOrder()).toList();
      Moment moment = row.twoVisits ? Moment.ON_THE_GROUND : lines.get(row.position).moment();
      TorqueLine line = text.line(table.size() + 1, places, moment, row.twoVisits, letters);
      table.add(new Selected(line, selection));
    }
    return table;
  }

  /** What the steps put on things, in order. */
  private List<BoundStep.BoundApply> applied() {
    List<BoundStep.BoundApply> applied = new ArrayList<>();
    for (PlacedStep line : lines) {
      line.all().forEach(step -> step.apply().forEach(it -> applied.addAll(applied(step, it))));
    }
    return applied;
  }

  /** Where a step does not say what a product goes on, it may be any fastener that it turns. */
  private List<BoundStep.BoundApply> applied(PlannedStep step, BoundStep.BoundApply apply) {
    if (apply.item().isPresent() || MissingFigures.isFluid(resolved, apply.product())) {
      return List.of(apply);
    }
    return Stream.of(step.undo(), step.doUp(), step.tighten())
        .flatMap(List::stream)
        .map(item -> new BoundStep.BoundApply(apply.product(), Optional.of(item)))
        .toList();
  }
}
