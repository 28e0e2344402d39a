package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Height;
import baysheet.plan.SmallShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a check that is a step waits for, and what waits for it, where works meet. */
class ChecksAmongWorksTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure("side", "at: wheel\nbehind: [raise]", "Side", "three");

  /** With rules of which each is a name, what brings it, and how it is done. */
  private static SmallShop checked(SmallShop shop, String... rules) {
    StringBuilder text = new StringBuilder("consequences:\n");
    for (int i = 0; i < rules.length; i += 3) {
      text.append(
          "  %s: {when: {%s}, check: See %s, moment: raised, step: {%s}, source: us}\n"
              .formatted(rules[i], rules[i + 1], rules[i], rules[i + 2]));
    }
    return shop.with("catalogue/rules.yaml", text.toString());
  }

  private static void assertLoop(SmallShop shop) {
    assertEquals(
        List.of("order-loop"),
        shop.problems().stream().map(problem -> problem.code().word()).toList());
  }

  private static List<String> looks(SmallShop shop) {
    return shop.steps().stream().filter(step -> step.startsWith("See")).toList();
  }

  /** A lift has both ends up together: one look serves for both. */
  @Test
  void aLookForTheWholeJobIsOneOnALift() {
    assertEquals(
        List.of("See it [vehicle]"),
        looks(
            checked(SHOP, "it", "undo: one", "once: yes")
                .job("hoist", "deep at front-left", "deep at rear-right")));
  }

  /** A look under the raised vehicle is not for what somebody does once it stands again. */
  @Test
  void workOnceTheVehicleIsDownBringsNoLookWhileItIsUp() {
    SmallShop shop =
        checked(
            SHOP.procedure("lid-off", "at: engine", "Lid off", "lid")
                .procedure(
                    "filled",
                    "at: engine\nbehind: [lid-off]\n"
                        + "work: [{do: Fill up, disturb: four, moment: on-the-ground}]"),
            "it",
            "disturb: four",
            "");
    assertEquals(List.of(), looks(shop.job("hoist", "filled at engine", "deep at front-left")));
  }

  /** Where a rule wants off what the procedure has on before, a person must decide. */
  @Test
  void aLookThatItsOwnWorkMakesImpossibleIsReported() {
    assertLoop(
        checked(
                SHOP.procedure(
                    "shut",
                    "at: engine\nopen: [{do: Off, undo: two}]\n"
                        + "close: [{do: On, do-up: two}, {do: Adjust, disturb: four}]"),
                "it",
                "disturb: four",
                "while-off: two")
            .job("hoist", "shut at engine", "deep at front-left"));
  }

  /** A wheel that is on before the work begins is no longer waited for. */
  @Test
  void aWheelThatAnotherWorkHasPutOnBeforeIsNotOffForTheLook() {
    SmallShop shop =
        SHOP.procedure("first", "at: wheel\nbehind: [raise]", "First", "roller")
            .procedure("then", "at: wheel\nbehind: [raise]\nafter: [first]", "Then", "two");
    checked(shop, "it", "undo: two", "while-off: roller")
        .job("hoist", "then at front-left", "first at front-left")
        .assertInOrder("First", "Refit the roller", "Then", "Refit the two", "See it");
  }

  @Test
  void aWheelElsewhereThatIsOnBeforeIsNotOffForALookOnceAllIsBack() {
    SmallShop shop =
        SHOP.procedure("first", "at: wheel\nbehind: [raise]", "First", "roller")
            .procedure("then", "at: vehicle\nbehind: [raise]\nafter: [first]", "Then", "two");
    checked(shop, "it", "undo: two", "while-off: lid, all-back: yes")
        .job("hoist", "then at vehicle", "first at front-left")
        .assertInOrder("First", "Refit the roller", "Then", "Refit the two", "See it");
    checked(shop, "it", "undo: two", "while-off: roller, all-back: yes")
        .job("hoist", "then at vehicle", "first at front-left")
        .assertInOrder("First", "Refit the roller", "Then", "Refit the two", "See it");
  }

  private static SmallShop lamp(String seal, String work, String off) {
    return checked(
            SHOP.procedure(
                    "door-open",
                    "at: engine\n"
                        + "open: [{do: Door open, undo: lid}%s]\n".formatted(seal)
                        + work)
                .procedure("lamp", "at: engine\nbehind: [door-open]", "Lamp out", "one"),
            "it",
            "undo: one",
            "while-off: " + off)
        .job("hoist", "lamp at engine");
  }

  /** The door is still open for the look, but what it was sealed with is in place. */
  @Test
  void aLookWaitsForWhatTheAccessPutsOnInItsWork() {
    SmallShop shop =
        lamp(", {do: Seal off, undo: four}", "work: [{do: Seal on, do-up: four}]", "lid");
    Precedence.of(shop)
        .comesBefore("door-open/work/1", "check/it")
        .comesBefore("check/it", "door-open/open/1/back/lid");
    shop.assertInOrder("Lamp out", "Seal on", "See it", "Refit the lid");
  }

  /** The hinge has nothing to do with the lamp. */
  @Test
  void aLookDoesNotWaitForWorkOfTheAccessThatPutsNothingOn() {
    Precedence.of(lamp("", "work: [{do: Oil the hinge, disturb: three}]", "lid"))
        .mayComeBehind("door-open/work/1", "check/it");
  }

  /** Bleeding at the rear needs all closed, but not the front in the air. */
  @Test
  void aLookOnceAllIsBackDoesNotKeepTheOtherEndUp() {
    SmallShop shop =
        checked(SHOP, "it", "undo: three", "all-back: yes")
            .job("floor", "deep at front-left", "side at rear-left");
    shop.assertInOrder(
        "Jack it up [front]",
        "Refit the vehicle on its wheels [front]",
        "Jack it up [rear]",
        "See it",
        "Refit the vehicle on its wheels [rear]");
    Precedence.of(shop)
        .comesBefore("jacked/open/1/back/feet at front", "check/it")
        .comesBefore("check/it", "jacked/open/1/back/feet at rear");
  }

  /** What lies around the work covers a nut as well as what lies on it. */
  @Test
  void aLookBeforeItIsCoveredComesBeforeItsAccessIsClosed() {
    SmallShop shop =
        checked(
                SHOP.procedure("shaft-out", "at: wheel\nbehind: [roller-off]", "Shaft out", "two")
                    .procedure("nut", "at: wheel\nbehind: [shaft-out]", "Nut off", "four"),
                "it",
                "undo: four",
                "before-covered: yes")
            .job("hoist", "nut at front-left");
    Precedence.of(shop).comesBefore("check/it", "shaft-out/open/1/back/two");
    shop.assertInOrder("Refit the four", "See it", "Refit the two", "Refit the roller");
  }

  /** Only what the rule names is looked at; what came off with it may cover it. */
  @Test
  void aLookBeforeItIsCoveredIsAtTheNamedThingOfSeveral() {
    checked(
            SHOP.procedure("pair", "at: wheel\nbehind: [raise]", "Both off", "one", "two"),
            "it",
            "undo: two",
            "before-covered: yes")
        .job("hoist", "pair at front-left")
        .assertInOrder("Refit the two", "See it", "Refit the one");
  }

  private static final SmallShop TWICE =
      checked(
              SHOP,
              "tightness",
              "undo: one",
              "",
              "play",
              "undo: one",
              "",
              "paint",
              "undo: three",
              "")
          .job("hoist", "deep at front-left", "side at front-right");

  @Test
  void looksAtTheSameWorkKeepTheOrderOfTheCatalogue() {
    Precedence.of(TWICE).comesBefore("check/tightness", "check/play");
    TWICE.assertInOrder("See tightness", "See play");
  }

  @Test
  void looksAtDifferentWorksDoNotWaitForOneAnother() {
    Precedence.of(TWICE)
        .mayComeBehind("check/tightness", "check/paint")
        .mayComeBehind("check/play", "check/paint");
  }

  /** Each look is made where its own work was, not where that of another rule was. */
  @Test
  void aLookIsMadeAtTheHeightOfTheWorkThatBringsIt() {
    SmallShop shop =
        checked(
                SHOP.procedure(
                        "low",
                        "at: engine\nbehind: [raise]\n"
                            + "open: [{do: Low, undo: two, height: wheels-clear}]")
                    .procedure(
                        "high",
                        "at: engine\nbehind: [raise]\n"
                            + "open: [{do: High, undo: four, height: working}]"),
                "low",
                "undo: two",
                "",
                "high",
                "undo: four",
                "")
            .job("hoist", "low at engine", "high at engine");
    assertEquals(Height.WHEELS_CLEAR, shop.sheet().steps().get(shop.at("See low")).height());
    assertEquals(Height.WORKING, shop.sheet().steps().get(shop.at("See high")).height());
  }

  /**
   * A jack under a part of the engine holds the vehicle at one height. With it, the look cannot
   * wait for a drain that is closed higher up; without it, it does.
   */
  private static SmallShop jacked(String belt, String lid, String work) {
    return checked(
            SHOP.with(
                    "catalogue/more.yaml",
                    "items: {jack: {name: jack, kinds: [temporary, jacked], back: Jack away}}")
                .procedure(
                    "drained",
                    "at: engine\nbehind: [raise]\n"
                        + "open: [{do: Drain, undo: three, height: working}]")
                .procedure(
                    "lid-off",
                    "at: engine\nbehind: [raise]\nopen:\n"
                        + lid
                        + "  - {do: Lid off, undo: lid, height: wheels-clear}\n"
                        + work)
                .procedure(
                    "prop", "at: engine\nbehind: [raise]\nopen:\n" + SET + "  - {do: P, undo: one}")
                .procedure(
                    "belt",
                    "at: engine\nbehind: [lid-off, drained]\nopen:\n"
                        + belt
                        + "  - {do: Belt off, undo: two, height: wheels-clear}"),
            "it",
            "undo: two",
            "while-off: lid, once: yes")
        .job("hoist", "belt at engine", "prop at engine");
  }

  private static final String SET = "  - {do: Set the jack, disturb: jack, height: wheels-clear}\n";

  @Test
  void aJackThatIsAwayBeforeTheLookDoesNotKeepItFromWaitingForItsAccess() {
    SmallShop away = jacked(SET, "", "").job("hoist", "belt at engine");
    Precedence.of(away)
        .comesBefore("belt/open/1/back/jack", "check/it")
        .comesBefore("drained/open/1/back/three", "check/it");
    away.assertInOrder("Belt off", "Jack away", "Refit the three", "See it", "Refit the lid");
  }

  @Test
  void aJackOfAnotherWorkDoesNotKeepALookFromWaitingForItsAccess() {
    Precedence.of(jacked("", "", "")).comesBefore("drained/open/1/back/three", "check/it");
  }

  /** Nothing says that this jack is there before the look, so that it comes when all is back. */
  @Test
  void aJackThatMayComeLaterDoesNotKeepALookFromWaitingForItsAccess() {
    String late =
        "work: ["
            + SET.strip().substring(2)
            + "]\nclose: [{do: Lid on, do-up: lid}, {do: Jack out, do-up: jack}]\n";
    Precedence.of(jacked("", "", late).job("hoist", "belt at engine"))
        .comesBefore("drained/open/1/back/three", "check/it");
  }

  @Test
  void aJackThatStaysUntilTheLidIsOnKeepsALookFromWaitingForTheDrain() {
    Precedence.of(jacked("", SET, "").job("hoist", "belt at engine"))
        .mayComeBehind("drained/open/1/back/three", "check/it")
        .comesBefore("check/it", "lid-off/open/2/back/lid");
  }
}
