package baysheet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The planner hands on data; the package {@code wording} makes the sentences of a sheet. What
 * problems say stands in a class {@code …Sentences} of a package, and exceptions are for us.
 */
class PlanProseTest {
  private static final Path PLAN = Path.of("src/main/java/baysheet/plan");
  private static final String SENTENCES = "Sentences.java";

  private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//.*$");
  private static final Pattern EXCEPTION =
      Pattern.compile("(?s)new \\w+Exception\\(.*?;", Pattern.MULTILINE);
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern WORDS = Pattern.compile("(?s).*[A-Za-z].* .*|.* .*[A-Za-z].*");

  @Test
  void thePlanHoldsNoProse() {
    List<String> found = new ArrayList<>();
    List<Path> files = Sources.java(PLAN);
    assertTrue(files.size() > 40, "files: " + files.size());
    for (Path file : files) {
      if (!file.getFileName().toString().endsWith(SENTENCES)) {
        prose(Sources.read(file)).forEach(it -> found.add(file + ": " + it));
      }
    }
    assertEquals(List.of(), found);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "return \"Borrow: \" + tool;",
        "String text = \"Ask for the %s: the book gives none\".formatted(words);",
        "/* a \"quoted word\" */ names.add(\"angle gauge\");",
        "throw new IllegalStateException(\"no line\"); // then\n return \", from data\";"
      })
  void aSentenceIsFound(String code) {
    assertEquals(1, prose(code).size(), code);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "String.join(\", \", names) + \" \" + \"torque-of-\";",
        "throw new IllegalStateException(\"no torque line for \" + item);",
        "/** It says {@code \"as found\"}. */ int n;"
      })
  void namesSeparatorsAndFaultsOfOursAreNoProse(String code) {
    assertEquals(List.of(), prose(code));
  }

  private static List<String> prose(String code) {
    String bare = EXCEPTION.matcher(COMMENT.matcher(code).replaceAll("")).replaceAll("");
    List<String> found = new ArrayList<>();
    Matcher literal = LITERAL.matcher(bare);
    while (literal.find()) {
      if (WORDS.matcher(literal.group(1)).matches()) {
        found.add(literal.group(1));
      }
    }
    return found;
  }
}
