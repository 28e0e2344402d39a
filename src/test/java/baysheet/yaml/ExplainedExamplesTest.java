package baysheet.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The examples on the pages about faults of reading are what the pages say they are. */
class ExplainedExamplesTest {
  private static final Pattern EXAMPLE = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

  private static final ValueReader<String> BAY =
      ValueReaders.record(
          "a bay",
          map -> {
            var number = map.required("number", ValueReaders.wholeNumber(1, 99));
            map.optional("name", ValueReaders.name());
            map.optional("lift", ValueReaders.oneOf(Map.of("two-post", 2)));
            map.optional("jack", ValueReaders.text());
            map.atMostOneOf(List.of("lift", "jack"));
            map.optional("rated", ValueReaders.value(ExplainedExamplesTest::mass));
            map.optional("checked", ValueReaders.date());
            map.optional("in-use", ValueReaders.yesNo());
            return map.build(() -> number.get().value().toString());
          });

  private static ParseOutcome<String> mass(String text) {
    return text.endsWith(" kg")
        ? ParseOutcome.ok(text)
        : ParseOutcome.bad("this mass has no unit", "a mass, as in 3200 kg");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "unknown-key",
        "missing-key",
        "duplicate-key",
        "wrong-shape",
        "empty-value",
        "keys-clash",
        "not-a-name",
        "not-a-number",
        "out-of-range",
        "not-yes-no",
        "not-a-date",
        "not-one-of",
        "bad-value",
        "control-character",
        "tab-indent",
        "bad-indent",
        "unclosed-quote",
        "unclosed-bracket",
        "missing-colon",
        "stray-colon",
        "needs-quotes",
        "bad-escape",
        "alias-not-allowed",
        "tag-not-allowed",
        "key-not-text",
        "several-documents",
        "yaml-syntax"
      })
  void theFirstExampleHasTheFaultAndTheSecondHasNone(String code) {
    List<String> examples = examples(code);
    assertEquals(2, examples.size());
    assertTrue(codes(examples.get(0)).contains(code), code + ": " + codes(examples.get(0)));
    assertEquals(List.of(), codes(examples.get(1)));
  }

  private static List<String> examples(String code) {
    Matcher example = EXAMPLE.matcher(ProblemCode.of(code).orElseThrow().page());
    List<String> found = new ArrayList<>();
    while (example.find()) {
      found.add(example.group(1));
    }
    return found;
  }

  private static List<String> codes(String text) {
    Problems problems = new Problems();
    Optional<Node> node = Texts.parse(text, problems);
    node.ifPresent(tree -> BAY.read(tree, problems));
    return problems.all().stream().map(problem -> problem.code().word()).toList();
  }
}
