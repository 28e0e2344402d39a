package baysheet.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.FastenerText;
import baysheet.books.SpecBook;
import baysheet.books.SpecBookReader;
import baysheet.report.Located;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.torque.Tightening;
import baysheet.yaml.YamlFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A name that means nothing is reported where it stands, with the name it is most like. */
class NamesTest {
  private static List<Problem> problems(ShopTexts shop) {
    Problems problems = new Problems();
    Optional<Resolved> resolved = shop.resolve(Bench.JOB, problems);
    assertEquals(problems.hasErrors(), resolved.isEmpty(), "a job with errors is not planned");
    return problems.all();
  }

  private static void only(ShopTexts shop, String told, String nearest) {
    List<Problem> problems = problems(shop);
    assertEquals(1, problems.size(), problems.toString());
    Problem problem = problems.get(0);
    assertEquals(told, problem.at() + " " + problem.code().word());
    assertEquals(nearest, problem.nearest().orElse("none"));
  }

  @Test
  void benchItselfHasNothingWrong() {
    assertEquals(List.of(), problems(Bench.shop()));
  }

  @Test
  void unknownProcedureOfAJobPointsAtItsLine() {
    only(
        Bench.shop().replacing(Bench.JOB, "arm at", "arms at"),
        "2026-03-02/7.yaml:6:5 unknown-procedure",
        "arm");
  }

  @Test
  void unknownAccessPointsIntoTheProcedure() {
    only(
        Bench.shop().replacing("procedures/arm.yaml", "[wheel-off]", "[wheel-of]"),
        "procedures/arm.yaml:4:10 unknown-procedure",
        "wheel-off");
  }

  @Test
  void whatAProcedureServesIsANameToo() {
    only(
        Bench.shop().replacing("procedures/wheel-off.yaml", "[raise]", "[rise]"),
        "procedures/wheel-off.yaml:4:10 unknown-procedure",
        "raise");
  }

  @Test
  void unknownItemPointsAtTheStep() {
    only(
        Bench.shop().replacing("procedures/arm.yaml", "arm-bolt", "arm-bold"),
        "procedures/arm.yaml:6:29 unknown-item",
        "arm-bolt");
  }

  @Test
  void aFastenerOfAnotherPlaceIsNamedWithThatPlace() {
    ShopTexts shop = Bench.shop().replacing("vehicles/heron.yaml", "front-wheels:", "rear-wheels:");
    Problem problem = problems(shop).get(0);
    assertEquals("2026-03-02/7.yaml:6:5 missing-fastener", problem.at() + " " + problem.code());
    assertEquals(
        "the spec book heron has no fastener \"arm-bolt\" at the front left, and arm needs it",
        problem.what());
    assertEquals("the step", problem.related().get(0).value());
    assertEquals("procedures/arm.yaml:6:29", problem.related().get(0).at().toString());
    assertEquals("the book has one under rear-wheels", problem.related().get(1).value());
    assertEquals("vehicles/heron.yaml:9:5", problem.related().get(1).at().toString());
  }

  /** The wheel nut is there too, but nobody writes wheel-nut for arm-bolt. */
  @Test
  void aMissingFastenerComesWithTheLineToPasteAndNoFarFetchedName() {
    Problem problem = problems(lacking()).get(0);
    assertEquals(
        Optional.of(
            "absent: [arm-bolt] in the book if this vehicle has none, otherwise under front-wheels"
                + " the line below"),
        problem.expected());
    assertEquals(Optional.of("arm-bolt: unknown"), problem.line());
    assertEquals(Optional.empty(), problem.nearest());
  }

  /**
   * What is pasted and not filled in has no figure, and no count, without which no sheet is made.
   */
  @Test
  void theLineToPasteIsNoFigure() {
    String line = problems(lacking()).get(0).line().orElseThrow();
    Problems problems = new Problems();
    SpecBook book =
        YamlFile.parse(
                new Source(
                    "b",
                    "vehicle: b\nname: B\nsource: s\nfasteners:\n  front-wheels:\n    " + line),
                problems)
            .flatMap(node -> SpecBookReader.read(node, problems))
            .orElseThrow();
    assertEquals(List.of(), problems.all());
    FastenerText text = book.fasteners().get(0).fasteners().get("arm-bolt").text();
    assertTrue(text.pieces().isUncounted());
    assertEquals(6, text.pieces().unknown().size(), text.toString());
    assertEquals(Optional.of(new Tightening.Unknown()), text.tightening().map(Located::value));
  }

  @Test
  void aMissingFastenerOffersANameThatIsNearAndThere() {
    ShopTexts shop =
        lacking()
            .replacing("vehicles/heron.yaml", "knee-screw:", "arm-bolts:")
            .replacing("catalogue/own.yaml", "knee-screw:", "arm-bolts:");
    assertEquals(Optional.of("arm-bolts"), problems(shop).get(0).nearest());
  }

  /** The catalogue words the bolt, and the book has another one. */
  private static ShopTexts lacking() {
    return wordedOnly()
        .replacing("vehicles/heron.yaml", "arm-bold:", "knee-screw:")
        .replacing("catalogue/own.yaml", "  wheel:", "  knee-screw: {name: knee screw}\n  wheel:");
  }

  private static ShopTexts wordedOnly() {
    return Bench.shop()
        .replacing("vehicles/heron.yaml", "arm-bolt:", "arm-bold:")
        .replacing(
            "catalogue/own.yaml",
            "  wheel:",
            "  arm-bolt: {name: arm bolt, kinds: [fastener]}\n  wheel:");
  }

  @Test
  void aMisspeltFastenerOfABookIsReportedThere() {
    only(wordedOnly(), "vehicles/heron.yaml:9:5 unknown-fastener", "arm-bolt");
  }

  /** Two sides, and a step that takes it off and one that puts it on: one gap in the book. */
  @Test
  void whatTheBookLacksIsReportedOnce() {
    ShopTexts shop =
        lacking()
            .replacing(
                "procedures/arm.yaml",
                "open:",
                "close:\n  - {do: Put it on, do-up: arm-bolt}\nopen:")
            .replacing(Bench.JOB, "front-left", "front");
    assertEquals(List.of("2026-03-02/7.yaml:6:5"), spots(shop));
    assertEquals(
        List.of("2026-03-02/7.yaml:6:5", "2026-03-02/7.yaml:7:5"),
        spots(shop.replacing(Bench.JOB, "at front", "at front\n  - arm at rear-left")));
  }

  @Test
  void aMisspeltNameIsReportedWhereverItStands() {
    ShopTexts shop =
        Bench.shop()
            .replacing("procedures/arm.yaml", "undo: arm-bolt", "undo: arm-bold")
            .replacing(
                "procedures/arm.yaml",
                "open:",
                "close:\n  - {do: Put it on, do-up: arm-bold}\nopen:")
            .replacing(Bench.JOB, "front-left", "front");
    assertEquals(List.of("procedures/arm.yaml:8:29", "procedures/arm.yaml:6:28"), spots(shop));
  }

  private static List<String> spots(ShopTexts shop) {
    return problems(shop).stream().map(problem -> problem.at().toString()).toList();
  }

  @Test
  void unknownPersonBayAndBook() {
    only(
        Bench.shop().replacing(Bench.JOB, "by: T1", "by: T2"),
        "2026-03-02/7.yaml:4:5 unknown-person",
        "none");
    only(
        Bench.shop().replacing(Bench.JOB, "bay: 1", "bay: flor"),
        "2026-03-02/7.yaml:3:6 unknown-bay",
        "floor");
    only(
        Bench.shop().replacing(Bench.JOB, "book: heron", "book: herron"),
        "2026-03-02/7.yaml:2:17 unknown-book",
        "heron");
  }

  @Test
  void allUnknownNamesAreReportedAtOnce() {
    ShopTexts shop =
        Bench.shop()
            .replacing(Bench.JOB, "by: T1", "by: T2")
            .replacing(Bench.JOB, "bay: 1", "bay: flor")
            .replacing(Bench.JOB, "book: heron", "book: herron");
    assertEquals(
        List.of("unknown-bay", "unknown-person", "unknown-book"),
        problems(shop).stream().map(problem -> problem.code().word()).toList());
  }

  @Test
  void unknownStateCautionAndCircuit() {
    only(
        Bench.shop().with(Bench.JOB, job("state: [rustty]")),
        "2026-03-02/7.yaml:7:9 unknown-state",
        "rusty");
    only(
        Bench.shop().with(Bench.JOB, job("waive: {hot-oill: T1}")),
        "2026-03-02/7.yaml:7:19 unknown-caution",
        "hot-oil");
    only(
        Bench.shop()
            .replacing("procedures/arm.yaml", "arm-bolt}", "arm-bolt, hazards: [hot-oils]}"),
        "procedures/arm.yaml:6:49 unknown-caution",
        "hot-oil");
    only(
        Bench.shop()
            .replacing("procedures/arm.yaml", "arm-bolt}", "arm-bolt, open-circuit: brake-flud}"),
        "procedures/arm.yaml:6:53 unknown-circuit",
        "brake-fluid");
    // A bay that nobody has would let the step fall away without a word.
    only(
        Bench.shop().replacing("procedures/arm.yaml", "arm-bolt}", "arm-bolt, only-in: jackk}"),
        "procedures/arm.yaml:6:48 unknown-kind",
        "jack");
  }

  @Test
  void onlyKnownPeopleWaive() {
    only(
        Bench.shop().with(Bench.JOB, job("waive: {hot-oil: T9}")),
        "2026-03-02/7.yaml:7:18 unknown-person",
        "none");
  }

  @Test
  void anApprenticeDoesNotAnswerForAJob() {
    only(
        Bench.shop().replacing(Bench.JOB, "by: T1", "by: A1"),
        "2026-03-02/7.yaml:4:5 apprentice-alone",
        "none");
  }

  private static String job(String line) {
    return """
    job: 7
    vehicle: {book: heron}
    bay: 1
    by: T1
    work:
      - arm at front-left
    %s
    """
        .formatted(line);
  }

  @Test
  void anUnknownPersonIsReportedWithTheKnownOnes() {
    Problem problem = problems(Bench.shop().replacing(Bench.JOB, "by: T1", "by: T2")).get(0);
    assertEquals("one of T1, A1", problem.expected().orElseThrow());
  }

  @Test
  void aFigureThatNoBookGivesIsNotGuessed() {
    ShopTexts shop =
        Bench.shop()
            .with(
                "vehicles/heron-van.yaml",
                "vehicle: heron-van\nlike: heron\n"
                    + "fasteners:\n  front-left:\n    arm-bolt: {count: 2}\n")
            .replacing(Bench.JOB, "book: heron", "book: heron-van");
    only(shop, "vehicles/heron-van.yaml:5:5 missing-key", "none");
  }
}
