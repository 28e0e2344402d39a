package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Shop;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Socket;
import baysheet.torque.SocketChoice;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Wrench;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which sockets the sequence needs, chosen from the crib. */
final class SocketNeeds {
  private final Resolved resolved;
  private final List<Laid> lines;
  private final Wrenches wrenches;
  private final List<Socket> crib;
  private final Map<ItemAt, List<Draft>> undoing = new HashMap<>();
  private final Map<ItemAt, Optional<Kind>> kinds = new HashMap<>();

  SocketNeeds(Resolved resolved, List<Laid> lines, Wrenches wrenches) {
    this.resolved = resolved;
    this.lines = lines;
    this.wrenches = wrenches;
    this.crib = resolved.shop().crib().sockets().stream().map(Located::value).toList();
    lines.forEach(line -> line.all().forEach(this::add));
  }

  private void add(Draft step) {
    step.undo().forEach(item -> undoing.computeIfAbsent(item, key -> new ArrayList<>()).add(step));
  }

  /** One socket serves every fastener with this head, drive and use. */
  private record Kind(Head head, SocketChoice choice, boolean deep, Optional<Reach> reach) {
    Kind {
      // Why a socket was chosen differs from fastener to fastener; the socket does not.
      choice =
          new SocketChoice(
              choice.drive(), choice.points(), choice.impact(), choice.owned(), List.of());
    }
  }

  private record Need(Set<ItemAt> items, int firstStep) {}

  /** What to lay out, in the order in which it is first used. */
  List<Sheet.SocketLine> all() {
    Map<Kind, Need> needs = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      int step = i + 1;
      for (ItemAt item : touched(lines.get(i))) {
        Optional<Kind> kind = kind(item);
        if (kind.isPresent()) {
          needs
              .computeIfAbsent(kind.get(), key -> new Need(new LinkedHashSet<>(), step))
              .items()
              .add(item);
        }
      }
    }
    List<Sheet.SocketLine> sockets = new ArrayList<>();
    needs.forEach((kind, need) -> sockets.add(line(kind, need)));
    return sockets;
  }

  /** The socket for one torque line. */
  Optional<TorqueLine.SocketNeed> of(List<ItemAt> items) {
    return kind(items.get(0))
        .map(
            kind ->
                new TorqueLine.SocketNeed(
                    kind.choice().drive().print(),
                    kind.choice().points(),
                    kind.choice().impact(),
                    kind.deep(),
                    kind.choice().owned(),
                    kind.reach().map(Words::insert)));
  }

  private static List<ItemAt> touched(Laid line) {
    List<ItemAt> touched = new ArrayList<>(line.undo());
    touched.addAll(line.doUp());
    touched.addAll(line.tighten());
    return touched;
  }

  private Sheet.SocketLine line(Kind kind, Need need) {
    int count = need.items().stream().mapToInt(item -> values(item).count().value()).sum();
    SocketChoice choice = kind.choice();
    return new Sheet.SocketLine(
        choice.drive().print(),
        kind.head().print(),
        choice.points(),
        choice.impact(),
        kind.deep(),
        count,
        need.firstStep(),
        choice.owned(),
        kind.reach().map(Words::insertAndReach));
  }

  /** Chosen once, for each set is undone, done up and tightened. */
  private Optional<Kind> kind(ItemAt item) {
    return kinds.computeIfAbsent(item, this::chosen);
  }

  private Optional<Kind> chosen(ItemAt item) {
    if (!(resolved.thing(item) instanceof Bound.OfBook book) || book.values().head().isEmpty()) {
      return Optional.empty();
    }
    Fastener fastener = book.values();
    Head head = fastener.head().get().value();
    SocketChoice socket = choice(item, fastener);
    return Optional.of(
        fastener
            .reach()
            .map(
                reach ->
                    new Kind(head, insert(fastener, head, reach, socket), false, fastener.reach()))
            .orElseGet(() -> new Kind(head, socket, fastener.deep(), Optional.empty())));
  }

  /**
   * What the book reckons with is no socket, but stands for one: in the square that the crib says
   * it has, else in that of the wrench.
   */
  private SocketChoice insert(Fastener fastener, Head head, Reach reach, SocketChoice socket) {
    Optional<Shop.Special> own = LayOut.special(resolved.shop(), Words.crowFoot(head, reach));
    Drive square =
        own.flatMap(Shop.Special::drive)
            .map(Located::value)
            .or(() -> wrenches.last(fastener).map(Wrench::drive))
            .orElse(socket.drive());
    return new SocketChoice(square, 0, false, own.isPresent(), List.of());
  }

  /**
   * The socket in the square of the wrench that will tighten it, where the crib has it and it
   * carries the torque: a socket in a smaller square would need an adapter. Otherwise the smallest
   * that does; one to borrow in the wrench's square too.
   */
  private SocketChoice choice(ItemAt item, Fastener fastener) {
    List<Socket> sockets = sockets(fastener);
    Optional<Wrench> wrench = wrenches.last(fastener);
    return wrench
        .map(last -> choice(item, fastener, square(sockets, last)))
        .filter(SocketChoice::owned)
        .orElseGet(() -> smallest(choice(item, fastener, sockets), wrench));
  }

  private static SocketChoice smallest(SocketChoice choice, Optional<Wrench> wrench) {
    return wrench.map(last -> choice.inSquareOf(last.drive())).orElse(choice);
  }

  private static List<Socket> square(List<Socket> sockets, Wrench wrench) {
    return sockets.stream().filter(socket -> socket.drive() == wrench.drive()).toList();
  }

  private SocketChoice choice(ItemAt item, Fastener fastener, List<Socket> sockets) {
    boolean seized = false;
    boolean impact = false;
    for (Draft step : undoing.getOrDefault(item, List.of())) {
      seized |= step.seizes() != Step.Seizes.NEVER;
      impact |= step.impact();
    }
    return SocketChoice.choose(
        fastener.head().orElseThrow().value(),
        highest(fastener),
        seized || impact,
        impact,
        sockets,
        resolved.shop().drives());
  }

  /** Nobody knows what a torque that no book gives asks for: then the largest square there is. */
  private List<Socket> sockets(Fastener fastener) {
    Head head = fastener.head().orElseThrow().value();
    List<Socket> sockets =
        crib.stream().filter(it -> it.fits(head) && (it.deep() || !fastener.deep())).toList();
    Optional<Drive> largest = sockets.stream().map(Socket::drive).max(Comparator.naturalOrder());
    boolean unknown = fastener.tightening().value() instanceof Tightening.Unknown;
    return sockets.stream()
        .filter(socket -> !unknown || Optional.of(socket.drive()).equals(largest))
        .toList();
  }

  private static Optional<Quantity> highest(Fastener fastener) {
    return fastener.tightening().value() instanceof Tightening.Stages stages
        ? stages.torques().stream().map(Target::nominal).max(Comparator.naturalOrder())
        : Optional.empty();
  }

  private Fastener values(ItemAt item) {
    return ((Bound.OfBook) resolved.thing(item)).values();
  }
}
