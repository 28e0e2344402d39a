package baysheet.cli;

import baysheet.ledger.Index;
import baysheet.ledger.Tables;
import baysheet.report.Nearest;
import baysheet.report.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** What all commands share that ask the ledger: where it is, and how an answer is printed. */
final class AskLedger {
  final OptionSpec out =
      OptionSpec.builder("-o", "--out")
          .paramLabel("DIR")
          .type(Path.class)
          .description(
              "The folder of the sheets; the ledger is in DIR/ledger (default: the shop's, which is"
                  + " out beside the shop folder).")
          .build();

  final OptionSpec json = Options.flag("--json", "Print the answer as JSON.");

  private final Console console;
  private Optional<Path> shop = Optional.empty();

  AskLedger(Console console) {
    this.console = console;
  }

  /** The folder of the sheets. */
  Path folder() {
    return Options.<Path>given(out)
        .orElseGet(() -> shop.map(OutFolder::of).orElseGet(OutFolder::here));
  }

  /** Where the command line names no folder, it is that of a certain shop. */
  void inShop(Path root) {
    shop = Optional.of(root);
  }

  /** The folder of the ledger, which must be there. */
  Path ledger(CommandLine command) {
    Path ledger = folder().resolve(Issues.LEDGER);
    if (!Files.isDirectory(ledger)) {
      throw new CommandLine.ParameterException(
          command,
          "there is no ledger in " + YamlFiles.shown(folder()) + "; baysheet sheets makes it");
    }
    return ledger;
  }

  /**
   * Prints an answer; the exit code.
   *
   * @param about what was asked, as further keys of the JSON
   * @param none what is said instead of an empty table
   */
  int answer(
      CommandLine command,
      Map<String, Object> about,
      Function<Index, Tables.Table> ask,
      String none) {
    Problems problems = new Problems();
    Optional<Index> index = Index.read(ledger(command), problems);
    index.map(ask).ifPresent(table -> print(table, about, none));
    console.problems(
        problems.all(),
        index.isPresent() ? "the answer is complete" : "nothing is answered",
        false);
    return Exit.of(problems);
  }

  private void print(Tables.Table table, Map<String, Object> about, String none) {
    if (Options.isGiven(json)) {
      console.print(Tables.json(table, about));
    } else if (table.rows().isEmpty()) {
      console.say(none);
    } else {
      console.print(Tables.text(table));
    }
  }

  /** What is said of a job that was never issued, with the one that was probably meant. */
  static String unknownJob(String job, Index index) {
    List<String> several = index.current(job).stream().map(it -> it.issued().name()).toList();
    if (several.size() > 1) {
      return "the job %s has several sheets: close %s"
          .formatted(job, String.join(", then ", several));
    }
    List<String> jobs = index.sheets().stream().map(it -> it.issued().name()).distinct().toList();
    return "the ledger has no job \""
        + job
        + "\""
        + Nearest.of(job, jobs).map(near -> "; did you mean " + near + "?").orElse("");
  }
}
