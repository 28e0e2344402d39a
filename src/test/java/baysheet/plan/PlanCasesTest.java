package baysheet.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.sheet.Sheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Situations that a technician knows, each a shop folder of its own with the sequence beside it
 * that somebody worked out by hand. {@code sheet.txt} holds what else must be on the sheet: of each
 * kind of line that it has, all lines. {@code problems.txt} stands where there must be no sheet.
 * {@code -Dupdate} writes the files anew; read them before keeping them.
 */
class PlanCasesTest {
  private static final int FEWEST_CASES = 12;

  static List<Path> cases() {
    return CaseFolders.cases();
  }

  @Test
  void noCaseWentMissing() {
    assertTrue(cases().size() >= FEWEST_CASES, cases().toString());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aTechnicianWouldWorkInThisOrder(Path folder) throws IOException {
    Problems problems = new Problems();
    Optional<Sheet> sheet = Planner.plan(CaseFolders.job(folder).resolved(), problems);
    if (sheet.isEmpty()) {
      compare(folder.resolve("problems.txt"), told(problems));
      return;
    }
    compare(folder.resolve("sequence.txt"), PlanText.sequence(sheet.get()));
    Path more = folder.resolve("sheet.txt");
    if (Files.exists(more)) {
      compare(more, like(Files.readString(more), PlanText.print(sheet.get())));
    }
  }

  private static String told(Problems problems) {
    return problems.all().stream().map(PlanCasesTest::told).collect(Collectors.joining("\n"))
        + "\n";
  }

  private static String told(Problem problem) {
    return problem.at() + " " + problem.code().word() + ": " + problem.what();
  }

  /** The lines of a sheet that begin with a word with which some expected line begins. */
  private static String like(String expected, String printed) {
    Set<String> kinds = expected.lines().map(PlanCasesTest::kind).collect(Collectors.toSet());
    return printed
        .lines()
        .filter(line -> kinds.contains(kind(line)))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  private static String kind(String line) {
    return line.substring(0, line.indexOf(' '));
  }

  /** No-break spaces are compared as spaces, so that the files can be typed. */
  private static void compare(Path file, String text) throws IOException {
    String plain = text.replace('\u00a0', ' ');
    if (System.getProperty("update") != null) {
      Files.writeString(file, plain);
    }
    assertEquals(Files.readString(file), plain, file.toString());
  }
}
