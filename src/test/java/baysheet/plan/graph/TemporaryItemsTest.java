package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import baysheet.verify.AlteredSheets;
import baysheet.wording.Printed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is put in place for the work is taken away again, before the vehicle comes down on it. */
class TemporaryItemsTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure(
              "stayed", "at: wheel\nbehind: [roller-off]\nopen: [{do: Stay in, disturb: stay}]")
          .procedure("deep", "at: wheel\nbehind: [stayed]", "Deep", "one");

  @Test
  void theItemsOwnWordsTakeItAwayWhereTheStepHasNone() {
    SHOP.job("floor", "deep at rear-left")
        .assertInOrder(
            "Jack it up",
            "Roller off",
            "Stay in",
            "Deep",
            "Refit the one",
            "Take the stay away",
            "Refit the roller",
            "Refit the vehicle");
  }

  @Test
  void anItemWithoutWordsIsTakenAwayAllTheSame() {
    SmallShop shop =
        new SmallShop(
            SHOP.texts().replacing("catalogue/own.yaml", ", back: Take the stay away", ""));
    shop.job("floor", "deep at rear-left").assertInOrder("Stay in", "Deep", "Remove the stay");
  }

  @Test
  void aStepOfTheProcedureMayTakeItAway() {
    SmallShop shop =
        SHOP.procedure(
                "stayed",
                "at: wheel\n"
                    + "behind: [roller-off]\n"
                    + "open: [{do: Stay in, disturb: stay}]\n"
                    + "close: [{do: Stay out, do-up: stay}]")
            .job("floor", "deep at rear-left");
    shop.assertInOrder("Deep", "Stay out", "Refit the roller");
    assertEquals(-1, shop.at("Take the stay away"));
  }

  @Test
  void twoWorksThatNeedItShareIt() {
    SmallShop shop =
        SHOP.procedure(
                "stayed-too",
                "at: wheel\n"
                    + "behind: [roller-off]\n"
                    + "open: [{do: Stay also, disturb: stay}, {do: Two off, undo: two}]")
            .job("floor", "deep at rear-left", "stayed-too at rear-left");
    assertEquals(
        1, shop.steps().stream().filter(step -> step.startsWith("Take the stay away")).count());
  }

  @Test
  void aJackUnderTheArmOfADemoCarIsTakenAwayByTheCataloguesWords() {
    ShopTexts demo =
        ShopTexts.of(Path.of("jobs"))
            .withBuiltIn()
            .with(
                "2026-03-02/1.yaml",
                "job: 1\n"
                    + "vehicle: {book: larkfell-pipit-2015}\n"
                    + "bay: floor\n"
                    + "by: T1\n"
                    + "work: damper at rear-left")
            .replacing(
                "procedures/arm-held-by-jack.yaml", "    back: Remove the jack from the arm\n", "");
    Problems problems = new Problems();
    Resolved resolved = demo.resolved("2026-03-02/1.yaml");
    Sheet sheet = Planner.plan(resolved, problems).orElseThrow();
    List<String> texts = sheet.steps().stream().map(Printed::text).toList();
    assertTrue(texts.contains("Remove the jack from the arm"), texts.toString());
  }

  @Test
  void comingDownOnItIsAFault() {
    SmallShop shop = SHOP.job("floor", "deep at rear-left");
    Sheet sheet = shop.sheet();
    Sheet left =
        AlteredSheets.all(sheet).get("without step " + (shop.at("Take the stay away") + 1));
    List<String> faults = shop.faults(left);
    assertTrue(
        faults.stream().anyMatch(fault -> fault.contains("stay@rear-left")), faults.toString());
  }

  /** It is brought by who does the work, so it is neither soaked nor among what came off. */
  @Test
  void itIsNoPartOfTheVehicle() {
    Sheet sheet =
        SHOP.procedure(
                "stayed",
                "at: wheel\n"
                    + "behind: [roller-off]\n"
                    + "open: [{do: Stay in, undo: two, disturb: stay, seizes: likely}]")
            .with(
                "catalogue/states.yaml",
                "states: {rusty: {likely: 2.0, possible: 1.5, source: us}}")
            .job("floor\nstate: rusty", "deep at rear-left")
            .sheet();
    assertTrue(
        Printed.evening(sheet).stream().anyMatch(line -> line.contains("seats of: two (")),
        Printed.evening(sheet).toString());
    assertTrue(
        sheet.tally().stream().noneMatch(row -> row.item().equals("stay")),
        sheet.tally().toString());
  }

  /** A misspelt or forgotten undo: nobody can put on what was never off. */
  @Test
  void puttingOnWhatNothingTakesOffIsAnError() {
    SmallShop shop =
        SHOP.procedure(
                "odd",
                "at: wheel\nopen: [{do: Odd, undo: one}]\nclose: [{do: On, do-up: [one, two]}]")
            .job("hoist", "odd at front-left");
    assertEquals(
        List.of("never-off"),
        shop.problems().stream().map(problem -> problem.code().word()).toList());
  }

  @Test
  void whatAnotherWorkOfTheJobTakesOffMayBePutOn() {
    SHOP.procedure(
            "odd",
            "at: wheel\nopen: [{do: Odd, undo: one}]\nclose: [{do: Both on, do-up: [one, two]}]")
        .procedure("other", "at: wheel\nbehind: [odd]", "Other", "two")
        .job("hoist", "other at front-left")
        .assertInOrder("Odd", "Other", "Both on");
  }
}
