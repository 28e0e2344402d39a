package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.ShopFolder;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import baysheet.sheet.StepSource;
import baysheet.sheet.ToolSpell;
import baysheet.template.LayoutTemplates;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From which step to which a special tool is in use. */
class ToolSpellsTest {
  private static final String FILE = "2026-03-02/2499.yaml";

  @TempDir private Path folder;

  private TracedPlan plan(String work, String more) {
    CopyOfTheDemo demo =
        CopyOfTheDemo.in(folder.resolve("garage"))
            .with(
                FILE,
                "job: 2499\nvehicle: {book: larkfell-pipit-2015}\nbay: 1\nby: T1\n"
                    + more
                    + "work: "
                    + work
                    + "\n");
    Problems problems = new Problems();
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    ShopFolder shop = folders.read(demo.root(), problems).orElseThrow();
    SheetMaker maker = new SheetMaker(folders, LayoutTemplates::builtIn, fonts, Optional.empty());
    return maker
        .resolve(demo.root().resolve(FILE), shop, problems)
        .flatMap(it -> Planner.traced(it, problems))
        .orElseThrow(() -> new AssertionError(problems.all().toString()));
  }

  private static List<ToolSpell> of(TracedPlan plan, String tool) {
    return plan.tools().stream().filter(it -> it.tool().equals(tool)).toList();
  }

  /** The number of the one step with these words. */
  private static int step(TracedPlan plan, String words) {
    List<Integer> found =
        plan.sheet().steps().stream()
            .filter(it -> text(it.source()).contains(words))
            .map(Sheet.SheetStep::n)
            .toList();
    assertEquals(1, found.size(), words + " in " + plan.sheet().steps());
    return found.get(0);
  }

  private static String text(StepSource source) {
    if (source instanceof StepSource.Written written) {
      return written.text();
    }
    if (source instanceof StepSource.PutBack back) {
      return back.text().orElse("");
    }
    return source instanceof StepSource.Back back ? back.text() : "";
  }

  /** A spring that is clamped stays clamped until it is let out: the compressor is not free. */
  @Test
  void aSpringCompressorIsInUseUntilTheSpringIsLetOut() {
    TracedPlan plan = plan("spring-strut at front-left", "");
    List<ToolSpell> spells = of(plan, "spring compressor");
    assertEquals(1, spells.size(), plan.tools().toString());
    assertEquals(step(plan, "Compress the spring"), spells.get(0).first());
    assertEquals(step(plan, "Release the spring evenly"), spells.get(0).last());
  }

  @Test
  void aSplitterIsInUseAtItsStepAlone() {
    TracedPlan plan = plan("track-rod-end at front-left", "");
    List<ToolSpell> spells = of(plan, "ball joint splitter");
    assertEquals(1, spells.size(), plan.tools().toString());
    assertEquals(spells.get(0).first(), spells.get(0).last());
  }

  /** The beam carries the engine from where it is hung up to where the beam is taken away. */
  @Test
  void aSupportBeamIsInUseUntilItIsTakenAway() {
    TracedPlan plan = plan("clutch at engine", "");
    List<ToolSpell> spells = of(plan, "engine support beam");
    assertEquals(1, spells.size(), plan.tools().toString());
    assertEquals(step(plan, "Support the engine from the beam"), spells.get(0).first());
    assertEquals(step(plan, "Remove the support beam"), spells.get(0).last());
  }

  @Test
  void anAngleGaugeIsInUseWhereAnAngleIsTurned() {
    TracedPlan plan = plan("lower-arm at front-left", "");
    List<ToolSpell> spells = of(plan, "angle gauge");
    assertTrue(!spells.isEmpty(), plan.tools().toString());
    for (ToolSpell spell : spells) {
      List<Integer> rows = plan.sheet().steps().get(spell.first() - 1).torque();
      assertTrue(
          rows.stream()
              .map(n -> plan.sheet().torque().get(n - 1))
              .flatMap(row -> row.method().stages().stream())
              .anyMatch(stage -> stage.print().contains("°")),
          spell.toString());
    }
  }
}
