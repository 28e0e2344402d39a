package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Detail;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * One line stands for both sides only where whoever works from it does the same on both, in any
 * order; everything else is on two lines.
 */
class SideMergerTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure(
              "plain", "at: wheel\nopen: [{do: Undo it, undo: one}, {do: Two off, undo: two}]");

  private static List<String> open(SmallShop shop, String beginning) {
    return shop.steps().stream().filter(step -> step.startsWith(beginning)).toList();
  }

  @Test
  void theSameWorkOnBothSidesIsOneLineLeftBeforeRight() {
    for (String[] works :
        List.of(
            new String[] {"plain at rear-left", "plain at rear-right"},
            new String[] {"plain at rear-right", "plain at rear-left"})) {
      assertEquals(
          List.of(
              "Undo it [rear-left, rear-right]",
              "Two off [rear-left, rear-right]",
              "Refit the two [rear-left, rear-right]",
              "Refit the one [rear-left, rear-right]"),
          SHOP.job("floor", works).steps());
    }
  }

  /** Front and rear are no two sides, nor are a left and a right wheel of different axles. */
  @Test
  void otherPairsOfWheelsStayOnLinesOfTheirOwn() {
    assertEquals(
        List.of("Undo it [front-left]", "Undo it [rear-left]"),
        open(SHOP.job("floor", "plain at front-left", "plain at rear-left"), "Undo it"));
    assertEquals(
        List.of("Undo it [front-left]", "Undo it [rear-right]"),
        open(SHOP.job("floor", "plain at front-left", "plain at rear-right"), "Undo it"));
  }

  /** One figure on a line that stands for two would be wrong for one of them. */
  @Test
  void anotherFastenerOnTheOtherSideIsALineOfItsOwn() {
    assertEquals(List.of("Nut off [front-left, front-right]"), open(bolts(), "Nut off"));
    assertEquals(
        List.of("Nut off [front-left]", "Nut off [front-right]"),
        open(bolts("front-right: {side-nut: " + NUT.formatted("90", "") + "}"), "Nut off"));
  }

  /** A figure of the job's own is marked on the sheet, even where it is the same as the book's. */
  @Test
  void aFigureThatTheJobReplacesIsALineOfItsOwn() {
    SmallShop own =
        bolts()
            .with(
                "2026-03-02/1.yaml",
                "job: 1\nvehicle: {book: any}\nbay: floor\nby: T1\n"
                    + "work: [nutted at front-left, nutted at front-right]\n"
                    + "override:\n"
                    + "  side-nut at front-right: {torque: 80 N·m, source: Any sheet}\n");
    assertEquals(List.of("Nut off [front-left]", "Nut off [front-right]"), open(own, "Nut off"));
  }

  private static final String NUT =
      "{count: 1, thread: M12x1.5, class: \"10\", head: hex 19 mm, torque: %s N·m%s}";

  private static SmallShop bolts(String... more) {
    String book = "fasteners:\n  wheels: {side-nut: " + NUT.formatted("80", "") + "}\n";
    for (String line : more) {
      book += "  " + line + "\n";
    }
    return new SmallShop(
            SmallShop.empty().texts().replacing("vehicles/any.yaml", "fasteners: {}\n", book))
        .with("catalogue/more.yaml", "items:\n  side-nut: {name: side nut, kinds: [fastener]}\n")
        .procedure("nutted", "at: wheel", "Nut off", "side-nut")
        .job("floor", "nutted at front-left", "nutted at front-right");
  }

  /** The left side is done before somebody looks at the engine, the right side behind that. */
  @Test
  void whatIsDoneBetweenKeepsTheSidesApart() {
    Span origin = new Source("p.yaml", "").whole();
    PlannedStep left = step(Place.FRONT_LEFT, origin, "one");
    PlannedStep engine = step(Place.ENGINE, origin, "two");
    PlannedStep right = step(Place.FRONT_RIGHT, origin, "one");
    StepGraph graph =
        new StepGraph(List.of(left, engine, right), List.of(Set.of(), Set.of(0), Set.of(1)));
    assertEquals(
        List.of(List.of(Place.FRONT_LEFT), List.of(Place.ENGINE), List.of(Place.FRONT_RIGHT)),
        merged(graph, ground(graph)));
  }

  private static final Resolved RESOLVED =
      SHOP.procedure("all", "at: wheel", "All off", "one", "two", "three")
          .job("hoist", "all at front", "all at rear")
          .resolved();

  private static PlannedStep step(Place place, Span origin, String... items) {
    return step(place, origin, true, "look", items);
  }

  private static PlannedStep step(
      Place place, Span origin, boolean mirrored, String source, String... items) {
    List<ItemAt> doUp = new ArrayList<>();
    for (String item : items) {
      doUp.add(new ItemAt(item, place));
    }
    PlannedStep step =
        PlannedStep.puttingBack(
            new TaskId("deep", place),
            new StepSource.Check("rule", source),
            origin,
            doUp,
            Optional.empty());
    return new PlannedStep(
        step.task(),
        step.source(),
        origin,
        mirrored,
        step.touched(),
        step.demands(),
        step.teaching(),
        false,
        Optional.empty(),
        Set.of(),
        List.of(),
        List.of());
  }

  private static List<PlacedStep> ground(StepGraph graph) {
    return graph.drafts().stream()
        .map(step -> PlacedStep.onTheGround(step, Moment.ON_THE_GROUND))
        .toList();
  }

  private static List<List<Place>> merged(StepGraph graph, List<PlacedStep> lines) {
    return SideMerger.merge(RESOLVED, lines, new DependencyQuery(graph)).stream()
        .map(PlacedStep::places)
        .toList();
  }

  private static final Span ORIGIN = new Source("p.yaml", "").whole();

  private static StepGraph free(PlannedStep... steps) {
    List<Set<Integer>> before = new ArrayList<>();
    for (int i = 0; i < steps.length; i++) {
      before.add(Set.of());
    }
    return new StepGraph(List.of(steps), before);
  }

  private static final List<List<Place>> BOTH =
      List.of(List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT));
  private static final List<List<Place>> EACH =
      List.of(List.of(Place.FRONT_LEFT), List.of(Place.FRONT_RIGHT));

  private static List<List<Place>> pair(PlannedStep left, PlannedStep right) {
    StepGraph graph = free(left, right);
    return merged(graph, ground(graph));
  }

  @Test
  void aStepAndItsTwinAreOneLine() {
    PlannedStep left = step(Place.FRONT_LEFT, ORIGIN, "one");
    assertEquals(BOTH, pair(left, step(Place.FRONT_RIGHT, ORIGIN, "one")));
  }

  @Test
  void anotherStepIsNoTwin() {
    PlannedStep left = step(Place.FRONT_LEFT, ORIGIN, "one");
    assertEquals(EACH, pair(left, step(Place.FRONT_RIGHT, ORIGIN, "two")));
    assertEquals(EACH, pair(left, step(Place.FRONT_RIGHT, ORIGIN)));
    assertEquals(EACH, pair(left, step(Place.FRONT_RIGHT, ORIGIN, "one", "two")));
    assertEquals(EACH, pair(left, step(Place.FRONT_RIGHT, ORIGIN, false, "look", "one")));
    assertEquals(EACH, pair(left, step(Place.FRONT_RIGHT, ORIGIN, true, "feel", "one")));
    Span elsewhere = new Source("q.yaml", "").whole();
    assertEquals(EACH, pair(left, step(Place.FRONT_RIGHT, elsewhere, "one")));
  }

  /** What is said of one side only would be read for both. */
  @Test
  void aRemarkOfOneSideKeepsItOnItsOwnLine() {
    PlannedStep left = step(Place.FRONT_LEFT, ORIGIN, "one");
    PlannedStep right = step(Place.FRONT_RIGHT, ORIGIN, "one").remarking(new Detail.BothEndsUp());
    assertEquals(EACH, pair(left, right));
  }

  /** A line with two boxes may be done on either side first. */
  @Test
  void aSideThatWaitsForTheOtherHasItsOwnLine() {
    PlannedStep left = step(Place.FRONT_LEFT, ORIGIN, "one");
    PlannedStep right = step(Place.FRONT_RIGHT, ORIGIN, "one");
    StepGraph graph = new StepGraph(List.of(left, right), List.of(Set.of(), Set.of(0)));
    assertEquals(EACH, merged(graph, ground(graph)));
  }

  /** The same step high on one side and low on the other is not done in one go. */
  @Test
  void sidesAtDifferentHeightsOrMomentsHaveLinesOfTheirOwn() {
    StepGraph graph =
        free(step(Place.FRONT_LEFT, ORIGIN, "one"), step(Place.FRONT_RIGHT, ORIGIN, "one"));
    PlacedStep left = PlacedStep.single(graph.drafts().get(0), Moment.RAISED, Height.WORKING);
    PlannedStep right = graph.drafts().get(1);
    assertEquals(
        BOTH,
        merged(graph, List.of(left, PlacedStep.single(right, Moment.RAISED, Height.WORKING))));
    assertEquals(
        EACH,
        merged(graph, List.of(left, PlacedStep.single(right, Moment.RAISED, Height.WHEELS_CLEAR))));
    assertEquals(
        EACH,
        merged(
            graph, List.of(left, PlacedStep.single(right, Moment.ON_THE_GROUND, Height.WORKING))));
  }

  /** Two stretches at the same places, one behind the other, would read as one. */
  @Test
  void aSecondStretchDirectlyBehindOneIsNotMerged() {
    Span next = new Source("q.yaml", "").whole();
    PlannedStep first = step(Place.FRONT_LEFT, ORIGIN, "one");
    PlannedStep second = step(Place.FRONT_RIGHT, ORIGIN, "one");
    PlannedStep third = step(Place.FRONT_LEFT, next, "two");
    PlannedStep fourth = step(Place.FRONT_RIGHT, next, "two");
    StepGraph graph = free(first, second, third, fourth);
    List<List<Place>> all = new ArrayList<>(BOTH);
    all.addAll(EACH);
    assertEquals(all, merged(graph, ground(graph)));
    // At another height it is no longer the same stretch.
    List<PlacedStep> lines = new ArrayList<>(ground(graph).subList(0, 2));
    lines.add(PlacedStep.single(third, Moment.RAISED, Height.WORKING));
    lines.add(PlacedStep.single(fourth, Moment.RAISED, Height.WORKING));
    assertEquals(List.of(BOTH.get(0), BOTH.get(0)), merged(graph, lines));
  }

  /** Several steps of a side are merged only if each has its twin. */
  @Test
  void aStretchWithOneStepMoreIsNotMerged() {
    PlannedStep one = step(Place.FRONT_LEFT, ORIGIN, "one");
    PlannedStep twin = step(Place.FRONT_RIGHT, ORIGIN, "one");
    Span next = new Source("q.yaml", "").whole();
    PlannedStep more = step(Place.FRONT_LEFT, next, "two");
    StepGraph graph = free(one, more, twin);
    assertEquals(
        List.of(List.of(Place.FRONT_LEFT), List.of(Place.FRONT_LEFT), List.of(Place.FRONT_RIGHT)),
        merged(graph, ground(graph)));
    StepGraph other = free(one, more, twin, step(Place.FRONT_RIGHT, next, "three"));
    assertEquals(4, merged(other, ground(other)).size());
  }

  /** The vehicle is down once both of its sides are, so each corner is let down by itself. */
  @Test
  void raisingAndLoweringStayOnLinesOfTheirOwn() {
    SmallShop shop =
        SmallShop.empty()
            .procedure(
                "jacked",
                "at: wheel\nserves: raise\nneeds: jack\nopen: [{do: Jack the corner up, undo: feet}]")
            .procedure("deep", "at: wheel\nbehind: [raise]", "Deep", "one")
            .job("floor", "deep at front-left", "deep at front-right");
    assertTrue(
        open(shop, "Jack the corner up").stream().noneMatch(it -> it.contains(",")),
        shop.steps().toString());
    assertTrue(
        open(shop, "Refit the vehicle").stream().noneMatch(it -> it.contains(",")),
        shop.steps().toString());
    assertEquals(2, open(shop, "Jack the corner up").size());
    assertEquals(2, open(shop, "Refit the vehicle").size());
  }

  /** The last round of the wrench goes round the vehicle once, wherever the nuts went on. */
  @Test
  void finalTorquesOfTwoSidesArePairedWhereverTheyStand() {
    List<PlacedStep> finals = new ArrayList<>();
    for (Place place : List.of(Place.REAR_RIGHT, Place.FRONT_LEFT, Place.REAR_LEFT)) {
      finals.add(
          PlacedStep.onTheGround(
              PlannedStep.torque(
                  new TaskId("deep", place),
                  new StepSource.Check("rule", "torque"),
                  ORIGIN,
                  new ItemAt("one", place)),
              Moment.ON_THE_GROUND));
    }
    List<PlacedStep> paired = SideMerger.pair(RESOLVED, finals);
    assertEquals(
        List.of(List.of(Place.REAR_LEFT, Place.REAR_RIGHT), List.of(Place.FRONT_LEFT)),
        paired.stream().map(PlacedStep::places).toList());
    assertTrue(paired.stream().allMatch(line -> line.height() == Height.GROUND));
  }

  @Test
  void twoFastenersAreTheSameThingOnlyAcrossTheVehicle() {
    Resolved resolved = bolts().resolved();
    ItemAt left = new ItemAt("side-nut", Place.FRONT_LEFT);
    ItemAt right = new ItemAt("side-nut", Place.FRONT_RIGHT);
    assertTrue(SideMerger.sameThing(resolved, left, right));
    assertFalse(SideMerger.sameThing(resolved, left, left));
    assertFalse(SideMerger.sameThing(resolved, left, new ItemAt("one", Place.FRONT_RIGHT)));
  }
}
