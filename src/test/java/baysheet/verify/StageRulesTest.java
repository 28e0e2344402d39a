package baysheet.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Moment;
import baysheet.books.Place;
import baysheet.plan.Lists;
import baysheet.plan.Planner;
import baysheet.plan.SmallShop;
import baysheet.plan.TracedPlan;
import baysheet.plan.stage.Division;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.rules.Altered;
import baysheet.sheet.CheckLine;
import baysheet.sheet.QualifiedWork;
import baysheet.sheet.Sheet;
import baysheet.sheet.Statement;
import baysheet.torque.Drive;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found when one stage of a job says something else than the job, each by its rule. */
class StageRulesTest {
  private static final String WRENCH =
      "wrenches: [{name: W1, drive: 1/2 in, from: 20 N·m, to: 300 N·m, step: 1 N·m,"
          + " accuracy: 4 %, calibrated: 2025-06-15}]";

  private static final SmallShop SHOP =
      new SmallShop(
              SmallShop.bolted()
                  .texts()
                  .replacing("shop.yaml", "wrenches: []", WRENCH)
                  .replacing(
                      "shop.yaml",
                      "sockets: []",
                      "sockets: [{drive: 1/2 in, hex: 8..32 mm, points: 6}]")
                  .replacing(
                      "shop.yaml",
                      "grade: technician",
                      "grade: technician, qualifications: [fine: {certificate: F 1, until: unlimited}]"))
          .with(
              "catalogue/more.yaml",
              """
              cautions:
                care: {signal: WARNING, when: {undo: one}, do: Take care, hazard: it slips, consequence: it hurts, protect: [M008], source: us}
              qualifications:
                fine: {name: fine work, when: {undo: one}, source: us}
              consequences:
                book: {when: {undo: one}, check: Book a helper, moment: evening-before, source: us}
                tag: {when: {undo: one}, check: Tag it, moment: before-lifting, source: us}
                open: {when: {kind: support}, check: Open the bonnet, moment: before-lifting, source: us}
                gap: {when: {undo: two}, check: Look at the gap, moment: raised, source: us}
                oil: {when: {undo: two}, check: Look at the oil, moment: on-the-ground, source: us}
              """)
          .procedure(
              "early",
              """
              at: wheel
              behind: [roller-off]
              parts: [{part: new one, count: 1, renews: one}]
              open: [{do: One off, undo: one, uses: mallet}]
              work: [{do: Look round, apply: grease}]
              close: [{do: One on, do-up: one}]
              checks: [{do: Look at the keys, moment: before-lifting}]
              """)
          .procedure(
              "late",
              """
              at: vehicle
              behind: [raise]
              after: [early]
              open: [{do: Two off, undo: two, uses: mallet}]
              work: [{do: Look again}]
              """)
          .procedure(
              "rear",
              """
              at: wheel
              behind: [roller-off]
              after: [early]
              open: [{do: Two off, undo: two}]
              work: [{do: Look again}]
              checks: [{do: Look at the lid, moment: raised}]
              """);

  /** Up, the front wheel with what is behind it, and the rest, in a stage each. */
  private static final Divided LIFTED =
      Divided.of(SHOP.job("hoist", "early at front-left", "late at vehicle"), 3);

  /** The front is up on the first stage, comes down on the second, and then the rear goes up. */
  private static final Divided JACKED =
      Divided.of(SHOP.job("floor", "early at front-left", "rear at rear-left"), 4);

  /** A job in stages that hold. */
  private record Divided(Resolved resolved, Sheet whole, List<Sheet> stages) {
    static Divided of(SmallShop shop, int least) {
      Resolved resolved = shop.resolved();
      TracedPlan plan = Planner.traced(resolved, new Problems()).orElseThrow();
      List<Sheet> stages = Division.of(plan.stages(), least, (sheet, room) -> true).stages();
      assertEquals(least, stages.size());
      assertEquals(List.of(), StageVerifier.faults(plan.sheet(), stages, resolved));
      return new Divided(resolved, plan.sheet(), stages);
    }

    List<String> faults(List<Sheet> altered) {
      return StageVerifier.faults(whole, altered, resolved);
    }

    /** The faults once a stage, counted from 1, is another. */
    List<String> faults(int stage, UnaryOperator<Sheet> change) {
      Sheet one = stages.get(stage - 1);
      return faults(Lists.replaced(stages, one, change));
    }
  }

  private static void assertFault(List<String> faults, String beginning) {
    assertTrue(
        faults.stream().anyMatch(it -> it.startsWith(beginning)), beginning + " in " + faults);
  }

  private static UnaryOperator<Sheet> with(String part, Object other) {
    return sheet -> Altered.with(sheet, part, other);
  }

  private static UnaryOperator<Sheet> more(String part, Object line) {
    return sheet -> {
      List<Object> all = new ArrayList<>((List<?>) Altered.get(sheet, part));
      all.add(line);
      return Altered.with(sheet, part, all);
    };
  }

  private static UnaryOperator<Sheet> ofStage(String part, Object other) {
    return sheet ->
        Altered.with(
            sheet, "stage", Optional.of(Altered.with(sheet.stage().orElseThrow(), part, other)));
  }

  private static <T extends Record> T first(Sheet sheet, String part, String component, Object to) {
    @SuppressWarnings("unchecked")
    T line = (T) ((List<?>) Altered.get(sheet, part)).get(0);
    return Altered.with(line, component, to);
  }

  @Test
  void theStagesAreCounted() {
    assertEquals(List.of("the sheet 2 of 3 is not that stage"), LIFTED.faults(2, ofStage("of", 4)));
    assertEquals(List.of("the sheet 2 of 4 is not that stage"), JACKED.faults(2, ofStage("n", 3)));
    assertEquals(3, LIFTED.faults(2, with("stage", Optional.empty())).size());
  }

  @Test
  void aStepIsAsItIsInTheJob() {
    assertEquals(
        List.of("the steps of the stages are not those of the job"),
        LIFTED.faults(
            2,
            sheet ->
                AlteredSheets.inOrder(
                    sheet,
                    Lists.replaced(
                        sheet.steps(),
                        sheet.steps().get(0),
                        step -> Altered.with(step, "hold", !step.hold())))));
  }

  /** Whatever the job does not need, no stage lays out or says. */
  @Test
  void noStageHasWhatTheJobHasNot() {
    Sheet second = LIFTED.stages().get(1);
    Map<String, UnaryOperator<Sheet>> foreign =
        Map.of(
            "the stages have other tools",
            more("equipment.tools", new Sheet.ToolLine("saw", false, true, false)),
            "the stages have other consumables",
            more("equipment.consumables", new Statement.Written("glue")),
            "the stages have other sources",
            more("sources", new Statement.Written("hearsay")),
            "the stages have other cautions",
            more("safety.cautions", first(second, "safety.cautions", "name", "other")),
            "the stages have other sockets",
            more("equipment.sockets", first(second, "equipment.sockets", "drive", Drive.QUARTER)),
            "the stages have other new parts",
            more("equipment.parts", first(second, "equipment.parts", "part", "new two")),
            "not every removed item of the job stands on one stage",
            more("tally", first(second, "tally", "item", "three")),
            "not every work of the evening before",
            more("evening", new Statement.Written("Book a band")));
    foreign.forEach((fault, change) -> assertFault(LIFTED.faults(2, change), fault));
  }

  @Test
  void everyStageSaysWhatCarriesTheVehicle() {
    List<Sheet> none =
        LIFTED.stages().stream().map(it -> Altered.with(it, "safety.support", List.of())).toList();
    assertFault(LIFTED.faults(none), "the stages have other supports");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "equipment.consumables",
        "equipment.sockets",
        "equipment.parts",
        "safety.cautions",
        "sources",
        "tally",
        "evening",
        "torque",
        "equipment.tools"
      })
  void whatNoStageHasIsMissed(String part) {
    List<Sheet> none =
        LIFTED.stages().stream().map(it -> Altered.with(it, part, List.of())).toList();
    assertTrue(!LIFTED.faults(none).isEmpty());
  }

  @Test
  void everyStageSaysWhatToWear() {
    for (int stage = 1; stage <= 3; stage++) {
      assertEquals(
          List.of("a stage does not say what to wear for the job"),
          LIFTED.faults(stage, with("safety.protect", List.of())));
    }
  }

  @Test
  void everyStageHasTheHeadingAndTheNotesOfTheJob() {
    String fault = "stage 3: heading or notes are not those of the job";
    assertEquals(List.of(fault), LIFTED.faults(3, with("notes", Optional.of("By noon"))));
    assertEquals(List.of(fault), LIFTED.faults(3, with("heading.job", "2")));
  }

  /** The mallet is used on two stages; whoever works from the last has to find it on it. */
  @Test
  void aStageListsTheToolsOfItsOwnSteps() {
    List<String> faults = LIFTED.faults(3, with("equipment.tools", List.of()));
    assertTrue(
        faults.stream().anyMatch(it -> it.startsWith("stage 3: ") && it.contains("mallet")),
        faults.toString());
  }

  @Test
  void aStageHasTheTorqueLinesThatItsStepsName() {
    assertFault(
        LIFTED.faults(2, ofStage("elsewhere", List.of())),
        "stage 2: step 4 names line 1, which is not here");
    List<?> other = List.of(Altered.with(LIFTED.whole().torque().get(0), "count", 3));
    assertFault(
        LIFTED.faults(2, ofStage("elsewhere", other)), "stage 2: line 1 is another one in the job");
  }

  @Test
  void aTorqueLineStandsWhereItIsTightened() {
    Object line = LIFTED.whole().torque().get(0);
    assertFault(
        LIFTED.faults(2, more("torque", line)),
        "torque line 1 at front-left stands on the stages [2, 3], and is tightened on stage 3");
    assertFault(
        LIFTED.faults(
            3, sheet -> with("torque", List.of(first(sheet, "torque", "count", 3))).apply(sheet)),
        "torque line 1 is another one on its stage");
  }

  /** Sides that are worked one after the other on a stage are so in the job. */
  @Test
  void aStageSaysWhichSideIsFirstAsTheJobDoes() {
    assertFault(
        LIFTED.faults(
            2,
            sheet ->
                Altered.with(
                    sheet,
                    "sections",
                    sheet.sections().stream()
                        .map(
                            it ->
                                Altered.with(
                                    it, "oneSideFirst", Optional.of(new Sheet.Stretch(4, 6))))
                        .toList())),
        "stage 2: one side first");
    Divided both = Divided.of(SHOP.job("hoist", "early at front-left", "early at front-right"), 2);
    assertTrue(both.whole().sections().stream().anyMatch(it -> it.oneSideFirst().isPresent()));
    List<Sheet> unsaid =
        both.stages().stream()
            .map(
                sheet ->
                    Altered.with(
                        sheet,
                        "sections",
                        sheet.sections().stream()
                            .map(it -> Altered.with(it, "oneSideFirst", Optional.empty()))
                            .toList()))
            .toList();
    assertTrue(
        both.faults(unsaid).stream().anyMatch(it -> it.contains(": one side first: [], not")));
  }

  @Test
  void workThatNeedsACertificateIsNamedWhereItIsDone() {
    String fault = "the work on the fine work is another one on its stage";
    Sheet second = LIFTED.stages().get(1);
    Object elsewhere = first(second, "safety.qualified", "steps", List.of(5, 7, 10));
    assertFault(LIFTED.faults(2, with("safety.qualified", List.of(elsewhere))), fault);
    QualifiedWork.Holder other = new QualifiedWork.Holder("T9", "Nobody", "F 1", Optional.empty());
    for (String part : List.of("by", "second")) {
      Object named =
          first(second, "safety.qualified", part, part.equals("by") ? other : List.of(other));
      assertEquals(List.of(fault), LIFTED.faults(2, with("safety.qualified", List.of(named))));
    }
    assertFault(
        LIFTED.faults(2, with("safety.qualified", List.of())),
        "not all work on the fine work is named on a stage");
  }

  /** Each check stands on one of the stages where it can still be made in time, or just then. */
  @ParameterizedTest
  @CsvSource({
    "tag, 5, 1",
    "'Look at the keys', 0, 1",
    "open, 3, 1",
    "open, 16, 2",
    "gap, 18, 3 4",
    "oil, 18, 4"
  })
  void aCheckStandsWhereItIsInTime(String name, int because, String inTime) {
    CheckLine check =
        JACKED.whole().checks().stream()
            .filter(it -> it.name().equals(name) || it.text().isWritten(name))
            .filter(it -> because == 0 || it.because().contains(because))
            .findFirst()
            .orElseThrow();
    for (int stage = 1; stage <= 4; stage++) {
      List<Sheet> moved = new ArrayList<>();
      for (Sheet sheet : JACKED.stages()) {
        List<CheckLine> checks = new ArrayList<>(sheet.checks());
        checks.remove(check);
        if (moved.size() == stage - 1) {
          checks.add(check);
        }
        moved.add(Altered.with(sheet, "checks", checks));
      }
      List<String> faults = JACKED.faults(moved);
      String late =
          "the check %s, %s, stands on stage %s".formatted(check.name(), check.moment(), stage);
      assertEquals(
          List.of(inTime.split(" ")).contains("" + stage) ? List.of() : List.of(late), faults);
    }
  }

  @Test
  void aCheckStandsOnOneStage() {
    CheckLine gap = JACKED.stages().get(3).checks().get(0);
    assertFault(
        JACKED.faults(3, more("checks", gap)), "the check " + gap.name() + " stands on 2 stages");
    assertFault(
        JACKED.faults(4, with("checks", List.of())),
        "the check " + gap.name() + " stands on 0 stages");
    assertEquals(List.of(Place.REAR_LEFT), gap.places());
  }

  /** Nobody looks from below at a vehicle that has not gone up yet. */
  @Test
  void whatIsDueRaisedStandsOnAStageThatIsUp() {
    Divided job = Divided.of(SHOP.job("hoist", "early at front-left", "rear at rear-left"), 4);
    Sheet first = job.stages().get(0);
    assertTrue(first.steps().stream().noneMatch(it -> it.moment() == Moment.RAISED));
    List<Sheet> moved = new ArrayList<>();
    CheckLine lid =
        job.whole().checks().stream()
            .filter(it -> it.text().isWritten("Look at the lid"))
            .findFirst()
            .orElseThrow();
    for (Sheet stage : job.stages()) {
      List<CheckLine> checks = new ArrayList<>(stage.checks());
      checks.remove(lid);
      if (stage == first) {
        checks.add(lid);
      }
      moved.add(Altered.with(stage, "checks", checks));
    }
    assertEquals(List.of("the check rear, RAISED, stands on stage 1"), job.faults(moved));
  }
}
