package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.thread;
import static baysheet.torque.Written.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FrictionTest {
  private static final Optional<StrengthClass> STAINLESS = Optional.of(Written.strength("A2-70"));

  private static Friction.Change change(Treatment book, Treatment used) {
    return Friction.change(book, used, Optional.of(thread("M12")), Optional.empty()).orElseThrow();
  }

  private static String warning(Treatment book, Treatment used) {
    return Friction.warning(book, used, Optional.empty(), Optional.empty())
        .orElseThrow()
        .replace('\u00A0', ' ');
  }

  // VDI 2230, table A5, as three makers' documents give it.
  @ParameterizedTest
  @CsvSource({
    "ANTI_SEIZE, 0.04, 0.10",
    "OILED, 0.08, 0.16",
    "GREASE, 0.08, 0.16",
    "DRY, 0.14, 0.24",
    "LOCKING_COMPOUND, 0.14, 0.24",
    "AS_DELIVERED, 0.08, 0.24",
    "SEALANT, 0.08, 0.24",
    "NOT_STATED, 0.08, 0.24"
  })
  void theSpansAreThoseOfTheTable(Treatment treatment, double low, double high) {
    assertEquals(new Friction.Span(low, high), Friction.span(treatment, Optional.empty()));
    assertEquals(
        new Friction.Span(low, high),
        Friction.span(treatment, Optional.of(Written.strength("grade 5"))));
  }

  // The same table's rows for austenitic steel; class E has no upper end: 0.5 is no published one.
  @ParameterizedTest
  @CsvSource({
    "ANTI_SEIZE, 0.08, 0.24",
    "OILED, 0.20, 0.35",
    "GREASE, 0.20, 0.35",
    "DRY, 0.30, 0.50",
    "LOCKING_COMPOUND, 0.20, 0.50",
    "NOT_STATED, 0.20, 0.50"
  })
  void stainlessSteelHasRowsOfItsOwn(Treatment treatment, double low, double high) {
    assertEquals(new Friction.Span(low, high), Friction.span(treatment, STAINLESS));
    assertEquals(
        new Friction.Span(low, high),
        Friction.span(treatment, Optional.of(Written.strength("A4-80"))));
  }

  // VDI 2230-1:2003, table A1 (from memory), M12, 8.8: torque over load in mm at 0.08 63/45.2, at
  // 0.10 73/44.1, at 0.14 93/41.9, at 0.16 102/40.7. At 0.24, where the table ends, by its own
  // slope: from 0.14 to 0.20 (117/38.3) and on.
  private static double lever(double friction) {
    double slope = (117 / 38.3 - 93 / 41.9) / 0.06;
    return 93 / 41.9 + slope * (friction - 0.14);
  }

  @ParameterizedTest
  @CsvSource({
    "DRY, OILED, 0.14, 0.16, 0.24, 0.08",
    "OILED, DRY, 0.08, 0.24, 0.16, 0.14",
    "DRY, ANTI_SEIZE, 0.14, 0.10, 0.24, 0.04",
    "OILED, ANTI_SEIZE, 0.08, 0.10, 0.16, 0.04",
    "AS_DELIVERED, OILED, 0.08, 0.16, 0.24, 0.08"
  })
  void aChangeReachesFromEndToEndOfBothClasses(
      Treatment book, Treatment used, double from, double to, double top, double bottom) {
    Friction.Change change = change(book, used);
    assertEquals(lever(from) / lever(to), 1 + change.fromPercent() / 100, 0.03);
    assertEquals(lever(top) / lever(bottom), 1 + change.toPercent() / 100, 0.1);
  }

  @Test
  void thereAndBackUndoEachOther() {
    Friction.Change there = change(Treatment.DRY, Treatment.OILED);
    Friction.Change back = change(Treatment.OILED, Treatment.DRY);
    assertEquals(1, (1 + there.toPercent() / 100) * (1 + back.fromPercent() / 100), 1e-9);
    assertEquals(1, (1 + there.fromPercent() / 100) * (1 + back.toPercent() / 100), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"DRY, LOCKING_COMPOUND", "OILED, GREASE", "GREASE, OILED"})
  void withinOneClassTheLoadStaysAboutTheSame(Treatment book, Treatment used) {
    assertEquals(
        "with the same torque the clamp load stays about the same", change(book, used).effect());
  }

  @ParameterizedTest
  @CsvSource({"DRY, SEALANT", "SEALANT, DRY", "NOT_STATED, OILED"})
  void whereTheTableHasNoClassThereIsNoFigure(Treatment book, Treatment used) {
    assertTrue(Friction.change(book, used, Optional.empty(), Optional.empty()).isEmpty());
    assertTrue(warning(book, used).endsWith("how much the clamp load changes is not known"));
  }

  // Ends by the formula on M12x1.5, lever 0.2387 + 13.8907·μ: 3.5725/1.3500 = 2.646,
  // 2.1834/2.4612 = 0.887.
  @Test
  void theWarningSaysBothTreatmentsAndBothEnds() {
    assertEquals(
        "this torque is for a dry thread; here it is oiled: with the same torque the clamp load"
            + " could be 160 % more or 10 % less",
        warning(Treatment.DRY, Treatment.OILED));
  }

  // A thread of its own: M8, lever 0.1989 + 9.2998·μ: 2.4309/0.9429 = 2.578, 1.5009/1.6869 = 0.890.
  @Test
  void theThreadsOwnPitchCounts() {
    Friction.Change change =
        Friction.change(Treatment.DRY, Treatment.OILED, Optional.of(thread("M8")), Optional.empty())
            .orElseThrow();
    assertEquals(157.8, change.toPercent(), 0.2);
    assertEquals(-11.0, change.fromPercent(), 0.2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-62|13|could be 10_% more or 60_% less",
        "34|146|could be 30_% to 150_% more",
        "-4|146|could be up to 150_% more",
        "-41|3|could be up to 40_% less",
        "-60|-31|could be 30_% to 60_% less",
        "-31|-29|could be 30_% less",
        "-3|4|stays about the same"
      })
  void bothEndsAreReported(double from, double to, String words) {
    assertEquals(
        "with the same torque the clamp load " + words,
        new Friction.Change(from, to).effect().replace('\u00A0', '_'));
  }

  @Test
  void aTorqueForNoStatedThreadSaysSo() {
    assertTrue(
        warning(Treatment.NOT_STATED, Treatment.OILED)
            .startsWith(
                "the book does not say what this torque's thread should have on it; here it is"));
  }

  @ParameterizedTest
  @EnumSource(Treatment.class)
  void theBooksOwnTreatmentOrNoneIsNoWarning(Treatment treatment) {
    assertTrue(
        Friction.warning(treatment, Treatment.NOT_STATED, Optional.empty(), Optional.empty())
            .isEmpty());
    assertTrue(
        Friction.warning(treatment, treatment, Optional.empty(), Optional.empty()).isEmpty());
  }

  @ParameterizedTest
  @EnumSource(Treatment.class)
  void aTreatmentIsReadByItsWord(Treatment treatment) {
    assertEquals(
        treatment,
        value(Treatment.parse(" " + treatment.word().toUpperCase(java.util.Locale.ROOT) + " ")));
  }

  /** As the trade says: threadlock, as supplied; common practice, no source. */
  @Test
  void treatmentsArePrintedAsTheyAreSpelled() {
    assertEquals("threadlock", Treatment.LOCKING_COMPOUND.print());
    assertEquals("as supplied", Treatment.AS_DELIVERED.print());
    assertEquals("anti-seize", Treatment.ANTI_SEIZE.print());
  }

  @Test
  void onlyWhatGoesOnAThreadIsLaidOutForIt() {
    assertEquals(Optional.of("oil for threads"), Treatment.OILED.product());
    assertEquals(Optional.of("threadlock"), Treatment.LOCKING_COMPOUND.product());
    assertEquals(Optional.empty(), Treatment.DRY.product());
    assertEquals(Optional.empty(), Treatment.AS_DELIVERED.product());
    assertEquals(Optional.empty(), Treatment.NOT_STATED.product());
  }

  @Test
  void anotherWordIsNoTreatment() {
    ParseFailure<Treatment> misread = fault(Treatment.parse("greasy"));
    assertEquals("\"greasy\" is not a treatment of a thread", misread.what());
    assertEquals(
        "dry, oiled, locking-compound, anti-seize, grease, sealant, as-delivered, not-stated",
        misread.expected());
  }

  @Test
  void aChangeThatRunsBackwardsIsAFaultOfOurs() {
    assertThrows(IllegalArgumentException.class, () -> new Friction.Change(2, 1));
    assertThrows(IllegalArgumentException.class, () -> new Friction.Span(0.2, 0.1));
  }
}
