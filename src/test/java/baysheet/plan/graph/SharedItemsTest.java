package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Works that take the same things off: off once, at the first of them, and on once, at the last,
 * whatever {@code after} says of their turns.
 */
class SharedItemsTest {
  private static final SmallShop SHOP = SmallShop.empty();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[discs-and-pads at front-left, wheel-bearing at front-left]",
        "[wheel-bearing at front-left, discs-and-pads at front-left]",
        "[discs-and-pads at front, wheel-bearing at front]",
      })
  void discsFollowABearingOfTheSameCorner(String work) {
    ShopTexts demo =
        ShopTexts.of(Path.of("jobs"))
            .withBuiltIn()
            .with(
                "2026-03-02/1.yaml",
                "job: 1\nvehicle: {book: larkfell-pipit-2015}\nbay: 1\nby: T1\nwork: " + work);
    Problems problems = new Problems();
    Optional<Sheet> sheet =
        demo.resolve("2026-03-02/1.yaml", problems)
            .flatMap(resolved -> Planner.plan(resolved, problems));
    assertTrue(sheet.isPresent(), problems.all().toString());
  }

  @Test
  void whatSeveralWorksPutOnAfterLoweringGoesOnOnce() {
    List<String> steps =
        SHOP.procedure(
                "fluid",
                "at: wheel\nbehind: [roller-off]\nopen:\n"
                    + "  - {do: Fill it, undo: lid at vehicle, moment: before-lifting}\n"
                    + "  - {do: Bleed it, disturb: one}\n"
                    + "close: [{do: Shut it, do-up: lid at vehicle, moment: on-the-ground}]")
            .job("hoist", "fluid at front-left", "fluid at rear-right")
            .steps();
    assertEquals(1, steps.stream().filter(step -> step.startsWith("Fill it")).count());
    assertEquals(
        List.of("Shut it [front-left]"),
        steps.stream().filter(step -> step.startsWith("Shut it")).toList());
  }

  @Test
  void whatTheEarlierWorkLiesBehindComesOffForBoth() {
    SHOP.procedure("disc-out", "at: wheel\nbehind: [roller-off]", "Disc out", "one", "two")
        .procedure("ring", "at: wheel\nbehind: [disc-out]", "Ring", "three")
        .procedure(
            "plate",
            "at: wheel\nbehind: [roller-off]\nafter: [ring]",
            "Plate",
            "one",
            "two",
            "four")
        .job("hoist", "plate at front-left", "ring at front-left")
        .assertInOrder(
            "Disc out",
            "Ring",
            "Refit the three",
            "Plate",
            "Refit the four",
            "Refit the two",
            "Refit the one");
  }

  @Test
  void whatTheLaterWorkLiesBehindStaysOffUntilItIsDone() {
    SHOP.procedure("disc-out", "at: wheel\nbehind: [roller-off]", "Disc out", "one", "two")
        .procedure("ring", "at: wheel\nbehind: [disc-out]\nafter: [plate]", "Ring", "three")
        .procedure("plate", "at: wheel\nbehind: [roller-off]", "Plate", "one", "two", "four")
        .job("hoist", "ring at front-left", "plate at front-left")
        .assertInOrder(
            "Plate",
            "Refit the four",
            "Ring",
            "Refit the three",
            "Refit the two",
            "Refit the one");
  }

  @Test
  void twoPlainWorksWithOneItem() {
    SHOP.procedure("first", "at: wheel", "First", "one", "two")
        .procedure("second", "at: wheel\nafter: [first]", "Second", "one", "three")
        .job("hoist", "second at front-left", "first at front-left")
        .assertInOrder(
            "First", "Refit the two", "Second", "Refit the three", "Refit the one");
  }

  /** Each writer has his own order, and either is possible; so the first work's is kept. */
  @Test
  void theSameThingsInOppositeOrderComeOffInOne() {
    SHOP.procedure("up", "at: wheel\nopen: [{do: One off, undo: one}, {do: Two off, undo: two}]")
        .procedure(
            "down",
            "at: wheel\nopen: [{do: 2 off, undo: two}, {do: 1 off, undo: one}, {do: 3 off, undo: three}]")
        .job("hoist", "up at front-left", "down at front-left")
        .assertInOrder(
            "One off",
            "Two off",
            "3 off",
            "Refit the three",
            "Refit the two",
            "Refit the one");
  }

  /** Here something of its own lies between, so that only the writers know. */
  @Test
  void oppositeOrdersThatCannotBothBeKeptNameTheTwoSteps() {
    SmallShop shop =
        SHOP.procedure(
                "up", "at: wheel\nopen: [{do: One off, undo: one}, {do: Two off, undo: two}]")
            .procedure(
                "down",
                "at: wheel\nopen: [{do: 2 off, undo: two}, {do: Own off, undo: three}, {do: 1 off, undo: one}]")
            .job("hoist", "up at front-left", "down at front-left");
    Problem problem = shop.problems().get(0);
    assertEquals("order-loop", problem.code().word());
    assertEquals(1, shop.problems().size());
    assertTrue(
        problem.what().contains("\"One off\"") && problem.what().contains("\"Two off\""),
        problem.what());
    assertTrue(!problem.what().contains("Own off"), problem.what());
    assertTrue(
        problem.what().contains("up at front-left")
            && problem.what().contains("down at front-left"),
        problem.what());
    assertEquals(2, problem.related().size(), problem.related().toString());
  }

  @Test
  void worksThatFollowEachOtherNameTheTwoWords() {
    SmallShop shop =
        SHOP.procedure("hen", "at: wheel\nafter: [egg]", "Hen", "one")
            .procedure("egg", "at: wheel\nafter: [hen]", "Egg", "two")
            .job("hoist", "hen at front-left", "egg at front-left");
    assertEquals(
        List.of("order-loop"),
        shop.problems().stream().map(problem -> problem.code().word()).toList());
    String what = shop.problems().get(0).what();
    assertTrue(what.contains("hen at front-left") && what.contains("egg at front-left"), what);
  }

  /** What gives access, even through others, is opened first in any case: "after" adds nothing. */
  @Test
  void comingAfterOnesOwnAccessIsNoCircle() {
    SHOP.procedure("mid", "at: wheel\nbehind: [roller-off]", "Mid", "one")
        .procedure("deep", "at: wheel\nbehind: [mid]\nafter: [roller-off]", "Deep", "two")
        .job("hoist", "deep at front-left")
        .assertInOrder("Roller off", "Mid", "Deep", "Refit the two", "Refit the one");
  }

  /** Found by random shops: within one step the order is nobody's wish. */
  @Test
  void whatCameOffInOneStepGoesOnAsOthersWantIt() {
    SHOP.procedure("pair", "at: wheel", "Pair", "one", "two")
        .procedure("other", "at: wheel", "Other", "one", "three")
        .procedure(
            "single", "at: wheel\nopen: [{do: Two off, undo: two}, {do: Three off, undo: three}]")
        .job("hoist", "pair at front-left", "other at front-left", "single at front-left")
        .assertInOrder("Pair", "Other", "Refit the three", "Refit the two");
  }
}
