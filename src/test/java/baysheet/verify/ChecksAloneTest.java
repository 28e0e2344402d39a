package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.Lists;
import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.plan.TracedPlan;
import baysheet.plan.stage.Division;
import baysheet.plan.stage.Division.Divided;
import baysheet.report.Problems;
import baysheet.resolve.ItemAt;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage.VehicleState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * When every step is done and the vehicle stands on its wheels, the checks that are left can have a
 * sheet of their own.
 */
class ChecksAloneTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              """
              consequences:
                gap: {when: {undo: two}, check: Look at the gap, moment: raised, source: us}
                pedal: {when: {undo: two}, check: Pump the pedal, moment: before-moving, source: us}
              """)
          .procedure("work", "at: vehicle\nbehind: [raise]", "Two off", "two")
          .job("hoist", "work at vehicle");

  private static TracedPlan plan(SmallShop shop) {
    return Planner.traced(shop.resolved(), new Problems()).orElseThrow();
  }

  private static boolean isAtTheEnd(CheckLine check) {
    return check.steps().isEmpty() && check.moment().compareTo(Moment.ON_THE_GROUND) > 0;
  }

  /** The stages where the checks at the end fit no page with a step on it. */
  private static Divided divided(TracedPlan plan, int page) {
    Predicate<Sheet> fits =
        it ->
            it.steps().isEmpty()
                || (it.steps().size() <= page
                    && it.checks().stream().noneMatch(ChecksAloneTest::isAtTheEnd));
    return Division.of(plan.stages(), 1, (sheet, room) -> fits.test(sheet));
  }

  @Test
  void theyHaveASheetOfTheirOwn() {
    TracedPlan plan = plan(SHOP);
    List<Sheet> stages = divided(plan, 1000).stages();
    assertEquals(2, stages.size());
    assertEquals(plan.sheet().steps().size(), stages.get(0).steps().size());
    Sheet alone = stages.get(1);
    assertEquals(List.of(), alone.sections());
    assertEquals(List.of(), alone.torque());
    assertEquals(
        plan.sheet().checks().stream().filter(ChecksAloneTest::isAtTheEnd).toList(),
        alone.checks());
    assertTrue(alone.checks().stream().anyMatch(it -> it.name().equals("pedal")));
    VehicleState state = alone.stage().orElseThrow().arrival().orElseThrow();
    assertEquals(plan.sheet().steps().size(), state.after());
    assertTrue(state.standing().isOnFloor());
    assertEquals(List.of(), state.off());
  }

  /** The way with one more sheet among the steps is taken where it will do. */
  @Test
  void stepsSpareTheSheetWhereTheyLeaveRoom() {
    TracedPlan plan = plan(SHOP);
    int last = plan.sheet().steps().size();
    List<Sheet> stages =
        Division.of(
                plan.stages(),
                1,
                (sheet, room) ->
                    sheet.steps().size() < last
                        && (sheet.steps().size() < last - 1
                            || sheet.checks().stream().noneMatch(ChecksAloneTest::isAtTheEnd)))
            .stages();
    assertEquals(2, stages.size());
    assertFalse(stages.get(1).steps().isEmpty());
  }

  /** What is done before the vehicle moves is not parted from the checks among which it stands. */
  @Test
  void noSheetBeginsAmongThem() {
    TracedPlan plan =
        plan(
            SHOP.procedure(
                "work",
                "at: vehicle\nbehind: [raise]\nopen: [{do: Two off, undo: two}]\n"
                    + "close: [{do: Two on, do-up: two}, {do: Run it, moment: before-moving}]"));
    List<Sheet.SheetStep> steps = plan.sheet().steps();
    assertEquals(Moment.BEFORE_MOVING, steps.get(steps.size() - 1).moment());
    Divided divided = divided(plan, 1000);
    assertEquals(List.of(), divided.stages());
    Division.TooLong tooLong = divided.tooLong().orElseThrow();
    assertTrue(tooLong.checks());
    assertEquals(steps.size(), tooLong.steps().orElseThrow().last());
  }

  @Test
  void checksThatFitNoPageAreNamedAlone() {
    Divided divided =
        Division.of(
            plan(SHOP).stages(),
            1,
            (sheet, room) -> sheet.checks().stream().noneMatch(ChecksAloneTest::isAtTheEnd));
    assertEquals(List.of(), divided.stages());
    Division.TooLong tooLong = divided.tooLong().orElseThrow();
    assertTrue(tooLong.checks());
    assertEquals(Optional.empty(), tooLong.steps());
  }

  @Test
  void aCheckOfTheRaisedVehicleOnThatSheetIsFound() {
    TracedPlan plan = plan(SHOP);
    List<Sheet> stages = divided(plan, 1000).stages();
    List<CheckLine> raised =
        stages.get(0).checks().stream()
            .filter(it -> it.moment() == Moment.RAISED && it.steps().isEmpty())
            .toList();
    assertEquals(List.of("gap"), raised.stream().map(CheckLine::name).toList());
    List<CheckLine> some = new ArrayList<>(stages.get(0).checks());
    some.removeAll(raised);
    List<CheckLine> more = new ArrayList<>(raised);
    more.addAll(stages.get(1).checks());
    List<String> faults =
        StageVerifier.faults(
            plan.sheet(),
            List.of(
                Altered.with(stages.get(0), "checks", some),
                Altered.with(stages.get(1), "checks", more)),
            SHOP.resolved());
    assertEquals(List.of("the check gap, RAISED, stands on stage 2"), faults);
  }

  @Test
  void aSheetWithoutStepsThatIsNotTheLastIsFound() {
    TracedPlan plan = plan(SHOP);
    List<Sheet> stages = divided(plan, 1000).stages();
    List<Sheet> swapped =
        List.of(
            Altered.with(stages.get(0), "sections", List.of()),
            Altered.with(stages.get(1), "sections", stages.get(0).sections()));
    assertEquals(
        List.of("a stage without steps is not the last"),
        StageVerifier.faults(plan.sheet(), swapped, SHOP.resolved()));
  }

  /** On blocks, off the floor, with something loose or about to move, nothing is finished. */
  @Test
  void restBehindTheLastStepNeedsFinishedWork() {
    Sheet whole = plan(SHOP).sheet();
    int end = whole.steps().size();
    assertEquals(List.of(), rest(whole, Set.of()));
    List<String> unfinished = List.of("the work is not finished");
    assertEquals(unfinished, rest(whole, Set.of(new ItemAt("two", Place.VEHICLE))));
    Sheet.SheetStep last = whole.steps().get(end - 1);
    for (Sheet.Where other :
        List.of(
            new Sheet.Where(last.moment(), Height.WORKING, last.places()),
            new Sheet.Where(Moment.BEFORE_MOVING, last.height(), last.places()))) {
      assertEquals(
          unfinished,
          rest(
              AlteredSheets.inOrder(
                  whole,
                  Lists.replaced(whole.steps(), last, it -> Altered.with(it, "where", other))),
              Set.of()));
    }
  }

  private static List<String> rest(Sheet whole, Set<ItemAt> loose) {
    return new RestCheck(whole, SHOP.resolved(), whole.steps().size(), loose).faults();
  }
}
