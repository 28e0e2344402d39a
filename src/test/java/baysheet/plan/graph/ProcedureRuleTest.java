package baysheet.plan.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import baysheet.plan.SmallShop;
import baysheet.report.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A slip in one procedure is reported once, at the step that has it; what makes sense is not. */
class ProcedureRuleTest {
  private static List<String> codes(String text) {
    return problems(text).stream().map(problem -> problem.code().word()).toList();
  }

  private static List<Problem> problems(String text) {
    return SmallShop.empty()
        .procedure("own", "at: vehicle\n" + text)
        .job("floor", "own at vehicle")
        .problems();
  }

  @Test
  void whatComesOffOnceAndGoesBackOnceIsRight() {
    assertEquals(List.of(), codes("open: [{do: Lid off, undo: lid}]\nwork: [{do: Look}]"));
    assertEquals(
        List.of(), codes("open: [{do: Lid off, undo: lid}]\nclose: [{do: Lid on, do-up: lid}]"));
  }

  /**
   * The writer finds both steps, and reads of one slip once, although the lid goes on twice too.
   */
  @Test
  void whatIsOffAlreadyIsReportedWithTheStepThatTookItOff() {
    List<Problem> problems =
        problems("open:\n  - {do: Lid off, undo: lid}\n  - {do: Lid off again, undo: lid}");
    assertEquals(List.of("done-twice"), words(problems));
    assertEquals("lid at vehicle is removed, but it is already off", problems.get(0).what());
    assertEquals(1, problems.get(0).related().size());
    assertEquals(problems.get(0).at().line() - 1, problems.get(0).related().get(0).at().line());
  }

  private static List<String> words(List<Problem> problems) {
    return problems.stream().map(problem -> problem.code().word()).toList();
  }

  /** Both are in one line: it needs no pointer to itself. */
  @Test
  void oneStepThatTakesAThingOffTwiceIsReportedByItself() {
    List<Problem> problems = problems("open: [{do: Lid off, undo: [lid, lid at vehicle]}]");
    assertEquals(List.of("done-twice"), words(problems));
    assertEquals(List.of(), problems.get(0).related());
  }

  @Test
  void whatIsOnAlreadyIsReportedOnce() {
    List<Problem> problems =
        problems(
            "open: [{do: Lid off, undo: lid}]\nclose: [{do: Lid on, do-up: lid}, {do: Lid on"
                + " again, do-up: lid}, {do: Lid on once more, do-up: lid}]");
    assertEquals(List.of("done-twice"), words(problems));
    assertEquals("lid at vehicle is refitted, but it is already on", problems.get(0).what());
  }

  /** A part may come off a second time once it is back on. */
  @Test
  void whatCameOffAndWentBackMayComeOffAgain() {
    assertEquals(
        List.of(),
        codes(
            "open: [{do: Lid off, undo: lid}]\n"
                + "work: [{do: Lid on, do-up: lid}, {do: Lid off again, undo: lid}]\n"
                + "close: [{do: Lid on for good, do-up: lid}]"));
  }

  /** A lid that is on in the work and comes off once more must go back on in the end. */
  @Test
  void whatIsNeverRefittedIsReportedWhereItCameOff() {
    List<Problem> problems =
        problems(
            "open:\n  - {do: Lid off, undo: lid}\nwork:\n  - {do: Lid on, do-up: lid}\n"
                + "  - {do: Lid off again, undo: lid}");
    assertEquals(List.of("left-off"), words(problems));
    assertEquals("lid at vehicle is removed and never refitted", problems.get(0).what());
  }

  @Test
  void whatNobodyRemovesCannotBeRefitted() {
    assertEquals(List.of("never-off"), codes("work: [{do: Lid on, do-up: lid}]"));
  }

  /** One procedure may put back what another one of the same job takes off. */
  @Test
  void whatAnotherProcedureRemovesMayBeRefitted() {
    for (String block : List.of("open", "work", "close")) {
      SmallShop shop =
          SmallShop.empty()
              .procedure("first", "at: vehicle\n" + block + ": [{do: Lid off, undo: lid}]")
              .procedure("second", "at: vehicle\nafter: [first]\nwork: [{do: Lid on, do-up: lid}]");
      List<Problem> problems =
          shop.job("floor", "first at vehicle", "second at vehicle").problems();
      assertEquals(
          List.of(),
          problems.stream().filter(it -> it.code().word().equals("never-off")).toList(),
          block);
    }
  }

  /** The evening before, nobody takes anything apart; after the work all is together. */
  @Test
  void nothingComesOffOnTheEveningBeforeOrOnceTheVehicleIsDown() {
    for (String moment : List.of("evening-before", "on-the-ground", "hand-over")) {
      List<Problem> problems =
          problems("open: [{do: Lid off, undo: lid, moment: %s}]".formatted(moment));
      assertEquals(
          "nothing can be removed at the moment " + moment,
          problems.stream()
              .filter(it -> it.code().word().equals("wrong-moment"))
              .map(Problem::what)
              .findFirst()
              .orElse("no problem"));
    }
    assertEquals(List.of(), codes("open: [{do: Lid off, undo: lid, moment: before-lifting}]"));
  }

  /** Before the vehicle goes up nothing is put together yet. */
  @Test
  void nothingGoesOnBeforeTheVehicleIsUp() {
    String procedure =
        "open: [{do: Lid off, undo: lid}]\nclose: [{do: Lid on, do-up: lid, moment: %s}]";
    for (String moment : List.of("evening-before", "before-lifting")) {
      List<Problem> problems = problems(procedure.formatted(moment));
      assertEquals(
          "nothing can be refitted at the moment " + moment,
          problems.stream()
              .filter(it -> it.code().word().equals("wrong-moment"))
              .map(Problem::what)
              .findFirst()
              .orElse("no problem"));
    }
    assertEquals(List.of(), codes(procedure.formatted("on-the-ground")));
  }
}
