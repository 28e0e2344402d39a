package baysheet.torque;

import static baysheet.torque.Written.fault;
import static baysheet.torque.Written.head;
import static baysheet.torque.Written.thread;
import static baysheet.torque.Written.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class SocketTest {
  static Socket socket(Drive drive, Head.Form form, int points, boolean impact, String... sizes) {
    return new Socket(drive, form, List.of(sizes), points, impact, false);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "hex 19 mm|HEX|19 mm",
        "Hex  19mm|HEX|19 mm",
        "hex 19.0 mm|HEX|19 mm",
        "hex 3/4 in|HEX|3/4 in",
        "hex 0.75 in|HEX|3/4 in",
        "hex 6/8 in|HEX|3/4 in",
        "hex 0.70 in|HEX|0.7 in",
        "hex 1 1/8 in|HEX|1-1/8 in",
        "hex 1 in|HEX|1 in",
        "12-point 36 mm|TWELVE_POINT|36 mm",
        "six-lobe T60|SIX_LOBE|T60",
        "six-lobe t60|SIX_LOBE|T60",
        "external six-lobe E14|EXTERNAL_SIX_LOBE|E14",
        "hexagon key 8 mm|HEX_KEY|8 mm",
        "12-point key M10|TWELVE_POINT_KEY|M10",
        "square 8 mm|SQUARE|8 mm",
        "slot 6 mm|SLOT|6 mm",
        "cross PH2|CROSS|PH2"
      })
  void headsAreReadInOneSpelling(String text, Head.Form form, String size) {
    Head head = head(text);
    assertEquals(new Head(form, size), head);
    assertEquals(size, head.size());
    assertEquals((form.word() + " " + size).replace(' ', '\u00A0'), head.print());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "19 mm|does not begin with a form of head",
        "torq T60|does not begin with a form of head",
        "hexagon 19 mm|does not begin with a form of head",
        "hex|does not begin with a form of head",
        "hex 19|has no unit",
        "hex T60|does not begin with a figure",
        "hex 19 cm|is not a size of this form of head",
        "hex 1 mm|is not a size of this form of head",
        "hex 101 mm|is not a size of this form of head",
        "hex 19,5 mm|has a comma",
        "hex 19 N·m|is a torque",
        "six-lobe 60|is not a size of this form of head",
        "six-lobe E14|is not a size of this form of head",
        "external six-lobe T14|is not a size of this form of head",
        "12-point key 10 mm|is not a size of this form of head",
        "cross T2|is not a size of this form of head"
      })
  void anythingElseIsNoHead(String text, String words) {
    ParseFailure<Head> misread = fault(Head.parse(text));
    assertTrue(misread.what().contains(words), misread.what());
  }

  @Test
  void aHeadOfAnImpossibleSizeIsAFaultOfOurs() {
    assertThrows(IllegalArgumentException.class, () -> new Head(Head.Form.HEX, "T60"));
    assertThrows(
        IllegalArgumentException.class,
        () -> socket(Drive.HALF, Head.Form.SIX_LOBE, 6, false, "19 mm"));
  }

  @ParameterizedTest
  @CsvSource({
    "HEX, 10..13 mm, 10 mm;11 mm;12 mm;13 mm",
    "HEX, 36 mm, 36 mm",
    "HEX, 1/2..11/16 in, 1/2 in;9/16 in;5/8 in;11/16 in",
    "SIX_LOBE, T30..T32, T30;T31;T32",
    "SIX_LOBE, T30, T30",
    "SIX_LOBE, T30..T30, T30",
    "CROSS, PH1..PH2, PH1;PH2"
  })
  void aRangeHoldsEverySizeBetween(Head.Form form, String text, String sizes) {
    assertEquals(new Parsed<>(Arrays.asList(sizes.split(";"))), Socket.sizes(form, text));
  }

  @ParameterizedTest
  @CsvSource({
    "HEX, 24..10 mm",
    "HEX, 1..10 mm",
    "HEX, 10..101 mm",
    "HEX, 1/2 in..19 mm",
    "SIX_LOBE, T40..T30",
    "SIX_LOBE, T40..E50",
    "CROSS, PH1..PZ2"
  })
  void aRangeThatRunsNowhereIsRefused(Head.Form form, String text) {
    fault(Socket.sizes(form, text));
  }

  @ParameterizedTest
  @CsvSource({
    "HEX, 6, hex 19 mm, true",
    "HEX, 12, hex 19 mm, true",
    "HEX, 6, 12-point 19 mm, false",
    "HEX, 12, 12-point 19 mm, true",
    "TWELVE_POINT, 12, 12-point 19 mm, true",
    "TWELVE_POINT, 12, hex 19 mm, true",
    "TWELVE_POINT, 6, 12-point 19 mm, false",
    "HEX, 6, hex 18 mm, false",
    "HEX, 6, hex 3/4 in, false",
    "HEX, 6, hexagon key 19 mm, false",
    "HEX, 6, square 19 mm, false",
    "HEX_KEY, 6, hexagon key 19 mm, true",
    "HEX_KEY, 6, hex 19 mm, false",
    "SQUARE, 4, square 19 mm, true"
  })
  void aSocketFitsItsOwnHeads(Head.Form form, int points, String head, boolean fits) {
    assertEquals(fits, socket(Drive.HALF, form, points, false, "19 mm").fits(head(head)));
  }

  @Test
  void aSetOfSocketsFitsAnyOfItsSizes() {
    Socket set = socket(Drive.HALF, Head.Form.HEX, 6, false, "10..17 mm", "24 mm");
    assertTrue(set.fits(head("hex 17 mm")));
    assertTrue(set.fits(head("hex 24 mm")));
    assertEquals(9, set.sizes().size());
  }

  @ParameterizedTest
  @CsvSource({
    "1/4 in, QUARTER",
    "3/8 in, THREE_EIGHTHS",
    "1/2 in, HALF",
    "'1/2\"', HALF",
    "1/2in, HALF",
    "3/4 in, THREE_QUARTER",
    "1 in, ONE",
    "12.5 mm, HALF",
    "25 mm, ONE"
  })
  void drivesAreReadInInchesOrMillimetres(String text, Drive drive) {
    assertEquals(drive, value(Drive.parse(text)));
  }

  @ParameterizedTest
  @CsvSource({"1/2", "5/8 in", "1 mm", "12.5 in", "half", "12.5"})
  void anythingElseIsNoDrive(String text) {
    assertEquals('"' + text + "\" is not a square drive", fault(Drive.parse(text)).what());
  }

  @Test
  void aDrivePrintsItsInches() {
    assertEquals("3/8\u00A0in", Drive.THREE_EIGHTHS.print());
  }

  // Test torques of sockets believed to stand in ISO 1711-1 (from memory); 60 %, rounded down.
  @ParameterizedTest
  @CsvSource({
    "QUARTER, 68.6, 40",
    "THREE_EIGHTHS, 225, 135",
    "HALF, 569, 340",
    "THREE_QUARTER, 1569, 940",
    "ONE, 2795, 1670"
  })
  void workingLimitsAreSixTenthsOfTheTestTorque(Drive drive, double test, String limit) {
    assertEquals(Quantity.of(limit, Unit.NEWTON_METRE), drive.workingLimit());
    assertEquals(0.6 * test, drive.workingLimit().in(Unit.NEWTON_METRE), 0.03 * test);
    assertTrue(drive.workingLimit().in(Unit.NEWTON_METRE) <= 0.6 * test);
  }

  // ISO 4014/4017/4032 and DIN 931/933/934; source at the head of the file.
  @ParameterizedTest
  @CsvFileSource(resources = "/published/across-flats.csv", useHeadersInDisplayName = true)
  void standardSizesAcrossFlatsAreNotRemarkedOn(String thread, int iso, int din) {
    assertTrue(AcrossFlats.note(thread(thread), head("hex " + iso + " mm")).isEmpty());
    assertTrue(AcrossFlats.note(thread(thread), head("hex " + din + " mm")).isEmpty());
    assertTrue(AcrossFlats.note(thread(thread), head("hex " + (iso + 5) + " mm")).isPresent());
  }

  // Flange bolts ISO 4162 and flange nuts ISO 4161 (1999 and newer), open data; read.
  @ParameterizedTest
  @CsvSource({
    "M5, 7", "M6, 8", "M8, 10", "M10, 13", "M12, 15", "M12, 16", "M14, 18", "M16, 21", "M10, 15",
    "M10, 16", "M12, 18", "M14, 21", "M16, 24", "M20, 30"
  })
  void flangeSizesAreNotRemarkedOn(String thread, int size) {
    assertTrue(AcrossFlats.note(thread(thread), head("hex " + size + " mm")).isEmpty());
  }

  @Test
  void anotherSizeIsMentionedWithTheStandards() {
    assertEquals(
        "hex\u00A017\u00A0mm is not the size that ISO 4014 gives M12x1.5 (18\u00A0mm):"
            + " makers differ, so try the socket first",
        AcrossFlats.note(thread("M12x1.5"), head("hex 17 mm")).orElseThrow());
  }

  @Test
  void onlyHexagonsOnKnownMetricThreadsAreRemarkedOn() {
    assertTrue(AcrossFlats.note(thread("M12"), head("six-lobe T60")).isEmpty());
    assertTrue(AcrossFlats.note(thread("M26x1.5"), head("hex 17 mm")).isEmpty());
    assertTrue(AcrossFlats.note(thread("1/2-20"), head("hex 17 mm")).isEmpty());
  }
}
