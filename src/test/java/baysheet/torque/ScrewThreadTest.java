package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.thread;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources of the figures stand at the head of each file in {@code published}. */
class ScrewThreadTest {
  // Tables print diameters to 0.001 mm.
  private static final double DIAMETER = 0.0006;
  private static final double SQUARE_INCH = 25.4 * 25.4;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/iso-68-1-profile.csv", useHeadersInDisplayName = true)
  void flanksAreAsDeepAsTheBasicProfile(double pitch, double height, double threeEighths) {
    ScrewThread thread = new ScrewThread("any", 30, pitch, ScrewThread.Series.METRIC);
    assertEquals(30 - 2 * threeEighths, thread.pitchDiameterMm(), 2e-6 * pitch + 1e-6);
    // d3 lies H/6 above the sharp root of the thread: d − 17/12 H.
    assertEquals(30 - 17.0 / 12 * height, thread.minorDiameterMm(), 2e-6 * pitch + 1e-6);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/iso-262-pitches.csv", useHeadersInDisplayName = true)
  void theSelectedPitchesAreKnown(String size, double coarse, String fine) {
    assertEquals(coarse, thread(size).pitchMm());
    for (String pitch : fine == null ? new String[0] : fine.split(" ")) {
      assertEquals(Double.parseDouble(pitch), thread(size + "x" + pitch).pitchMm());
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/metric-fine-threads.csv", useHeadersInDisplayName = true)
  void fineThreadsAreAsPublished(String name, double d2, double d3, String area3, String area2) {
    assertEquals(d2, thread(name).pitchDiameterMm(), DIAMETER);
    assertEquals(d3, thread(name).minorDiameterMm(), DIAMETER);
    assertEquals(
        Double.parseDouble(area3), thread(name).stressAreaMm2(), Written.slack(area3, 0.003, 0.5));
    if (area2 != null) {
      assertEquals(Double.parseDouble(area2), thread(name).stressAreaMm2(), 0.01);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/metric-coarse-threads.csv", useHeadersInDisplayName = true)
  void coarseThreadsAreAsPublished(
      String name, double pitch, double d2, double d3, double area, String nominal) {
    assertEquals(pitch, thread(name).pitchMm());
    assertEquals(d2, thread(name).pitchDiameterMm(), DIAMETER);
    assertEquals(d3, thread(name).minorDiameterMm(), DIAMETER);
    assertEquals(area, thread(name).stressAreaMm2(), 0.01);
    assertEquals(
        Double.parseDouble(nominal),
        thread(name).stressAreaMm2(),
        Written.slack(nominal, 0.003, 0.5));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/bickford-stress-areas.csv", useHeadersInDisplayName = true)
  void stressAreasAgreeWithASecondPrinting(String name, double area) {
    assertEquals(area, thread(name).stressAreaMm2(), 0.01);
  }

  // Table printed to three figures from areas rounded twice: 0.6 %.
  @ParameterizedTest
  @CsvFileSource(resources = "/published/unified-threads.csv", useHeadersInDisplayName = true)
  void unifiedThreadsAreAsPublished(String name, String stressArea, String rootArea) {
    ScrewThread thread = thread(name);
    double root = Math.PI / 4 * Math.pow(thread.minorDiameterMm(), 2);
    assertEquals(
        Double.parseDouble(stressArea),
        thread.stressAreaMm2() / SQUARE_INCH,
        Written.slack(stressArea, 0.006, 0.5));
    assertEquals(
        Double.parseDouble(rootArea), root / SQUARE_INCH, Written.slack(rootArea, 0.006, 0.5));
  }

  @ParameterizedTest
  @CsvSource({
    "M12x1.5, M12x1.5, 12, 1.5",
    "M12×1.5, M12x1.5, 12, 1.5",
    "m12 X 1.5, M12x1.5, 12, 1.5",
    "M10, M10, 10, 1.5",
    "M3.5, M3.5, 3.5, 0.6",
    "M11, M11, 11, 1.5",
    "M12x1.5 LH, M12x1.5 LH, 12, 1.5",
    "M26x1.5, M26x1.5, 26, 1.5",
    "1/2-20 UNF, 1/2-20 UNF, 12.7, 1.27",
    "1/2-20, 1/2-20, 12.7, 1.27",
    "1/2 - 20unf, 1/2-20 UNF, 12.7, 1.27",
    "3/8-16 UNC LH, 3/8-16 UNC LH, 9.525, 1.5875",
    "1-8, 1-8, 25.4, 3.175",
    "1-1/8-12 UNF, 1-1/8-12 UNF, 28.575, 2.116666667",
    "#10-24, #10-24, 4.826, 1.058333333",
    "10-24, #10-24, 4.826, 1.058333333",
    "1-14 UNS, 1-14 UNS, 25.4, 1.814285714"
  })
  void designationsAreReadAndPrintedInOneForm(
      String text, String printed, double diameter, double pitch) {
    ScrewThread thread = thread(text);
    assertEquals(printed, thread.designation());
    assertEquals(diameter, thread.diameterMm(), 1e-9);
    assertEquals(pitch, thread.pitchMm(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M12x1,5|has a comma in its figure",
        "M12×1,5|has a comma in its figure",
        "12x1.5|is not a thread designation",
        "M12x|is not a thread designation",
        "G1/4|is not a thread designation",
        "M13|has no coarse pitch",
        "M12x15|has a pitch that ISO 261 does not know",
        "M12x2|has a pitch that ISO 261 does not know",
        "M12x1.6|has a pitch that ISO 261 does not know",
        "M26x3|has a pitch that ISO 261 does not know",
        "1/2-21|has threads per inch",
        "1/2-20 UNC|has threads per inch",
        "1/2-13 UNF|has threads per inch",
        "1/2-12 UNS|has threads per inch",
        "1/2-13 UNS|has threads per inch",
        "5/7-20|has no size",
        "2-4|has no size"
      })
  void anythingElseIsRefusedInWords(String text, String words) {
    ParseFailure<ScrewThread> misread = fault(ScrewThread.parse(text));
    assertTrue(misread.what().startsWith('"' + text + "\" " + words), misread.what());
    assertEquals("a thread such as M12x1.5, M10 or 1/2-20 UNF", misread.expected());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, 4, 10, Double.NaN})
  void aThreadThatCannotBeIsAFaultOfOurs(double pitch) {
    assertThrows(
        IllegalArgumentException.class,
        () -> new ScrewThread("M12", 12, pitch, ScrewThread.Series.METRIC));
  }
}
