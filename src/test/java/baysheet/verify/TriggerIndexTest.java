package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Trigger;
import baysheet.plan.Lists;
import baysheet.plan.SmallShop;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.wording.Printed;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which steps a caution is found at, and that the sheet is faulty without the caution or without
 * its letter at one of them.
 */
class TriggerIndexTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "stretch-bolt: {count: 1, thread: M12x1.5, class: \"10\", head: hex 19 mm,"
                  + " torque: 90 N·m, reuse: no}",
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10\", head: hex 19 mm,"
                  + " torque: 100 N·m, final: ride-height}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                pan: {name: pan, kinds: [clutch]}
                pin: {name: pin, kinds: [mount]}
                seal: {name: seal, kinds: [bush]}
                sump: {name: sump, kinds: [circuit], fluid: engine-oil}
                hose: {name: hose, kinds: [circuit], fluid: coolant}
                stretch-bolt: {name: stretch bolt, kinds: [fastener, pinch-bolt]}
              states:
                rusty: {likely: 2, possible: 2, source: us}
              tools:
                mallet: {means: a hammer of wood, like: [hammer]}
              """)
          .procedure(
              "rebuild",
              """
              at: vehicle
              behind: [raise]
              serves: rebuild-all
              uses: [engine support beam]
              parts: [{part: seal, count: 1, renews: seal}]
              open:
                - {do: Look round}
                - {do: Take the pan, undo: pan}
                - {do: Push the pin, disturb: pin, back: Pull the pin}
                - {do: Drain the sump, open-circuit: sump}
                - {do: Measure it, measure: height}
                - {do: Hit it, uses: mallet, impact: yes}
                - {do: Take the seal, undo: seal}
              work:
                - {do: Grease it, apply: grease on pin}
              close:
                - {do: Fit the seal, do-up: seal}
                - {do: Fit the pan, do-up: pan}
                - {do: Drive it, moment: road-test}
              """)
          .procedure(
              "stretched",
              "at: wheel\nbehind: [raise]\nopen: [{do: Remove the bolt, undo: stretch-bolt}]"
                  + "\nclose: [{do: Fit the bolt, do-up: stretch-bolt}]")
          .procedure(
              "levered", "at: wheel\nbehind: [roller-off]\nopen: [{do: Lever it, uses: pry bar}]")
          .procedure(
              "pulled",
              "at: wheel\nbehind: [roller-off]\nopen: [{do: Pull it, uses: [pry bar, hub puller]}]");

  /** What a caution says beside what brings it. */
  private static final String CAUTION =
      "cautions:\n  care: {signal: WARNING, when: %s, do: Take care, hazard: it slips,"
          + " consequence: it hurts, source: us}\n";

  private static SmallShop shop(String trigger, String... works) {
    return SHOP.with("catalogue/care.yaml", CAUTION.formatted(trigger)).job("hoist", works);
  }

  private static List<Sheet.SheetStep> found(Sheet sheet, Resolved resolved) {
    List<Trigger> when = resolved.catalogue().cautions().get("care").when();
    return new TriggerIndex(new SheetIndex(sheet), resolved).steps(when);
  }

  /** The steps where the caution is found, each of which has to bear its letter. */
  private static List<String> cautioned(SmallShop shop) {
    Sheet sheet = shop.sheet();
    Resolved resolved = shop.resolved();
    List<Sheet.SheetStep> found = found(sheet, resolved);
    assertEquals(List.of(), PlanVerifier.faults(sheet, resolved));
    if (!found.isEmpty()) {
      List<CautionLine> others =
          sheet.safety().cautions().stream().filter(it -> !it.name().equals("care")).toList();
      assertFault(
          Altered.with(sheet, "safety.cautions", others), resolved, "caution care is missing");
    }
    for (Sheet.SheetStep step : found) {
      Sheet.SheetStep bare = Altered.with(step, "letters", new Sheet.Letters(List.of(), List.of()));
      assertFault(
          AlteredSheets.inOrder(sheet, Lists.replaced(sheet.steps(), step, it -> bare)),
          resolved,
          "step " + step.n() + " lacks the letter of caution care");
    }
    return found.stream().map(Printed::text).toList();
  }

  private static void assertFault(Sheet sheet, Resolved resolved, String what) {
    List<String> faults = PlanVerifier.faults(sheet, resolved);
    assertTrue(faults.stream().anyMatch(it -> it.contains(what)), what + " in " + faults);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{undo: pan} | Take the pan",
        "{do-up: pan} | Fit the pan",
        "{disturb: pin} | Push the pin",
        "{do-up: pin} | ''",
        "{kind: clutch} | Take the pan",
        "{kind: mount} | Push the pin",
        "{do-up-kind: clutch} | Fit the pan",
        "{renew-kind: bush} | Fit the seal",
        "{circuit: sump} | Drain the sump",
        "{measure: height} | Measure it",
        "{apply: grease} | Grease it",
        "{uses: mallet} | Hit it",
        "{uses: hammer} | Hit it",
        "{impact: yes} | Hit it",
        "{uses: hammer, impact: yes} | Hit it",
        "{impact: yes, at: vehicle} | Hit it",
        "{procedure: rebuild, kind: [clutch, bush]} | Take the pan, Take the seal",
        "{serves: rebuild-all, kind: clutch} | Take the pan",
        "{serves: raise, kind: clutch} | ''",
        "{procedure: hoisted} | Hoist it",
        "{serves: rebuild-all} | Look round",
        "{procedure: rebuild, uses: engine support beam} | Look round",
        "{procedure: rebuild, uses: hub puller} | ''",
        "{uses: hub puller} | ''",
        "{uses: hammer, impact: no} | ''",
        "{kind: clutch, bay: jack} | ''",
        "{kind: clutch, bay: lift} | Take the pan",
        "{kind: clutch, trait: diesel} | ''",
        "{kind: clutch, without: diesel} | Take the pan",
        "{kind: clutch, at: front} | ''",
        "{bay: lift} | ''",
        "{kind: clutch, state: rusty} | ''",
        "'[{undo: pan}, {procedure: rebuild}]' | Look round, Take the pan"
      })
  void aCautionIsFoundAtTheStepsThatBringIt(String trigger, String expected) {
    String plain = trigger.replace("'", "");
    List<String> steps = expected.isEmpty() ? List.of() : List.of(expected.split(", "));
    assertEquals(steps, cautioned(shop(plain, "rebuild at vehicle")), trigger);
  }

  /** A bolt that the book wants new each time is renewed wherever it goes on. */
  @Test
  void aFastenerForOneUseIsRenewedWhereItGoesOn() {
    SmallShop shop = shop("{renew-kind: pinch-bolt}", "stretched at front-left");
    assertEquals(List.of("Fit the bolt"), cautioned(shop));
    assertEquals(
        List.of(),
        cautioned(
            shop("{renew-kind: wheel}", "stretched at front-left", "roller-off at front-left")));
  }

  /** A trigger that excludes a tool holds at the wheels where that is not used. */
  @Test
  void aToolThatIsExcludedAtOneWheelIsNotAtAnother() {
    String trigger = "{uses: pry bar, where-unused: hub puller}";
    assertEquals(List.of("Lever it"), cautioned(shop(trigger, "levered at front-left")));
    assertEquals(List.of(), cautioned(shop(trigger, "pulled at front-left")));
    assertEquals(
        List.of("Lever it"),
        cautioned(shop(trigger, "pulled at front-left", "levered at front-right")));
    assertEquals(
        List.of(), cautioned(shop(trigger, "pulled at front-left", "levered at front-left")));
  }

  @Test
  void aProcedureIsMetWhereItBeginsAtEachWheel() {
    assertEquals(
        List.of("Roller off", "Roller off"),
        cautioned(
            shop("{procedure: roller-off}", "levered at front-left", "pulled at rear-right")));
  }

  /** What the planner adds is done with tools as well. */
  @Test
  void aCheckThatIsAStepBringsWhatItsToolsBring() {
    SmallShop checked =
        SHOP.with(
            "catalogue/check.yaml",
            """
            consequences:
              tap-it: {when: {undo: pan}, check: Tap it, moment: raised, source: us, step: {uses: mallet}}
            """);
    for (String place : List.of("vehicle", "front")) {
      SmallShop shop =
          checked
              .with("catalogue/care.yaml", CAUTION.formatted("{uses: hammer, at: " + place + "}"))
              .job("hoist", "rebuild at vehicle");
      List<String> expected = place.equals("vehicle") ? List.of("Hit it", "Tap it") : List.of();
      assertEquals(expected, cautioned(shop));
    }
  }

  private static List<String> ids(Stream<Sheet.SheetStep> steps) {
    return steps.map(it -> it.source().id()).toList();
  }

  /** On blocks a vehicle is chocked, unchocked, and measured, none of which a procedure writes. */
  private static void assertFoundAmongBlocks(String bay, String trigger, String expected) {
    SmallShop shop =
        SHOP.with("catalogue/care.yaml", CAUTION.formatted(trigger))
            .procedure(
                "bush",
                """
                at: wheel
                behind: [roller-off]
                uses: [hub puller]
                open:
                  - {do: Measure the height, measure: height}
                  - {do: Remove the bolt, undo: [deep-bolt, two]}
                """)
            .job(bay, "bush at front-left");
    Sheet sheet = shop.sheet();
    List<String> wanted =
        ids(sheet.steps().stream().filter(it -> it.source().id().matches(expected)));
    assertTrue(!wanted.isEmpty(), () -> expected + " in " + ids(sheet.steps().stream()));
    assertEquals(wanted, ids(found(sheet, shop.resolved()).stream()), trigger);
    cautioned(shop);
  }

  @Test
  void chocksAreUsedWhereTheyAreSetAndNotWhereTheyAreTaken() {
    assertFoundAmongBlocks("floor", "{uses: wheel chocks, at: vehicle}", "chocks/set/.*");
  }

  /** What the planner sets stands at the axle of its wheels, and at both where it is at all. */
  @Test
  void chocksAndBlocksAreAtTheAxleWhoseWheelsTheyHold() {
    assertFoundAmongBlocks(
        "floor", "{uses: wheel chocks, at: front}", "chocks/set/(.*/)?(front|vehicle)");
    assertFoundAmongBlocks(
        "floor", "{uses: wheel chocks, at: rear}", "chocks/set/(.*/)?(rear|vehicle)");
    assertFoundAmongBlocks(
        "floor",
        "{uses: solid wheel blocks, at: front}",
        "blocks/(put-under|lower-axle-onto).*/front");
    assertFoundAmongBlocks("hoist", "{uses: solid wheel blocks, at: rear}", "blocks/put-under");
    assertFoundAmongBlocks("hoist", "{uses: wheel chocks, at: rear}", "chocks/set/.*vehicle");
  }

  @Test
  void blocksAreUsedWhereTheyGoUnderWheels() {
    assertFoundAmongBlocks(
        "floor", "{uses: solid wheel blocks, impact: no}", "blocks/(put-under|lower-axle-onto).*");
    assertFoundAmongBlocks("hoist", "{uses: solid wheel blocks}", "blocks/put-under");
  }

  @Test
  void theHeightIsMeasuredAgainWithTheToolsOfTheProcedure() {
    assertFoundAmongBlocks("hoist", "{uses: hub puller, at: vehicle}", "blocks/measure/.*");
  }

  /** What no step brings, as the bay alone, is warned of on every sheet of such a bay. */
  @Test
  void aCautionThatNoStepBringsIsOnTheSheet() {
    for (String bay : List.of("lift", "jack")) {
      SmallShop shop = shop("{bay: " + bay + "}", "rebuild at vehicle");
      Sheet sheet = shop.sheet();
      boolean there = sheet.safety().cautions().stream().anyMatch(it -> it.name().equals("care"));
      assertEquals(bay.equals("lift"), there);
      assertEquals(List.of(), PlanVerifier.faults(sheet, shop.resolved()));
      if (there) {
        Sheet without = Altered.with(sheet, "safety.cautions", List.of());
        assertFault(without, shop.resolved(), "caution care is missing");
      }
    }
  }

  @Test
  void aCautionForAStateIsFoundAtAVehicleInThatState() {
    SmallShop sound = shop("{kind: clutch, state: rusty}", "rebuild at vehicle");
    SmallShop rusty =
        new SmallShop(
            sound.texts().replacing("2026-03-02/1.yaml", "by: T1", "by: T1\nstate: [rusty]"));
    assertEquals(List.of("Take the pan"), cautioned(rusty));
  }
}
