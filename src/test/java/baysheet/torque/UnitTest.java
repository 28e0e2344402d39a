package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class UnitTest {
  // Exact definitions. Inch, pound, gravity: GNU units 2.22 definitions file; lbf, kgf·m, psi: NIST
  // SP 811 (2008) appendix B; mile: US naval facilities handbook 1004/6, appendix B. Products and
  // the gallons by definition. Tolerance: none, they are exact decimals.
  @ParameterizedTest
  @CsvSource({
    "POUND_FORCE_FOOT, 1.3558179483314004",
    "KILOGRAM_FORCE_METRE, 9.80665",
    "KILOGRAM_FORCE_CENTIMETRE, 0.0980665",
    "DECANEWTON_METRE, 10",
    "NEWTON_CENTIMETRE, 0.01",
    "INCH, 25.4",
    "FOOT, 304.8",
    "METRE, 1000",
    "CENTIMETRE, 10",
    "MILE, 1.609344",
    "POUND, 0.45359237",
    "TONNE, 1000",
    "MILLILITRE, 0.001",
    "HOUR, 60",
    "US_GALLON, 3.785411784",
    "IMPERIAL_GALLON, 4.54609"
  })
  void sizesAreThoseOfTheirDefinitions(Unit unit, BigDecimal size) {
    assertEquals(size, unit.factor());
  }

  // lbf = 4.4482216152605 N (NIST SP 811), foot 0.3048 m, inch 0.0254 m: products are exact.
  @Test
  void torqueUnitsAreForceTimesLength() {
    BigDecimal poundForce = new BigDecimal("4.4482216152605");
    assertEquals(
        0, poundForce.multiply(new BigDecimal("0.3048")).compareTo(Unit.POUND_FORCE_FOOT.factor()));
    assertEquals(
        0, poundForce.multiply(new BigDecimal("0.0254")).compareTo(Unit.POUND_FORCE_INCH.factor()));
  }

  @Test
  void partsOfAGallonAreWhole() {
    assertEquals(
        Quantity.of("4", Unit.US_QUART), Quantity.of("1", Unit.US_GALLON).to(Unit.US_QUART));
    assertEquals(Quantity.of("8", Unit.US_PINT), Quantity.of("1", Unit.US_GALLON).to(Unit.US_PINT));
    assertEquals(
        Quantity.of("8", Unit.IMPERIAL_PINT),
        Quantity.of("1", Unit.IMPERIAL_GALLON).to(Unit.IMPERIAL_PINT));
  }

  // psi = 6894.757293168 Pa (13 figures) and bar = 100 000 Pa: GNU units 2.22, NIST SP 811.
  @Test
  void poundsPerSquareInchAreAsNistHasThem() {
    assertEquals(0.06894757293168, Quantity.of("1", Unit.PSI).in(Unit.BAR), 1e-14);
    assertEquals(100, Quantity.of("1", Unit.BAR).in(Unit.KILOPASCAL), 1e-12);
  }

  // A second implementation: the reference implementation of JSR 385, built up from metre,
  // kilogram and newton. Tolerance: its doubles.
  @ParameterizedTest
  @ValueSource(doubles = {1, 31, 97, 110, 165.5, 2000})
  void conversionsAgreeWithTheReferenceImplementation(double figure) {
    javax.measure.Unit<Length> inch = Units.METRE.multiply(0.0254);
    javax.measure.Unit<Length> foot = Units.METRE.multiply(0.3048);
    javax.measure.Unit<Mass> pound = Units.KILOGRAM.multiply(0.45359237);
    javax.measure.Unit<?> gravity = Units.METRE_PER_SQUARE_SECOND.multiply(9.80665);
    javax.measure.Unit<?> newtonMetre = Units.NEWTON.multiply(Units.METRE);
    agree(figure, pound.multiply(gravity).multiply(foot), newtonMetre, Unit.POUND_FORCE_FOOT);
    agree(figure, pound.multiply(gravity).multiply(inch), newtonMetre, Unit.POUND_FORCE_INCH);
    agree(
        figure,
        Units.KILOGRAM.multiply(gravity).multiply(Units.METRE),
        newtonMetre,
        Unit.KILOGRAM_FORCE_METRE);
    agree(figure, pound, Units.KILOGRAM, Unit.POUND);
    agree(figure, inch, Units.METRE.divide(1000), Unit.INCH);
    agree(figure, foot.multiply(5280), Units.METRE.multiply(1000), Unit.MILE);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static void agree(
      double figure, javax.measure.Unit<?> from, javax.measure.Unit<?> base, Unit ours) {
    Number theirs =
        Quantities.getQuantity(figure, (javax.measure.Unit) from)
            .to((javax.measure.Unit) base)
            .getValue();
    double mine = new BigDecimal(figure).multiply(ours.factor()).doubleValue();
    assertEquals(theirs.doubleValue(), mine, 1e-12 * mine);
  }

  // Printed pairs: US Army TM 10-6640-238-13 appendix G (31 and 105 lbf·ft); a flange-bolting
  // procedure (500 lbf·ft). Tolerance: half a newton metre, as printed.
  @ParameterizedTest
  @CsvSource({"31, 42", "105, 142", "500, 678"})
  void printedPairsOfPoundFeetAndNewtonMetresAgree(String poundFeet, double newtonMetres) {
    double exact = Quantity.of(poundFeet, Unit.POUND_FORCE_FOOT).in(Unit.NEWTON_METRE);
    assertEquals(newtonMetres, exact, 0.5);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void everyUnitIsFoundByItsOwnSymbol(Unit unit) {
    assertEquals(Optional.of(unit), Unit.of(unit.symbol()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mN·m", "MN·m", "mNm", "MNm", "kN·m", "nm", "NM", "N", "lb/ft", "lbf/ft", "MM", "M", "qt",
        "gal", "F", "°F", "", "·", "psf", "kgf", "lbf", "T"
      })
  void whatIsNotAUnitHereIsNotGuessed(String spelling) {
    assertTrue(Unit.of(spelling).isEmpty());
  }
}
