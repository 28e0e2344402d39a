package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Catalogue;
import baysheet.books.CatalogueReader;
import baysheet.books.Fastener;
import baysheet.books.Place;
import baysheet.books.Remark;
import baysheet.files.ShopFolders;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.torque.Tightening;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which entry of which book gives a fastener its values, and what a job puts in their place. */
class FastenerValuesTest {
  private static final String BOOK = "vehicles/heron.yaml";

  private static Bound.OfBook bolt(ShopTexts shop) {
    return bolt(shop, Place.FRONT_LEFT);
  }

  private static Bound.OfBook bolt(ShopTexts shop, Place place) {
    return (Bound.OfBook) shop.resolved(Bench.JOB).thing(new ItemAt("arm-bolt", place));
  }

  private static String torque(Bound.OfBook fastener) {
    return ((Tightening.Stages) fastener.values().tightening().value())
        .torques().stream()
            .map(target -> target.written().replace('\u00a0', ' '))
            .collect(Collectors.joining(", "));
  }

  private static String chain(Bound.OfBook fastener) {
    return fastener.chain().stream()
        .map(link -> link.value() + " " + link.at())
        .collect(Collectors.joining("; "));
  }

  private static String told(ShopTexts shop) {
    Problems problems = new Problems();
    assertTrue(shop.resolve(Bench.JOB, problems).isEmpty());
    return String.join("; ", ShopTexts.told(problems));
  }

  private static ShopTexts override(String... lines) {
    return override(Bench.shop(), lines);
  }

  private static ShopTexts override(ShopTexts shop, String... lines) {
    String over = "front-left\noverride:\n  " + String.join("\n  ", lines) + "\n";
    return shop.replacing(Bench.JOB, "front-left\n", over);
  }

  /** A book that is like heron, and a job for it. */
  private static ShopTexts derived(String keys) {
    return Bench.shop()
        .with("vehicles/heron-van.yaml", "vehicle: heron-van\nlike: heron\n" + keys)
        .replacing(Bench.JOB, "book: heron", "book: heron-van");
  }

  @Test
  void theMostSpecificGroupWins() {
    ShopTexts shop =
        Bench.shop()
            .replacing(
                BOOK,
                "  front:\n",
                "  front-left:\n    arm-bolt: {count: 2, torque: 99 N·m}\n  front:\n")
            .replacing(
                BOOK, "  wheels:\n", "  wheels:\n    arm-bolt: {count: 2, torque: 80 N·m}\n");
    assertEquals("99 N·m", torque(bolt(shop)));
    ShopTexts right = shop.replacing(Bench.JOB, "front-left", "front-right");
    assertEquals("95 N·m", torque(bolt(right, Place.FRONT_RIGHT)));
    ShopTexts rear = shop.replacing(Bench.JOB, "front-left", "rear-left");
    assertEquals("80 N·m", torque(bolt(rear, Place.REAR_LEFT)));
  }

  private static ShopTexts usually(String usual) {
    return Bench.shop()
        .replacing(
            "catalogue/own.yaml",
            "items:\n",
            "items:\n  arm-bolt: {name: arm bolt, kinds: [fastener], usual: {" + usual + "}}\n");
  }

  /** What a book does not say is as usual for a fastener of that name; what it says stands. */
  @Test
  void whatIsUsualHoldsWhereTheBookSaysNothing() {
    ShopTexts shop = usually("order: circle, final: on-the-ground");
    Bound.OfBook bolt = bolt(shop);
    assertEquals(Fastener.Moment.ON_THE_GROUND, bolt.values().moment());
    assertTrue(bolt.values().written().method().order().isPresent());
    assertEquals("95 N·m", torque(bolt));
    assertTrue(chain(bolt).endsWith("usual for arm-bolt catalogue/own.yaml:2:56"), chain(bolt));
    ShopTexts written = shop.replacing(BOOK, "torque: 95 N·m", "torque: 95 N·m, final: at-once");
    assertEquals(Fastener.Moment.AT_ONCE, bolt(written).values().moment());
    ShopTexts override = override(shop, "arm-bolt at front-left: {final: ride-height, source: x}");
    assertEquals(Fastener.Moment.RIDE_HEIGHT, bolt(override).values().moment());
    ShopTexts both = written.replacing(BOOK, "final: at-once", "final: at-once, order: [2, 1]");
    assertTrue(!chain(bolt(both)).contains("usual"), chain(bolt(both)));
  }

  /** A wheel with one nut in the middle has no sequence. */
  @Test
  void aUsualOrderIsNoFaultWhereThereIsOne() {
    ShopTexts shop =
        usually("order: circle").replacing(BOOK, "{count: 2, torque: 95", "{count: 1, torque: 95");
    assertEquals("95 N·m", torque(bolt(shop)));
  }

  @Test
  void twoGroupsOfOneSizeAreAmbiguous() {
    ShopTexts shop =
        Bench.shop()
            .replacing(
                BOOK,
                "  front:\n",
                "  left-wheels:\n    arm-bolt: {count: 2, torque: 99 N·m}\n  front:\n");
    assertEquals("procedures/arm.yaml:6:29 ambiguous-place", told(shop));
  }

  @Test
  void aBookTakesWhatItDoesNotSayFromTheOneItIsLike() {
    Bound.OfBook bolt =
        bolt(derived("fasteners:\n  front-wheels:\n    arm-bolt: {torque: 105 N·m}\n"));
    assertEquals("105 N·m", torque(bolt));
    assertEquals(2, bolt.values().count().value());
    assertEquals(
        "spec book heron-van, front-wheels vehicles/heron-van.yaml:5:5;"
            + " spec book heron, front-wheels vehicles/heron.yaml:9:5",
        chain(bolt));
  }

  @Test
  void aFigureForMorePlacesThanTheOtherBooksIsNotPassedOver() {
    String wide = "fasteners:\n  wheels:\n    arm-bolt: {count: 2, torque: 130 N·m}\n";
    assertEquals("vehicles/heron-van.yaml:5:5 ambiguous-place", told(derived(wide)));
    String axle = "fasteners:\n  front:\n    arm-bolt: {count: 4, torque: 130 N·m}\n";
    assertEquals("vehicles/heron-van.yaml:5:5 ambiguous-place", told(derived(axle)));
    String narrow = "  front-wheels:\n    arm-bolt: {torque: 105 N·m}\n";
    assertEquals("105 N·m", torque(bolt(derived(wide + narrow))));
  }

  @Test
  void whatAVehicleHasNoneOfIsNotLookedUpInTheOtherBook() {
    assertEquals(
        "vehicles/heron-van.yaml:5:14 ambiguous-place",
        told(derived("fasteners:\n  vehicle:\n    absent: [arm-bolt]\n")));
  }

  @Test
  void aValueCarriesTheSourceOfTheBookThatGivesIt() {
    assertEquals("Heron sheet 3", bolt(derived("source: Van sheet 1\n")).source());
    String torque = "fasteners:\n  front-wheels:\n    arm-bolt: {torque: 105 N·m}\n";
    assertEquals("Van sheet 1", bolt(derived("source: Van sheet 1\n" + torque)).source());
  }

  @Test
  void aNewValueDoesNotCarryTheOldValuesSource() {
    ShopTexts shop =
        derived(
                "source: Van sheet 1\n"
                    + "fasteners:\n  front-wheels:\n    arm-bolt: {torque: 105 N·m}\n")
            .replacing(BOOK, "torque: 95 N·m", "torque: 95 N·m, source: arm bulletin 2");
    assertEquals("Van sheet 1", bolt(shop).source());
  }

  @Test
  void booksThatAreLikeOneAnotherAreReportedAsACircle() {
    ShopTexts shop =
        derived("").replacing(BOOK, "vehicle: heron\n", "vehicle: heron\nlike: heron-van\n");
    Problems problems = new Problems();
    assertTrue(shop.resolve(Bench.JOB, problems).isEmpty());
    Problem problem = problems.all().get(0);
    assertEquals("vehicles/heron.yaml:2:7 like-loop", problem.at() + " " + problem.code().word());
    assertEquals(
        "these spec books are like each other in a loop: heron, heron-van, heron", problem.what());
  }

  @Test
  void aBookThatIsLikeNoneIsReported() {
    ShopTexts shop =
        derived("").replacing("vehicles/heron-van.yaml", "like: heron", "like: herron");
    assertEquals("vehicles/heron-van.yaml:2:7 unknown-book", told(shop));
  }

  @Test
  void anOverrideComesLastAndReplacesOnlyWhatItSays() {
    Bound.OfBook bolt =
        bolt(override("arm-bolt at front-left: {torque: 108 N·m, source: note 17}"));
    assertEquals("108 N·m", torque(bolt));
    assertEquals(2, bolt.values().count().value());
    assertEquals("note 17", bolt.source());
    assertTrue(bolt.overridden());
    assertEquals("override of job 7 2026-03-02/7.yaml:8:3", chain(bolt).split(";")[0]);
  }

  @Test
  void theNearestOverrideWins() {
    ShopTexts shop =
        override(
            "arm-bolt at front: {torque: 101 N·m, source: note 1}",
            "arm-bolt at front-left: {torque: 108 N·m, source: note 2}");
    assertEquals("108 N·m", torque(bolt(shop)));
  }

  @Test
  void twoOverridesThatReachAsFarAreAmbiguous() {
    ShopTexts shop =
        override(
            "arm-bolt at front: {torque: 101 N·m, source: note 1}",
            "arm-bolt at left: {torque: 108 N·m, source: note 2}");
    assertEquals("procedures/arm.yaml:6:29 ambiguous-place", told(shop));
  }

  @Test
  void anOverrideThatLeavesTheFigureLeavesItsSource() {
    Bound.OfBook bolt = bolt(override("arm-bolt at front-left: {reuse: no, source: note 17}"));
    assertEquals("Heron sheet 3; note 17", bolt.source());
  }

  /** Each entry says only what differs, so a note stays until another takes its place. */
  @Test
  void aNoteStaysUntilAnotherTakesItsPlace() {
    ShopTexts shop =
        Bench.shop().replacing(BOOK, "torque: 95 N·m}", "torque: 95 N·m, note: hold the nut}");
    assertEquals(
        List.of("hold the nut"),
        notes(override(shop, "arm-bolt at front-left: {reuse: no, source: sheet 4}")));
    assertEquals(
        List.of("from below"),
        notes(override(shop, "arm-bolt at front-left: {note: from below, source: sheet 4}")));
  }

  private static List<String> notes(ShopTexts shop) {
    return bolt(shop).values().written().remarks().stream().map(Remark::text).toList();
  }

  @Test
  void anOverrideThatNothingUsesIsAnError() {
    assertEquals(
        "2026-03-02/7.yaml:8:3 override-unused",
        told(override("arm-bolt at front-right: {torque: 108 N·m, source: note 17}")));
    assertEquals(
        "2026-03-02/7.yaml:8:3 unknown-fastener",
        told(override("arm-bold at front-left: {torque: 108 N·m, source: note 17}")));
  }

  @Test
  void anOverrideNamesTheNearestThatTheJobTouches() {
    Problems problems = new Problems();
    override("arm-bold at front-left: {torque: 108 N·m, source: note 17}")
        .resolve(Bench.JOB, problems);
    assertEquals(List.of("arm-bolt"), problems.all().get(0).nearest().stream().toList());
  }

  /** Bushes that are clamped while the suspension hangs are twisted at ride height and tear. */
  @Test
  void boltsThroughBushesWaitForRideHeightWhereABookDoesNotSay() {
    Map<String, Catalogue.Item> items =
        CatalogueReader.merge(ShopFolders.builtInCatalogue()).items();
    for (String bolt :
        List.of("arm-front-bolt", "arm-rear-bolt", "damper-lower-bolt", "axle-bush-bolt")) {
      assertEquals(
          Optional.of(Fastener.Moment.RIDE_HEIGHT),
          items.get(bolt).usual().flatMap(it -> it.value().method().moment()).map(Located::value),
          bolt);
    }
  }
}
