package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the procedures of a job write is on its sheet, in their order and in their words. */
class ProcedureCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 2, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, reuse: no}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                arm: {name: arm, kinds: []}
                line: {name: line, kinds: []}
                clip: {name: clip, kinds: []}
                stud: {name: stud, kinds: []}
                wedge: {name: wedge, kinds: [], left: wheels wedged}
              """)
          .procedure(
              "big",
              """
              at: wheel
              parts: [{part: seal, count: 2}]
              open:
                - {do: Ask for the seals, moment: evening-before}
                - {do: One off, undo: one}
                - {do: Swing it out, disturb: arm, back: Swing it in}
                - {do: Turn it back, slacken: clip}
                - {do: Take it off and cap it, undo: stud, apply: grease, back: Put it on}
                - {do: Take it out, undo: [deep-bolt, two]}
              work:
                - {do: Look at it, hold: yes}
                - {do: Look again}
                - {do: Bend it, disturb: arm, back: Bend it straight}
              """);

  private static final SmallShop BIG = SHOP.job("floor", "big at front-left", "big at rear-left");

  private static final String LEFT = " [front-left]";

  @Test
  void stepsComeInTheOrderInWhichTheyAreWritten() {
    Spoiled spoiled = Spoiled.of(BIG);
    int first = spoiled.step("Look at it" + LEFT).n();
    spoiled
        .before("Look at it" + LEFT, "Look again" + LEFT)
        .with("Look at it" + LEFT, "n", first + 1)
        .with("Look again" + LEFT, "n", first)
        .is(
            "Look again" + LEFT,
            "comes before step %d, which is written first".formatted(first + 1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Look again", "Swing it out", "Bend it", "Take it off and cap it"})
  void noStepIsMissingThatDoesMoreThanTakeSomethingOff(String step) {
    Spoiled.of(BIG)
        .without(step + LEFT)
        .says("\"" + step + "\" of big at front-left is not on the sheet");
  }

  /** Another step may take it off. */
  @Test
  void aStepThatOnlyTakesSomethingOffMayBeGone() {
    for (String step : List.of("One off", "Take it out")) {
      Spoiled spoiled = Spoiled.of(BIG).without(step + LEFT);
      spoiled.saysNothingOf("is not on the sheet");
      spoiled.says("and no step does");
    }
  }

  @Test
  void whatIsDueTheEveningBeforeIsSaidThere() {
    Spoiled.of(BIG)
        .sheet("evening", List.of())
        .says("\"Ask for the seals\" of big at front-left is not on the sheet");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Swing it in", "Bend it straight"})
  void whatIsMovedAsideIsPutRight(String back) {
    Spoiled.of(BIG)
        .without(back + LEFT)
        .says("\"" + back + "\" of big at front-left is not on the sheet");
  }

  @Test
  void aStopIsAStop() {
    Spoiled.of(BIG)
        .with("Look at it" + LEFT, "hold", false)
        .isOnly("Look at it" + LEFT, "is no hold point, and its procedure wants one");
  }

  private static StepSource.WrittenAt at(Sheet.Phase chain, int index) {
    return new StepSource.WrittenAt("big", chain, index);
  }

  @Test
  void aStepSaysWhatItsProcedureSaysThere() {
    Spoiled.of(BIG)
        .with(
            "Look again" + LEFT,
            "source",
            new StepSource.Written(at(Sheet.Phase.WORK, 2), "Look away"))
        .says("says that it is big/work/2, and is not");
    Spoiled.of(BIG)
        .with("Swing it in" + LEFT, "source", new StepSource.Back(at(Sheet.Phase.OPEN, 3), "Swing"))
        .says("says that it is big/open/3/back, and is not");
    Spoiled put = Spoiled.of(BIG);
    put.with("big/open/2/back/one" + LEFT, "source.of", at(Sheet.Phase.OPEN, 9))
        .says("says that it is big/open/9/back/one, and is not");
  }

  @Test
  void onlyWhatItsProcedureSlackensIsSaidToBeSlackened() {
    ItemAt clip = new ItemAt("clip", Place.FRONT_LEFT);
    ItemAt one = new ItemAt("one", Place.FRONT_LEFT);
    Spoiled.of(BIG)
        .with("Turn it back" + LEFT, "actions.slacken", List.of())
        .is("Turn it back" + LEFT, "takes off " + clip + ", and its procedure says otherwise");
    Spoiled.of(BIG)
        .with("One off" + LEFT, "actions.slacken", List.of(one))
        .is("One off" + LEFT, "only slackens " + one + ", and its procedure says otherwise");
  }

  @Test
  void whatOneWorkTakesOffIsNotOnlySlackenedForAnother() {
    SmallShop shop =
        SHOP.procedure("turned", "at: vehicle\nopen: [{do: Turn it, slacken: lid}]")
            .procedure("removed", "at: vehicle\nopen: [{do: Pull it, undo: lid}]")
            .job("floor", "turned at vehicle", "removed at vehicle");
    ItemAt lid = new ItemAt("lid", Place.VEHICLE);
    Spoiled.of(shop)
        .with("Pull it", "actions.slacken", List.of(lid))
        .is("Pull it", "only slackens " + lid);
  }

  /** The bay has no such lift, and nothing was left that has to be taken away. */
  @Test
  void whatAStepLeavesIsTakenAway() {
    SmallShop shop =
        SHOP.procedure(
                "hoisted",
                """
                at: vehicle
                serves: raise
                needs: lift
                open:
                  - {do: Hoist it, undo: feet}
                  - {do: Take the wedges away, takes-away: wedge}
                """)
            .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "lid")
            .job("hoist", "below at vehicle");
    ItemAt wedge = new ItemAt("wedge", Place.VEHICLE);
    for (String how : List.of("actions.undo", "actions.disturb")) {
      Spoiled.of(shop)
          .with("Below", how, List.of(wedge))
          .is("Below", "leaves wedge, and none takes it away");
    }
  }

  @Test
  void partsAreCountedOverAllWorks() {
    assertEquals(
        List.of(4, 4), BIG.sheet().equipment().parts().stream().map(it -> it.count()).toList());
    var parts = BIG.sheet().equipment().parts();
    for (int i = 0; i < parts.size(); i++) {
      var part = parts.get(i);
      var fewer = new java.util.ArrayList<>(parts);
      fewer.set(i, Altered.with(part, "count", 3));
      String wants = part.fastener() ? "the job wants 4 new × Deep bolt" : "the job wants 4 × seal";
      Spoiled.of(BIG).sheet("equipment.parts", fewer).says(wants);
      fewer.remove(i);
      Spoiled.of(BIG).sheet("equipment.parts", fewer).says(wants);
    }
  }

  @Test
  void aStepThatIsDoneAgainInItsTurnIsInOrder() {
    Spoiled spoiled = Spoiled.of(BIG);
    int first = spoiled.step("Look at it" + LEFT).n();
    spoiled
        .before("Look at it" + LEFT, spoiled.step("Look again" + LEFT))
        .with("Look again" + LEFT, "n", first - 1)
        .saysNothingOf("which is written first");
  }

  @Test
  void noStepOfAClosingIsMissing() {
    SmallShop shop =
        SHOP.procedure(
                "shut",
                """
                at: vehicle
                open:
                  - {do: Lid off, undo: lid}
                close:
                  - {do: Lid on, do-up: lid}
                  - {do: Press it down}
                """)
            .job("floor", "shut at vehicle");
    Spoiled.of(shop)
        .without("Press it down")
        .says("\"Press it down\" of shut at vehicle is not on the sheet");
  }

  /** Two bolts at each side are four. */
  @Test
  void fastenersOfBothSidesAreCounted() {
    SmallShop shop = SHOP.job("floor", "big at front-left", "big at front-right");
    assertEquals(
        List.of(List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT)),
        shop.sheet().torque().stream().map(it -> it.places()).toList());
    Spoiled.of(shop);
  }

  private static SmallShop hoisted(String more) {
    return SHOP.procedure(
            "hoisted",
            """
            at: vehicle
            serves: raise
            needs: lift
            open:
              - {do: Wedge it, disturb: wedge, moment: before-lifting}
              - {do: Hoist it, undo: feet}
              - {do: Take the wedges away, takes-away: wedge}
            """
                + more)
        .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "lid")
        .job("hoist", "below at vehicle");
  }

  @Test
  void whatIsTakenAwayIsNotMissed() {
    Spoiled.of(hoisted(""));
  }

  /** Where the sheet was made for a lift that the bay has not. */
  @Test
  void noStepIsForAnotherLift() {
    SmallShop shop = hoisted("  - {do: Lock its arms, only-in: lift}\n");
    Spoiled.of(shop);
    List<String> faults =
        PlanVerifier.faults(
            shop.sheet(), Altered.with(shop.resolved(), "bay", BIG.resolved().bay()));
    assertTrue(
        faults.contains("\"Lock its arms\" is for another lift, or missing"), faults.toString());
  }
}
