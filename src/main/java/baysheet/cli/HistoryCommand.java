package baysheet.cli;

import baysheet.ledger.History;
import baysheet.ledger.Index;
import baysheet.ledger.SheetStory;
import baysheet.ledger.Tables;
import baysheet.output.Console;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command that shows what was done on a vehicle or for a job. */
final class HistoryCommand extends LedgerCommand {

  private final PositionalParamSpec what =
      at(
          0,
          "PLATE|JOB",
          "1",
          String.class,
          "A number plate (spaces, hyphens and capitals do not matter) or the number of a job.");

  private final OptionSpec json = json();

  HistoryCommand(Console console) {
    super(
        console,
        "history",
        "Tell what was done on a vehicle or for a job: tightened to what, by whom, with which"
            + " wrench.");
  }

  @Override
  public Integer call() {
    String asked = what.getValue();
    return answer(
        Options.isGiven(json),
        Map.of("asked", asked),
        index -> of(asked, index),
        "the ledger has no plate and no job \"" + asked + "\"");
  }

  /** A job's number may also be somebody's plate: then both are reported. */
  private static Tables.Table of(String asked, Index index) {
    Set<SheetStory> stories = new LinkedHashSet<>(index.ofJob(asked));
    stories.addAll(index.ofName(asked));
    stories.addAll(index.ofPlate(asked));
    return History.of(List.copyOf(stories), index);
  }
}
