package baysheet.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class ProblemTextTest {
  private static final Summary LAST = new Summary(1, 0, 0, 1, "no sheet was written");
  private static final Source JOB =
      new Source("jobs/2417.yaml", "job: 2417\noverride:\n  carier-bolt at front-left: {}\n");

  @Test
  void aProblemIsAPlaceAndSentences() {
    Problem problem =
        Problem.of(
                ProblemCode.UNKNOWN_FASTENER,
                new Span(JOB, 3, 3, 3, 14),
                "no fastener \"carier-bolt\"")
            .expecting("one of wheel-nut, carrier-bolt")
            .near(Optional.of("carrier-bolt"))
            .seeAlso("the book", new Source("jobs/vehicles/pipit.yaml", "").at(14, 3));

    assertEquals(
        """
        jobs/2417.yaml:3:3: error: no fastener "carier-bolt".
            You wrote: carier-bolt at front-left: {}
            Did you mean carrier-bolt?
            Expected: one of wheel-nut, carrier-bolt.
            The book: jobs/vehicles/pipit.yaml, line 14.
            More: baysheet help unknown-fastener

        1 error in 1 file: no sheet was written.
        """,
        print(problem));
  }

  /** GNU Coding Standards, "Formatting Error Messages": source:line:column: message. */
  @Test
  void editorsFindThePlaceInTheFirstLine() {
    Pattern gnu = Pattern.compile("[^:\\n]+:[0-9]+:[0-9]+: (error|warning): [^\\n]+\\.");
    String error = print(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "first"));
    String warning = print(Problem.of(ProblemCode.WRENCH, JOB.at(2, 1), "second"));
    assertTrue(gnu.matcher(error.lines().findFirst().orElseThrow()).matches(), error);
    assertTrue(gnu.matcher(warning.lines().findFirst().orElseThrow()).matches(), warning);
  }

  @Test
  void nothingIsDrawnAroundTheLine() {
    String text =
        print(
            Problem.of(ProblemCode.UNKNOWN_KEY, new Span(JOB, 3, 3, 3, 14), "what")
                .expecting("that"));
    for (String mark : List.of("^", "|", "[", "→", "~~")) {
      assertFalse(text.contains(mark), text);
    }
  }

  @Test
  void aSentenceHasOneFullStop() {
    assertTrue(
        print(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "is it?"))
            .contains("error: is it?\n"));
    assertTrue(
        print(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "it is."))
            .contains("error: it is.\n"));
  }

  @Test
  void whatATerminalWouldObeyIsNotSentToIt() {
    Source source = new Source("a\u001B[2J.yaml", "x\u001B[31m\u202E\n");
    String text =
        print(
            Problem.of(ProblemCode.UNKNOWN_KEY, source.at(1, 1), "bad \u0007 bell")
                .near(Optional.of("\u009B1m"))
                .seeAlso("\u001B]0;title", source.at(1, 1)));
    assertTrue(text.chars().noneMatch(c -> Character.isISOControl(c) && c != '\n'), text);
    assertFalse(text.contains("\u202E"), text);
    assertTrue(text.contains("You wrote: x\uFFFD[31m\uFFFD"), text);
  }

  @Test
  void aLongLineIsCutAroundItsPlace() {
    String line = "a".repeat(500) + "HERE" + "b".repeat(500);
    String written = written(new Source("a.yaml", line).at(1, 501));
    assertTrue(written.startsWith("…") && written.endsWith("…"), written);
    assertTrue(written.contains("HERE") && written.length() <= 82, written);
  }

  @Test
  void theEndOfALongLineIsShownToItsEnd() {
    String line = "a".repeat(500) + "END";
    assertTrue(written(new Source("a.yaml", line).at(1, 501)).endsWith("aEND"));
  }

  private static String written(Span at) {
    String text = print(Problem.of(ProblemCode.UNKNOWN_KEY, at, "what"));
    return text.lines()
        .filter(line -> line.contains("You wrote: "))
        .map(line -> line.replaceFirst(".*?You wrote: ", ""))
        .findFirst()
        .orElse("nothing");
  }

  @Test
  void aLineThatIsEmptyOrWasNotReadIsNotRepeated() {
    assertEquals("nothing", written(new Source("a.yaml", "").whole()));
    assertEquals("nothing", written(new Source("a.yaml", "a: b\n  \nc: d\n").at(2, 1)));
    assertEquals(
        """
        a.yaml:1:1: error: too large.
            More: baysheet help too-large

        1 error in 1 file: no sheet was written.
        """,
        print(Problem.of(ProblemCode.TOO_LARGE, new Source("a.yaml", "").whole(), "too large")));
  }

  @Test
  void noSentenceIsLongerThanAParagraph() {
    String name = "n".repeat(100_000);
    Problem problem =
        Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "no \"" + name + "\"")
            .near(Optional.of(name))
            .expecting(name);
    assertTrue(print(problem).length() < 2_500, "length: " + print(problem).length());
  }

  @Test
  void problemsComeInFileOrderHoweverTheyWereFound() {
    Source other = new Source("jobs/2416.yaml", "x\n");
    List<Problem> found =
        new ArrayList<>(
            List.of(
                Problem.of(ProblemCode.UNKNOWN_KEY, other.at(1, 1), "first"),
                Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "second"),
                Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 6), "third"),
                Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(2, 1), "fourth")));
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
      problems.add(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, column), "slip"));
    }
    Source other = new Source("jobs/2418.yaml", "x\n");
    problems.add(Problem.of(ProblemCode.UNKNOWN_KEY, other.at(1, 1), "elsewhere"));
    String text = ProblemText.print(problems, ProblemText.USUAL_LIMIT, LAST);
    assertEquals(20, text.split(": slip", -1).length - 1);
    assertTrue(text.contains("jobs/2417.yaml: 3 more problems in this file are not shown.\n"));
    assertTrue(text.contains(": elsewhere"));
  }

  @Test
  void aLongListOfWhatWasExpectedIsBrokenBetweenWords() {
    String names = String.join(", ", Collections.nCopies(30, "wheel-nut"));
    String text =
        ProblemText.print(
            List.of(Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "what").expecting(names)),
            20,
            LAST);
    assertTrue(text.lines().allMatch(line -> line.length() <= 100), text);
    assertEquals(30, text.split("wheel-nut", -1).length - 1);
    assertTrue(text.contains("\n        wheel-nut"), text);
  }

  @Test
  void boldIsThereOnlyWhenAskedForAndChangesNoWord() {
    List<Problem> problems =
        List.of(
            Problem.of(ProblemCode.UNKNOWN_KEY, JOB.at(1, 1), "what"),
            Problem.of(ProblemCode.WRENCH, JOB.at(2, 1), "that"));
    String plain = ProblemText.print(problems, 20, LAST);
    String bold = ProblemText.printBold(problems, 20, LAST);
    assertFalse(plain.contains("\u001B"));
    assertTrue(bold.startsWith("\u001B[1mjobs/2417.yaml:1:1: error: what.\u001B[0m\n"), bold);
    assertEquals(plain, bold.replaceAll("\u001B\\[[0-9;]*m", ""));
  }

  private static String print(Problem problem) {
    return ProblemText.print(List.of(problem), 20, LAST);
  }
}
