package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.SmallShop;
import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** In which order the works of a job come where several orders change places as often. */
class JobOrderTest {
  private static final SmallShop SHOP =
      SmallShop.empty()
          .procedure("deep", "at: wheel\nbehind: [roller-off]", "Deep", "one")
          .procedure(
              "shallow", "at: engine\nopen: [{do: Shallow, undo: two, height: [ground, working]}]")
          .procedure("lidded", "at: axle\nbehind: [lid-off]", "Lidded", "three")
          .procedure("lid-off", "at: axle\nbehind: [raise]", "Lid off", "lid");

  @Test
  void aWorkWithoutAccessDoesNotOvertakeOneThatHasSome() {
    SHOP.job("hoist", "deep at front-left", "shallow at engine")
        .assertInOrder("Hoist", "Deep", "Shallow");
    SHOP.job("hoist", "shallow at engine", "deep at front-left")
        .assertInOrder("Shallow", "Hoist", "Deep");
  }

  @Test
  void everyOrderOfThreeWorksIsKept() {
    List<String> works = List.of("deep at rear-right", "lidded at front", "shallow at engine");
    List<String> texts = List.of("Deep", "Lidded", "Shallow");
    for (List<Integer> order : orders(works.size())) {
      SmallShop shop = SHOP.job("hoist", order.stream().map(works::get).toArray(String[]::new));
      shop.assertInOrder(order.stream().map(texts::get).toArray(String[]::new));
    }
  }

  /** What another work waits for comes in that one's turn. */
  @Test
  void aWorkListedLateComesEarlyWhereTheFirstWaitsForIt() {
    SHOP.procedure("patient", "at: wheel\nafter: [lidded]", "Patient", "four")
        .procedure("free", "at: wheel", "Free", "one")
        .job("hoist", "patient at front-right", "free at rear-left", "lidded at front")
        .assertInOrder("Lidded", "Patient");
  }

  @Test
  void moreThanAThousandStepsAreRefused() {
    String steps =
        String.join(", ", IntStream.range(0, 300).mapToObj(i -> "{do: Look " + i + "}").toList());
    SmallShop long4 = SHOP.procedure("long", "at: wheel\nopen: [%s]".formatted(steps));
    List<String> codes = new ArrayList<>();
    for (Problem problem : long4.job("hoist", "long at front", "long at rear").problems()) {
      codes.add(problem.code().word());
    }
    assertEquals(List.of("too-many-steps"), codes);
    assertTrue(
        long4.job("hoist", "long at front", "long at rear-left").plan(new Problems()).isPresent());
  }

  private static List<List<Integer>> orders(int size) {
    if (size == 0) {
      return List.of(List.of());
    }
    List<List<Integer>> orders = new ArrayList<>();
    for (List<Integer> shorter : orders(size - 1)) {
      for (int at = 0; at <= shorter.size(); at++) {
        List<Integer> order = new ArrayList<>(shorter);
        order.add(at, size - 1);
        orders.add(order);
      }
    }
    return orders;
  }
}
