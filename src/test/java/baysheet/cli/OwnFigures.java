package baysheet.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A second reckoning of one torque from its written words to the mark on a wrench, all in newton
 * metres. It shares no code with the program.
 */
final class OwnFigures {
  private static final MathContext FINE = new MathContext(40);
  private static final BigDecimal TWO = new BigDecimal(2);
  // Exact by definition: foot 0.3048 m, pound-force 4.448 221 615 260 5 N (NIST SP 811, app. B).
  private static final BigDecimal POUND_FOOT =
      new BigDecimal("0.3048").multiply(new BigDecimal("4.4482216152605"));
  private static final BigDecimal POUND_INCH = POUND_FOOT.divide(new BigDecimal(12), FINE);
  private static final Pattern TORQUE =
      Pattern.compile("([0-9.]+)(?: ± ([0-9.]+))? (N·m|lbf·ft|lbf·in)");

  final String unit;
  final BigDecimal target;
  final BigDecimal low;
  final BigDecimal high;

  /** In the unit of the book; the shop's band where the book gives no width. */
  OwnFigures(String written, BigDecimal shopPercent) {
    Matcher parts = TORQUE.matcher(written);
    if (!parts.matches()) {
      throw new AssertionError("not reckoned with: " + written);
    }
    unit = parts.group(3);
    target = new BigDecimal(parts.group(1));
    BigDecimal width =
        Optional.ofNullable(parts.group(2))
            .map(BigDecimal::new)
            .orElseGet(() -> target.multiply(shopPercent).movePointLeft(2));
    low = target.subtract(width);
    high = target.add(width);
  }

  /** What a mark of a wrench comes to. */
  record Mark(String wrench, BigDecimal mark, BigDecimal arrives, boolean inside, Scale scale) {}

  /** A wrench of the crib, in newton metres and millimetres. */
  record Scale(
      String name,
      BigDecimal from,
      BigDecimal to,
      BigDecimal step,
      BigDecimal accuracy,
      BigDecimal length,
      LocalDate calibrated,
      int trouble) {
    /**
     * As the shop's file has it.
     *
     * @param trouble 0 where its square takes the socket, 1 with an adapter, 2 with something
     *     borrowed
     */
    static Scale of(Map<String, Object> wrench, int trouble) {
      return new Scale(
          OwnBooks.text(wrench.get("name")),
          figure(wrench.get("from"), "N·m"),
          figure(wrench.get("to"), "N·m"),
          figure(wrench.get("step"), "N·m"),
          figure(wrench.get("accuracy"), "%"),
          figure(wrench.get("length"), "mm"),
          LocalDate.ofInstant(((Date) wrench.get("calibrated")).toInstant(), ZoneOffset.UTC),
          trouble);
    }

    private boolean holds(BigDecimal torque) {
      return torque.compareTo(from) >= 0 && torque.compareTo(to) <= 0;
    }

    private boolean inDate(LocalDate day, int months) {
      return !calibrated.plusMonths(months).isBefore(day) && !calibrated.isAfter(day);
    }

    /** The nearest of all its marks, found by walking the scale. */
    private BigDecimal nearest(BigDecimal torque) {
      BigDecimal best = from;
      for (BigDecimal mark = from; mark.compareTo(to) <= 0; mark = mark.add(step)) {
        if (off(mark, torque).compareTo(off(best, torque)) <= 0) {
          best = mark;
        }
      }
      return best;
    }
  }

  /**
   * The wrench to take for a torque, by the rules written for it: among those whose scale holds the
   * setting and whose calibration is no older than so many months, one whose setting and accuracy
   * stay inside the band; then one whose square takes the socket without an adapter; then one set
   * at 30 to 80 % of its end; then the smaller error; then the smaller end.
   */
  Optional<Mark> wrench(List<Scale> crib, LocalDate day, int months, Lever lever) {
    List<Mark> marks = new ArrayList<>();
    for (Scale scale : crib) {
      BigDecimal set = lever.set(newtonMetres(target), scale);
      if (scale.holds(set) && scale.inDate(day, months)) {
        Mark mark = mark(scale, set, lever);
        if (accepted(mark.arrives())) {
          marks.add(mark);
        }
      }
    }
    return marks.stream()
        .min(
            Comparator.comparing((Mark it) -> !it.inside())
                .thenComparing(it -> it.scale().trouble())
                .thenComparing(it -> !wellPlaced(it))
                .thenComparing(
                    it -> off(it.arrives(), newtonMetres(target)).setScale(6, RoundingMode.HALF_UP))
                .thenComparing(it -> it.scale().to()));
  }

  /** An early round: on the wrench of the last where its mark is near enough, else on another. */
  Optional<Mark> round(
      BigDecimal percent,
      Optional<Mark> last,
      List<Scale> crib,
      LocalDate day,
      int months,
      Lever lever) {
    OwnFigures share = new OwnFigures(this, percent);
    return last.map(it -> List.of(it.scale()))
        .flatMap(same -> share.wrench(same, day, months, lever))
        .or(() -> share.wrench(crib, day, months, lever));
  }

  /** A share of a torque, with a tenth either way: an early round only has to be even. */
  private OwnFigures(OwnFigures whole, BigDecimal percent) {
    unit = whole.unit;
    target = whole.target.multiply(percent).movePointLeft(2);
    low = target.multiply(new BigDecimal("0.9"));
    high = target.multiply(new BigDecimal("1.1"));
  }

  private Mark mark(Scale scale, BigDecimal set, Lever lever) {
    BigDecimal mark = scale.nearest(set);
    BigDecimal arrives = lever.arrives(mark, scale);
    BigDecimal astray = arrives.multiply(scale.accuracy()).movePointLeft(2);
    boolean inside = accepted(arrives.subtract(astray)) && accepted(arrives.add(astray));
    return new Mark(scale.name(), mark, arrives, inside, scale);
  }

  private static boolean wellPlaced(Mark mark) {
    BigDecimal share = mark.mark().divide(mark.scale().to(), FINE);
    return share.compareTo(new BigDecimal("0.3")) >= 0
        && share.compareTo(new BigDecimal("0.8")) <= 0;
  }

  boolean accepted(BigDecimal newtonMetres) {
    return newtonMetres.compareTo(newtonMetres(low)) >= 0
        && newtonMetres.compareTo(newtonMetres(high)) <= 0;
  }

  /** An extension of E mm at an angle: S = T·L/(L + E·cos a), TM 9-254 (US Army), figure 4-5. */
  record Lever(BigDecimal length, double degrees) {
    static final Lever NONE = new Lever(BigDecimal.ZERO, 0);

    BigDecimal set(BigDecimal torque, Scale scale) {
      return torque.multiply(scale.length()).divide(whole(scale), FINE);
    }

    BigDecimal arrives(BigDecimal mark, Scale scale) {
      return mark.multiply(whole(scale)).divide(scale.length(), FINE);
    }

    private BigDecimal whole(Scale scale) {
      double beyond = Math.cos(Math.toRadians(degrees)) * length.doubleValue();
      // What cos 90° lacks of zero in floating point is no length.
      return scale.length().add(new BigDecimal(beyond).setScale(9, RoundingMode.HALF_EVEN));
    }
  }

  BigDecimal newtonMetres(BigDecimal figure) {
    return figure.multiply(factor(unit), FINE);
  }

  /** A figure of the book's unit in another. */
  BigDecimal in(String other) {
    return newtonMetres(target).divide(factor(other), FINE);
  }

  static BigDecimal factor(String unit) {
    return switch (unit) {
      case "N·m" -> BigDecimal.ONE;
      case "lbf·ft" -> POUND_FOOT;
      case "lbf·in" -> POUND_INCH;
      default -> throw new AssertionError("not reckoned with: " + unit);
    };
  }

  /** The figure in front of a unit. */
  static BigDecimal figure(Object written, String unit) {
    String text = OwnBooks.text(written);
    if (!text.endsWith(unit)) {
      throw new AssertionError(text + " is not in " + unit);
    }
    return new BigDecimal(text.substring(0, text.length() - unit.length()).strip());
  }

  static BigDecimal off(BigDecimal one, BigDecimal other) {
    return one.subtract(other).abs();
  }

  /** Half of a step of rounding. */
  static BigDecimal half(BigDecimal step) {
    return step.divide(TWO, FINE);
  }
}
