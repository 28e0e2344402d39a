package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which vehicles and places a procedure is for. The shop, its procedures and its traits have names
 * that no built-in file knows, so nothing here can hang on a name.
 */
class ApplicabilityTest {
  private static final String SHOE_PLATE = "procedures/shoe-plate.yaml";

  /** A garage whose vehicles have a drag anchor at the back, one kind in two. */
  private static ShopTexts shop(String traits, String work) {
    return Bench.shop()
        .replacing("vehicles/heron.yaml", "kerb-mass", "traits: [%s]\nkerb-mass".formatted(traits))
        .with(
            "catalogue/words.yaml",
            """
            traits:
              sprung-anchor: an anchor on a spring
              floating-hull: swims
              towing-eye: can be towed
            """)
        .with(
            SHOE_PLATE,
            work(
                "shoe-plate",
                "[wheel-off]",
                "not-with: {sprung-anchor at rear: shoe-plate-sprung, floating-hull: put it on"
                    + " trestles first}"))
        .with(
            "procedures/shoe-plate-sprung.yaml",
            work("shoe-plate-sprung", "[wheel-off]", "only-with: [sprung-anchor]\nonly-at: rear"))
        .replacing(Bench.JOB, "arm at front-left", work);
  }

  private static String work(String name, String behind, String keys) {
    return Bench.work(name, "wheel", behind, "wheel")
        .replace("title: Some work\n", "title: Some work\n" + keys + "\n");
  }

  private static List<String> tasks(ShopTexts shop) {
    return shop.resolved(Bench.JOB).ranked().stream().map(task -> task.id().toString()).toList();
  }

  private static List<Problem> problems(ShopTexts shop) {
    Problems problems = new Problems();
    assertTrue(shop.resolve(Bench.JOB, problems).isEmpty());
    return problems.all();
  }

  private static Problem problem(ShopTexts shop) {
    List<Problem> problems = problems(shop);
    assertEquals(1, problems.size(), problems.toString());
    assertEquals("not-for-this-vehicle", problems.get(0).code().toString());
    return problems.get(0);
  }

  @Test
  void aTraitThatIsLeftOutAtOneEndStopsTheWorkThereAndSaysWhatToUse() {
    Problem problem = problem(shop("sprung-anchor", "shoe-plate at rear-left"));
    assertEquals("2026-03-02/7.yaml:6:5", problem.at().toString());
    assertTrue(problem.what().contains("sprung-anchor"), problem.what());
    assertTrue(problem.toString().contains("shoe-plate-sprung at rear-left"), problem.toString());
  }

  @Test
  void atTheOtherEndTheSameVehicleHasTheWorkAsItIs() {
    assertEquals(
        "shoe-plate at front-left",
        tasks(shop("sprung-anchor", "shoe-plate at front-left")).get(0));
    assertEquals("shoe-plate at rear-left", tasks(shop("", "shoe-plate at rear-left")).get(0));
  }

  @Test
  void bothWheelsOfAnAxleAreOneRefusal() {
    problem(shop("sprung-anchor", "shoe-plate at rear"));
  }

  @Test
  void whatToDoInsteadMayBeASentence() {
    Problem problem = problem(shop("floating-hull", "shoe-plate at front-left"));
    assertTrue(problem.toString().contains("put it on trestles first"), problem.toString());
  }

  @Test
  void whatNeedsATraitIsRefusedWhereTheBookHasNone() {
    Problem problem = problem(shop("floating-hull", "shoe-plate-sprung at rear-left"));
    assertTrue(problem.what().contains("sprung-anchor"), problem.what());
  }

  @Test
  void ofSeveralTraitsInOneLineAnyOneIsEnough() {
    ShopTexts either =
        shop("towing-eye", "shoe-plate-sprung at rear-left")
            .replacing(
                "procedures/shoe-plate-sprung.yaml",
                "[sprung-anchor]",
                "[sprung-anchor or towing-eye]");
    assertEquals("shoe-plate-sprung at rear-left", tasks(either).get(0));
    ShopTexts both =
        shop("towing-eye", "shoe-plate-sprung at rear-left")
            .replacing(
                "procedures/shoe-plate-sprung.yaml",
                "[sprung-anchor]",
                "[sprung-anchor, towing-eye]");
    problem(both);
  }

  @Test
  void aTraitMayBeAskedForAtOneEndOnly() {
    ShopTexts shop =
        shop("", "shoe-plate-sprung at front-left")
            .replacing(
                "procedures/shoe-plate-sprung.yaml",
                "only-with: [sprung-anchor]\nonly-at: rear",
                "only-with: [sprung-anchor at rear]");
    assertEquals("shoe-plate-sprung at front-left", tasks(shop).get(0));
    problem(shop.replacing(Bench.JOB, "at front-left", "at rear-left"));
  }

  @Test
  void workOfOneEndIsRefusedAtTheOther() {
    Problem problem = problem(shop("sprung-anchor", "shoe-plate-sprung at front-left"));
    assertTrue(problem.what().contains("front-left"), problem.what());
  }

  /** Access is bound by the vehicle: no brake procedure needs a copy for each kind of vehicle. */
  @Test
  void accessIsBoundByTheVehiclesTraitsAndByPlace() {
    ShopTexts shop =
        shop("sprung-anchor", "keel-bolt at rear-left")
            .replacing(
                "procedures/shoe-plate-sprung.yaml", "only-with", "serves: shoe-plate\nonly-with")
            .with("procedures/keel-bolt.yaml", work("keel-bolt", "[shoe-plate]", "after: []"));
    assertEquals(
        List.of("keel-bolt at rear-left", "shoe-plate-sprung at rear-left"),
        tasks(shop).subList(0, 2));
    assertEquals(
        List.of("keel-bolt at front-left", "shoe-plate at front-left"),
        tasks(shop.replacing(Bench.JOB, "rear-left", "front-left")).subList(0, 2));
    assertEquals(
        List.of("keel-bolt at rear-left", "shoe-plate at rear-left"),
        tasks(shop.replacing("vehicles/heron.yaml", "[sprung-anchor]", "[]")).subList(0, 2));
  }

  @Test
  void accessThatNothingCanGiveToThisVehicleIsRefusedAtItsLine() {
    ShopTexts shop =
        shop("sprung-anchor", "keel-bolt at rear-left")
            .with("procedures/keel-bolt.yaml", work("keel-bolt", "[shoe-plate]", "after: []"));
    Problem problem = problem(shop);
    assertEquals("procedures/keel-bolt.yaml:5:10", problem.at().toString());
  }

  @Test
  void whatIsToBeUsedInsteadMustBeThere() {
    Problems problems = new Problems();
    FolderCheck.check(
        shop("", "shoe-plate at rear-left")
            .replacing(SHOE_PLATE, "rear: shoe-plate-sprung", "rear: shoe-plate-sprang")
            .folder(),
        problems);
    assertEquals(
        List.of("unknown-procedure"),
        problems.all().stream().map(it -> it.code().toString()).toList());
    assertEquals("shoe-plate-sprung", problems.all().get(0).nearest().orElse("none"));
  }
}
