package baysheet.torque;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Which socket to lay out for a fastener.
 *
 * @param drive square drive
 * @param points 6 or 12; 0 where the form has no choice of points
 * @param impact whether the socket is an impact socket
 * @param owned whether the crib has it; otherwise it has to be borrowed
 * @param reasons why this one, a sentence each
 * @param orAdapter what could be borrowed instead, for a socket that the crib has in another square
 */
public record SocketChoice(
    Drive drive,
    int points,
    boolean impact,
    boolean owned,
    List<String> reasons,
    Optional<String> orAdapter) {
  /** What has seized holds more than it was tightened to: common practice, no source. */
  private static final BigDecimal BREAKING = new BigDecimal("1.5");

  public SocketChoice {
    reasons = List.copyOf(reasons);
  }

  /**
   * The crib's smallest drive that has the socket and carries the torque; half as much again where
   * the fastener is likely to be seized, if the crib has one that does.
   *
   * @param highestTorque the most it will be tightened to; where it is not known any drive carries
   *     it
   * @param brokenLooseWithForce whether the fastener is expected to be seized
   * @param impactTool whether an impact wrench is used on it
   * @param limits working limits the shop sets; others are {@link Drive#workingLimit()}
   */
  public static SocketChoice choose(
      Head head,
      Optional<Quantity> highestTorque,
      boolean brokenLooseWithForce,
      boolean impactTool,
      List<Socket> crib,
      Map<Drive, Quantity> limits) {
    Wanted wanted = new Wanted(head, highestTorque, brokenLooseWithForce, impactTool, limits);
    return crib.stream()
        .filter(wanted::suits)
        .min(wanted.preference())
        .map(socket -> wanted.owned(socket))
        .orElseGet(() -> wanted.borrowed(crib));
  }

  /** What an adapter would do as well: the crib has a socket, but not in the square of a wrench. */
  public SocketChoice orAdapter(Head head, Drive own, String adapter) {
    List<String> reasoned = new ArrayList<>(reasons);
    reasoned.set(
        0, "the crib has %s in %s, but no %s".formatted(head.print(), own.print(), adapter));
    return new SocketChoice(drive, points, impact, owned, reasoned, Optional.of(adapter));
  }

  /**
   * The same socket to borrow in the square of the wrench at hand, so that no adapter is borrowed
   * with it; a smaller square than this one would not carry the torque, or is not made in this
   * size.
   */
  public SocketChoice inSquareOf(Drive wrench) {
    if (owned || wrench.compareTo(drive) <= 0) {
      return this;
    }
    List<String> reasoned = new ArrayList<>(reasons);
    reasoned.add(wrench.print() + " is the square of the wrench that tightens it");
    return new SocketChoice(wrench, points, impact, false, reasoned, orAdapter);
  }

  /** What is asked of the socket. */
  private record Wanted(
      Head head,
      Optional<Quantity> torque,
      boolean force,
      boolean impact,
      Map<Drive, Quantity> limits) {
    boolean suits(Socket socket) {
      return socket.fits(head) && carries(socket.drive()) && (!impact || socket.impact());
    }

    boolean carries(Drive drive) {
      return torque.map(most -> !most.isAbove(limit(drive))).orElse(true);
    }

    Quantity limit(Drive drive) {
      return limits.getOrDefault(drive, drive.workingLimit());
    }

    /** Twelve points round off a seized hexagon, so six go before a smaller drive there. */
    Comparator<Socket> preference() {
      Comparator<Socket> drive =
          Comparator.comparing((Socket socket) -> isWeak(socket.drive()))
              .thenComparing(Socket::drive);
      Comparator<Socket> points = Comparator.comparing(Socket::points);
      boolean pointsFirst = (force || impact) && head.form() == Head.Form.HEX;
      return pointsFirst ? points.thenComparing(drive) : drive.thenComparing(points);
    }

    /** Whether breaking a seized fastener loose may take more than the drive carries. */
    boolean isWeak(Drive drive) {
      return force
          && torque
              .map(most -> most.times(BREAKING))
              .filter(most -> most.isAbove(limit(drive)))
              .isPresent();
    }

    SocketChoice owned(Socket socket) {
      List<String> reasons = new ArrayList<>();
      reasons.add(carriage(socket.drive()));
      if (force && socket.points() == 12 && head.form() == Head.Form.HEX) {
        reasons.add("the crib has twelve points only: mind the corners when breaking it loose");
      }
      int points = hexagonal() ? socket.points() : 0;
      return new SocketChoice(
          socket.drive(), points, socket.impact(), true, reasons, Optional.empty());
    }

    /** What to ask a neighbour for, and why the crib will not do. */
    SocketChoice borrowed(List<Socket> crib) {
      List<String> reasons = new ArrayList<>();
      Drive strong = smallest(this::carries);
      Drive drive = smallest(it -> carries(it) && it.isMadeFor(head));
      reasons.add(lack(crib));
      reasons.add(
          drive == strong
              ? carriage(drive)
              : drive.print() + " is the smallest square for which this size is made");
      int points = head.form() == Head.Form.TWELVE_POINT ? 12 : hexagonal() ? 6 : 0;
      return new SocketChoice(drive, points, impact, false, reasons, Optional.empty());
    }

    private static Drive smallest(Predicate<Drive> which) {
      return Arrays.stream(Drive.values()).filter(which).findFirst().orElse(Drive.ONE);
    }

    private String lack(List<Socket> crib) {
      List<Socket> fitting = crib.stream().filter(socket -> socket.fits(head)).toList();
      if (fitting.isEmpty()) {
        return "the crib has no socket for " + head.print();
      }
      return fitting.stream().noneMatch(socket -> carries(socket.drive()))
          ? "no drive in the crib that takes " + head.print() + " carries this torque"
          : "the crib has no impact socket for " + head.print() + " that carries this torque";
    }

    private String carriage(Drive drive) {
      if (torque.isEmpty()) {
        return "no torque is known, so any drive will do";
      }
      String asked = torque.get().print() + " against " + limit(drive).print();
      return carries(drive)
          ? drive.print() + " carries " + asked
          : "no drive carries " + asked + " on " + drive.print();
    }

    private boolean hexagonal() {
      return head.form() == Head.Form.HEX || head.form() == Head.Form.TWELVE_POINT;
    }
  }
}
