package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Catalogue;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.TimeNeeded;
import baysheet.sheet.TorqueLine;
import baysheet.wording.SheetText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a workshop asks of every sheet, held against all demo jobs. Common practice, no source. */
class DemoLogicTest {
  private static final Map<String, TracedPlan> PLANS =
      CaseFolders.demo().stream()
          .collect(
              Collectors.toMap(
                  job -> job.name().replaceAll(".*/|\\.yaml", ""),
                  job -> Planner.traced(job.resolved(), new Problems()).orElseThrow()));

  private static Sheet sheet(String job) {
    return PLANS.get(job).sheet();
  }

  private static List<String> ids(String job) {
    return sheet(job).steps().stream().map(step -> step.source().id()).toList();
  }

  private static void inOrder(List<String> all, String... some) {
    List<Integer> at = new ArrayList<>();
    for (String one : some) {
      at.add(all.indexOf(one));
    }
    assertTrue(!at.contains(-1) && at.equals(at.stream().sorted().toList()), at + " in " + all);
  }

  /** From the start to the stop nothing is done that does not need the engine. */
  @Test
  void theEngineRunsNoLongerThanItIsNeeded() {
    List<String> checks = sheet("2409").checks().stream().map(CheckLine::name).toList();
    inOrder(
        checks,
        "brake-fluid-level",
        "brake-cap-tight",
        "engine-started",
        "pedal-engine-running",
        "engine-stopped-on-the-ground",
        "brake-tag-off");
  }

  /** Dangers head the sheet, so their letters come first; L and R are the sides of the vehicle. */
  @Test
  void lettersFollowTheOrderInWhichCautionsAreMet() {
    for (Map.Entry<String, TracedPlan> plan : PLANS.entrySet()) {
      int last = -2;
      for (CautionLine caution : plan.getValue().sheet().safety().cautions()) {
        int met =
            caution.signal() == Catalogue.Signal.DANGER
                ? -2
                : caution.wholeJob() ? -1 : caution.steps().get(0);
        assertTrue(met >= last, plan.getKey() + " " + caution.letter());
        assertTrue(!caution.letter().matches(".*[ILOR].*"), plan.getKey() + caution.letter());
        last = met;
      }
    }
  }

  /** Whoever adds up what is printed at the steps finds what the header says. */
  @Test
  void theMinutesAtTheStepsAddUp() {
    for (Map.Entry<String, TracedPlan> plan : PLANS.entrySet()) {
      List<Sheet> sheets = new ArrayList<>(List.of(plan.getValue().sheet()));
      sheets.addAll(Division.of(plan.getValue().stages(), 2, (it, room) -> true).stages());
      for (Sheet sheet : sheets) {
        double sum =
            sheet.steps().stream()
                .mapToDouble(step -> TimeNeeded.printed(step.minutes().mean()))
                .sum();
        assertEquals(Math.round(sum), sheet.time().mean(), sheet.name());
        assertTrue(sheet.time().low() <= sheet.time().mean(), sheet.name());
        assertTrue(sheet.time().mean() <= sheet.time().high(), sheet.name());
      }
    }
  }

  /** A chock must not stand where a block goes, and wheels that stay down have theirs. */
  @Test
  void noChockStandsWhereABlockGoes() {
    inOrder(
        ids("2405"),
        "chocks/set/front",
        "raise-jack/open/1",
        "blocks/apply-brake",
        "chocks/set/rear",
        "chocks/take/front",
        "blocks/raise-axle/front",
        "chocks/set/on-blocks/front",
        "chocks/take/rear",
        "blocks/raise-axle/rear",
        "chocks/set/on-blocks/rear");
    inOrder(ids("2402"), "chocks/set/rear", "wheel-off/open/1", "blocks/raise-axle/front");
    assertTrue(!ids("2402").contains("chocks/take/front"));
    List<String> lifted = ids("2412");
    inOrder(
        lifted.subList(lifted.indexOf("blocks/raise-clear"), lifted.size()),
        "blocks/locks",
        "chocks/take/vehicle",
        "blocks/put-under");
  }

  /** On a lift no chock holds the vehicle, and none may lie where the wheels come down. */
  @Test
  void noStateOfAVehicleOnALiftNamesChocks() {
    for (String job : List.of("2403", "2412")) {
      for (Sheet stage : Division.of(PLANS.get(job).stages(), 3, (it, room) -> true).stages()) {
        stage.stage().stream()
            .flatMap(it -> it.leaving().stream())
            .filter(state -> state.standing().height() != baysheet.books.Height.GROUND)
            .forEach(state -> assertTrue(!state.left().toString().contains("chock"), job));
      }
    }
  }

  @Test
  void theHeightIsMeasuredASecondTimeBeforeTheTorqueAtThatHeight() {
    for (String job : List.of("2402", "2405", "2412")) {
      Sheet sheet = sheet(job);
      Set<Integer> rows =
          sheet.torque().stream()
              .filter(line -> line.visits().rideHeight())
              .map(TorqueLine::n)
              .collect(Collectors.toSet());
      assertTrue(!rows.isEmpty(), job);
      SheetStep torqued =
          sheet.steps().stream()
              .filter(step -> step.phase() == Sheet.Phase.FINAL)
              .filter(step -> step.torque().stream().anyMatch(rows::contains))
              .findFirst()
              .orElseThrow();
      List<SheetStep> measured =
          sheet.steps().stream()
              .filter(step -> step.source().id().startsWith("blocks/measure/"))
              .toList();
      assertEquals(torqued.places().size(), measured.size(), job);
      for (SheetStep step : measured) {
        assertTrue(step.n() < torqued.n() && step.entries().size() == 2, job);
      }
      assertTrue(
          sheet.equipment().tools().stream().anyMatch(tool -> tool.name().equals("tape measure")),
          job);
    }
  }

  /** The arms of a two-post lift are locked; a scissor lift has none. */
  @Test
  void onlyATwoPostLiftHasArmLocks() {
    Function<String, Boolean> arms =
        job ->
            sheet(job).steps().stream()
                .anyMatch(step -> baysheet.wording.Printed.text(step).contains("arm lock"));
    assertEquals(true, arms.apply("2401"));
    assertEquals(false, arms.apply("2403"));
  }

  @Test
  void whoeverStakesACollarIsWarnedOfSplinters() {
    Sheet sheet = sheet("2403");
    String letter =
        sheet.safety().cautions().stream()
            .filter(caution -> caution.name().equals("hammer-chips"))
            .findFirst()
            .orElseThrow()
            .letter();
    List<SheetStep> staking =
        sheet.steps().stream()
            .filter(
                step ->
                    step.disturb().stream().anyMatch(item -> item.item().equals("hub-nut-collar")))
            .toList();
    assertEquals(1, staking.size());
    assertTrue(staking.get(0).letters().all().contains(letter), () -> staking + " " + letter);
  }

  /** Whoever isolated the high voltage is the technician here, and signs for himself. */
  @Test
  void theTechnicianIsNeverTheSecondSigner() {
    for (TracedPlan plan : PLANS.values()) {
      SheetText text = SheetText.of(plan.sheet(), "id", "code");
      boolean named = plan.sheet().heading().crew().second().isPresent();
      assertTrue(
          named || text.releasedBy().contains("not " + plan.sheet().heading().crew().by().name()),
          text.releasedBy());
    }
  }

  /** What only ways out ask for is laid out on a sheet whose steps have them. */
  @Test
  void noToolForStuckPartsIsLaidOutWhereNoStepCanBeStuck() {
    int without = 0;
    for (TracedPlan plan : PLANS.values()) {
      for (Sheet stage : Division.of(plan.stages(), 3, (it, room) -> true).stages()) {
        boolean stuck =
            stage.steps().stream().anyMatch(step -> !step.teaching().ifStuck().isEmpty());
        boolean tools = stage.equipment().tools().stream().anyMatch(Sheet.ToolLine::ifStuck);
        assertTrue(stuck || !tools, stage.name() + " " + stage.equipment().tools());
        without += stuck ? 0 : 1;
      }
    }
    assertTrue(without > 0);
  }
}
