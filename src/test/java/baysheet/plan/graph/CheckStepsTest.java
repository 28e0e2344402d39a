package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.sheet.Sheet;
import baysheet.verify.AlteredSheets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where steps and checks stand that are due at a moment, or while something is off. */
class CheckStepsTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("lid-off", "at: engine", "Lid off", "lid")
          .procedure(
              "cap-eased",
              "at: vehicle\n"
                  + "behind: [lid-off]\n"
                  + "open: [{do: Ease the cap, disturb: two, moment: before-lifting}]")
          .procedure("deep", "at: wheel\nbehind: [roller-off, cap-eased]", "Deep", "one");

  private static SmallShop withRule(SmallShop shop, String when, String step) {
    return shop.with(
        "catalogue/rules.yaml",
        """
        consequences:
          seen: {when: {%s}, check: See it, moment: raised, step: {%s}, hold: yes, source: us}
        """
            .formatted(when, step));
  }

  @Test
  void aStepDueBeforeLiftingWaitsForItsAccess() {
    SHOP.job("hoist", "deep at front-left")
        .assertInOrder("Lid off", "Ease the cap", "Hoist it", "Roller off", "Deep");
  }

  /** Nuts are cracked loose through the wheel, on the ground: access that lifts is not meant. */
  @Test
  void aStepDueBeforeLiftingDoesNotWaitForAccessThatLifts() {
    SHOP.procedure(
            "deep",
            "at: wheel\n"
                + "behind: [roller-off]\n"
                + "open: [{do: Crack it, disturb: three, moment: before-lifting}, {do: Deep, undo:"
                + " one}]")
        .job("hoist", "deep at front-left")
        .assertInOrder("Crack it", "Hoist it", "Roller off", "Deep");
  }

  @Test
  void whatGivesAccessStaysOpenForAStepOnTheGround() {
    SHOP.procedure(
            "deep",
            "at: wheel\n"
                + "behind: [roller-off, lid-off]\n"
                + "open: [{do: Deep, undo: one}]\n"
                + "work: [{do: Top up, disturb: three, moment: on-the-ground}]")
        .job("hoist", "deep at front-left")
        .assertInOrder("Lid off", "Refit the vehicle", "Top up", "Refit the lid");
  }

  @Test
  void aStepBehindClosedAccessIsAFault() {
    SmallShop shop = SHOP.job("hoist", "deep at front-left");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    Collections.swap(steps, shop.at("Lid off"), shop.at("Ease the cap"));
    List<String> faults = shop.faults(AlteredSheets.inOrder(sheet, steps));
    assertTrue(faults.stream().anyMatch(fault -> fault.contains("lid@engine")), faults.toString());
  }

  /** The wheel is off for another work, and hides what is looked at all the same. */
  @Test
  void aLookWhileTheWheelIsOffComesBeforeAnotherWorkPutsItOn() {
    withRule(
            SHOP.procedure("side", "at: wheel\nbehind: [raise]", "Side", "three"),
            "undo: three",
            "while-off: roller")
        .job("hoist", "side at front-left", "deep at front-left")
        .assertInOrder("Roller off", "Refit the three", "See it", "Refit the roller");
    withRule(
            SHOP.procedure("side", "at: wheel\nbehind: [raise]", "Side", "three"),
            "undo: three",
            "while-off: roller")
        .job("hoist", "deep at front-left", "side at front-left")
        .assertInOrder("Roller off", "See it", "Refit the roller");
  }

  @Test
  void aLookOnceAnotherWorkHasPutTheWheelOnIsAFault() {
    SmallShop shop =
        withRule(
                SHOP.procedure("side", "at: wheel\nbehind: [raise]", "Side", "three"),
                "undo: three",
                "while-off: roller")
            .job("hoist", "side at front-left", "deep at front-left");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    Collections.swap(steps, shop.at("See it"), shop.at("Refit the roller"));
    List<String> faults = shop.faults(AlteredSheets.inOrder(sheet, steps));
    assertTrue(
        faults.stream().anyMatch(fault -> fault.contains("roller@front-left on before check")),
        faults.toString());
  }

  @Test
  void aLookAtAnotherWheelDoesNotWaitForThisOne() {
    SmallShop shop =
        withRule(
                SHOP.procedure("side", "at: wheel\nbehind: [raise]", "Side", "three"),
                "undo: three",
                "while-off: roller")
            .job("hoist", "deep at front-left", "side at rear-left");
    shop.assertInOrder("Refit the roller [front-left]", "Side", "See it [rear-left]");
  }

  /** What came off before the nut hides it again: the look comes between. */
  @Test
  void aLookBeforeItIsCoveredComesDirectlyBehindItsItem() {
    SmallShop shaft =
        SHOP.procedure(
            "deep",
            "at: wheel\n"
                + "behind: [roller-off]\n"
                + "open: [{do: Shaft out, undo: two}, {do: Nut off, undo: one}]");
    withRule(shaft, "undo: one", "before-covered: yes")
        .job("hoist", "deep at front-left")
        .assertInOrder("Refit the one", "See it", "Refit the two");
    withRule(shaft, "undo: one", "while-off: roller")
        .job("hoist", "deep at front-left")
        .assertInOrder("Refit the one", "Refit the two", "See it");
  }

  @Test
  void aLookBeforeItIsCoveredComesBeforeAccessCoversIt() {
    SmallShop shaft =
        SHOP.procedure("shaft-out", "at: wheel\nbehind: [roller-off]", "Shaft out", "two")
            .procedure(
                "deep",
                "at: wheel\n"
                    + "behind: [shaft-out]\n"
                    + "open: [{do: Cap off, undo: three}, {do: Nut off, undo: one}, {do: Ring off,"
                    + " undo: four}]");
    SmallShop shop =
        withRule(shaft, "undo: one", "before-covered: yes").job("hoist", "deep at front-left");
    shop.assertInOrder(
        "Refit the four", "Refit the one", "See it", "Refit the three", "Refit the two");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    Collections.swap(steps, shop.at("See it"), shop.at("Refit the three"));
    assertTrue(!shop.faults(AlteredSheets.inOrder(sheet, steps)).isEmpty());
    assertEquals(List.of(), shop.faults(sheet));
  }

  /** The drain is closed at working height, and the jack is away only once the lid is on. */
  @Test
  void aLookWhileAJackIsUnderAPartDoesNotWaitForAccessThatIsClosedAtAnotherHeight() {
    withRule(
            SmallShop.empty()
                .with(
                    "catalogue/more.yaml",
                    "items: {jack: {name: jack, kinds: [temporary, jacked], back: Jack away}}")
                .procedure(
                    "drained",
                    "at: engine\nbehind: [raise]\n"
                        + "open: [{do: Drain, undo: three, height: working}]")
                .procedure(
                    "lid-off",
                    "at: engine\nbehind: [raise]\nopen:\n"
                        + "  - {do: Set the jack, disturb: jack, height: wheels-clear}\n"
                        + "  - {do: Lid off, undo: lid, height: wheels-clear}")
                .procedure(
                    "belt",
                    "at: engine\nbehind: [lid-off, drained]\n"
                        + "open: [{do: Belt off, undo: two, height: wheels-clear}]"),
            "undo: two",
            "while-off: lid, once: yes")
        .job("hoist", "belt at engine")
        .assertInOrder(
            "Drain",
            "Set the jack",
            "Lid off",
            "Belt off",
            "Refit the two",
            "See it",
            "Refit the lid",
            "Jack away",
            "Refit the three");
  }
}
