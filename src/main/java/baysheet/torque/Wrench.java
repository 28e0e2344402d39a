package baysheet.torque;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A torque wrench of the crib. Its scale has marks at {@code from}, {@code from + step} and so on,
 * none above {@code to}.
 *
 * @param name what the shop calls it
 * @param drive its square
 * @param from lowest mark
 * @param to end of the scale
 * @param step from mark to mark
 * @param accuracyPercent permissible deviation either way, in percent of the setting (ISO 6789: 4,
 *     or 6 up to 10 N·m)
 * @param length from the square to the middle of the hand; it only counts with an extension
 * @param calibrated day of the last calibration
 */
public record Wrench(
    String name,
    Drive drive,
    Quantity from,
    Quantity to,
    Quantity step,
    BigDecimal accuracyPercent,
    Optional<Quantity> length,
    LocalDate calibrated) {
  private static final BigDecimal HUNDRED = new BigDecimal(100);

  /**
   * @throws IllegalArgumentException when no such wrench can be: {@link #read} says so politely
   */
  public Wrench {
    Optional<ParseFailure<Wrench>> fault = fault(from, to, step, accuracyPercent, length);
    if (fault.isPresent()) {
      throw new IllegalArgumentException(name + ": " + fault.get().what());
    }
  }

  /** A wrench from what people write of it, or what is wrong between its figures. */
  public static ParseResult<Wrench> read(
      String name,
      Drive drive,
      Quantity from,
      Quantity to,
      Quantity step,
      BigDecimal accuracyPercent,
      Optional<Quantity> length,
      LocalDate calibrated) {
    return fault(from, to, step, accuracyPercent, length)
        .<ParseResult<Wrench>>map(misread -> misread)
        .orElseGet(
            () ->
                new Parsed<>(
                    new Wrench(name, drive, from, to, step, accuracyPercent, length, calibrated)));
  }

  /** The unit of its scale. */
  public Unit unit() {
    return from.unit();
  }

  /** Whether {@code torque} lies on its scale, both ends included. */
  public boolean holds(Quantity torque) {
    return !torque.isBelow(from) && !torque.isAbove(to);
  }

  /**
   * The mark nearest to {@code torque}, the higher of two as near; none when that would lie off the
   * scale or the torque does.
   */
  public Optional<Quantity> nearestMark(Quantity torque) {
    if (!holds(torque)) {
      return Optional.empty();
    }
    BigDecimal above = torque.to(unit()).value().subtract(from.value());
    BigDecimal marks = above.divide(step.value(), 0, RoundingMode.HALF_UP);
    Quantity mark = from.plus(step.times(marks));
    return mark.isAbove(to) ? Optional.empty() : Optional.of(mark);
  }

  /**
   * Why its calibration does not hold on a day: too old, or dated after it; empty when it holds.
   */
  Optional<String> uncalibrated(LocalDate day, int calibrationMonths) {
    if (calibrated.isAfter(day)) {
      return Optional.of("it was calibrated on " + calibrated + ", after that day");
    }
    return due(calibrationMonths).isBefore(day)
        ? Optional.of("its calibration of " + calibrated + " does not hold on that day")
        : Optional.empty();
  }

  /** The last day on which its calibration holds. */
  public LocalDate due(int calibrationMonths) {
    return calibrated.plusMonths(calibrationMonths);
  }

  /** Least and most it may give at a setting, by its accuracy. */
  Band spread(Quantity setting) {
    return Target.around(setting, new Quantity(accuracyPercent, Unit.PERCENT), Band.Origin.SHOP);
  }

  private static Optional<ParseFailure<Wrench>> fault(
      Quantity from, Quantity to, Quantity step, BigDecimal accuracy, Optional<Quantity> length) {
    if (Stream.of(from, to, step).anyMatch(it -> it.unit().dimension() != Dimension.TORQUE)) {
      return misread("from, to and step are not all torques", "torques such as 20 N·m");
    }
    if (from.unit() != to.unit() || from.unit() != step.unit()) {
      return misread("from, to and step have different units", "the one unit of its scale");
    }
    if (!from.isBelow(to)) {
      return misread(
          "the scale from " + from.print() + " to " + to.print() + " is empty",
          "the lower end of the scale under from, and the higher end under to");
    }
    if (from.value().signum() <= 0 || step.value().signum() <= 0 || step.isAbove(to)) {
      return misread("no mark lies at " + step.print() + " from the next", "a step of its scale");
    }
    if (accuracy.signum() <= 0 || accuracy.compareTo(HUNDRED) >= 0) {
      return misread("an accuracy of " + accuracy.toPlainString() + " % is none", "such as 4 %");
    }
    return length
        .filter(it -> it.unit().dimension() != Dimension.LENGTH || it.value().signum() <= 0)
        .flatMap(
            it -> misread("a length of " + it.print() + " is none", "from square to hand: 370 mm"));
  }

  private static Optional<ParseFailure<Wrench>> misread(String what, String expected) {
    return Optional.of(new ParseFailure<>(what, expected));
  }
}
