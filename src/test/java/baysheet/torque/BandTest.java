package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

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

  @Test
  void aBandTooNarrowForOneDecimalStays() {
    // 0.13 ± 5 % is 0.1235 to 0.1365: 0.2 would stand above 0.1.
    assertEquals(around("0.13"), around("0.13").printed());
  }

  @Property
  void noPrintedEndIsOutside(@ForAll @IntRange(min = 10, max = 300_000) int hundredths) {
    Band band = around(BigDecimal.valueOf(hundredths, 2).toPlainString());
    assertTrue(band.contains(band.printed().low()));
    assertTrue(band.contains(band.printed().high()));
  }
}
