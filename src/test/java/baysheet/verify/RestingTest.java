package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import baysheet.sheet.Sheet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Behind which steps a vehicle must not be left until another day. */
class RestingTest {
  private static final SmallShop SHOP =
      SmallShop.bolted()
          .with(
              "catalogue/more.yaml",
              """
              items:
                screw: {name: bleed screw, kinds: [bleed-screw]}
              consequences:
                clear: {when: {kind: support}, check: Is the bay clear, moment: before-lifting, source: us}
                bled: {when: {undo: two}, check: Bleed it, moment: raised, step: {height: working}, source: us}
                looked: {when: {undo: two}, check: Look at it, moment: raised, step: {height: working}, source: us}
              """)
          .procedure(
              "wheel",
              """
              at: wheel
              behind: [raise]
              open:
                - {do: Nuts off, undo: roller-nut}
                - {do: Look at the nuts}
                - {do: Roller off, undo: roller}
              """)
          .procedure(
              "low",
              "at: wheel\nbehind: [wheel]\nopen: [{do: Low, undo: one, height: wheels-clear}]")
          .procedure("bled", "at: wheel\nbehind: [raise]", "Open", "two")
          .procedure(
              "drained",
              """
              at: wheel
              behind: [raise]
              open:
                - {do: Three off, undo: three}
              work:
                - {do: Look}
                - {do: Turn the screw, disturb: screw}
                - {do: Shut the screw}
              """)
          .procedure(
              "driven",
              """
              at: vehicle
              behind: [raise]
              work:
                - {do: Look up}
                - {do: Rock it, moment: on-the-ground}
                - {do: Back it out, moment: before-moving}
                - {do: Drive it, moment: road-test}
              """);

  private static final SmallShop WHEEL = SHOP.job("hoist", "wheel at front-left");
  private static final SmallShop LOW = SHOP.job("hoist", "low at front-left");
  private static final SmallShop DRIVEN = SHOP.job("hoist", "driven at vehicle");

  private static final String MOVED = "the vehicle is being moved";
  private static final String BLED = "a circuit is being bled, or an engine run";
  private static final ItemAt NUTS = new ItemAt("roller-nut", Place.FRONT_LEFT);

  private static List<String> behind(SmallShop shop, String step, ItemAt... loose) {
    Spoiled whole = Spoiled.of(shop);
    Sheet sheet = whole.sheet();
    return new RestCheck(sheet, shop.resolved(), whole.step(step).n(), Set.of(loose)).faults();
  }

  private static void assertRests(SmallShop shop, String... steps) {
    for (String step : steps) {
      assertEquals(List.of(), behind(shop, step), step);
    }
  }

  @Test
  void itRestsBetweenSteps() {
    assertRests(WHEEL, "height/ground/ground/brake", "Roller off", "wheel/open/1/back/roller-nut");
    assertRests(DRIVEN, "Look up", "Rock it");
    assertRests(SHOP.job("hoist", "drained at front-left"), "Three off", "Shut the screw");
  }

  @Test
  void itDoesNotStandOnWheelsThatAreNotTight() {
    assertEquals(
        List.of("the vehicle stands on its wheels, and these are not tight: [" + NUTS + "]"),
        behind(DRIVEN, "Rock it", NUTS));
    assertEquals(List.of(), behind(DRIVEN, "Look up", NUTS));
  }

  @Test
  void itDoesNotRestWhereTheVehicleIsAboutToMove() {
    assertEquals(List.of("the vehicle is about to move"), behind(DRIVEN, "Back it out"));
  }

  @Test
  void itDoesNotRestBetweenChecksAndWhatTheyAreFor() {
    assertEquals(
        List.of("the checks before it belong to the next step"),
        behind(WHEEL, "checkpoint/before-lifting"));
  }

  @Test
  void itDoesNotRestBetweenChecksThatAreSteps() {
    SmallShop shop = SHOP.job("hoist", "bled at front-left");
    List<String> checks =
        shop.sheet().steps().stream()
            .filter(step -> step.phase() == Sheet.Phase.CHECK)
            .map(step -> step.source().id())
            .toList();
    assertEquals(2, checks.size());
    assertEquals(List.of(BLED), behind(shop, checks.get(0)));
    assertRests(shop, checks.get(1), "Open", "Refit the two");
  }

  @Test
  void itDoesNotRestWhileAScrewIsOpen() {
    SmallShop shop = SHOP.job("hoist", "drained at front-left");
    assertEquals(List.of(BLED), behind(shop, "Turn the screw"));
    assertEquals(List.of(BLED), behind(shop, "Look"));
  }

  /** Whatever is moved there, and wherever else a screw is opened. */
  @Test
  void itRestsAmongStepsOfOneWorkThatOpensNoScrew() {
    SmallShop shop =
        SHOP.procedure(
                "moved",
                """
                at: wheel
                behind: [raise]
                work:
                  - {do: Peek}
                  - {do: Shift it, disturb: four}
                  - {do: Peek again}
                """)
            .job("hoist", "moved at front-left", "drained at rear-left");
    assertRests(shop, "Peek [", "Shift it");
  }

  @Test
  void itDoesNotRestBeforeTheVehicleIsChocked() {
    int chocks = Spoiled.of(WHEEL).step("chocks/set/vehicle").n();
    assertEquals(
        List.of("the chocks of step " + chocks + " belong to what is done before"),
        behind(WHEEL, "Refit the vehicle on its wheels"));
  }

  @Test
  void itDoesNotRestWhileTheVehicleIsMoved() {
    String change = "height/working/wheels-clear/";
    assertEquals(List.of(MOVED), behind(LOW, change + "look"));
    assertEquals(List.of(MOVED), behind(LOW, change + "free-locks"));
    assertEquals(List.of(MOVED), behind(LOW, "height/working/ground/free-locks"));
    assertRests(LOW, change + "move", "height/wheels-clear/working/locks", "Refit the one");
  }

  @Test
  void noPartIsLeftWithoutItsFasteners() {
    List<String> dangling = List.of("nothing holds roller@front-left");
    assertEquals(dangling, behind(WHEEL, "Nuts off"));
    assertEquals(dangling, behind(WHEEL, "Look at the nuts"));
    assertEquals(dangling, behind(WHEEL, "Refit the roller"));
  }

  /** Nuts of one wheel hold no other. */
  @Test
  void whatTwoWorksTakeOffHoldsNothingOfEachOther() {
    SmallShop shop = SHOP.job("hoist", "wheel at front-left", "drained at rear-left");
    assertRests(shop, "Roller off", "wheel/open/1/back/roller-nut", "Refit the three");
  }
}
