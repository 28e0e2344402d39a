package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTextTest {
  private static Quantity read(String text, Dimension dimension) {
    ParseResult<Quantity> reading = QuantityText.quantity(text, dimension);
    return reading.found().orElseThrow(() -> new AssertionError(reading));
  }

  private static ParseFailure<?> misread(ParseResult<?> reading) {
    if (reading instanceof ParseFailure<?> misread) {
      return misread;
    }
    throw new AssertionError("read as " + reading);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "110 N·m",
        "110N·m",
        "110 Nm",
        "110 N.m",
        "110 N m",
        "110 N⋅m",
        "110 N•m",
        "110 N*m",
        "110 N-m",
        "110\u00A0N·m",
        "  110 Nm  ",
        "110 newton metres"
      })
  void newtonMetresAreReadInEverySpelling(String text) {
    assertEquals(Quantity.of("110", Unit.NEWTON_METRE), read(text, Dimension.TORQUE));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "81 lbf·ft",
        "81 lb-ft",
        "81 lbf-ft",
        "81 lb·ft",
        "81 lb ft",
        "81 lbs-ft",
        "81 pound-feet",
        "81 Lb.Ft"
      })
  void poundFeetAreReadInEverySpelling(String text) {
    assertEquals(Quantity.of("81", Unit.POUND_FORCE_FOOT), read(text, Dimension.TORQUE));
  }

  /** The same size; it is printed as it is written, feet first. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "81 ft-lb",
        "81 ft-lbs",
        "81 ft·lb",
        "81 FT-LB",
        "81 ft lbf",
        "81 ftlb",
        "81 foot-pounds"
      })
  void footPoundsAreReadInEverySpelling(String text) {
    Quantity read = read(text, Dimension.TORQUE);
    assertEquals("81\u00A0ft-lb", read.print());
    assertEquals(0, read.compareTo(Quantity.of("81", Unit.POUND_FORCE_FOOT)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"97 lbf·in", "97 lb-in"})
  void poundInchesAreReadInEverySpelling(String text) {
    assertEquals(Quantity.of("97", Unit.POUND_FORCE_INCH), read(text, Dimension.TORQUE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"97 in-lb", "97 in-lbs", "97 IN LB", "97 inch-pounds"})
  void inchPoundsAreReadInEverySpelling(String text) {
    Quantity read = read(text, Dimension.TORQUE);
    assertEquals("97\u00A0in-lb", read.print());
    assertEquals(0, read.compareTo(Quantity.of("97", Unit.POUND_FORCE_INCH)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"9.2 kgf·m", "9.2 kg·m", "9.2 kgm", "9.2 mkg", "9.2 kp·m", "9.2 kgf-m"})
  void kilogramForceMetresAreReadInEverySpelling(String text) {
    assertEquals(Quantity.of("9.2", Unit.KILOGRAM_FORCE_METRE), read(text, Dimension.TORQUE));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "90°|ANGLE|90|DEGREE",
        "90 deg|ANGLE|90|DEGREE",
        "12 mm|LENGTH|12|MILLIMETRE",
        "3/8 in|LENGTH|3/8|INCH",
        "1-1/8 in|LENGTH|1-1/8|INCH",
        "1 1/8 in|LENGTH|1-1/8|INCH",
        "3/4\"|LENGTH|3/4|INCH",
        "0.5 in|LENGTH|0.5|INCH",
        "2.6 m|LENGTH|2.6|METRE",
        "1640 kg|MASS|1640|KILOGRAM",
        "3600 lb|MASS|3600|POUND",
        "1.5 t|MASS|1.5|TONNE",
        "80 km|DISTANCE|80|KILOMETRE",
        "0 km|DISTANCE|0|KILOMETRE",
        "50 mi|DISTANCE|50|MILE",
        "4.2 L|VOLUME|4.2|LITRE",
        "4.5 US qt|VOLUME|4.5|US_QUART",
        "350 ml|VOLUME|350|MILLILITRE",
        "6 min|TIME|6|MINUTE",
        "0.5 h|TIME|0.5|HOUR",
        "57 %|SHARE|57|PERCENT",
        "57%|SHARE|57|PERCENT",
        "-20 °C|TEMPERATURE|-20|DEGREE_CELSIUS",
        "2.3 bar|PRESSURE|2.3|BAR",
        "32 psi|PRESSURE|32|PSI"
      })
  void everyDimensionIsReadAsWritten(String text, Dimension dimension, String figure, Unit unit) {
    assertEquals(Quantity.of(figure, unit), read(text, dimension));
  }

  @Test
  void fractionsOfInchesAreWorthTheirExactDecimal() {
    assertEquals(new BigDecimal("0.375"), read("3/8 in", Dimension.LENGTH).value());
    assertEquals(new BigDecimal("1.125"), read("1-1/8 in", Dimension.LENGTH).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "110,5 N·m|TORQUE|has a comma",
        "1,640 kg|MASS|has a comma",
        "1.640,5 kg|MASS|has a comma",
        "110|TORQUE|has no unit",
        "110 mN·m|TORQUE|unknown unit \"mN·m\"",
        "110 MN·m|TORQUE|unknown unit \"MN·m\"",
        "110 mNm|TORQUE|unknown unit \"mNm\"",
        "110 nm|TORQUE|unknown unit \"nm\"",
        "110 kN·m|TORQUE|unknown unit \"kN·m\"",
        "110 lb/ft|TORQUE|unknown unit",
        "1O2 N·m|TORQUE|has a letter among its digits",
        "8124O km|DISTANCE|has a letter among its digits",
        "4l|TORQUE|is a volume, not a torque",
        "1Ox N·m|TORQUE|unknown unit",
        "110 N|TORQUE|unknown unit \"N\"",
        "110 mm|TORQUE|is a length, not a torque",
        "110 lb|TORQUE|is a mass, not a torque",
        "81 lbf·ft|LENGTH|is a torque, not a length",
        "-110 N·m|TORQUE|is negative",
        "−110 N·m|TORQUE|is negative",
        "+110 N·m|TORQUE|has a sign",
        "0 N·m|TORQUE|is not plausible as a torque",
        "0.009 N·m|TORQUE|is not plausible as a torque",
        "3001 N·m|TORQUE|is not plausible as a torque",
        "2213 lbf·ft|TORQUE|is not plausible as a torque",
        "010 N·m|TORQUE|begins with a zero too many",
        ".5 N·m|TORQUE|no figure before its point",
        "N·m|TORQUE|does not begin with a figure",
        "about 110 N·m|TORQUE|does not begin with a figure",
        "1e3 N·m|TORQUE|unknown unit",
        "'1,200\n kg'|MASS|unknown unit",
        "'about\n110 N·m'|TORQUE|does not begin with a figure",
        "1.1.0 N·m|TORQUE|has two points",
        "3/8 N·m|TORQUE|has a fraction",
        "3/7 in|LENGTH|not a common fraction of an inch",
        "3/8|LENGTH|has no unit",
        "1 640 kg|MASS|something between its thousands",
        "4 qt|VOLUME|unknown unit \"qt\"",
        "721°|ANGLE|is not plausible as an angle",
        "101 %|SHARE|is not plausible as a share",
        "13 m|LENGTH|is not plausible as a length",
        "61 t|MASS|is not plausible as a mass"
      })
  void whatIsWrongIsSaidInWords(String text, Dimension dimension, String words) {
    ParseFailure<?> fault = misread(QuantityText.quantity(text, dimension));
    assertTrue(fault.what().contains(words), fault.what());
  }

  @Test
  void nothingWrittenIsSaid() {
    assertEquals("nothing is written here", misread(read(" ")).what());
  }

  private static ParseResult<Quantity> read(String text) {
    return QuantityText.quantity(text, Dimension.TORQUE);
  }

  @Test
  void theExpectedFormIsNamed() {
    assertEquals("a torque such as 110 N·m", misread(read("110")).expected());
    assertEquals(
        "a point before decimals and nothing between thousands: 110 N·m",
        misread(read("110,5 N·m")).expected());
    assertEquals(
        "a torque from 0.01\u00A0N·m to 3000\u00A0N·m", misread(read("9999 N·m")).expected());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.01 N·m", "3000 N·m"})
  void theEndsOfWhatIsPlausibleAreRead(String text) {
    assertTrue(read(text).found().isPresent());
  }

  @Test
  void aRangeHasTwoEnds() {
    assertEquals(
        new Parsed<>(
            List.of(Quantity.of("10", Unit.MILLIMETRE), Quantity.of("24", Unit.MILLIMETRE))),
        QuantityText.range("10..24 mm", Dimension.LENGTH));
    assertEquals(
        new Parsed<>(List.of(Quantity.of("1/4", Unit.INCH), Quantity.of("1-1/8", Unit.INCH))),
        QuantityText.range("1/4..1-1/8 in", Dimension.LENGTH));
    Quantity fraction = Quantity.of("1-1/8", Unit.INCH);
    assertEquals(
        new Parsed<>(List.of(fraction, fraction)),
        QuantityText.range("1-1/8 in", Dimension.LENGTH));
    assertEquals(
        new ParseFailure<>("\"10-32 mm\" has a hyphen between its ends", "two points: 10..32 mm"),
        QuantityText.range("10-32 mm", Dimension.LENGTH));
  }

  @Test
  void aSingleValueIsBothEndsOfItsRange() {
    Quantity only = Quantity.of("36", Unit.MILLIMETRE);
    assertEquals(new Parsed<>(List.of(only, only)), QuantityText.range("36 mm", Dimension.LENGTH));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5 min|5|5|5",
        "3/5/12 min|3|5|12",
        "3 / 5 / 12 min|3|5|12",
        "0.5/1/2 h|30|60|120",
        "2/2/2 min|2|2|2"
      })
  void minutesAreOneFigureOrThree(String text, double low, double likely, double high) {
    assertEquals(new Parsed<>(new ThreePoint(low, likely, high)), QuantityText.minutes(text));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5|has no unit",
        "3/5 min|two figures",
        "3/5/12/20 min|more than three figures",
        "3/5/12|has no unit",
        "5/3/12 min|is not in increasing order",
        "3/12/5 min|is not in increasing order",
        "3//12 min|does not begin with a figure",
        "5 mm|is a length",
        "-5 min|is negative"
      })
  void faultyMinutesSayWhatIsWrong(String text, String words) {
    ParseFailure<?> fault = misread(QuantityText.minutes(text));
    assertTrue(fault.what().contains(words), fault.what());
  }
}
