package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.output.MadeSheet;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.wording.SheetText;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words of the demo's sheets that a technician read as something else than was meant. */
class ReadAtTheWingTest {
  private static final List<MadeSheet> ALL = DemoSheets.made(Shop.Paper.A4);

  private static SheetText text(MadeSheet made) {
    return SheetText.of(made.sheet(), "", "");
  }

  private static Stream<SheetText> texts(String job) {
    return ALL.stream()
        .filter(made -> made.sheet().heading().job().equals(job))
        .map(ReadAtTheWingTest::text);
  }

  private static Stream<SheetText.StepText> steps(Stream<SheetText> sheets) {
    return sheets
        .flatMap(sheet -> sheet.sections().stream())
        .flatMap(section -> section.steps().stream());
  }

  /** Beside "Wait" the minutes of work would be taken for the time to wait. */
  @Test
  void aStepThatWaitsHasNoMinutesBesideIt() {
    List<SheetText.StepText> waits =
        steps(ALL.stream().map(ReadAtTheWingTest::text))
            .filter(step -> step.text().startsWith("Wait "))
            .toList();
    assertEquals(2, waits.size(), "high voltage and the pressure of a coolant circuit");
    waits.forEach(step -> assertEquals("", step.minutes(), step.text()));
    assertTrue(steps(texts("2413")).anyMatch(step -> !step.minutes().isEmpty()));
  }

  @Test
  void aTimeWithEqualEndsIsOneFigure() {
    List<String> times = ALL.stream().map(made -> text(made).head().work().time()).toList();
    times.forEach(time -> assertFalse(time.matches("([0-9]+) to \\1\\D.*"), time));
    assertTrue(
        times.stream().anyMatch(time -> time.matches("[0-9]+\u00a0min.*")), times.toString());
  }

  /** W2 was calibrated on 2 March 2025, and the shop's interval is twelve months. */
  @Test
  void aWrenchSaysWhenItIsDueAndWhenItIsOverdue() {
    assertEquals(
        List.of("W2\u00a02026-03-02\u00a0(today)"),
        texts("2404").flatMap(sheet -> sheet.wrenches().stream()).toList());
    List<String> warnings =
        texts("2408")
            .flatMap(sheet -> sheet.torque().blocks().stream())
            .flatMap(block -> block.lines().stream())
            .flatMap(line -> line.warnings().stream())
            .toList();
    assertEquals(List.of("Calibration overdue: W2 was due 2026-03-02; borrow a wrench."), warnings);
  }

  @Test
  void newPartsStandOnTheSheetThatFitsThem() {
    for (String job : List.of("2401", "2408")) {
      List<Sheet> sheets =
          ALL.stream().map(MadeSheet::sheet).filter(it -> it.heading().job().equals(job)).toList();
      for (Sheet sheet : sheets) {
        boolean listed =
            sheet.equipment().parts().stream().anyMatch(it -> it.part().equals("brake disc"));
        boolean fitted =
            sheet.steps().stream()
                .flatMap(step -> step.doUp().stream())
                .anyMatch(item -> item.item().equals("brake-disc"));
        assertEquals(fitted, listed, sheet.name());
      }
    }
  }

  /** The barrier keeps others away until the qualified person has seen the ready lamp go out. */
  @Test
  void theBarrierStaysUntilTheReadyLampIsOut() {
    List<String> checks =
        ALL.stream()
            .filter(made -> made.sheet().heading().job().equals("2413"))
            .flatMap(made -> made.sheet().checks().stream())
            .map(CheckLine::name)
            .toList();
    int proved = checks.indexOf("high-voltage-back");
    assertTrue(proved >= 0, checks.toString());
    assertEquals(
        List.of("high-voltage-back", "high-voltage-off-again", "barrier-away"),
        checks.subList(proved, proved + 3));
    assertTrue(
        steps(texts("2413")).noneMatch(step -> step.text().startsWith("Remove the barrier")));
  }

  @Test
  void whatHoldsAFastenerStandsWhereItIsUndone() {
    SheetText.StepText undone =
        steps(texts("2405"))
            .filter(step -> step.text().startsWith("Remove the lower damper bolt"))
            .findFirst()
            .orElseThrow();
    List<String> details = undone.details().stream().map(SheetText.DetailText::text).toList();
    assertTrue(details.contains("hold nut: 21\u00a0mm spanner"), details.toString());
  }

  @Test
  void anElectricCarHasNoEngine() {
    texts("2413")
        .flatMap(sheet -> sheet.sections().stream())
        .forEach(section -> assertFalse(section.heading().contains("Engine"), section.heading()));
  }

  @Test
  void checksBelowAStepHaveNumbersOfTheirOwn() {
    SheetText.StepText second = steps(texts("2404")).skip(1).findFirst().orElseThrow();
    List<String> numbers = second.due().stream().map(SheetText.CheckText::n).toList();
    assertEquals(List.of("2.1", "2.2", "2.3", "2.4", "2.5"), numbers);
  }
}
