package baysheet.plan.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.TimeNeeded;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The time of steps that follow one another, against published PERT paths: the mean and two
 * standard deviations to either side, outward to whole minutes.
 */
class TimeEstimateTest {
  private static final String JOB = "2026-03-02/5.yaml";

  private static ShopTexts shop(List<String> times) {
    String steps =
        times.stream()
            .map(takes -> "  - {do: Step of " + takes + ", takes: " + takes + " min}\n")
            .collect(Collectors.joining());
    return ShopTexts.empty()
        .with(
            "shop.yaml",
            """
            shop: Mill Lane
            crib:
              wrenches: []
              sockets: []
            bays:
              1: {lift: two-post, rated: 3000 kg}
            people:
              T1: {name: R. Fenwake, grade: technician}
            """)
        .with("vehicles/heron.yaml", "vehicle: heron\nname: Heron\nsource: Heron sheet 3\n")
        .with(
            "catalogue/own.yaml",
            """
            items:
              cover: {name: cover, kinds: []}
            states:
              rusty: {likely: 1.5, possible: 1.2, source: from memory}
            """)
        .with("procedures/path.yaml", "procedure: path\ntitle: Path\nat: vehicle\nwork:\n" + steps)
        .with(
            JOB,
            """
            job: 5
            vehicle: {book: heron}
            bay: 1
            by: T1
            work:
              - path at vehicle
            """);
  }

  private static TimeNeeded time(ShopTexts shop) {
    return Planner.plan(shop.resolved(JOB), new Problems()).orElseThrow().time();
  }

  private static TimeNeeded path(String... times) {
    return time(shop(List.of(times)));
  }

  /** Mean 24, variance 5.0 (Taylor, Introduction to Management Science, path 1-3-5-7). */
  @Test
  void taylorsPathTakesTwentyFour() {
    assertEquals(new TimeNeeded(19, 24, 29, 0, 0), path("5/8/17", "3/5/7", "4/6/8", "3/4/5"));
  }

  /** Mean 50.83, variance 11.19 (fourteen activities of Heizer's type, path A-C-E-H-I-K-M-N). */
  @Test
  void thePathOfEightTakesFiftyOne() {
    assertEquals(
        new TimeNeeded(44, 51, 58, 0, 0),
        path("5/5/7", "5", "1/10/17", "4/4/6", "2/7/10", "6/10/13", "2/2/3", "7/7/12"));
  }

  /** Mean 15, variance 7.333 (Vanhoucke, path A-B-E-F). */
  @Test
  void thePathOfFourTakesFifteen() {
    assertEquals(new TimeNeeded(9, 15, 21, 0, 0), path("2/5/8", "1/2/9", "1/2/9", "1/3/11"));
  }

  @Test
  void theRangeNeverBeginsUnderTheShortestTimes() {
    // Mean 10, deviation 3: two of them reach down to 4, but it cannot go faster than 7.
    assertEquals(7, path("7/7/25").low());
  }

  @Test
  void stepsWithoutMinutesAreCountedAndNotGuessed() {
    ShopTexts shop =
        shop(List.of("5"))
            .replacing("procedures/path.yaml", "work:\n", "work:\n  - {do: Look at it}\n");
    assertEquals(new TimeNeeded(5, 5, 5, 0, 1), time(shop));
  }

  @Test
  void rustTakesItsFactorOnWhatSeizesOnly() {
    ShopTexts shop =
        shop(List.of("10", "20", "40"))
            .replacing("procedures/path.yaml", "10 min", "10 min, seizes: likely")
            .replacing("procedures/path.yaml", "20 min", "20 min, seizes: possible")
            .replacing(JOB, "by: T1", "by: T1\nstate: [rusty]");
    assertEquals(15 + 24 + 40, time(shop).mean());
  }

  @Test
  void bothSidesTakeTwiceOneSide() {
    ShopTexts shop =
        shop(List.of("6"))
            .replacing("procedures/path.yaml", "at: vehicle", "at: wheel")
            .replacing(JOB, "at vehicle", "at front");
    assertEquals(12, time(shop).mean());
  }

  /** Putting back takes the shortest time of taking off: common practice, no source. */
  @Test
  void puttingBackTakesTheShortestTimeOfTakingOff() {
    ShopTexts shop =
        shop(List.of("6"))
            .replacing(
                "procedures/path.yaml",
                "work:\n",
                "open:\n  - {do: Take it off, undo: cover, takes: 3/3/3 min}\nwork:\n");
    assertEquals(3 + 6 + 3, time(shop).mean());
  }
}
