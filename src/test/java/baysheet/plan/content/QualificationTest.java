package baysheet.plan.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.plan.Planner;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.resolve.ShopTexts;
import baysheet.rules.Altered;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.verify.PlanVerifier;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Work for which somebody must be certified, in a garage whose items, procedures and qualification
 * have names that no built-in file knows.
 */
class QualificationTest {
  private static final List<Statement> FEEL_THE_DOOR =
      List.of(new Statement.Written("Feel the door"));

  private static final String JOB = "2026-03-02/7.yaml";

  private static ShopTexts shop() {
    return ShopTexts.empty()
        .with(
            "shop.yaml",
            """
            shop: Mill Lane
            crib: {wrenches: [], sockets: []}
            bays:
              1: {lift: two-post, rated: 3000 kg}
            people:
              T1:
                name: R. Fenwake
                grade: technician
                qualifications:
                  - kiln-work: {certificate: KW 3, until: 2026-03-02}
              T2: {name: O. Salter, grade: technician, qualifications: {kiln-work: {certificate: KW 9, until: unlimited}}}
              T3: {name: J. Medlar, grade: technician}
              A1: {name: S. Loddon, grade: apprentice, qualifications: {kiln-work: {certificate: KW 12, until: unlimited}}}
            """)
        .with(
            "vehicles/heron.yaml",
            """
            vehicle: heron
            name: Heron
            source: Heron sheet 3
            """)
        .with(
            "catalogue/own.yaml",
            """
            items:
              kiln-door: {name: kiln door, kinds: [kiln]}
              mast: {name: mast, kinds: [spar]}
            kinds:
              kiln: a kiln or its door
              spar: a mast or a boom
            qualifications:
              kiln-work: {name: kiln, when: {kind: kiln}, source: house rule}
              rope-work: {name: ropes, source: house rule}
            """)
        .with(
            "procedures/kiln-opened.yaml",
            """
            procedure: kiln-opened
            title: Kiln opened
            at: vehicle
            open:
              - {do: Lower the mast, undo: mast}
              - {do: Open the kiln door, undo: kiln-door, hold: yes}
            """)
        .with(
            JOB, "job: 7\nvehicle: {book: heron}\nbay: 1\nby: T1\nwork: kiln-opened at vehicle\n");
  }

  private static Optional<Sheet> sheet(ShopTexts shop, Problems problems) {
    Optional<Resolved> resolved = shop.resolve(JOB, problems);
    return resolved.flatMap(it -> Planner.plan(it, problems));
  }

  private static QualifiedWork only(ShopTexts shop) {
    Problems problems = new Problems();
    Sheet sheet =
        sheet(shop, problems).orElseThrow(() -> new AssertionError(problems.all().toString()));
    assertEquals(1, sheet.safety().qualified().size());
    return sheet.safety().qualified().get(0);
  }

  private static Problem problem(ShopTexts shop) {
    Problems problems = new Problems();
    assertTrue(sheet(shop, problems).isEmpty());
    assertEquals(1, problems.all().size(), problems.all().toString());
    return problems.all().get(0);
  }

  private static String told(ShopTexts shop) {
    Problem problem = problem(shop);
    return problem.at() + " " + problem.code();
  }

  @Test
  void whoDoesItIsNamedWithTheirCertificateAtTheirSteps() {
    QualifiedWork work = only(shop());
    assertEquals("T1", work.by().person());
    assertEquals("KW 3", work.by().certificate());
    // Opened in step 2, closed in step 3; the mast needs nobody's certificate.
    assertEquals(List.of(2, 3), work.steps());
  }

  @Test
  void theSecondPersonAtAHoldPointIsAnotherCertifiedTechnician() {
    QualifiedWork work = only(shop());
    assertEquals(List.of(2), work.holds());
    // Neither who does it, nor who has no certificate, nor an apprentice who has one.
    assertEquals(List.of("T2"), work.second().stream().map(QualifiedWork.Holder::person).toList());
  }

  @Test
  void theLastDayCountsAndTheNextDoesNot() {
    Problem problem =
        problem(shop().replacing("shop.yaml", "until: 2026-03-02", "until: 2026-03-01"));
    assertEquals("2026-03-02/7.yaml:4:5 not-qualified", problem.at() + " " + problem.code());
    assertTrue(problem.what().contains("ended on 2026-03-01"), problem.what());
    assertTrue(problem.toString().contains("qualified: {kiln-work: T2}"), problem.toString());
  }

  @Test
  void whoHasNoCertificateIsRefused() {
    assertEquals(
        "2026-03-02/7.yaml:4:5 not-qualified", told(shop().replacing(JOB, "by: T1", "by: T3")));
  }

  @Test
  void somebodyElseMayDoThatPartOfTheWork() {
    QualifiedWork work =
        only(shop().replacing(JOB, "by: T1", "by: T3\nqualified: {kiln-work: T2}"));
    assertEquals("T2", work.by().person());
    assertEquals(List.of("T1"), work.second().stream().map(QualifiedWork.Holder::person).toList());
  }

  @Test
  void aNamedSecondPersonMustBeCertifiedToo() {
    assertEquals(
        "2026-03-02/7.yaml:5:9 not-qualified",
        told(shop().replacing(JOB, "by: T1", "by: T1\nsecond: T3")));
    Problem problem = problem(shop().replacing(JOB, "by: T1", "by: T1\nsecond: T3"));
    assertTrue(problem.toString().contains("second: T2"), problem.toString());
    assertEquals(
        List.of("T2"),
        only(shop().replacing(JOB, "by: T1", "by: T1\nsecond: T2")).second().stream()
            .map(QualifiedWork.Holder::person)
            .toList());
  }

  @Test
  void nobodyLooksAtTheirOwnWork() {
    assertEquals(
        "2026-03-02/7.yaml:6:9 same-person",
        told(shop().replacing(JOB, "by: T1", "by: T3\nqualified: {kiln-work: T2}\nsecond: T2")));
  }

  @Test
  void aHoldPointThatNobodyMayLookAtIsRefused() {
    assertEquals(
        "2026-03-02/7.yaml:4:5 not-qualified",
        told(
            shop()
                .replacing(
                    "shop.yaml", "until: unlimited}}}\n  T3", "until: 2026-01-31}}}\n  T3")));
  }

  @Test
  void anApprenticeIsNoSecondPerson() {
    assertEquals(
        "2026-03-02/7.yaml:5:9 apprentice-alone",
        told(shop().replacing(JOB, "by: T1", "by: T1\nsecond: A1")));
  }

  @Test
  void aProcedureMayAskForItself() {
    ShopTexts shop =
        shop()
            .replacing(
                "procedures/kiln-opened.yaml",
                "at: vehicle",
                "at: vehicle\nqualification: rope-work");
    assertEquals("2026-03-02/7.yaml:4:5 not-qualified", told(shop));
  }

  @Test
  void aQualificationThatNoStepNeedsIsNamed() {
    assertEquals(
        "2026-03-02/7.yaml:5:13 qualified-unused",
        told(shop().replacing(JOB, "by: T1", "by: T1\nqualified: {rope-work: T1}")));
    assertEquals(
        "2026-03-02/7.yaml:5:13 unknown-qualification",
        told(shop().replacing(JOB, "by: T1", "by: T1\nqualified: {kiln-wrok: T1}")));
  }

  @Test
  void thePlaybackMissesAnUncertifiedHand() {
    Problems problems = new Problems();
    Resolved resolved = shop().resolve(JOB, problems).orElseThrow();
    Sheet sheet = Planner.plan(resolved, problems).orElseThrow();
    assertEquals(List.of(), PlanVerifier.faults(sheet, resolved));
    QualifiedWork work = sheet.safety().qualified().get(0);
    List<QualifiedWork> byHolder =
        List.of(
            // Somebody without a certificate, somebody with another number, a step left out, and
            // who does the work as the one who looks at it.
            with(work, new QualifiedWork.Holder("T3", "J. Medlar", "KW 3", Optional.empty())),
            with(work, new QualifiedWork.Holder("T1", "R. Fenwake", "KW 4", Optional.empty())),
            new QualifiedWork(
                "kiln-work", "kiln", List.of(2), work.by(), List.of(2), List.of(), work.second()),
            new QualifiedWork(
                "kiln-work",
                "kiln",
                work.steps(),
                work.by(),
                List.of(2),
                List.of(),
                List.of(work.by())));
    for (QualifiedWork wrong : byHolder) {
      assertTrue(!faults(sheet, resolved, wrong).isEmpty(), wrong::toString);
    }
  }

  /** The work has a held check, and no step of it is a hold point. */
  private static ShopTexts held(String more) {
    return shop()
        .replacing("procedures/kiln-opened.yaml", ", hold: yes", "")
        .replacing(
            "catalogue/own.yaml",
            "qualifications:",
            """
            consequences:
              kiln-cold: {when: {kind: kiln}, check: Feel the door, moment: before-moving, hold: yes, source: us%s}
              mast-up: {when: {kind: [kiln, spar]}, check: See the mast, moment: before-moving, hold: yes, source: us}
              door-shut: {when: {kind: kiln}, check: See it shut, moment: before-moving, source: us}
            qualifications:\
            """
                .formatted(more));
  }

  @Test
  void aHeldCheckThatOnlySuchWorkBringsIsPartOfIt() {
    QualifiedWork work = only(held(""));
    assertEquals(FEEL_THE_DOOR, work.checks());
    assertEquals(List.of(), work.holds());
    assertEquals(List.of("T2"), work.second().stream().map(QualifiedWork.Holder::person).toList());
  }

  @Test
  void whoeverIsNamedToLookAtAHeldCheckMustBeCertified() {
    ShopTexts named = held("").replacing(JOB, "by: T1\n", "by: T1\nsecond: T3\n");
    assertEquals("2026-03-02/7.yaml:5:9 not-qualified", told(named));
    assertEquals(
        List.of("T2"),
        only(held("").replacing(JOB, "by: T1\n", "by: T1\nsecond: T2\n")).second().stream()
            .map(QualifiedWork.Holder::person)
            .toList());
  }

  @Test
  void aHeldCheckThatNobodyElseMayLookAtIsLeftToWhoDoesTheWork() {
    ShopTexts alone =
        held("")
            .replacing(
                "shop.yaml",
                ", qualifications: {kiln-work: {certificate: KW 9, until: unlimited}}}",
                "}");
    assertEquals(List.of(), only(alone).second());
    assertEquals(FEEL_THE_DOOR, only(alone).checks());
  }

  @Test
  void whereTheCheckSaysWhoReleasesTheVehicleNobodyElseLooks() {
    QualifiedWork work = only(held(", released-by: whoever opened it"));
    assertEquals(FEEL_THE_DOOR, work.checks());
    assertEquals(List.of(), work.second());
  }

  @Test
  void thePlaybackMissesAHeldCheckWithoutItsPeople() {
    Problems problems = new Problems();
    Resolved resolved = held("").resolve(JOB, problems).orElseThrow();
    Sheet sheet = Planner.plan(resolved, problems).orElseThrow();
    QualifiedWork work = sheet.safety().qualified().get(0);
    for (QualifiedWork wrong :
        List.of(checked(work, List.of(), work.second()), checked(work, work.checks(), List.of()))) {
      assertTrue(!faults(sheet, resolved, wrong).isEmpty(), wrong::toString);
    }
  }

  private static QualifiedWork checked(
      QualifiedWork work, List<Statement> checks, List<QualifiedWork.Holder> second) {
    return new QualifiedWork(
        work.qualification(), work.words(), work.steps(), work.by(), work.holds(), checks, second);
  }

  private static QualifiedWork with(QualifiedWork work, QualifiedWork.Holder by) {
    return new QualifiedWork(
        work.qualification(),
        work.words(),
        work.steps(),
        by,
        work.holds(),
        work.checks(),
        work.second());
  }

  private static List<String> faults(Sheet sheet, Resolved resolved, QualifiedWork wrong) {
    return PlanVerifier.faults(Altered.with(sheet, "safety.qualified", List.of(wrong)), resolved);
  }
}
