package baysheet.plan.content;

import baysheet.books.Fastener;
import baysheet.books.Shop;
import baysheet.books.ToolNames;
import baysheet.report.Located;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Quantity;
import baysheet.torque.Socket;
import baysheet.torque.SocketChoice;
import baysheet.torque.SocketFit;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Wrench;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The shop's sockets for one fastener, and how they go on its wrenches. */
public final class SocketRack {
  private final Shop shop;
  private final Fastener fastener;
  private final Optional<Head> head;
  private final boolean force;
  private final boolean impact;
  private final List<Socket> fitting;
  private final Optional<Quantity> highest;
  private final Optional<Shop.Special> insert;

  /**
   * The sockets that fit.
   *
   * @param seized whether the fastener is expected to be seized
   * @param impact whether an impact wrench undoes it
   */
  SocketRack(Shop shop, Fastener fastener, boolean seized, boolean impact) {
    this.shop = shop;
    this.fastener = fastener;
    this.head = fastener.written().pieces().head().map(Located::value);
    this.force = seized || impact;
    this.impact = impact;
    this.fitting = fitting();
    this.highest = highest();
    this.insert =
        fastener
            .reach()
            .filter(reach -> head.isPresent())
            .flatMap(reach -> ToolList.special(shop, ToolNames.crowFoot(head.get(), reach)));
  }

  /** For a fastener that is neither seized nor undone with an impact wrench. */
  public SocketRack(Shop shop, Fastener fastener) {
    this(shop, fastener, false, false);
  }

  private List<Socket> fitting() {
    return shop.crib().sockets().stream()
        .map(Located::value)
        .filter(socket -> head.filter(socket::fits).isPresent())
        .filter(socket -> socket.deep() || !fastener.deep())
        .toList();
  }

  /** The most it is tightened to; nobody knows that where the figure is in doubt or unknown. */
  private Optional<Quantity> highest() {
    return fastener.tightening().value() instanceof Tightening.Stages stages
            && !fastener.plausibility().isDoubtful()
        ? stages.torques().stream().map(Target::nominal).max(Comparator.naturalOrder())
        : Optional.empty();
  }

  /** How a socket for the fastener, or what stands in its place, goes on a wrench. */
  public SocketFit fit(Wrench wrench, Quantity torque) {
    if (fastener.reach().isPresent()) {
      return insertFit(wrench);
    }
    boolean toBorrow = fitting.isEmpty() && isMadeFor(wrench.drive());
    if (toBorrow || inSquare(wrench.drive(), torque).isPresent()) {
      return SocketFit.NONE_NEEDED;
    }
    return adapted(wrench)
        .map(socket -> adapter(wrench.drive(), socket.drive()))
        .map(name -> new SocketFit(SocketFit.Kind.ADAPTER, name))
        .orElseGet(() -> new SocketFit(SocketFit.Kind.BORROW, missing(wrench)));
  }

  private String missing(Wrench wrench) {
    return isMadeFor(wrench.drive())
        ? ToolNames.socket(wrench.drive())
        : adapter(wrench.drive(), socketFor(wrench).drive());
  }

  /** Whether sockets of the fastener's size are made for a square. */
  boolean isMadeFor(Drive square) {
    return head.filter(it -> !square.isMadeFor(it)).isEmpty();
  }

  private SocketFit insertFit(Wrench wrench) {
    Optional<Drive> square = insert.flatMap(Shop.Special::drive).map(Located::value);
    if (square.isEmpty() || square.get() == wrench.drive()) {
      return SocketFit.NONE_NEEDED;
    }
    String adapter = adapter(wrench.drive(), square.get());
    return ToolList.has(shop, adapter)
        ? new SocketFit(SocketFit.Kind.ADAPTER, adapter)
        : new SocketFit(SocketFit.Kind.BORROW, adapter);
  }

  boolean isInsert() {
    return fastener.reach().isPresent();
  }

  boolean hasAdapter(Drive from, Drive to) {
    return ToolList.has(shop, adapter(from, to));
  }

  static String adapter(Drive from, Drive to) {
    return ToolNames.adapter(from, to);
  }

  /**
   * The shop's socket in one square that carries a torque. One for the impact wrench where it is
   * undone with that; else any, as long as the shop has one for the impact wrench beside it.
   */
  Optional<SocketChoice> inSquare(Drive square, Quantity torque) {
    Predicate<Socket> here = socket -> socket.drive() == square;
    return owned(here, Optional.of(torque), impact)
        .or(() -> owned(here, Optional.of(torque), false).filter(it -> hasImpactSocket()));
  }

  private boolean hasImpactSocket() {
    return owned(socket -> true, highest, true).isPresent();
  }

  /** The shop's smallest socket on which an adapter of the shop goes from a wrench. */
  Optional<SocketChoice> adapted(Wrench wrench) {
    return owned(socket -> hasAdapter(wrench.drive(), socket.drive()), highest, impact);
  }

  private Optional<SocketChoice> owned(
      Predicate<Socket> which, Optional<Quantity> torque, boolean withImpact) {
    return Optional.of(choose(which, torque, withImpact)).filter(SocketChoice::owned);
  }

  private SocketChoice choose(
      Predicate<Socket> which, Optional<Quantity> torque, boolean withImpact) {
    return SocketChoice.choose(
        head.orElseThrow(),
        torque,
        force,
        withImpact,
        fitting.stream().filter(which).toList(),
        shop.wrenchUse().drives());
  }

  /**
   * The socket to lay out, for a fastener with a head: in the square of the wrench that tightens
   * it; else one for which the shop has an adapter; else one to borrow in that square, rather than
   * an adapter to a socket of another. Without a wrench the smallest that carries the torque, and
   * the largest there is where nobody knows the torque.
   */
  SocketChoice socket(Optional<Wrench> wrench) {
    if (fastener.reach().isPresent()) {
      return insertFor(wrench);
    }
    return wrench.map(this::socketFor).orElseGet(this::socketWithoutWrench);
  }

  private SocketChoice socketFor(Wrench wrench) {
    return inSquare(wrench.drive(), highest.orElseThrow())
        .or(() -> adapted(wrench))
        .or(() -> isMadeFor(wrench.drive()) ? Optional.empty() : owned(it -> true, highest, impact))
        .orElseGet(() -> toBorrow(wrench.drive()));
  }

  /**
   * One to borrow for a wrench; in a larger square where the wrench's does not carry the torque, or
   * the shop's own there. If the shop has one in any other square, an adapter would do as well.
   */
  SocketChoice toBorrow(Drive wrench) {
    SocketChoice borrowed = choose(socket -> false, highest, impact).inSquareOf(wrench);
    return owned(socket -> socket.drive() == borrowed.drive(), highest, impact)
        .or(
            () ->
                owned(socket -> true, highest, impact)
                    .map(SocketChoice::drive)
                    .map(own -> borrowed.orAdapter(head.orElseThrow(), own, adapter(wrench, own))))
        .orElse(borrowed);
  }

  private SocketChoice socketWithoutWrench() {
    Optional<Drive> largest = fitting.stream().map(Socket::drive).max(Comparator.naturalOrder());
    boolean unknown = fastener.isUnknown() || fastener.plausibility().isDoubtful();
    return choose(
        socket -> !unknown || Optional.of(socket.drive()).equals(largest), highest, impact);
  }

  /** What the book asks for stands for a socket: in the square the shop says it has. */
  private SocketChoice insertFor(Optional<Wrench> wrench) {
    Drive square =
        insert
            .flatMap(Shop.Special::drive)
            .map(Located::value)
            .or(() -> wrench.map(Wrench::drive))
            .orElseGet(() -> socketWithoutWrench().drive());
    return new SocketChoice(square, 0, false, insert.isPresent(), List.of(), Optional.empty());
  }

  /** The socket for the impact wrench, where the one that tightens is none. */
  Optional<SocketChoice> impactBeside(Optional<SocketChoice> socket) {
    boolean needed =
        impact && fastener.reach().isEmpty() && socket.filter(it -> !it.impact()).isPresent();
    return needed ? owned(it -> true, highest, true) : Optional.empty();
  }
}
