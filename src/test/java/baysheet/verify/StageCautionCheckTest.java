package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Lists;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whoever holds one sheet of a job is warned on it of what is done from it, and of no more. */
class StageCautionCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm,"
                  + " torque: 100 N·m, final: ride-height}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                pan: {name: pan, kinds: [bush]}
              cautions:
                lift: {signal: WARNING, when: {kind: support}, do: Push it, hazard: it slides, consequence: it crushes, source: us, raising: yes}
                crush: {signal: DANGER, when: {kind: support}, do: Set the stands, hazard: it falls, consequence: it kills, source: us}
                under: {signal: WARNING, when: {kind: support}, do: Keep out, hazard: it drops, consequence: it crushes, source: us}
                whole: {signal: WARNING, when: {undo: lid}, do: Stay calm, hazard: it burns, consequence: it kills, source: us, whole-job: yes}
                edge: {signal: WARNING, when: {kind: bush}, do: Wear gloves, hazard: it is sharp, consequence: it cuts, source: us}
                paint: {signal: NOTICE, when: {kind: bush}, do: Cover it, hazard: it scrapes, consequence: it marks the paint, source: us}
                early: {signal: WARNING, when: {undo: one}, do: Take care, hazard: it slips, consequence: it hurts, source: us}
                late: {signal: WARNING, when: {do-up: one}, do: Take care again, hazard: it slips back, consequence: it hurts, source: us}
              """)
          .procedure(
              "calm",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Pan off, undo: pan}
                - {do: Two off, undo: two}
              work:
                - {do: Pan on, do-up: pan}
                - {do: Look round}
                - {do: Look again}
              """)
          .procedure(
              "low",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Two off, undo: two, height: working}
              work:
                - {do: Look low, height: wheels-clear}
                - {do: Look up, height: working}
                - {do: Look again, height: working}
              """)
          .procedure(
              "own",
              "at: wheel\nbehind: [raise]\nopen: [{do: Two off, undo: two}]"
                  + "\nwork: [{do: Look at the front}, {do: Look again}]")
          .procedure(
              "rear",
              "at: wheel\nbehind: [raise]\nafter: [own]\nopen: [{do: Three off, undo: three}]")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "two")
          .procedure(
              "road",
              "at: vehicle\nafter: [work]\nwork: [{do: Look at it, moment: on-the-ground},"
                  + " {do: Look at it twice, moment: on-the-ground}]")
          .procedure(
              "work",
              """
              at: vehicle
              behind: [raise]
              open:
                - {do: Lid off, undo: lid}
                - {do: Pan off, undo: pan}
                - {do: One off, undo: one}
              work:
                - {do: Look round}
                - {do: Look again}
              close:
                - {do: One on, do-up: one}
                - {do: Pan on, do-up: pan}
                - {do: Lid on, do-up: lid}
              """);

  private static final SmallStages LIFTED =
      SmallStages.behind(SHOP.job("hoist", "work at vehicle"), "Look round");

  private static List<String> names(Sheet stage) {
    return stage.safety().cautions().stream().map(CautionLine::name).sorted().toList();
  }

  private static CautionLine caution(Sheet sheet, String name) {
    return sheet.safety().cautions().stream()
        .filter(it -> it.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** The vehicle stays up, and the pan with its edge goes back on; the paint is warned of once. */
  @Test
  void aCautionStandsOnEachStageWhereItHolds() {
    assertEquals(
        List.of("crush", "early", "edge", "lift", "paint", "under", "whole"),
        names(LIFTED.stage(1)));
    assertEquals(List.of("crush", "edge", "late", "under", "whole"), names(LIFTED.stage(2)));
  }

  @Test
  void aCautionThatIsMissingOrTooMuchIsFound() {
    for (CautionLine caution : LIFTED.whole().safety().cautions()) {
      for (int n = 1; n <= 2; n++) {
        List<CautionLine> cautions = new ArrayList<>(LIFTED.stage(n).safety().cautions());
        boolean there = cautions.removeIf(it -> it.name().equals(caution.name()));
        if (!there) {
          cautions.add(caution);
        }
        List<String> faults =
            LIFTED.faults(n, sheet -> Altered.with(sheet, "safety.cautions", cautions));
        assertTrue(
            faults.contains(
                "stage %s: the caution %s stands here %s times"
                    .formatted(n, caution.letter(), there ? 0 : 1)),
            caution.name() + faults);
      }
    }
  }

  /** On top of the second sheet stands what was met on the first. */
  @ParameterizedTest
  @CsvSource({"1, early", "1, lift", "1, whole", "2, late", "2, edge", "2, under", "2, whole"})
  void aCautionSaysWhatItSaysInTheJobAndWhereItStands(int n, String name) {
    CautionLine caution = caution(LIFTED.stage(n), name);
    CautionLine other = Altered.with(caution, "shown.onTop", !caution.onTop());
    CautionLine worded = Altered.with(caution, "text.command", "Never mind");
    for (CautionLine one : List.of(other, worded)) {
      List<String> faults =
          LIFTED.faults(
              n,
              sheet ->
                  Altered.with(
                      sheet,
                      "safety.cautions",
                      Lists.replaced(sheet.safety().cautions(), caution, it -> one)));
      assertTrue(
          faults.contains(
              "stage " + n + ": the caution " + caution.letter() + " is another one here"),
          faults.toString());
    }
  }

  @ParameterizedTest
  @CsvSource({"1, early", "2, late"})
  void aCautionStandsAboveTheFirstStepThatItIsOf(int n, String name) {
    CautionLine caution = caution(LIFTED.stage(n), name);
    List<String> faults =
        LIFTED.faults(
            n,
            sheet ->
                AlteredSheets.inOrder(
                    sheet,
                    sheet.steps().stream()
                        .map(it -> it.with(new Sheet.Letters(it.letters().all(), List.of())))
                        .toList()));
    assertTrue(
        faults.contains(
            "stage "
                + n
                + ": the caution "
                + caution.letter()
                + " does not stand above its first step"),
        faults.toString());
  }

  /** What is fitted is no edge any more, where another thing of no such kind goes on. */
  @Test
  void whatGoesOnWithoutSuchAKindIsNotWarnedOfAgain() {
    SmallStages late = SmallStages.behind(SHOP.job("hoist", "work at vehicle"), "One on");
    assertEquals(List.of("crush", "edge", "under", "whole"), names(late.stage(2)));
    SmallStages over = SmallStages.behind(SHOP.job("hoist", "calm at vehicle"), "Look round");
    assertEquals(List.of("crush", "under"), names(over.stage(2)));
  }

  /** A vehicle that is down for good crushes nobody any more. */
  @Test
  void nobodyIsWarnedOfRaisingOnceTheVehicleIsDownForGood() {
    SmallStages down =
        SmallStages.behind(SHOP.job("hoist", "work at vehicle", "road at vehicle"), "Look at it");
    assertEquals(List.of("whole"), names(down.stage(2)));
  }

  /** With one end up after the other each stage warns of its own raising. */
  @Test
  void whoeverRaisesAnotherEndIsWarned() {
    SmallStages ends =
        SmallStages.behind(
            SHOP.job("floor", "own at front-left", "rear at rear-left"), "Look at the front");
    assertEquals(List.of("crush", "lift", "under"), names(ends.stage(1)));
    assertEquals(List.of("crush", "lift", "under"), names(ends.stage(2)));
  }

  /** The lift is lowered and raised again between two heights. */
  @Test
  void whoeverRaisesTheLiftFurtherIsWarned() {
    SmallStages up = SmallStages.behind(SHOP.job("hoist", "low at vehicle"), "Look low");
    assertEquals(List.of("crush", "lift", "under"), names(up.stage(2)));
  }

  /** On blocks the vehicle is up again, and comes off them. */
  @Test
  void whoeverTakesTheVehicleOffItsBlocksIsWarned() {
    SmallStages blocks =
        SmallStages.behind(SHOP.job("floor", "bush at front-left"), "Torque the deep bolt");
    assertEquals(List.of("crush", "lift"), names(blocks.stage(2)));
  }
}
