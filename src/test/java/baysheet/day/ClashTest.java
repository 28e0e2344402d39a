package baysheet.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.day.Activity.Use;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ClashTest {
  @Test
  void aStretchThatTooManyWantIsNamedWithAllOfThem() {
    List<Activity> jobs =
        List.of(
            Activity.of("a", 60, List.of(Use.of("splitter", 10, 40)), List.of()),
            Activity.of("b", 60, List.of(Use.of("splitter", 30, 50)), List.of()),
            Activity.of("c", 60, List.of(Use.of("splitter", 50, 60)), List.of()));
    Timetable careless = Scheduler.schedule(new DayPlan(jobs, Map.of("splitter", 9)), 1);
    assertEquals(
        List.of(new Clash("splitter", 30, 40, List.of("a", "b"))),
        Clash.in(careless, Map.of("splitter", 1)));
    assertEquals(List.of(), Clash.in(careless, Map.of("splitter", 2)));
  }
}
