package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import baysheet.report.ProblemCode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each file under {@code cases/problem} is named after a code, changes a shop folder so that it has
 * this problem, and ends with all that is printed about it: one cause, one message. {@code
 * -Dupdate} rewrites what is printed.
 */
class ProblemCasesTest {
  private static final Path CASES = Path.of("src/test/resources/cases/problem");

  /**
   * Produced by the machine, by a fault of the tool or by very large jobs; and what is wrong with a
   * ledger or a signed form, which {@code ChainTest}, {@code LedgerFaultsTest}, {@code
   * LedgerCommandsTest} and {@code CarriedJobsTest} try.
   */
  private static final Set<ProblemCode> WITHOUT_CASE =
      EnumSet.of(
          ProblemCode.TOOL_FAULT,
          ProblemCode.NOT_ENOUGH_MEMORY,
          ProblemCode.ORDER_NOT_PROVEN,
          ProblemCode.BOX_OPEN,
          ProblemCode.LAPSED_WRENCH,
          ProblemCode.LEDGER_LINE,
          ProblemCode.LEDGER_TORN,
          ProblemCode.NO_REVISION_LEFT,
          ProblemCode.NOT_ISSUED,
          ProblemCode.OTHER_SHEET,
          ProblemCode.OUTSIDE_BAND,
          ProblemCode.UNKNOWN_BOX);

  @TempDir private Path folder;

  static List<Path> cases() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.sorted().toList();
    }
  }

  private static ProblemCode code(Path file) {
    String word = file.getFileName().toString().replaceFirst("(@[a-z0-9-]+)?\\.txt$", "");
    return ProblemCode.of(word)
        .orElseThrow(() -> new AssertionError(file + " is not named after a code"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void aProblemIsPrintedOnceAndInSentences(Path file) throws IOException {
    ProblemCase it = ProblemCase.read(file);
    Garage.Run run = it.run(Garage.in(folder));
    if (System.getProperty("update") != null && !it.isOpen()) {
      Files.writeString(file, it.printing(run.err()));
      return;
    }
    ProblemCode code = code(file);
    if (!it.fits(run.err())) {
      assertEquals(it.prints(), run.err());
    }
    assertEquals(exit(code), run.exit());
    List<String> more = run.err().lines().filter(line -> line.contains("More: ")).toList();
    // Those that count many others stand before them.
    boolean counts = code == ProblemCode.MORE_PROBLEMS || code == ProblemCode.MORE_WARNINGS;
    assertEquals(
        List.of("    More: baysheet help " + code.word()), counts ? more.subList(0, 1) : more);
  }

  private static int exit(ProblemCode code) {
    if (code == ProblemCode.CANNOT_READ) {
      return Exit.FILES;
    }
    return code.severity() == ProblemCode.Severity.ERROR ? Exit.PROBLEMS : Exit.DONE;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void nothingOfTheToolItselfIsPrinted(Path file) throws IOException {
    String printed = ProblemCase.read(file).prints();
    for (String inner :
        List.of("Exception", "[at=", "Optional", "=[", "\tat ", "[^", "\\s", "java.", "\u00A0")) {
      assertFalse(printed.contains(inner), inner + " in\n" + printed);
    }
    printed.lines().forEach(line -> assertTrue(line.length() <= 300, line));
  }

  @Test
  void everyCodeHasACase() throws IOException {
    Set<ProblemCode> without = EnumSet.allOf(ProblemCode.class);
    without.removeAll(cases().stream().map(ProblemCasesTest::code).collect(Collectors.toSet()));
    assertEquals(WITHOUT_CASE, without);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "does-not-fit     | vehicles/hollin-wren-2014.yaml | torque: 105 N·m | torque: 105 lbf·in",
        "wrench           | shop.yaml | calibrated: 2025-12-01 | calibrated: 2024-12-01",
        "thread-treatment | procedures/wheel-off.yaml      | do-up: [wheel, wheel-nut]"
            + " | 'do-up: [wheel, wheel-nut], apply: grease on wheel-nut'"
      })
  void aWarningIsOnTheSheet(String code, String file, String what, String with) {
    Garage garage = Garage.in(folder);
    garage.change(file, what, with);
    garage.sheets("--record");
    String record = new String(Garage.bytes(garage.made("501.json")), StandardCharsets.UTF_8);
    assertTrue(record.contains("\"code\":\"" + code + "\""), record);
  }
}
