package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.report.Source;
import baysheet.resolve.ItemAt;
import baysheet.resolve.TaskId;
import baysheet.sheet.Statement;
import baysheet.sheet.StepSource;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What one step does as well as another, and what of it is carried over. */
class PlannedStepTest {
  private static PlannedStep putting(String... items) {
    return PlannedStep.puttingBack(
        new TaskId("own", Place.VEHICLE),
        new StepSource.Check("rule", "put it on"),
        new Source("p.yaml", "").whole(),
        List.of(items).stream().map(item -> new ItemAt(item, Place.VEHICLE)).toList(),
        Optional.empty());
  }

  private static PlannedStep written(String step) {
    SmallShop shop =
        SmallShop.empty()
            .with(
                "catalogue/more.yaml",
                """
                cautions:
                  heat: {signal: WARNING, do: Wait, hazard: it is hot, consequence: it burns, source: us}
                  dust: {signal: WARNING, do: Wear a mask, hazard: dust, consequence: it chokes, source: us}
                """)
            .procedure("own", "at: vehicle\nopen: [{do: Do it, %s}]".formatted(step))
            .job("floor", "own at vehicle");
    return StepGraph.of(shop.resolved()).drafts().get(0);
  }

  @Test
  void stepsShareWorkWhereBothTakeOffOrPutOnTheSameThing() {
    assertTrue(putting("lid", "one").sharesWorkOf(putting("two", "lid")));
    assertFalse(putting("lid").sharesWorkOf(putting("one")));
    assertTrue(written("undo: [lid, one]").sharesWorkOf(written("undo: [lid, two]")));
    assertFalse(written("undo: lid").sharesWorkOf(written("undo: two")));
    // One takes it off and the other puts it on: neither does the other's work.
    assertFalse(written("undo: lid").sharesWorkOf(putting("lid")));
  }

  /** A step that only measures or looks has nothing left once another does its items. */
  @Test
  void aStepIsIdleWhichDoesNothingToTheVehicle() {
    assertTrue(putting().isIdle());
    assertFalse(putting("lid").isIdle());
    assertFalse(written("undo: lid").isIdle());
    assertFalse(written("disturb: lid").isIdle());
    assertTrue(written("measure: height").isIdle());
  }

  @Test
  void onlyTheHeightIsTheHeight() {
    assertTrue(PlannedStep.isHeight(new Statement.Written("height")));
    assertTrue(PlannedStep.isHeight(new Statement.Written("height, mm")));
    assertFalse(PlannedStep.isHeight(new Statement.Written("height of the pedal")));
    assertFalse(PlannedStep.isHeight(Statement.Plain.SAME_HEIGHT));
  }

  /** Whoever does another's work as well reads what that one warns of, each once. */
  @Test
  void aStepThatDoesAnothersWorkWarnsOfBoth() {
    PlannedStep one = written("undo: lid, hazards: heat");
    PlannedStep other = written("undo: lid, hazards: [dust, heat], hold: yes");
    assertEquals(List.of("heat", "dust"), one.warningOf(other).hazards());
    assertTrue(one.warningOf(other).hold());
    assertTrue(other.warningOf(one).hold());
    assertFalse(one.warningOf(one).hold());
  }
}
