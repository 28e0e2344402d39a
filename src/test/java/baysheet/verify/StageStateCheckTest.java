package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Height;
import baysheet.books.Place;
import baysheet.plan.SmallShop;
import baysheet.resolve.ItemAt;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage;
import baysheet.sheet.Stage.VehicleState;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a sheet says of the vehicle that it leaves to the next: each part is played back. */
class StageStateCheckTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "cap-bolt: {count: 2, thread: M12x1.5, class: \"10\", head: hex 19 mm, torque: 90 N·m}",
              "arm-bolt: {count: 1, thread: M12x1.5, class: \"10\", head: hex 19 mm, torque: 80 N·m}",
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10\", head: hex 19 mm, torque: 80 N·m, final: ride-height}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                cap-bolt: {name: cap bolt, kinds: [fastener]}
                arm-bolt: {name: arm bolt, kinds: [fastener]}
                sump: {name: sump, kinds: [circuit], fluid: engine-oil}
                water-pipe: {name: pipe, kinds: [circuit], fluid: coolant}
                wedge: {name: wedge, kinds: [], left: door wedged}
                belt: {name: belt, kinds: []}
              consequences:
                fill: {when: {circuit: water-pipe}, check: Fill it, moment: raised, source: us, step: {once: yes, fills: water-pipe}}
              """)
          .procedure(
              "work",
              """
              at: wheel
              behind: [roller-off]
              open:
                - {do: Measure it, measure: height}
                - {do: Wedge the door, disturb: wedge}
                - {do: Set the stay, undo: stay}
                - {do: Slacken the belt, slacken: belt}
                - {do: Slacken the arm bolt, slacken: arm-bolt}
                - {do: Remove the cap bolts, undo: cap-bolt}
                - {do: Remove the deep bolt, undo: deep-bolt}
                - {do: One off, undo: one}
                - {do: Drain the sump, open-circuit: sump}
              work:
                - {do: Look round}
                - {do: Look again}
              """)
          .procedure(
              "piped",
              """
              at: vehicle
              behind: [raise]
              after: [work]
              open:
                - {do: Part the pipe, open-circuit: water-pipe}
                - {do: Drain the sump, open-circuit: sump}
                - {do: Two off, undo: two}
              work: [{do: Fill the sump, apply: engine-oil}]
              """)
          .procedure(
              "later",
              """
              at: vehicle
              behind: [raise]
              after: [work, piped]
              open: [{do: Three off, undo: three}]
              work: [{do: Look below}, {do: Look below again}]
              """);

  private static final SmallStages OPENED =
      SmallStages.behind(SHOP.job("hoist", "work at front-left"), "Look round");

  private static final SmallStages CLOSED =
      SmallStages.behind(
          SHOP.job("hoist", "work at front-left", "piped at vehicle", "later at vehicle"),
          "Look below");

  private static final SmallStages FILLED =
      SmallStages.behind(
          SHOP.job("hoist", "work at front-left", "piped at vehicle", "later at vehicle"),
          "Fill it");

  private static VehicleState leaving(SmallStages job) {
    return job.stage(1).stage().orElseThrow().leaving().orElseThrow();
  }

  private static List<String> items(List<Sheet.TallyLine> lines) {
    return lines.stream().map(Sheet.TallyLine::item).toList();
  }

  private static List<String> names(List<Stage.Row> rows) {
    return rows.stream().map(it -> it.name().british()).toList();
  }

  /** Up, with all that was taken off, slackened, opened and set up, and with what was measured. */
  @Test
  void theStateIsThatOfTheVehicleBehindTheStage() {
    VehicleState state = leaving(OPENED);
    assertEquals(14, state.after());
    assertEquals(
        new Stage.Standing(Height.WORKING, List.of(Place.VEHICLE), false), state.standing());
    assertEquals(
        List.of(new ItemAt("stay", Place.FRONT_LEFT)),
        state.held().stream().map(Stage.Held::item).toList());
    assertEquals(List.of("roller", "one"), items(state.off()));
    assertEquals(List.of("belt"), items(state.slackened()));
    assertEquals(List.of("cap bolt", "roller nut", "deep bolt"), names(state.fasteners()));
    assertEquals(List.of("arm bolt"), names(state.loose()));
    assertEquals(List.of("engine-oil"), state.open());
    assertEquals(List.of("door wedged"), state.left());
    assertEquals(List.of(3, 5, 13), state.written());
    assertEquals(List.of(5), state.needed().stream().map(Stage.Figure::step).toList());
  }

  /** What is together again is no longer said; what is tightened only later still is loose. */
  @Test
  void theStateSaysNoMoreOfWhatIsTogether() {
    VehicleState state = leaving(CLOSED);
    assertEquals(List.of("three"), items(state.off()));
    assertEquals(List.of(), state.slackened());
    assertEquals(List.of(), state.held());
    assertEquals(List.of(), state.fasteners());
    assertEquals(List.of("roller nut", "deep bolt"), names(state.loose()));
    assertEquals(List.of("coolant"), state.open());
  }

  /** A check that fills a circuit closes it, as a step does that applies its fluid. */
  @Test
  void aCircuitIsOpenUntilItIsFilled() {
    assertEquals(List.of(), leaving(FILLED).open());
    assertFault(FILLED, "open", List.of("coolant"), "open");
  }

  /** A bolt that was torqued is not loose, though another work takes it off again. */
  @Test
  void aTorquedBoltIsNotLooseBeforeItComesOffAgain() {
    SmallShop shop =
        SHOP.procedure(
                "capped",
                "at: wheel\nbehind: [roller-off]\nopen: [{do: Cap off, undo: cap-bolt}]"
                    + "\nclose: [{do: Cap on, do-up: cap-bolt}, {do: Look at the cap}]")
            .procedure(
                "again",
                "at: wheel\nbehind: [roller-off]\nafter: [capped]\nopen: [{do: Cap off again,"
                    + " undo: cap-bolt}]\nwork: [{do: Look in}]")
            .job("hoist", "capped at front-left", "again at front-left");
    SmallStages job = SmallStages.behind(shop, "Look at the cap");
    assertEquals(List.of(), names(leaving(job).loose()));
    assertFault(
        job,
        "loose",
        leaving(SmallStages.behind(shop, "Look in")).fasteners().stream()
            .filter(it -> it.name().british().equals("cap bolt"))
            .toList(),
        "loose");
  }

  /** Both sheets say the same, and what they say is not so. */
  private static List<String> bothSay(SmallStages job, VehicleState other) {
    List<Sheet> both =
        List.of(with(job.stage(1), "leaving", other), with(job.stage(2), "arrival", other));
    return job.faults(both);
  }

  private static Sheet with(Sheet sheet, String when, VehicleState state) {
    Stage stage = Altered.with(sheet.stage().orElseThrow(), when, Optional.of(state));
    return Altered.with(sheet, "stage", Optional.of(stage));
  }

  private static void assertFault(SmallStages job, String part, Object other, String what) {
    List<String> faults = bothSay(job, Altered.with(leaving(job), part, other));
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).startsWith("stage 1 ends with " + what + " "), faults.toString());
  }

  @Test
  void eachPartOfTheStateIsProved() {
    assertFault(OPENED, "after", 13, "step");
    assertFault(OPENED, "standing.height", Height.WHEELS_CLEAR, "height");
    assertFault(OPENED, "standing.raised", List.of(), "raised");
    assertFault(OPENED, "standing.onBlocks", true, "on blocks");
    assertFault(OPENED, "open", List.of("engine-oil", "coolant"), "open");
    assertFault(OPENED, "left", List.of("door wedged", "door open"), "left");
  }

  @ParameterizedTest
  @CsvSource({
    "held, held",
    "off, off",
    "slackened, slackened",
    "fasteners, fasteners off",
    "loose, loose",
    "open, open",
    "left, left",
    "written, written",
    "needed, needed"
  })
  void nothingOfTheStateIsLeftOut(String part, String what) {
    assertFault(OPENED, part, List.of(), what);
  }

  @ParameterizedTest
  @CsvSource({
    "off, off",
    "slackened, slackened",
    "held, held",
    "fasteners, fasteners off",
    "loose, loose",
    "open, open"
  })
  void nothingIsSaidThatIsOver(String part, String what) {
    assertFault(CLOSED, part, Altered.get(leaving(OPENED), part), what);
  }

  @Test
  void aStageBeginsAsTheOneBeforeItEnds() {
    VehicleState other = Altered.with(leaving(OPENED), "left", List.of());
    assertEquals(
        List.of("stage 2 does not begin as stage 1 ends"),
        OPENED.faults(2, sheet -> with(sheet, "arrival", other)));
  }
}
