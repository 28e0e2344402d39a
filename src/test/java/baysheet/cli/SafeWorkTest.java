package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import baysheet.books.Applicability;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.books.Procedure;
import baysheet.books.ShopFolder;
import baysheet.books.Step;
import baysheet.layout.Fonts;
import baysheet.plan.Planner;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import baysheet.wording.Samples;
import baysheet.wording.SheetText;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What could hurt somebody, looked for in every procedure of the demo shop and on its sheets:
 * common practice of the trade, no source, unless one is named.
 */
class SafeWorkTest {
  private static final ShopTexts SHOP = ShopTexts.of(Path.of("jobs")).withBuiltIn();
  private static final Pattern RELEASES =
      Pattern.compile("(?i)(release|let) the parking brake|parking brake (right )?off");
  private static final Pattern JACKS =
      Pattern.compile("(?i)^(raise|lower) the (arm with|jack)|^support the .* with a (pole )?jack");

  private static final ShopFolder FOLDER =
      new ShopFolders(Fonts.builtIn()).read(Path.of("jobs"), new Problems()).orElseThrow();

  private static Problems problems(ShopTexts shop, String job) {
    Problems problems = new Problems();
    shop.resolve(job, problems).flatMap(it -> Planner.plan(it, problems));
    return problems;
  }

  private static Sheet sheet(ShopTexts shop, String job) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = shop.resolve(job, problems);
    return resolved
        .flatMap(it -> Planner.plan(it, problems))
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }

  /** A job of the demo's first day with another vehicle, bay and work. */
  private static ShopTexts job(String book, String bay, String work) {
    return SHOP.with(
        "2026-03-02/7.yaml",
        "job: 7\nvehicle: {book: %s}\nbay: %s\nby: T1\nwork: %s\n".formatted(book, bay, work));
  }

  private static Sheet sheet(String book, String bay, String work) {
    return sheet(job(book, bay, work), "2026-03-02/7.yaml");
  }

  private static List<Step> steps(Procedure procedure) {
    return Stream.of(procedure.open(), procedure.work(), procedure.close())
        .flatMap(List::stream)
        .toList();
  }

  private static Optional<Moment> moment(Step step) {
    return step.moment().map(Located::value);
  }

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

  /** Whoever applies it then works at cables under tension, or drives a piston out by its motor. */
  @ParameterizedTest
  @CsvSource({
    "larkfell-pipit-2015, 'track-rod-end at front-left, parking-brake-cable at rear'",
    "merrowby-sprat-2022, 'track-rod-end at front-left, rear-discs-electric at rear'"
  })
  void aParkingBrakeThatAStepReleasesIsNotAppliedBeforeLifting(String book, String work) {
    Sheet sheet = sheet(book, "floor", "[" + work + "]");
    assertTrue(sheet.checks().stream().anyMatch(it -> it.name().equals("parking-brake-on")));
    assertEquals(
        List.of("Apply the parking brake"),
        sheet.checks().stream()
            .filter(it -> it.moment() == Moment.BEFORE_LIFTING)
            .map(it -> Printed.text(sheet, it.text()))
            .filter(it -> it.toLowerCase(Locale.ROOT).contains("apply the parking brake"))
            .toList());
  }

  /** Service mode first, its caution, and its end before the car moves. */
  @ParameterizedTest
  @CsvSource({"rear-discs-electric at rear", "hub-unit-undriven at rear-left"})
  void anElectricParkingBrakeIsInServiceModeBeforeAnythingIsTouched(String work) {
    Sheet sheet = sheet("merrowby-sprat-2022", "1", work);
    Sheet.SheetStep mode = step(sheet, "parking-brake-released");
    assertEquals(Moment.BEFORE_LIFTING, mode.moment());
    assertTrue(
        sheet.cautions().stream().anyMatch(it -> it.name().equals("electric-parking-brake")));
    assertTrue(has(sheet, "electric-parking-brake-back", Moment.BEFORE_MOVING));
    assertTrue(has(sheet, "parking-brake-holds", Moment.ROAD_TEST));
    assertFalse(has(sheet, "parking-brake-travel", Moment.BEFORE_MOVING));
  }

  @Test
  void aBrakeCaliperOfTheFrontNeedsNoParkingBrakeAtAll() {
    Sheet sheet = sheet("merrowby-sprat-2022", "1", "discs-and-pads at front");
    assertTrue(sheet.steps().stream().noneMatch(it -> it.procedure().startsWith("parking-brake")));
    assertFalse(has(sheet, "parking-brake-holds", Moment.ROAD_TEST));
  }

  /** Nobody reaches the lever of a car that is up. */
  @Test
  void noProcedureReleasesTheParkingBrakeOnceTheCarIsUp() {
    List<String> late = new ArrayList<>();
    for (Procedure procedure : FOLDER.procedures().values()) {
      for (Step step : steps(procedure)) {
        if (RELEASES.matcher(step.text().value()).find()
            && !moment(step).equals(Optional.of(Moment.BEFORE_LIFTING))) {
          late.add(procedure.name().value() + ": " + step.text().value());
        }
      }
    }
    assertEquals(List.of(), late);
  }

  @ParameterizedTest
  @CsvSource({
    "ostervane-hod-2017, 2, hub-unit at rear-left",
    "larkfell-pipit-2015, 1, axle-bush at rear-left",
    "larkfell-pipit-2015, 1, rear-discs-cable at rear",
    "kettlow-sledge-2012, floor, drums-and-shoes at rear"
  })
  void aRearBrakeThatWasDisturbedIsTriedByLeverAndOnASlope(String book, String bay, String work) {
    Sheet sheet = sheet(book, bay, work);
    assertEquals(Moment.BEFORE_LIFTING, step(sheet, "parking-brake-off").moment());
    assertTrue(has(sheet, "parking-brake-travel", Moment.BEFORE_MOVING));
    assertTrue(has(sheet, "parking-brake-holds", Moment.ROAD_TEST));
  }

  /** Under load the nut of the cable cannot be turned safely, and the shoes stay spread. */
  @Test
  void theBrakeIsReleasedBeforeItsCableIsSlackened() {
    Sheet sheet = sheet(SHOP, "2026-03-03/2411.yaml");
    int released = step(sheet, "parking-brake-off").n();
    assertTrue(released < step(sheet, "parking-brake-set").n(), "released in step " + released);
  }

  /**
   * Ended in service mode while the caliper is open, the motor closes on nothing, or on fingers.
   */
  @Test
  void serviceModeEndsOnlyOnTheGround() {
    Sheet sheet = sheet("merrowby-sprat-2022", "1", "rear-discs-electric at rear");
    sheet.steps().stream()
        .filter(
            it ->
                Printed.text(it)
                    .toLowerCase(java.util.Locale.ROOT)
                    .contains("back from service mode"))
        .forEach(it -> assertTrue(it.moment().compareTo(Moment.ON_THE_GROUND) >= 0, it.toString()));
    List<String> checks = sheet.checks().stream().map(CheckLine::name).toList();
    assertTrue(
        checks.indexOf("pedal-firm") < checks.indexOf("electric-parking-brake-back"),
        checks.toString());
  }

  @Test
  void openedHydraulicsBringThePedalWithEngineRunningAndTheLamp() {
    Sheet sheet = sheet("larkfell-pipit-2015", "1", "brake-hose at front");
    for (String check : List.of("pedal-holds", "pedal-engine-running", "brake-lamp")) {
      assertTrue(has(sheet, check, Moment.BEFORE_MOVING), check);
    }
    assertTrue(sheet.cautions().stream().anyMatch(it -> it.name().equals("exhaust-gas")));
  }

  /** A jack under an arm can lift the car off what carries it. */
  @Test
  void whereverAPartIsJackedTheCarMustStayOnItsPadsOrStands() {
    List<String> without = new ArrayList<>();
    for (Procedure procedure : FOLDER.procedures().values()) {
      for (Step step : steps(procedure)) {
        boolean jacks =
            JACKS.matcher(step.text().value()).find()
                || step.uses().stream()
                    .anyMatch(it -> it.value().name().matches("supporting jack.*|pole jack"));
        boolean warned =
            step.hazards().stream().anyMatch(it -> it.value().equals("jacked-part"))
                || step.disturb().stream().anyMatch(it -> isJacked(it.value()));
        if (jacks && !warned) {
          without.add(procedure.name().value() + ": " + step.text().value());
        }
      }
    }
    assertEquals(List.of(), without);
  }

  private static boolean isJacked(String item) {
    return FOLDER.catalogue().items().get(item).kinds().stream()
        .anyMatch(kind -> kind.value().equals("jacked"));
  }

  @ParameterizedTest
  @CsvSource({"2026-03-02/2402.yaml", "2026-03-02/2406.yaml", "2026-03-03/2412.yaml"})
  void theStepThatJacksAnArmHasTheLetter(String job) {
    Sheet sheet = sheet(SHOP, job);
    CautionLine caution =
        sheet.cautions().stream()
            .filter(it -> it.name().equals("jacked-part"))
            .findFirst()
            .orElseThrow();
    List<Sheet.SheetStep> jacking =
        sheet.steps().stream().filter(it -> Printed.text(it).startsWith("Raise the arm")).toList();
    assertFalse(jacking.isEmpty());
    jacking.forEach(it -> assertTrue(it.letters().all().contains(caution.letter()), it.toString()));
  }

  /** 2412 is on a lift; only its last part is on blocks. */
  @Test
  void theCautionAboutStandsHoldsFromTheStepAtWhichTheyAreUsed() {
    SheetText text = Samples.text(sheet(SHOP, "2026-03-03/2412.yaml"));
    SheetText.CautionText stands =
        text.cautions().stream()
            .filter(it -> it.command().contains("stands"))
            .findFirst()
            .orElseThrow();
    int from = Integer.parseInt(stands.from().replaceAll("\\D", ""));
    SheetText.StepText first =
        text.sections().stream()
            .flatMap(section -> section.steps().stream())
            .filter(step -> step.text().contains("push a solid block under each wheel"))
            .findFirst()
            .orElseThrow();
    assertEquals(first.n(), String.valueOf(from));
    assertTrue(first.letters().contains(stands.letter()), first.letters());
  }

  /** The wheels are chocked, and who jacks knows what a jack does not hold, before it goes up. */
  @Test
  void whatRaisingIsWarnedOfStandsBeforeTheVehicleLeavesTheGround() {
    Sheet sheet = sheet(SHOP, "2026-03-02/2402.yaml");
    Sheet.SheetStep chock =
        sheet.steps().stream()
            .filter(it -> it.procedure().equals("raise-jack") && it.phase() == Sheet.Phase.OPEN)
            .findFirst()
            .orElseThrow();
    assertTrue(Printed.text(chock).startsWith("Chock"), chock.toString());
    assertEquals(List.of(), chock.undo());
    for (String name : List.of("vehicle-support", "roll-away")) {
      CautionLine caution =
          sheet.cautions().stream().filter(it -> it.name().equals(name)).findFirst().orElseThrow();
      assertEquals(chock.n(), caution.steps().get(0), caution.toString());
      assertTrue(chock.letters().all().contains(caution.letter()), chock.toString());
    }
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
  void leftAndRightPiecesAreToldApart() {
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
    assertEquals("badly rusted", Samples.text(sheet(shop, "2026-03-02/7.yaml")).head().state());
  }

  /** The first step of a procedure, or of a check. */
  private static Sheet.SheetStep step(Sheet sheet, String procedure) {
    return sheet.steps().stream()
        .filter(it -> it.procedure().equals(procedure))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no step of " + procedure));
  }

  private static boolean has(Sheet sheet, String check, Moment moment) {
    return sheet.checks().stream()
        .anyMatch((CheckLine it) -> it.name().equals(check) && it.moment() == moment);
  }
}
