package baysheet.cli;

import baysheet.torque.Band;
import baysheet.torque.Candidate;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Rounding;
import baysheet.torque.Setting;
import baysheet.torque.Target;
import baysheet.torque.Unit;
import baysheet.torque.WrenchChoice;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shows how a torque becomes a figure on a wrench, step by step. */
final class SettingRows {
  private static final int DECIMALS = 2;
  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private final Rows rows;

  SettingRows(Rows rows) {
    this.rows = rows;
  }

  /**
   * The torque in other units: the exact figure, then as it is printed. Of a value with a band of
   * its own both ends come first, so that its middle is never taken for all of it.
   */
  void converted(Target target, Band band, List<Unit> units) {
    List<String> texts = new ArrayList<>();
    String whole = target.band().isPresent() ? target.nominal().print() + " is " : "";
    for (Unit unit : units) {
      if (unit != target.nominal().unit()) {
        target
            .band()
            .ifPresent(own -> texts.add(ends(own, unit) + ", its ends rounded towards the middle"));
        texts.add(
            whole + rounded(target.nominal().to(unit)) + printed(target.nominal(), unit, band));
      }
    }
    rows.rows("converted", texts);
  }

  /** Small figures are printed in lbf·in: one that is written so is not printed a second time. */
  private static String printed(Quantity nominal, Unit unit, Band band) {
    return Rounding.isOther(nominal, unit)
        ? ", printed as " + Rounding.converted(nominal, unit, band).print()
        : "";
  }

  /** Towards the middle: what is printed of a band is never outside it. */
  private static String ends(Band band, Unit unit) {
    return rounded(band.low().to(unit), RoundingMode.CEILING)
        + " to "
        + rounded(band.high().to(unit), RoundingMode.FLOOR);
  }

  /**
   * The accepted band and whose it is.
   *
   * @param otherwise whose it is when it was not written with the value
   */
  void band(Target target, Band band, String otherwise) {
    String whose =
        band.origin() == Band.Origin.BOOK
            ? "as written with the value"
            : percent(target.nominal(), band) + " either way, " + otherwise;
    rows.row("band", ends(band, band.low().unit()) + ": " + whose);
  }

  /** A figure that does not fit its thread and class is asked about, never set. */
  void doubtful() {
    rows.row("setting", "none: the figure is in doubt; find the right one first");
  }

  /** A stage without a torque. */
  void unset(boolean angle) {
    rows.row(
        "setting",
        angle
            ? "none: mark the head and turn it by hand with an angle gauge, no torque wrench"
            : "none: slackened by hand, no torque wrench");
  }

  private static String percent(Quantity nominal, Band band) {
    BigDecimal above = band.high().to(nominal.unit()).value().subtract(nominal.value());
    return plain(above.multiply(HUNDRED).divide(nominal.value(), DECIMALS, RoundingMode.HALF_UP))
        + "\u00A0%";
  }

  /** The formula of the extension, with its figures put in. */
  void reach(Quantity target, Optional<Reach> reach, WrenchChoice choice) {
    if (reach.isEmpty()) {
      return;
    }
    Reach extension = reach.get();
    rows.row(
        "extension",
        extension.length().print()
            + " long, at "
            + extension.angle().print()
            + " to the wrench (0° is straight on)");
    // TM 9-254 (US Army), figure 4-5: S = T·L/(L + E·cos a).
    rows.row("", "S = T·L/(L + E·cos a), L from square to hand, E the extension");
    choice.setting().ifPresent(setting -> rows.row("", worked(target, extension, setting)));
  }

  private static String worked(Quantity target, Reach reach, Setting setting) {
    Unit unit = target.unit();
    String hand = plain(setting.wrench().length().orElseThrow().to(Unit.MILLIMETRE).value());
    String beyond = plain(reach.length().to(Unit.MILLIMETRE).value());
    // What is set and what arrives stand in the proportion of the levers, so it gives S exactly.
    BigDecimal share =
        setting
            .setting()
            .to(unit)
            .value()
            .divide(setting.arrives().to(unit).value(), MathContext.DECIMAL128);
    String exact = rounded(target.times(share));
    return "S = %s·%s/(%s + %s·cos %s) = %s on %s"
        .formatted(
            plain(target.value()),
            hand,
            hand,
            beyond,
            reach.angle().print(),
            exact,
            setting.wrench().name());
  }

  /** Every wrench that was looked at, and why it was taken or not. */
  void wrenches(WrenchChoice choice) {
    wrenches("wrenches", choice);
  }

  /** The same under another word. */
  void wrenches(String word, WrenchChoice choice) {
    List<String> texts = new ArrayList<>();
    for (Candidate candidate : choice.candidates()) {
      String verdict = candidate.taken() ? " taken: " : " passed over: ";
      texts.add(candidate.wrench().name() + verdict + candidate.why());
    }
    rows.rows(word, texts.isEmpty() ? List.of("there are none") : texts);
  }

  /** What to set, and what then arrives. */
  void setting(WrenchChoice choice, Band band) {
    if (choice.setting().isEmpty()) {
      rows.row("setting", without(choice));
      return;
    }
    Setting setting = choice.setting().get();
    rows.row("setting", setting.wrench().name() + " at " + setting.setting().print());
    rows.row("arrives", Rounding.within(setting.arrives(), band).print() + " at the fastener");
    if (!setting.insideBand()) {
      rows.row(
          "",
          "with the wrench's deviation of "
              + plain(setting.wrench().accuracyPercent())
              + "\u00A0% it may leave the band");
    }
  }

  private static String without(WrenchChoice choice) {
    return choice.outcome() == WrenchChoice.Outcome.ONLY_LAPSED
        ? "none: only wrenches whose calibration does not hold on that day"
        : "none: no wrench has it on its scale, borrow one";
  }

  /** To hundredths, larger units to thousandths; a figure as it was written keeps what it has. */
  static String rounded(Quantity quantity) {
    return rounded(quantity, RoundingMode.HALF_UP);
  }

  private static String rounded(Quantity quantity, RoundingMode towards) {
    int decimals =
        switch (quantity.unit()) {
          case KILOGRAM_FORCE_METRE, DECANEWTON_METRE -> DECIMALS + 1;
          default -> DECIMALS;
        };
    BigDecimal value = quantity.value();
    return value.scale() <= decimals
        ? quantity.print()
        : new Quantity(new BigDecimal(plain(value.setScale(decimals, towards))), quantity.unit())
            .print();
  }

  /** Without trailing noughts and without an exponent. */
  static String plain(BigDecimal figure) {
    BigDecimal stripped = figure.stripTrailingZeros();
    return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
  }
}
