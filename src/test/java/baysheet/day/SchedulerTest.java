package baysheet.day;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.day.Activity.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SchedulerTest {
  /** Fisher and Thompson 1963, 6 jobs on 6 machines; published optimum 55. */
  private static final String FT06 =
      """
      2 1  0 3  1 6  3 7  5 3  4 6
      1 8  2 5  4 10 5 10 0 10 3 4
      2 5  3 4  5 8  0 9  1 1  4 7
      1 5  0 5  2 5  3 3  4 8  5 9
      2 9  1 3  4 5  5 4  0 3  3 1
      1 3  3 3  5 9  0 10 4 4  2 1
      """;

  /** Lawrence 1984, la01, 10 jobs on 5 machines; published optimum 666. */
  private static final String LA01 =
      """
      1 21 0 53 4 95 3 55 2 34
      0 21 3 52 4 16 2 26 1 71
      3 39 4 98 1 42 2 31 0 12
      1 77 0 55 4 79 2 66 3 77
      0 83 3 34 2 64 1 19 4 37
      1 54 2 43 4 79 0 92 3 62
      3 69 4 77 1 87 2 87 0 93
      2 38 0 60 1 41 3 24 4 83
      3 17 1 49 4 25 0 44 2 98
      4 77 3 79 2 43 1 75 0 96
      """;

  /** Documentation of a general solver library, three jobs on three machines; optimum 11. */
  private static final String THREE =
      """
      0 3 1 2 2 2
      0 2 2 1 1 4
      1 4 2 3
      """;

  @Test
  void reachesThePublishedOptimumOfTheSixBySixJobShop() {
    Timetable timetable = Scheduler.schedule(JobShop.read(FT06), 2_000);
    assertEquals(List.of(), TimetableChecker.faults(timetable));
    assertEquals(55, timetable.end());
  }

  @Test
  void reachesThePublishedOptimumOfTheTenByFiveJobShop() {
    Timetable timetable = Scheduler.schedule(JobShop.read(LA01), 1_500);
    assertEquals(List.of(), TimetableChecker.faults(timetable));
    assertEquals(666, timetable.end());
  }

  @Test
  void reachesTheOptimumOfTheThreeByThreeJobShop() {
    Timetable timetable = Scheduler.schedule(JobShop.read(THREE), 50);
    assertEquals(List.of(), TimetableChecker.faults(timetable));
    assertEquals(11, timetable.end());
  }

  @Test
  void theSamePlanGivesTheSameTimetable() {
    DayPlan plan = RandomDays.day(7);
    assertEquals(Scheduler.schedule(plan, 20), Scheduler.schedule(plan, 20));
  }

  @Test
  void aPromiseComesBeforeTheWrittenOrder() {
    DayPlan plan =
        new DayPlan(
            List.of(job("long", 60, OptionalInt.empty()), job("short", 30, OptionalInt.of(40))),
            Map.of("bay 1", 1));
    assertEquals(
        Map.of("long", 30, "short", 0), TimetableChecker.starts(Scheduler.schedule(plan, 5)));
  }

  @Test
  void theWrittenOrderStaysWhereNothingIsGainedByAnother() {
    DayPlan plan =
        new DayPlan(
            List.of(job("first", 60, OptionalInt.of(200)), job("second", 30, OptionalInt.of(200))),
            Map.of("bay 1", 1));
    assertEquals(
        Map.of("first", 0, "second", 60), TimetableChecker.starts(Scheduler.schedule(plan, 20)));
  }

  @Test
  void aScarceToolDelaysTheStartOnlyAsFarAsItsStepsAsk() {
    // Both want the one compressor from their 20th to their 30th minute.
    List<Activity> jobs = new ArrayList<>();
    for (String id : List.of("a", "b")) {
      jobs.add(
          Activity.of(
              id,
              60,
              List.of(Use.of("bay " + id, 0, 60), Use.of("compressor", 20, 30)),
              List.of()));
    }
    DayPlan plan = new DayPlan(jobs, Map.of("bay a", 1, "bay b", 1, "compressor", 1));
    Timetable timetable = Scheduler.schedule(plan, 10);
    assertEquals(70, timetable.end());
    int second = timetable.starts().get(0) == 10 ? 0 : 1;
    String first = second == 0 ? "b" : "a";
    assertEquals(
        List.of(new Wait("compressor", List.of(first), 30, 0)), Wait.of(timetable, second));
  }

  @Test
  void anotherPersonIsTakenWhereTheFirstIsBusy() {
    Use looks = new Use(List.of("T1", "T2"), 0, 10);
    DayPlan plan =
        new DayPlan(
            List.of(
                Activity.of("a", 10, List.of(looks), List.of()),
                Activity.of("b", 10, List.of(looks), List.of()),
                // The free choice is made before the bound one, and has to be taken back.
                Activity.of("c", 10, List.of(looks, Use.of("T1", 0, 10)), List.of())),
            Map.of("T1", 1, "T2", 1));
    Timetable timetable = Scheduler.schedule(plan, 10);
    assertEquals(List.of(), TimetableChecker.faults(timetable));
    assertEquals(20, timetable.end());
  }

  /** T1 is wanted elsewhere for half an hour while the car of a long job stays on its lift. */
  @Test
  void aJobInStagesLetsAPromisedOneGoBetweenAndKeepsItsBay() {
    Timetable timetable = Scheduler.schedule(withAVisitor(60, 95), 20);
    assertEquals(List.of(), TimetableChecker.faults(timetable));
    assertEquals(Map.of("long", 0, "visitor", 60), TimetableChecker.starts(timetable));
    assertEquals(List.of(30), timetable.pauses().get(0));
    assertEquals(150, timetable.end());
    assertEquals(List.of("long"), timetable.usersOf("bay 1", 75));
    assertEquals(List.of("visitor"), timetable.usersOf("T1", 75));
    assertEquals(List.of(new Wait("T1", List.of("visitor"), 90, 1)), Wait.of(timetable, 0));
  }

  @Test
  void nothingIsHandedOverWhereNothingIsGainedByIt() {
    Timetable timetable = Scheduler.schedule(withAVisitor(0, 100), 20);
    assertEquals(Map.of("long", 30, "visitor", 0), TimetableChecker.starts(timetable));
    assertEquals(150, timetable.end());
    assertTrue(timetable.pauses().get(0).stream().allMatch(pause -> pause == 0));
  }

  private static DayPlan withAVisitor(int arrives, int promised) {
    List<Use> uses = List.of(Use.of("bay 1", 0, 120), Use.of("T1", 0, 60), Use.of("T1", 60, 120));
    Activity longOne = Activity.of("long", 120, uses, List.of()).resting(List.of(60));
    Activity visitor =
        new Activity(
            "visitor",
            30,
            0,
            arrives,
            OptionalInt.of(promised),
            Optional.empty(),
            List.of(Use.of("bay 2", 0, 30), Use.of("T1", 0, 30)),
            List.of());
    return new DayPlan(List.of(longOne, visitor), Map.of("bay 1", 1, "bay 2", 1, "T1", 1));
  }

  @Test
  void whatNeverFindsItsResourcesIsSaid() {
    List<Use> twice = List.of(Use.of("T1", 0, 10), Use.of("T1", 5, 10));
    DayPlan plan = new DayPlan(List.of(Activity.of("a", 10, twice, List.of())), Map.of("T1", 1));
    String message =
        assertThrows(IllegalArgumentException.class, () -> Scheduler.schedule(plan, 1))
            .getMessage();
    assertTrue(message.startsWith("a never finds"), message);
  }

  @Property(tries = 300)
  void everyTimetableIsPossible(@ForAll long seed) {
    Timetable timetable = Scheduler.schedule(RandomDays.day(seed), 3);
    assertEquals(List.of(), TimetableChecker.faults(timetable));
  }

  /** Against every order in which five activities can be placed, each at its earliest minute. */
  @Property(tries = 100, seed = "2026")
  void noOrderOfPlacingIsBetter(@ForAll long seed) {
    DayPlan plan = RandomDays.small(seed);
    int best = Integer.MAX_VALUE;
    for (List<Integer> order : Permutations.of(plan.activities().size())) {
      best = Math.min(best, EarliestPlacing.end(plan, order));
    }
    assertEquals(best, Scheduler.schedule(plan, 2_000).end());
  }

  private static Activity job(String id, int minutes, OptionalInt promised) {
    return new Activity(
        id,
        minutes,
        0,
        0,
        promised,
        Optional.of("bay 1"),
        List.of(Use.of("bay 1", 0, minutes)),
        List.of());
  }
}
