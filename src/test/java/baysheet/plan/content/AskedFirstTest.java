package baysheet.plan.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.books.Moment;
import baysheet.plan.SmallShop;
import baysheet.sheet.CheckLine;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A figure that no book has is asked for before anything else is done, opened or drained. */
class AskedFirstTest {
  @Test
  void aTorqueIsAskedForAheadOfTheOtherChecksBeforeLifting() {
    SmallShop shop =
        SmallShop.bolted(
                "deep-bolt: {count: 1, thread: M12, class: \"10.9\", head: hex 19 mm, torque: unknown}")
            .with(
                "catalogue/more.yaml",
                """
                consequences:
                  lid: {when: {undo: two}, check: Open the reservoir, moment: before-lifting, source: us}
                """)
            .procedure("deep", "at: wheel\nbehind: [roller-off]", "Take it off", "deep-bolt", "two")
            .job("hoist", "deep at front-left");
    List<String> checks =
        shop.sheet().checks().stream()
            .filter(it -> it.moment() == Moment.BEFORE_LIFTING)
            .map(CheckLine::name)
            .toList();
    assertEquals("torque-of-deep-bolt", checks.get(0), checks.toString());
    assertEquals("lid", checks.get(1), checks.toString());
  }
}
