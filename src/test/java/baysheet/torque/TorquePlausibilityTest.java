package baysheet.torque;

import static baysheet.torque.Written.newtonMetres;
import static baysheet.torque.Written.strength;
import static baysheet.torque.Written.thread;
import static baysheet.torque.Written.tightening;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TorquePlausibilityTest {
  private static Plausibility of(String torque, String thread, String strength) {
    return of(torque, thread, strength, Treatment.NOT_STATED);
  }

  private static Plausibility of(
      String torque, String thread, String strength, Treatment treatment) {
    return TorquePlausibility.of(
        tightening(torque),
        Optional.of(thread(thread)),
        Optional.of(strength(strength)),
        treatment);
  }

  private static void assertNotDoubted(String torque, String thread, String strength) {
    Plausibility plausibility = of(torque, thread, strength);
    assertFalse(plausibility.isDoubtful(), plausibility.sentence());
    assertTrue(plausibility instanceof Plausibility.Compared, plausibility.sentence());
  }

  // Every published torque, at every friction of the tables.
  @ParameterizedTest
  @CsvFileSource(
      resources = {
        "/published/vdi-2230-fine.csv",
        "/published/vdi-2230-coarse.csv",
        "/published/vdi-2230-stainless.csv"
      },
      useHeadersInDisplayName = true)
  void torquesOfVdi2230AreNotDoubted(
      String thread, double friction, String strength, String load, String torque) {
    assertNotDoubted(torque + " N·m", thread, strength);
  }

  // Whatever its class, no published torque is too much for a fastener of which no book gives one.
  @ParameterizedTest
  @CsvFileSource(
      resources = {"/published/vdi-2230-fine.csv", "/published/vdi-2230-coarse.csv"},
      useHeadersInDisplayName = true)
  void torquesOfVdi2230AreNotDoubtedWithoutTheirClass(
      String thread, double friction, String strength, String load, String torque) {
    assertFalse(withoutClass(torque + " N·m", thread).isDoubtful());
  }

  // ISO 898-1, table 5: an M6 of class 12.9 has a proof load of 19.5 kN. By hand, with VDI 2230's
  // formula and a friction of 0.24, about 36 N·m reach it.
  @ParameterizedTest
  @CsvSource({"90 N·m, M6", "90 lbf·ft, M8", "9 kgf·m, M6"})
  void whatNoClassWouldBearIsDoubted(String torque, String thread) {
    Plausibility plausibility = withoutClass(torque, thread);
    assertTrue(plausibility.isDoubtful());
    assertTrue(plausibility.sentence().contains("the book gives none"), plausibility.sentence());
  }

  private static Plausibility withoutClass(String torque, String thread) {
    return TorquePlausibility.of(
        tightening(torque), Optional.of(thread(thread)), Optional.empty(), Treatment.NOT_STATED);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/stainless-torques.csv", useHeadersInDisplayName = true)
  void torquesOfADriveMakerAreNotDoubted(String thread, String strength, String torque) {
    assertNotDoubted(torque + " N·m", thread, strength);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/torques-friction-012.csv", useHeadersInDisplayName = true)
  void torquesOfAFastenerDocumentAreNotDoubted(String thread, String yield, String torque) {
    assertNotDoubted(torque + " N·m", thread, "8.8");
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/torque-charts.csv", useHeadersInDisplayName = true)
  void torquesOfChartsAreNotDoubted(String chart, String thread, String strength, String torque) {
    assertNotDoubted(torque + " N·m", thread, strength);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/lift-truck-torques.csv", useHeadersInDisplayName = true)
  void torquesOfALiftTruckMakerAreNotDoubted(String thread, String load, String torque) {
    assertNotDoubted(torque + " N·m", thread, "5.8");
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/inch-torques.csv", useHeadersInDisplayName = true)
  void torquesOfADistributorsGuideAreNotDoubted(
      String thread, String strength, String k, String torque, String unit) {
    assertNotDoubted(torque + " " + unit, thread, strength);
  }

  // US Army TM 10-6640-238-13, appendix G: grade 5 and grade 8 screws.
  @ParameterizedTest
  @CsvSource({"31 lbf·ft, 3/8-16, grade 5", "105 lbf·ft, 1/2-13, grade 8"})
  void theArmysTorquesAreNotDoubted(String torque, String thread, String strength) {
    assertNotDoubted(torque, thread, strength);
  }

  // A shop's own treatment narrows the span; the tables' own frictions lie inside it.
  @ParameterizedTest
  @CsvFileSource(
      resources = {"/published/vdi-2230-fine.csv", "/published/vdi-2230-coarse.csv"},
      useHeadersInDisplayName = true)
  void torquesOfVdi2230AreNotDoubtedForTheirTreatment(
      String thread, double friction, String strength, String load, String torque) {
    Treatment treatment = friction > 0.16 ? Treatment.DRY : Treatment.OILED;
    assertFalse(of(torque + " N·m", thread, strength, treatment).isDoubtful());
  }

  // Torques of VDI 2230 at friction 0.12, read in a wrong unit so far off that no friction explains
  // it; a foot in place of a metre may be a third more friction, and is only called high.
  @ParameterizedTest
  @CsvSource({
    "36 lbf·in, M8, 10.9",
    "84 lbf·in, M12, 8.8",
    "110 N·m, M8, 10.9",
    "9 N·m, M12x1.5, 10",
    "84 kgf·m, M12, 8.8",
    "150 lbf·ft, M10, 8.8",
    "25 kgf·m, M8, 8.8"
  })
  void aWrongUnitOrThreadIsDoubted(String torque, String thread, String strength) {
    assertTrue(of(torque, thread, strength).isDoubtful());
    assertFalse(of(torque, thread, strength).isHigh());
  }

  // VDI 2230 at 0.20: explained by a dry surface, high for an ordinary one.
  @ParameterizedTest
  @CsvSource({"68 N·m, M10, 8.8", "124 lbf·ft, M12, 10.9", "50 lbf·ft, M10, 8.8"})
  void whatOnlyHighFrictionExplainsIsHigh(String torque, String thread, String strength) {
    Plausibility plausibility = of(torque, thread, strength);
    assertTrue(plausibility.isHigh());
    assertFalse(plausibility.isDoubtful());
    assertTrue(
        plausibility
            .sentence()
            .endsWith(": high for an ordinary surface, compare with the source once"),
        plausibility.sentence());
  }

  @ParameterizedTest
  @CsvSource({"49 N·m, M10, 8.8", "105 N·m, M12x1.5, 10", "15 N·m, M10, 8.8"})
  void anOrdinaryFigureIsNeither(String torque, String thread, String strength) {
    Plausibility plausibility = of(torque, thread, strength);
    assertFalse(plausibility.isHigh() || plausibility.isDoubtful(), plausibility.sentence());
  }

  // The limits: 110 % of the proof load at the highest friction, 15 % at the lowest, and 110 % at
  // 0.12 for what is only high. Lever of M12x1.5: 1.5/2π + μ·(11.0257/(2·cos 30°) + 15.05/2), so
  // 0.23873 + 13.8907·μ mm; proof load 88.13 mm² · 830 MPa = 73.15 kN (ISO 898-1).
  @ParameterizedTest
  @CsvSource({
    "NOT_STATED, 0.24, 0.08",
    "DRY, 0.24, 0.14",
    "OILED, 0.16, 0.08",
    "ANTI_SEIZE, 0.10, 0.04",
    "LOCKING_COMPOUND, 0.24, 0.14",
    "AS_DELIVERED, 0.24, 0.08",
    "SEALANT, 0.24, 0.08"
  })
  void theLimitsAreThoseOfTheTreatment(Treatment treatment, double highest, double lowest) {
    double most = 1.10 * 73.15 * lever(highest);
    double least = 0.15 * 73.15 * lever(lowest);
    assertFalse(doubted(0.998 * most, "M12x1.5", "10.9", treatment));
    assertTrue(doubted(1.002 * most, "M12x1.5", "10.9", treatment));
    assertFalse(doubted(1.002 * least, "M12x1.5", "10.9", treatment));
    assertTrue(doubted(0.998 * least, "M12x1.5", "10.9", treatment));
    double high = 1.10 * 73.15 * lever(0.12);
    if (high < most) {
      assertFalse(at(0.998 * high, "M12x1.5", "10.9", treatment).isHigh());
      assertTrue(at(1.002 * high, "M12x1.5", "10.9", treatment).isHigh());
    }
  }

  private static double lever(double friction) {
    return 0.23873 + 13.8907 * friction;
  }

  private static boolean doubted(
      double torque, String thread, String strength, Treatment treatment) {
    return at(torque, thread, strength, treatment).isDoubtful();
  }

  private static Plausibility at(
      double torque, String thread, String strength, Treatment treatment) {
    return TorquePlausibility.of(
        new Tightening.Stages(
            List.of(new TighteningStage.Torque(Target.plain(newtonMetres(torque))))),
        Optional.of(thread(thread)),
        Optional.of(strength(strength)),
        treatment);
  }

  // Stainless steel, VDI 2230 table A5: oil 0.20 to 0.35, none from 0.30 on. A2-70: 450 MPa on
  // 88.13 mm² is 39.66 kN (ISO 3506-1).
  @ParameterizedTest
  @CsvSource({
    "NOT_STATED, 0.50, 0.20",
    "OILED, 0.35, 0.20",
    "DRY, 0.50, 0.30",
    "ANTI_SEIZE, 0.24, 0.08"
  })
  void stainlessSteelHasItsOwnSpan(Treatment treatment, double highest, double lowest) {
    double most = 1.10 * 39.66 * lever(highest);
    double least = 0.15 * 39.66 * lever(lowest);
    assertFalse(doubted(0.998 * most, "M12x1.5", "A2-70", treatment));
    assertTrue(doubted(1.002 * most, "M12x1.5", "A4-70", treatment));
    assertFalse(doubted(1.002 * least, "M12x1.5", "A4-70", treatment));
    assertTrue(doubted(0.998 * least, "M12x1.5", "A2-70", treatment));
  }

  // By hand: M10: 1.5/2π + μ·(9.0257/(2·cos 30°) + 12.8/2) is 3.0254 mm at 0.24, 1.1676 at 0.08;
  // 150 lbf·ft = 203.37 N·m clamp with 67.2 and 174.2 kN; proof 57.99 mm² · 580 MPa = 33.6 kN.
  @Test
  void theSentenceHasBothFiguresAndTheOtherUnits() {
    assertEquals(
        "150_lbf·ft on M10 class 8.8 would clamp with 67.2 to 174.2_kN at friction 0.24 to 0.08,"
            + " 200_% to 518_% of its proof load of 33.6_kN: it is wrong for this thread and class,"
            + " check value and unit (150_N·m would give 147_% to 382_%, 150_lbf·in would give 17_%"
            + " to 43_%)",
        of("150 lbf·ft", "M10", "8.8").sentence().replace('\u00A0', '_'));
  }

  @ParameterizedTest
  @CsvSource({
    "900 N·m, '900_lbf·ft would give, 900_lbf·in would give'",
    "36 lbf·in, '36_N·m would give, 36_lbf·ft would give'",
    "90 kgf·m, '90_N·m would give, 90_lbf·ft would give, 90_lbf·in would give'"
  })
  void everyOtherUnitInUseIsTried(String torque, String words) {
    String sentence = of(torque, "M12", "8.8").sentence().replace('\u00A0', '_');
    for (String part : words.split(", ")) {
      assertTrue(sentence.contains(part), part + " is not in " + sentence);
    }
    assertFalse(sentence.contains(torque.replace(' ', '_') + " would give"), sentence);
  }

  // M12x1.5 at 0.12: 0.2387 + 13.8907·0.12 = 1.9056 mm: 57.7 kN, 79 % of 73.1 kN.
  @Test
  void aComparedValueIsExplainedWithItsSpan() {
    assertEquals(
        "110_N·m on M12x1.5 class 10.9 clamps with about 57.7_kN at friction 0.12, 79_% of its proof"
            + " load of 73.1_kN (42_% to 111_% at friction 0.24 to 0.08)",
        of("110 N·m", "M12x1.5", "10.9").sentence().replace('\u00A0', '_'));
  }

  @Test
  void aFrictionThatIsKnownIsNoSpan() {
    Plausibility known =
        TorquePlausibility.of(
            tightening("110 N·m"),
            Optional.of(thread("M12x1.5")),
            Optional.of(strength("10.9")),
            0.12);
    assertEquals(
        "110_N·m on M12x1.5 class 10.9 clamps with about 57.7_kN at friction 0.12, 79_% of its proof"
            + " load of 73.1_kN",
        known.sentence().replace('\u00A0', '_'));
  }

  @Test
  void aRangeIsComparedByItsMiddle() {
    assertEquals(
        of("900 N·m", "M10", "8.8").sentence(), of("850..950 N·m", "M10", "8.8").sentence());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M10|8.8|snug|the book gives no torque",
        "M10|8.8|unknown|the book gives no torque",
        "M10|8.8|300 N·m;+60°|in stages or by angle",
        "M10|8.8|300 N·m;400 N·m|in stages or by angle",
        "|8.8|300 N·m|gives no thread",
        "M10||60 N·m|gives no class",
        "M18|9.8|3000 N·m|class 9.8 is not made as M18"
      })
  void whatIsLeftOutSaysWhy(String thread, String strength, String stages, String words) {
    Plausibility plausibility =
        TorquePlausibility.of(
            tightening(stages.split(";")),
            Optional.ofNullable(thread).map(Written::thread),
            Optional.ofNullable(strength).map(Written::strength),
            Treatment.NOT_STATED);
    assertTrue(plausibility instanceof Plausibility.NotCompared);
    assertTrue(plausibility.sentence().startsWith("not compared: "), plausibility.sentence());
    assertTrue(plausibility.sentence().contains(words), plausibility.sentence());
    assertFalse(plausibility.isDoubtful() || plausibility.isHigh());
  }
}
