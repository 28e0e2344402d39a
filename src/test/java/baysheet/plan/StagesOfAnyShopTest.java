package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Job;
import baysheet.books.Moment;
import baysheet.plan.stage.Division;
import baysheet.plan.stage.Division.Divided;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import baysheet.verify.StageVerifier;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/**
 * Whatever is divided is divided into stages that the playback holds for the job. A page takes here
 * a number of steps; the checks at the end take half a page.
 */
class StagesOfAnyShopTest {
  /** Percent of the shops that have a plan: half of those with heights, four fifths of others. */
  private static final double PLANNED = 40;

  /** Percent of the plans with more than one stage: half of those whose page is short, else all. */
  private static final double DIVIDED = 35;

  @Property(tries = 200, seed = "20261129")
  void stagesAskedForHold(@ForAll long seed, @ForAll @IntRange(min = 2, max = 4) int least) {
    divided(RandomShops.wideAndSound(seed), least, 1000);
  }

  @Property(tries = 200, seed = "20261129")
  void stagesOfAShopWithHeightsHold(@ForAll long seed, @ForAll @IntRange(min = 2, max = 4) int n) {
    divided(RandomShops.high(seed), n, 1000);
  }

  @Property(tries = 200, seed = "20261129")
  void whatIsTooLongIsDivided(@ForAll long seed, @ForAll @IntRange(min = 8, max = 25) int page) {
    divided(RandomShops.wideAndSound(seed), 1, page);
  }

  private static void divided(ShopTexts shop, int least, int page) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = shop.resolve(RandomShops.JOB, problems);
    Optional<TracedPlan> plan = resolved.flatMap(it -> Planner.traced(it, problems));
    // A shop that asks for what cannot be done has no plan, and says why.
    assertEquals(problems.hasErrors(), plan.isEmpty(), problems.all().toString());
    Statistics.label("planned")
        .collect(plan.isPresent())
        .coverage(coverage -> coverage.check(true).percentage(share -> share > PLANNED));
    if (plan.isEmpty()) {
      return;
    }
    Divided divided =
        Division.of(
            plan.get().stages(),
            least,
            (sheet, room) ->
                length(sheet, page) <= (room == Division.Room.LEAST ? page : page - 2));
    Statistics.label("stages").collect(divided.stages().size());
    Statistics.label("divided")
        .collect(divided.stages().size() > 1)
        .coverage(coverage -> coverage.check(true).percentage(share -> share > DIVIDED));
    boolean tooMany = plan.get().sheet().steps().size() > (Job.MOST_STAGES - 1) * page / 2;
    assertTrue(tooMany || divided.stages().isEmpty() == divided.tooLong().isPresent());
    divided
        .tooLong()
        .ifPresent(
            it -> {
              Sheet.Stretch steps = it.steps().orElseThrow();
              int taken = it.checks() ? page / 2 : 0;
              assertTrue(steps.last() - steps.first() >= page - taken, it.toString());
            });
    if (divided.stages().size() > 1) {
      List<Sheet> stages = divided.stages();
      stages.forEach(it -> assertTrue(it.steps().size() <= page));
      assertEquals(
          List.of(), StageVerifier.faults(plan.get().sheet(), stages, resolved.orElseThrow()));
    }
  }

  private static int length(Sheet sheet, int page) {
    boolean checks =
        sheet.checks().stream()
            .anyMatch(
                it -> it.steps().isEmpty() && it.moment().compareTo(Moment.ON_THE_GROUND) > 0);
    return sheet.steps().size() + (checks ? page / 2 : 0);
  }
}
