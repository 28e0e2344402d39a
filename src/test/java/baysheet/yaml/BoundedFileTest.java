package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a file holds is bounded, and a text never ends before its end without a word. */
class BoundedFileTest {
  private static Optional<Node> parse(String text, Problems problems) {
    return YamlFile.parse(new Source("test.yaml", text), problems);
  }

  private static List<ProblemCode> codes(String text) {
    Problems problems = new Problems();
    parse(text, problems);
    return problems.all().stream().map(Problem::code).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"notes: %s", "notes: '%s'", "notes: |\n  %s\n", "[%s]", "- a\n- %s"})
  void aValueHoldsAPageOfTextAndNoMore(String file) {
    assertEquals(List.of(), codes(file.formatted("x".repeat(YamlFile.MAX_TEXT - 1))));
    assertEquals(
        List.of(ProblemCode.TEXT_TOO_LONG),
        codes(file.formatted("x".repeat(YamlFile.MAX_TEXT + 1))));
  }

  @Test
  void aFileWithATooLongValueIsNotUsed() {
    Problems problems = new Problems();
    assertTrue(parse("a: b\nnotes: " + "x".repeat(5_000), problems).isEmpty());
  }

  @Test
  void aListOrMapIsBounded() {
    int most = YamlFile.MAX_ENTRIES;
    assertEquals(List.of(), codes("- a\n".repeat(most)));
    assertEquals(List.of(ProblemCode.LIST_TOO_LONG), codes("- a\n".repeat(most + 1)));
    StringBuilder map = new StringBuilder();
    for (int i = 0; i <= most; i++) {
      map.append('k').append(i).append(": v\n");
    }
    assertEquals(List.of(ProblemCode.LIST_TOO_LONG), codes(map.toString()));
  }

  /** Recursion over a pattern's repeats ended the run; six thousand characters were enough. */
  @ParameterizedTest
  @ValueSource(strings = {"a-", "a", " ", "-", "at ", "on ", "1.", "_"})
  void aNameOfAnyLengthIsReadOrRefusedAtOnce(String piece) {
    String text = piece.repeat(YamlFile.MAX_TEXT / piece.length() - 1) + "a!";
    Problems problems = new Problems();
    Node node = new Scalar(text, true, new Source("test.yaml", text).whole());
    assertTimeoutPreemptively(
        Duration.ofSeconds(2),
        () -> assertTrue(ValueReaders.name().read(node, problems).isEmpty()));
    assertTrue(problems.all().get(0).what().length() < 120, problems.all().get(0).what());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "notes: Bolt #3 is cracked|1:13",
        "notes: Bolt # 3 is cracked|1:13",
        "- Bolt #3 is cracked|1:8",
        "notes: Bolt  #3 is cracked|1:14",
        "notes: Ölfilter ändern #3|1:24",
        "{notes: Bolt #3\\n}|1:14"
      })
  void aTextThatASignCutsIsWarnedOf(String file, String place) {
    Problems problems = new Problems();
    assertTrue(parse(file.replace("\\n", "\n"), problems).isPresent());
    Problem problem = problems.all().get(0);
    assertEquals(ProblemCode.TEXT_CUT, problem.code());
    assertFalse(problem.isError());
    assertEquals("test.yaml:" + place, problem.at().toString());
  }

  /** A hash sign without a space before it, or in quotes, is part of the text. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "band: 5 %   # where a spec book gives no tolerance",
        "band: 5 %  # where",
        "band: 5 %  #",
        "notes: 'Bolt #3 is cracked'",
        "notes: \"Bolt #3 is cracked\" #3",
        "notes: Bolt#3",
        "notes: |\n  Bolt #3 is cracked\n",
        "# Bolt #3\nnotes: a",
        "notes: # below\n  a",
        "state: [a, b] #3"
      })
  void aCommentOfItsOwnIsNot(String file) {
    assertEquals(List.of(), codes(file));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "customer: דוד",
        "customer: \"\\u05d3\"",
        "- محمد",
        "customer: A. ߒ Miller",
        "ܐ: a"
      })
  void aScriptFromRightToLeftIsRefused(String file) {
    assertEquals(List.of(ProblemCode.RIGHT_TO_LEFT), codes(file));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"customer: Αθηνά", "customer: Женя", "customer: José  # דוד", "customer: ½ ⌀ → 3"})
  void otherScriptsAreNot(String file) {
    assertTrue(!codes(file).contains(ProblemCode.RIGHT_TO_LEFT));
  }
}
