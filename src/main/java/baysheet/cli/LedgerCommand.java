package baysheet.cli;

import baysheet.files.YamlFiles;
import baysheet.ledger.Disk;
import baysheet.ledger.Index;
import baysheet.ledger.Ledger;
import baysheet.ledger.Tables;
import baysheet.output.Console;
import baysheet.output.Exit;
import baysheet.output.OutputLock;
import baysheet.output.SheetIssuer;
import baysheet.report.Nearest;
import baysheet.report.Problems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import picocli.CommandLine.Model.OptionSpec;

/** A command that asks the ledger or writes to it. */
abstract class LedgerCommand extends Command {
  private final OptionSpec out =
      add(
          OptionSpec.builder("-o", "--out")
              .paramLabel("DIR")
              .type(Path.class)
              .description(
                  "The folder of the sheets; the ledger is in DIR/ledger (default: the shop's,"
                      + " which is out beside the shop folder).")
              .build());

  private Optional<Path> shop = Optional.empty();

  LedgerCommand(Console console, String name, String description) {
    super(console, name, description);
  }

  /** The option that asks for an answer as JSON. */
  final OptionSpec json() {
    return flag("--json", "Print the answer as JSON.");
  }

  /** The folder of the sheets. */
  final Path folder() {
    return Options.<Path>given(out)
        .orElseGet(() -> shop.map(OutFolder::of).orElseGet(OutFolder::here));
  }

  /** Where the command line names no folder, it is that of a certain shop. */
  final void inShop(Path root) {
    shop = Optional.of(root);
  }

  /** The folder of the ledger, which must be there. */
  final Path ledger() {
    Path ledger = folder().resolve(SheetIssuer.LEDGER);
    if (!Files.isDirectory(ledger)) {
      throw wrong(
          "there is no ledger in " + YamlFiles.shown(folder()) + "; baysheet sheets makes it");
    }
    return ledger;
  }

  /**
   * Does something with the ledger while no other run writes to the folder of the sheets.
   *
   * @return what the work returns; false, with a problem, where the ledger cannot be used
   */
  final boolean whileHeld(Problems problems, Predicate<Ledger> work) {
    Path ledger = ledger();
    boolean[] isDone = {false};
    OutputLock.whileHeld(
        folder(),
        () -> {
          try (Ledger open = Ledger.open(ledger, Disk.REAL, problems).orElse(null)) {
            isDone[0] = open != null && work.test(open);
          }
        });
    return isDone[0];
  }

  /**
   * Prints an answer; the exit code.
   *
   * @param about what was asked, as further keys of the JSON
   * @param none what is said instead of an empty table
   */
  final int answer(
      boolean asJson, Map<String, Object> about, Function<Index, Tables.Table> ask, String none) {
    Problems problems = new Problems();
    Optional<Tables.Table> answer = Index.read(ledger(), problems).map(ask);
    answer.ifPresent(table -> console.print(print(table, asJson, about, none)));
    console.problems(
        problems.all(),
        answer.isPresent() ? "the answer is complete" : "nothing is answered",
        false);
    return Exit.of(problems);
  }

  private static String print(
      Tables.Table table, boolean asJson, Map<String, Object> about, String none) {
    if (asJson) {
      return Tables.json(table, about);
    }
    return table.rows().isEmpty() ? none + '\n' : Tables.text(table);
  }

  /** A job that was never issued, with the one that was probably meant. */
  final WrongCommandLine unknownJob(String job, Index index) {
    List<String> several = index.current(job).stream().map(it -> it.issued().name()).toList();
    if (several.size() > 1) {
      return wrong(
          "the job %s has several sheets: close %s"
              .formatted(job, String.join(", then ", several)));
    }
    List<String> jobs = index.sheets().stream().map(it -> it.issued().name()).distinct().toList();
    String near = Nearest.of(job, jobs).map(it -> "; did you mean " + it + "?").orElse("");
    return wrong("the ledger has no job \"" + job + "\"" + near);
  }
}
