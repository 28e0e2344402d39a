package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.yaml.Node;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples on the pages about faults of these files are what the pages say they are. */
class ExplainedExamplesTest {
  private static final Pattern EXAMPLE = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "absent-and-given",
        "bad-class",
        "bad-drive",
        "bad-head",
        "bad-order",
        "bad-passes",
        "bad-points",
        "bad-quantity",
        "bad-thread",
        "bad-time",
        "bad-torque",
        "bad-unit",
        "bad-wrench",
        "empty-trigger",
        "listed-twice",
        "missing-place",
        "name-differs",
        "names-itself",
        "no-steps",
        "no-work",
        "same-person",
        "unknown-circuit",
        "slackened-or-removed",
        "unknown-item",
        "unknown-kind",
        "unknown-place",
        "unused-back"
      })
  void theFirstExampleHasTheFaultAndTheSecondHasNone(String code) {
    List<String> examples =
        EXAMPLE
            .matcher(ProblemCode.of(code).orElseThrow().page())
            .results()
            .map((MatchResult example) -> example.group(1))
            .toList();
    assertEquals(2, examples.size());
    assertTrue(codes(examples.get(0)).contains(code), code + ": " + codes(examples.get(0)));
    assertEquals(List.of(), codes(examples.get(1)));
  }

  private static List<String> codes(String text) {
    Problems problems = new Problems();
    Shelf.parse(text, problems).ifPresent(node -> read(node, text, problems));
    return problems.all().stream().map(problem -> problem.code().word()).toList();
  }

  /** A page shows no more of a file than it must; the first key shows which part it is. */
  private static void read(Node node, String text, Problems problems) {
    switch (text.replaceAll("(?s):.*", "")) {
      case "count" -> FastenerReader.WHOLE.read(node, problems);
      case "do" -> StepReader.STEP.read(node, problems);
      case "sockets", "wrenches" -> CribReader.CRIB.read(node, problems);
      case "torque" -> ShopReader.UNITS.read(node, problems);
      case "job" -> JobReader.read(node, "2417", problems);
      case "procedure" -> ProcedureReader.read(node, problems);
      default -> Shelf.read(node, text, "example", problems);
    }
  }
}
