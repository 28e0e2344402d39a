package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.report.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A bay with a jack has stands to work on, also for a job in which nothing raises the vehicle. */
class UnusedJackTest {
  /** What is missing is a procedure that raises; another bay would not help. */
  @Test
  void whereNothingRaisesTheVehicleTheJackIsNotBlamed() {
    List<Problem> problems =
        SmallShop.empty()
            .procedure("high", "at: vehicle\nwork: [{do: Look high, height: working}]")
            .job("floor", "high at vehicle")
            .problems();
    assertEquals(1, problems.size());
    String what = problems.get(0).what();
    assertTrue(what.endsWith(", and nothing in this job raises the vehicle"), what);
  }
}
