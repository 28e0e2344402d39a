package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which work does what several would do, when, and what becomes of the others' steps. */
class SharedStepsTest {
  private static final SmallShop SHOP = SmallShop.empty();

  private static StepGraph graph(SmallShop shop) {
    return StepGraph.of(shop.resolved());
  }

  private static List<String> ids(List<PlannedStep> steps) {
    return steps.stream().map(step -> step.source().id()).toList();
  }

  private static List<String> items(List<ItemAt> items) {
    return items.stream().map(ItemAt::item).toList();
  }

  private static PlannedStep step(StepGraph graph, String id) {
    return Stream.of(graph.drafts(), graph.late(), graph.evening())
        .flatMap(List::stream)
        .filter(step -> step.source().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> undoing(StepGraph graph, String item) {
    return graph.drafts().stream()
        .filter(step -> items(step.undo()).contains(item))
        .map(step -> step.source().id())
        .collect(Collectors.toSet());
  }

  private static Set<String> doingUp(StepGraph graph, String item) {
    return Stream.of(graph.drafts(), graph.late())
        .flatMap(List::stream)
        .filter(step -> items(step.doUp()).contains(item))
        .map(step -> step.source().id())
        .collect(Collectors.toSet());
  }

  /** The battery is charged overnight, and nobody waits for it in the sequence. */
  @Test
  void whatIsDoneTheEveningBeforeIsNoStepOfTheSequence() {
    StepGraph graph =
        graph(
            SHOP.procedure(
                    "charged",
                    "at: engine\nopen:\n"
                        + "  - {do: Charge it, disturb: one, moment: evening-before}\n"
                        + "  - {do: Off, undo: two}")
                .job("hoist", "charged at engine"));
    assertEquals(List.of("charged/open/1"), ids(graph.evening()));
    assertEquals(List.of("charged/open/2", "charged/open/2/back/two"), ids(graph.drafts()));
  }

  private static final SmallShop FUSE =
      SHOP.procedure("seat", "at: engine", "Fuse and seat out", "four", "two")
          .procedure(
              "airbag",
              "at: engine\nopen:\n"
                  + "  - {do: Pull the fuse, undo: four, moment: before-lifting}\n"
                  + "  - {do: Airbag out, undo: three}");

  /** The fuse is out from then on, for whoever needs it out. */
  @Test
  void whatOneWorkTakesOffBeforeLiftingIsOffForAll() {
    for (SmallShop shop :
        List.of(
            FUSE.job("hoist", "seat at engine", "airbag at engine"),
            FUSE.job("hoist", "airbag at engine", "seat at engine"))) {
      StepGraph graph = graph(shop);
      assertEquals(Set.of("airbag/open/1"), undoing(graph, "four"));
      assertEquals(List.of("two"), items(step(graph, "seat/open/1").undo()));
      assertEquals(1, doingUp(graph, "four").size());
      shop.assertInOrder("Pull the fuse", "Airbag out");
    }
  }

  /** Two works that would both pull it first: once is enough. */
  @Test
  void whatTwoWorksTakeOffBeforeLiftingComesOffOnce() {
    StepGraph graph =
        graph(
            FUSE.procedure(
                    "belt",
                    "at: engine\nopen:\n"
                        + "  - {do: Fuse out, undo: four, takes: 1/2/3 min, moment: before-lifting}\n"
                        + "  - {do: Belt out, undo: one}")
                .job("hoist", "airbag at engine", "belt at engine"));
    assertEquals(Set.of("airbag/open/1"), undoing(graph, "four"));
    assertFalse(ids(graph.drafts()).contains("belt/open/1"));
    assertTrue(graph.saved() > 0);
  }

  /** Where nothing of a step is left, its minutes are not needed, but what it warns of is. */
  @Test
  void aStepThatAnotherDoesSavesItsTimeAndLeavesItsWarning() {
    StepGraph graph =
        graph(
            SHOP.procedure(
                    "plain", "at: wheel\nopen: [{do: Off, undo: one}, {do: Other, undo: three}]")
                .procedure(
                    "careful",
                    "at: wheel\nopen:\n"
                        + "  - {do: Off and look, undo: one, hold: yes, takes: 2 min}\n"
                        + "  - {do: Two off, undo: two}")
                .job("hoist", "plain at front-left", "careful at front-left"));
    assertFalse(ids(graph.drafts()).contains("careful/open/1"));
    // Two minutes to take it off, and two to put it on.
    assertEquals(4, graph.saved(), 1e-9);
    assertTrue(step(graph, "plain/open/1").hold());
    assertFalse(step(graph, "plain/open/2").hold());
    assertFalse(step(graph, "careful/open/2").hold());
  }

  @Test
  void aStepOfWhichSomethingIsLeftIsDoneAndSavesNothing() {
    StepGraph graph =
        graph(
            SHOP.procedure("plain", "at: wheel", "Off", "one")
                .procedure("pair", "at: wheel\nopen: [{do: Both, undo: [one, two], takes: 2 min}]")
                .job("hoist", "plain at front-left", "pair at front-left"));
    assertEquals(List.of("two"), items(step(graph, "pair/open/1").undo()));
    assertEquals(0, graph.saved(), 1e-9);
    assertEquals(1, step(graph, "pair/open/1").remarks().size());
  }

  /** A look that was never meant to do anything is not dropped for that. */
  @Test
  void aStepThatTouchesNothingStays() {
    StepGraph graph =
        graph(
            SHOP.procedure("look", "at: wheel\nopen: [{do: Look}]")
                .job("hoist", "look at front-left"));
    assertEquals(List.of("look/open/1"), ids(graph.drafts()));
  }

  /** Off together once: the second writer need not have it again between his own steps. */
  @Test
  void whatCameOffInOneStepIsNotWaitedForTwice() {
    SmallShop shop =
        SHOP.procedure("pair", "at: wheel", "Pair off", "one", "two")
            .procedure(
                "singly",
                "at: wheel\nopen: [{do: 1, undo: one}, {do: 3, undo: three}, {do: 2, undo: two}]")
            .job("hoist", "pair at front-left", "singly at front-left");
    shop.assertInOrder("Pair off", "3", "Refit the three");
  }

  private static final SmallShop WORDED =
      SHOP.procedure("plain", "at: wheel", "Off", "one")
          .procedure(
              "worded",
              "at: wheel\nopen: [{do: One off, undo: one}, {do: Two off, undo: two}]\n"
                  + "close: [{do: On with care, do-up: one}]");

  /** What somebody wrote about putting it on is lost if the other's mirror does it. */
  @Test
  void whoHasWordsForPuttingOnDoesIt() {
    for (SmallShop shop :
        List.of(
            WORDED.job("hoist", "plain at front-left", "worded at front-left"),
            WORDED.job("hoist", "worded at front-left", "plain at front-left"))) {
      assertEquals(Set.of("worded/close/1"), doingUp(graph(shop), "one"));
    }
  }

  @Test
  void whoIsListedFirstTakesItOff() {
    assertEquals(
        Set.of("worded/open/1"),
        undoing(graph(WORDED.job("hoist", "worded at front-left", "plain at front-left")), "one"));
    assertEquals(
        Set.of("plain/open/1"),
        undoing(graph(WORDED.job("hoist", "plain at front-left", "worded at front-left")), "one"));
  }

  /** Access is open around all that lies behind it, so it is the access that closes. */
  @Test
  void accessTakesOffAndPutsOnWhoeverElseHasWords() {
    StepGraph graph =
        graph(
            WORDED
                .procedure(
                    "worded",
                    "at: wheel\nbehind: [plain]\n"
                        + "open: [{do: One off, undo: one}, {do: Two off, undo: two}]\n"
                        + "close: [{do: On with care, do-up: one}]")
                .procedure(
                    "plain",
                    "at: wheel\nopen: [{do: Off, undo: one}]\n" + "close: [{do: On, do-up: one}]")
                .job("hoist", "worded at front-left"));
    assertEquals(Set.of("plain/open/1"), undoing(graph, "one"));
    assertEquals(Set.of("plain/close/1"), doingUp(graph, "one"));
  }

  private static final String LATE =
      "at: engine\nopen: [{do: Cap off, undo: one}]\n"
          + "close: [{do: Cap on, do-up: one, moment: on-the-ground}]";

  /** One work could leave the cap for later; the other needs it on before. */
  @Test
  void whatAnotherPutsOnInItsTurnDoesNotWaitForTheGround() {
    for (String[] works :
        new String[][] {
          {"late at engine", "soon at engine"}, {"soon at engine", "late at engine"}
        }) {
      StepGraph graph =
          graph(
              SHOP.procedure("late", LATE)
                  .procedure("soon", "at: engine", "Both off", "one", "two")
                  .job("hoist", works));
      assertEquals(Set.of("soon/open/1/back/one"), doingUp(graph, "one"));
      assertEquals(List.of(), graph.late());
    }
  }

  @Test
  void whatTheAccessPutsOnOnceTheVehicleIsDownWaitsForThat() {
    StepGraph graph =
        graph(
            SHOP.procedure("late", LATE)
                .procedure("soon", "at: engine\nbehind: [late]", "Both off", "one", "two")
                .job("hoist", "soon at engine"));
    assertEquals(Set.of("late/close/1"), doingUp(graph, "one"));
  }

  /** A run of the engine comes before the drive, whichever work wants which. */
  @Test
  void whatIsDueOnceTheVehicleIsDownKeepsTheOrderOfItsMoments() {
    StepGraph graph =
        graph(
            SHOP.procedure(
                    "driven",
                    "at: engine\nwork:\n"
                        + "  - {do: Drive, disturb: one, moment: road-test}\n"
                        + "  - {do: Look, disturb: three, moment: on-the-ground}")
                .procedure(
                    "run", "at: engine\nwork: [{do: Run, disturb: two, moment: on-the-ground}]")
                .job("hoist", "driven at engine", "run at engine"));
    assertEquals(
        List.of(Moment.ON_THE_GROUND, Moment.ON_THE_GROUND, Moment.ROAD_TEST),
        graph.late().stream().map(PlannedStep::moment).map(Optional::orElseThrow).toList());
    assertEquals(List.of("driven/work/2", "run/work/1", "driven/work/1"), ids(graph.late()));
    assertEquals(List.of(), graph.drafts());
  }

  @Test
  void whoTakesOffDoesSoForOneWhoOnlySlackens() {
    StepGraph graph =
        graph(
            SHOP.procedure("slack", "at: wheel\nopen: [{do: Slacken it, slacken: lid}]")
                .procedure("off", "at: wheel", "Off", "lid")
                .job("hoist", "slack at front-left", "off at front-left"));
    assertEquals(Set.of("off/open/1"), undoing(graph, "lid"));
  }
}
