package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.torque.ThreePoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How a work is put together again, by its own words and by the mirror of its opening. */
class ClosingStepsTest {
  private static final String THREE =
      "at: wheel\nopen:\n"
          + "  - {do: One off, undo: one}\n"
          + "  - {do: Two off, undo: two}\n"
          + "  - {do: Three off, undo: three}\n";

  private static List<PlannedStep> closing(String procedure) {
    SmallShop shop =
        SmallShop.bolted().procedure("work", procedure).job("hoist", "work at front-left");
    return StepGraph.of(shop.resolved()).drafts().stream()
        .filter(step -> step.phase() == Sheet.Phase.CLOSE)
        .toList();
  }

  /** The text of a step in the procedure's words, or the items that it puts back. */
  private static List<String> words(String procedure) {
    List<String> words = new ArrayList<>();
    for (PlannedStep step : closing(procedure)) {
      words.add(
          step.source() instanceof StepSource.Written written
              ? written.text()
              : step.source() instanceof StepSource.Back back
                  ? back.text()
                  : step.doUp().stream().map(ItemAt::item).toList().toString());
    }
    return words;
  }

  @Test
  void withoutWordsOfItsOwnAWorkGoesBackInReverse() {
    assertEquals(List.of("[three]", "[two]", "[one]"), words(THREE));
  }

  /** What is cleaned before a part goes on is so directly before it. */
  @Test
  void ownWordsStandWhereTheMirrorComesToTheirItem() {
    assertEquals(
        List.of("[three]", "Clean it", "Two on", "[one]"),
        words(THREE + "close: [{do: Clean it, disturb: four}, {do: Two on, do-up: two}]"));
  }

  @Test
  void ownWordsThatPutNothingOnComeLast() {
    assertEquals(
        List.of("[three]", "Two on", "[one]", "Try it"),
        words(THREE + "close: [{do: Two on, do-up: two}, {do: Try it, disturb: four}]"));
  }

  /** The order of the procedure's own words is its author's, whatever came off last. */
  @Test
  void ownWordsKeepTheirOrder() {
    assertEquals(
        List.of("One on", "Three on", "[two]"),
        words(THREE + "close: [{do: One on, do-up: one}, {do: Three on, do-up: three}]"));
  }

  @Test
  void whatTheWorkPutsOnIsNotPutOnAgain() {
    assertEquals(
        List.of("[three]", "[one]"),
        words(THREE + "work: [{do: Two in, do-up: two}, {do: Look at it}]"));
  }

  @Test
  void whatTheWorkTakesOffGoesOnBeforeWhatTheOpeningDid() {
    assertEquals(
        List.of("[four]", "[three]", "[two]", "[one]"),
        words(THREE + "work: [{do: Four out, undo: four}]"));
  }

  private static final String PAIR =
      "at: wheel\nopen: [{do: Both off, undo: [one, two], back: Both on, takes: 3/4/9 min}]\n";

  @Test
  void aStepWithWordsForPuttingBackIsOneStep() {
    assertEquals(List.of("Both on"), words(PAIR));
    PlannedStep on = closing(PAIR).get(0);
    assertEquals(List.of("two", "one"), on.doUp().stream().map(ItemAt::item).toList());
    assertEquals("work/open/1/back", on.source().id());
    assertEquals(Optional.of(ThreePoint.certain(3)), on.minutes());
  }

  /** Where one of the items has its own words, those for both would put it on twice. */
  @Test
  void wordsForSeveralItemsAreNotUsedForSomeOfThem() {
    assertEquals(
        Set.of("One on", "[two]"), Set.copyOf(words(PAIR + "close: [{do: One on, do-up: one}]")));
  }

  /** The time of the step counts once, however many things go on. */
  @Test
  void puttingBackTakesTheShortestTimeOnce() {
    List<PlannedStep> steps = closing(PAIR.replace(", back: Both on", ""));
    assertEquals(
        List.of(Optional.of(ThreePoint.certain(3)), Optional.of(ThreePoint.certain(0))),
        steps.stream().map(PlannedStep::minutes).toList());
  }

  @Test
  void whatTheWorkTookOffIsPutBackByItsStep() {
    List<PlannedStep> steps =
        closing("at: wheel\nwork: [{do: Look}, {do: Four out, undo: four, back: Four in}]");
    assertEquals("work/work/2/back", steps.get(0).source().id());
  }

  private static StepSource.PutBack putBack(String key) {
    return (StepSource.PutBack)
        closing("at: wheel\nopen: [{do: Turn it, %s}]".formatted(key)).get(0).source();
  }

  /** A sheet says "five nuts, hand-tight" of some, "tighten" of others. */
  @Test
  void whatGoesOnIsNamedForWhatItIs() {
    assertEquals(StepSource.PutBack.What.FASTENER, putBack("undo: roller-nut").what());
    assertEquals(5, putBack("undo: roller-nut").count());
    assertEquals(StepSource.PutBack.What.SLACKENED, putBack("slacken: roller-nut").what());
    assertEquals(StepSource.PutBack.What.TEMPORARY, putBack("disturb: stay, undo: stay").what());
    assertEquals(StepSource.PutBack.What.OTHER, putBack("undo: lid").what());
    assertEquals(1, putBack("undo: lid").count());
    assertEquals(Optional.of("Take the stay away"), putBack("undo: stay").text());
    assertEquals(Optional.empty(), putBack("undo: lid").text());
  }
}
