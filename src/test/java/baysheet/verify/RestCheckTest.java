package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.BlocksPart;
import baysheet.wording.Printed;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * On solid blocks the work rests only once every wheel is chocked on its block and before anything
 * takes the vehicle off them: common practice, no source.
 */
class RestCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "two");

  private static Resolved resolved(String bay) {
    return SHOP.job(bay, "bush at front-left").resolved();
  }

  private static Sheet planned(Resolved resolved) {
    return Planner.plan(resolved, new Problems()).orElseThrow();
  }

  private static List<Integer> restsOnBlocks(Sheet whole, Resolved resolved) {
    return IntStream.range(1, whole.steps().size())
        .filter(after -> RestCheck.isOnBlocks(whole, after))
        .filter(after -> new RestCheck(whole, resolved, after, Set.of()).faults().isEmpty())
        .boxed()
        .toList();
  }

  private static Stream<Integer> numbers(Sheet whole, boolean on) {
    return whole.steps().stream()
        .filter(it -> it.source() instanceof StepSource.Blocks blocks && blocks.part().isOn() == on)
        .map(Sheet.SheetStep::n);
  }

  @ParameterizedTest
  @ValueSource(strings = {"floor", "hoist"})
  void itRestsBetweenTheLastStepOnToTheBlocksAndTheFirstOffThem(String bay) {
    Resolved resolved = resolved(bay);
    Sheet whole = planned(resolved);
    int lastOn = numbers(whole, true).max(Integer::compare).orElseThrow();
    int firstOff = numbers(whole, false).min(Integer::compare).orElseThrow();
    assertTrue(lastOn + 1 < firstOff, "the torque lies between");
    assertEquals(
        IntStream.range(lastOn, firstOff).boxed().toList(), restsOnBlocks(whole, resolved));
  }

  @ParameterizedTest
  @ValueSource(strings = {"floor", "hoist"})
  void withoutChocksItDoesNotRest(String bay) {
    Resolved resolved = resolved(bay);
    Sheet whole = planned(resolved);
    List<Sheet.SheetStep> chocks =
        whole.steps().stream()
            .filter(it -> it.source() instanceof StepSource.Chocks set && set.onBlocks())
            .toList();
    assertTrue(!chocks.isEmpty());
    for (Sheet.SheetStep gone : chocks) {
      Sheet without =
          AlteredSheets.inOrder(
              whole, whole.steps().stream().filter(it -> !it.equals(gone)).toList());
      assertEquals(List.of(), restsOnBlocks(without, resolved), "without step " + gone.n());
    }
  }

  /** No lock of a lift is so low. */
  @Test
  void withItsWheelsJustClearItRestsOnlyWhereNothingElseWillDo() {
    Resolved resolved = low();
    Sheet whole = planned(resolved);
    int look = 1 + texts(whole).indexOf("Look");
    // No page of nine steps reaches from the work at working height to that height again.
    for (int page = look; page < whole.steps().size(); page++) {
      List<Sheet> stages = divided(resolved, page).stages();
      assertEquals(page <= 9, stages.stream().anyMatch(RestCheckTest::endsLow), page + " steps");
    }
  }

  private static Resolved low() {
    return SmallShop.empty()
        .procedure(
            "low",
            "at: vehicle\nbehind: [raise]\n"
                + "open: [{do: Open it, undo: one, height: working},"
                + " {do: Prop it, disturb: stay, height: wheels-clear}]\n"
                + "work: [{do: Look, height: wheels-clear}, {do: Touch, height: wheels-clear}]")
        .job("hoist", "low at vehicle")
        .resolved();
  }

  private static List<String> texts(Sheet sheet) {
    return sheet.steps().stream().map(Printed::text).toList();
  }

  private static boolean endsLow(Sheet stage) {
    return stage.steps().get(stage.steps().size() - 1).height() == Height.WHEELS_CLEAR;
  }

  private static Division.Divided divided(Resolved resolved, int page) {
    return Division.of(
        Planner.traced(resolved, new Problems()).orElseThrow().stages(),
        1,
        (sheet, room) -> sheet.steps().size() <= page);
  }

  /** The longest stretch of a ride-height job is from lowering to the end. */
  @Test
  void aJobIsDividedOnItsBlocksWhereNothingElseWillDo() {
    Resolved resolved = resolved("hoist");
    Sheet whole = planned(resolved);
    int firstOff = numbers(whole, false).min(Integer::compare).orElseThrow();
    int onTo =
        whole.steps().stream()
            .filter(it -> it.source() instanceof StepSource.Blocks on && on.part().isOn())
            .filter(it -> ((StepSource.Blocks) it.source()).part() != BlocksPart.APPLY_BRAKE)
            .map(Sheet.SheetStep::n)
            .min(Integer::compare)
            .orElseThrow();
    int page = Math.max(firstOff - onTo, whole.steps().size() - firstOff + 1) + 6;
    Division.Divided divided = divided(resolved, page);
    assertTrue(
        divided.stages().stream()
            .flatMap(it -> it.stage().orElseThrow().leaving().stream())
            .anyMatch(it -> it.standing().onBlocks()),
        divided.toString());
  }
}
