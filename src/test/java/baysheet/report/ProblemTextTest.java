package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProblemTextTest {
  private static final Summary LAST = new Summary(1, 0, 1, "no sheet was written");
  private static final Source JOB =
      new Source("jobs/2417.yaml", "job: 2417\noverride:\n  carier-bolt at front-left: {}\n");

  @Test
  void aProblemShowsPlaceLineMarkAndWhatHelps() {
    Problem problem =
        Problem.error("unknown-fastener", new Span(JOB, 3, 3, 3, 14), "no fastener \"carier-bolt\"")
            .expecting("one of wheel-nut, carrier-bolt")
            .near(Optional.of("carrier-bolt"))
            .lookedIn("front-wheels", new Source("jobs/vehicles/pipit.yaml", "").at(14, 3));

    assertEquals(
        """
        jobs/2417.yaml:3:3: error[unknown-fastener]: no fastener "carier-bolt"

           3 |   carier-bolt at front-left: {}
             |   ^^^^^^^^^^^

          expected   one of wheel-nut, carrier-bolt
          nearest    carrier-bolt
          looked in  jobs/vehicles/pipit.yaml:14:3  front-wheels

        1 error in 1 file: no sheet was written
        """,
        ProblemText.print(List.of(problem), 20, LAST));
  }

  @Test
  void aPointGetsOneMark() {
    assertEquals("    ^", marks("a: b", 5, 5));
  }

  @Test
  void aMarkBehindWideCharactersStandsBelowItsPlace() {
    // Each of the two ideographs takes two columns of a terminal (Unicode annex 11, class W).
    assertEquals("      ^^^", marks("車輪: nut", 5, 8));
  }

  @Test
  void markedWideCharactersAreMarkedInTheirFullWidth() {
    assertEquals("^^^^", marks("車輪: nut", 1, 3));
  }

  @Test
  void anAccentOfItsOwnTakesNoColumn() {
    assertEquals("     ^^^", marks("re\u0301f: nut", 7, 10));
  }

  @Test
  void aTabIsShownAndMovesTheMark() {
    Excerpt excerpt = Excerpt.of(new Span(JOB, 1, 3, 1, 6), List.of("a\tnut"));
    assertEquals("a→  nut", excerpt.line());
    assertEquals("    ^^^", excerpt.marks());
  }

  @Test
  void whatATerminalWouldObeyIsNotSentToIt() {
    Source source = new Source("a\u001B[2J.yaml", "x\u001B[31m\u202E\n");
    String text =
        ProblemText.print(
            List.of(Problem.error("c", source.at(1, 1), "bad \u0007 bell")), 20, LAST);
    assertFalse(text.contains("\u001B") || text.contains("\u202E") || text.contains("\u0007"));
    assertTrue(text.contains("x\uFFFD[31m\uFFFD"));
  }

  @Test
  void aLongLineIsCutAroundItsMark() {
    String line = "a".repeat(500) + "HERE" + "b".repeat(500);
    Excerpt excerpt = Excerpt.of(new Span(JOB, 1, 501, 1, 505), List.of(line));
    assertTrue(excerpt.line().startsWith("…") && excerpt.line().endsWith("…"));
    assertTrue(Columns.width(excerpt.line()) <= 90, excerpt.line());
    assertEquals(excerpt.line().indexOf("HERE"), excerpt.marks().indexOf("^^^^"));
    assertEquals(4, excerpt.marks().strip().length());
  }

  @Test
  void theEndOfALongLineIsShownToItsEnd() {
    String line = "a".repeat(500) + "END";
    Excerpt excerpt = Excerpt.of(new Span(JOB, 1, 501, 1, 504), List.of(line));
    assertTrue(excerpt.line().endsWith("END"));
  }

  @Test
  void aSpanOverLinesIsMarkedToTheEndOfItsFirst() {
    Excerpt excerpt = Excerpt.of(new Span(JOB, 1, 4, 3, 2), List.of("a: 'b c   ", "d", "e'"));
    assertEquals("   ^^^^", excerpt.marks());
  }

  @Test
  void aFileThatCouldNotBeReadHasNoExcerpt() {
    Problem problem = Problem.error("too-large", new Source("a.yaml", "").whole(), "too large");
    assertEquals(
        "a.yaml:1:1: error[too-large]: too large\n\n1 error in 1 file: no sheet was written\n",
        ProblemText.print(List.of(problem), 20, LAST));
  }

  @Test
  void problemsComeInFileOrderHoweverTheyWereFound() {
    Source other = new Source("jobs/2416.yaml", "x\n");
    List<Problem> found =
        new ArrayList<>(
            List.of(
                Problem.error("c", other.at(1, 1), "first"),
                Problem.error("c", JOB.at(1, 1), "second"),
                Problem.error("c", JOB.at(1, 6), "third"),
                Problem.error("c", JOB.at(2, 1), "fourth")));
    String inOrder = ProblemText.print(found, 20, LAST);
    Collections.reverse(found);
    assertEquals(inOrder, ProblemText.print(found, 20, LAST));
    assertTrue(inOrder.indexOf("first") < inOrder.indexOf("second"));
    assertTrue(inOrder.indexOf("third") < inOrder.indexOf("fourth"));
  }

  @Test
  void ofManyInOneFileOnlyTheLimitIsPrintedAndTheRestCounted() {
    List<Problem> problems = new ArrayList<>();
    for (int column = 1; column <= 23; column++) {
      problems.add(Problem.error("c", JOB.at(1, column), "slip"));
    }
    Source other = new Source("jobs/2418.yaml", "x\n");
    problems.add(Problem.error("c", other.at(1, 1), "elsewhere"));
    String text = ProblemText.print(problems, ProblemText.USUAL_LIMIT, LAST);
    assertEquals(20, text.split(": slip", -1).length - 1);
    assertTrue(text.contains("jobs/2417.yaml: 3 more problems\n"));
    assertTrue(text.contains(": elsewhere"));
  }

  @Test
  void aLongListOfWhatWasExpectedIsBrokenBetweenWords() {
    String names = String.join(", ", Collections.nCopies(30, "wheel-nut"));
    String text =
        ProblemText.print(
            List.of(Problem.error("c", JOB.at(1, 1), "what").expecting(names)), 20, LAST);
    assertTrue(text.lines().allMatch(line -> line.length() <= 100), text);
    assertEquals(30, text.split("wheel-nut", -1).length - 1);
    assertTrue(text.contains("\n             wheel-nut"), text);
  }

  @Test
  void colourIsThereOnlyWhenAskedForAndChangesNoWord() {
    List<Problem> problems =
        List.of(
            Problem.error("c", JOB.at(1, 1), "what"), Problem.warning("w", JOB.at(2, 1), "that"));
    String plain = ProblemText.print(problems, 20, LAST);
    String coloured = ProblemText.printColoured(problems, 20, LAST);
    assertFalse(plain.contains("\u001B"));
    assertTrue(coloured.contains("\u001B[1;31merror[c]\u001B[0m"));
    assertTrue(coloured.contains("\u001B[1;33mwarning[w]\u001B[0m"));
    assertEquals(plain, coloured.replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  private static String marks(String line, int column, int endColumn) {
    return Excerpt.of(new Span(JOB, 1, column, 1, endColumn), List.of(line)).marks();
  }
}
