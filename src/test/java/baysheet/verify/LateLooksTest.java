package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Looks that come after the work: none is missing, and none stands before what it looks at. */
class LateLooksTest {
  /** The demo puts a wheel on in one step and tightens its nuts in the next. */
  @Test
  void aWheelIsLookedAtAgainWhereItsNutsGoOnInAStepOfTheirOwn() {
    String book = "vehicles/larkfell-pipit-2015.yaml";
    ShopTexts demo = ShopTexts.of(Path.of("jobs")).withBuiltIn();
    String text = demo.text(book);
    ShopTexts silent = demo.with(book, text.replaceFirst(",\\s*recheck: \\d+ km", ""));
    assertTrue(!silent.text(book).equals(text));
    Resolved resolved = silent.resolved("2026-03-02/2401.yaml");
    Sheet sheet = Planner.plan(resolved, new Problems()).orElseThrow();
    List<CheckLine> checks = new ArrayList<>(sheet.checks());
    assertTrue(
        checks.removeIf(it -> it.name().equals("recheck-wheel-nut")),
        () -> sheet.checks().stream().map(CheckLine::name).toList().toString());
    assertEquals(
        List.of("line 4 is not looked at again after a distance"),
        PlanVerifier.faults(Altered.with(sheet, "checks", checks), resolved));
  }

  /** Nobody can look at the lid of work that another stage only begins. */
  @Test
  void aCheckOfAProcedureStandsOnNoStageBeforeItsWork() {
    SmallShop shop =
        SmallShop.empty()
            .procedure(
                "first",
                "at: vehicle\nbehind: [raise]\nopen: [{do: One off, undo: one}]"
                    + "\nwork: [{do: Look round}, {do: Look again}]")
            .procedure(
                "second",
                "at: vehicle\nbehind: [raise]\nafter: [first]\nopen: [{do: Two off, undo: two}]"
                    + "\nchecks: [{do: Look at the lid, moment: raised}]")
            .job("hoist", "first at vehicle", "second at vehicle");
    SmallStages job = SmallStages.behind(shop, "Look round");
    CheckLine lid =
        job.whole().checks().stream()
            .filter(it -> it.text().isWritten("Look at the lid"))
            .findFirst()
            .orElseThrow();
    List<CheckLine> checks = new ArrayList<>(job.stage(2).checks());
    assertTrue(checks.remove(lid));
    List<CheckLine> early = new ArrayList<>(job.stage(1).checks());
    early.add(lid);
    assertEquals(
        List.of("the check second, RAISED, stands on stage 1"),
        job.faults(
            List.of(
                Altered.with(job.stage(1), "checks", early),
                Altered.with(job.stage(2), "checks", checks))));
  }
}
