package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.plan.SmallShop;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.StepSource.HeightPart;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What nobody may do at a vehicle that is up, each in a sheet that was altered so. */
class HeightCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              items:
                lever: {name: lever, kinds: [inside]}
                jack: {name: jack, kinds: [temporary, jacked], back: Take the jack away}
              cautions:
                pads: {signal: WARNING, when: {kind: support}, do: Set the pads, hazard: it slides, consequence: it crushes, source: us}
              """)
          .procedure(
              "hoisted",
              "at: vehicle\nserves: raise\nneeds: lift\nopen:\n"
                  + "  - {do: Hoist it, undo: feet}\n"
                  + "  - {do: Try it}")
          .procedure(
              "low",
              "at: wheel\nbehind: [roller-off]\nopen:\n"
                  + "  - {do: Look, undo: one, height: working}\n"
                  + "  - {do: Press, undo: two, height: wheels-clear}")
          .procedure(
              "held",
              "at: wheel\nbehind: [raise]\nopen:\n"
                  + "  - {do: Set the jack, disturb: jack, height: wheels-clear}\n"
                  + "  - {do: Undo it, undo: three, height: wheels-clear}")
          .procedure(
              "inside",
              "at: vehicle\nbehind: [raise]\nopen:\n"
                  + "  - {do: Look below, undo: four, height: working}\n"
                  + "  - {do: Pull the lever, undo: lever}");

  private static final SmallShop LOW = SHOP.job("hoist", "low at front-left");

  /** The faults once some of the steps stand elsewhere. */
  private static List<String> faults(SmallShop shop, Consumer<List<Sheet.SheetStep>> change) {
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps = new ArrayList<>(sheet.steps());
    change.accept(steps);
    return shop.faults(AlteredSheets.inOrder(sheet, steps));
  }

  private static void assertFault(List<String> faults, String pattern) {
    assertTrue(
        faults.stream().anyMatch(fault -> fault.matches("step \\d+ " + pattern)),
        faults.toString());
  }

  private static int at(List<Sheet.SheetStep> steps, String beginning) {
    for (int i = 0; i < steps.size(); i++) {
      if (Printed.text(steps.get(i)).startsWith(beginning)) {
        return i;
      }
    }
    throw new AssertionError("no " + beginning + " in " + steps);
  }

  /** The number of the first change to a height. */
  private static int change(List<Sheet.SheetStep> steps, Height to) {
    return part(steps, to, HeightPart.MOVE);
  }

  private static int part(List<Sheet.SheetStep> steps, Height to, HeightPart part) {
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).source() instanceof StepSource.HeightChange change
          && change.to() == to
          && change.part() == part) {
        return i;
      }
    }
    throw new AssertionError("no change to " + to + " in " + steps);
  }

  private static Sheet.SheetStep high(Sheet.SheetStep step, Height height) {
    return Altered.with(step, "where", new Sheet.Where(step.moment(), height, step.places()));
  }

  @Test
  void sheetsAsPlannedHaveNone() {
    for (String work : List.of("low at front-left", "held at front-left", "inside at vehicle")) {
      assertEquals(List.of(), faults(SHOP.job("hoist", work), steps -> {}));
    }
  }

  @Test
  void theVehicleStaysUpWithoutAStepThatLowersIt() {
    assertFault(
        faults(LOW, steps -> steps.remove(change(steps, Height.WHEELS_CLEAR))),
        "is for \\[WHEELS_CLEAR\\], and the vehicle is at working");
  }

  @Test
  void aStepSaysTheHeightThatTheVehicleIsAt() {
    assertFault(
        faults(
            LOW,
            steps -> {
              int press = at(steps, "Press");
              steps.set(press, high(steps.get(press), Height.WORKING));
            }),
        "says working, and the vehicle is at wheels-clear");
  }

  @Test
  void nobodyIsInsideAVehicleThatIsUp() {
    SmallShop shop = SHOP.job("hoist", "inside at vehicle");
    assertFault(
        faults(
            shop,
            steps -> {
              Sheet.SheetStep lever = steps.remove(at(steps, "Pull the lever"));
              steps.add(at(steps, "Look below") + 1, high(lever, Height.WORKING));
            }),
        "is for \\[GROUND\\], and the vehicle is at working");
  }

  @Test
  void noWheelIsOffWhenTheVehicleComesToTheGround() {
    assertFault(
        faults(
            LOW,
            steps -> {
              int down = change(steps, Height.WHEELS_CLEAR);
              StepSource toGround =
                  new StepSource.HeightChange(Height.WORKING, Height.GROUND, HeightPart.MOVE);
              Sheet.SheetStep step = Altered.with(steps.get(down), "source", toGround);
              steps.set(down, high(step, Height.GROUND));
            }),
        "brings the vehicle to the ground, and roller@front-left is off");
  }

  @Test
  void nothingMovesWhileAJackIsUnderAPart() {
    SmallShop shop = SHOP.job("hoist", "held at front-left", "inside at vehicle");
    assertFault(
        faults(
            shop,
            steps -> {
              Sheet.SheetStep away = steps.remove(at(steps, "Take the jack away"));
              steps.add(at(steps, "Refit the vehicle") + 1, away);
            }),
        "moves the vehicle, and jack@front-left is under it");
  }

  @Test
  void workBetweenRaisingAndTheTestIsAFault() {
    assertFault(
        faults(
            LOW,
            steps -> steps.add(at(steps, "Roller off") + 1, steps.remove(at(steps, "Try it")))),
        "comes before hoisted/open/2");
  }

  @Test
  void wheelNutsAreNotTightenedForGoodWhileTheVehicleIsUp() {
    assertFault(
        faults(
            LOW,
            steps -> {
              Sheet.SheetStep tighten = steps.remove(at(steps, "Torque the roller nuts"));
              steps.add(at(steps, "Refit the vehicle"), high(tighten, Height.WORKING));
            }),
        "is for \\[GROUND\\], and the vehicle is at working");
  }

  /** From the ground the pads are tried with the wheels just clear. */
  @Test
  void noLiftGoesFromTheGroundToWorkingHeightInOneGo() {
    SmallShop shop = SHOP.job("hoist", "low at front-left", "inside at vehicle");
    Sheet sheet = shop.sheet();
    assertTrue(
        sheet.steps().stream()
            .anyMatch(
                step ->
                    step.source() instanceof StepSource.HeightChange change
                        && change.from() == Height.GROUND));
    assertFault(
        faults(
            shop,
            steps -> {
              int ground = change(steps, Height.GROUND);
              StepSource up =
                  new StepSource.HeightChange(Height.GROUND, Height.WORKING, HeightPart.MOVE);
              steps.add(
                  ground + 1, high(Altered.with(steps.get(ground), "source", up), Height.WORKING));
            }),
        "brings the vehicle from ground to working");
  }

  @Test
  void whatRaisingIsWarnedOfStandsAtEachChange() {
    assertFault(
        faults(
            LOW,
            steps -> {
              int down = change(steps, Height.WHEELS_CLEAR);
              steps.set(
                  down,
                  Altered.with(
                      steps.get(down), "letters", new Sheet.Letters(List.of(), List.of())));
            }),
        "moves the vehicle without the letter of caution pads");
  }

  @Test
  void anApprenticeStopsWhereTheVehicleIsRaisedAgain() {
    SmallShop again =
        SHOP.procedure(
                "again",
                "at: wheel\nbehind: [raise]\nopen:\n"
                    + "  - {do: Look, undo: one, height: working}\n"
                    + "  - {do: Press, undo: two, height: wheels-clear}\n"
                    + "  - {do: Look again, undo: three, height: working}")
            .job("hoist", "again at front-left");
    SmallShop taught =
        new SmallShop(again.texts().replacing("2026-03-02/1.yaml", "by: T1", "by: T1\nwith: A1"));
    assertEquals(List.of(), faults(taught, steps -> {}));
    assertFault(
        faults(
            taught,
            steps -> {
              int up = part(steps, Height.WORKING, HeightPart.LOCKS);
              steps.set(up, Altered.with(steps.get(up), "hold", false));
            }),
        "raises the vehicle again, and nobody looks before an apprentice goes under");
  }

  /** Each part of a change stands by itself, and none may be left out or come late. */
  @Test
  void noPartOfAChangeIsLeftOut() {
    List<Sheet.SheetStep> steps = LOW.sheet().steps();
    int parts = 0;
    for (int i = 0; i < steps.size(); i++) {
      if (steps.get(i).source() instanceof StepSource.HeightChange) {
        int index = i;
        assertTrue(!faults(LOW, some -> some.remove(index)).isEmpty(), "without " + steps.get(i));
        parts++;
      }
    }
    assertTrue(parts >= 4, parts + " parts");
  }

  /** A lift that rests on its locks cannot be lowered. */
  @Test
  void theLocksAreFreeBeforeTheLiftComesDown() {
    SmallShop high = SHOP.job("hoist", "roller-off at front-left");
    int free = part(high.sheet().steps(), Height.GROUND, HeightPart.FREE_LOCKS);
    assertFault(faults(high, steps -> steps.remove(free)), "lowers a lift that rests on its locks");
  }
}
