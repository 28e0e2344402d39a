package baysheet.cli;

import static baysheet.cli.DemoWork.FOLDER;
import static baysheet.cli.DemoWork.SHOP;
import static baysheet.cli.DemoWork.has;
import static baysheet.cli.DemoWork.job;
import static baysheet.cli.DemoWork.problems;
import static baysheet.cli.DemoWork.sheet;
import static baysheet.cli.DemoWork.step;
import static baysheet.cli.DemoWork.steps;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import baysheet.books.Applicability;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import baysheet.wording.Samples;
import baysheet.wording.SheetText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What could hurt somebody, looked for in every procedure of the demo shop and on its sheets:
 * common practice of the trade, no source, unless one is named.
 */
class SafeWorkTest {
  private static final Pattern JACKS =
      Pattern.compile("(?i)^(raise|lower) the (arm with|jack)|^support the .* with a (pole )?jack");

  @ParameterizedTest
  @CsvSource({
    "merrowby-sprat-2022, discs-and-pads at rear, rear-discs-electric",
    "larkfell-pipit-2015, discs-and-pads at rear, rear-discs-cable",
    "kettlow-sledge-2012, discs-and-pads at rear, drums-and-shoes",
    "larkfell-pipit-2015, rear-discs-electric at rear, electric-parking-brake",
    "merrowby-sprat-2022, parking-brake-cable at rear, scan tool",
    "merrowby-sprat-2022, oil-service at engine, electric",
    "ostervane-hod-2017, hub-unit at front, hub-unit-undriven",
    "larkfell-pipit-2015, hub-unit-undriven at front, hub-unit"
  })
  void whatDoesNotSuitTheCarIsRefusedWithWhatToUseInstead(
      String book, String work, String instead) {
    List<Problem> problems = problems(job(book, "1", work), "2026-03-02/7.yaml").all();
    assertEquals(1, problems.size(), problems.toString());
    assertEquals("not-for-this-vehicle", problems.get(0).code().toString());
    assertTrue(problems.get(0).toString().contains(instead), problems.toString());
  }

  /** A procedure to use instead that is refused as well sends people round in a circle. */
  @Test
  void whatIsToBeUsedInsteadIsNotRefusedForTheSameTraits() {
    for (Procedure procedure : FOLDER.procedures().values()) {
      List<String> needed =
          procedure.applicability().onlyWith().stream()
              .flatMap(need -> need.value().anyOf().stream())
              .toList();
      for (Applicability.Exclusion excluded : procedure.applicability().notWith()) {
        excluded
            .procedure()
            .map(instead -> FOLDER.procedures().get(instead.value()))
            .ifPresent(
                instead ->
                    instead.applicability().notWith().stream()
                        .filter(it -> isAt(it, excluded, procedure))
                        .map(it -> it.trait().value())
                        .filter(it -> it.equals(excluded.trait().value()) || needed.contains(it))
                        .forEach(it -> fail(procedure.name().value() + ": " + it)));
      }
    }
  }

  /** Whether a procedure excludes a trait where another one sends people to it. */
  private static boolean isAt(
      Applicability.Exclusion it, Applicability.Exclusion sending, Procedure from) {
    Optional<Place> where =
        sending.at().or(() -> from.applicability().onlyAt().map(Located::value));
    return it.at().isEmpty() || where.isEmpty() || it.at().equals(where);
  }

  @Test
  void openedHydraulicsBringThePedalWithEngineRunningAndTheLamp() {
    Sheet sheet = sheet("larkfell-pipit-2015", "1", "brake-hose at front");
    for (String check : List.of("pedal-holds", "pedal-engine-running", "brake-lamp")) {
      assertTrue(has(sheet, check, Moment.BEFORE_MOVING), check);
    }
    assertTrue(sheet.safety().cautions().stream().anyMatch(it -> it.name().equals("exhaust-gas")));
  }

  /** A jack under an arm can lift the car off what carries it. */
  @Test
  void whereverAPartIsJackedTheCarMustStayOnItsPadsOrStands() {
    List<String> without = new ArrayList<>();
    for (Procedure procedure : FOLDER.procedures().values()) {
      for (Step step : steps(procedure)) {
        boolean jacks =
            JACKS.matcher(step.text().value()).find()
                || step.demands().uses().stream()
                    .anyMatch(it -> it.value().name().matches("supporting jack.*|pole jack"));
        boolean warned =
            step.demands().hazards().stream().anyMatch(it -> it.value().equals("jacked-part"))
                || step.touched().disturb().stream().anyMatch(it -> isJacked(it.value()));
        if (jacks && !warned) {
          without.add(procedure.name().value() + ": " + step.text().value());
        }
      }
    }
    assertEquals(List.of(), without);
  }

  private static boolean isJacked(String item) {
    return FOLDER.catalogue().items().get(Step.withoutPlace(item)).kinds().stream()
        .anyMatch(kind -> kind.value().equals("jacked"));
  }

  @ParameterizedTest
  @CsvSource({"2026-03-02/2402.yaml", "2026-03-02/2406.yaml", "2026-03-03/2412.yaml"})
  void theStepThatJacksAnArmHasTheLetter(String job) {
    Sheet sheet = sheet(SHOP, job);
    CautionLine caution =
        sheet.safety().cautions().stream()
            .filter(it -> it.name().equals("jacked-part"))
            .findFirst()
            .orElseThrow();
    List<Sheet.SheetStep> jacking =
        sheet.steps().stream().filter(it -> Printed.text(it).startsWith("Raise the arm")).toList();
    assertFalse(jacking.isEmpty());
    jacking.forEach(it -> assertTrue(it.letters().all().contains(caution.letter()), it.toString()));
  }

  /** Blocks below a lift need no jack, so nothing is said of one. */
  @Test
  void onlyWhoJacksAVehicleIsWarnedOfAJack() {
    for (String job : List.of("2026-03-02/2405", "2026-03-03/2412")) {
      List<CautionLine> cautions = sheet(SHOP, job + ".yaml").safety().cautions();
      assertEquals(
          job.endsWith("2405"),
          cautions.stream().anyMatch(it -> it.name().equals("vehicle-support")),
          job);
    }
  }

  /** The wheels are chocked, and who jacks knows what a jack does not hold, before it goes up. */
  @Test
  void whatRaisingIsWarnedOfStandsBeforeTheVehicleLeavesTheGround() {
    Sheet sheet = sheet(SHOP, "2026-03-02/2402.yaml");
    Sheet.SheetStep chock =
        sheet.steps().stream()
            .filter(it -> Printed.text(it).startsWith("Chock"))
            .findFirst()
            .orElseThrow();
    Sheet.SheetStep jack =
        sheet.steps().stream()
            .filter(it -> it.procedure().equals("raise-jack") && it.phase() == Sheet.Phase.OPEN)
            .findFirst()
            .orElseThrow();
    assertTrue(chock.n() < jack.n());
    Map.of("roll-away", chock, "vehicle-support", jack)
        .forEach(
            (name, step) -> {
              CautionLine caution =
                  sheet.safety().cautions().stream()
                      .filter(it -> it.name().equals(name))
                      .findFirst()
                      .orElseThrow();
              assertEquals(step.n(), caution.steps().get(0), caution.toString());
              assertTrue(step.letters().all().contains(caution.letter()), step.toString());
            });
  }

  @Test
  void theDampersOfAnAxleAreComparedBeforeTheWheelsAreOn() {
    Sheet sheet = sheet(SHOP, "2026-03-02/2405.yaml");
    int compared = step(sheet, "damper-pair").n();
    int wheels =
        sheet.steps().stream()
            .filter(it -> isWheel(it))
            .mapToInt(Sheet.SheetStep::n)
            .min()
            .orElseThrow();
    assertTrue(compared < wheels, compared + " " + wheels);
  }

  private static boolean isWheel(Sheet.SheetStep step) {
    return step.doUp().stream().anyMatch(item -> item.item().equals("wheel"));
  }

  /**
   * A CAUTION keeps what it can do to somebody wherever it stands (ANSI Z535.6: who, what, how).
   */
  @Test
  void aCautionInTheSharedLineKeepsItsWordAndItsConsequence() {
    int cautions = 0;
    for (String job : SHOP.jobs()) {
      for (SheetText.CautionText it : Samples.text(sheet(SHOP, job)).also()) {
        assertEquals(it.signal().equals("NOTICE"), it.why().isEmpty(), job + " " + it);
        cautions += it.signal().equals("CAUTION") ? 1 : 0;
      }
    }
    assertTrue(cautions > 0);
  }

  @Test
  void aStepBeforeLiftingSaysWhere() {
    SheetText.SectionText early =
        Samples.text(sheet(SHOP, "2026-03-03/2412.yaml")).sections().get(0);
    assertEquals("Before lifting", early.heading());
    assertEquals("Rear left", early.steps().get(0).place());
  }

  @Test
  void leftAndRightPiecesAreDistinguished() {
    Sheet both =
        sheet("larkfell-pipit-2015", "1", "[lower-arm at front-left, damper at rear-right]");
    SheetText text = Samples.text(both);
    assertTrue(
        text.parts().stream()
            .anyMatch(
                it ->
                    it.part().startsWith("lower suspension arm")
                        && it.label().equals("front left")),
        text.parts().toString());
    assertTrue(
        text.tally().lines().stream()
            .filter(it -> it.words().equals("Wheel"))
            .map(SheetText.TallyLineText::places)
            .toList()
            .containsAll(List.of("front left", "rear right")),
        text.tally().toString());
  }

  @Test
  void aStateIsPrintedInWords() {
    ShopTexts shop =
        job("larkfell-pipit-2015", "1", "anti-roll-bar-link at front")
            .replacing("2026-03-02/7.yaml", "by: T1", "by: T1\nstate: [badly-rusted]");
    assertEquals(
        "badly rusted", Samples.text(sheet(shop, "2026-03-02/7.yaml")).head().vehicle().state());
  }
}
