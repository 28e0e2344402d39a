package baysheet.torque;

import static baysheet.torque.Written.percent;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandTest {
  private static Band around(String figure) {
    Quantity five = Quantity.of("5", Unit.PERCENT);
    return Target.plain(Quantity.of(figure, Unit.NEWTON_METRE)).bandOr(five);
  }

  @Test
  void printedEndsLieInside() {
    // 95 ± 5 % is 90.25 to 99.75.
    Band printed = around("95").printed();
    assertEquals("90.3", printed.low().figure());
    assertEquals("99.7", printed.high().figure());
  }

  // Five percent either way by hand, towards the middle: small figures and large units need more
  // digits, figures above 1000 fewer.
  @ParameterizedTest
  @CsvSource({
    "0.13 N·m, 0.124, 0.136",
    "0.8 N·m, 0.76, 0.84",
    "3.3 N·m, 3.14, 3.46",
    "7 N·m, 6.7, 7.3",
    "33 N·m, 31.4, 34.6",
    "0.96 kgf·m, 0.92, 1",
    "0.98 kgf·m, 0.94, 1.02",
    "9.2 kgf·m, 8.74, 9.66",
    "0.4 kgf·m, 0.38, 0.42",
    "0.07 kgf·m, 0.067, 0.073",
    "11 daN·m, 10.45, 11.55",
    "8 lbf·in, 7.6, 8.4",
    "1301 N·m, 1236, 1366"
  })
  void digitsGoByUnitAndSize(String figure, String low, String high) {
    Band printed = Target.plain(torque(figure)).bandOr(percent("5")).printed();
    assertEquals(low, printed.low().value().stripTrailingZeros().toPlainString());
    assertEquals(high, printed.high().value().stripTrailingZeros().toPlainString());
  }

  // A book's own ends are printed as they were written, and never farther out.
  @Test
  void theBooksOwnEndsStay() {
    Band written = Written.band("9.25..9.75 N·m");
    assertEquals(written, written.printed());
    Band odd = Written.band("9.2512..9.7512 N·m").printed();
    assertEquals("9.3", odd.low().figure());
    assertEquals("9.7", odd.high().figure());
  }

  @Property
  void noPrintedEndIsOutsideAndLittleOfTheBandIsLost(
      @ForAll @IntRange(min = 10, max = 300_000) int hundredths, @ForAll Unit unit) {
    if (unit.dimension() != Dimension.TORQUE) {
      return;
    }
    Quantity middle = new Quantity(BigDecimal.valueOf(hundredths, 2), unit);
    Band band = Target.plain(middle).bandOr(percent("5"));
    Band printed = band.printed();
    assertTrue(band.contains(printed.low()));
    assertTrue(band.contains(printed.high()));
    BigDecimal width = printed.high().value().subtract(printed.low().value());
    // Ten percent of the middle, three quarters of which are kept.
    assertTrue(width.compareTo(middle.value().multiply(new BigDecimal("0.075"))) >= 0);
  }
}
