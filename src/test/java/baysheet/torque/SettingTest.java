package baysheet.torque;

import static baysheet.torque.Written.torque;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SettingTest {
  private static final Wrench WRENCH =
      new Wrench(
          "W",
          Drive.HALF,
          torque("20 N·m"),
          torque("200 N·m"),
          torque("1 N·m"),
          new BigDecimal("4"),
          Optional.of(Written.length("370 mm")),
          LocalDate.of(2026, 1, 1));

  private static Setting at(String mark, String arrives) {
    return new Setting(WRENCH, torque(mark), torque(arrives), true);
  }

  private static Band band(String low, String high) {
    return new Band(torque(low), torque(high), Band.Origin.BOOK);
  }

  // 1 lbf·ft = 1.3558179483314004 N·m exactly (NIST SP 811): 76 is 103.042, 84 is 113.889.
  @Test
  void bandInAnotherUnitReadsInTheUnitOfTheScale() {
    Quantity arrives = torque("108 N·m").to(Unit.POUND_FORCE_FOOT);
    Setting setting = new Setting(WRENCH, torque("108 N·m"), arrives, true);
    Band read = setting.reading(band("76 lbf·ft", "84 lbf·ft"));
    assertEquals("103.1", read.low().figure());
    assertEquals("113.8", read.high().figure());
    assertEquals(Unit.NEWTON_METRE, read.low().unit());
    assertTrue(setting.readsOtherwise());
  }

  // S = T·L/(L + E), TM 9-254 figure 4-5: L 370, E 55 give 0.870588; 50 reads 43.53, 60 reads
  // 52.24.
  @Test
  void bandBehindAnExtensionReadsLess() {
    Quantity arrives = torque("48 N·m").times(new BigDecimal("1.148648648648648648648649"));
    Setting setting = new Setting(WRENCH, torque("48 N·m"), arrives, true);
    Band read = setting.reading(band("50 N·m", "60 N·m"));
    assertEquals("43.6", read.low().figure());
    assertEquals("52.2", read.high().figure());
    assertTrue(setting.readsOtherwise());
  }

  @Test
  void bareWrenchInItsOwnUnitReadsWhatArrives() {
    assertFalse(at("55 N·m", "55 N·m").readsOtherwise());
  }
}
