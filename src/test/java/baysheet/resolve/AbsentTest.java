package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Place;
import baysheet.report.Problem;
import baysheet.report.Problems;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a book says that the vehicle does not have; the rule of the most specific place holds. */
class AbsentTest {
  private static final String BOOK = "vehicles/heron.yaml";
  private static final String ARM = "procedures/arm.yaml";
  private static final String BOLT = "    arm-bolt: {count: 2, torque: 95 N·m}\n";

  /** The arm's step takes off a bolt and a cover, and another one a screw alone. */
  private static ShopTexts shop() {
    return Bench.shop()
        .replacing(
            "catalogue/own.yaml",
            "  wheel:",
            "  arm-bolt: {name: arm bolt, kinds: [fastener]}\n  cover: {name: arm cover}\n  clip: {name: arm clip}\n  wheel:")
        .replacing(
            ARM,
            "undo: arm-bolt}",
            "undo: [arm-bolt, cover]}\n  - {do: Take the clip off, undo: clip, takes: 2 min}")
        .replacing(
            ARM,
            "behind: [wheel-off]",
            "behind: [wheel-off]\nparts: [{part: arm clip, count: 1, renews: clip}, {part: arm, count: 1}]");
  }

  private static ShopTexts without(String... items) {
    return shop()
        .replacing(
            BOOK,
            "  front-wheels:\n",
            "  front-wheels:\n    absent: [" + String.join(", ", items) + "]\n");
  }

  private static Task arm(ShopTexts shop) {
    return shop.resolved(Bench.JOB).tasks().get(new TaskId("arm", Place.FRONT_LEFT));
  }

  private static List<String> undone(ShopTexts shop) {
    return arm(shop).open().stream().map(step -> step.undo().toString()).toList();
  }

  @Test
  void aStepThatIsAboutNothingElseFallsAway() {
    assertEquals(
        List.of("[arm-bolt@front-left, cover@front-left]", "[clip@front-left]"), undone(shop()));
    assertEquals(List.of("[arm-bolt@front-left, cover@front-left]"), undone(without("clip")));
  }

  @Test
  void whatGoesInItsPlaceIsNoNewPart() {
    assertEquals(2, arm(shop()).parts().size());
    assertEquals(
        List.of("arm"),
        arm(without("clip")).parts().stream().map(it -> it.name().value()).toList());
    assertEquals(List.of(), arm(without("clip")).renewed());
  }

  @Test
  void aStepThatIsAboutMoreSaysWhatTheVehicleHasNot() {
    Task arm = arm(without("cover"));
    assertEquals("[arm-bolt@front-left]", arm.open().get(0).undo().toString());
    assertEquals(List.of("arm cover"), arm.open().get(0).absent());
    assertEquals(List.of(), arm.open().get(1).absent());
  }

  @Test
  void whatIsAbsentIsBoundNowhere() {
    Resolved resolved = without("clip", "cover").resolved(Bench.JOB);
    assertTrue(
        resolved.things().keySet().stream()
            .noneMatch(item -> List.of("clip", "cover").contains(item.item())));
  }

  /** Wheels are four, front wheels two, front left is one. */
  @Test
  void theMostSpecificPlaceWins() {
    ShopTexts allWheels =
        shop().replacing(BOOK, "  wheels:\n", "  wheels:\n    absent: [arm-bolt]\n");
    assertEquals("[arm-bolt@front-left, cover@front-left]", undone(allWheels).get(0));
    ShopTexts frontLeft =
        shop().replacing(BOOK, "  front:\n", "  front-left:\n    absent: [arm-bolt]\n  front:\n");
    assertEquals("[cover@front-left]", undone(frontLeft).get(0));
  }

  private static ShopTexts van(String groups) {
    return shop()
        .with("vehicles/van.yaml", "vehicle: van\nlike: heron\nfasteners:\n" + groups)
        .replacing(Bench.JOB, "book: heron", "book: van");
  }

  /** It says so of all wheels, so what the book below has at the front is meant as well. */
  @Test
  void whatABookSaysStandsAgainstTheBookItIsLike() {
    assertEquals("[cover@front-left]", undone(van("  wheels:\n    absent: [arm-bolt]\n")).get(0));
    assertEquals(
        "[arm-bolt@front-left, cover@front-left]",
        undone(van("  rear-wheels:\n    absent: [arm-bolt]\n")).get(0));
  }

  @Test
  void aBookCanGiveBackWhatTheBookItIsLikeHasNot() {
    ShopTexts shop =
        without("cover", "bar-bolt")
            .with(
                "vehicles/van.yaml",
                "vehicle: van\nlike: heron\nfasteners:\n  wheels:\n    bar-bolt: {count: 1, torque: 8 N·m}\n")
            .replacing(Bench.JOB, "book: heron", "book: van")
            .replacing(ARM, "undo: clip", "undo: [clip, bar-bolt]");
    assertEquals("[clip@front-left, bar-bolt@front-left]", undone(shop).get(1));
  }

  @Test
  void aStepThatDoesMoreIsNotLeftOut() {
    ShopTexts shop =
        without("clip").replacing(ARM, "undo: clip", "undo: clip, open-circuit: brake-fluid");
    Problem problem = only(shop);
    assertEquals("2026-03-02/7.yaml:6:5 absent-item", problem.at() + " " + problem.code());
    assertEquals("procedures/arm.yaml:8:5", problem.related().get(0).at().toString());
  }

  @Test
  void workOfWhichNothingIsLeftIsReported() {
    ShopTexts shop = without("clip", "cover", "arm-bolt").replacing(BOOK, BOLT, "");
    Problem problem = only(shop);
    assertEquals("2026-03-02/7.yaml:6:5 nothing-to-do", problem.at() + " " + problem.code());
  }

  @Test
  void aMisspeltOneIsReported() {
    Problem problem = only(without("clipp"));
    assertEquals("vehicles/heron.yaml:9:14 unknown-item", problem.at() + " " + problem.code());
    assertEquals(Optional.of("clip"), problem.nearest());
  }

  @Test
  void anOverrideOfWhatIsAbsentIsReported() {
    ShopTexts shop =
        without("arm-bolt")
            .replacing(BOOK, BOLT, "")
            .replacing(
                Bench.JOB,
                "  - arm at front-left\n",
                "  - arm at front-left\noverride:\n  arm-bolt at front-left: {torque: 9 N·m, source: me}\n");
    Problem problem = only(shop);
    assertEquals("2026-03-02/7.yaml:8:3 override-unused", problem.at() + " " + problem.code());
    assertEquals(
        "the spec book says that this vehicle has no \"arm-bolt\" at front-left", problem.what());
  }

  /** An access of which nothing is left still leads to what is behind it. */
  @Test
  void accessOfWhichNothingIsLeftStandsInNobodysWay() {
    ShopTexts shop =
        shop()
            .with("procedures/tray.yaml", Bench.work("tray", "vehicle", "[raise]", "tray"))
            .replacing("catalogue/own.yaml", "  wheel:", "  tray: {name: tray}\n  wheel:")
            .replacing(ARM, "behind: [wheel-off]", "behind: [tray]")
            .replacing(BOOK, "  front:\n", "  vehicle:\n    absent: tray\n  front:\n");
    Resolved resolved = shop.resolved(Bench.JOB);
    assertEquals(List.of(), resolved.tasks().get(new TaskId("tray", Place.VEHICLE)).open());
    assertEquals(3, resolved.tasks().size());
  }

  private static Problem only(ShopTexts shop) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = shop.resolve(Bench.JOB, problems);
    assertEquals(1, problems.all().size(), problems.all().toString());
    assertTrue(resolved.isEmpty());
    return problems.all().get(0);
  }
}
