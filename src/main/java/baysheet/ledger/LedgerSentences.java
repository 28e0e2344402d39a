package baysheet.ledger;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.Optional;

/** What is said of files of the ledger. */
final class LedgerSentences {
  private LedgerSentences() {}

  static Problem badLine(Path file, int line, String why) {
    return Problem.of(
            ProblemCode.LEDGER_LINE,
            source(file).at(line, 1),
            "this line of the ledger is not as it was written: " + why)
        .expecting("the file as it was written; put back the copy from the last backup");
  }

  static Problem torn(Path file, int line, Optional<Path> kept) {
    String what = "the last line was not written to its end";
    return Problem.of(
        ProblemCode.LEDGER_TORN,
        source(file).at(line, 1),
        kept.map(it -> what + "; it was moved to " + shown(it))
            .orElse(what + "; the next run that writes to the ledger sets it aside"));
  }

  private static Source source(Path file) {
    return new Source(shown(file), "");
  }

  private static String shown(Path file) {
    return file.toString().replace('\\', '/');
  }
}
