package baysheet.books;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reads every file under {@code cases/read}. Above a faulty line stands what is to be reported of
 * it: {@code # problem: CODE at TEXT, nearest NAME}, where TEXT stands once in the line and begins
 * where the problem points. A file without such comments has to be free of problems.
 */
class ReadCasesTest {
  private static final Pattern EXPECTED =
      Pattern.compile("\\s*# problem: ([a-z0-9-]+) at (.+?)(?:, nearest (.+))?");

  @ParameterizedTest
  @MethodSource("files")
  void aFileHasTheProblemsThatItSays(Path file) throws IOException {
    String text = Files.readString(file, StandardCharsets.UTF_8);
    assertEquals(
        String.join("\n", expected(text)),
        String.join("\n", found(text, stem(file))),
        file::toString);
  }

  /** So that a folder that is not found any more does not pass for one without a fault. */
  @Test
  void noCaseIsPassedOver() throws IOException {
    List<String> problems = new ArrayList<>();
    for (Path file : files().toList()) {
      problems.addAll(expected(Files.readString(file, StandardCharsets.UTF_8)));
    }
    assertTrue(files().count() >= 44, "files: " + files().count());
    assertTrue(problems.size() >= 255, "problems: " + problems.size());
  }

  static Stream<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(Shelf.CASES)) {
      return all.filter(path -> path.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  private static String stem(Path file) {
    return file.getFileName().toString().replace(".yaml", "");
  }

  private static List<String> found(String text, String name) {
    Problems problems = new Problems();
    Shelf.parse(text, problems).ifPresent(node -> Shelf.read(node, text, name, problems));
    return problems.all().stream().map(ReadCasesTest::line).sorted().toList();
  }

  private static String line(Problem problem) {
    return line(
        problem.at().line(),
        problem.at().column(),
        problem.code().word(),
        problem.nearest().orElse(""));
  }

  private static String line(int line, int column, String code, String nearest) {
    return String.format(Locale.ROOT, "%3d:%-3d %s %s", line, column, code, nearest).strip();
  }

  private static List<String> expected(String text) {
    List<String> expected = new ArrayList<>();
    List<Matcher> waiting = new ArrayList<>();
    List<String> lines = text.lines().toList();
    for (int n = 1; n <= lines.size(); n++) {
      String line = lines.get(n - 1);
      Matcher problem = EXPECTED.matcher(line);
      if (problem.matches()) {
        waiting.add(problem);
      } else {
        for (Matcher its : waiting) {
          String nearest = its.group(3) == null ? "" : its.group(3);
          expected.add(line(n, column(line, its.group(2)), its.group(1), nearest));
        }
        waiting.clear();
      }
    }
    return expected.stream().sorted().toList();
  }

  private static int column(String line, String text) {
    int at = line.indexOf(text);
    assertTrue(at >= 0 && at == line.lastIndexOf(text), "once in the line: " + text);
    return line.codePointCount(0, at) + 1;
  }
}
