package baysheet.torque;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which torque wrench to take and what to set on it.
 *
 * @param setting the setting; none unless the outcome is {@link Outcome#SET}
 * @param candidates every wrench of the crib, in its order, and why it was taken or not
 * @param outcome how the search ended
 */
public record WrenchChoice(Optional<Setting> setting, List<Candidate> candidates, Outcome outcome) {
  /** How a search for a wrench ends. */
  public enum Outcome {
    SET,
    /** No wrench can be set to it: borrow one. */
    NONE_IN_RANGE,
    /** The wrenches that could be set to it are all past their calibration. */
    ONLY_LAPSED
  }

  // US Army TM 1-1500-204-23-9, table 8-1: a wrench is best between 30 and 80 % of its range.
  private static final BigDecimal BEST_FROM = new BigDecimal("0.3");
  private static final BigDecimal BEST_TO = new BigDecimal("0.8");

  public WrenchChoice {
    Objects.requireNonNull(outcome);
    candidates = List.copyOf(candidates);
    if (setting.isPresent() != (outcome == Outcome.SET)) {
      throw new IllegalArgumentException(outcome + " with setting " + setting);
    }
  }

  /**
   * The best wrench for one torque stage.
   *
   * <p>In this order: one whose deviation stays inside the band; one set at 30 to 80 % of its
   * scale; the smaller error from rounding to a mark; the smaller scale; the crib's order.
   *
   * @param target the torque at the nut
   * @param band what is accepted at the nut; a mark that arrives outside it is never set
   * @param day the job's date
   * @param calibrationMonths how long a calibration holds
   */
  public static WrenchChoice choose(
      Quantity target,
      Band band,
      Optional<Reach> reach,
      List<Wrench> crib,
      LocalDate day,
      int calibrationMonths) {
    Task task = new Task(target, band, reach);
    List<Trial> trials =
        crib.stream()
            .map(wrench -> task.tryOn(wrench, wrench.lapsed(day, calibrationMonths)))
            .toList();
    Optional<Trial> best =
        trials.stream()
            .filter(Trial::usable)
            .min(Comparator.comparing(Trial::found, order(target)));
    return new WrenchChoice(
        best.flatMap(Trial::setting),
        trials.stream().map(trial -> trial.against(best)).toList(),
        best.isPresent() ? Outcome.SET : without(trials));
  }

  private static Outcome without(List<Trial> trials) {
    return trials.stream().anyMatch(trial -> trial.setting().isPresent())
        ? Outcome.ONLY_LAPSED
        : Outcome.NONE_IN_RANGE;
  }

  private static Comparator<Setting> order(Quantity target) {
    return Comparator.comparing(Setting::insideBand)
        .thenComparing(WrenchChoice::wellPlaced)
        .reversed()
        .thenComparing(setting -> error(setting, target))
        .thenComparing(setting -> setting.wrench().to());
  }

  private static boolean wellPlaced(Setting setting) {
    Quantity end = setting.wrench().to();
    return !setting.setting().isBelow(end.times(BEST_FROM))
        && !setting.setting().isAbove(end.times(BEST_TO));
  }

  /** In millionths of the target's unit: quotients must not decide between equal errors. */
  private static BigDecimal error(Setting setting, Quantity target) {
    return setting
        .arrives()
        .value()
        .subtract(target.value())
        .abs()
        .setScale(6, RoundingMode.HALF_UP);
  }

  /** The torque that is to arrive at the nut, and through what. */
  private record Task(Quantity target, Band band, Optional<Reach> reach) {
    Trial tryOn(Wrench wrench, boolean lapsed) {
      Lever lever =
          reach
              .map(it -> Lever.with(wrench.length(), it))
              .orElseGet(() -> Lever.bare(wrench.length()));
      if (!lever.turnsTheNut()) {
        return Trial.refused(wrench, "the extension points back past the hand");
      }
      Quantity wanted = lever.setting(target).to(wrench.unit());
      if (!wrench.holds(wanted)) {
        return Trial.refused(wrench, rounded(wanted) + " is off its scale, " + scale(wrench));
      }
      return wrench
          .nearestMark(wanted)
          .map(mark -> marked(wrench, lever, mark, lapsed))
          .orElseGet(() -> Trial.refused(wrench, rounded(wanted) + " lies past its last mark"));
    }

    private Trial marked(Wrench wrench, Lever lever, Quantity mark, boolean lapsed) {
      Quantity arrives = lever.arriving(mark).to(target.unit());
      if (!band.contains(arrives)) {
        String why = "its nearest mark, " + mark.print() + ", arrives outside the band";
        return Trial.refused(wrench, why);
      }
      Band spread = wrench.spread(arrives);
      boolean inside = band.contains(spread.low()) && band.contains(spread.high());
      return new Trial(wrench, Optional.of(new Setting(wrench, mark, arrives, inside)), lapsed, "");
    }

    private static String scale(Wrench wrench) {
      return wrench.from().print() + " to " + wrench.to().print();
    }

    private static String rounded(Quantity wanted) {
      return Rounding.plain(wanted, wanted.unit()).print();
    }
  }

  /**
   * One wrench tried.
   *
   * @param refusal why no setting was found; empty when one was
   */
  private record Trial(Wrench wrench, Optional<Setting> setting, boolean lapsed, String refusal) {
    static Trial refused(Wrench wrench, String why) {
      return new Trial(wrench, Optional.empty(), false, why);
    }

    boolean usable() {
      return setting.isPresent() && !lapsed;
    }

    Setting found() {
      return setting.orElseThrow();
    }

    Candidate against(Optional<Trial> best) {
      boolean taken = best.isPresent() && best.get() == this;
      return new Candidate(wrench, taken, taken ? merit() : fault());
    }

    private String merit() {
      Setting found = found();
      return found.insideBand()
          ? "set to " + found.setting().print() + ", its deviation stays inside the band"
          : "set to " + found.setting().print() + ", its deviation is wider than the band";
    }

    private String fault() {
      if (setting.isEmpty()) {
        return refusal;
      }
      return lapsed
          ? "its calibration of " + wrench.calibrated() + " does not hold on that day"
          : "could be set to " + found().setting().print() + ", but another suits better";
    }
  }
}
