package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.strength;
import static baysheet.torque.Written.thread;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources of the figures stand at the head of each file in {@code published}. */
class StrengthClassTest {
  // The standard rounds both stress area and load to three figures: 0.4 % and 0.5 % at the worst.
  private static final double LOAD = 0.007;
  private static final double KSI = 6.894757293168361;
  private static final double POUND_FORCE = 4.4482216152605;

  private static double proofLoad(String thread, String strength) {
    return strength(strength).proofLoadN(thread(thread)).orElseThrow();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/iso-898-1-stresses.csv", useHeadersInDisplayName = true)
  void stressesAreThoseOfTheStandard(String name, String thread, double proof) {
    assertEquals(proof, strength(name).proofStressMPa(thread(thread)).orElseThrow());
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = {
        "/published/iso-898-1-proof-loads-coarse.csv",
        "/published/iso-898-1-proof-loads-fine.csv"
      },
      useHeadersInDisplayName = true)
  void proofLoadsAreThoseOfTheStandard(String thread, String name, String newtons) {
    assertEquals(
        Double.parseDouble(newtons), proofLoad(thread, name), LOAD * Double.parseDouble(newtons));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sae-j429.csv", useHeadersInDisplayName = true)
  void gradesAreThoseOfTheStandard(String grade, double proof) {
    ScrewThread half = thread("1/2-13");
    StrengthClass strength = strength("grade " + grade);
    assertEquals(proof * KSI, strength.proofStressMPa(half).orElseThrow(), 1e-9);
  }

  // US Navy ships' technical manual, fasteners: 0.0318 in² × 120 000 psi = 3816 lbf.
  @ParameterizedTest
  @CsvSource({"1/4-20, grade 8, 3816"})
  void aGradesProofLoadIsAsPublished(String thread, String grade, double pounds) {
    assertEquals(pounds, proofLoad(thread, grade) / POUND_FORCE, 0.003 * pounds);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/clamp-loads-inch.csv", useHeadersInDisplayName = true)
  void threeQuartersOfProofAreAsPublishedInPounds(String thread, String grade, double pounds) {
    assertEquals(pounds, 0.75 * proofLoad(thread, grade) / POUND_FORCE, 0.003 * pounds);
  }

  // Worked out with stress areas of three figures: 0.4 %, and 0.1 % for the load.
  @ParameterizedTest
  @CsvFileSource(resources = "/published/clamp-loads-metric.csv", useHeadersInDisplayName = true)
  void threeQuartersOfProofAreAsPublishedInNewtons(String thread, String name, double newtons) {
    assertEquals(newtons, 0.75 * proofLoad(thread, name), 0.005 * newtons);
  }

  // ISO 898-2, table 1: a nut of class n goes with bolts up to class n.y.
  @ParameterizedTest
  @CsvSource({"5, 5.8", "6, 6.8", "8, 8.8", "9, 9.8", "10, 10.9", "12, 12.9"})
  void aNutIsProvedByTheBoltItGoesWith(String nut, String bolt) {
    assertEquals(proofLoad("M12x1.5", bolt), proofLoad("M12x1.5", nut));
    assertEquals(nut, strength(nut).label());
  }

  // SAE J429: grade 2 above 3/4 in and grade 5 above 1 in are weaker (from memory).
  @ParameterizedTest
  @CsvSource({
    "grade 2, 3/4-10, 55",
    "grade 2, 7/8-9, 33",
    "grade 5, 1-8, 85",
    "grade 5, 1-1/8-7, 74"
  })
  void gradesWeakenWithSize(String grade, String thread, double proof) {
    assertEquals(proof * KSI, strength(grade).proofStressMPa(thread(thread)).orElseThrow(), 1e-9);
  }

  // Limits of size: ISO 898-1 (9.8 to M16), ISO 3506-1 (70 and 80 to M24), SAE J429 (5.2 to 1 in).
  @ParameterizedTest
  @CsvSource({"9.8, M18, M16", "A2-70, M27, M24", "grade 5.2, 1-1/8-7, 1-8", "8.8, M42, M39"})
  void aClassEndsWhereItIsNoLongerMade(String name, String beyond, String last) {
    assertTrue(strength(name).proofLoadN(thread(beyond)).isEmpty());
    assertTrue(strength(name).proofLoadN(thread(last)).isPresent());
  }

  @ParameterizedTest
  @CsvSource({
    "8.8, 8.8",
    "' 10.9 ', 10.9",
    "grade 5, grade 5",
    "Grade 8, grade 8",
    "SAE grade 8, grade 8",
    "A2-70, A2-70",
    "A4-80, A4-80"
  })
  void aClassIsPrintedInOneForm(String text, String label) {
    assertEquals(label, strength(text).label());
  }

  @ParameterizedTest
  @ValueSource(strings = {"8,8", "8.9", "109", "11", "grade 3", "A6-70", "A2-60", "A2", ""})
  void anythingElseIsRefused(String text) {
    assertTrue(fault(StrengthClass.parse(text)).what().contains("is not a known strength class"));
  }
}
