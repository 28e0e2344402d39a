package baysheet.verify;

import baysheet.books.Fastener;
import baysheet.books.FastenerText;
import baysheet.books.Place;
import baysheet.report.Located;
import baysheet.resolve.Bound;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Target;
import baysheet.torque.Tightening;
import baysheet.torque.TighteningPasses;
import baysheet.torque.TighteningStage;
import baysheet.torque.Unit;
import baysheet.torque.Wrench;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Whether every row of the torque table says what the book or the override says of its fastener at
 * each of its places, and whether every mark that it gives can be set: it lies on the scale of a
 * wrench of the shop whose calibration holds on the day, and what then arrives at the fastener lies
 * inside the accepted band. It computes from the wrench to the fastener; the planner computes from
 * the fastener to the wrench. The two share no code.
 */
final class FigureCheck {
  /** An early round only has to be even: this share of its torque either way. No source. */
  private static final double EARLY = 0.1;

  /** What is lost when a figure goes through a double. */
  private static final double EXACT = 1e-9;

  /** An end that is rounded inward may not take more than this share of the band. */
  private static final double ROUNDED = 0.2;

  private final Resolved resolved;
  private final TorqueLine line;
  private final Fastener book;
  private final List<String> faults;

  private FigureCheck(Resolved resolved, TorqueLine line, Fastener book, List<String> faults) {
    this.resolved = resolved;
    this.line = line;
    this.book = book;
    this.faults = faults;
  }

  static List<String> faults(Sheet sheet, Resolved resolved) {
    List<String> faults = new ArrayList<>();
    for (TorqueLine line : sheet.torque()) {
      for (Place place : line.places()) {
        if (resolved.thing(new ItemAt(line.fastener(), place)) instanceof Bound.OfBook bound) {
          FigureCheck check = new FigureCheck(resolved, line, bound.values(), faults);
          check.origin(bound);
          check.written();
          check.stages();
          check.rounds();
        } else {
          faults.add("torque line " + line.n() + " is of no fastener of the book at " + place);
        }
      }
    }
    return faults;
  }

  private void fault(String what) {
    faults.add("torque line " + line.n() + " (" + line.fastener() + "): " + what);
  }

  private void same(String what, Object printed, Object given) {
    if (!Objects.equals(printed, given)) {
      fault(what + " is " + printed + ", and the book's is " + given);
    }
  }

  private void origin(Bound.OfBook bound) {
    same("the source", line.origin().source(), bound.source());
    same("an override", line.origin().overridden(), bound.overridden());
    same("the torque replaced", line.origin().replaced(), bound.replaced().map(Tightening::print));
  }

  private void written() {
    FastenerText text = book.written();
    same("the count", line.count(), book.count().value());
    same("the treatment", line.refitting().threads(), book.threads());
    same("the re-use", line.refitting().reuse(), reuse(text));
    same("the lock", line.refitting().lock(), value(text.method().lock()));
    same("the remarks", line.refitting().remarks(), text.remarks());
    same("the re-check", line.visits().recheck(), value(text.method().recheck()));
    same("the head", line.hardware().head(), value(text.pieces().head()));
    same(
        "the thread",
        line.hardware().thread(),
        text.pieces().thread().map(thread -> thread.value().designation()));
    same(
        "the class",
        line.hardware().strength(),
        text.pieces().strength().map(strength -> strength.value().label()));
    same("the passes", line.method().passes(), passes(text));
  }

  /**
   * The book's own; else from four fasteners on, which have an order and one plain torque, half,
   * full, and once round again. Common practice, no source.
   */
  private TighteningPasses passes(FastenerText text) {
    boolean evened = book.count().value() >= 4 && text.method().order().isPresent() && isPlain();
    List<BigDecimal> percents =
        evened
            ? List.of(BigDecimal.valueOf(50), BigDecimal.valueOf(100))
            : List.of(BigDecimal.valueOf(100));
    return value(text.method().passes()).orElse(new TighteningPasses(percents, evened));
  }

  private boolean isPlain() {
    return book.tightening().value() instanceof Tightening.Stages given
        && given.plainTorque().isPresent();
  }

  private static <T> Optional<T> value(Optional<Located<T>> written) {
    return written.map(Located::value);
  }

  private static TorqueLine.Reuse reuse(FastenerText text) {
    return text.pieces()
        .reuse()
        .map(again -> again.value() ? TorqueLine.Reuse.AGAIN : TorqueLine.Reuse.NEW)
        .orElse(TorqueLine.Reuse.NOT_STATED);
  }

  private void stages() {
    Tightening given = book.tightening().value();
    List<TighteningStage> stages =
        given instanceof Tightening.Stages some ? some.stages() : List.of();
    TorqueLine.Kind kind =
        given instanceof Tightening.Unknown
            ? TorqueLine.Kind.UNKNOWN
            : given instanceof Tightening.Snug ? TorqueLine.Kind.SNUG : TorqueLine.Kind.PUBLISHED;
    same("the kind", line.kind(), kind);
    List<TorqueLine.StageLine> printed = line.method().stages();
    same("the number of stages", printed.size(), stages.size());
    for (int i = 0; i < Math.min(printed.size(), stages.size()); i++) {
      stage(i + 1, printed.get(i), stages.get(i));
    }
  }

  private void stage(int number, TorqueLine.StageLine printed, TighteningStage given) {
    if (printed instanceof TorqueLine.StageLine.Torque torque
        && given instanceof TighteningStage.Torque of) {
      torque(number, torque, of.target());
    } else if (printed instanceof TorqueLine.StageLine.Angle turn
        && given instanceof TighteningStage.Angle of) {
      same("the angle of stage " + number, turn.angle(), of.angle());
    } else if (!(printed instanceof TorqueLine.StageLine.Loosen
        && given instanceof TighteningStage.Loosen)) {
      fault("stage " + number + " is " + printed.print() + ", and the book's is " + given.print());
    }
  }

  private void torque(int number, TorqueLine.StageLine.Torque printed, Target given) {
    String what = "stage " + number;
    same("the target of " + what, printed.target(), given.nominal());
    same("the figure of " + what, printed.written(), given.written());
    Band band = given.bandOr(resolved.shop().wrenchUse().band());
    same("the origin of the band of " + what, printed.band().origin(), band.origin());
    band(what, printed.band(), band, 1);
    printed
        .second()
        .filter(second -> !band.contains(second))
        .ifPresent(second -> fault(second.print() + " of " + what + " is outside the band"));
    if (printed.setting().isPresent()) {
      Quantity setting = printed.setting().get();
      double ratio = mark(what, printed.wrench(), setting);
      if (!isIn(band, arriving(setting, ratio, band))) {
        fault(setting.print() + " of " + what + " brings a torque outside the band");
      }
      printed
          .reading()
          .ifPresent(reading -> band(what + " as the wrench reads", reading, band, ratio));
    }
  }

  /**
   * A band that is printed lies inside the accepted one, is hardly narrower, and holds its middle.
   *
   * @param ratio what arrives at the fastener for each newton metre on the wrench
   */
  private void band(String what, Band printed, Band accepted, double ratio) {
    Unit unit = accepted.low().unit();
    double low = printed.low().in(unit) * ratio;
    double high = printed.high().in(unit) * ratio;
    double from = accepted.low().in(unit);
    double to = accepted.high().in(unit);
    double room = (to - from) * ROUNDED + to * EXACT;
    boolean inside = low >= from - from * EXACT && high <= to + to * EXACT;
    if (!inside || low > from + room || high < to - room) {
      fault(
          "the band of %s is %s to %s, and the accepted one is %s to %s"
              .formatted(
                  what,
                  printed.low().print(),
                  printed.high().print(),
                  accepted.low().print(),
                  accepted.high().print()));
    }
  }

  private void rounds() {
    List<BigDecimal> shares =
        line.method().rounds().stream().map(TorqueLine.Round::percent).toList();
    if (!isPlain() || line.method().passes().percents().size() == 1) {
      same("the rounds", shares, List.of());
      return;
    }
    same("the rounds", shares, line.method().passes().percents());
    Target target = ((Tightening.Stages) book.tightening().value()).torques().get(0);
    Band band = target.bandOr(resolved.shop().wrenchUse().band());
    for (TorqueLine.Round round : line.method().rounds()) {
      Unit unit = target.nominal().unit();
      double share = target.nominal().in(unit) * round.percent().doubleValue() / 100;
      String what = "the round of " + round.percent() + " %";
      if (Math.abs(round.torque().in(unit) - share) > share * EXACT) {
        fault(what + " is " + round.torque().print());
      }
      if (round.setting().isPresent()) {
        double ratio = mark(what, round.wrench(), round.setting().get());
        double arrives = arriving(round.setting().get(), ratio, band);
        boolean full = round.percent().compareTo(BigDecimal.valueOf(100)) == 0;
        boolean even = Math.abs(arrives - share) <= share * (EARLY + EXACT);
        if (full ? !isIn(band, arrives) : !even) {
          fault(round.setting().get().print() + " does not bring the torque of " + what);
        }
      }
    }
  }

  private static double arriving(Quantity setting, double ratio, Band band) {
    return setting.in(band.low().unit()) * ratio;
  }

  private static boolean isIn(Band band, double torque) {
    Unit unit = band.low().unit();
    double low = band.low().in(unit);
    double high = band.high().in(unit);
    return torque >= low - low * EXACT && torque <= high + high * EXACT;
  }

  /**
   * A mark must be one of the wrench's, and the wrench one of the shop's that may be used.
   *
   * @return what arrives at the fastener for each newton metre on the wrench
   */
  private double mark(String what, Optional<String> name, Quantity setting) {
    Optional<Wrench> wrench =
        resolved.shop().crib().wrenches().stream()
            .map(Located::value)
            .filter(it -> name.equals(Optional.of(it.name())))
            .findFirst();
    if (wrench.isEmpty()) {
      fault("the shop has no wrench " + name.orElse("") + " for " + what);
      return 1;
    }
    Wrench used = wrench.get();
    double marks =
        (setting.in(used.unit()) - used.from().in(used.unit())) / used.step().in(used.unit());
    boolean onScale =
        !setting.isBelow(used.from())
            && !setting.isAbove(used.to())
            && Math.abs(marks - Math.rint(marks)) <= EXACT * Math.max(1, marks);
    if (!onScale) {
      fault(setting.print() + " of " + what + " is no mark of " + used.name());
    }
    boolean holds =
        !used.calibrated().isAfter(resolved.date())
            && !resolved
                .date()
                .isAfter(
                    used.calibrated().plusMonths(resolved.shop().wrenchUse().calibrationMonths()));
    if (!holds) {
      fault("the calibration of " + used.name() + " does not hold on " + resolved.date());
    }
    return ratio(used);
  }

  /** The hand pulls at the length of the wrench and of what lengthens it: a lever's law. */
  private double ratio(Wrench wrench) {
    Optional<Reach> reach = book.reach();
    if (reach.isEmpty()) {
      return 1;
    }
    if (wrench.length().isEmpty()) {
      fault(wrench.name() + " carries an extension, and its length is not known");
      return 1;
    }
    double length = wrench.length().get().in(Unit.MILLIMETRE);
    double angle = Math.toRadians(reach.get().angle().in(Unit.DEGREE));
    return (length + reach.get().length().in(Unit.MILLIMETRE) * Math.cos(angle)) / length;
  }
}
