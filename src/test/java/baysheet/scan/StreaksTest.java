package baysheet.scan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dust on a feeder's glass; how far print keeps from the paper's edges is the layout's own. */
class StreaksTest {
  private static final int WIDE = 400;
  private static final int HIGH = 600;
  private static final int PAPER = 235;
  private static final int INK = 30;

  /** The glass beyond the paper is dark on some scanners, and wider where the page lies askew. */
  @ParameterizedTest
  @CsvSource({"0, 0, 599, 235", "10, 0, 599, 235", "50, 0, 599, 235", "0, 40, 560, 30"})
  void lineThroughBothMarginsIsTakenOut(int glass, int from, int to, int expected) {
    byte[] pixels = new byte[WIDE * HIGH];
    Arrays.fill(pixels, (byte) PAPER);
    for (int y = 0; y < HIGH; y++) {
      if (y < glass || y >= HIGH - glass) {
        Arrays.fill(pixels, y * WIDE, (y + 1) * WIDE, (byte) INK);
      } else if (y >= from && y <= to) {
        pixels[y * WIDE + 200] = (byte) INK;
      }
    }
    Grey without = Streaks.without(new Grey(WIDE, HIGH, pixels));
    assertEquals(expected, without.at(200, HIGH / 2));
  }
}
