package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a book lacks is reported in one go, so that it is filled in one go. */
class LackingBookTest {
  private static final ShopTexts OPEN =
      Bench.shop()
          .replacing("vehicles/heron.yaml", "kerb-mass: 1300 kg\n", "")
          .replacing("vehicles/heron.yaml", "{count: 5,", "{count: unknown, head: hex 19 mm,")
          .replacing("vehicles/heron.yaml", "{count: 2,", "{count: unknown, head: unknown,");

  private static List<Problem> told(ShopTexts shop) {
    Problems problems = new Problems();
    assertTrue(shop.resolve(Bench.JOB, problems).isEmpty());
    return problems.all();
  }

  @Test
  void theMassAndEveryOpenFigureAreTwoProblemsOfOneRun() {
    List<Problem> problems = told(OPEN);
    assertEquals(
        List.of(
            "the vehicle is raised, but the spec book has no kerb-mass, so the load on its"
                + " supports is not known",
            "the count of wheel-nut; the count and the head of arm-bolt are unknown, and the work"
                + " needs them"),
        problems.stream().map(Problem::what).toList());
    String expected = problems.get(1).expected().orElseThrow();
    assertTrue(expected.startsWith("in lines 6, 8, how many"), expected);
    assertTrue(expected.contains("in line 8, the size and form of the head"), expected);
  }

  /** On a jack each axle has its load. */
  @Test
  void onAJackTheShareOfTheFrontAxleIsAskedForWithTheMass() {
    ShopTexts jack = OPEN.replacing(Bench.JOB, "bay: 1", "bay: floor");
    assertTrue(told(jack).get(0).what().contains("no kerb-mass and no front-share, so"));
    assertEquals("the keys kerb-mass and front-share", told(jack).get(0).expected().orElseThrow());
  }
}
