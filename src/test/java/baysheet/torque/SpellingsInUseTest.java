package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What books, bulletins and people write beside the spellings of the documentation: it is read
 * where it can mean one thing only, and answered with the spelling to use where it cannot.
 */
class SpellingsInUseTest {
  private static String stages(String... texts) {
    ParseResult<Tightening> reading = Tightening.parse(List.of(texts));
    return reading
        .found()
        .map(it -> it.print().replace('\u00A0', ' '))
        .orElseGet(() -> "misread: " + ((ParseFailure<Tightening>) reading).what());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "80 Nm + 90°|80 N·m, +90°",
        "30 Nm +90°|30 N·m, +90°",
        "30 Nm+90°|30 N·m, +90°",
        "30 Nm + 90 deg|30 N·m, +90°",
        "30 Nm + 90° + 45°|30 N·m, +90°, +45°",
        "30 ± 3 Nm + 90°|30 ± 3 N·m, +90°"
      })
  void aTorqueAndItsAngleInOneTextAreTwoStages(String written, String read) {
    assertEquals(read, stages(written));
  }

  @Test
  void aTorqueAndItsAngleInOneTextMayStandAmongStages() {
    assertEquals("25 N·m, 50 N·m, +90°", stages("25 Nm", "50 Nm + 90°"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100 to 120 Nm|100|120",
        "100 Nm to 120 Nm|100|120",
        "110 +10/-5 Nm|105|120",
        "110 Nm +10/-5|105|120",
        "110 Nm +10/-5 Nm|105|120",
        "110 +10/−5 N·m|105|120",
        "110 +10 -5 Nm|105|120",
        "110 Nm -5/+10 Nm|105|120",
        "110 Nm +10/-0|110|120",
        "100 Nm +10 %/-5 %|95|110"
      })
  void aBandIsReadInTheFormsThatBooksPrint(String written, String low, String high) {
    Target target = target(written);
    Band band = target.band().orElseThrow();
    assertEquals(0, band.low().compareTo(Quantity.of(low, Unit.NEWTON_METRE)), band.toString());
    assertEquals(0, band.high().compareTo(Quantity.of(high, Unit.NEWTON_METRE)), band.toString());
  }

  @Test
  void anUnevenToleranceKeepsTheFigureItIsGivenFor() {
    Target target = target("110 +10/-5 Nm");
    assertEquals(0, target.nominal().compareTo(Quantity.of("110", Unit.NEWTON_METRE)));
    assertEquals("110 +10/−5 N·m", target.written().replace('\u00A0', ' '));
  }

  private static Target target(String written) {
    ParseResult<Target> reading = QuantityText.target(written);
    return reading.found().orElseThrow(() -> new AssertionError(reading));
  }

  @ParameterizedTest
  @ValueSource(strings = {"110 +10/-60 Nm", "110 +0/-0 Nm", "110 +10/+5 Nm", "110 +10/-5 kg"})
  void anUnevenToleranceThatCannotBeIsRefused(String written) {
    assertTrue(QuantityText.target(written).found().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "110 nm|110 N·m",
        "110 NM|110 N·m",
        "1O2 N·m|102 N·m",
        "11O Nm|110 Nm",
        "1lO Nm|110 Nm",
        "16,5 N·m|16.5 N·m",
        "16,5 Nm|16.5 Nm",
        "1,250 Nm|",
        "0110 Nm|110 Nm",
        ".5 Nm|0.5 Nm",
        "1.250.000 Nm|"
      })
  void aFigureThatIsNotReadIsAnsweredWithTheSpelling(String written, String nearest) {
    assertEquals(Optional.ofNullable(nearest), nearest(QuantityText.target(written)));
  }

  private static Optional<String> nearest(ParseResult<?> reading) {
    assertTrue(reading instanceof ParseFailure<?>, reading::toString);
    return ((ParseFailure<?>) reading).nearest().map(it -> it.replace('\u00A0', ' '));
  }

  @Test
  void aCommaAsAThousandsSignOrAPointIsNotGuessed() {
    ParseFailure<?> misread = (ParseFailure<?>) QuantityText.quantity("12,500 kg", Dimension.MASS);
    assertTrue(misread.expected().contains("12500 kg"), misread.expected());
    assertTrue(misread.expected().contains("12.500 kg"), misread.expected());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M10-1.25|M10x1.25",
        "m10 x 1.25|M10x1.25",
        "M10x1.50|M10x1.5",
        "M12x1.5-6g|M12x1.5-6g",
        "M10-6H|M10-6H",
        "1/2-13 UNC-2A|1/2-13 UNC-2A",
        "1/2-20UNF-3B|1/2-20 UNF-3B",
        "1/2-20 UNF-2A LH|1/2-20 UNF-2A LH",
        "M10-1.25-LH|M10x1.25 LH"
      })
  void aThreadIsReadInTheFormsOfTheTrade(String written, String designation) {
    ParseResult<ScrewThread> thread = ScrewThread.parse(written);
    assertEquals(
        Optional.of(designation), thread.found().map(ScrewThread::designation), thread::toString);
  }

  @ParameterizedTest
  @CsvSource({"M012x1.50,M12x1.5", "M12x01.5,M12x1.5", "M12x1.5 left,M12x1.5 LH", "12x1.5,M12x1.5"})
  void aThreadThatIsNotReadIsAnsweredWithTheSpelling(String written, String nearest) {
    assertEquals(Optional.of(nearest), nearest(ScrewThread.parse(written)));
  }

  /** ISO 261 lists diameters from 1 mm to 300 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"M99999x2", "M301x4", "M0x0.5", "M9999999999999999999"})
  void aDiameterBeyondTheStandardIsRefused(String written) {
    assertTrue(ScrewThread.parse(written).found().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"a2-70,A2-70", "A2 70,A2-70", "A4-80,A4-80", "Grade 8,grade 8", "05,05", "04,04"})
  void aClassIsReadInTheFormsOfTheTrade(String written, String label) {
    ParseResult<StrengthClass> strength = StrengthClass.parse(written);
    assertEquals(Optional.of(label), strength.found().map(StrengthClass::label));
  }

  /** ISO 898-2, thin nuts: stress under proof load 380 MPa (04) and 500 MPa (05); from memory. */
  @ParameterizedTest
  @CsvSource({"04,380", "05,500"})
  void aThinNutIsProvedToItsOwnStress(String written, double stress) {
    StrengthClass strength = StrengthClass.parse(written).found().orElseThrow();
    ScrewThread thread = ScrewThread.parse("M10").found().orElseThrow();
    assertEquals(stress, strength.proofStressMPa(thread).orElseThrow());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"8.8.|8.8", "class 8.8|8.8", "8,8|8.8", "10.90|10.9"})
  void aClassThatIsNotReadIsAnsweredWithTheSpelling(String written, String nearest) {
    assertEquals(Optional.of(nearest), nearest(StrengthClass.parse(written)));
  }

  /** Sixty thousand spaces or digits in one value kept a machine busy for a minute. */
  @ParameterizedTest
  @ValueSource(strings = {" ", "1", "1.", "1-", "1/", "a", "N·", "+", "M", "- ", "1 at "})
  void aLongTextIsReadOrRefusedAtOnce(String piece) {
    String run = piece.repeat(60_000 / piece.length());
    List<Function<String, ParseResult<?>>> readers =
        List.of(
            text -> QuantityText.quantity(text, Dimension.TORQUE),
            QuantityText::target,
            text -> QuantityText.range(text, Dimension.LENGTH),
            QuantityText::minutes,
            text -> Tightening.parse(List.of(text)),
            text -> TighteningPasses.parse(List.of(text)),
            ScrewThread::parse,
            StrengthClass::parse,
            Head::parse,
            Drive::parse,
            Treatment::parse,
            text -> Socket.sizes(Head.Form.HEX, text),
            text -> Socket.sizes(Head.Form.SIX_LOBE, text));
    for (Function<String, ParseResult<?>> reader : readers) {
      for (String text :
          List.of(run, "1" + run + "x", "M10" + run + "x", "hex " + run, "T1" + run)) {
        assertTimeoutPreemptively(
            Duration.ofSeconds(2), () -> assertTrue(reader.apply(text).found().isEmpty()));
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,234,567 km|1234567 km",
        "88 410 km|88410 km",
        "88'410 km|88410 km",
        "88’410 km|88410 km"
      })
  void signsBetweenThousandsAreAnsweredWithoutThem(String written, String nearest) {
    assertEquals(Optional.of(nearest), nearest(QuantityText.quantity(written, Dimension.DISTANCE)));
  }

  @Test
  void aMisreadShowsALittleOfALongText() {
    String text = "x".repeat(5_000);
    for (ParseResult<?> reading :
        List.of(
            QuantityText.quantity("1 " + text, Dimension.TORQUE),
            ScrewThread.parse(text),
            Head.parse(text),
            Head.parse("hex " + text),
            Drive.parse(text),
            StrengthClass.parse(text),
            Treatment.parse(text),
            QuantityText.quantity("1".repeat(3_000) + " Nm", Dimension.TORQUE))) {
      ParseFailure<?> misread = (ParseFailure<?>) reading;
      assertTrue((misread.what() + misread.expected()).length() < 300, misread.what());
    }
  }
}
