package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.CaseFolders;
import baysheet.plan.Planner;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** What a playback finds: nothing in a plan as it was made, something in every altered one. */
class PlanVerifierTest {
  // A small sheet alone can be altered in some ten ways; fewer in all means that none were tried.
  private static final int FEWEST_ALTERED = 500;

  /** A row has some twenty figures. */
  private static final int FEWEST_FIGURES = 2_000;

  private static final int FEWEST_RARER = 40;

  private static final List<Planned> PLANS = plans();

  /** A sheet as it was made, and what from. */
  private record Planned(String name, Resolved resolved, Sheet sheet) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** All that do not end in a problem. */
  static List<Planned> plans() {
    List<CaseFolders.JobOf> jobs = new ArrayList<>();
    CaseFolders.cases().forEach(folder -> jobs.add(CaseFolders.job(folder)));
    jobs.addAll(CaseFolders.demo());
    List<Planned> plans = new ArrayList<>();
    for (CaseFolders.JobOf job : jobs) {
      Resolved resolved = job.resolved();
      Planner.plan(resolved, new Problems())
          .ifPresent(sheet -> plans.add(new Planned(job.name(), resolved, sheet)));
    }
    return List.copyOf(plans);
  }

  @ParameterizedTest
  @FieldSource("PLANS")
  void everyAlterationIsFound(Planned plan) {
    assertEquals(List.of(), PlanVerifier.faults(plan.sheet(), plan.resolved()));
    List<String> unseen = new ArrayList<>();
    for (Map.Entry<String, Sheet> altered : AlteredSheets.all(plan.sheet()).entrySet()) {
      if (PlanVerifier.faults(altered.getValue(), plan.resolved()).isEmpty()) {
        unseen.add(altered.getKey());
      }
    }
    assertEquals(List.of(), unseen);
  }

  /** Belts, airbags, heated and welded parts: rules of which the demo has no example. */
  @Test
  void theRarerJobsOfAWorkshopHaveNoFault() {
    int planned = 0;
    for (CaseFolders.JobOf job : CaseFolders.workshop()) {
      Resolved resolved = job.resolved();
      Optional<Sheet> sheet = Planner.plan(resolved, new Problems());
      sheet.ifPresent(it -> assertEquals(List.of(), PlanVerifier.faults(it, resolved), job.name()));
      planned += sheet.isPresent() ? 1 : 0;
    }
    assertTrue(planned >= FEWEST_RARER, planned + " rarer jobs");
  }

  /** Count, band, mark, wrench, angle, treatment: each as the book says it, or no sheet. */
  @ParameterizedTest
  @FieldSource("PLANS")
  void everyAlteredFigureIsFound(Planned plan) {
    List<String> unseen = new ArrayList<>();
    for (Map.Entry<String, Sheet> altered : AlteredFigures.all(plan.sheet()).entrySet()) {
      if (FigureCheck.faults(altered.getValue(), plan.resolved()).isEmpty()) {
        unseen.add(altered.getKey());
      }
    }
    assertEquals(List.of(), unseen);
  }

  @Test
  void enoughFiguresAreAltered() {
    int altered = PLANS.stream().mapToInt(plan -> AlteredFigures.all(plan.sheet()).size()).sum();
    assertTrue(altered >= FEWEST_FIGURES, altered + " altered figures");
  }

  @Test
  void aDoubtThatNobodyIsAskedAboutIsAmongThem() {
    List<String> unasked =
        PLANS.stream()
            .flatMap(plan -> AlteredSheets.all(plan.sheet()).keySet().stream())
            .filter(what -> what.endsWith("with nobody asked"))
            .toList();
    assertTrue(!unasked.isEmpty(), "no demo figure is in doubt any more");
  }

  @Test
  void enoughIsAltered() {
    int altered = PLANS.stream().mapToInt(plan -> AlteredSheets.all(plan.sheet()).size()).sum();
    assertTrue(altered >= FEWEST_ALTERED, altered + " altered sheets");
  }
}
