package baysheet.torque;

import static baysheet.torque.Written.newtonMetres;
import static baysheet.torque.Written.strength;
import static baysheet.torque.Written.target;
import static baysheet.torque.Written.thread;
import static baysheet.torque.Written.tightening;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class BelievabilityTest {
  private static Optional<Doubt> doubt(String torque, String thread, String strength) {
    return Believability.of(target(torque), thread(thread), strength(strength));
  }

  private static Belief explain(String thread, String strength, String... stages) {
    return Believability.explain(
        tightening(stages),
        Optional.ofNullable(thread).map(Written::thread),
        Optional.ofNullable(strength).map(Written::strength));
  }

  // Published torques must not be doubted; those for frictions from 0.16 up are too much for 0.12.
  @ParameterizedTest
  @CsvFileSource(
      resources = {"/published/vdi-2230-fine.csv", "/published/vdi-2230-coarse.csv"},
      useHeadersInDisplayName = true)
  void publishedTorquesAreNotDoubted(
      String thread, double friction, String strength, String load, String torque) {
    if (friction <= 0.14) {
      assertTrue(doubt(torque + " N·m", thread, strength).isEmpty());
    }
  }

  // US Army TM 10-6640-238-13, appendix G: grade 5 and grade 8 screws.
  @ParameterizedTest
  @CsvSource({"31 lbf·ft, 3/8-16, grade 5", "105 lbf·ft, 1/2-13, grade 8"})
  void theArmysTorquesAreNotDoubted(String torque, String thread, String strength) {
    assertTrue(doubt(torque, thread, strength).isEmpty());
  }

  // Usual torques at friction 0.12 read in the wrong unit (VDI 2230 tables for the right ones).
  @ParameterizedTest
  @CsvSource({
    "50 lbf·ft, M10, 8.8",
    "124 lbf·ft, M12, 10.9",
    "25 lbf·ft, M8, 8.8",
    "36 lbf·in, M8, 10.9",
    "84 lbf·in, M12, 8.8",
    "110 N·m, M8, 10.9",
    "9 N·m, M12x1.5, 10",
    "11 kgf·m, M10x1.25, 8.8"
  })
  void aWrongUnitOrThreadIsDoubted(String torque, String thread, String strength) {
    assertTrue(doubt(torque, thread, strength).isPresent());
  }

  // 110 and 15 per cent of proof, from Preload and the proof load themselves.
  @Test
  void theLimitsAreThoseStated() {
    Thread thread = thread("M12x1.5");
    double proof = strength("10.9").proofLoadN(thread).orElseThrow();
    double full = Preload.torque(proof, thread, Preload.USUAL_FRICTION);
    assertTrue(of(1.099 * full).isEmpty());
    assertTrue(of(1.101 * full).isPresent());
    assertTrue(of(0.151 * full).isEmpty());
    assertEquals(14.9, of(0.149 * full).orElseThrow().percentOfProof(), 1e-6);
  }

  private static Optional<Doubt> of(double torque) {
    return Believability.of(
        new Stage.Torque(Target.plain(newtonMetres(torque))), thread("M12x1.5"), strength("10.9"));
  }

  // By hand: lever 1.5/2π + 9.026·0.12/(2 cos 30°) + 0.06·12.8 = 1.6320 mm, so 149.14 N·m clamp
  // with 91.4 kN; proof 57.99 mm² · 580 MPa = 33.6 kN; 272 %, and 200 % for 110 N·m.
  @Test
  void theSentenceHasBothFiguresAndTheOtherUnit() {
    assertEquals(
        "110_lbf·ft on M10 class 8.8 clamps with about 91.4_kN at friction 0.12, 272_% of its proof"
            + " load of 33.6_kN: it does not fit this thread and class, check value and unit"
            + " (110_N·m would give 200_%)",
        doubt("110 lbf·ft", "M10", "8.8").orElseThrow().sentence().replace('\u00A0', '_'));
  }

  @ParameterizedTest
  @CsvSource({
    "200 N·m, (200_lbf·ft would give",
    "36 lbf·in, (36_lbf·ft would give",
    "30 kgf·m, (30_N·m would give"
  })
  void theOtherUnitIsTheOneItIsConfusedWith(String torque, String words) {
    String sentence = doubt(torque, "M12", "8.8").orElseThrow().sentence();
    assertTrue(sentence.replace('\u00A0', '_').contains(words), sentence);
  }

  @Test
  void aComparedValueIsExplainedEvenWithoutADoubt() {
    Belief belief = explain("M12x1.5", "10.9", "110 N·m");
    assertTrue(belief.doubt().isEmpty());
    assertTrue(belief.sentence().contains("of its proof load of 73.1\u00A0kN"), belief.sentence());
    assertTrue(belief instanceof Belief.Compared);
  }

  @Test
  void aRangeIsComparedByItsMiddle() {
    assertEquals(
        doubt("200 N·m", "M10", "8.8").orElseThrow().percentOfProof(),
        doubt("190..210 N·m", "M10", "8.8").orElseThrow().percentOfProof());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M10|8.8|snug|the book gives no torque",
        "M10|8.8|unknown|the book gives no torque",
        "M10|8.8|300 N·m;+60°|in stages or by angle",
        "M10|8.8|300 N·m;400 N·m|in stages or by angle",
        "|8.8|300 N·m|gives no thread or no class",
        "M10||300 N·m|gives no thread or no class",
        "M18|9.8|3000 N·m|class 9.8 is not made as M18"
      })
  void whatIsLeftOutSaysWhy(String thread, String strength, String stages, String words) {
    Belief belief = explain(thread, strength, stages.split(";"));
    assertTrue(belief instanceof Belief.LeftOut);
    assertTrue(belief.sentence().startsWith("not compared: "), belief.sentence());
    assertTrue(belief.sentence().contains(words), belief.sentence());
    assertTrue(belief.doubt().isEmpty());
  }

  @Test
  void aWholeTighteningIsDoubtedAlike() {
    assertEquals(
        doubt("300 N·m", "M10", "8.8"),
        Believability.of(
            tightening("300 N·m"), Optional.of(thread("M10")), Optional.of(strength("8.8"))));
  }
}
