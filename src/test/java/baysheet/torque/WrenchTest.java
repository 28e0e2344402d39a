package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.length;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrenchTest {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  static Wrench wrench(String name, String from, String to, String step) {
    return wrench(name, from, to, step, "4", DAY.minusMonths(3));
  }

  static Wrench wrench(
      String name, String from, String to, String step, String accuracy, LocalDate calibrated) {
    return new Wrench(
        name,
        Drive.HALF,
        torque(from),
        torque(to),
        torque(step),
        new BigDecimal(accuracy),
        Optional.of(length("370 mm")),
        calibrated);
  }

  @ParameterizedTest
  @CsvSource({
    "110 N·m, 110",
    "110.2 N·m, 110",
    "110.25 N·m, 110.5",
    "110.74 N·m, 110.5",
    "20 N·m, 20",
    "200 N·m, 200"
  })
  void theNearestMarkIsCountedFromTheLowest(String wanted, String mark) {
    Wrench wrench = wrench("W1", "20 N·m", "200 N·m", "0.5 N·m");
    assertEquals(
        Optional.of(Quantity.of(mark, Unit.NEWTON_METRE)), wrench.nearestMark(torque(wanted)));
  }

  @Test
  void marksStandAtStepsFromTheLowestNotFromZero() {
    Wrench wrench = wrench("W1", "7 N·m", "60 N·m", "5 N·m");
    assertEquals(Optional.of(torque("32 N·m")), wrench.nearestMark(torque("30 N·m")));
  }

  @Test
  void theLastMarkMayLieBelowTheEndOfTheScale() {
    Wrench wrench = wrench("W1", "10 N·m", "59 N·m", "10 N·m");
    assertEquals(Optional.of(torque("50 N·m")), wrench.nearestMark(torque("54 N·m")));
    assertEquals(Optional.empty(), wrench.nearestMark(torque("56 N·m")));
  }

  @ParameterizedTest
  @CsvSource({"19.99 N·m", "200.01 N·m", "14 lbf·ft", "148 lbf·ft"})
  void nothingOffTheScaleHasAMark(String wanted) {
    Wrench wrench = wrench("W1", "20 N·m", "200 N·m", "0.5 N·m");
    assertFalse(wrench.holds(torque(wanted)));
    assertEquals(Optional.empty(), wrench.nearestMark(torque(wanted)));
  }

  // ISO 6789-1: twelve months, unless the shop has its own interval.
  @ParameterizedTest
  @CsvSource({
    "2025-03-02, 12, false",
    "2025-03-01, 12, true",
    "2025-09-02, 6, false",
    "2025-09-01, 6, true",
    "2026-03-02, 12, false",
    "2026-03-03, 12, true"
  })
  void aCalibrationHoldsToTheDay(LocalDate calibrated, int months, boolean lapsed) {
    Wrench wrench = wrench("W1", "20 N·m", "200 N·m", "1 N·m", "4", calibrated);
    assertEquals(lapsed, wrench.uncalibrated(DAY, months).isPresent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20 N·m|200 N·m|1 lbf·ft|4|370 mm|different units",
        "20 lbf·ft|200 N·m|1 N·m|4|370 mm|different units",
        "200 N·m|20 N·m|1 N·m|4|370 mm|is empty",
        "20 N·m|20 N·m|1 N·m|4|370 mm|is empty",
        "20 N·m|200 N·m|201 N·m|4|370 mm|no mark lies",
        "20 N·m|200 N·m|1 N·m|0|370 mm|an accuracy of 0 %",
        "20 N·m|200 N·m|1 N·m|100|370 mm|an accuracy of 100 %",
        "20 N·m|200 N·m|1 N·m|4|0 mm|a length of 0"
      })
  void figuresThatDoNotGoTogetherAreSaid(
      String from, String to, String step, BigDecimal accuracy, String length, String words) {
    ParseFailure<Wrench> misread =
        fault(
            Wrench.read(
                "W1",
                Drive.HALF,
                torque(from),
                torque(to),
                torque(step),
                accuracy,
                Optional.of(length(length)),
                DAY));
    assertTrue(misread.what().contains(words), misread.what());
  }

  @Test
  void figuresOfAnotherKindAreSaid() {
    Quantity length = length("370 mm");
    Quantity torque = torque("20 N·m");
    BigDecimal four = new BigDecimal("4");
    assertEquals(
        "from, to and step are not all torques",
        fault(Wrench.read("W", Drive.HALF, torque, length, torque, four, Optional.of(length), DAY))
            .what());
    assertEquals(
        "a length of 20\u00A0N·m is none",
        fault(
                Wrench.read(
                    "W",
                    Drive.HALF,
                    torque,
                    torque("90 N·m"),
                    torque,
                    four,
                    Optional.of(torque),
                    DAY))
            .what());
  }

  @Test
  void aScaleStartsAboveZeroAndHasSteps() {
    Quantity none = Quantity.of("0", Unit.NEWTON_METRE);
    Quantity some = torque("20 N·m");
    Quantity length = length("370 mm");
    BigDecimal four = new BigDecimal("4");
    fault(Wrench.read("W", Drive.HALF, none, some, some, four, Optional.of(length), DAY));
    fault(
        Wrench.read("W", Drive.HALF, some, torque("90 N·m"), none, four, Optional.of(length), DAY));
  }

  @Test
  void whatGoesTogetherIsRead() {
    Wrench wrench = wrench("W1", "20 N·m", "200 N·m", "1 N·m");
    assertEquals(
        new Parsed<>(wrench),
        Wrench.read(
            "W1",
            Drive.HALF,
            wrench.from(),
            wrench.to(),
            wrench.step(),
            wrench.accuracyPercent(),
            wrench.length(),
            wrench.calibrated()));
  }

  @Test
  void anImpossibleWrenchIsAFaultOfOurs() {
    Throwable fault =
        assertThrows(
            IllegalArgumentException.class, () -> wrench("W9", "200 N·m", "20 N·m", "1 N·m"));
    assertTrue(fault.getMessage().startsWith("W9: the scale from 200"), fault.getMessage());
  }
}
