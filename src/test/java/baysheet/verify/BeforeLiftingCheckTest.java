package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Moment;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is due before an end of the vehicle goes up, and that nobody forgets to ask for it. */
class BeforeLiftingCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              consequences:
                clear: {when: {kind: support}, check: Is the bay clear, moment: before-lifting, source: us}
                roof: {when: {kind: support}, check: Is the roof clear, moment: before-lifting, source: us}
                level: {when: {kind: support}, check: Is it level, moment: on-the-ground, source: us}
                looked: {when: {undo: one}, check: Look at it, moment: on-the-ground, source: us}
              """)
          .jacked()
          .procedure(
              "near",
              """
              at: wheel
              behind: [raise]
              open:
                - {do: Release it, disturb: four, moment: before-lifting}
                - {do: Work, undo: one}
              """)
          .procedure(
              "measured",
              """
              at: wheel
              behind: [raise]
              open:
                - {do: Measure it, measure: height, moment: before-lifting}
                - {do: Work too, undo: two}
              """)
          .procedure("pulled", "at: axle\nopen: [{do: Pull it, undo: lid, moment: before-lifting}]")
          .procedure("lidded", "at: vehicle", "Lid off", "lid")
          .procedure(
              "capped",
              "at: vehicle\nbehind: [lidded]\nopen: [{do: Cap it, disturb: two, moment: before-lifting}]")
          .procedure("deep", "at: wheel\nbehind: [pulled, raise]", "Deep", "two")
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "three");

  private static final SmallShop ENDS =
      SHOP.job("floor", "near at front-left", "near at rear-left");
  private static final SmallShop BOTH = SHOP.job("floor", "near at front-left", "below at vehicle");

  private static final String GATE = "checkpoint/before-lifting ";

  private static String otherEnd(int step, int raising) {
    return "step %d is for another end than step %d raises first".formatted(step, raising);
  }

  private static String due(int step, int raising) {
    return "step %d is due before step %d raises the vehicle".formatted(step, raising);
  }

  private static String unasked(int raising) {
    return "nobody is asked for \"Is the bay clear\" before step %d raises the vehicle"
        .formatted(raising);
  }

  @Test
  void whatIsReleasedForOneEndIsNotReleasedBeforeTheOtherGoesUp() {
    Spoiled.of(ENDS).before("Jack it up [front]", "Release it [rear-left]").says(otherEnd(10, 4));
    Spoiled.of(ENDS)
        .before("Work [front-left]", "Release it [rear-left]")
        .saysNothingOf("for another end");
  }

  @Test
  void whatIsDueBeforeAnEndGoesUpIsNotDoneOnceItIsUp() {
    Spoiled late = Spoiled.of(ENDS).behind("Jack it up [rear]", "Release it [rear-left]");
    late.says(due(10, 12));
    late.saysNothingOf("before step 4 raises");
    Spoiled.of(ENDS).behind("Jack it up [front]", "Release it [front-left]").says(due(2, 4));
  }

  /** What gives access to work at an end is for that end, too. */
  @Test
  void whatGivesAccessIsForTheEndOfTheWorkBehindIt() {
    SmallShop shop = SHOP.job("floor", "near at front-left", "deep at rear-left");
    Spoiled.of(shop).before("Jack it up [front]", "Pull it [rear]").says(otherEnd(10, 4));
    Spoiled.of(shop).behind("Jack it up [rear]", "Pull it [rear]").says(due(10, 12));
  }

  /** A figure that is written down is taken while both ends are down, whichever goes up first. */
  @Test
  void whatIsMeasuredIsMeasuredBeforeEitherEndGoesUp() {
    SmallShop shop = SHOP.job("floor", "measured at front-left", "measured at rear-left");
    Spoiled late = Spoiled.of(shop).behind("Jack it up [front]", "Measure it [rear-left]");
    late.says(due(3, 5));
    late.saysNothingOf("for another end");
  }

  @Test
  void bothEndsMayBePreparedWhereBothAreUpAtOnce() {
    SmallShop shop =
        SHOP.job("floor", "below at vehicle", "near at front-left", "near at rear-left");
    Spoiled.of(shop)
        .before("Jack it up [front]", "Release it [rear-left]")
        .saysNothingOf("for another end");
  }

  @Test
  void nobodyRaisesAnEndWithoutTheChecksForIt() {
    List<CheckLine> checks = ENDS.sheet().checks();
    Spoiled.of(ENDS).without(GATE + "[front]").says(unasked(4));
    Spoiled.of(ENDS).without(GATE + "[rear]").says(unasked(12));
    for (CheckLine check : checks) {
      if (check.name().equals("clear")) {
        List<CheckLine> others = checks.stream().filter(it -> !it.equals(check)).toList();
        Spoiled.of(ENDS).sheet("checks", others).says(unasked(check.because().get(0)));
      }
    }
  }

  @Test
  void askedOnceTheEndIsUpIsAskedTooLate() {
    Spoiled.of(ENDS).behind("Jack it up [rear]", GATE + "[rear]").says(unasked(12));
    Spoiled.of(ENDS).with(GATE + "[rear]", "where.moment", Moment.RAISED).says(unasked(12));
  }

  /** It stands before the first end goes up, and only there. */
  @Test
  void oneCheckIsNotEnoughForTwoRaisingsOfAVehicleThatIsDownInBetween() {
    List<CheckLine> checks =
        ENDS.sheet().checks().stream()
            .filter(it -> it.name().equals("clear"))
            .limit(1)
            .map(it -> Altered.with(it, "because", List.of(4, 12)))
            .toList();
    Spoiled once = Spoiled.of(ENDS).sheet("checks", checks);
    once.says(unasked(12));
    once.saysNothingOf(unasked(4));
  }

  @Test
  void oneCheckIsEnoughWhereTheSecondEndGoesUpWhileTheFirstIs() {
    List<CheckLine> checks =
        BOTH.sheet().checks().stream().filter(it -> it.name().equals("clear")).toList();
    assertEquals(List.of(List.of(4, 7)), checks.stream().map(CheckLine::because).toList());
    Spoiled unasked = Spoiled.of(BOTH).without(GATE);
    unasked.says(unasked(4));
    unasked.says(unasked(7));
  }

  /** A check for another moment is for no raising. */
  @Test
  void aCheckOnTheGroundIsNotMissedBeforeLifting() {
    Spoiled.of(ENDS).without(GATE + "[front]").saysNothingOf("Look at it");
  }

  @Test
  void whatIsForNoEndIsDoneBeforeAnyGoesUp() {
    SmallShop shop = SHOP.job("floor", "near at front-left", "capped at vehicle");
    int n = Spoiled.of(shop).step("Cap it").n();
    int raising = Spoiled.of(shop).step("Jack it up").n();
    Spoiled.of(shop).behind("Jack it up [front]", "Cap it").says(due(n, raising));
  }

  @Test
  void askedWhileTheOtherEndIsStillUpIsAskedTooEarly() {
    Spoiled.of(ENDS).before("Let it down [front]", GATE + "[rear]").says(unasked(12));
  }
}
