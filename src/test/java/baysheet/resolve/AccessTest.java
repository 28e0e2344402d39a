package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What gives access to a work, at which place, and what runs in a circle. */
class AccessTest {
  /** On a jack the load of each axle has to be known. */
  private static List<String> tasks(ShopTexts shop) {
    ShopTexts weighed =
        shop.replacing("vehicles/heron.yaml", "kerb-mass", "front-share: 60 %\nkerb-mass");
    return weighed.resolved(Bench.JOB).ranked().stream().map(task -> task.id().toString()).toList();
  }

  private static Problem problem(ShopTexts shop) {
    Problems problems = new Problems();
    assertTrue(shop.resolve(Bench.JOB, problems).isEmpty());
    assertEquals(1, problems.all().size(), problems.all().toString());
    return problems.all().get(0);
  }

  private static String told(ShopTexts shop) {
    Problem problem = problem(shop);
    return problem.at() + " " + problem.code().word();
  }

  @Test
  void aWheelIsReachedThroughItsOwnAccess() {
    assertEquals(
        List.of("arm at front-left", "wheel-off at front-left", "raise-lift at vehicle"),
        tasks(Bench.shop()));
  }

  @Test
  void theBayDecidesWhatRaises() {
    assertEquals(
        List.of("arm at front-left", "wheel-off at front-left", "raise-jack at front"),
        tasks(Bench.shop().replacing(Bench.JOB, "bay: 1", "bay: floor")));
  }

  @Test
  void anAxleIsReachedThroughBothItsWheels() {
    assertEquals(
        List.of(
            "bar at front",
            "wheel-off at front-left",
            "raise-lift at vehicle",
            "wheel-off at front-right"),
        tasks(Bench.shop().replacing(Bench.JOB, "arm at front-left", "bar at front")));
  }

  /** The bar runs across; "right" would be dropped. */
  @Test
  void aPlaceAtWhichAProcedureIsNotDoneIsReported() {
    Problems problems = new Problems();
    Bench.shop()
        .replacing(Bench.JOB, "arm at front-left", "bar at front-right")
        .resolve(Bench.JOB, problems);
    assertEquals(List.of("2026-03-02/7.yaml:6:5 place-unclear"), ShopTexts.told(problems));
    assertEquals(Optional.of("bar at front or rear"), problems.all().get(0).expected());
  }

  @Test
  void workAtTheEngineMayBeAskedForAtTheVehicleButNotAtAWheel() {
    ShopTexts shop =
        Bench.shop()
            .with("procedures/oil.yaml", Bench.work("oil", "engine", "[raise]", "drain"))
            .replacing("catalogue/own.yaml", "  wheel:", "  drain: {name: drain}\n  wheel:");
    assertEquals(
        "oil at engine",
        tasks(shop.replacing(Bench.JOB, "arm at front-left", "oil at vehicle")).get(0));
    Problems problems = new Problems();
    shop.replacing(Bench.JOB, "arm at front-left", "oil at front-left")
        .resolve(Bench.JOB, problems);
    assertEquals(Optional.of("oil at engine"), problems.all().get(0).expected());
  }

  @Test
  void workAtAnAxleIsDoneAtItsWheelsLeftFirst() {
    assertEquals(
        List.of("arm at front-left", "arm at front-right"),
        tasks(Bench.shop().replacing(Bench.JOB, "at front-left", "at front")).subList(0, 2));
  }

  @Test
  void theEngineIsRaisedAtTheAxleThatIsWritten() {
    ShopTexts shop =
        Bench.shop()
            .with("procedures/sump.yaml", Bench.work("sump", "engine", "[raise at front]", "wheel"))
            .replacing(Bench.JOB, "arm at front-left", "sump at engine");
    assertEquals(
        List.of("sump at engine", "raise-jack at front"),
        tasks(shop.replacing(Bench.JOB, "bay: 1", "bay: floor")));
    assertEquals(List.of("sump at engine", "raise-lift at vehicle"), tasks(shop));
  }

  @Test
  void anAxleDoesNotFollowFromTheEngine() {
    ShopTexts shop =
        Bench.shop()
            .with("procedures/sump.yaml", Bench.work("sump", "engine", "[raise]", "wheel"))
            .replacing(Bench.JOB, "arm at front-left", "sump at engine")
            .replacing(Bench.JOB, "bay: 1", "bay: floor");
    assertEquals("procedures/sump.yaml:4:10 place-unclear", told(shop));
  }

  @Test
  void sharedAccessIsOneTask() {
    ShopTexts shop =
        Bench.shop()
            .replacing(Bench.JOB, "arm at front-left", "arm at front-left\n  - bar at front");
    Resolved resolved = shop.resolved(Bench.JOB);
    TaskId wheel = new TaskId("wheel-off", Place.FRONT_LEFT);
    assertEquals(5, resolved.tasks().size());
    assertTrue(resolved.tasks().get(new TaskId("bar", Place.FRONT)).access().contains(wheel));
    assertTrue(resolved.tasks().get(new TaskId("arm", Place.FRONT_LEFT)).access().contains(wheel));
  }

  @Test
  void accessInACircleIsWrittenOut() {
    ShopTexts shop = Bench.shop().replacing("procedures/wheel-off.yaml", "[raise]", "[arm]");
    Problem problem = problem(shop);
    assertEquals(
        "procedures/wheel-off.yaml:4:10 access-loop", problem.at() + " " + problem.code().word());
    assertEquals(
        "arm at front-left is behind wheel-off at front-left, wheel-off at front-left is behind arm"
            + " at front-left: none of these can be opened first",
        problem.what());
  }

  @Test
  void workAskedForTwiceIsReportedAtTheSecond() {
    ShopTexts shop =
        Bench.shop()
            .replacing(Bench.JOB, "arm at front-left", "arm at front\n  - arm at front-left");
    assertEquals("2026-03-02/7.yaml:7:5 work-twice", told(shop));
  }

  @Test
  void nothingRaisesWhereTheBayHasNothingFor() {
    ShopTexts shop =
        Bench.shop()
            .replacing("procedures/raise-jack.yaml", "needs: jack", "needs: lift")
            .replacing("procedures/raise-jack.yaml", "serves: raise", "serves: other")
            .replacing(Bench.JOB, "bay: 1", "bay: floor");
    assertEquals("procedures/wheel-off.yaml:4:10 no-access", told(shop));
  }

  @Test
  void twoThatServeOneAccessInOneBayAreAmbiguous() {
    ShopTexts shop =
        Bench.shop().replacing("procedures/raise-jack.yaml", "needs: jack", "needs: lift");
    assertEquals("procedures/wheel-off.yaml:4:10 no-access", told(shop));
  }

  @Test
  void whatNeedsAJackIsNotDoneByItsNameInABayWithALift() {
    ShopTexts shop = Bench.shop().replacing("procedures/wheel-off.yaml", "[raise]", "[raise-jack]");
    assertEquals("procedures/wheel-off.yaml:4:10 no-access", told(shop));
  }

  @Test
  void laterWorkWaitsForEarlierWorkAtItsOwnPlaceOnly() {
    ShopTexts shop =
        Bench.shop()
            .replacing("vehicles/heron.yaml", "front-wheels:", "rear-left:")
            .replacing(
                "vehicles/heron.yaml",
                "  wheels:\n",
                "  wheels:\n    arm-bolt: {count: 2, torque: 95 N·m}\n")
            .replacing("procedures/arm.yaml", "open:", "after: [bar]\nopen:")
            .replacing(
                Bench.JOB,
                "arm at front-left",
                "arm at front-left\n  - bar at front\n  - arm at rear-left");
    Resolved resolved = shop.resolved(Bench.JOB);
    TaskId bar = new TaskId("bar", Place.FRONT);
    assertEquals(List.of(bar), resolved.tasks().get(new TaskId("arm", Place.FRONT_LEFT)).after());
    assertEquals(List.of(), resolved.tasks().get(new TaskId("arm", Place.REAR_LEFT)).after());
  }

  @Test
  void aRoleThatIsMisspeltWhereItIsServedIsPointedAt() {
    Problems problems = new Problems();
    Bench.shop()
        .replacing(Bench.JOB, "bay: 1", "bay: floor")
        .replacing("procedures/raise-jack.yaml", "serves: raise", "serves: raisee")
        .resolve(Bench.JOB, problems);
    assertEquals(List.of("procedures/wheel-off.yaml:4:10 no-access"), ShopTexts.told(problems));
    assertEquals(
        "procedures/raise-jack.yaml:4:9", problems.all().get(0).related().get(0).at().toString());
  }

  /** A role in after: counts like the name of the procedure that serves it. */
  @Test
  void whatComesAfterARoleComesAfterTheProcedureThatServesIt() {
    ShopTexts shop =
        Bench.shop()
            .replacing("procedures/bar.yaml", "behind:", "serves: bar-work\nbehind:")
            .replacing("procedures/arm.yaml", "behind:", "after: [bar-work]\nbehind:")
            .replacing(
                Bench.JOB, "  - arm at front-left", "  - arm at front-left\n  - bar at front");
    assertEquals(
        List.of(new TaskId("bar", Place.FRONT)),
        shop.resolved(Bench.JOB).tasks().get(new TaskId("arm", Place.FRONT_LEFT)).after());
  }
}
