package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Shop;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.output.MadeSheet;
import baysheet.pdf.PdfWriter;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.wording.Printed;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What technicians stumbled over when they read the sheets of the demo days. */
class DemoOnPaperTest {
  private static final PdfWriter WRITER = new PdfWriter();
  private static final List<MadeSheet> ALL = DemoSheets.made(Shop.Paper.A4);
  private static final List<Sheet> WHOLE = DemoSheets.wholes();

  @TempDir private Path folder;

  private static MadeSheet made(String job) {
    return ALL.stream()
        .filter(sheet -> sheet.sheet().heading().job().equals(job))
        .findFirst()
        .orElseThrow();
  }

  private static Sheet sheet(String job) {
    return WHOLE.stream()
        .filter(sheet -> sheet.heading().job().equals(job))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatTheWheelCoversIsNotSoakedTheEveningBefore() {
    assertFalse(Printed.evening(sheet("2411")).toString().contains("locating screw"));
  }

  @Test
  void leverTravelIsSetAtANutThatHasNoTorque() {
    Sheet drums = sheet("2411");
    assertTrue(drums.torque().stream().noneMatch(it -> it.fastener().equals("cable-adjuster-nut")));
    int setting = first(drums, step -> step.doUp().toString().contains("cable-adjuster-nut"));
    assertTrue(setting > last(drums, step -> step.procedure().equals("drums-and-shoes")));
    assertEquals(
        List.of("maker's lever travel, clicks", "lever travel, clicks"),
        Printed.texts(drums, drums.steps().get(setting - 1).entries()));
  }

  @Test
  void dustIsWarnedOfAtTheFirstStepThatLetsItOut() {
    for (String job : List.of("2401", "2408")) {
      lettered(
          job,
          "brake-dust",
          step -> Printed.text(step).startsWith("Remove the caliper guide bolts"));
    }
  }

  @Test
  void aLongPullIsWarnedOfWhenTheDriveNutGoesOnToo() {
    lettered(
        "2403", "break-loose", step -> Printed.text(step).startsWith("Tighten the new hub nut"));
  }

  @Test
  void whoLiftsAHeavyWheelAloneIsBookedHelpAndWarnedBothTimes() {
    assertTrue(
        Printed.evening(sheet("2414"))
            .contains("Book a second person or a hoist for the heavy parts"));
    lettered(
        "2414",
        "heavy-part",
        step ->
            Printed.text(step).startsWith("Lift the wheel")
                || Printed.text(step).startsWith("Refit the wheel"));
  }

  @Test
  void wherePeopleSignAsSecondTheyLookBeforeTheCarMoves() {
    for (Sheet sheet : WHOLE) {
      List<CheckLine> looks =
          sheet.checks().stream().filter(check -> check.name().equals("second-look")).toList();
      assertEquals(1, looks.size(), sheet.heading().job());
      assertTrue(looks.get(0).hold() && looks.get(0).moment() == Moment.BEFORE_MOVING);
    }
  }

  @Test
  void highVoltageIsSeenOnOnceAllThatLightsLampsIsDone() {
    List<String> checks = sheet("2413").checks().stream().map(CheckLine::name).toList();
    assertTrue(checks.indexOf("high-voltage-back") > checks.indexOf("battery-back"));
    assertTrue(checks.indexOf("high-voltage-back") > checks.indexOf("coolant-bled-electric"));
  }

  @Test
  void onARustyCarWaysOutStayBesideTheirWarnings() {
    List<MadeSheet> rusty =
        ALL.stream().filter(made -> !made.sheet().heading().vehicle().state().isEmpty()).toList();
    assertTrue(rusty.size() >= 7, "seven jobs are on such cars");
    assertEquals(List.of(), rusty.stream().filter(DemoOnPaperTest::losesWaysOut).toList());
  }

  private static boolean losesWaysOut(MadeSheet made) {
    return made.fit().dropped().contains("if-seized");
  }

  /**
   * Rust is why they are wanted: the job takes a sheet more, whether its file asks for it or not.
   */
  @Test
  void aRustyCarTakesOneSheetMoreRatherThanLoseItsWaysOut() {
    List<MadeSheet> made =
        CopyOfTheDemo.in(folder).replacing("2026-03-02/2403.yaml", "stages: 3\n", "").made("2403");
    assertEquals(3, made.size());
    assertEquals(List.of(), made.stream().filter(DemoOnPaperTest::losesWaysOut).toList());
  }

  /** What a figure is held against, and when a raised vehicle stands firmly, is no remark. */
  @Test
  void limitsStayWhateverElseLeaves() {
    List<MadeSheet> full =
        ALL.stream().filter(made -> made.fit().dropped().contains("ok-if")).toList();
    assertFalse(full.isEmpty());
    for (MadeSheet made : full) {
      String page = words(made.page());
      for (Sheet.Section section : made.sheet().sections()) {
        for (Sheet.SheetStep step : section.steps()) {
          boolean limit = !step.entries().isEmpty() || section.title() == Sheet.Title.RAISE;
          step.teaching()
              .good()
              .filter(good -> limit || step.hold())
              .map(good -> Printed.text(made.sheet(), good))
              .ifPresent(
                  good ->
                      assertTrue(page.contains(unspaced(good)), made.sheet().name() + ": " + good));
        }
      }
    }
  }

  private static String words(Page page) {
    return unspaced(
        page.items().stream()
            .map(item -> item instanceof Item.Glyphs glyphs ? glyphs.text() : "")
            .collect(Collectors.joining()));
  }

  private static String unspaced(String text) {
    return text.replaceAll("[\\s\u00a0]", "");
  }

  /** Each brake is closed with the pedal held down before the next one is opened. */
  /** One stroke of the pedal pushes out little: it is repeated with the screw closed between. */
  private static final List<String> BLEEDING =
      List.of(
          "brake-bleed-hose",
          "brake-bleed-press",
          "brake-bleed-open",
          "brake-bleed-closed",
          "brake-bleed-release",
          "brake-bleed",
          "brake-bleed-hose-off");

  @Test
  void aBleedScrewIsTorquedAtItsBrakeBeforeTheNextIsOpened() {
    Sheet hoses = sheet("2409");
    int start = first(hoses, step -> Printed.text(step).contains("Push the bleed hose onto"));
    int bleeding = start + BLEEDING.size() - 1;
    assertEquals(
        BLEEDING,
        hoses.steps().subList(start - 1, bleeding).stream().map(step -> step.procedure()).toList());
    Sheet.SheetStep closing = hoses.steps().get(bleeding);
    assertTrue(closing.doUp().toString().contains("bleed-screw"), closing.toString());
    assertEquals(1, closing.torque().size());
    assertTrue(
        hoses.sections().stream()
            .flatMap(section -> section.oneSideFirst().stream())
            .anyMatch(side -> side.first() <= start && bleeding < side.last()));
  }

  @Test
  void theLoadSaysWhatIsOnBoard() {
    assertTrue(
        details("2411").contains("load on each stand 460 kg of 2000 kg, with 90 kg on board"));
    assertTrue(details("2407").contains("load on each stand 379 kg of 2000 kg, vehicle unloaded"));
  }

  private static String details(String job) {
    return sheet(job).steps().stream()
        .flatMap(step -> Printed.details(sheet(job), step).stream())
        .collect(Collectors.joining("; "))
        .replace('\u00a0', ' ');
  }

  /** In neither bay does anybody lie under a vehicle on the floor to soak what is seized. */
  @Test
  void whatIsSoakedIsReachedFromOutsideOrOnTheLift() {
    assertTrue(
        Printed.evening(sheet("2412"))
            .contains("Apply it from outside, or with the vehicle on the lift locks"));
    assertTrue(
        Printed.evening(sheet("2402"))
            .contains(
                "Apply it from outside only, and to the rest once the vehicle is on its axle"
                    + " stands"));
  }

  /** Of the sheets of a job, those that only work on a raised vehicle or lower it say it not. */
  @Test
  void raisingIsWarnedOfOnTheSheetsThatRaise() {
    List<String> warned =
        ALL.stream()
            .map(MadeSheet::sheet)
            .filter(
                it -> it.safety().cautions().stream().anyMatch(c -> c.name().equals("lift-pads")))
            .map(Sheet::name)
            .toList();
    assertTrue(warned.containsAll(List.of("2403-1", "2404-2", "2409-2", "2412-3", "2413-2")));
    for (String none : List.of("2403-2", "2403-3", "2406-2", "2408-3", "2409-3", "2410-2")) {
      assertFalse(warned.contains(none), none);
    }
  }

  /** Penetrating oil comes off every thread; what goes on it then is the table's to say. */
  @Test
  void noSoakedThreadIsToBeWipedDryWhateverItsTorqueIsFor() {
    List<String> soaked =
        ALL.stream()
            .flatMap(made -> Printed.evening(made.sheet()).stream())
            .filter(line -> line.startsWith("Apply penetrating oil to these threads"))
            .toList();
    assertFalse(soaked.isEmpty());
    soaked.forEach(line -> assertFalse(line.contains("dry"), line));
    for (MadeSheet made : ALL) {
      List<String> evening = Printed.evening(made.sheet());
      boolean any = evening.stream().anyMatch(soaked::contains);
      assertEquals(any, evening.contains("Before refitting, clean the oil off the threads"));
    }
  }

  @Test
  void reachingUnderOnBlocksIsNoContradiction() {
    for (String job : List.of("2402", "2405")) {
      CautionLine support = caution(sheet(job), "vehicle-support");
      assertTrue(support.command().contains("axle stands or solid blocks"), support.command());
    }
  }

  /** Disc and carrier are off by then, and a wheel may not bear on a slack hub nut. */
  @Test
  void aStuckHubNutIsNotTakenBackToTheGround() {
    List<String> ways =
        sheet("2403").steps().stream()
            .filter(step -> step.undo().toString().contains("drive-nut"))
            .flatMap(step -> step.teaching().ifStuck().stream())
            .toList();
    assertFalse(ways.isEmpty());
    assertTrue(ways.stream().noneMatch(way -> way.contains("ower the")), ways.toString());
  }

  @Test
  void theCableIsSlackBeforeTheShoesComeOffAndSetOnceThePedalWasPumped() {
    Sheet drums = sheet("2411");
    int slack = first(drums, step -> step.undo().toString().contains("cable-adjuster-nut"));
    assertTrue(slack < first(drums, step -> step.undo().toString().contains("brake-shoes")));
    int pumped = first(drums, step -> Printed.text(step).startsWith("Pump the brake pedal"));
    assertTrue(pumped > last(drums, step -> step.doUp().toString().contains("brake-drum")));
    assertTrue(
        pumped < last(drums, step -> Printed.text(step).startsWith("Turn the adjuster nut")));
  }

  /** The wheel hides them, and the work on 2401 is an apprentice's. */
  @Test
  void brakeBoltsAreSeenByASecondPersonBeforeTheWheelHidesThem() {
    for (String job : List.of("2401", "2403", "2408")) {
      List<Sheet.SheetStep> looks =
          sheet(job).steps().stream()
              .filter(step -> step.procedure().equals("brake-bolts-seen"))
              .toList();
      assertFalse(looks.isEmpty(), job);
      assertTrue(looks.stream().allMatch(Sheet.SheetStep::hold), job);
    }
  }

  /** The finished work is looked at, not the washed disc before it. */
  @Test
  void anApprenticeIsStoppedWhereThereIsMostToSee() {
    List<String> holds =
        sheet("2401").steps().stream()
            .filter(Sheet.SheetStep::hold)
            .map(Sheet.SheetStep::procedure)
            .toList();
    assertEquals(List.of("raise-lift", "brake-bolts-seen"), holds);
    // What good looks like leaves a page this full; the reasons stay.
    assertFalse(made("2401").fit().dropped().contains("reasons"));
  }

  @Test
  void bothAxlesAreJackedWhereTheirBookSaysSo() {
    for (String job : List.of("2402", "2405")) {
      String text =
          sheet(job).steps().stream()
              .map(Printed::text)
              .filter(it -> it.contains("for solid blocks"))
              .collect(Collectors.joining("; "));
      assertTrue(
          text.matches(".*raise the front axle .*\\(.+\\).*; .*raise the rear axle .*\\(.+\\).*"),
          text);
    }
  }

  @Test
  void theTrialOnTheLiftBelongsToRaising() {
    for (String job : List.of("2404", "2412", "2413")) {
      List<Sheet.SheetStep> raise =
          sheet(job).sections().stream()
              .filter(section -> section.title() == Sheet.Title.RAISE)
              .findFirst()
              .orElseThrow()
              .steps()
              .stream()
              .filter(step -> !(step.source() instanceof StepSource.Chocks))
              .toList();
      List<String> said = raise.stream().map(Printed::text).toList();
      int trial = 0;
      while (!said.get(trial).startsWith("Push the vehicle firmly")) {
        trial++;
      }
      assertFalse(raise.get(trial - 1).undo().isEmpty(), said.toString());
      assertEquals("Set the lift on its locks", said.get(said.size() - 1));
      assertEquals(
          "With nobody in or under it, raise the vehicle to working height",
          said.get(said.size() - 2));
    }
  }

  /** What goes in, where it goes in. */
  @Test
  void whatIsFilledIsNamedAtTheStep() {
    Map<String, String> fillings = Map.of("oil-filled", "2404", "coolant-filled-electric", "2413");
    fillings.forEach(
        (check, job) ->
            assertTrue(
                sheet(job).steps().stream()
                    .filter(step -> step.procedure().equals(check))
                    .anyMatch(
                        step ->
                            Printed.details(sheet(job), step).stream()
                                .anyMatch(
                                    Printed.texts(sheet(job), sheet(job).equipment().consumables())
                                        ::contains)),
                job));
  }

  /** At each step of a kind the letter of a caution. */
  private static void lettered(String job, String caution, Predicate<Sheet.SheetStep> which) {
    Sheet sheet = sheet(job);
    String letter = caution(sheet, caution).letter();
    List<Sheet.SheetStep> steps =
        sheet.steps().stream().filter(it -> it.phase() != Sheet.Phase.FINAL).filter(which).toList();
    assertFalse(steps.isEmpty());
    steps.forEach(it -> assertTrue(it.letters().all().contains(letter), job + " step " + it.n()));
  }

  private static CautionLine caution(Sheet sheet, String name) {
    return sheet.safety().cautions().stream()
        .filter(line -> line.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static int first(Sheet sheet, Predicate<Sheet.SheetStep> which) {
    return sheet.steps().stream().filter(which).findFirst().orElseThrow().n();
  }

  private static int last(Sheet sheet, Predicate<Sheet.SheetStep> which) {
    return sheet.steps().stream().filter(which).reduce((one, other) -> other).orElseThrow().n();
  }
}
