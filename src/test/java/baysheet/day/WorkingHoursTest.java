package baysheet.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import baysheet.day.WorkingHours.Break;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkingHoursTest {
  private static final int NOON = 12 * 60;

  private final WorkingHours hours =
      new WorkingHours(8 * 60, 17 * 60, List.of(new Break(NOON, NOON + 30)));

  @Test
  void breaksAreNoWorkingMinutes() {
    assertEquals(8 * 60 + 30, hours.toWorking(hours.closes()));
    assertEquals(0, hours.toWorking(7 * 60));
    assertEquals(4 * 60, hours.toWorking(NOON));
    assertEquals(4 * 60, hours.toWorking(NOON + 20));
    assertEquals(4 * 60 + 15, hours.toWorking(NOON + 45));
  }

  @Test
  void workEndsBeforeABreakAndStartsAfterIt() {
    assertEquals(NOON, hours.endToClock(4 * 60));
    assertEquals(NOON + 30, hours.startToClock(4 * 60));
  }

  @Test
  void workThatIsNotDoneAtClosingTimeGoesOn() {
    assertEquals(18 * 60, hours.endToClock(hours.toWorking(hours.closes()) + 60));
  }

  @Test
  void everyWorkingMinuteHasItsMinuteOfTheClock() {
    for (int minute = 0; minute < 600; minute++) {
      assertEquals(minute, hours.toWorking(hours.startToClock(minute)));
      assertEquals(minute, hours.toWorking(hours.endToClock(minute)));
    }
  }

  @Test
  void aBreakOutsideTheHoursIsRefused() {
    List<Break> early = List.of(new Break(7 * 60, 9 * 60));
    assertThrows(IllegalArgumentException.class, () -> new WorkingHours(480, 1020, early));
    List<Break> overlapping = List.of(new Break(600, 630), new Break(620, 640));
    assertThrows(IllegalArgumentException.class, () -> new WorkingHours(480, 1020, overlapping));
  }
}
