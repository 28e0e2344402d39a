package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.output.Exit;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of slip in a command line, for every command: what is answered, in which form. */
class CommandLineSlipsTest {
  @TempDir private Path folder;
  private Garage garage;

  @BeforeEach
  void open() {
    garage = Garage.in(folder);
  }

  /** The answer to a wrong command line; its words are parted at blanks, and _ is an empty one. */
  private List<String> answer(String words) {
    String[] arguments =
        Stream.of(words.split(" "))
            .filter(word -> !word.isEmpty())
            .map(word -> word.equals("_") ? "" : word)
            .map(word -> word.replace("JOB", garage.job("501").toString()))
            .map(word -> word.replace("SHOP", garage.root.toString()))
            .toArray(String[]::new);
    Garage.Run run = garage.run(arguments);
    assertEquals(Exit.USAGE, run.exit(), run.out() + run.err());
    assertEquals("", run.out());
    assertEquals(List.of(), List.copyOf(garage.written().keySet()));
    List<String> lines = run.err().lines().toList();
    assertTrue(lines.size() <= 6, run.err());
    assertTrue(lines.get(0).matches("baysheet: error: .*[^.]\\."), lines.get(0));
    lines.stream().skip(1).forEach(it -> assertTrue(it.matches(" {4,8}\\S.*"), it));
    assertTrue(
        lines.get(lines.size() - 1).matches("    More: baysheet ([a-z]+ )?--help"), run.err());
    assertFalse(run.err().contains("Exception"), run.err());
    return lines;
  }

  private void answers(String words, String sentence, String below) {
    List<String> lines = answer(words);
    assertEquals("baysheet: error: " + sentence, lines.get(0));
    if (below != null) {
      String meant = String.join(" ", lines.subList(1, lines.size() - 1)).replaceAll(" +", " ");
      assertEquals(" " + below, meant);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "shets    | baysheet has no command \"shets\". | Did you mean sheets?",
        "CHECK    | baysheet has no command \"CHECK\". | Did you mean check?",
        "fhqwhgads SHOP | baysheet has no command \"fhqwhgads\". | Expected: one of sheets, check, day, explain, torque, start, names, procedures, draft, collect, close, attach, carry, withdraw, history, due, recall, forget, help.",
        "_        | baysheet has no command \"\".      | Expected: one of sheets, check, day, explain, torque, start, names, procedures, draft, collect, close, attach, carry, withdraw, history, due, recall, forget, help.",
        "--record sheets | baysheet itself has no option \"--record\". | Expected: a command first, and its options behind it.",
        "-o x check | baysheet itself has no option \"-o\". | Expected: a command first, and its options behind it.",
      })
  void commands(String words, String sentence, String below) {
    answers(words == null ? "" : words, sentence, below);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheets --papper A4         | --papper  | --paper",
        "sheets --recrod            | --recrod  | --record",
        "sheets -record             | -record   | --record",
        "sheets -out x SHOP         | -out      | --out",
        "sheets --template=x        | --template | --templates",
        "sheets --Paper A4          | --Paper   | --paper",
        "check --jsom               | --jsom    | --json",
        "check SHOP -json           | -json     | --json",
        "explain JOB --halp         | --halp    | --help",
        "torque 110 --thraed M12    | --thraed  | --thread",
        "torque --recah 60          | --recah   | --reach",
        "start x --schema           | --schema  | --schemas",
        "start --dtae 2026-03-02 x  | --dtae    | --date",
        "names --jsn                | --jsn     | --json",
        "help --hlep                | --hlep    | --help",
      })
  void aMisspeltOptionIsAnsweredWithTheNearest(String words, String named, String meant) {
    answers(
        words,
        "the command %s has no option \"%s\".".formatted(words.split(" ")[0], named),
        "Did you mean " + meant + "?");
  }

  @ParameterizedTest
  @ValueSource(strings = {"sheets", "check", "explain", "torque", "start", "names", "help"})
  void whatNoOptionIsLikeIsAnsweredWithAllOptionsInALine(String command) {
    String known =
        switch (command) {
          case "sheets" ->
              "--again, --dry-run, --fillable, --help, --jobs, --json, --out, --paper, --part, --print,"
                  + " --quiet, --record, --shop, --templates, --version";
          case "torque" -> "--accuracy, --angle, --band, --class, --friction, --from, --head";
          case "check" -> "--help, --json, --shop, --version, --watch";
          case "start" -> "--date, --help, --schemas, --version";
          case "names" -> "--help, --json, --shop, --version";
          case "explain" -> "--help, --shop, --version";
          default -> "--help, --version";
        };
    List<String> lines = answer(command + " x --zzzzzz");
    assertEquals(
        "baysheet: error: the command " + command + " has no option \"--zzzzzz\".", lines.get(0));
    String below = String.join(" ", lines).replaceAll(" +", " ");
    assertTrue(below.contains(" Expected: one of " + known), below);
  }

  @ParameterizedTest
  @CsvSource({
    "sheets --paper, --paper, --paper A4|Letter",
    "sheets --paper --record, --paper, --paper A4|Letter",
    "sheets --jobs, --jobs, --jobs N",
    "sheets -o, --out, --out DIR",
    "sheets --templates, --templates, --templates DIR",
    "torque 110 --thread, --thread, --thread THREAD",
    "torque --thread --class 10.9, --thread, --thread THREAD",
    "torque 110 --band, --band, --band SHARE",
    "torque --band --json, --band, --band SHARE",
    "torque 110 --shop, --shop, --shop DIR",
    "torque 110 --on, --on, --on DATE",
    "start --date, --date, --date DAY",
    "names --shop, --shop, --shop DIR",
  })
  void aMissingValueIsNamed(String words, String option, String expected) {
    answers(words, "the option " + option + " needs a value.", "Expected: " + expected + ".");
  }

  @ParameterizedTest
  @CsvSource({
    "explain, JOB, 'a job file or the number of a job, whose torque rows'",
    "start, DIR, the new folder",
    "torque, VALUE, the torque with its unit: 110 N·m",
    "torque --json, VALUE, 100..120 N·m, 110 N·m +/- 5 %;",
  })
  void aMissingWordIsNamed(String words, String label, String described) {
    List<String> lines = answer(words);
    assertEquals(
        "baysheet: error: the command %s needs a %s.".formatted(words.split(" ")[0], label),
        lines.get(0));
    String below = String.join(" ", lines);
    assertTrue(below.contains("Expected: " + label + " is "), below);
    assertTrue(below.contains(described), below);
  }

  @ParameterizedTest
  @CsvSource({
    "explain JOB 1 2, 2, explain JOB [ROW]",
    "start a b, b, start DIR",
    "help torque unknown-key, unknown-key, help [CODE|COMMAND]",
  })
  void aWordTooManyIsNamed(String words, String named, String expected) {
    answers(
        words,
        "\"%s\" is one word too many for the command %s.".formatted(named, words.split(" ")[0]),
        "Expected: baysheet " + expected + " and no more words.");
  }

  @ParameterizedTest
  @CsvSource({
    "sheets --record --record, --record",
    "sheets --paper A4 --paper Letter, --paper",
    "sheets --out x -o y, --out",
    "check --json --json, --json",
    "torque 110 --thread M10 --thread M12, --thread",
    "start --date 2026-03-02 --date 2026-03-03 x, --date",
    "names --shop SHOP --shop SHOP, --shop",
  })
  void anOptionIsGivenOnce(String words, String option) {
    answers(words, "the option " + option + " is given twice.", null);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "sheets --record=yes, the option --record takes no value",
        "check --json=1, the option --json takes no value",
        "torque 110 --json=x, the option --json takes no value",
        "start x --schemas=x, the option --schemas takes no value",
        "names --json=x, the option --json takes no value",
        "sheets --paper A5, --paper takes A4 or Letter",
        "sheets --paper a4, --paper takes A4 or Letter",
        "sheets --paper=, --paper takes A4 or Letter",
        "sheets --jobs many, --jobs takes a whole number from 1",
        "sheets --jobs 1.5, --jobs takes a whole number from 1",
        "sheets --jobs=-1, --jobs takes a whole number from 1",
        "sheets --jobs 0, --jobs takes a whole number from 1",
        "sheets --jobs 99999999999, --jobs takes a whole number from 1",
        "sheets --jobs=, --jobs takes a whole number from 1",
        "explain JOB x, ROW takes a whole number from 1",
        "explain JOB 1.5, ROW takes a whole number from 1",
        "explain JOB 0, the torque table of this job has no row 0",
        "explain JOB 99, the torque table of this job has no row 99",
        "explain JOB -1, the torque table of this job has no row -1",
        "start --date 2.3.2026 x, --date takes a day such as 2026-03-02",
        "start --date 2026-02-30 x, --date takes a day such as 2026-03-02",
        "names fhqwhgads, there are no names of the sort \"fhqwhgads\"",
        "help fhqwhgads, there is no problem code and no command \"fhqwhgads\"",
      })
  void aValueThatIsNotTakenIsAnsweredWithWhatIs(String words, String sentence) {
    List<String> lines = answer(words);
    assertTrue(lines.get(0).startsWith("baysheet: error: " + sentence), lines.get(0));
  }

  /** An empty variable of a script must not stand for the folder in which the program runs. */
  @ParameterizedTest
  @CsvSource({
    "sheets _, DAY|JOB",
    "sheets --out _ SHOP, --out",
    "check _, PATH",
    "check SHOP _, PATH",
    "explain _, JOB",
    "torque 110 --shop _, --shop",
    "start _, DIR",
    "names --shop _, --shop",
  })
  void anEmptyPathIsNotTaken(String words, String named) {
    answers(words, named + " takes a file or folder, not \"\".", null);
  }

  /** A word processor makes a dash of two hyphens. */
  @ParameterizedTest
  @ValueSource(strings = {"sheets —record SHOP", "check –json", "torque −−thread M12"})
  void aDashThatIsNoHyphenIsNamed(String words) {
    String slip = words.replaceAll("^[a-z]+ | [^—–−]*$", "");
    answers(
        words,
        '"' + slip + "\" begins with a dash that is no hyphen.",
        "Expected: an option such as " + slip.replaceAll("^[—–−]+", "--") + ".");
  }

  @ParameterizedTest
  @CsvSource({
    "110nm, has the unknown unit \"nm\"., 110 N·m",
    "'16,5N·m', has a comma in its figure., 16.5N·m"
  })
  void aSlipInAFigureIsAnsweredWithTheSpellingToUse(String typed, String fault, String meant) {
    answers("torque " + typed, '"' + typed + "\" " + fault, "Did you mean " + meant + "?");
  }

  @Test
  void aFileWhoseNameBeginsWithAnAtSignIsAFile() {
    garage.write("@words", "--json");
    Garage.Run run = garage.run("check", "@" + garage.root.resolve("@words"));
    assertEquals(Exit.FILES, run.exit(), run.out() + run.err());
    run.says("there is no such file");
  }
}
