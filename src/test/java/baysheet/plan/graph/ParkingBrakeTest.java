package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Place;
import baysheet.plan.SmallShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Whoever pulls at the nut of a wheel that stands on the floor pulls at the vehicle: the chocks are
 * set and the parking brake is still on. Common practice, no source.
 */
class ParkingBrakeTest {
  private static final SmallShop SHOP =
      SmallShop.bolted(
              "deep-bolt: {count: 1, thread: M12x1.5, class: \"10.9\", head: hex 19 mm, torque: 100"
                  + " N·m, final: ride-height}")
          .with(
              "catalogue/more.yaml",
              """
              items:
                wedges: {name: wheel wedges, kinds: [chocks]}
                handbrake: {name: parking brake, kinds: [parking-brake]}
              """)
          .procedure(
              "wedged",
              "at: vehicle\nopen: [{do: Set the wedges, disturb: wedges, moment: before-lifting}]\n"
                  + "close: [{do: Take them away, ends: wedges, moment: before-moving}]")
          .procedure(
              "freed",
              "at: vehicle\nopen: [{do: Release the brake, disturb: handbrake, moment:"
                  + " before-lifting}]\n"
                  + "close: [{do: Pull the brake, ends: handbrake, moment: before-moving}]")
          .procedure(
              "roller-off",
              "at: wheel\nbehind: [raise]\nopen:\n"
                  + "  - {do: Slacken the nuts, slacken: roller-nut, moment: before-lifting}\n"
                  + "  - {do: Roller off, undo: [roller-nut, roller]}")
          .procedure("looked", "at: wheel\nopen: [{do: Look at the tyre, moment: before-lifting}]")
          .procedure("drum", "at: wheel\nbehind: [roller-off]", "Drum", "one");

  private static final List<List<String>> ORDERS =
      List.of(
          List.of("wedged at vehicle", "freed at vehicle", "drum at rear-left"),
          List.of("freed at vehicle", "drum at rear-left", "wedged at vehicle"),
          List.of("drum at rear-left", "freed at vehicle", "wedged at vehicle"));

  @Test
  void nutsAreSlackenedWithTheWedgesSetAndTheBrakeOn() {
    for (String bay : List.of("hoist", "floor")) {
      for (List<String> works : ORDERS) {
        SHOP.job(bay, works.toArray(String[]::new))
            .assertInOrder("Set the wedges", "Slacken the nuts", "Release the brake");
      }
    }
  }

  /** Nothing is pulled at here: the job's own order stands. */
  @Test
  void whatOnlyLooksAtAWheelWaitsForNothing() {
    SHOP.job("floor", "freed at vehicle", "looked at rear-left", "wedged at vehicle")
        .assertInOrder("Release the brake", "Look at the tyre");
    SHOP.procedure(
            "first",
            "at: vehicle\nafter: [looked]\nopen: [{do: Wait, moment:" + " before-lifting}]")
        .job("floor", "looked at rear-left", "wedged at vehicle")
        .assertInOrder("Look at the tyre", "Set the wedges");
  }

  /** A clamp at the engine turns no wheel. */
  @Test
  void whatIsSlackenedElsewhereDoesNotWantTheBrakeOn() {
    SHOP.procedure(
            "clamp",
            "at: engine\nafter: [freed]\nopen: [{do: Slacken the clamp, slacken: lid, moment: before-lifting}]")
        .procedure("below", "at: vehicle\nbehind: [raise]", "Below", "two")
        .job("hoist", "freed at vehicle", "clamp at engine", "below at vehicle")
        .assertInOrder("Release the brake", "Slacken the clamp", "Hoist it");
  }

  /** Which wheels the brake holds is a trait of the vehicle. */
  @Test
  void theBrakeHoldsTheRearUnlessTheBookSaysTheFront() {
    SmallShop shop = SHOP.job("floor", "drum at rear-left");
    assertEquals(Place.REAR, ParkingBrake.axle(shop.resolved()));
    SmallShop front =
        new SmallShop(
            shop.texts()
                .replacing(
                    "vehicles/any.yaml", "name: Any", "name: Any\ntraits: [front-parking-brake]"));
    assertEquals(Place.FRONT, ParkingBrake.axle(front.resolved()));
  }

  /** A check by which the brake is pulled while the vehicle is up has it on on the way down. */
  @Test
  void aCheckThatAppliesTheBrakeSavesAStepOnTheWayDown() {
    SmallShop shop =
        SHOP.procedure(
                "low",
                "at: vehicle\nbehind: [raise]\nopen: [{do: Two off, undo: two, height: wheels-clear}]\n"
                    + "work: [{do: Look low, height: wheels-clear}]")
            .procedure("drum", "at: wheel\nbehind: [roller-off]", "Drum", "one");
    String check =
        """
        consequences:
          pulled: {when: {undo: two}, check: Pull it, moment: raised, step: {ends: %s}, source: us}
        """;
    for (String ends : List.of("handbrake", "wedges")) {
      SmallShop checked =
          shop.with("catalogue/checks.yaml", check.formatted(ends))
              .job("hoist", "drum at rear-left", "low at vehicle");
      assertEquals(
          ends.equals("handbrake") ? 0 : 1,
          checked.sheet().steps().stream()
              .filter(it -> it.source().id().equals("height/wheels-clear/ground/brake"))
              .count(),
          checked.steps().toString());
    }
  }

  private static long applied(SmallShop shop) {
    return shop.sheet().steps().stream()
        .map(step -> step.source().id())
        .filter(id -> id.equals("blocks/apply-brake") || id.equals("height/ground/ground/brake"))
        .count();
  }

  /**
   * On the blocks the brake holds the vehicle; where it is on since the start, it is not pulled.
   */
  @Test
  void theBrakeIsAppliedOnceBeforeTheVehicleGoesOntoItsBlocks() {
    SmallShop shop = SHOP.procedure("bush", "at: wheel\nbehind: [roller-off]", "Bush", "deep-bolt");
    assertEquals(1, applied(shop.job("hoist", "bush at front-left")));
    assertEquals(1, applied(shop.job("hoist", "bush at rear-left")));
    assertEquals(1, applied(shop.job("floor", "bush at front-left")));
    shop.job("hoist", "bush at front-left").assertInOrder("Apply the parking brake", "Hoist it");
    shop.job("hoist", "bush at rear-left")
        .assertInOrder("Refit the vehicle", "From outside the vehicle, apply the parking brake");
  }

  /** A step that ends something else does not hold the vehicle. */
  @Test
  void whatEndsAnotherStateDoesNotApplyTheBrake() {
    SmallShop shop =
        SHOP.procedure(
                "lidded",
                "at: vehicle\nbehind: [raise]\nopen:\n"
                    + "  - {do: Prop the lid, disturb: lid, moment: before-lifting}\n"
                    + "  - {do: Drop the lid, ends: lid, moment: before-lifting}\n"
                    + "  - {do: Two off, undo: two}")
            .job("hoist", "lidded at vehicle");
    assertEquals(1, applied(shop));
    assertEquals(0, shop.at("Apply the parking brake"));
  }
}
