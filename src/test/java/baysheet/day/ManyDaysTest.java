package baysheet.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Made-up days in a row; 10,000 of them with the profile "days". */
class ManyDaysTest {
  private static final int DAYS = Integer.getInteger("days", 200);
  private static final int SAMPLES = 20;

  @Test
  void noTimetableIsImpossible() {
    List<String> faults = new ArrayList<>();
    for (int seed = 0; seed < DAYS; seed++) {
      Timetable timetable = Scheduler.schedule(RandomDays.day(seed), SAMPLES);
      int day = seed;
      TimetableChecker.faults(timetable).forEach(fault -> faults.add("day " + day + ": " + fault));
    }
    assertEquals(List.of(), faults);
  }
}
