package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Bay;
import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.report.Problem;
import baysheet.report.Source;
import baysheet.report.Span;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;

/** No legal order of any steps has fewer changes of height, and each step is where it can be. */
class HeightScheduleTest {
  private static final TaskId RAISING = new TaskId("raising", Place.VEHICLE);
  private static final ItemAt FEET = new ItemAt("feet", Place.VEHICLE);
  private static final ItemAt WHEEL = new ItemAt("wheel", Place.FRONT_LEFT);
  private static final ItemAt JACK = new ItemAt("jack", Place.FRONT_LEFT);
  private static final List<Place> PLACES =
      List.of(Place.FRONT_LEFT, Place.FRONT_RIGHT, Place.ENGINE);

  /** The first step raises, the second lowers; of the others two take a thing off and put it on. */
  private record Job(StepGraph graph, Set<Height> bay) {}

  private static Job job(
      long seed, int size, Bay.Equipment equipment, boolean wheel, boolean jack) {
    Random random = new Random(seed);
    Set<Height> bay = Height.of(equipment);
    List<PlannedStep> drafts = new ArrayList<>();
    List<HeightNeeds.Need> needs = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      TaskId task =
          i < 2 ? RAISING : new TaskId("p" + i, PLACES.get(random.nextInt(PLACES.size())));
      Span origin = new Source("p.yaml", "").whole();
      drafts.add(
          i == 1
              ? PlannedStep.puttingBack(
                  task,
                  new StepSource.Back(
                      new StepSource.WrittenAt("raising", Sheet.Phase.OPEN, 1), "step 1"),
                  origin,
                  List.of(),
                  Optional.empty())
              : PlannedStep.puttingBack(
                  task,
                  new StepSource.Check("rule", "step " + i),
                  origin,
                  List.of(),
                  Optional.empty()));
      needs.add(need(i, random, bay, wheel, jack));
    }
    List<Set<Integer>> before = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Set<Integer> earlier = new LinkedHashSet<>();
      for (int j = 2; j < i; j++) {
        if (random.nextInt(3) == 0) {
          earlier.add(j);
        }
      }
      if (i == 1 || (i > 1 && random.nextInt(3) > 0)) {
        earlier.add(0);
      }
      before.add(earlier);
    }
    for (int i = 2; i < size; i++) {
      if (before.get(i).contains(0) && random.nextInt(4) > 0) {
        before.get(1).add(i);
      }
    }
    if (wheel && random.nextBoolean()) {
      // Done while the wheel is off.
      before.set(size - 1, new LinkedHashSet<>(Set.of(0, 2)));
      before.get(3).add(size - 1);
    }
    link(before, wheel, 2);
    link(before, jack, 4);
    HeightNeeds heights = new HeightNeeds(bay, needs, Set.of(JACK));
    return new Job(
        new StepGraph(drafts, before, List.of(), List.of(), 0, Map.of(), List.of(), heights), bay);
  }

  private static void link(List<Set<Integer>> before, boolean there, int off) {
    if (there) {
      before.get(off + 1).add(off);
      before.get(off).add(0);
      before.get(1).add(off + 1);
    }
  }

  private static HeightNeeds.Need need(
      int node, Random random, Set<Height> bay, boolean wheel, boolean jack) {
    Set<Height> at = EnumSet.noneOf(Height.class);
    while (at.isEmpty()) {
      bay.stream().filter(height -> random.nextInt(2) == 0).forEach(at::add);
    }
    Set<ItemAt> off = new HashSet<>();
    Set<ItemAt> on = new HashSet<>();
    if (wheel && node / 2 == 1) {
      (node == 2 ? off : on).add(WHEEL);
    }
    if (jack && node / 2 == 2) {
      (node == 4 ? off : on).add(JACK);
    }
    if (!off.isEmpty() || !on.isEmpty()) {
      at.remove(Height.GROUND);
      at.add(bay.contains(Height.STANDS) ? Height.STANDS : Height.WORKING);
    }
    return new HeightNeeds.Need(
        node < 2 ? bay : at,
        node < 2 ? Optional.of(RAISING) : Optional.empty(),
        node == 0 ? Set.of(FEET) : Set.of(),
        node == 1 ? Set.of(FEET) : Set.of(),
        off,
        on);
  }

  @Property(tries = 1500, seed = "20260302")
  void noLegalOrderHasFewerChangesOfHeight(
      @ForAll long seed,
      @ForAll @IntRange(min = 6, max = 10) int size,
      @ForAll Bay.Equipment equipment,
      @ForAll boolean wheel,
      @ForAll boolean jack) {
    Job job = job(seed, size, equipment, wheel, jack);
    Optional<Integer> fewest = fewest(job);
    Optional<StepSequence.Found> found = StepSequence.order(job.graph());
    Statistics.label("changes").collect(fewest.map(Object::toString).orElse("none possible"));
    assertEquals(fewest, found.map(StepSequence.Found::moves));
    found.ifPresent(order -> assertTrue(order.proven()));
    found.ifPresent(order -> assertEquals(order.moves(), replayed(job, order)));
  }

  /**
   * A search that gives up says so: it never passes off what it found as the fewest, or as none.
   */
  @Property(tries = 1000, seed = "20260302")
  void aSearchThatGivesUpSaysSo(
      @ForAll long seed,
      @ForAll @IntRange(min = 6, max = 10) int size,
      @ForAll Bay.Equipment equipment,
      @ForAll boolean wheel,
      @ForAll @IntRange(min = 1, max = 12) int budget) {
    Job job = job(seed, size, equipment, wheel, false);
    HeightSchedule whole = HeightSchedule.of(job.graph());
    HeightSchedule cut = HeightSchedule.of(job.graph(), budget);
    assertTrue(whole.isProven());
    assertTrue(cut.states() <= 4 * budget, cut.states() + " states");
    if (cut.isProven()) {
      assertEquals(whole.blocked(), cut.blocked());
      assertEquals(befores(whole), befores(cut));
    } else {
      assertTrue(whole.states() >= budget, whole.states() + " states");
    }
    Statistics.label("given up")
        .collect(cut.isProven() ? "no" : cut.blocked().isPresent() ? "found none" : "found one")
        .coverage(
            coverage -> {
              coverage.check("found none").percentage(share -> share > 1);
              coverage.check("found one").percentage(share -> share > 1);
            });
  }

  private static List<List<Set<Integer>>> befores(HeightSchedule schedule) {
    return schedule.ordered().stream().map(StepGraph::before).toList();
  }

  /** The pedal is pressed low and looked at high, in turns: no order does with fewer changes. */
  @Test
  void whereTheSearchGaveUpTheProblemDoesNotSayThatThereIsNoOrder() {
    SmallShop shop =
        SmallShop.empty()
            .procedure(
                "turns",
                "at: wheel\nbehind: [raise]\nopen:\n"
                    + "  - {do: Press, height: wheels-clear, undo: one}\n"
                    + "  - {do: Look, height: working, undo: two}\n"
                    + "  - {do: Press again, height: wheels-clear, undo: three}")
            .job("hoist", "turns at front-left");
    Resolved resolved = shop.resolved();
    StepGraph graph = StepGraph.of(resolved, false);
    assertEquals(Optional.empty(), HeightRule.outOfReach(resolved));
    Problem problem = HeightRule.outOfReach(resolved, graph, 1).orElseThrow();
    assertTrue(problem.what().contains("not all orders were compared"), problem.what());
    assertEquals(Optional.of("several job files with less work each"), problem.expected());
  }

  /** Walks an order with its heights; the number of its changes. */
  private static int replayed(Job job, StepSequence.Found found) {
    Set<Integer> done = new HashSet<>();
    Height now = Height.GROUND;
    int changes = 0;
    for (int i = 0; i < found.order().size(); i++) {
      int node = number(found.order().get(i));
      assertTrue(done.containsAll(job.graph().before().get(node)), "step " + node + " too early");
      Height next = found.heights().get(i);
      if (node > 1) {
        boolean up = done.contains(0) && !done.contains(1);
        assertTrue(up || next == Height.GROUND, "step " + node + " up without raising");
        assertTrue(job.graph().heights().steps().get(node).at().contains(next), "step " + node);
        boolean ground = next == Height.GROUND && now != next;
        assertTrue(!ground || !isOff(done, 2, job, WHEEL), "on the ground without a wheel");
        assertTrue(now == next || !isOff(done, 4, job, JACK), "moved with a jack under it");
        changes += distance(now, next);
      }
      // What stands on the ground is lifted clear once more before it is lowered for good.
      changes += node == 1 && now == Height.GROUND ? 1 : 0;
      now = next;
      done.add(node);
    }
    return changes;
  }

  private static boolean isOff(Set<Integer> done, int off, Job job, ItemAt item) {
    boolean there = job.graph().heights().steps().get(off).off().contains(item);
    return there && done.contains(off) && !done.contains(off + 1);
  }

  private static int number(PlannedStep step) {
    return Integer.parseInt(GraphSentences.words(step).substring("step ".length()));
  }

  private static int distance(Height from, Height to) {
    return from == to ? 0 : from == Height.GROUND && to == Height.WORKING ? 2 : 1;
  }

  /**
   * Fewest changes over all orders and heights: for every set of steps done, the fewest with which
   * the vehicle is at each height.
   */
  private static Optional<Integer> fewest(Job job) {
    int size = job.graph().drafts().size();
    List<Map<Height, Integer>> fewest = new ArrayList<>();
    for (int done = 0; done < 1 << size; done++) {
      fewest.add(new EnumMap<>(Height.class));
    }
    fewest.get(0).put(Height.GROUND, 0);
    for (int done = 0; done < 1 << size; done++) {
      Map<Height, Integer> here = moved(job, done, fewest.get(done));
      for (int node = 0; node < size; node++) {
        for (Map.Entry<Height, Integer> way : here.entrySet()) {
          Optional<Height> next = doing(job, done, node, way.getKey());
          if (next.isPresent()) {
            fewest.get(done | 1 << node).merge(next.get(), way.getValue(), Math::min);
          }
        }
      }
    }
    return fewest.get((1 << size) - 1).values().stream().min(Integer::compare);
  }

  private static boolean has(int done, int node) {
    return (done >> node & 1) == 1;
  }

  /** With every change of height that is possible once some steps are done. */
  private static Map<Height, Integer> moved(Job job, int done, Map<Height, Integer> at) {
    Map<Height, Integer> moved = new HashMap<>(at);
    boolean up = has(done, 0) && !has(done, 1);
    for (int i = 0; i < 2 && up && !isOff(done, 4, job, JACK); i++) {
      for (Height from : job.bay()) {
        for (Height to : job.bay()) {
          boolean barred = to == Height.GROUND && isOff(done, 2, job, WHEEL);
          if (moved.containsKey(from) && !barred) {
            moved.merge(to, moved.get(from) + distance(from, to), Math::min);
          }
        }
      }
    }
    return moved;
  }

  private static boolean isOff(int done, int off, Job job, ItemAt item) {
    boolean there = job.graph().heights().steps().get(off).off().contains(item);
    return there && has(done, off) && !has(done, off + 1);
  }

  /** The height behind a step, where it can be done now. */
  private static Optional<Height> doing(Job job, int done, int node, Height at) {
    boolean ready = job.graph().before().get(node).stream().allMatch(one -> has(done, one));
    boolean jack = isOff(done, 4, job, JACK);
    if (has(done, node) || !ready) {
      return Optional.empty();
    }
    if (node == 0) {
      Height up = job.bay().contains(Height.STANDS) ? Height.STANDS : Height.WORKING;
      return jack || at != Height.GROUND ? Optional.empty() : Optional.of(up);
    }
    if (node == 1) {
      boolean barred = jack || isOff(done, 2, job, WHEEL) || at == Height.GROUND;
      return barred ? Optional.empty() : Optional.of(Height.GROUND);
    }
    boolean can = job.graph().heights().steps().get(node).at().contains(at);
    return can ? Optional.of(at) : Optional.empty();
  }
}
