package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.layout.Fonts;
import baysheet.output.SheetMaker;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.ItemAt;
import baysheet.sheet.CautionLine;
import baysheet.sheet.CheckLine;
import baysheet.sheet.Sheet;
import baysheet.sheet.Sheet.SheetStep;
import baysheet.sheet.StepSource;
import baysheet.template.LayoutTemplates;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a workshop asks of the rarer jobs. Common practice, no source. */
class WorkshopJobsTest {
  private static final Path RARER = Path.of("src/test/resources/cases/workshop");
  private static final Map<String, TracedPlan> PLANS = new TreeMap<>();

  @TempDir private static Path root;

  @BeforeAll
  static void plan() {
    CopyOfTheDemo.in(root).with(RARER);
    Fonts fonts = Fonts.builtIn();
    ShopFolders folders = new ShopFolders(fonts);
    Problems problems = new Problems();
    ShopFolder folder =
        folders.read(root, problems).orElseThrow(() -> new AssertionError(problems.all()));
    SheetMaker maker =
        new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.of(Shop.Paper.A4));
    for (Path job : DayFolders.all(root)) {
      maker
          .resolve(job, folder, problems)
          .flatMap(resolved -> Planner.traced(resolved, problems))
          .ifPresent(plan -> PLANS.put(YamlFiles.name(job), plan));
    }
    assertFalse(problems.hasErrors(), () -> problems.all().toString());
  }

  private static Sheet sheet(String job) {
    return PLANS.get(job).sheet();
  }

  private static List<String> ids(String job) {
    return sheet(job).steps().stream().map(step -> step.source().id()).toList();
  }

  private static List<String> checks(String job) {
    return sheet(job).checks().stream().map(CheckLine::name).toList();
  }

  private static void inOrder(List<String> all, String... some) {
    List<Integer> at = new ArrayList<>();
    for (String one : some) {
      at.add(all.indexOf(one));
    }
    assertTrue(!at.contains(-1) && at.equals(at.stream().sorted().toList()), at + " in " + all);
  }

  /** A hub carrier without its joint hangs on the brake hose and the drive shaft. */
  @Test
  void aStrapHoldsTheHubCarrierBeforeItsJointIsParted() {
    int parted = 0;
    for (Map.Entry<String, TracedPlan> plan : PLANS.entrySet()) {
      Set<ItemAt> on = new HashSet<>();
      for (SheetStep step : plan.getValue().sheet().steps()) {
        on.addAll(step.undo());
        for (ItemAt joint : named(step, "ball-joint-pin")) {
          assertTrue(
              on.contains(new ItemAt("hub-strap", joint.place())),
              () -> plan.getKey() + ", step " + step.n());
          parted++;
        }
      }
    }
    assertTrue(parted >= 5, "joints: " + parted);
  }

  private static List<ItemAt> named(SheetStep step, String item) {
    return step.undo().stream().filter(it -> it.item().equals(item)).toList();
  }

  @Test
  void aJackSupportsTheArmWhileItsJointIsParted() {
    inOrder(
        ids("108"),
        "drive-shaft-out/open/4",
        "drive-shaft-out/open/7",
        "drive-shaft-out/open/9",
        "drive-shaft-out/open/10",
        "drive-shaft-out/open/11",
        "drive-shaft-out/open/12");
    inOrder(
        ids("119"),
        "wheel-bearing/open/6",
        "wheel-bearing/open/9",
        "wheel-bearing/open/11",
        "wheel-bearing/open/12",
        "wheel-bearing/open/13",
        "wheel-bearing/open/14");
  }

  @Test
  void theGearboxRestsOnItsMountBeforeThatIsTorqued() {
    inOrder(
        ids("110"),
        "gearbox-mount/open/3/back",
        "gearbox-mount/close/1",
        "gearbox-mount/close/2",
        "gearbox-mount/close/3",
        "gearbox-mount/close/4",
        "undertray/close/1");
  }

  @Test
  void whoeverIsNearARunningEngineIsWarnedOfItsBelts() {
    assertTrue(
        sheet("110").safety().cautions().stream()
            .map(CautionLine::name)
            .anyMatch("rotating-parts"::equals));
  }

  /** It comes off before the oil is drained, and goes on when the gearbox is full. */
  @Test
  void theFillerPlugIsTorquedOnceTheGearboxIsFull() {
    for (String job : List.of("106", "108")) {
      inOrder(
          ids(job),
          "gearbox-drained/open/1",
          "gearbox-drained/open/2",
          "gearbox-drained/close/3",
          "check/gearbox-level",
          "check/gearbox-oil-in",
          "gearbox-drained/close/4",
          "undertray/close/1");
      SheetStep last = sheet(job).steps().get(ids(job).indexOf("gearbox-drained/close/4"));
      assertEquals(1, last.torque().size(), last.toString());
    }
  }

  @Test
  void aStrapHoldsTheNewRearDriveShaftUntilItIsBolted() {
    inOrder(
        ids("113"),
        "rear-drive-shaft/close/1",
        "rear-drive-shaft/close/2",
        "rear-drive-shaft/close/4",
        "rear-drive-shaft/close/5");
  }

  @Test
  void aRefittedStarterIsTriedInNeutral() {
    inOrder(
        checks("116"),
        "engine-start-neutral",
        "engine-start-clear",
        "engine-started",
        "starter-tried",
        "engine-stopped-on-the-ground");
  }

  @Test
  void anElectricVehicleIsOffBeforeItsWheelsAre() {
    assertTrue(checks("123").contains("vehicle-off"), checks("123").toString());
  }

  @Test
  void theTensionerIsHeldBackWheneverItsPinMoves() {
    inOrder(
        ids("101"),
        "auxiliary-belt-off/open/3",
        "auxiliary-belt-off/open/4",
        "auxiliary-belt-off/open/5",
        "auxiliary-belt-off/open/5/back",
        "auxiliary-belt-off/close/1",
        "auxiliary-belt-off/close/2",
        "auxiliary-belt-off/close/3",
        "auxiliary-belt-off/close/4");
    assertTrue(
        sheet("101").equipment().tools().stream()
            .map(tool -> tool.name())
            .toList()
            .containsAll(List.of("belt tensioner tool", "tensioner pin")));
  }

  /** The brake that a nut is pulled against is released behind it; the chocks are there before. */
  @Test
  void wheelNutsAreSlackenedWhileTheVehicleIsHeldTwice() {
    List<String> ids = ids("111");
    inOrder(ids, "parking-brake-off/open/1", "wheel-off/open/1", "parking-brake-off/open/2");
    assertTrue(
        sheet("111").steps().stream()
            .limit(ids.indexOf("wheel-off/open/1"))
            .noneMatch(step -> step.source() instanceof StepSource.Chocks));
  }

  @Test
  void theMagneticSideIsFoundBeforeTheBearingIsPressedIn() {
    inOrder(ids("119"), "check/bearing-encoder", "wheel-bearing/open/16/back");
  }

  @Test
  void faultCodesAreReadAndTheIgnitionIsOffBeforeAConnectorIsParted() {
    inOrder(checks("110"), "read-faults-first", "ignition-off", "faults-read");
  }

  @Test
  void theKeyOfALockingWheelNutLiesReadyAndIsTurnedByHand() {
    assertTrue(
        sheet("123").equipment().tools().stream()
            .anyMatch(tool -> tool.name().equals("locking wheel nut key")));
    assertTrue(
        sheet("123").safety().cautions().stream()
            .anyMatch(it -> it.name().equals("locking-nut-key")));
    assertTrue(checks("123").contains("locking-nuts-slackened"), checks("123").toString());
  }

  /** A check is made with a tool just as a step is: its caution stands there too. */
  @Test
  void aCautionAboutAToolStandsWhereACheckUsesIt() {
    for (String job : List.of("103", "119")) {
      List<Sheet> stages = Division.of(PLANS.get(job).stages(), 3, (it, room) -> true).stages();
      for (Sheet stage : stages) {
        stage.steps().stream()
            .filter(step -> step.source().id().equals("check/pinch-bolt-holds"))
            .forEach(
                step -> {
                  CautionLine caution =
                      stage.safety().cautions().stream()
                          .filter(it -> it.name().equals("break-loose"))
                          .findFirst()
                          .orElseThrow(() -> new AssertionError(job + ": " + stage.name()));
                  assertTrue(step.letters().all().contains(caution.letter()), caution.letter());
                });
      }
    }
  }

  /** The paint is covered before the reservoir is open, and the caliper on before it is bled. */
  @Test
  void brakeFluidIsChangedOnceTheNewCaliperIsOn() {
    inOrder(
        ids("105"),
        "checkpoint/before-lifting",
        "pressure-bleeder-connected/open/1",
        "caliper/close/3",
        "caliper-aside/close/3",
        "brake-fluid/open/2",
        "pressure-bleeder-connected/close/1",
        "pressure-bleeder-connected/close/3");
    // Where the bleeder pushes brake fluid through, nobody pumps it through by the pedal.
    assertFalse(ids("105").contains("check/brake-bleed"), ids("105").toString());
    inOrder(
        ids("104"),
        "checkpoint/before-lifting",
        "pressure-bleeder-connected/open/1",
        "raise-lift/open/3",
        "brake-fluid/open/2");
    assertTrue(checks("104").containsAll(List.of("bonnet-open", "reservoir-covered")));
  }
}
