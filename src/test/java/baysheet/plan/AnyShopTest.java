package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.plan.graph.RaisingOrder;
import baysheet.report.Problems;
import baysheet.resolve.ItemAt;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.resolve.Task;
import baysheet.resolve.TaskId;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.TorqueLine;
import baysheet.wording.Printed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.LongFunction;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.junit.jupiter.api.Test;

/**
 * What holds for shop folders, however odd their procedures. The seeds are fixed, so that a build
 * says the same twice; a plan that the playback refuses is a fault of ours and never printed.
 */
class AnyShopTest {
  private static final int SLIPPING_SHOPS = 1000;

  @Property(tries = 1500, seed = "20260302")
  void everyPlanHoldsOrIsRefusedWithAProblem(@ForAll long seed) {
    Problems problems = new Problems();
    Optional<Sheet> sheet = plan(RandomShops.sound(seed), problems);
    assertEquals(problems.hasErrors(), sheet.isEmpty(), problems.all().toString());
    Statistics.label("planned")
        .collect(sheet.isPresent())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 50));
  }

  /**
   * With roles, props, steps at moments of their own, work at both ends, and own ways of raising.
   */
  @Property(tries = 1000, seed = "20260302")
  void everyPlanOfAWideShopHoldsOrIsRefusedWithAProblem(@ForAll long seed) {
    Problems problems = new Problems();
    Optional<Sheet> sheet = plan(RandomShops.wideAndSound(seed), problems);
    assertEquals(problems.hasErrors(), sheet.isEmpty(), problems.all().toString());
    Statistics.label("planned")
        .collect(sheet.isPresent())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 50));
  }

  /**
   * The same works on a vehicle with the trait and on one without it: each has its own procedure.
   */
  @Property(tries = 400, seed = "20260302")
  void aTraitChoosesWhoServesARole(@ForAll long seed, @ForAll boolean twin) {
    Problems problems = new Problems();
    Optional<Sheet> sheet = plan(byTrait(RandomShops.wideAndSound(seed), twin), problems);
    assertEquals(problems.hasErrors(), sheet.isEmpty(), problems.all().toString());
    List<String> used =
        sheet.stream()
            .flatMap(made -> made.steps().stream())
            .map(Sheet.SheetStep::procedure)
            .filter(procedure -> procedure.matches("p\\d+-(lift|jack)"))
            .toList();
    String other = twin ? "-jack" : "-lift";
    assertTrue(used.stream().noneMatch(it -> it.endsWith(other)), used.toString());
    Statistics.label("bound")
        .collect(!used.isEmpty())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 10));
  }

  /** The folder with the vehicle's trait in place of the bay where one of two serves a role. */
  private static ShopTexts byTrait(ShopTexts shop, boolean twin) {
    ShopTexts bound =
        shop.with("catalogue/traits.yaml", "traits: {two-keels: stands on two keels}\n");
    for (int i = 0; i < RandomShops.MOST_PROCEDURES; i++) {
      String with = "procedures/p" + i + "-lift.yaml";
      if (shop.paths("procedures").contains(with)) {
        String without = "procedures/p" + i + "-jack.yaml";
        bound =
            bound
                .replacing(with, "needs: lift", "only-with: two-keels")
                .replacing(without, "needs: jack", "not-with: {two-keels: the other}");
      }
    }
    return twin
        ? bound.replacing("vehicles/any.yaml", "name: Any", "name: Any\ntraits: [two-keels]")
        : bound;
  }

  /** With steps that are done at certain heights only, on a lift and on a jack. */
  @Property(tries = 1500, seed = "20260302")
  void everyPlanOfAShopWithHeightsHoldsOrIsRefusedWithAProblem(@ForAll long seed) {
    Problems problems = new Problems();
    Optional<Sheet> sheet = plan(RandomShops.high(seed), problems);
    assertEquals(problems.hasErrors(), sheet.isEmpty(), problems.all().toString());
    long moves =
        sheet.stream()
            .flatMap(made -> made.steps().stream())
            .filter(step -> step.source() instanceof StepSource.HeightChange)
            .count();
    Statistics.label("changes of height")
        .collect(moves > 0)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 20));
    Statistics.label("planned")
        .collect(sheet.isPresent())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 35));
  }

  /** One end comes down while the other stays up: the height of the vehicle does not change. */
  @Test
  void noEndComesDownWithAWheelOffOrAJackUnderAPart() {
    List<Long> both = List.of(-4901574922958L, -2592L);
    assertEquals(both, planned(both, RandomShops::high));
  }

  @Test
  void slipsInWideShopsAreReportedAsProblems() {
    int refused = 0;
    for (long seed = 0; seed < SLIPPING_SHOPS / 2; seed++) {
      Problems problems = new Problems();
      Optional<Sheet> sheet = plan(RandomShops.wide(seed), problems);
      assertEquals(problems.hasErrors(), sheet.isEmpty(), "seed " + seed);
      refused += sheet.isEmpty() ? 1 : 0;
    }
    assertTrue(refused > SLIPPING_SHOPS / 10, refused + " refused");
    assertTrue(refused < SLIPPING_SHOPS / 4, refused + " refused");
  }

  /** Found by free seeds: its right side lies behind the left one, though both look alike. */
  @Test
  void sidesThatWaitForOneAnotherAreNotWorkedOnTogether() {
    ShopTexts shop = RandomShops.sound(2044011040229075659L);
    Sheet sheet = plan(shop, new Problems()).orElseThrow();
    List<Sheet.SheetStep> closing =
        sheet.steps().stream().filter(step -> Printed.text(step).startsWith("Close 5")).toList();
    assertEquals(
        List.of(List.of(Place.RIGHT), List.of(Place.LEFT)),
        closing.stream().map(Sheet.SheetStep::places).toList());
  }

  /** A fixed set: some slips in a thousand more are found by the playback only. */
  @Test
  void slipsOfWritersAreReportedAsProblems() {
    int refused = 0;
    for (long seed = 0; seed < SLIPPING_SHOPS; seed++) {
      Problems problems = new Problems();
      Optional<Sheet> sheet = plan(RandomShops.of(seed), problems);
      assertEquals(problems.hasErrors(), sheet.isEmpty(), "seed " + seed);
      refused += sheet.isEmpty() ? 1 : 0;
    }
    assertTrue(refused > SLIPPING_SHOPS / 10, refused + " refused");
    assertTrue(refused < SLIPPING_SHOPS / 2, refused + " refused");
  }

  /**
   * Found by free seeds, each with a slip of its writer: a thing put on after lowering that another
   * task puts on in its turn, or that gives access to it; one put on in the work of what gives
   * access; a step for before lifting in a job that lifts nothing.
   */
  @Test
  void rareSlipsAreWorkedAroundOrReported() {
    List<Long> rare = List.of(102876L, 103752L, 113679L, 115947L, 125342L, 135119L, 136840L);
    assertEquals(List.of(102876L, 115947L, 125342L, 135119L), planned(rare, RandomShops::of));
  }

  /**
   * Found by free seeds, in wide shops: orders that several works contradict, of things that one
   * step takes off, or that a closing step has words of its own for; a look before it is covered
   * whose thing goes on with others.
   */
  @Test
  void rareOrdersOfWideShopsHold() {
    List<Long> rare = List.of(1000228L, 1001563L, 1002052L, 1002740L, 1003388L);
    assertEquals(rare, planned(rare, RandomShops::wideAndSound));
    // Here a slip of the writer puts on after lowering what another work has off.
    assertEquals(List.of(4002129L), planned(List.of(4002129L), RandomShops::wide));
  }

  /** Those of some seeds whose shop has a plan; each of the others has a problem that says why. */
  private static List<Long> planned(List<Long> seeds, LongFunction<ShopTexts> shop) {
    List<Long> planned = new ArrayList<>();
    for (long seed : seeds) {
      Problems problems = new Problems();
      Optional<Sheet> sheet = plan(shop.apply(seed), problems);
      assertEquals(problems.hasErrors(), sheet.isEmpty(), "seed " + seed);
      sheet.ifPresent(made -> planned.add(seed));
    }
    return planned;
  }

  /** The plan, already played back: a fault of ours would throw. */
  private static Optional<Sheet> plan(ShopTexts shop, Problems problems) {
    return shop.resolve(RandomShops.JOB, problems)
        .flatMap(resolved -> Planner.plan(resolved, problems));
  }

  @Property(tries = 500, seed = "20260302")
  void accessIsOpenedOnceHoweverManyNeedIt(@ForAll long seed) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = RandomShops.sound(seed).resolve(RandomShops.JOB, problems);
    Optional<Sheet> sheet = resolved.flatMap(all -> Planner.plan(all, problems));
    long access =
        sheet.stream()
            .flatMap(made -> resolved.get().tasks().values().stream())
            .filter(task -> !task.asked())
            .count();
    Statistics.label("planned with access")
        .collect(access > 0)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 60));
    sheet.ifPresent(
        made -> resolved.get().tasks().values().forEach(task -> openedOnce(made, task)));
  }

  private static void openedOnce(Sheet sheet, Task task) {
    String first = task.open().get(0).step().text().value();
    long opened =
        sheet.steps().stream()
            .filter(step -> step.phase() == Sheet.Phase.OPEN && Printed.text(step).equals(first))
            .filter(step -> step.procedure().equals(task.id().procedure()))
            .filter(step -> step.places().contains(task.id().place()))
            .count();
    assertEquals(1, opened, task.id().toString());
  }

  @Property(tries = 500, seed = "20260302")
  void theOrderOfTheWorksCostsNoWay(@ForAll long seed, @ForAll long shuffle) {
    ShopTexts shop = RandomShops.sound(seed);
    ShopTexts other = RandomShops.shuffled(shuffle, shop);
    // Who ranks first does what two share, in an order of its own: that may cost a way, or not.
    Assume.that(sharing(shop).equals(sharing(other)));
    OptionalInt listed = changes(shop);
    OptionalInt shuffled = changes(other);
    Assume.that(listed.isPresent() && shuffled.isPresent());
    assertEquals(listed, shuffled);
  }

  /** The tasks that take each thing off, in their order, where there are several. */
  private static Map<ItemAt, List<TaskId>> sharing(ShopTexts shop) {
    Map<ItemAt, List<TaskId>> sharing = new HashMap<>();
    shop.resolve(RandomShops.JOB, new Problems()).stream()
        .flatMap(resolved -> resolved.ranked().stream())
        .forEach(
            task ->
                Stream.concat(task.open().stream(), task.work().stream())
                    .flatMap(step -> step.undo().stream())
                    .distinct()
                    .forEach(
                        item ->
                            sharing
                                .computeIfAbsent(item, key -> new ArrayList<>())
                                .add(task.id())));
    sharing.values().removeIf(tasks -> tasks.size() < 2);
    return sharing;
  }

  private static OptionalInt changes(ShopTexts shop) {
    Problems problems = new Problems();
    return shop.resolve(RandomShops.JOB, problems)
        .flatMap(RaisingOrder::of)
        .map(order -> OptionalInt.of(order.found().changes()))
        .orElse(OptionalInt.empty());
  }

  @Property(tries = 200, seed = "20260302")
  void everyTorqueLineOfARandomPlanIsTightenedLast(@ForAll long seed) {
    Optional<Sheet> sheet = plan(RandomShops.sound(seed), new Problems());
    List<Integer> finals =
        sheet.stream()
            .flatMap(made -> made.torque().stream())
            .filter(line -> line.visits().two())
            .map(TorqueLine::n)
            .toList();
    Statistics.label("lines visited twice")
        .collect(!finals.isEmpty())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 40));
    for (int n : finals) {
      Sheet.SheetStep last =
          sheet.orElseThrow().steps().stream()
              .filter(step -> step.torque().contains(n))
              .reduce((one, other) -> other)
              .orElseThrow();
      assertTrue(last.phase() == Sheet.Phase.FINAL, "line " + n + " ends at " + last);
    }
  }
}
