package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whoever lays out what the sheet lists need not leave the vehicle for a tool. */
class ToolListCheckTest {
  private static final String CRIB =
      """
      shop: Any
      crib:
        wrenches:
          - {name: W1, drive: 1/2 in, from: 20 N·m, to: 300 N·m, step: 1 N·m, accuracy: 4 %, length: 500 mm, calibrated: 2026-01-05}
          - {name: W2, drive: 3/4 in, from: 200 N·m, to: 600 N·m, step: 5 N·m, accuracy: 4 %, length: 900 mm, calibrated: 2026-01-05}
        sockets:
          - {drive: 1/2 in, hex: 16..24 mm, points: 6}
          - {drive: 3/8 in, hex: 8..15 mm, points: 6}
        special:
          - {name: angle gauge, count: 1}
          - {name: adapter 1/2 in to 3/8 in, count: 1}
          - {name: "crow-foot hex 17 mm, reach 40 mm", count: 1, drive: 1/2 in}
          - {name: splitter, count: 1}
        stands: {rated: 2000 kg, each: yes, count: 4}
      bays:
        hoist: {lift: two-post, rated: 3000 kg}
        floor: {jack: trolley, rated: 2500 kg}
      people:
        T1: {name: R. Fenwake, grade: technician}
      """;

  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}",
              "turn-bolt: {count: 2, thread: M12x1.5, class: \"10.9\", head: hex 18 mm, torque:"
                  + " [40 N·m, +60°], note: \"hold the head: open spanner 17 mm; not hard\"}",
              "small-bolt: {count: 1, thread: M8, class: \"10.9\", head: hex 13 mm, torque: 30 N·m}",
              "noted-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 18 mm, torque: 60"
                  + " N·m, note: \"clean it: with care\"}",
              "passed-bolt: {count: 4, thread: M8, class: \"10.9\", head: hex 13 mm, torque: 32"
                  + " N·m, passes: [70 %, 100 %], order: circle}",
              "crow-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 17 mm, torque: 60"
                  + " N·m, reach: {length: 40 mm, angle: 90°}}")
          .with("shop.yaml", CRIB)
          .with(
              "catalogue/more.yaml",
              """
              items:
                turn-bolt: {name: turn bolt, kinds: [fastener]}
                small-bolt: {name: small bolt, kinds: [fastener]}
                passed-bolt: {name: passed bolt, kinds: [fastener]}
                noted-bolt: {name: noted bolt, kinds: [fastener]}
                crow-bolt: {name: crow bolt, kinds: [fastener]}
              consequences:
                looked: {when: {undo: one}, check: Look at it, moment: on-the-ground, uses: mirror, source: us}
                bled: {when: {undo: two}, check: Bleed it, moment: raised, step: {height: working, uses: bleeder}, source: us}
                asked: {when: {undo: one}, check: Ask for it, moment: evening-before, uses: telephone, source: us}
              """)
          .procedure(
              "tooled",
              """
              at: wheel
              behind: [raise]
              uses: [stand lamp, {if-stuck: drill}]
              open:
                - {do: Split it, undo: one, uses: [{special: splitter}, {if-stuck: heat gun}], if-stuck: [Heat it]}
                - {do: Open it, undo: two}
              """)
          .procedure("bolts", "at: wheel\nbehind: [raise]", "Bolts", "turn-bolt", "crow-bolt")
          .procedure("later", "at: wheel\nbehind: [raise]\nafter: [tooled]", "Later", "four")
          .procedure("small", "at: wheel\nbehind: [raise]", "Bolt", "small-bolt")
          .procedure("passed", "at: wheel\nbehind: [raise]", "Bolt", "passed-bolt")
          .procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt", "three")
          .procedure(
              "jacked",
              "at: axle\nserves: raise\nneeds: jack\nuses: trolley jack",
              "Jack it",
              "feet");

  private static final SmallShop ALL =
      SHOP.job("hoist", "tooled at front-left", "bolts at front-left", "small at front-left");
  private static final SmallShop BUSH = SHOP.job("floor", "bush at front-left");

  private static Stream<Sheet.ToolLine> tools(SmallShop shop) {
    return shop.sheet().equipment().tools().stream();
  }

  private static Spoiled without(SmallShop shop, String tool) {
    List<Sheet.ToolLine> fewer =
        new ArrayList<>(tools(shop).filter(it -> !it.name().equals(tool)).toList());
    assertEquals(tools(shop).count() - 1, fewer.size(), tool);
    return Spoiled.of(shop).sheet("equipment.tools", fewer);
  }

  private static void assertMissing(SmallShop shop, String tool, String who) {
    String fault = who + " asks for " + tool + ", and nobody lays it out";
    without(shop, tool).says(fault);
  }

  @ParameterizedTest
  @CsvSource({
    "stand lamp, procedure tooled",
    "drill, procedure tooled",
    "splitter, step 3",
    "heat gun, step 3",
    "mirror, check looked",
    "telephone, check asked",
    "angle gauge, torque line 3",
    "open spanner 17 mm, torque line 3",
    "paint pen, torque line 1"
  })
  void whatStepsChecksAndRowsAskForIsLaidOut(String tool, String who) {
    assertMissing(ALL, tool, who);
  }

  @Test
  void whatACheckAsksForThatIsAStepIsLaidOut() {
    int n =
        ALL.sheet().steps().stream()
            .filter(step -> step.phase() == Sheet.Phase.CHECK)
            .mapToInt(Sheet.SheetStep::n)
            .findFirst()
            .orElseThrow();
    assertMissing(ALL, "bleeder", "step " + n);
  }

  @Test
  void theCrowFootOfARowIsLaidOut() {
    assertMissing(ALL, "crow-foot hex 17 mm, reach 40 mm", "torque line 2");
  }

  @Test
  void chocksAreLaidOutWhereTheyAreSet() {
    int n = Spoiled.of(ALL).step("chocks/set").n();
    assertMissing(ALL, "wheel chocks", "step " + n);
  }

  @Test
  void whatARowAtRideHeightAsksForIsLaidOut() {
    assertMissing(BUSH, "solid wheel blocks", "torque line 2");
    assertMissing(BUSH, "wheel chocks", "torque line 2");
  }

  @Test
  void theJackIsLaidOutForTheBlocksToo() {
    for (String part : List.of("blocks/raise-axle/front", "blocks/take-out-axle/rear")) {
      assertMissing(BUSH, "trolley jack", "step " + Spoiled.of(BUSH).step(part).n());
    }
  }

  private static void assertNotOnlyIfStuck(String tool, String who) {
    List<Sheet.ToolLine> lines =
        tools(ALL)
            .map(it -> new Sheet.ToolLine(it.name(), it.special(), it.owned(), isStuck(it, tool)))
            .toList();
    Spoiled.of(ALL)
        .sheet("equipment.tools", lines)
        .says(who + " asks for " + tool + ", stuck or not");
  }

  private static boolean isStuck(Sheet.ToolLine line, String tool) {
    return line.ifStuck() || line.name().equals(tool);
  }

  @Test
  void whatTheWorkItselfAsksForIsNotLaidOutForStuckPartsOnly() {
    assertNotOnlyIfStuck("stand lamp", "procedure tooled");
    assertNotOnlyIfStuck("splitter", "step 3");
    assertNotOnlyIfStuck("paint pen", "torque line 1");
  }

  /** The drill is for steps that can be stuck, and here none can. */
  @Test
  void whatOnlyWaysOutAskForIsNotMissedWhereNoStepHasOne() {
    SmallShop shop =
        SHOP.procedure(
                "tooled",
                "at: wheel\nbehind: [raise]\nuses: [stand lamp, {if-stuck: drill}]\n"
                    + "open: [{do: Take it off, undo: four}]")
            .job("hoist", "tooled at front-left");
    assertEquals(List.of(), tools(shop).filter(Sheet.ToolLine::ifStuck).toList());
    Spoiled.of(shop);
  }

  @ParameterizedTest
  @CsvSource({"small", "passed"})
  void betweenAWrenchAndAnotherSquareAnAdapterIsLaidOut(String work) {
    SmallShop shop = SHOP.job("hoist", work + " at front-left");
    String fault = "torque line 1: no socket laid out goes on wrench W1";
    String adapter = "adapter 1/2 in to 3/8 in";
    without(shop, adapter).says(fault);
    List<Sheet.ToolLine> stuck =
        tools(shop)
            .map(it -> new Sheet.ToolLine(it.name(), true, true, isStuck(it, adapter)))
            .toList();
    Spoiled.of(shop).sheet("equipment.tools", stuck).says(fault);
  }

  /** Another socket for the same head is as good as an adapter; one for another head is not. */
  @Test
  void aSocketForTheHeadThatGoesOnTheWrenchNeedsNoAdapter() {
    SmallShop shop = SHOP.job("hoist", "small at front-left");
    List<Sheet.SocketLine> sockets = shop.sheet().equipment().sockets();
    Sheet.SocketLine small = sockets.get(0);
    Sheet.SocketLine half = Altered.with(small, "drive", baysheet.torque.Drive.HALF);
    without(shop, "adapter 1/2 in to 3/8 in")
        .sheet("equipment.sockets", List.of(small, half))
        .saysNothingOf("no socket laid out");
    Sheet.SocketLine other =
        Altered.with(
            half,
            "head",
            SHOP.job("hoist", "bolts at front-left").sheet().equipment().sockets().get(0).head());
    without(shop, "adapter 1/2 in to 3/8 in")
        .sheet("equipment.sockets", List.of(small, other))
        .says("no socket laid out");
    Sheet.SocketLine insert =
        Altered.with(
            half,
            "insert",
            Optional.of(
                SHOP.job("hoist", "bolts at front-left")
                    .sheet()
                    .torque()
                    .get(0)
                    .hardware()
                    .socket()
                    .orElseThrow()
                    .insert()
                    .orElseThrow()));
    without(shop, "adapter 1/2 in to 3/8 in")
        .sheet("equipment.sockets", List.of(small, insert))
        .says("no socket laid out");
  }

  /** Its lamp is for the other work. */
  @Test
  void whatNoDueCheckOrWorkAsksForIsNotMissed() {
    SmallShop shop =
        SHOP.procedure("opened", "at: wheel\nbehind: [raise]", "Open it", "two", "noted-bolt")
            .job("hoist", "opened at front-left");
    assertEquals(1, shop.sheet().checks().size());
    assertEquals(List.of(), tools(shop).filter(it -> it.name().equals("mirror")).toList());
    Spoiled.of(shop);
  }

  @Test
  void everyRoundsWrenchGoesOnASocket() {
    SmallShop shop = SHOP.job("hoist", "passed at front-left");
    var row = shop.sheet().torque().get(0);
    var rounds =
        row.method().rounds().stream()
            .map(it -> Altered.with(it, "wrench", Optional.of("W2")))
            .toList();
    Spoiled.of(shop)
        .sheet("torque", List.of(Altered.with(row, "method.rounds", rounds)))
        .says("torque line 1: no socket laid out goes on wrench W2");
  }

  /** A sheet of a divided job lists what its own steps ask for. */
  @Test
  void eachSheetOfADividedJobListsItsOwnTools() {
    SmallShop shop = SHOP.job("hoist", "tooled at front-left", "later at rear-left");
    Resolved resolved = shop.resolved();
    List<Sheet> stages =
        Division.of(
                Planner.traced(resolved, new Problems()).orElseThrow().stages(),
                2,
                (sheet, room) -> true)
            .stages();
    int without = 0;
    for (Sheet stage : stages) {
      assertEquals(List.of(), ToolListCheck.faults(stage, new SheetIndex(stage), resolved));
      boolean own = stage.steps().stream().anyMatch(it -> it.procedure().equals("tooled"));
      Sheet bare = Altered.with(stage, "equipment.tools", List.of());
      boolean missed =
          ToolListCheck.faults(bare, new SheetIndex(bare), resolved)
              .contains("procedure tooled asks for stand lamp, and nobody lays it out");
      assertEquals(own, missed);
      without += own ? 0 : 1;
    }
    assertTrue(without > 0 && without < stages.size(), without + " of " + stages.size());
  }
}
