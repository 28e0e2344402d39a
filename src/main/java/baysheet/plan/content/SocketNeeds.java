package baysheet.plan.content;

import baysheet.books.Fastener;
import baysheet.plan.graph.PlacedStep;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Head;
import baysheet.torque.Reach;
import baysheet.torque.SocketChoice;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which sockets the sequence needs, as selected with the wrenches. */
public final class SocketNeeds {
  private final Resolved resolved;
  private final List<PlacedStep> lines;
  private final WrenchSelector selector;

  public SocketNeeds(Resolved resolved, List<PlacedStep> lines, WrenchSelector selector) {
    this.resolved = resolved;
    this.lines = lines;
    this.selector = selector;
  }

  /** One socket serves every fastener with this head, drive and use. */
  private record Kind(Head head, SocketChoice choice, boolean deep, Optional<Reach> reach) {
    Kind {
      // Why a socket was chosen differs from fastener to fastener; the socket does not.
      choice =
          new SocketChoice(
              choice.drive(),
              choice.points(),
              choice.impact(),
              choice.owned(),
              List.of(),
              choice.orAdapter());
    }
  }

  private record Need(Set<ItemAt> items, int firstStep) {}

  /** What to lay out, in the order in which it is first used. */
  public List<Sheet.SocketLine> all() {
    return between(0, lines.size());
  }

  /** The same for some of the lines, counted from 0, without the last. */
  public List<Sheet.SocketLine> between(int from, int to) {
    Map<Kind, Need> needs = new LinkedHashMap<>();
    for (int i = from; i < to; i++) {
      int step = i + 1;
      PlacedStep line = lines.get(i);
      line.undo().forEach(item -> add(needs, item, true, step));
      line.disturb().forEach(item -> add(needs, item, true, step));
      line.doUp().forEach(item -> add(needs, item, false, step));
      line.tighten().forEach(item -> add(needs, item, false, step));
    }
    List<Sheet.SocketLine> sockets = new ArrayList<>();
    needs.forEach((kind, need) -> sockets.add(line(kind, need)));
    return sockets;
  }

  private void add(Map<Kind, Need> needs, ItemAt item, boolean undone, int step) {
    for (Kind kind : kinds(item, undone)) {
      needs.computeIfAbsent(kind, key -> new Need(new LinkedHashSet<>(), step)).items().add(item);
    }
  }

  /**
   * The set's own socket; one for the impact wrench to undo it, those of other wrenches to tighten.
   */
  private List<Kind> kinds(ItemAt item, boolean undone) {
    List<Kind> kinds = new ArrayList<>();
    if (resolved.thing(item) instanceof Bound.OfBook book) {
      WrenchSelection selection = selector.of(item);
      selection.socket().ifPresent(socket -> kinds.add(kind(book.values(), selection, socket)));
      (undone ? selection.undoing().stream() : selection.others().stream())
          .forEach(socket -> kinds.add(kind(book.values(), selection, socket)));
    }
    return kinds;
  }

  private static Kind kind(Fastener fastener, WrenchSelection selection, SocketChoice socket) {
    Head head = fastener.written().pieces().head().map(Located::value).orElseThrow();
    boolean deep = fastener.deep() && selection.reach().isEmpty();
    return new Kind(head, socket, deep, selection.reach());
  }

  /** The socket for one torque line. */
  Optional<TorqueLine.SocketNeed> of(List<ItemAt> items) {
    return kinds(items.get(0), false).stream()
        .findFirst()
        .map(
            kind ->
                new TorqueLine.SocketNeed(
                    kind.choice().drive(),
                    kind.choice().points(),
                    kind.choice().impact(),
                    kind.deep(),
                    kind.choice().owned(),
                    kind.reach()));
  }

  private Sheet.SocketLine line(Kind kind, Need need) {
    int count = need.items().stream().mapToInt(item -> values(item).count().value()).sum();
    SocketChoice choice = kind.choice();
    return new Sheet.SocketLine(
        choice.drive(),
        kind.head(),
        choice.points(),
        choice.impact(),
        kind.deep(),
        count,
        need.firstStep(),
        choice.owned(),
        choice.orAdapter(),
        kind.reach());
  }

  private Fastener values(ItemAt item) {
    return ((Bound.OfBook) resolved.thing(item)).values();
  }
}
