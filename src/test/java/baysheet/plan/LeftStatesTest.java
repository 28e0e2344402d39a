package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import baysheet.sheet.Stage.VehicleState;
import baysheet.wording.Printed;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a step leaves until another ends it, as the state between two sheets says it. */
class LeftStatesTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .with(
              "catalogue/more.yaml",
              """
              items:
                wedge: {name: wedge, kinds: [], left: wheels wedged}
                brake: {name: brake, kinds: [], left: brake released}
              """)
          .procedure(
              "hoisted",
              """
              at: vehicle
              serves: raise
              needs: lift
              open:
                - {do: Hoist it, undo: feet}
                - {do: Take the wedges away, takes-away: wedge}
                - {do: Try it}
              close:
                - {do: Lower it, do-up: feet}
                - {do: Apply the brake, ends: brake, moment: on-the-ground}
              """)
          .procedure(
              "released",
              """
              at: vehicle
              open:
                - {do: Wedge the wheels, disturb: wedge, moment: before-lifting}
                - {do: Release the brake, disturb: brake, moment: before-lifting}
              """)
          .procedure(
              "work", "at: vehicle\nbehind: [raise, released]\nopen: [{do: Lid off, undo: lid}]")
          .procedure("plain", "at: vehicle\nbehind: [raise]\nopen: [{do: Lid off, undo: lid}]");

  private static List<String> texts(SmallShop shop) {
    return shop.sheet().steps().stream().map(Printed::text).toList();
  }

  private static VehicleState leaving(SmallShop shop) {
    Sheet first =
        Division.of(
                Planner.traced(shop.resolved(), new Problems()).orElseThrow().stages(),
                2,
                (sheet, room) -> true)
            .stages()
            .get(0);
    return first.stage().orElseThrow().leaving().orElseThrow();
  }

  @Test
  void wedgesOnTheFloorHoldNothingOnceTheVehicleIsUp() {
    SmallShop shop = SHOP.job("hoist", "work at vehicle");
    assertTrue(texts(shop).contains("Take the wedges away"), texts(shop).toString());
    assertEquals(List.of("brake released"), leaving(shop).left());
  }

  /** A spring that is compressed is so until the step that sets it right. */
  @Test
  void whatASetRightStepEndsIsNoLongerSaid() {
    SmallShop shop =
        SHOP.procedure(
                "pressed",
                """
                at: vehicle
                open:
                  - {do: Press it, disturb: spring, back: Let it go}
                  - {do: Lid off, undo: lid}
                work:
                  - {do: Look at it}
                close:
                  - {do: Lid on, do-up: lid}
                """)
            .procedure("later", "at: vehicle\nafter: [pressed]\nwork: [{do: Look round}]")
            .with(
                "catalogue/spring.yaml",
                "items: {spring: {name: spring, kinds: [], left: spring pressed}}")
            .job("floor", "pressed at vehicle", "later at vehicle");
    List<String> texts = texts(shop);
    assertEquals(List.of("spring pressed"), behind(shop, texts.indexOf("Look at it") + 1).left());
    assertEquals(List.of(), behind(shop, texts.indexOf("Let it go") + 1).left());
  }

  private static VehicleState behind(SmallShop shop, int step) {
    return Division.of(
            Planner.traced(shop.resolved(), new Problems()).orElseThrow().stages(),
            2,
            (sheet, room) ->
                sheet.steps().get(0).n() > step
                    || sheet.steps().get(sheet.steps().size() - 1).n() <= step)
        .stages()
        .stream()
        .flatMap(sheet -> sheet.stage().orElseThrow().leaving().stream())
        .filter(state -> state.after() == step)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatNobodyPutThereIsNotTakenAway() {
    SmallShop shop = SHOP.job("hoist", "plain at vehicle");
    assertTrue(!texts(shop).contains("Take the wedges away"), texts(shop).toString());
    assertTrue(texts(shop).contains("Apply the brake"), texts(shop).toString());
    assertEquals(List.of(), leaving(shop).left());
  }

  /** The step that takes wedges away is missed where they were put under the wheels. */
  @Test
  void aSheetThatLeavesTheWedgesUnderTheWheelsIsFaulty() {
    SmallShop shop = SHOP.job("hoist", "work at vehicle");
    Sheet sheet = shop.sheet();
    List<Sheet.SheetStep> steps =
        sheet.steps().stream()
            .filter(step -> !Printed.text(step).equals("Take the wedges away"))
            .toList();
    assertEquals(sheet.steps().size() - 1, steps.size());
    List<String> faults = shop.faults(baysheet.verify.AlteredSheets.inOrder(sheet, steps));
    assertTrue(faults.toString().contains("Take the wedges away"), faults.toString());
  }
}
