package baysheet.plan.graph;

import baysheet.plan.SmallShop;
import org.junit.jupiter.api.Test;

/** A nut that one work cracks loose on the ground and another takes off once the vehicle is up. */
class EarlySlackenedTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("shaft-out", "at: wheel\nbehind: [roller-off]", "Shaft out", "one", "two")
          .procedure(
              "bearing",
              "at: wheel\nbehind: [shaft-out]\nopen:\n"
                  + "  - {do: Crack the nut, slacken: one, moment: before-lifting}\n"
                  + "  - {do: Bearing out, undo: three}");

  /** The nut of a hub is cracked with the wheel on the floor, and comes off with the shaft. */
  @Test
  void whatIsOnlySlackenedBeforeLiftingStillComesOff() {
    SHOP.job("hoist", "bearing at front-left")
        .assertInOrder("Crack the nut", "Hoist it", "Shaft out", "Bearing out");
  }
}
