package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.CaseFolders;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.CautionLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/**
 * What is found when the stages of a job are played back: nothing as they are made, else a fault.
 */
class StageVerifierTest {
  private static final int FEWEST_DIVIDED = 14;

  private static final List<Divided> JOBS = jobs();

  /** A job in two or three stages. */
  private record Divided(String name, Resolved resolved, Sheet whole, List<Sheet> stages) {
    @Override
    public String toString() {
      return name;
    }

    List<String> faults(List<Sheet> altered) {
      return StageVerifier.faults(whole, altered, resolved);
    }

    List<Sheet> with(int index, Sheet altered) {
      List<Sheet> others = new ArrayList<>(stages);
      others.set(index, altered);
      return others;
    }
  }

  static List<Divided> jobs() {
    List<CaseFolders.JobOf> all = new ArrayList<>(CaseFolders.demo());
    CaseFolders.cases().forEach(folder -> all.add(CaseFolders.job(folder)));
    List<Divided> jobs = new ArrayList<>();
    for (CaseFolders.JobOf job : all) {
      Resolved resolved = job.resolved();
      Optional<TracedPlan> plan = Planner.traced(resolved, new Problems());
      for (int least : List.of(2, 3)) {
        plan.map(it -> Division.of(it.stages(), least, (sheet, room) -> true).stages())
            .filter(stages -> stages.size() == least)
            .ifPresent(
                stages ->
                    jobs.add(
                        new Divided(
                            job.name() + " in " + least, resolved, plan.get().sheet(), stages)));
      }
    }
    return List.copyOf(jobs);
  }

  @Test
  void enoughJobsAreDivided() {
    assertTrue(JOBS.size() >= FEWEST_DIVIDED, JOBS.toString());
    long threes = JOBS.stream().filter(job -> job.stages().size() == 3).count();
    assertTrue(threes >= FEWEST_DIVIDED, threes + " in three stages");
  }

  @ParameterizedTest
  @FieldSource("JOBS")
  void whatIsMissingOrTooMuchIsFound(Divided job) {
    assertEquals(List.of(), job.faults(job.stages()));
    List<String> unseen = new ArrayList<>();
    for (int i = 0; i < job.stages().size(); i++) {
      Sheet stage = job.stages().get(i);
      for (String part :
          List.of(
              "sections",
              "safety.qualified",
              "safety.cautions",
              "evening",
              "torque",
              "equipment.tools",
              "equipment.parts",
              "equipment.consumables",
              "tally",
              "checks",
              "sources",
              "safety.support")) {
        List<?> all = (List<?>) Altered.get(stage, part);
        for (int k = 0; k < all.size(); k++) {
          List<Object> fewer = new ArrayList<>(all);
          fewer.remove(k);
          Sheet without = Altered.with(stage, part, fewer);
          if (job.faults(job.with(i, without)).isEmpty() && !isElsewhere(job, part, all.get(k))) {
            unseen.add("stage " + (i + 1) + " without " + all.get(k));
          }
        }
      }
    }
    assertEquals(List.of(), unseen);
  }

  /**
   * Whoever holds only the last sheet refits the earth clamp, and looks up from below on blocks.
   */
  @Test
  void theLastStageWarnsOfWhatIsStillDoneThere() {
    assertTrue(lastCautions("2413").containsAll(List.of("battery-short", "starts-itself")));
    assertTrue(lastCautions("2405").containsAll(List.of("vehicle-support", "eye-dirt")));
  }

  private static List<String> lastCautions(String number) {
    Divided job = JOBS.stream().filter(it -> it.name().contains(number)).findFirst().orElseThrow();
    return job.stages().get(job.stages().size() - 1).safety().cautions().stream()
        .map(CautionLine::name)
        .toList();
  }

  /** What several stages need may stand on another one as well; then it is a question of tools. */
  private static boolean isElsewhere(Divided job, String part, Object line) {
    return List.of("equipment.tools", "equipment.consumables", "sources", "safety.support")
            .contains(part)
        && job.stages().stream()
                .filter(it -> ((List<?>) Altered.get(it, part)).contains(line))
                .count()
            > 1;
  }

  @ParameterizedTest
  @FieldSource("JOBS")
  void anotherStateIsFound(Divided job) {
    for (int i = 0; i + 1 < job.stages().size(); i++) {
      Stage stage = job.stages().get(i).stage().orElseThrow();
      Stage next = job.stages().get(i + 1).stage().orElseThrow();
      assertEquals(stage.leaving(), next.arrival());
      for (Map.Entry<String, VehicleState> other :
          others(stage.leaving().orElseThrow()).entrySet()) {
        List<Sheet> altered = new ArrayList<>(job.stages());
        altered.set(i, left(job.stages().get(i), "leaving", other.getValue()));
        assertTrue(!job.faults(altered).isEmpty(), "one says " + other.getKey());
        altered.set(i + 1, left(job.stages().get(i + 1), "arrival", other.getValue()));
        assertTrue(!job.faults(altered).isEmpty(), "both say " + other.getKey());
      }
    }
  }

  private static Sheet left(Sheet sheet, String when, VehicleState state) {
    Stage other = Altered.with(sheet.stage().orElseThrow(), when, Optional.of(state));
    return Altered.with(sheet, "stage", Optional.of(other));
  }

  /** The state with one thing in it changed. */
  private static Map<String, VehicleState> others(VehicleState state) {
    Map<String, VehicleState> others = new LinkedHashMap<>();
    others.put("another step", Altered.with(state, "after", state.after() + 1));
    Stage.Standing standing = state.standing();
    Height height = standing.height() == Height.GROUND ? Height.STANDS : Height.GROUND;
    others.put("another height", stands(state, "height", height));
    List<Place> raised = standing.raised().isEmpty() ? List.of(Place.FRONT) : List.of();
    others.put("raised or not", stands(state, "raised", raised));
    others.put("on blocks or not", stands(state, "onBlocks", !standing.onBlocks()));
    others.put("another circuit open", Altered.with(state, "open", List.of("soup")));
    fewer(others, state, "off", state.off());
    fewer(others, state, "fasteners", state.fasteners());
    fewer(others, state, "loose", state.loose());
    fewer(others, state, "written", state.written());
    fewer(others, state, "needed", state.needed());
    return others;
  }

  private static VehicleState stands(VehicleState state, String part, Object value) {
    return Altered.with(state, "standing", Altered.with(state.standing(), part, value));
  }

  private static void fewer(
      Map<String, VehicleState> others, VehicleState state, String part, List<?> all) {
    if (!all.isEmpty()) {
      List<?> fewer = all.subList(1, all.size());
      others.put("without " + all.get(0), Altered.with(state, part, fewer));
    }
  }

  @ParameterizedTest
  @FieldSource("JOBS")
  void stagesInAnotherOrderAreFound(Divided job) {
    List<Sheet> turned = new ArrayList<>(job.stages());
    turned.add(turned.remove(0));
    assertTrue(!job.faults(turned).isEmpty());
    assertTrue(!job.faults(job.stages().subList(1, job.stages().size())).isEmpty());
  }
}
