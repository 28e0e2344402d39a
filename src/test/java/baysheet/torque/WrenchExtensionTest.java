package baysheet.torque;

import static baysheet.torque.Written.length;
import static baysheet.torque.Written.reach;
import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrenchExtensionTest {
  // Worked examples as printed; tolerance: half a unit of the last printed figure. AC 43.13-1B
  // (FAA) fig. 7-2 and a helicopter maker's manual (117.39); TM 9-2350-277-40&P (30);
  // NAVEDTRA 14315 (inputs read, 66.7 computed); a tool maker's leaflet (44.44); a wrench seller's
  // page (20); an aviation mechanics' quiz, extension pointing back (0.75); a truck maker's manual
  // (ratio 1.1).
  @ParameterizedTest
  @CsvSource({
    "135 in-lb, 10 in, 1.5 in, 0°, 117.39, 0.005",
    "40 lb-ft, 12 in, 4 in, 0°, 30, 0.5",
    "100 N·m, 12 in, 6 in, 0°, 66.7, 0.05",
    "50 ft-lb, 16 in, 2 in, 0°, 44.44, 0.005",
    "30 N·m, 12 in, 6 in, 0°, 20, 0.5",
    "100 N·m, 8 in, 2 in, 180°, 133.3, 0.05",
    "110 N·m, 18 in, 2 in, 0°, 99, 0.5"
  })
  void settingsAreThoseOfTheWorkedExamples(
      String torque, String hand, String beyond, String angle, double setting, double slack) {
    WrenchExtension lever = WrenchExtension.with(length(hand), reach(beyond, angle));
    assertEquals(setting, lever.setting(torque(torque)).value().doubleValue(), slack);
  }

  // The quiz asks for the scale factor itself: (8 − 2)/8 = 0.75.
  @Test
  void anExtensionPointingBackDeliversLess() {
    WrenchExtension lever = WrenchExtension.with(length("8 in"), reach("2 in", "180°"));
    assertEquals(torque("75 N·m"), lever.arriving(torque("100 N·m")));
  }

  // TM 9-254, fig. 4-5: square to the wrench there is nothing to correct.
  @ParameterizedTest
  @CsvSource({"90°", "270°", "90.0°"})
  void aSquareExtensionCorrectsNothing(String angle) {
    WrenchExtension lever = WrenchExtension.with(length("400 mm"), reach("60 mm", angle));
    assertEquals(torque("110 N·m"), lever.setting(torque("110 N·m")));
  }

  // cos 60° = 1/2: 60 mm count as 30.
  @ParameterizedTest
  @CsvSource({"60°", "300°"})
  void aSlantingExtensionCountsByItsCosine(String angle) {
    WrenchExtension lever = WrenchExtension.with(length("370 mm"), reach("60 mm", angle));
    assertEquals(92.5, lever.setting(torque("100 N·m")).value().doubleValue(), 1e-12);
  }

  @Test
  void aFullTurnIsStraightOn() {
    WrenchExtension straight = WrenchExtension.with(length("370 mm"), reach("60 mm", "0°"));
    assertEquals(straight, WrenchExtension.with(length("370 mm"), reach("60 mm", "360°")));
  }

  @Test
  void aBareWrenchDeliversWhatItSays() {
    assertEquals(torque("110 N·m"), WrenchExtension.BARE.setting(torque("110 N·m")));
  }

  @Test
  void aNutBehindTheHandCannotBeTurned() {
    assertFalse(WrenchExtension.with(length("200 mm"), reach("200 mm", "180°")).turnsTheNut());
    assertTrue(WrenchExtension.with(length("200 mm"), reach("199 mm", "180°")).turnsTheNut());
  }

  @Test
  void aReachOfTheWrongKindIsAFaultOfOurs() {
    Quantity angle = Quantity.of("0", Unit.DEGREE);
    Quantity length = length("60 mm");
    Quantity behind = Quantity.of("-1", Unit.MILLIMETRE);
    assertThrows(IllegalArgumentException.class, () -> new Reach(angle, angle));
    assertThrows(IllegalArgumentException.class, () -> new Reach(length, length));
    assertThrows(IllegalArgumentException.class, () -> new Reach(behind, angle));
  }
}
