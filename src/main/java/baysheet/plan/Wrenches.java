package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.torque.Passes;
import baysheet.torque.Quantity;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Chooses a wrench of the crib for a torque of a fastener. */
final class Wrenches {
  private Wrenches() {}

  static WrenchChoice choose(Resolved resolved, Fastener fastener, Target target) {
    List<Wrench> crib = resolved.shop().crib().wrenches().stream().map(Located::value).toList();
    Quantity first = firstRound(fastener, target);
    List<Wrench> forAllRounds = crib.stream().filter(wrench -> wrench.holds(first)).toList();
    WrenchChoice choice = choose(resolved, fastener, target, forAllRounds);
    // Only the last round has to be right; a wrench that reaches them all saves changing it.
    return choice.setting().isPresent() ? choice : choose(resolved, fastener, target, crib);
  }

  private static Quantity firstRound(Fastener fastener, Target target) {
    BigDecimal share = rounds(fastener).percents().get(0).movePointLeft(2);
    return target.nominal().times(share);
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
      Resolved resolved, Fastener fastener, Target target, List<Wrench> crib) {
    Shop shop = resolved.shop();
    return WrenchChoice.choose(
        target.nominal(),
        target.bandOr(shop.band()),
        fastener.reach(),
        crib,
        resolved.date(),
        shop.calibrationMonths());
  }

  /** Wrenches that reach a torque and are past their calibration on the day of the job. */
  static List<Wrench> lapsed(Resolved resolved, Quantity torque) {
    return resolved.shop().crib().wrenches().stream()
        .map(Located::value)
        .filter(wrench -> wrench.holds(torque))
        .filter(wrench -> wrench.lapsed(resolved.date(), resolved.shop().calibrationMonths()))
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
