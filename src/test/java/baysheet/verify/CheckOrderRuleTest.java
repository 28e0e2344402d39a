package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.Lists;
import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a check that is a step may not stand: a technician could not make it there. */
class CheckOrderRuleTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              """
              items:
                clip: {name: clip, kinds: [bush]}
              consequences:
                bled: {when: {undo: one}, check: Bleed it, moment: raised, hold: yes, needs: pressure, source: us, step: {while-off: wheel}}
                covered: {when: {kind: bush}, check: Look at the clip, moment: raised, source: us, step: {before-covered: yes}}
                filled: {when: {undo: two}, check: Fill it, moment: raised, source: us, step: {once: yes, all-back: yes, while-off: lid}}
                pressed: {when: {undo: three}, check: Press it, moment: raised, source: us, step: {once: yes, while-off: wheel}}
                felt: {when: {disturb: three}, check: Feel it, moment: raised, source: us, step: {while-off: four}}
              """)
          .procedure("rear-oil", "at: wheel\nbehind: [roller-off]", "Two off", "two")
          .procedure(
              "slackened",
              "at: vehicle\nbehind: [raise]\nopen: [{do: Four off, undo: four,"
                  + " moment: before-lifting}, {do: Two off, undo: two}]")
          .procedure("pedal", "at: wheel\nbehind: [roller-off]", "Three off", "three")
          .procedure(
              "capped",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Four off, undo: four, moment: before-lifting}
                - {do: Two off, undo: two}
              close:
                - {do: Two on, do-up: two}
                - {do: Four on, do-up: four, moment: on-the-ground}
              """)
          .procedure(
              "pair",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Four off, undo: four}
                - {do: Clip and lid off, undo: [clip, lid]}
              close:
                - {do: Lid on, do-up: lid}
                - {do: Clip on, do-up: clip}
                - {do: Four on, do-up: four}
              """)
          .procedure(
              "hose",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Lid off, undo: lid}
                - {do: One off, undo: one}
              close:
                - {do: One on, do-up: one}
                - {do: Lid on, do-up: lid}
              """)
          .procedure(
              "clips",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Lid off, undo: lid}
                - {do: Clip off, undo: clip}
              close:
                - {do: Clip on, do-up: clip}
                - {do: Lid on, do-up: lid}
              """)
          .procedure(
              "oil",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Lid off, undo: lid}
                - {do: Two off, undo: two}
              close:
                - {do: Two on, do-up: two}
                - {do: Lid on, do-up: lid}
              """)
          .procedure(
              "feeler",
              "at: wheel\nbehind: [roller-off]\nopen: [{do: Push it, disturb: three, back: Pull it}]")
          .procedure(
              "cover",
              "at: wheel\nbehind: [roller-off]\nopen: [{do: Four off, undo: four}]"
                  + "\nclose: [{do: Four on, do-up: four}]")
          .procedure(
              "late",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Two off, undo: two}
              close:
                - {do: Two on, do-up: two}
                - {do: Push it, disturb: three, moment: on-the-ground}
              """);

  private static final SmallShop HOSE = SHOP.job("hoist", "hose at front-left");

  private static List<String> faults(Sheet sheet, Resolved resolved) {
    SheetIndex printed = new SheetIndex(sheet);
    return CheckOrderRule.faults(sheet, printed, resolved, new TriggerIndex(printed, resolved));
  }

  private static List<String> faults(SmallShop shop, UnaryOperator<Sheet> change) {
    Sheet sheet = shop.sheet();
    assertEquals(List.of(), faults(sheet, shop.resolved()));
    return faults(change.apply(sheet), shop.resolved());
  }

  private static int at(List<Sheet.SheetStep> steps, String text) {
    for (int i = 0; i < steps.size(); i++) {
      if (Printed.text(steps.get(i)).equals(text)) {
        return i;
      }
    }
    throw new AssertionError(text + " in " + steps.stream().map(Printed::text).toList());
  }

  /** One step right in front of another, or right behind it. */
  private static UnaryOperator<Sheet> moved(String text, boolean before, String other) {
    return sheet -> {
      List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
      Sheet.SheetStep step = steps.remove(at(steps, text));
      steps.add(at(steps, other) + (before ? 0 : 1), step);
      return AlteredSheets.inOrder(sheet, steps);
    };
  }

  private static UnaryOperator<Sheet> altered(String text, String part, Object other) {
    return sheet -> {
      Sheet.SheetStep step = sheet.steps().get(at(sheet.steps(), text));
      return AlteredSheets.inOrder(
          sheet, Lists.replaced(sheet.steps(), step, it -> Altered.with(it, part, other)));
    };
  }

  private static UnaryOperator<Sheet> without(String text) {
    return sheet ->
        AlteredSheets.inOrder(sheet, Lists.without(sheet.steps(), at(sheet.steps(), text)));
  }

  private static UnaryOperator<Sheet> listed(String check, String part, Object other) {
    return sheet ->
        Altered.with(
            sheet,
            "checks",
            sheet.checks().stream()
                .map(it -> it.name().equals(check) ? Altered.with(it, part, other) : it)
                .toList());
  }

  private static void assertFault(List<String> faults, String pattern) {
    assertTrue(faults.stream().anyMatch(it -> it.matches(pattern)), pattern + " in " + faults);
  }

  @Test
  void theCheckIsAStep() {
    assertFault(faults(HOSE, without("Bleed it")), "no step for check bled, brought by step \\d+");
  }

  @Test
  void theListNamesTheStepsOfACheckAndTheirMoment() {
    assertFault(
        faults(HOSE, listed("bled", "steps", List.of(1))),
        "check bled is said to be steps \\[1\\], and is not");
    assertFault(
        faults(HOSE, listed("bled", "moment", Moment.ON_THE_GROUND)),
        "check bled is at another moment than step \\d+");
  }

  @Test
  void theStepSaysWhatItsRuleAsks() {
    String fault = "step \\d+ does not say what check bled asks";
    assertFault(faults(HOSE, altered("Bleed it", "hold", false)), fault);
    assertFault(faults(HOSE, altered("Bleed it", "entries", List.of())), fault);
    assertFault(
        faults(HOSE, altered("Bleed it", "source", new StepSource.Check("bled", "Shake it"))),
        fault);
  }

  @Test
  void itComesBehindWhatBringsIt() {
    assertFault(
        faults(HOSE, moved("Bleed it", true, "One off")),
        "check step \\d+ comes before step \\d+, which brings it");
  }

  @ParameterizedTest
  @CsvSource({"One on, one", "Lid on, lid"})
  void itComesBehindWhatTheWorkTookOff(String step, String item) {
    assertFault(
        faults(HOSE, moved("Bleed it", true, step)),
        "check step \\d+ comes before " + item + "@front-left is on");
  }

  @ParameterizedTest
  @CsvSource({
    "Refit the roller, roller@front-left",
    "Refit the vehicle on its wheels, feet@vehicle"
  })
  void itComesAheadOfWhatWouldHideIt(String step, String item) {
    assertFault(
        faults(HOSE, moved("Bleed it", false, step)),
        "step \\d+ puts " + item + " on before check step \\d+");
  }

  /** With one wheel back on it would be too late at that wheel, whatever is off at the other. */
  @Test
  void itIsMadeAtEachPlace() {
    SmallShop both = SHOP.job("hoist", "hose at front-left", "hose at rear-right");
    List<String> faults = faults(both, without("Bleed it"));
    assertEquals(1, faults.stream().filter(it -> it.startsWith("no step for check bled")).count());
    assertFault(
        faults(both, moved("Bleed it", false, "Refit the vehicle on its wheels")),
        "step \\d+ puts roller@.* on before check step \\d+");
  }

  /** What was taken off is looked at while nothing lies over it. */
  @Test
  void itComesBeforeWhatItLooksAtIsCovered() {
    SmallShop clips = SHOP.job("hoist", "clips at front-left");
    assertFault(
        faults(clips, moved("Look at the clip", false, "Lid on")),
        "step \\d+ covers what check step \\d+ looks at with lid@front-left");
    assertFault(
        faults(clips, moved("Look at the clip", true, "Clip on")),
        "check step \\d+ comes before clip@front-left is on");
  }

  /** One look at the end, with all of the job together but for what it needs off. */
  @Test
  void whatIsDoneOnceWaitsForTheWholeJob() {
    SmallShop shop = SHOP.job("hoist", "hose at front-left", "oil at vehicle");
    for (String step : List.of("One on", "Refit the roller", "Two on")) {
      assertFault(
          faults(shop, moved("Fill it", true, step)), "check step \\d+ comes before .* is on");
    }
    assertFault(
        faults(SHOP.job("hoist", "oil at vehicle"), moved("Fill it", false, "Lid on")),
        "step \\d+ puts lid@vehicle on before check step \\d+");
  }

  /** The cover is another work's, and has to be off all the same. */
  @Test
  void noOtherWorkHidesIt() {
    SmallShop shop = SHOP.job("hoist", "cover at front-left", "feeler at front-left");
    assertFault(
        faults(
            shop,
            sheet ->
                moved("Four on", true, "Feel it")
                    .apply(moved("Four off", true, "Push it").apply(sheet))),
        "step \\d+ puts four@front-left on before check step \\d+");
    SmallShop elsewhere = SHOP.job("hoist", "cover at rear-right", "feeler at front-left");
    assertEquals(
        List.of(),
        faults(
            elsewhere,
            sheet ->
                moved("Four on", true, "Feel it")
                    .apply(moved("Four off", true, "Push it").apply(sheet))));
  }

  /** What is only done once the vehicle is down brings no step while it is up. */
  @Test
  void whatWaitsForTheGroundBringsNoStep() {
    Sheet sheet = SHOP.job("hoist", "late at vehicle").sheet();
    assertTrue(
        sheet.checks().stream().noneMatch(it -> !it.steps().isEmpty() && it.name().equals("felt")),
        sheet.checks() + "");
    assertEquals(List.of(), faults(SHOP.job("hoist", "late at vehicle"), it -> it));
  }

  /** Raised end by end, only the end at which the check is made has to be up. */
  @Test
  void onlyTheOwnEndHasToBeUp() {
    SmallShop first = SHOP.job("floor", "feeler at front-left", "cover at rear-right");
    assertFault(
        faults(first, moved("Feel it", false, "Refit the vehicle on its wheels")),
        "step \\d+ puts feet@front on before check step \\d+");
    SmallShop second = SHOP.job("floor", "cover at front-right", "feeler at rear-left");
    List<Sheet.SheetStep> steps = second.sheet().steps();
    assertTrue(at(steps, "Refit the vehicle on its wheels") < at(steps, "Feel it"));
    assertEquals(List.of(), faults(second, it -> it));
  }

  /** One look for both wheels, named by their axle, answers what either of them brings. */
  @Test
  void oneLookAnswersForAllPlaces() {
    SmallShop both = SHOP.job("hoist", "pedal at front-left", "pedal at rear-right");
    Sheet sheet = both.sheet();
    assertEquals(
        1, sheet.steps().stream().filter(it -> Printed.text(it).equals("Press it")).count());
    assertEquals(
        2,
        faults(both, without("Press it")).stream()
            .filter(it -> it.startsWith("no step for check pressed"))
            .count());
    SmallShop axle = SHOP.job("hoist", "pedal at front-left", "pedal at front-right");
    assertEquals(List.of(), faults(axle, it -> it));
  }

  /** What only goes on once the vehicle is down is not waited for. */
  @Test
  void whatGoesOnAfterLoweringIsNotWaitedFor() {
    SmallShop capped = SHOP.job("hoist", "capped at vehicle");
    List<Sheet.SheetStep> steps = capped.sheet().steps();
    assertTrue(at(steps, "Fill it") < at(steps, "Four on"));
    assertEquals(List.of(), faults(capped, it -> it));
    assertFault(
        faults(capped, moved("Fill it", true, "Two on")),
        "check step \\d+ comes before two@vehicle is on");
  }

  /** Seen from the axle or the vehicle it is seen at the wheel, and from another wheel not. */
  @ParameterizedTest
  @CsvSource({
    "VEHICLE, true",
    "FRONT, true",
    "FRONT_LEFT, true",
    "REAR, false",
    "REAR_LEFT, false"
  })
  void oneLookIsAtThePlaceOrAroundIt(Place place, boolean answers) {
    List<String> faults =
        faults(
            SHOP.job("hoist", "pedal at front-left"),
            altered("Press it", "where.places", List.of(place)));
    assertEquals(
        !answers,
        faults.stream().anyMatch(it -> it.startsWith("no step for check pressed")),
        faults.toString());
  }

  /** The front is down again, as it has to be, when the last look is taken at the rear. */
  @Test
  void theLastLookDoesNotNeedTheOtherEndUp() {
    SmallShop ends = SHOP.job("floor", "cover at front-right", "rear-oil at rear-left");
    List<Sheet.SheetStep> steps = ends.sheet().steps();
    assertTrue(at(steps, "Refit the vehicle on its wheels") < at(steps, "Fill it"));
    assertEquals(List.of(), faults(ends, it -> it));
    assertFault(
        faults(ends, moved("Fill it", true, "Refit the two")),
        "check step \\d+ comes before two@rear-left is on");
  }

  /** What came off before the vehicle went up and goes on before it comes down is waited for. */
  @Test
  void whatCameOffBeforeLiftingIsWaitedForWhereItGoesOnBeforeLowering() {
    SmallShop shop = SHOP.job("hoist", "slackened at vehicle");
    assertFault(
        faults(shop, moved("Fill it", true, "Refit the four")),
        "check step \\d+ comes before four@vehicle is on");
  }

  /** Only a thing that its rule names is looked at; another may cover it, or go on later. */
  @Test
  void onlyWhatTheRuleNamesIsLookedAt() {
    SmallShop clips = SHOP.job("hoist", "pair at front-left");
    assertEquals(List.of(), faults(clips, it -> it));
    assertFault(
        faults(clips, moved("Look at the clip", false, "Four on")),
        "step \\d+ covers what check step \\d+ looks at with four@front-left");
    assertEquals(List.of(), faults(clips, moved("Look at the clip", false, "Clip on")));
  }
}
