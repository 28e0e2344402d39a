package baysheet.torque;

import static baysheet.torque.Written.length;
import static baysheet.torque.Written.mass;
import static baysheet.torque.Written.percent;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AxleLoadTest {
  // Two physics problems, g = 9.8 m/s²: 1800 kg (NCERT: 3675 and 5145 N a wheel) and 1490 kg (a
  // university: 4711 and 2591 N, unrounded 4710.3 and 2590.7). Tolerance: one newton.
  @ParameterizedTest
  @CsvSource({"1800 kg, 1.8 m, 1.05 m, 3675, 5145", "1490 kg, 3.1 m, 1.1 m, 4711, 2591"})
  void wheelLoadsFromTheCentreOfMassAreAsPublished(
      String mass, String wheelbase, String behind, double front, double rear) {
    Quantity onFront = AxleLoad.front(mass(mass), length(wheelbase), length(behind));
    Quantity onRear = AxleLoad.rear(mass(mass), length(wheelbase), length(behind));
    assertEquals(front, AxleLoad.perStand(onFront).in(Unit.KILOGRAM) * 9.8, 1);
    assertEquals(rear, AxleLoad.perStand(onRear).in(Unit.KILOGRAM) * 9.8, 1);
  }

  // OpenStax University Physics 1, ex. 12.1: wheelbase 2.5 m, 52 % in front, the centre lies 1.2 m
  // behind the front axle.
  @Test
  void shareAndCentreOfMassAgree() {
    assertEquals(
        AxleLoad.front(mass("1000 kg"), percent("52")),
        AxleLoad.front(mass("1000 kg"), length("2.5 m"), length("1.2 m")));
  }

  @Test
  void frontAndRearMakeTheWhole() {
    Quantity kerb = mass("1480 kg");
    assertEquals(mass("858.4 kg"), AxleLoad.front(kerb, percent("58")));
    assertEquals(mass("621.6 kg"), AxleLoad.rear(kerb, percent("58")));
  }

  @Test
  void aStandCarriesHalfTheAxle() {
    assertEquals(mass("429.2 kg"), AxleLoad.perStand(mass("858.4 kg")));
  }

  @ParameterizedTest
  @CsvSource({"2.6 m", "-0.1 m"})
  void aCentreOutsideTheWheelbaseIsAFaultOfOurs(String behind) {
    Quantity where = Quantity.of(behind.replace(" m", ""), Unit.METRE);
    assertThrows(
        IllegalArgumentException.class,
        () -> AxleLoad.front(mass("1000 kg"), length("2.5 m"), where));
  }

  @Test
  void aCentreOverAnAxleLoadsOnlyThat() {
    assertEquals(mass("1000 kg"), AxleLoad.front(mass("1000 kg"), length("2.5 m"), length("0 m")));
    assertEquals(mass("0 kg"), AxleLoad.rear(mass("1000 kg"), length("2.5 m"), length("0 m")));
    assertEquals(mass("0 kg"), AxleLoad.front(mass("1000 kg"), length("2.5 m"), length("2.5 m")));
  }
}
