package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.torque.Band;
import baysheet.torque.Candidate;
import baysheet.torque.Passes;
import baysheet.torque.Quantity;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.util.List;
import java.util.Optional;

/** Chooses a wrench of the crib for a torque of a fastener. */
public final class Wrenches {
  // An early round only has to be even, so any mark near its share will do. No source.
  private static final Quantity EARLY_BAND = Quantity.of("10", Unit.PERCENT);

  private Wrenches() {}

  /**
   * The wrench for a torque of a fastener and what to set on it. Where the set is tightened in
   * rounds, a wrench that can be set to the first of them goes before one that cannot: only the
   * last round has to be right, but a wrench that reaches them all saves changing it.
   */
  public static WrenchChoice choose(Resolved resolved, Fastener fastener, Target target) {
    List<Wrench> crib = crib(resolved);
    WrenchChoice whole = choose(resolved, fastener, target, crib);
    Passes rounds = rounds(fastener);
    if (rounds.percents().size() == 1) {
      return whole;
    }
    Quantity first = rounds.of(target.nominal()).get(0);
    List<Wrench> reaching =
        crib.stream().filter(it -> reaches(resolved, fastener, first, it)).toList();
    WrenchChoice narrow = choose(resolved, fastener, target, reaching);
    if (narrow.setting().isEmpty()) {
      return whole;
    }
    List<Candidate> told =
        whole.candidates().stream()
            .map(
                it ->
                    told(it.wrench(), narrow)
                        .or(() -> beaten(resolved, fastener, target, first, it.wrench()))
                        .orElse(it))
            .toList();
    return new WrenchChoice(narrow.setting(), told, narrow.outcome());
  }

  private static boolean reaches(
      Resolved resolved, Fastener fastener, Quantity first, Wrench wrench) {
    return early(resolved, fastener, first, List.of(wrench)).isPresent();
  }

  private static Optional<Candidate> told(Wrench wrench, WrenchChoice narrow) {
    return narrow.candidates().stream().filter(it -> it.wrench().equals(wrench)).findFirst();
  }

  /** A wrench that would do for the last round alone. */
  private static Optional<Candidate> beaten(
      Resolved resolved, Fastener fastener, Target target, Quantity first, Wrench wrench) {
    String why = "it cannot be set to the first round, " + first.print();
    return choose(resolved, fastener, target, List.of(wrench))
        .setting()
        .map(setting -> new Candidate(wrench, false, why));
  }

  /** What to set in a round before the last; empty when no wrench of these will do. */
  static Optional<Setting> early(
      Resolved resolved, Fastener fastener, Quantity round, List<Wrench> wrenches) {
    Band even = Target.plain(round).bandOr(EARLY_BAND);
    return choose(resolved, fastener, round, even, wrenches).setting();
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

  private static WrenchChoice choose(
      Resolved resolved, Fastener fastener, Target target, List<Wrench> wrenches) {
    Band band = target.bandOr(resolved.shop().band());
    return choose(resolved, fastener, target.nominal(), band, wrenches);
  }

  private static WrenchChoice choose(
      Resolved resolved, Fastener fastener, Quantity torque, Band band, List<Wrench> wrenches) {
    Shop shop = resolved.shop();
    return WrenchChoice.choose(
        torque, band, fastener.reach(), wrenches, resolved.date(), shop.calibrationMonths());
  }

  static List<Wrench> crib(Resolved resolved) {
    return resolved.shop().crib().wrenches().stream().map(Located::value).toList();
  }

  /** Wrenches that could be set to a torque, were they not past their calibration on the day. */
  static List<Wrench> lapsed(Resolved resolved, Fastener fastener, Target target) {
    return crib(resolved).stream()
        .filter(
            wrench ->
                choose(resolved, fastener, target, List.of(wrench)).outcome()
                    == WrenchChoice.Outcome.ONLY_LAPSED)
        .toList();
  }

  /** The wrench of the last torque stage, which is the one left in hand. */
  static Optional<Wrench> last(Resolved resolved, Fastener fastener) {
    if (!(fastener.tightening().value() instanceof Tightening.Stages stages)
        || stages.torques().isEmpty()) {
      return Optional.empty();
    }
    Target target = stages.torques().get(stages.torques().size() - 1);
    return choose(resolved, fastener, target).setting().map(Setting::wrench);
  }
}
