package baysheet.cli;

import static baysheet.cli.DemoWork.FOLDER;
import static baysheet.cli.DemoWork.SHOP;
import static baysheet.cli.DemoWork.has;
import static baysheet.cli.DemoWork.moment;
import static baysheet.cli.DemoWork.sheet;
import static baysheet.cli.DemoWork.step;
import static baysheet.cli.DemoWork.steps;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Procedure;
import baysheet.books.Step;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The parking brake in every procedure of the demo shop and on its sheets: common practice of the
 * trade, no source.
 */
class ParkingBrakeWorkTest {
  private static final Pattern RELEASES =
      Pattern.compile("(?i)(release|let) the parking brake|parking brake (right )?off");

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

  /** An engine that ran on the ground had the brake applied; it still holds before the blocks. */
  @ParameterizedTest
  @CsvSource({"damper at rear", "axle-bush at rear-left"})
  void aBrakeThatIsAppliedIsNotAppliedAnewBeforeTheVehicleGoesOnBlocks(String work) {
    Sheet sheet = sheet("larkfell-pipit-2015", "1", "[oil-service at engine, " + work + "]");
    List<String> ids = sheet.steps().stream().map(it -> it.source().id()).toList();
    assertTrue(ids.contains("blocks/lower-onto"), ids.toString());
    assertTrue(ids.contains("check/engine-run-brake"), ids.toString());
    assertFalse(ids.contains("blocks/apply-brake"), ids.toString());
  }

  /** Service mode first, its caution, and its end before the car moves. */
  @ParameterizedTest
  @CsvSource({"rear-discs-electric at rear", "hub-unit-undriven at rear-left"})
  void anElectricParkingBrakeIsInServiceModeBeforeAnythingIsTouched(String work) {
    Sheet sheet = sheet("merrowby-sprat-2022", "1", work);
    Sheet.SheetStep mode = step(sheet, "parking-brake-released");
    assertEquals(Moment.BEFORE_LIFTING, mode.moment());
    assertTrue(
        sheet.safety().cautions().stream()
            .anyMatch(it -> it.name().equals("electric-parking-brake")));
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
        .filter(it -> Printed.text(it).toLowerCase(Locale.ROOT).contains("back from service mode"))
        .forEach(it -> assertTrue(it.moment().compareTo(Moment.ON_THE_GROUND) >= 0, it.toString()));
    List<String> checks = sheet.checks().stream().map(CheckLine::name).toList();
    assertTrue(
        checks.indexOf("pedal-firm") < checks.indexOf("electric-parking-brake-back"),
        checks.toString());
  }
}
