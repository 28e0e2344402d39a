package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.Lists;
import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import baysheet.wording.Printed;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found when a caution or a check that a step brings is not as it has to be. */
class ConsequenceCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              cautions:
                care: {signal: WARNING, when: {undo: one}, do: Take care, hazard: it slips, consequence: it hurts, protect: [M008], source: us}
                sharp: {signal: WARNING, do: Mind the edge, hazard: it is sharp, consequence: it cuts, source: us}
              consequences:
                tag: {when: {undo: one}, check: Tag it, moment: before-lifting, source: us}
                gap: {when: {undo: two}, check: Look at the gap, moment: raised, source: us}
                oil: {when: {undo: two}, check: Look at the oil, moment: on-the-ground, source: us}
                nuts: {when: {kind: fastener}, check: Look at the nuts, moment: before-moving, rows: yes, source: us}
              """)
          .procedure(
              "work",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: One off, undo: one, hazards: sharp}
                - {do: Two off, undo: two}
              work: [{do: Look round, hazards: sharp}]
              close:
                - {do: Two on, do-up: two}
                - {do: One on, do-up: one, hazards: sharp}
              checks:
                - {do: Look at the lid, moment: raised}
              """);

  private static final SmallShop PLAIN = SHOP.job("hoist", "work at front-left");
  private static final SmallShop WAIVED =
      new SmallShop(
          PLAIN
              .texts()
              .replacing("2026-03-02/1.yaml", "by: T1", "by: T1\nwaive: {care: T1, sharp: T1}"));

  private static List<String> faults(Sheet sheet, Resolved resolved) {
    SheetIndex printed = new SheetIndex(sheet);
    return ConsequenceCheck.faults(sheet, printed, resolved, new TriggerIndex(printed, resolved));
  }

  private static List<String> faults(SmallShop shop, UnaryOperator<Sheet> change) {
    Sheet sheet = shop.sheet();
    assertEquals(List.of(), faults(sheet, shop.resolved()));
    return faults(change.apply(sheet), shop.resolved());
  }

  private static void assertFault(List<String> faults, String what) {
    assertTrue(faults.stream().anyMatch(it -> it.contains(what)), what + " in " + faults);
  }

  private static UnaryOperator<Sheet> check(String text, String part, Object other) {
    return sheet -> {
      CheckLine line = line(sheet, text);
      return Altered.with(
          sheet,
          "checks",
          Lists.replaced(sheet.checks(), line, it -> Altered.with(it, part, other)));
    };
  }

  private static CheckLine line(Sheet sheet, String text) {
    return sheet.checks().stream()
        .filter(it -> it.text().isWritten(text) || it.name().equals(text))
        .findFirst()
        .orElseThrow(() -> new AssertionError(text + " in " + sheet.checks()));
  }

  private static UnaryOperator<Sheet> waivedBy(String name, Optional<String> whom) {
    return sheet -> {
      List<CautionLine> cautions =
          sheet.safety().cautions().stream()
              .map(it -> it.name().equals(name) ? Altered.with(it, "waivedBy", whom) : it)
              .toList();
      return Altered.with(sheet, "safety.cautions", cautions);
    };
  }

  /** The sheet with no letters at the steps of a text, or at any. */
  private static Sheet unlettered(Sheet sheet, String text) {
    return AlteredSheets.inOrder(
        sheet,
        sheet.steps().stream()
            .map(
                it ->
                    Printed.text(it).startsWith(text)
                        ? it.with(new Sheet.Letters(List.of(), List.of()))
                        : it)
            .toList());
  }

  @Test
  void whatACautionAsksToWearIsListed() {
    assertFault(
        faults(PLAIN, sheet -> Altered.with(sheet, "safety.protect", List.of())),
        "caution care needs protective equipment");
  }

  @Test
  void whatIsWaivedAsksForNothingToWear() {
    assertEquals(
        List.of(), faults(WAIVED, sheet -> Altered.with(sheet, "safety.protect", List.of())));
  }

  @Test
  void whatIsWaivedNeedsNoLetters() {
    assertEquals(List.of(), faults(WAIVED, sheet -> unlettered(sheet, "")));
  }

  @Test
  void aCautionSaysWhoWaivesIt() {
    assertFault(
        faults(WAIVED, waivedBy("care", Optional.empty())), "caution care is waived by nobody");
    assertFault(
        faults(PLAIN, waivedBy("care", Optional.of("A. Nybody"))), "caution care is waived by");
  }

  @ParameterizedTest
  @CsvSource({"One off, open/1", "Look round, work/1", "One on, close/2"})
  void aStepBearsTheLetterOfTheHazardThatItNames(String step, String at) {
    assertFault(
        faults(PLAIN, sheet -> unlettered(sheet, step)),
        "work/" + at + " lacks the letter of sharp");
  }

  @Test
  void aHazardThatAStepNamesIsOnTheSheet() {
    assertFault(
        faults(
            PLAIN,
            sheet ->
                Altered.with(
                    sheet,
                    "safety.cautions",
                    sheet.safety().cautions().stream()
                        .filter(it -> !it.name().equals("sharp"))
                        .toList())),
        "caution sharp is missing");
  }

  /** That the step itself is missing is for another check to say. */
  @Test
  void aStepThatIsNotThereLacksNoLetter() {
    assertEquals(
        List.of(),
        faults(
            PLAIN,
            sheet ->
                AlteredSheets.inOrder(
                    sheet,
                    sheet.steps().stream()
                        .filter(it -> !Printed.text(it).equals("Look round"))
                        .toList())));
  }

  @ParameterizedTest
  @ValueSource(strings = {"tag", "gap", "oil", "nuts"})
  void aCheckThatAStepBringsIsOnTheSheet(String name) {
    assertFault(
        faults(PLAIN, sheet -> AlteredSheets.withoutCheck(sheet, name)),
        "check " + name + " is missing");
  }

  @Test
  void aCheckOfAProcedureIsThereInItsWordsAndAtEachPlace() {
    assertFault(
        faults(PLAIN, check("Look at the lid", "text", new Statement.Written("Look away"))),
        "\"Look at the lid\" is missing, a check of work");
    assertFault(
        faults(
            SHOP.job("hoist", "work at front-left", "work at front-right"),
            check("Look at the lid", "places", List.of(Place.FRONT_LEFT))),
        "\"Look at the lid\" is missing, a check of work at front-right");
  }

  /** A wheel that was off is looked at again, as are rows of which the book asks it. */
  @ParameterizedTest
  @ValueSource(strings = {"roller-nut", "cap-bolt"})
  void whatHoldsAWheelIsLookedAtAgainAfterADistance(String fastener) {
    SmallShop shop =
        SmallShop.bolted(
                "cap-bolt: {count: 1, thread: M12x1.5, class: \"10\", head: hex 19 mm,"
                    + " torque: 100 N·m, recheck: 50 km}")
            .with("catalogue/cap.yaml", "items: {cap-bolt: {name: cap bolt, kinds: [fastener]}}")
            .procedure(
                "roller-off",
                """
                at: wheel
                behind: [raise]
                open: [{do: Roller off, undo: [roller-nut, roller]}]
                close: [{do: Roller on, do-up: [roller, roller-nut]}]
                """)
            .procedure("cap", "at: wheel\nbehind: [roller-off]", "Cap off", "cap-bolt")
            .job("hoist", "cap at front-left");
    String check = "recheck-" + fastener;
    String missing = "is not looked at again after a distance";
    assertFault(faults(shop, check(check, "moment", Moment.BEFORE_MOVING)), missing);
    assertFault(faults(shop, check(check, "name", "recheck-other")), missing);
    assertFault(faults(shop, check(check, "places", List.of(Place.REAR_RIGHT))), missing);
  }

  @Test
  void aCheckIsInTheWordsOfItsRule() {
    assertFault(
        faults(PLAIN, check("gap", "text", new Statement.Written("Look at the cap"))),
        "check \"gap\" says something else");
    assertFault(
        faults(PLAIN, check("nuts", "text", new Statement.Written("Look at the nuts"))),
        "check \"nuts\" says something else");
    assertFault(
        faults(PLAIN, check("nuts", "text", new Statement.OfRows("Look at the nuts", List.of(7)))),
        "check \"nuts\" says something else");
  }

  @ParameterizedTest
  @EnumSource(names = {"BEFORE_LOWERING", "ON_THE_GROUND", "BEFORE_MOVING"})
  void aCheckIsNoLaterThanItIsDue(Moment later) {
    for (String check : List.of("gap", "Look at the lid")) {
      assertFault(faults(PLAIN, check(check, "moment", later)), "is due RAISED, not " + later);
    }
  }

  /** Even where a step that brings it is done at the earlier moment. */
  @Test
  void aCheckIsNoEarlierThanItIsDue() {
    assertFault(
        faults(PLAIN, check("oil", "moment", Moment.RAISED)), "is due ON_THE_GROUND, not RAISED");
  }

  /** On the floor nothing is done raised, so what is due there is due on the ground. */
  @Test
  void whereTheVehicleIsNeverUpAChecksIsDueOnTheGround() {
    SmallShop floor =
        SHOP.procedure(
                "down",
                "at: vehicle\nopen: [{do: Two off, undo: two}]"
                    + "\nchecks: [{do: Look at the cap, moment: raised}]")
            .job("floor", "down at vehicle");
    assertEquals(Moment.ON_THE_GROUND, line(floor.sheet(), "gap").moment());
    assertFault(
        faults(floor, check("gap", "moment", Moment.BEFORE_MOVING)),
        "is due RAISED, not BEFORE_MOVING");
  }

  /** Nobody who only follows the steps would come to it. */
  @Test
  void aStepLeadsToTheChecksBeforeLiftingAndBeforeLowering() {
    assertFault(
        faults(PLAIN, sheet -> withoutGate(sheet, Moment.BEFORE_LIFTING)), "leads to \"tag\"");
    assertFault(faults(PLAIN, sheet -> withoutGate(sheet, Moment.RAISED)), "comes down at step");
  }

  private static Sheet withoutGate(Sheet sheet, Moment moment) {
    List<Sheet.SheetStep> steps =
        sheet.steps().stream()
            .filter(it -> !(it.source() instanceof StepSource.Checkpoint && it.moment() == moment))
            .toList();
    assertEquals(sheet.steps().size() - 1, steps.size());
    return AlteredSheets.inOrder(sheet, steps);
  }
}
