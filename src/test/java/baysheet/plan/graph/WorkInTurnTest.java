package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.plan.SmallShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which of the steps that could come next does, where all are at one place or any place would do as
 * well. Common practice, no source.
 */
class WorkInTurnTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("first", "at: engine\nopen: [{do: F1, undo: one}, {do: F2, undo: two}]")
          .procedure("second", "at: engine\nopen: [{do: S1, undo: three}, {do: S2, undo: four}]");

  private static List<String> words(SmallShop shop) {
    return shop.steps().stream().map(step -> step.replaceAll(" \\[.*", "")).toList();
  }

  /** Nobody builds up what the next work has to reach past; what came off last goes on first. */
  @Test
  void allIsOpenedInTheJobsOrderAndClosedTheOtherWayRound() {
    assertEquals(
        List.of(
            "F1",
            "F2",
            "S1",
            "S2",
            "Refit the four",
            "Refit the three",
            "Refit the two",
            "Refit the one"),
        words(SHOP.job("hoist", "first at engine", "second at engine")));
    assertEquals(
        List.of(
            "S1",
            "S2",
            "F1",
            "F2",
            "Refit the two",
            "Refit the one",
            "Refit the four",
            "Refit the three"),
        words(SHOP.job("hoist", "second at engine", "first at engine")));
  }

  /** Whoever has opened the door goes on with it before he turns to what lies behind it. */
  @Test
  void theTaskAtHandIsGoneOnWithBeforeWorkThatRanksFirst() {
    assertEquals(
        List.of("Door open", "Oil the hinge", "Lamp out", "Refit the one", "Refit the lid"),
        words(
            SHOP.procedure(
                    "door",
                    "at: engine\nopen: [{do: Door open, undo: lid}]\n"
                        + "work: [{do: Oil the hinge, disturb: two}]")
                .procedure("lamp", "at: engine\nbehind: [door]", "Lamp out", "one")
                .job("hoist", "lamp at engine")));
  }

  /** No work rests, and nothing else is done, on wheels that are loose. */
  @Test
  void whatIsSlackenedForLiftingComesDirectlyBeforeIt() {
    SHOP.procedure(
            "wheel",
            "at: wheel\nbehind: [raise]\nopen:\n"
                + "  - {do: Crack it, slacken: two, moment: before-lifting}\n"
                + "  - {do: Deep, undo: three}")
        .procedure("cap", "at: engine\nopen: [{do: Cap, undo: one, height: ground}]")
        .job("floor", "wheel at front-left", "cap at engine")
        .assertInOrder("Cap", "Refit the one", "Crack it", "Jack it up", "Deep");
  }

  /** Two people watch the vehicle come down: nobody turns away in between. */
  @Test
  void nothingComesBetweenTheStepsThatLower() {
    SHOP.procedure(
            "hoisted",
            "at: vehicle\nserves: raise\nneeds: lift\nopen: [{do: Hoist it, undo: feet}]\n"
                + "close: [{do: Let it down, do-up: feet}, {do: Bounce it}]")
        .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "one")
        .procedure(
            "stamped",
            "at: vehicle\nafter: [below]\nopen: [{do: Stamp, undo: two, height: ground}]")
        .job("hoist", "below at vehicle", "stamped at vehicle")
        .assertInOrder("Hoist it", "Below", "Let it down", "Bounce it", "Stamp");
  }

  /** A place where something waits is worked at before one walks on. */
  @Test
  void allThatCanBeDoneAtAPlaceIsDoneThere() {
    assertEquals(
        List.of("A", "C", "Refit the three", "Refit the one", "B", "Refit the two"),
        words(
            SHOP.procedure("a", "at: wheel", "A", "one")
                .procedure("b", "at: engine", "B", "two")
                .procedure("c", "at: wheel", "C", "three")
                .job("hoist", "a at front-left", "b at engine", "c at front-left")));
  }

  /** The job lists first what somebody complained of: among places as good it comes first. */
  @Test
  void thePlaceOfTheFirstWorkComesFirst() {
    SmallShop shop =
        SHOP.procedure("a", "at: wheel", "A", "one").procedure("b", "at: engine", "B", "two");
    assertEquals(
        List.of("A", "Refit the one", "B", "Refit the two"),
        words(shop.job("hoist", "a at front-left", "b at engine")));
    assertEquals(
        List.of("B", "Refit the two", "A", "Refit the one"),
        words(shop.job("hoist", "b at engine", "a at front-left")));
  }
}
