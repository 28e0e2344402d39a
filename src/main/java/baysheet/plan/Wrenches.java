package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.books.Shop;
import baysheet.report.Located;
import baysheet.resolve.Resolved;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Wrench;
import baysheet.torque.WrenchChoice;
import java.util.List;
import java.util.Optional;

/** Chooses a wrench of the crib for a torque of a fastener. */
final class Wrenches {
  private Wrenches() {}

  static WrenchChoice choose(Resolved resolved, Fastener fastener, Target target) {
    Shop shop = resolved.shop();
    List<Wrench> crib = shop.crib().wrenches().stream().map(Located::value).toList();
    return WrenchChoice.choose(
        target.nominal(),
        target.bandOr(shop.band()),
        fastener.reach(),
        crib,
        resolved.date(),
        shop.calibrationMonths());
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
