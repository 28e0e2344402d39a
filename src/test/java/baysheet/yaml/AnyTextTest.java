package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.ProblemJson;
import baysheet.report.ProblemText;
import baysheet.report.Problems;
import baysheet.report.Span;
import baysheet.report.Summary;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever stands in a file, reading it ends with a tree or a problem, and never throws. */
class AnyTextTest {
  /** One of each reader, so that any node is met by every reader somewhere. */
  private static final List<ValueReader<?>> READERS =
      List.of(
          ValueReaders.text(),
          ValueReaders.name(),
          ValueReaders.wholeNumber(1, 99),
          ValueReaders.yesNo(),
          ValueReaders.date(),
          ValueReaders.list(ValueReaders.listOrOne(ValueReaders.date())),
          ValueReaders.map(
              "a map",
              ValueReaders::nameOf,
              ValueReaders.<Object>scalarOr(
                  ValueReaders.text(), ValueReaders.list(ValueReaders.yesNo()))),
          ValueReaders.record("a bay", map -> map.build(() -> map.yesNo("a", false))));

  @Property(tries = 500)
  void anyStringIsReadWithoutThrowing(@ForAll String text) {
    readAndPrint(text);
  }

  @Property(tries = 5000)
  void anyTextOfSignsThatMeanSomethingIsReadWithoutThrowing(@ForAll("signs") String text) {
    readAndPrint(text);
  }

  @Property(tries = 2000)
  void aTextThatReadsWellReadsTheSameWithOtherLineEnds(@ForAll("signs") String text) {
    Problems problems = new Problems();
    Optional<Node> node = Texts.parse(text, problems);
    Problems others = new Problems();
    Optional<Node> other = Texts.parse(text.replace("\n", "\r\n"), others);
    assertEquals(Texts.told(problems), Texts.told(others));
    assertEquals(node.map(Node::shape), other.map(Node::shape));
  }

  @Provide
  Arbitrary<String> signs() {
    return Arbitraries.of(
            "a",
            "b",
            "key",
            "1",
            "é",
            "車",
            "🔧",
            " ",
            "  ",
            "\n",
            "\n",
            "\n  ",
            "\n    ",
            ": ",
            ":",
            "- ",
            "-",
            "? ",
            "?",
            "[",
            "]",
            "{",
            "}",
            ", ",
            ",",
            "'",
            "\"",
            "\\",
            "\\U",
            "\\x4",
            "#",
            " # ",
            "|",
            ">",
            "|2-\n",
            "%",
            "%YAML 1.1\n",
            "%TAG ! x\n",
            "@",
            "`",
            "&a",
            "*a",
            "!",
            "!!str ",
            "!<",
            "<<: ",
            "---\n",
            "\n...\n",
            "\t",
            "~",
            "=",
            "°",
            "\u0000",
            "\uFEFF")
        .list()
        .ofMaxSize(40)
        .map(pieces -> String.join("", pieces));
  }

  private static void readAndPrint(String text) {
    Problems problems = new Problems();
    Optional<Node> node = Texts.parse(text, problems);
    assertTrue(node.isPresent() || problems.hasErrors());
    node.ifPresent(tree -> READERS.forEach(reader -> reader.read(tree, problems)));
    List<Problem> all = problems.all();
    long lines = Math.max(1, text.lines().count());
    all.forEach(problem -> assertInside(problem.at(), lines));
    Summary summary = Summary.of(all, "");
    assertTrue(ProblemText.print(all, 20, summary).endsWith(summary.line() + "\n"));
    assertTrue(ProblemJson.print(all, summary).endsWith("}\n"));
  }

  private static void assertInside(Span at, long lines) {
    assertTrue(at.endLine() <= lines, at + " ends on " + at.endLine() + " of " + lines);
  }
}
