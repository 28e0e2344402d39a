package baysheet.day;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.day.Activity.Use;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Shares against tables of the standard normal distribution (any textbook of statistics: Φ(1) =
 * 0.8413, Φ(0) = 0.5).
 */
class PromiseChanceTest {
  private static final int DAYS = 20_000;
  // Four standard errors of a share of 20,000 days.
  private static final double CLOSE = 4 * 0.5 / Math.sqrt(DAYS);

  @Test
  void onePromiseIsKeptAsOftenAsTheNormalDistributionSays() {
    DayPlan plan = plan(job("a", 0, 100, 10, OptionalInt.of(110), "bay"));
    assertEquals(0.8413, chances(plan).get(0), CLOSE);
  }

  @Test
  void delaysAddUpInABay() {
    // 60 ± 6 and 40 ± 8 in one bay end at 100 ± 10, unless the first is early: nobody starts
    // before the timetable says. So P(end ≤ 100) is P(first late, sum early) + P(first early,
    // second early) = 0.25 + (1/4 − arctan(6/8)/2π): the sector of a circular normal distribution
    // between the two lines.
    DayPlan plan =
        plan(
            job("a", 0, 60, 6, OptionalInt.empty(), "bay"),
            job("b", 0, 40, 8, OptionalInt.of(100), "bay"));
    double sector = (Math.PI / 2 - Math.atan2(6, 8)) / (2 * Math.PI);
    assertEquals(0.25 + sector, chances(plan).get(1), CLOSE);
  }

  @Test
  void nothingPromisedIsAlwaysKept() {
    assertEquals(List.of(1.0), chances(plan(job("a", 0, 60, 30, OptionalInt.empty(), "bay"))));
  }

  @Test
  void aCertainLengthIsKeptToTheMinute() {
    assertEquals(List.of(1.0), chances(plan(job("a", 5, 60, 0, OptionalInt.of(65), "bay"))));
    assertEquals(List.of(0.0), chances(plan(job("a", 5, 60, 0, OptionalInt.of(64), "bay"))));
  }

  @Test
  void whoWaitsForAToolWorksOnAfterwards() {
    // b needs the tool from its 30th minute on, a has it until its 30th: when a is late, so is b.
    Activity a =
        new Activity(
            "a",
            30,
            3,
            0,
            OptionalInt.empty(),
            Optional.empty(),
            List.of(Use.of("tool", 0, 30)),
            List.of());
    Activity b =
        new Activity(
            "b",
            60,
            0,
            0,
            OptionalInt.of(63),
            Optional.empty(),
            List.of(Use.of("tool", 30, 60)),
            List.of());
    DayPlan plan = new DayPlan(List.of(a, b), Map.of("tool", 1));
    assertEquals(0.8413, chances(plan).get(1), CLOSE);
  }

  @Test
  void aDelayBeforeAPauseGoesThroughWhatIsDoneInIt() {
    // 60 ± 6 with another job in the middle, from 30 to 60: nobody starts early, so with z from
    // the normal distribution it ends at 90 + 3z for z < 0 and at 90 + 6z else. Φ(0.5) = 0.6915.
    List<Use> uses = List.of(Use.of("T1", 0, 30), Use.of("T1", 30, 60));
    Activity paused =
        new Activity("a", 60, 6, 0, OptionalInt.of(93), Optional.empty(), uses, List.of())
            .resting(List.of(30));
    List<Use> hers = List.of(Use.of("T1", 0, 30));
    Activity between =
        new Activity("b", 30, 0, 30, OptionalInt.of(60), Optional.empty(), hers, List.of());
    DayPlan plan = new DayPlan(List.of(paused, between), Map.of("T1", 1));
    assertEquals(0.6915, chances(plan).get(0), CLOSE);
  }

  private static List<Double> chances(DayPlan plan) {
    return PromiseChance.of(Scheduler.schedule(plan, 5), DAYS);
  }

  private static DayPlan plan(Activity... jobs) {
    return new DayPlan(List.of(jobs), Map.of("bay", 1));
  }

  private static Activity job(
      String id, int earliest, int minutes, double deviation, OptionalInt promised, String bay) {
    return new Activity(
        id,
        minutes,
        deviation,
        earliest,
        promised,
        Optional.of(bay),
        List.of(Use.of(bay, 0, minutes)),
        List.of());
  }
}
