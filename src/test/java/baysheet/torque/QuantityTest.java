package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class QuantityTest {
  private static final Quantity TORQUE = Quantity.of("110", Unit.NEWTON_METRE);

  @Test
  void figureAndUnitNeverPartAtALineEnd() {
    assertEquals("110\u00A0N·m", TORQUE.print());
    assertEquals("57\u00A0%", Quantity.of("57", Unit.PERCENT).print());
    assertEquals("40\u00A0°C", Quantity.of("40", Unit.DEGREE_CELSIUS).print());
  }

  @Test
  void theDegreeSignTouchesItsFigure() {
    assertEquals("90°", Quantity.of("90", Unit.DEGREE).print());
  }

  @Test
  void aFigureKeepsItsDecimalsAndItsFraction() {
    assertEquals("110.0", Quantity.of("110.0", Unit.NEWTON_METRE).figure());
    assertEquals("1-1/8", Quantity.of("1-1/8", Unit.INCH).figure());
    assertEquals("1000", new Quantity(new BigDecimal("1E+3"), Unit.KILOGRAM).figure());
  }

  @Test
  void equalityIsOfWritingAndComparisonOfSize() {
    assertNotEquals(TORQUE, Quantity.of("110.0", Unit.NEWTON_METRE));
    assertEquals(0, TORQUE.compareTo(Quantity.of("110.0", Unit.NEWTON_METRE)));
    assertEquals(0, Quantity.of("3/8", Unit.INCH).compareTo(Quantity.of("9.525", Unit.MILLIMETRE)));
    assertEquals(
        0,
        Quantity.of("1", Unit.POUND_FORCE_FOOT)
            .compareTo(Quantity.of("12", Unit.POUND_FORCE_INCH)));
  }

  @Test
  void sizesAreComparedAcrossUnits() {
    Quantity poundFeet = Quantity.of("81", Unit.POUND_FORCE_FOOT);
    assertTrue(poundFeet.isBelow(TORQUE));
    assertTrue(TORQUE.isAbove(poundFeet));
    assertFalse(TORQUE.isBelow(TORQUE));
    assertFalse(TORQUE.isAbove(TORQUE));
  }

  @Test
  void aFigureThatIsNotWorthItsValueIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Quantity(new BigDecimal("0.375"), Unit.INCH, "5/8"));
  }

  @Test
  void unlikeDimensionsAreNeverCompared() {
    Quantity length = Quantity.of("110", Unit.MILLIMETRE);
    Throwable fault = assertThrows(IllegalArgumentException.class, () -> TORQUE.compareTo(length));
    assertEquals("110\u00A0mm is a length, not a torque", fault.getMessage());
    assertThrows(IllegalArgumentException.class, () -> TORQUE.to(Unit.MILLIMETRE));
  }

  @Test
  void itsOwnUnitChangesNothing() {
    assertSame(TORQUE, TORQUE.to(Unit.NEWTON_METRE));
  }

  // The exact product 110 × 1.3558179483314004.
  @Test
  void aConversionIsExact() {
    assertEquals(
        new BigDecimal("149.139974316454044"),
        Quantity.of("110", Unit.POUND_FORCE_FOOT).to(Unit.NEWTON_METRE).value());
  }

  @Test
  void sumsAndProductsStayInTheirUnit() {
    Quantity sum =
        Quantity.of("1", Unit.POUND_FORCE_FOOT).plus(Quantity.of("6", Unit.POUND_FORCE_INCH));
    assertEquals(Quantity.of("1.5", Unit.POUND_FORCE_FOOT), sum);
    assertEquals(Quantity.of("55", Unit.NEWTON_METRE), TORQUE.times(new BigDecimal("0.5")));
    assertEquals(Quantity.of("1100", Unit.NEWTON_METRE), TORQUE.times(new BigDecimal("10")));
  }

  @Property
  void aConversionThereAndBackKeepsTheSize(
      @ForAll @BigRange(min = "0.1", max = "3000") @Scale(4) BigDecimal figure,
      @ForAll Unit from,
      @ForAll Unit to) {
    if (from.dimension() == to.dimension()) {
      Quantity start = new Quantity(figure, from);
      double back = start.to(to).to(from).value().subtract(figure).doubleValue();
      assertEquals(0, back, 1e-28 * figure.doubleValue());
    }
  }

  @Property
  void comparisonIsAgainstItsReverse(
      @ForAll @BigRange(min = "0", max = "3000") @Scale(2) BigDecimal one,
      @ForAll @BigRange(min = "0", max = "3000") @Scale(2) BigDecimal other) {
    Quantity left = new Quantity(one, Unit.POUND_FORCE_FOOT);
    Quantity right = new Quantity(other, Unit.KILOGRAM_FORCE_METRE);
    assertEquals(Integer.signum(left.compareTo(right)), -Integer.signum(right.compareTo(left)));
  }

  @Property
  void whatIsPrintedIsReadBackTheSame(
      @ForAll @BigRange(min = "0.1", max = "490") @Scale(3) BigDecimal figure) {
    for (Unit unit : Unit.values()) {
      if (unit.dimension() == Dimension.TORQUE && unit != Unit.DECANEWTON_METRE) {
        Quantity quantity = new Quantity(figure, unit);
        ParseResult<Quantity> back = QuantityText.quantity(quantity.print(), Dimension.TORQUE);
        back.found().ifPresent(read -> assertEquals(quantity, read));
        assertTrue(
            back.found().isPresent()
                || figure.multiply(unit.factor()).doubleValue() < 0.01
                || figure.multiply(unit.factor()).doubleValue() > 3000);
      }
    }
  }
}
