package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Torques as books write them: a figure, a range, a figure with its tolerance. */
class TargetTextTest {
  private static Target target(String text) {
    ParseResult<Target> reading = QuantityText.target(text);
    return reading.found().orElseThrow(() -> new AssertionError(reading));
  }

  private static ParseFailure<?> misread(String text) {
    if (QuantityText.target(text) instanceof ParseFailure<?> misread) {
      return misread;
    }
    throw new AssertionError("read: " + text);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100..120 N·m|110|100|120|100–120_N·m",
        "100 .. 120 N·m|110|100|120|100–120_N·m",
        "100 N·m..120 N·m|110|100|120|100–120_N·m",
        "100–120 N·m|110|100|120|100–120_N·m",
        "100-120 N·m|110|100|120|100–120_N·m",
        "100…120 N·m|110|100|120|100–120_N·m",
        "9.5..10 N·m|9.75|9.5|10|9.5–10_N·m",
        "110 ± 10 N·m|110|100|120|110_±_10_N·m",
        "110 +/- 10 N·m|110|100|120|110_±_10_N·m",
        "110±10 N·m|110|100|120|110_±_10_N·m",
        "110 N·m ± 10|110|100|120|110_±_10_N·m",
        "110 N·m ± 10 N·m|110|100|120|110_±_10_N·m",
        "110 N·m ± 5 %|110|104.5|115.5|110_N·m_±_5_%",
        "110 N·m +/-5%|110|104.5|115.5|110_N·m_±_5_%"
      })
  void rangesAndTolerancesBecomeTheBooksBand(
      String text, String nominal, String low, String high, String written) {
    Target target = target(text);
    Band band = target.band().orElseThrow();
    assertEquals(Quantity.of(nominal, Unit.NEWTON_METRE), target.nominal());
    assertEquals(Quantity.of(low, Unit.NEWTON_METRE), band.low());
    assertEquals(Quantity.of(high, Unit.NEWTON_METRE), band.high());
    assertEquals(Band.Origin.BOOK, band.origin());
    assertEquals(written.replace('_', '\u00A0'), target.written());
  }

  // 120 lbf·ft = 162.698153799768048 N·m exactly; the middle with 10 N·m is 86.349….
  @Test
  void endsInTwoUnitsKeepBothInPrintAndAreComparedInOne() {
    Target target = target("10 N·m..120 lbf·ft");
    assertEquals("10\u00A0N·m–120\u00A0lbf·ft", target.written());
    assertEquals("86\u00A0N·m", target.nominal().print());
    Band band = target.band().orElseThrow();
    assertEquals("10\u00A0N·m", band.low().print());
    assertEquals(Unit.NEWTON_METRE, band.high().unit());
    assertEquals(162.698153799768048, band.high().value().doubleValue(), 1e-12);
    assertEquals("162.6\u00A0N·m", band.printed().high().print());
  }

  @Test
  void aPlainValueKeepsItsWritingAndHasNoBand() {
    assertEquals("110.0\u00A0N·m", target("110.0 Nm").written());
    assertTrue(target("110 N·m").band().isEmpty());
  }

  @Test
  void aToleranceMayHaveAnotherUnitThanItsValue() {
    Target target = target("10 kgf·m ± 5 N·m");
    assertEquals("10\u00A0kgf·m\u00A0±\u00A05\u00A0N·m", target.written());
    assertEquals(93.0665, target.band().orElseThrow().low().in(Unit.NEWTON_METRE), 1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "120..100 N·m|has the higher end first",
        "100..100 N·m|two equal ends",
        "100..120|has no unit",
        "100..120 mm|is a length",
        "100..120..130 N·m|unknown unit",
        "100.. N·m|has no unit",
        "110 ± 0 N·m|is not plausible as a torque",
        "110 ± 55 N·m|tolerance that is not plausible",
        "110 N·m ± 50 %|tolerance that is not plausible",
        "110 ± 10|has no unit",
        "110 ± 5 %|has no unit",
        "110 ± N·m|has no unit",
        "100..120 N·m ± 5 %|unknown unit",
        "-110 N·m|is negative",
        "–110 N·m|is negative",
        "snug|does not begin with a figure"
      })
  void aFaultyTargetSaysWhatIsWrong(String text, String words) {
    ParseFailure<?> fault = misread(text);
    assertTrue(fault.what().contains(words), fault.what());
  }
}
