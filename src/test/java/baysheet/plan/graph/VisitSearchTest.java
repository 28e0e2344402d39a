package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.report.Source;
import baysheet.resolve.TaskId;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * How often somebody has to walk to each place of a vehicle, in shapes that are counted by hand.
 */
class VisitSearchTest {
  private static final Place LEFT = Place.FRONT_LEFT;
  private static final Place RIGHT = Place.FRONT_RIGHT;
  private static final Place ENGINE = Place.ENGINE;
  private static final int PLENTY = 1000;

  private final List<PlannedStep> steps = new ArrayList<>();
  private final List<Set<Integer>> before = new ArrayList<>();

  private int step(Place place, int... earlier) {
    steps.add(
        PlannedStep.puttingBack(
            new TaskId("p" + steps.size(), place),
            new StepSource.Check("rule", "step " + steps.size()),
            new Source("p.yaml", "").whole(),
            List.of(),
            Optional.empty()));
    return node(earlier);
  }

  private int node(int... earlier) {
    Set<Integer> all = new LinkedHashSet<>();
    for (int one : earlier) {
      all.add(one);
    }
    before.add(all);
    return before.size() - 1;
  }

  private void chain(Place... places) {
    int last = step(places[0]);
    for (int i = 1; i < places.length; i++) {
      last = step(places[i], last);
    }
  }

  private VisitSearch search(int budget) {
    return new VisitSearch(new StepGraph(steps, before), budget);
  }

  private void assertFewest(int visits) {
    assertEquals(Optional.of(visits), search(PLENTY).fewest());
    assertFalse(search(PLENTY).canFinish(new BitSet(), visits - 1));
    assertTrue(search(PLENTY).canFinish(new BitSet(), visits));
    assertTrue(search(PLENTY).canFinish(new BitSet(), visits + 1));
    assertEquals(visits, search(PLENTY).goodVisits().size());
  }

  @Test
  void allStepsOfOnePlaceTakeOneVisit() {
    chain(LEFT, LEFT, LEFT);
    step(LEFT);
    assertFewest(1);
  }

  @Test
  void eachChangeOfPlaceInOneChainIsAVisit() {
    chain(LEFT, RIGHT, LEFT, LEFT, RIGHT);
    assertFewest(4);
    assertEquals(List.of(LEFT, RIGHT, LEFT, RIGHT), search(PLENTY).goodVisits());
  }

  /** The same turns of two works are walked once. */
  @Test
  void chainsThatChangePlacesAlikeShareTheirVisits() {
    chain(LEFT, RIGHT, LEFT);
    chain(LEFT, RIGHT, LEFT);
    chain(RIGHT, LEFT);
    assertFewest(3);
  }

  /** One of the two places has to be come back to, whichever is first. */
  @Test
  void oppositeChainsTakeOneVisitMoreThanPlaces() {
    chain(LEFT, RIGHT);
    chain(RIGHT, LEFT);
    assertFewest(3);
  }

  /** A milestone is at no place: what comes behind it is done on the same visit. */
  @Test
  void aMilestoneIsNoVisit() {
    int one = step(LEFT);
    step(LEFT, 3);
    step(RIGHT, 3);
    assertEquals(3, node(one));
    assertFewest(2);
  }

  /** Through a milestone a step waits for the other place all the same. */
  @Test
  void aMilestoneHoldsBackWhatIsBehindIt() {
    int one = step(LEFT);
    int two = step(RIGHT);
    step(LEFT, 4);
    step(ENGINE, 4);
    assertEquals(4, node(one, two));
    assertFewest(3);
  }

  @Test
  void whatIsDoneAlreadyTakesNoVisit() {
    chain(LEFT, RIGHT, LEFT);
    BitSet first = new BitSet();
    first.set(0);
    assertFalse(search(PLENTY).canFinish(first, 1));
    assertTrue(search(PLENTY).canFinish(first, 2));
    first.set(1, 3);
    assertTrue(search(PLENTY).canFinish(first, 0));
    assertEquals(Optional.of(3), search(PLENTY).fewest());
  }

  /** Where nothing waits for anything, the first place is as good as any: no order is compared. */
  @Test
  void placesThatAreFreeAreNotTriedInEveryOrder() {
    for (Place place : Place.values()) {
      step(place);
      step(place);
    }
    VisitSearch search = search(PLENTY);
    assertEquals(Optional.of(Place.values().length), search.fewest());
    assertTrue(search.states() <= Place.values().length, search.states() + " states");
  }

  /** The turns of the longest way through the steps are a bound from the start. */
  @Test
  void oneChainIsWalkedOnce() {
    chain(LEFT, RIGHT, ENGINE, LEFT, RIGHT, ENGINE, LEFT);
    VisitSearch search = search(PLENTY);
    assertEquals(Optional.of(7), search.fewest());
    assertEquals(7, search.states());
  }

  /** What is known of a state is not found out again. */
  @Test
  void noStateIsLookedAtTwiceForTheSameVisits() {
    chain(LEFT, RIGHT);
    chain(RIGHT, LEFT);
    VisitSearch search = search(PLENTY);
    assertFalse(search.canFinish(new BitSet(), 2));
    int failed = search.states();
    assertFalse(search.canFinish(new BitSet(), 2));
    assertFalse(search.canFinish(new BitSet(), 1));
    assertEquals(failed, search.states());
    assertTrue(search.canFinish(new BitSet(), 3));
    int finished = search.states();
    assertTrue(finished > failed);
    assertTrue(search.canFinish(new BitSet(), 3));
    assertTrue(search.canFinish(new BitSet(), 4));
    assertEquals(finished, search.states());
    assertFalse(search.canFinish(new BitSet(), 2));
  }

  /** It never says that there is no way where it only stopped looking. */
  @Test
  void aSearchWithoutBudgetKnowsNothing() {
    chain(LEFT, RIGHT);
    chain(RIGHT, LEFT);
    assertEquals(Optional.empty(), search(-1).fewest());
    assertEquals(Optional.empty(), search(0).fewest());
    VisitSearch search = search(0);
    assertFalse(search.canFinish(new BitSet(), 3));
    assertEquals(1, search.states());
    assertEquals(3, search(-1).goodVisits().size());
  }

  @Test
  void theWayWithoutProofIsCountedAsWell() {
    chain(LEFT, RIGHT, LEFT);
    VisitSearch search = search(-1);
    assertEquals(List.of(LEFT, RIGHT, LEFT), search.goodVisits());
    assertEquals(3, search.states());
  }
}
