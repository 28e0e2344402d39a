package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.Phase;
import baysheet.sheet.Statement;
import baysheet.sheet.TorqueLine;
import baysheet.verify.PlanVerifier;
import baysheet.wording.Samples;
import baysheet.wording.SheetText;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever has one sheet of a job in the hand finds there what another sheet began. */
class AcrossSheetsTest {
  private static Resolved resolved(String job) {
    return CaseFolders.demo().stream()
        .filter(it -> it.name().contains(job))
        .findFirst()
        .orElseThrow()
        .resolved();
  }

  private static List<Sheet> stages(String job, int least, int page) {
    return Division.of(
            Planner.traced(resolved(job), new Problems()).orElseThrow().stages(),
            least,
            (sheet, room) -> sheet.steps().size() <= page)
        .stages();
  }

  private static Stream<SheetText.StepText> steps(Sheet sheet) {
    return Samples.text(sheet).sections().stream().flatMap(it -> it.steps().stream());
  }

  private static String check(Sheet sheet, String begins) {
    return Samples.text(sheet).checks().stream()
        .flatMap(it -> it.checks().stream())
        .map(SheetText.CheckText::text)
        .filter(text -> text.startsWith(begins))
        .findFirst()
        .orElseThrow();
  }

  /** Air in a brake, and a running engine, wait for nobody who takes over. */
  @Test
  void noSheetEndsWhileABrakeIsBled() {
    int tried = 0;
    for (int page = 12; page < 40; page++) {
      List<Sheet> stages = stages("2409", 1, page);
      for (int i = 1; i < stages.size(); i++) {
        List<Sheet.SheetStep> before = stages.get(i - 1).steps();
        boolean bled =
            before.get(before.size() - 1).phase() == Phase.CHECK
                && stages.get(i).steps().get(0).phase() == Phase.CHECK;
        assertTrue(!bled, "behind step " + before.get(before.size() - 1).n());
        tried++;
      }
    }
    assertTrue(tried > 20, tried + " ends");
  }

  /** A nut that turns with its bolt is not torqued: what holds it lies ready on that sheet. */
  @Test
  void whatHoldsTheOtherEndLiesReadyWhereARowIsTorqued() {
    int held = 0;
    for (Sheet sheet : stages("2401", 1, 25)) {
      List<String> tools = sheet.equipment().tools().stream().map(Sheet.ToolLine::name).toList();
      for (TorqueLine line : sheet.torque()) {
        if (line.fastener().equals("caliper-guide-bolt")) {
          assertTrue(tools.contains("15 mm spanner"), tools.toString());
          held++;
        }
      }
    }
    assertTrue(held > 0, "no sheet torques them");
  }

  /** The lift goes onto its locks for the break, and off them before the work goes on. */
  @Test
  void aVehicleWithItsWheelsJustClearIsLeftOnTheLocks() {
    int low = 0;
    for (int page = 20; page < 40; page++) {
      List<Sheet> stages = stages("2409", 1, page);
      for (int i = 1; i < stages.size(); i++) {
        String left = Samples.text(stages.get(i - 1)).stage().leaving().get(0);
        String found = Samples.text(stages.get(i)).stage().arrival().get(0);
        boolean isLow = left.contains("wheels just clear");
        assertEquals(isLow, left.endsWith("set it on the next locks before you leave it."), left);
        assertEquals(isLow, found.startsWith("The vehicle is on the first lift locks"), found);
        low += isLow ? 1 : 0;
      }
    }
    assertTrue(low > 0);
  }

  @Test
  void aSheetThatFindsTheVehicleOnStandsSaysWhereToJackIt() {
    for (Sheet stage : stages("2411", 3, 100)) {
      List<String> found = Samples.text(stage).stage().arrival();
      boolean first = stage.stage().orElseThrow().isFirst();
      assertEquals(!first, found.contains("Jacking point: middle of the axle."), found.toString());
    }
  }

  /** So does each step that jacks an axle off its blocks. */
  @Test
  void whoJacksAVehicleOffItsBlocksReadsWhere() {
    List<String> off =
        steps(stages("2402", 1, 1000).get(0))
            .map(SheetText.StepText::text)
            .filter(text -> text.contains("clear of its blocks"))
            .toList();
    assertEquals(2, off.size());
    assertTrue(off.get(0).endsWith("with the jack (axle beam)."), off.toString());
    assertTrue(off.get(1).endsWith("with the jack (subframe)."), off.toString());
  }

  @Test
  void aCheckNamesTheRowAndTheSheetOfWhatItIsAbout() {
    String begins = "Before the vehicle leaves the aligner, torque";
    Sheet whole = stages("2410", 1, 100).get(0);
    assertTrue(
        check(whole, begins).endsWith("as their row says (row\u00a02)."), check(whole, begins));
    int elsewhere = 0;
    for (int page = 14; page < 40; page++) {
      List<Sheet> stages = stages("2410", 2, page);
      Sheet last = stages.get(stages.size() - 1);
      boolean here = last.torque().stream().anyMatch(line -> line.n() == 2);
      assertTrue(
          check(last, begins).matches(here ? ".*\\(row.2\\)\\." : ".*\\(row.2, sheet.[1-4]\\)\\."));
      elsewhere += here ? 0 : 1;
    }
    assertTrue(elsewhere > 0);
    List<CheckLine> checks = new ArrayList<>();
    for (CheckLine it : whole.checks()) {
      boolean of = it.text() instanceof Statement.OfRows;
      checks.add(of ? Altered.with(it, "text.rows", List.of(1)) : it);
    }
    List<String> faults =
        PlanVerifier.faults(Altered.with(whole, "checks", checks), resolved("2410"));
    assertTrue(
        faults.toString().contains("something else than its rule and its rows"), faults.toString());
  }

  /** The box says by name who may look, where not any second person may. */
  @Test
  void whereACertificateIsNeededAHoldPointNamesWhoHasIt() {
    Sheet sheet = stages("2413", 1, 1000).get(0);
    List<String> lookers =
        steps(sheet)
            .map(SheetText.StepText::hold)
            .filter(it -> !it.boxes().isEmpty())
            .map(SheetText.HoldText::by)
            .toList();
    assertEquals(List.of("B. Harstane (T2)"), lookers);
    List<String> checkers =
        Samples.text(sheet).checks().stream()
            .flatMap(it -> it.checks().stream())
            .map(SheetText.CheckText::hold)
            .filter(it -> !it.boxes().isEmpty())
            .map(SheetText.HoldText::by)
            .toList();
    assertEquals(List.of("B. Harstane (T2)", ""), checkers);
  }

  /** Else only the number of the row would tell the front wheels from the rear ones. */
  @Test
  void theSameFastenersOfTwoAxlesAreToldApartWhereTheyAreTorqued() {
    SmallShop shop =
        SmallShop.bolted(
                "deep-bolt: {count: 1, thread: M10, class: \"8.8\", head: hex 16 mm, torque: 40 N·m}")
            .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one");
    assertEquals(
        List.of("Front left", "Rear right"),
        torqued(shop.job("hoist", "deep at front-left", "deep at rear-right")));
    assertEquals(List.of(""), torqued(shop.job("hoist", "deep at front-left")));
  }

  private static List<String> torqued(SmallShop shop) {
    return steps(shop.sheet())
        .filter(it -> it.text().startsWith("Torque the roller nuts"))
        .map(SheetText.StepText::place)
        .toList();
  }
}
