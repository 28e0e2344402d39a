package baysheet.torque;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

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
    /** Those that could be set to it have no calibration that holds on the day. */
    ONLY_LAPSED
  }

  // US Army TM 1-1500-204-23-9, table 8-1: a wrench is best between 30 and 80 % of its range.
  private static final BigDecimal BEST_FROM = new BigDecimal("0.3");
  private static final BigDecimal BEST_TO = new BigDecimal("0.8");

  public WrenchChoice {
    candidates = List.copyOf(candidates);
    if (setting.isPresent() != (outcome == Outcome.SET)) {
      throw new IllegalArgumentException(outcome + " with setting " + setting);
    }
  }

  /**
   * The best wrench for one torque.
   *
   * <p>In this order: one whose deviation stays inside the band; one whose square takes the socket,
   * then one for which the shop has an adapter; one set at 30 to 80 % of its scale; the smaller
   * error from rounding to a mark; the smaller scale; the crib's order.
   *
   * @param target the torque at the nut
   * @param band what is accepted at the nut; a mark that arrives outside it is never set
   * @param fit how the fastener's socket goes on a wrench
   * @param day the job's date
   * @param calibrationMonths how long a calibration holds
   */
  public static WrenchChoice choose(
      Quantity target,
      Band band,
      Optional<Reach> reach,
      List<Wrench> crib,
      Function<Wrench, SocketFit> fit,
      LocalDate day,
      int calibrationMonths) {
    Task task = new Task(target, band, reach);
    List<Trial> trials =
        crib.stream()
            .map(it -> task.tryOn(it, fit.apply(it), it.uncalibrated(day, calibrationMonths)))
            .toList();
    List<Reason> reasons = reasons(target);
    Optional<Trial> best = trials.stream().filter(Trial::usable).min(order(reasons));
    return new WrenchChoice(
        best.flatMap(Trial::setting),
        trials.stream().map(trial -> trial.against(best, reasons)).toList(),
        best.isPresent() ? Outcome.SET : without(trials));
  }

  /** Wrenches that could be set if their calibration held on the day. */
  public List<Wrench> lapsed() {
    return candidates.stream()
        .filter(it -> it.verdict() == Candidate.Verdict.LAPSED)
        .map(Candidate::wrench)
        .toList();
  }

  private static Outcome without(List<Trial> trials) {
    return trials.stream().anyMatch(trial -> trial.setting().isPresent())
        ? Outcome.ONLY_LAPSED
        : Outcome.NONE_IN_RANGE;
  }

  /**
   * One thing by which wrenches are compared.
   *
   * @param order the better wrench first
   * @param behind what is said of the wrench that comes behind
   */
  private record Reason(Comparator<Trial> order, Function<Trial, String> behind) {}

  private static List<Reason> reasons(Quantity target) {
    return List.of(
        new Reason(
            Comparator.comparing(trial -> !trial.found().insideBand()),
            trial -> "its deviation is wider than the band"),
        new Reason(Comparator.comparing(trial -> trial.fit().kind()), trial -> trial.needs()),
        new Reason(
            Comparator.comparing(trial -> !wellPlaced(trial.found())),
            trial -> "that is not at 30 to 80\u00A0% of its scale"),
        new Reason(
            Comparator.comparing(trial -> error(trial.found(), target)),
            trial -> "its mark lies farther off"),
        new Reason(
            Comparator.comparing(trial -> trial.wrench().to()), trial -> "its scale is longer"));
  }

  private static Comparator<Trial> order(List<Reason> reasons) {
    return reasons.stream().map(Reason::order).reduce(Comparator::thenComparing).orElseThrow();
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
    Trial tryOn(Wrench wrench, SocketFit fit, Optional<String> lapsed) {
      if (reach.isPresent() && wrench.length().isEmpty()) {
        return Trial.refused(
            wrench, "its length is not known, and the extension changes its setting");
      }
      WrenchExtension lever =
          reach
              .map(it -> WrenchExtension.with(wrench.length().orElseThrow(), it))
              .orElse(WrenchExtension.BARE);
      if (!lever.turnsTheNut()) {
        return Trial.refused(wrench, "the extension points back past the hand");
      }
      Quantity wanted = lever.setting(target).to(wrench.unit());
      if (!wrench.holds(wanted)) {
        return Trial.refused(wrench, rounded(wanted) + " is off its scale, " + scale(wrench));
      }
      return wrench
          .nearestMark(wanted)
          .map(mark -> marked(wrench, fit, lever, mark, lapsed))
          .orElseGet(() -> Trial.refused(wrench, rounded(wanted) + " lies past its last mark"));
    }

    private Trial marked(
        Wrench wrench,
        SocketFit fit,
        WrenchExtension lever,
        Quantity mark,
        Optional<String> lapsed) {
      Quantity arrives = lever.arriving(mark).to(target.unit());
      if (!band.contains(arrives)) {
        String why = "its nearest mark, " + mark.print() + ", arrives outside the band";
        return Trial.refused(wrench, why);
      }
      Band spread = wrench.spread(arrives);
      boolean inside = band.contains(spread.low()) && band.contains(spread.high());
      Setting setting = new Setting(wrench, mark, arrives, inside);
      return new Trial(wrench, fit, Optional.of(setting), lapsed, "");
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
   * @param lapsed why its calibration does not hold on the day; empty when it does
   * @param refusal why no setting was found; empty when one was
   */
  private record Trial(
      Wrench wrench,
      SocketFit fit,
      Optional<Setting> setting,
      Optional<String> lapsed,
      String refusal) {
    static Trial refused(Wrench wrench, String why) {
      return new Trial(wrench, SocketFit.NONE_NEEDED, Optional.empty(), Optional.empty(), why);
    }

    boolean usable() {
      return setting.isPresent() && lapsed.isEmpty();
    }

    Setting found() {
      return setting.orElseThrow();
    }

    String needs() {
      return fit.kind() == SocketFit.Kind.BORROW
          ? "the crib has no socket for it in %s, and no adapter to one"
              .formatted(wrench.drive().print())
          : "it needs the " + fit.how();
    }

    Candidate against(Optional<Trial> best, List<Reason> reasons) {
      if (setting.isEmpty()) {
        return new Candidate(wrench, Candidate.Verdict.REFUSED, refusal);
      }
      if (lapsed.isPresent()) {
        return new Candidate(wrench, Candidate.Verdict.LAPSED, lapsed.get());
      }
      return best.filter(it -> it == this).isPresent()
          ? new Candidate(wrench, Candidate.Verdict.TAKEN, merit())
          : new Candidate(
              wrench, Candidate.Verdict.PASSED_OVER, fault(best.orElseThrow(), reasons));
    }

    private String merit() {
      String with = fit.how().isEmpty() ? "" : " with " + fit.how();
      return "set to "
          + found().setting().print()
          + with
          + (found().insideBand()
              ? ", its deviation stays inside the band"
              : ", its deviation is wider than the band");
    }

    /** By the first thing in which the other is better; between equals the crib's order decides. */
    private String fault(Trial best, List<Reason> reasons) {
      String behind =
          reasons.stream()
              .filter(reason -> reason.order().compare(best, this) < 0)
              .findFirst()
              .map(reason -> reason.behind().apply(this))
              .orElse("the other stands first in the crib");
      return "could be set to " + found().setting().print() + ", but " + behind;
    }
  }
}
