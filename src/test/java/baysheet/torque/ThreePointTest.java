package baysheet.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Sources of the figures stand at the head of each file in {@code published}. */
class ThreePointTest {
  @ParameterizedTest
  @CsvFileSource(resources = "/published/pert-taylor.csv", useHeadersInDisplayName = true)
  void meansAndVariancesAreTaylors(
      int activity, double low, double likely, double high, double mean, double variance) {
    ThreePoint time = new ThreePoint(low, likely, high);
    assertEquals(mean, time.mean(), 1e-9);
    assertEquals(variance, time.variance(), 0.0006);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/pert-fourteen.csv", useHeadersInDisplayName = true)
  void meansAndDeviationsAreAsPublished(
      String activity, double low, double likely, double high, double mean, double deviation) {
    ThreePoint time = new ThreePoint(low, likely, high);
    assertEquals(mean, time.mean(), 0.005);
    assertEquals(deviation, time.deviation(), 0.005);
  }

  @Test
  void aCertainTimeDoesNotScatter() {
    assertEquals(new ThreePoint(5, 5, 5), ThreePoint.certain(5));
    assertEquals(0, ThreePoint.certain(5).deviation());
  }

  @Test
  void aFactorStretchesAllThree() {
    assertEquals(new ThreePoint(6, 10, 24), new ThreePoint(3, 5, 12).times(2));
  }

  @ParameterizedTest
  @CsvSource({"-1, 2, 3", "3, 2, 5", "3, 5, 4", "1, 2, Infinity", "NaN, 2, 3"})
  void timesThatDoNotRiseAreAFaultOfOurs(double low, double likely, double high) {
    assertThrows(IllegalArgumentException.class, () -> new ThreePoint(low, likely, high));
  }
}
