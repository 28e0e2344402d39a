package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.torque.Band;
import baysheet.torque.Candidate;
import baysheet.torque.Drive;
import baysheet.torque.Head;
import baysheet.torque.Passes;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Setting;
import baysheet.torque.Socket;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Chooses a wrench of the crib for a torque of a fastener. */
public final class Wrenches {
  // An early round only has to be even, so any mark near its share will do. No source.
  private static final Quantity EARLY_BAND = Quantity.of("10", Unit.PERCENT);

  private static final String NO_ADAPTER = "no socket of the crib goes on its square";

  private final Resolved resolved;
  private final List<Wrench> crib;

  /** Chosen once: a set's socket, stage and last round all ask, and so do like sets elsewhere. */
  private final Map<Asked, WrenchChoice> chosen = new HashMap<>();

  Wrenches(Resolved resolved) {
    this.resolved = resolved;
    this.crib = resolved.shop().crib().wrenches().stream().map(Located::value).toList();
  }

  /** All of a fastener that a choice depends on. */
  private record Asked(
      Target target, Optional<Reach> reach, Optional<Head> head, boolean deep, Passes rounds) {}

  /**
   * The wrench for a torque of a fastener and what to set on it. A wrench that needs an adapter
   * which the crib lacks comes behind every one that does not. Where the set is tightened in
   * rounds, a wrench that can be set to the first of them goes before one that cannot: only the
   * last round has to be right, but a wrench that reaches them all saves changing it.
   */
  public static WrenchChoice choose(Resolved resolved, Fastener fastener, Target target) {
    return new Wrenches(resolved).choose(fastener, target);
  }

  WrenchChoice choose(Fastener fastener, Target target) {
    Optional<Head> head = fastener.head().map(Located::value);
    Asked asked = new Asked(target, fastener.reach(), head, fastener.deep(), rounds(fastener));
    return chosen.computeIfAbsent(asked, key -> choose(fastener, target, key.rounds()));
  }

  private WrenchChoice choose(Fastener fastener, Target target, Passes rounds) {
    List<Wrench> handy = crib.stream().filter(it -> isHandy(fastener, it)).toList();
    boolean enough =
        choose(fastener, target, handy).setting().filter(Setting::insideBand).isPresent();
    if (handy.size() == crib.size() || !enough) {
      return choose(fastener, target, rounds, crib);
    }
    WrenchChoice choice = choose(fastener, target, rounds, handy);
    List<Candidate> told =
        crib.stream()
            .map(it -> told(it, choice).orElseGet(() -> new Candidate(it, false, NO_ADAPTER)))
            .toList();
    return new WrenchChoice(choice.setting(), told, choice.outcome());
  }

  /** Whether the crib's sockets for a head go on a wrench, by an adapter of the crib if need be. */
  private boolean isHandy(Fastener fastener, Wrench wrench) {
    if (fastener.head().isEmpty() || fastener.reach().isPresent()) {
      return true;
    }
    Head head = fastener.head().get().value();
    List<Drive> squares =
        resolved.shop().crib().sockets().stream()
            .map(Located::value)
            .filter(socket -> socket.fits(head) && (socket.deep() || !fastener.deep()))
            .map(Socket::drive)
            .toList();
    return squares.isEmpty() || squares.stream().anyMatch(square -> goesOn(wrench, square));
  }

  private boolean goesOn(Wrench wrench, Drive square) {
    return wrench.drive() == square
        || LayOut.has(resolved.shop(), Words.adapter(wrench.drive().print(), square.print()));
  }

  private WrenchChoice choose(
      Fastener fastener, Target target, Passes rounds, List<Wrench> wrenches) {
    WrenchChoice whole = choose(fastener, target, wrenches);
    if (rounds.percents().size() == 1) {
      return whole;
    }
    Quantity first = rounds.of(target.nominal()).get(0);
    List<Wrench> reaching = wrenches.stream().filter(it -> reaches(fastener, first, it)).toList();
    WrenchChoice narrow = choose(fastener, target, reaching);
    if (narrow.setting().isEmpty()) {
      return whole;
    }
    List<Candidate> told =
        whole.candidates().stream()
            .map(
                it ->
                    told(it.wrench(), narrow)
                        .or(() -> beaten(fastener, target, first, it.wrench()))
                        .orElse(it))
            .toList();
    return new WrenchChoice(narrow.setting(), told, narrow.outcome());
  }

  private boolean reaches(Fastener fastener, Quantity first, Wrench wrench) {
    return early(fastener, first, List.of(wrench)).isPresent();
  }

  private static Optional<Candidate> told(Wrench wrench, WrenchChoice narrow) {
    return narrow.candidates().stream().filter(it -> it.wrench().equals(wrench)).findFirst();
  }

  /** A wrench that would do for the last round alone. */
  private Optional<Candidate> beaten(
      Fastener fastener, Target target, Quantity first, Wrench wrench) {
    String why = "it cannot be set to the first round, " + first.print();
    return choose(fastener, target, List.of(wrench))
        .setting()
        .map(setting -> new Candidate(wrench, false, why));
  }

  /** What to set in a round before the last; empty when no wrench of the crib will do. */
  Optional<Setting> early(Fastener fastener, Quantity round) {
    return early(fastener, round, crib);
  }

  /** The same with these wrenches only. */
  Optional<Setting> early(Fastener fastener, Quantity round, List<Wrench> wrenches) {
    Band even = Target.plain(round).bandOr(EARLY_BAND);
    return choose(fastener, round, even, wrenches).setting();
  }

  /** The rounds in which a set is tightened: the book's own, or the usual ones. */
  static Passes rounds(Fastener fastener) {
    boolean ordered = fastener.order().isPresent();
    return fastener
        .passes()
        .map(Located::value)
        .orElseGet(
            () -> Passes.usual(fastener.count().value(), ordered, fastener.tightening().value()));
  }

  private WrenchChoice choose(Fastener fastener, Target target, List<Wrench> wrenches) {
    Band band = target.bandOr(resolved.shop().band());
    return choose(fastener, target.nominal(), band, wrenches);
  }

  private WrenchChoice choose(
      Fastener fastener, Quantity torque, Band band, List<Wrench> wrenches) {
    int months = resolved.shop().calibrationMonths();
    return WrenchChoice.choose(torque, band, fastener.reach(), wrenches, resolved.date(), months);
  }

  /** Wrenches that could be set to a torque, were they not past their calibration on the day. */
  List<Wrench> lapsed(Fastener fastener, Target target) {
    return crib.stream()
        .filter(
            wrench ->
                choose(fastener, target, List.of(wrench)).outcome()
                    == WrenchChoice.Outcome.ONLY_LAPSED)
        .toList();
  }

  /** The wrench of the last torque stage, which is the one left in hand. */
  Optional<Wrench> last(Fastener fastener) {
    if (!(fastener.tightening().value() instanceof Tightening.Stages stages)
        || stages.torques().isEmpty()) {
      return Optional.empty();
    }
    Target target = stages.torques().get(stages.torques().size() - 1);
    return choose(fastener, target).setting().map(Setting::wrench);
  }
}
