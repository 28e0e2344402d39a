package baysheet.plan.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Planner;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.ShopTexts;
import baysheet.sheet.Sheet;
import baysheet.sheet.Support;
import baysheet.wording.Printed;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What carries the car. The car of this bench has 1500 kg, 60 % of it in front: 900 kg on the front
 * axle, 600 kg on the rear one, so 450 kg and 300 kg on each of two stands.
 */
class SupportCheckTest {
  private static final String JOB = "2026-03-02/9.yaml";

  private static ShopTexts shop() {
    return ShopTexts.empty()
        .with(
            "shop.yaml",
            """
            shop: Mill Lane
            crib:
              wrenches: []
              sockets: []
              stands: {rated: 500 kg, each: yes, count: 4}
            bays:
              1: {lift: two-post, rated: 1500 kg}
              floor: {jack: trolley, rated: 1000 kg}
            people:
              T1: {name: R. Fenwake, grade: technician}
            """)
        .with(
            "vehicles/heron.yaml",
            """
            vehicle: heron
            name: Heron
            source: Heron sheet 3
            kerb-mass: 1500 kg
            front-share: 60 %
            """)
        .with(
            "catalogue/own.yaml",
            """
            items:
              on-its-wheels: {name: vehicle on its wheels, kinds: [support]}
              cover: {name: cover, kinds: []}
            """)
        .with("procedures/raise-lift.yaml", raise("raise-lift", "vehicle", "lift"))
        .with("procedures/raise-jack.yaml", raise("raise-jack", "axle", "jack"))
        .with(
            "procedures/cover.yaml",
            """
            procedure: cover
            title: Cover
            at: axle
            behind: [raise]
            open:
              - {do: Take the cover off, undo: cover}
            """)
        .with(
            JOB,
            """
            job: 9
            vehicle: {book: heron}
            bay: floor
            by: T1
            work:
              - cover at front
            """);
  }

  private static String raise(String name, String at, String needs) {
    return """
    procedure: %s
    title: Raise
    at: %s
    serves: raise
    needs: %s
    open:
      - {do: Raise it, undo: on-its-wheels}
    """
        .formatted(name, at, needs);
  }

  private static String carried(ShopTexts shop) {
    Problems problems = new Problems();
    Optional<Sheet> sheet = Planner.plan(shop.resolved(JOB), problems);
    assertTrue(!problems.hasErrors(), problems.all().toString());
    Sheet made = sheet.orElseThrow();
    return made.safety().support().stream()
        .map(one -> carried(made, one))
        .collect(Collectors.joining("; "))
        .replace('\u00a0', ' ');
  }

  private static String carried(Sheet sheet, Support support) {
    String each = support.each().map(share -> ", each " + share.print()).orElse("");
    return support.raised()
        + " on "
        + Printed.text(sheet, support.on())
        + ": "
        + support.load().print()
        + each
        + " of "
        + support.rated().print();
  }

  /** What is reported when there is no sheet. */
  private static List<String> refused(ShopTexts shop) {
    Problems problems = new Problems();
    assertEquals(
        Optional.empty(), shop.resolve(JOB, problems).flatMap(it -> Planner.plan(it, problems)));
    return problems.all().stream().filter(Problem::isError).map(SupportCheckTest::told).toList();
  }

  private static String told(Problem problem) {
    return problem.at()
        + " "
        + problem.code().word()
        + ": "
        + problem.what().replace('\u00a0', ' ');
  }

  private static ShopTexts onLift(ShopTexts shop) {
    return shop.replacing(JOB, "bay: floor", "bay: 1");
  }

  private static ShopTexts loaded(ShopTexts shop, String load) {
    return shop.replacing(JOB, "by: T1", "by: T1\nload: {" + load + "}");
  }

  /** Front axle load = kerb mass × distance of the mass from the rear axle / wheelbase. */
  @Test
  void aBookThatSaysWhereItsMassIsNeedsNoShareOfTheOneItIsLike() {
    ShopTexts shop =
        shop()
            .with(
                "vehicles/heron-van.yaml",
                """
                vehicle: heron-van
                like: heron
                wheelbase: 3000 mm
                mass-behind-front: 1600 mm
                """)
            .replacing(JOB, "book: heron", "book: heron-van");
    // 1500 kg × (3000 − 1600) / 3000 = 700 kg; 60 % would be 900 kg.
    assertEquals("front on 2 stands: 700 kg, each 350 kg of 500 kg", carried(shop));
    // At the rear 1500 kg × 1600 / 3000 = 800 kg; 40 % would be 600 kg.
    ShopTexts rear = shop.replacing(JOB, "cover at front", "cover at rear");
    assertEquals("rear on 2 stands: 800 kg, each 400 kg of 500 kg", carried(rear));
  }

  @Test
  void twoStandsShareTheAxle() {
    assertEquals("front on 2 stands: 900 kg, each 450 kg of 500 kg", carried(shop()));
    assertEquals(
        "rear on 2 stands: 600 kg, each 300 kg of 500 kg",
        carried(shop().replacing(JOB, "at front", "at rear")));
  }

  @Test
  void whatLiesOnAnAxleIsCarriedByItsStandsAlone() {
    assertEquals(
        "front on 2 stands: 950 kg, each 475 kg of 500 kg",
        carried(loaded(shop(), "front: 50 kg, rear: 400 kg")));
  }

  @Test
  void allThatIsOnBoardIsSaidBesideTheLoad() {
    assertEquals(Optional.empty(), cargo(shop()));
    assertEquals(Optional.of("450 kg"), cargo(loaded(shop(), "front: 50 kg, rear: 400 kg")));
  }

  private static Optional<String> cargo(ShopTexts shop) {
    Sheet sheet = Planner.plan(shop.resolved(JOB), new Problems()).orElseThrow();
    return sheet.safety().support().get(0).cargo().map(it -> it.print().replace('\u00a0', ' '));
  }

  @Test
  void aLiftCarriesTheWholeCarAndItsLoad() {
    assertEquals("whole on two-post lift: 1500 kg of 1500 kg", carried(onLift(shop())));
    assertEquals(
        List.of(
            "shop.yaml:7:30 overloaded:"
                + " the lift would carry 1501 kg, but is rated for 1500 kg"),
        refused(onLift(loaded(shop(), "rear: 1 kg"))));
  }

  @Test
  void anOverloadedStandStopsTheJob() {
    assertEquals(
        List.of("shop.yaml:5:19 overloaded: a stand would carry 450 kg, but is rated for 449 kg"),
        refused(shop().replacing("shop.yaml", "rated: 500 kg", "rated: 449 kg")));
  }

  @Test
  void aRatingForAPairIsHalved() {
    ShopTexts pair = shop().replacing("shop.yaml", "each: yes", "each: no");
    assertEquals(
        List.of("shop.yaml:5:19 overloaded: a stand would carry 450 kg, but is rated for 250 kg"),
        refused(pair));
    assertEquals(
        "front on 2 stands: 900 kg, each 450 kg of 450 kg",
        carried(pair.replacing("shop.yaml", "rated: 500 kg", "rated: 900 kg")));
  }

  /** 1000 lb are 453.59237 kg exactly (international pound): a rating is never shown as more. */
  @Test
  void ratingsAreRoundedDownAndLoadsUp() {
    ShopTexts pounds =
        shop()
            .replacing("shop.yaml", "rated: 500 kg", "rated: 1000 lb")
            .replacing("vehicles/heron.yaml", "1500 kg", "1501 kg");
    assertEquals("front on 2 stands: 901 kg, each 451 kg of 453 kg", carried(pounds));
  }

  @Test
  void anOverloadedJackStopsTheJob() {
    assertEquals(
        List.of("shop.yaml:8:33 overloaded: the jack would carry 900 kg, but is rated for 899 kg"),
        refused(shop().replacing("shop.yaml", "rated: 1000 kg", "rated: 899 kg")));
  }

  @Test
  void bothAxlesUpNeedFourStands() {
    ShopTexts both =
        shop()
            .replacing(JOB, "cover at front", "cover at vehicle")
            .replacing("procedures/cover.yaml", "at: axle", "at: vehicle");
    assertEquals(
        "front on 2 stands: 900 kg, each 450 kg of 500 kg;"
            + " rear on 2 stands: 600 kg, each 300 kg of 500 kg",
        carried(both));
    assertEquals(
        List.of("shop.yaml:5:45 no-stands: the job needs 4 stands, but the shop has 3"),
        refused(both.replacing("shop.yaml", "count: 4", "count: 3")));
  }

  /** One axle after the other: two stands do, and each load is printed. */
  @Test
  void oneAxleAfterTheOtherNeedsTwoStands() {
    ShopTexts turns = shop().replacing(JOB, "cover at front", "cover at front\n  - cover at rear");
    assertEquals(
        "front on 2 stands: 900 kg, each 450 kg of 500 kg;"
            + " rear on 2 stands: 600 kg, each 300 kg of 500 kg",
        carried(turns.replacing("shop.yaml", "count: 4", "count: 2")));
  }

  @Test
  void aJackAloneIsNotEnough() {
    assertEquals(
        List.of(
            "shop.yaml:1:1 no-stands:"
                + " the vehicle is raised with a jack, but the shop has no stands"),
        refused(
            shop().replacing("shop.yaml", "  stands: {rated: 500 kg, each: yes, count: 4}\n", "")));
  }

  @Test
  void anUnknownMassStopsTheJobThatRaises() {
    ShopTexts light = shop().replacing("vehicles/heron.yaml", "kerb-mass: 1500 kg\n", "");
    assertEquals(
        List.of(
            "vehicles/heron.yaml:1:10 load-unknown: the vehicle is raised, but the spec book has no"
                + " kerb-mass, so the load on its supports is not known"),
        refused(light));
    assertEquals("", carried(light.replacing("procedures/cover.yaml", "behind: [raise]\n", "")));
  }

  @Test
  void anUnknownShareStopsTheJobOnStandsOnly() {
    ShopTexts shareless = shop().replacing("vehicles/heron.yaml", "front-share: 60 %\n", "");
    assertEquals(1, refused(shareless).size());
    assertEquals("whole on two-post lift: 1500 kg of 1500 kg", carried(onLift(shareless)));
  }

  /** Centre of mass 1.2 m behind the front axle of 2.5 m: 52 % in front (OpenStax 12.1). */
  @Test
  void theShareFollowsFromTheCentreOfMass() {
    assertEquals(
        "front on 2 stands: 780 kg, each 390 kg of 500 kg",
        carried(
            shop()
                .replacing(
                    "vehicles/heron.yaml",
                    "front-share: 60 %",
                    "wheelbase: 2500 mm\nmass-behind-front: 1200 mm")));
  }

  @Test
  void aCarRaisedAsAWholeOnStandsIsCarriedAtBothAxles() {
    ShopTexts whole =
        shop().with("procedures/raise-jack.yaml", raise("raise-jack", "vehicle", "jack"));
    assertEquals(
        "front on 2 stands: 900 kg, each 450 kg of 500 kg;"
            + " rear on 2 stands: 600 kg, each 300 kg of 500 kg",
        carried(whole));
  }

  @Test
  void aWheelIsCarriedAsItsAxleIs() {
    ShopTexts corner =
        shop()
            .with("procedures/raise-jack.yaml", raise("raise-jack", "wheel", "jack"))
            .replacing("procedures/cover.yaml", "at: axle", "at: wheel")
            .replacing(JOB, "at front", "at front-left");
    assertEquals("front on 2 stands: 900 kg, each 450 kg of 500 kg", carried(corner));
  }
}
