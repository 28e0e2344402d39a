package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Console;
import baysheet.output.Exit;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The name of the program alone, and runs that only look. */
class NextStepTest {
  /** A word of a command line; spaces between double quotes belong to it. */
  private static final Pattern WORD = Pattern.compile("(?:\"[^\"]*\"|[^\" ])+");

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "2026-04-07, There are 3 jobs for today, baysheet sheets",
    "2026-04-06, There are 3 jobs for 2026-04-07, baysheet sheets",
    "2026-04-08, There are no jobs for today, baysheet check",
  })
  void inAShopItNamesTheJobsThatAreDue(String day, String said, String command) {
    Garage garage = Garage.in(folder);
    String text = new NextStep(Optional.of(garage.root), () -> LocalDate.parse(day)).text();
    assertTrue(text.contains(said), text);
    assertTrue(text.contains("\n    " + command), text);
    assertEquals(day.equals("2026-04-07"), text.contains("\n    baysheet sheets\n"), text);
  }

  @Test
  void elsewhereItNamesTheCommandThatMakesAShop() {
    String text = new NextStep(Optional.empty(), () -> LocalDate.MAX).text();
    assertTrue(text.contains("\n    baysheet start my-garage\n"), text);
  }

  @Test
  void theNameAloneIsNoMistake() {
    // The tests run where the demo shop is.
    Garage.Run run = Garage.in(folder).run();
    assertEquals(Exit.DONE, run.exit());
    run.says("There are no jobs for today, 2026-04-07.");
    run.says("baysheet help\n");
  }

  @Test
  void aDryRunWritesNothing() throws Exception {
    Garage garage = Garage.in(folder);
    Garage.Run run = garage.sheets("--dry-run");
    assertEquals(Exit.DONE, run.exit(), run.err());
    run.says("502  bay ");
    run.says("3 of 3 sheets can be made; nothing was written");
    assertTrue(Files.notExists(garage.out), "no folder, no ledger");
    garage.change("2026-04-07/501.yaml", "job: 501", "jub: 501");
    Garage.Run faulty = garage.sheets("--dry-run");
    assertEquals(Exit.PROBLEMS, faulty.exit());
    faulty.says("2 of 3 sheets can be made; nothing was written");
    assertTrue(Files.notExists(garage.out));
  }

  /** Each command shows how it is typed; an example that is not understood would mislead. */
  @Test
  void eachCommandHasAnExampleThatIsUnderstood() {
    Console console = new Console(new PrintWriter(System.out), new PrintWriter(System.err), false);
    CommandLine program = Main.commandLine("", console, () -> LocalDate.MIN);
    program
        .getSubcommands()
        .forEach(
            (name, command) -> {
              List<String> examples = Examples.of(name);
              assertTrue(!examples.isEmpty(), name);
              for (String example : examples) {
                String[] words =
                    WORD.matcher(example)
                        .results()
                        .map(it -> it.group().replace("\"", ""))
                        .toArray(String[]::new);
                assertEquals("baysheet", words[0]);
                assertEquals(name, words[1]);
                program.parseArgs(Arrays.copyOfRange(words, 1, words.length));
              }
            });
  }
}
