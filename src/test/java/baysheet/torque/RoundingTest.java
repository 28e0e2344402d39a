package baysheet.torque;

import static baysheet.torque.Written.band;
import static baysheet.torque.Written.percent;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
  private static final Band WIDE = band("0.1..3000 N·m");

  // Figures by hand from the exact definitions of the units.
  @ParameterizedTest
  @CsvSource({
    "110 N·m, POUND_FORCE_FOOT, 81 lbf·ft",
    "20.4 N·m, POUND_FORCE_FOOT, 15 lbf·ft",
    "20.3 N·m, POUND_FORCE_FOOT, 180 lbf·in",
    "11 N·m, POUND_FORCE_FOOT, 97 lbf·in",
    "1640 N·m, POUND_FORCE_FOOT, 1210 lbf·ft",
    "110 N·m, FOOT_POUND, 81 ft-lb",
    "20.3 N·m, FOOT_POUND, 180 in-lb",
    "81 ft-lb, NEWTON_METRE, 110 N·m",
    "97 in-lb, NEWTON_METRE, 11 N·m",
    "81 lbf·ft, NEWTON_METRE, 110 N·m",
    "14.8 lbf·ft, NEWTON_METRE, 20 N·m",
    "14.7 lbf·ft, NEWTON_METRE, 20 N·m",
    "14.4 lbf·ft, NEWTON_METRE, 19.5 N·m",
    "97 lbf·in, NEWTON_METRE, 11 N·m",
    "45 lbf·in, NEWTON_METRE, 5 N·m",
    "44 lbf·in, NEWTON_METRE, 5 N·m",
    "43 lbf·in, NEWTON_METRE, 4.9 N·m",
    "10 lbf·in, NEWTON_METRE, 1.1 N·m",
    "9.2 kgf·m, NEWTON_METRE, 90 N·m",
    "110 N·m, KILOGRAM_FORCE_METRE, 11.2 kgf·m",
    "12 N·m, KILOGRAM_FORCE_METRE, 1.2 kgf·m",
    "12.4 N·m, KILOGRAM_FORCE_METRE, 1.25 kgf·m",
    "3 N·m, KILOGRAM_FORCE_METRE, 0.31 kgf·m",
    "110 N·m, DECANEWTON_METRE, 11 daN·m"
  })
  void aConvertedFigureIsRoundedByItsSize(String written, Unit to, String printed) {
    Quantity rounded = Rounding.converted(torque(written), to, WIDE);
    assertEquals(printed.replace(' ', '\u00A0'), rounded.print());
  }

  @ParameterizedTest
  @CsvSource({
    "110.25 N·m, NEWTON_METRE",
    "12.34 lbf·ft, POUND_FORCE_FOOT",
    "97.5 lbf·in, POUND_FORCE_INCH",
    "97.5 lbf·in, POUND_FORCE_FOOT",
    "12.34 ft-lb, POUND_FORCE_FOOT",
    "12.34 lbf·ft, FOOT_POUND",
    "97.5 in-lb, POUND_FORCE_FOOT"
  })
  void theBooksOwnFigureIsNeverTouched(String written, Unit to) {
    assertEquals(torque(written), Rounding.converted(torque(written), to, WIDE));
  }

  // 10 lbf·ft = 13.558 N·m: 13.5 by the rule, but the band begins at 13.52, so a digit more.
  @ParameterizedTest
  @CsvSource({
    "10 lbf·ft, NEWTON_METRE, 13.52..13.59 N·m, 13.56 N·m",
    "10 lbf·ft, NEWTON_METRE, 13.52..13.7 N·m, 13.6 N·m",
    "10 lbf·ft, NEWTON_METRE, 13.5..13.7 N·m, 13.5 N·m",
    "33 lbf·ft, NEWTON_METRE, 44.7..44.9 N·m, 44.7 N·m",
    "110 N·m, POUND_FORCE_FOOT, 109.9..110.1 N·m, 81.1 lbf·ft"
  })
  void roundingNeverLeavesTheBand(String written, Unit to, String band, String printed) {
    Quantity rounded = Rounding.converted(torque(written), to, band(band));
    assertEquals(printed.replace(' ', '\u00A0'), rounded.print());
  }

  // 9.1 N·m is 0.92794175… kgf·m, and 120 lbf·ft 162.698…: where the band ends just there, four
  // digits and no more, away from the end.
  @ParameterizedTest
  @CsvSource({
    "9.1 N·m, KILOGRAM_FORCE_METRE, 9.1..10 N·m, 0.95 kgf·m",
    "9.1 N·m, KILOGRAM_FORCE_METRE, 9.1..9.2 N·m, 0.93 kgf·m",
    "9.1 N·m, KILOGRAM_FORCE_METRE, 9.1..9.11 N·m, 0.928 kgf·m",
    "9.1 N·m, KILOGRAM_FORCE_METRE, 8..9.1 N·m, 0.9279 kgf·m",
    "120 lbf·ft, NEWTON_METRE, 110..120 lbf·ft, 162.6 N·m",
    "120 lbf·ft, NEWTON_METRE, 120..130 lbf·ft, 163 N·m",
    "500 lbf·ft, NEWTON_METRE, 400..500 lbf·ft, 677.9 N·m"
  })
  void noFigureHasMoreDigitsThanFour(String written, Unit to, String band, String printed) {
    Quantity rounded = Rounding.converted(torque(written), to, band(band));
    assertEquals(printed.replace(' ', '\u00A0'), rounded.print());
  }

  // Five digits of a small unit are no more than four of a large one.
  @Test
  void aLargeFigureOfASmallUnitIsRoundedToTens() {
    Quantity rounded = Rounding.converted(torque("123.46 N·m"), Unit.NEWTON_CENTIMETRE, WIDE);
    assertEquals("12350\u00A0N·cm", rounded.print());
  }

  @Test
  void aFigureOutsideTheBandIsNotRoundedIntoIt() {
    assertEquals(
        "120.4\u00A0N·m", Rounding.within(torque("120.4 N·m"), band("100..120 N·m")).print());
    assertEquals(
        "99.6\u00A0N·m", Rounding.within(torque("99.6 N·m"), band("100..120 N·m")).print());
  }

  @Test
  void aComputedFigureIsRoundedInItsOwnUnit() {
    assertEquals("109\u00A0N·m", Rounding.within(torque("109.3514 N·m"), WIDE).print());
  }

  // Whole kilograms and kilometres, tenths of the large units.
  @ParameterizedTest
  @CsvSource({
    "858.4, KILOGRAM, KILOGRAM, 858 kg",
    "3615.5, POUND, KILOGRAM, 1640 kg",
    "50, MILE, KILOMETRE, 80 km",
    "4.44, US_QUART, LITRE, 4.2 L",
    "33.4, PSI, BAR, 2.3 bar"
  })
  void otherQuantitiesAreRoundedPlainly(String figure, Unit from, Unit to, String printed) {
    assertEquals(
        printed.replace(' ', '\u00A0'), Rounding.plain(Quantity.of(figure, from), to).print());
  }

  @Property
  void aPrintedFigureLiesInItsBand(
      @ForAll @BigRange(min = "1", max = "2000") @Scale(2) BigDecimal figure,
      @ForAll @IntRange(min = 1, max = 200) int tenthsOfAPercent,
      @ForAll Unit from,
      @ForAll Unit to) {
    if (from.dimension() == Dimension.TORQUE && to.dimension() == Dimension.TORQUE) {
      Quantity exact = new Quantity(figure, from);
      String share = new BigDecimal(tenthsOfAPercent).movePointLeft(1).toPlainString();
      Band band = Target.plain(exact).bandOr(percent(share));
      Quantity printed = Rounding.converted(exact, to, band);
      assertTrue(band.contains(printed), exact.print() + " printed as " + printed.print());
      int digits = printed.value().stripTrailingZeros().precision();
      assertTrue(digits <= 4 || printed.equals(exact), printed.print());
    }
  }

  @Property
  void roundingNeverCrossesAnEndOfABandEitherWay(
      @ForAll @BigRange(min = "1", max = "300") @Scale(3) BigDecimal figure,
      @ForAll @BigRange(min = "1", max = "300") @Scale(3) BigDecimal low,
      @ForAll @IntRange(min = 1, max = 50) int width) {
    Quantity bottom = new Quantity(low, Unit.NEWTON_METRE);
    Band band = new Band(bottom, bottom.plus(Written.newtonMetres(width)), Band.Origin.BOOK);
    Quantity exact = new Quantity(figure, Unit.NEWTON_METRE);
    Quantity rounded = Rounding.within(exact, band);
    assertEquals(exact.isBelow(band.low()), rounded.isBelow(band.low()));
    assertEquals(exact.isAbove(band.high()), rounded.isAbove(band.high()));
  }
}
