package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.sheet.Detail;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.verify.AlteredSheets;
import baysheet.wording.Printed;
import baysheet.wording.Samples;
import baysheet.wording.SheetText;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Work at both ends of a vehicle on the floor. Wheels that stay down are chocked: so one end is
 * lowered before the other is raised, unless some work needs both up. Common practice, no source.
 */
class OneAxleAtATimeTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}")
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "two");

  @Test
  void oneEndIsDownBeforeTheOtherGoesUp() {
    assertEquals(
        List.of(
            "Jack it up [front]",
            "Deep [front-left]",
            "Refit the vehicle on its wheels [front]",
            "Jack it up [rear]",
            "Deep [rear-right]",
            "Refit the vehicle on its wheels [rear]"),
        mainSteps(SHOP.job("floor", "deep at front-left", "deep at rear-right")));
  }

  @Test
  void theEndOfTheFirstWorkComesFirst() {
    assertEquals(
        List.of(
            "Jack it up [rear]",
            "Deep [rear-right]",
            "Refit the vehicle on its wheels [rear]",
            "Jack it up [front]",
            "Deep [front-left]",
            "Refit the vehicle on its wheels [front]"),
        mainSteps(SHOP.job("floor", "deep at rear-right", "deep at front-left")));
  }

  private static List<String> mainSteps(SmallShop shop) {
    return shop.steps().stream()
        .filter(step -> step.matches("(Jack|Deep|Refit the vehicle).*"))
        .toList();
  }

  /** A wheel whose nuts are only snug carries the vehicle while the other end goes up. */
  @Test
  void wheelsAreTightBeforeTheOtherEndGoesUp() {
    SmallShop shop = SHOP.job("floor", "deep at front", "deep at rear-right");
    int tight = shop.at("Torque the roller nuts [front-left, front-right]");
    assertTrue(tight > shop.at("Refit the vehicle on its wheels [front]"));
    assertTrue(tight < shop.at("Jack it up [rear]"), shop.steps().toString());
  }

  /** Nobody tightens a bush at ride height while the other end is still to go up. */
  @Test
  void rideHeightWaitsForTheLastLowering() {
    SmallShop shop =
        SHOP.procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "deep-bolt", "one")
            .job("floor", "deep at front-left", "deep at rear-right");
    assertTrue(shop.at("Torque the deep bolt") > shop.at("Refit the vehicle on its wheels [rear]"));
  }

  @Test
  void workThatNeedsTheWholeVehicleUpSaysSoBeforeItIsJacked() {
    SmallShop shop = SHOP.job("floor", "below at vehicle");
    Sheet.SheetStep first = shop.sheet().steps().get(shop.at("Jack it up"));
    assertTrue(first.details().contains(new Detail.BothEndsUp()), first.details().toString());
    assertEquals(
        List.of("both-ends-up"),
        shop.problems().stream().map(problem -> problem.code().word()).toList());
  }

  @Test
  void onlyOneEndUpSaysNothingOfBoth() {
    SmallShop shop = SHOP.job("floor", "deep at front-left", "deep at rear-right");
    assertEquals(List.of(), shop.problems());
    assertTrue(
        shop.sheet().steps().stream()
            .noneMatch(step -> step.details().contains(new Detail.BothEndsUp())));
  }

  @Test
  void aLiftRaisesBothEndsWithoutAWord() {
    SmallShop shop = SHOP.job("hoist", "deep at front-left", "below at vehicle");
    assertEquals(List.of(), shop.problems());
  }

  @Test
  void twoStandsDoForOneEndAfterTheOther() {
    SmallShop shop = new SmallShop(SHOP.texts().replacing("shop.yaml", "count: 4", "count: 2"));
    assertEquals(
        List.of(), shop.job("floor", "deep at front-left", "deep at rear-right").problems());
    List<String> codes =
        shop.job("floor", "below at vehicle").problems().stream()
            .map(problem -> problem.code().word())
            .toList();
    assertTrue(codes.contains("no-stands"), codes.toString());
  }

  /** What is looked at once while up is so at each end, or both would have to stay up for it. */
  @Test
  void aLookForTheWholeJobIsOneAtEachEnd() {
    SmallShop shop =
        SHOP.with(
                "catalogue/more.yaml",
                """
                consequences:
                  bled: {when: {undo: one}, check: Bleed, moment: raised, step: {while-off: roller, once: yes}, source: us}
                """)
            .job("floor", "deep at front", "deep at rear");
    assertEquals(
        List.of("Bleed [front]", "Bleed [rear]"),
        shop.steps().stream().filter(step -> step.startsWith("Bleed")).toList());
    shop.assertInOrder("Jack it up [front]", "Bleed [front]", "Jack it up [rear]", "Bleed [rear]");
    assertEquals(List.of(), shop.problems());
  }

  @Test
  void bothEndsUpWithoutAWordIsAFault() {
    SmallShop shop = SHOP.job("floor", "below at vehicle");
    Sheet sheet = shop.sheet();
    assertEquals(List.of(), shop.faults(sheet));
    assertTrue(!shop.faults(AlteredSheets.withoutDetails(sheet)).isEmpty());
  }

  /** Whoever raises the second end reads what the first one read. */
  @Test
  void eachRaisingHasItsCautions() {
    SmallShop shop =
        SHOP.with(
                "catalogue/more.yaml",
                """
                cautions:
                  stands: {signal: DANGER, when: {kind: support, bay: jack}, do: Use stands, hazard: it drops, consequence: it crushes, source: us}
                  chocks: {signal: WARNING, when: {procedure: jacked}, do: Chock, hazard: it rolls, consequence: it crushes, source: us}
                """)
            .job("floor", "deep at front-left", "deep at rear-right");
    assertEquals(
        List.of(List.of("A", "B"), List.of("A", "B")),
        shop.sheet().steps().stream()
            .filter(step -> Printed.text(step).equals("Jack it up"))
            .map(step -> step.letters().all())
            .toList());
  }

  /** Work of one procedure at both ends brings its check at each. */
  @Test
  void eachPlaceOfAProcedureBringsItsCheck() {
    SmallShop shop =
        SHOP.with(
                "catalogue/more.yaml",
                """
                consequences:
                  seen: {when: {procedure: deep}, check: See it, moment: raised, step: {}, source: us}
                """)
            .job("floor", "deep at front-left", "deep at rear-right");
    shop.assertInOrder("See it [front-left]", "See it [rear-right]");
  }

  private static final SmallShop BRAKE =
      SHOP.procedure(
              "brake-off",
              "at: vehicle\n"
                  + "open: [{do: Release the brake, disturb: three, moment: before-lifting}]")
          .procedure("drum", "at: wheel\nbehind: [brake-off, roller-off]", "Drum", "one");

  /** The parking brake holds the vehicle while the front is up. Common practice, no source. */
  @Test
  void theBrakeIsReleasedForTheRearOnceTheFrontIsDown() {
    BRAKE
        .job("floor", "deep at front-left", "drum at rear-right")
        .assertInOrder(
            "Jack it up [front]",
            "Refit the vehicle on its wheels [front]",
            "Release the brake",
            "Jack it up [rear]",
            "Drum");
  }

  @Test
  void onALiftItIsReleasedBeforeAnythingGoesUp() {
    BRAKE
        .job("hoist", "deep at front-left", "drum at rear-right")
        .assertInOrder("Release the brake", "Hoist it", "Drum");
  }

  @Test
  void whereBothEndsAreUpTogetherItIsReleasedBeforeEither() {
    BRAKE
        .job("floor", "below at vehicle", "drum at rear-right")
        .assertInOrder("Release the brake", "Jack it up", "Drum");
  }

  @Test
  void aBrakeReleasedBeforeTheOtherEndGoesUpIsAFault() {
    SmallShop shop = BRAKE.job("floor", "deep at front-left", "drum at rear-right");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    steps.add(0, steps.remove(shop.at("Release the brake")));
    List<String> faults = shop.faults(AlteredSheets.inOrder(sheet, steps));
    assertTrue(
        faults.stream().anyMatch(fault -> fault.contains("is for another end than step")),
        faults.toString());
  }

  @Test
  void aBrakeReleasedOnceTheRearIsUpIsAFault() {
    SmallShop shop = BRAKE.job("floor", "drum at rear-right");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    steps.add(shop.at("Jack it up"), steps.remove(shop.at("Release the brake")));
    List<String> faults = shop.faults(AlteredSheets.inOrder(sheet, steps));
    assertTrue(
        faults.stream()
            .anyMatch(
                fault -> fault.matches("step \\d+ is due before step \\d+ raises the vehicle")),
        faults.toString());
  }

  /** A vehicle that has been up stands higher for a while: what is measured is so before. */
  @Test
  void whatIsMeasuredIsMeasuredBeforeAnyEndGoesUp() {
    SHOP.procedure(
            "measured",
            "at: wheel\nopen: [{do: Measure it, measure: height, moment: before-lifting}]")
        .procedure("bush", "at: wheel\nbehind: [measured, roller-off]", "Bush", "one")
        .job("floor", "deep at front-left", "bush at rear-right")
        .assertInOrder("Measure it", "Jack it up [front]", "Jack it up [rear]", "Bush");
  }

  private static final SmallShop ASKING =
      SHOP.with(
              "catalogue/more.yaml",
              """
              consequences:
                nobody: {when: {kind: support}, check: Nobody inside, moment: before-lifting, source: us}
                neutral: {when: {undo: one, at: rear}, check: Neutral, moment: before-lifting, source: us}
                tag: {when: {kind: wheel}, check: Tag it, moment: before-lifting, source: us}
              """)
          .job("floor", "deep at front-left", "deep at rear-right");

  /** Before each end goes up; a check of the second end waits for it, others are asked for once. */
  @Test
  void theChecksOfTheSecondEndStandBeforeItsRaising() {
    List<Integer> gates = new ArrayList<>();
    for (Sheet.SheetStep step : ASKING.sheet().steps()) {
      if (step.source() instanceof StepSource.Checkpoint) {
        gates.add(step.n());
      }
    }
    assertEquals(2, gates.size(), ASKING.steps().toString());
    assertTrue(gates.get(0) - 1 < ASKING.at("Jack it up [front]"));
    assertEquals(gates.get(1), ASKING.at("Jack it up [rear]"), ASKING.steps().toString());
    SheetText text = Samples.text(ASKING.sheet());
    assertEquals(List.of("Nobody inside", "Tag it"), dueAt(text, gates.get(0)));
    assertEquals(List.of("Nobody inside", "Neutral"), dueAt(text, gates.get(1)));
  }

  private static List<String> dueAt(SheetText text, int step) {
    return text.sections().stream()
        .flatMap(section -> section.steps().stream())
        .filter(it -> it.n().equals(String.valueOf(step)))
        .flatMap(it -> it.due().stream())
        .map(check -> check.text().replace(".", ""))
        .toList();
  }

  @Test
  void nobodyAskedBeforeTheSecondEndIsAFault() {
    Sheet sheet = ASKING.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    steps.remove(ASKING.at("Jack it up [rear]") - 1);
    List<String> faults = ASKING.faults(AlteredSheets.inOrder(sheet, steps));
    assertTrue(
        faults.stream().anyMatch(fault -> fault.contains("nobody is asked for \"Nobody inside\"")),
        faults.toString());
  }
}
