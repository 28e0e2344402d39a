package baysheet.plan;

import baysheet.books.Fastener;
import baysheet.torque.Passes;
import baysheet.torque.Quantity;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.Wrench;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the rounds of a set come to, as marks of a wrench: a share of a torque is no figure. */
final class Rounds {
  private final Wrenches wrenches;
  private final Fastener fastener;
  private final Target target;
  private final Optional<Setting> full;

  private Rounds(Wrenches wrenches, Fastener fastener, Target target) {
    this.wrenches = wrenches;
    this.fastener = fastener;
    this.target = target;
    this.full = wrenches.choose(fastener, target).setting();
  }

  /** The rounds of a set; none where it is tightened in one go, in stages, or without a figure. */
  static List<TorqueLine.Round> of(Wrenches wrenches, Fastener fastener) {
    Passes passes = Wrenches.rounds(fastener);
    if (passes.percents().size() > 1
        && fastener.tightening().value() instanceof Tightening.Stages stages
        && stages.plainTorque().isPresent()) {
      return new Rounds(wrenches, fastener, stages.plainTorque().get()).all(passes);
    }
    return List.of();
  }

  private List<TorqueLine.Round> all(Passes passes) {
    List<Quantity> torques = passes.of(target.nominal());
    List<TorqueLine.Round> rounds = new ArrayList<>();
    for (int i = 0; i < torques.size(); i++) {
      boolean last = i + 1 == torques.size();
      Optional<Setting> setting = last ? full : early(torques.get(i));
      rounds.add(round(passes.percents().get(i), torques.get(i), setting));
    }
    return rounds;
  }

  /** On the wrench of the last round where that can be, else on another of the crib. */
  private Optional<Setting> early(Quantity round) {
    List<Wrench> same = full.map(Setting::wrench).stream().toList();
    return wrenches.early(fastener, round, same).or(() -> wrenches.early(fastener, round));
  }

  private static TorqueLine.Round round(
      BigDecimal percent, Quantity torque, Optional<Setting> setting) {
    return new TorqueLine.Round(
        percent, torque, setting.map(it -> it.wrench().name()), setting.map(Setting::setting));
  }
}
