package baysheet.cli;

import baysheet.report.Problem;
import baysheet.report.ProblemJson;
import baysheet.report.ProblemText;
import baysheet.report.Summary;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Where the program speaks: results on one stream, problems on the other.
 *
 * @param coloured whether problems may be coloured
 */
record Console(PrintWriter out, PrintWriter err, boolean coloured) {

  void say(String line) {
    out.println(line);
    out.flush();
  }

  /** Text that ends its own lines. */
  void print(String text) {
    out.print(text);
    out.flush();
  }

  void complain(String line) {
    err.println(line);
    err.flush();
  }

  /** A file that could not be read or written, in one line. */
  void complain(UncheckedIOException files) {
    complain(files.getMessage() + ": " + YamlFiles.reason(files.getCause()));
  }

  /** Prints problems and what follows from them; nothing when there are none. */
  void problems(List<Problem> problems, String consequence, boolean json) {
    Summary summary = Summary.of(problems, consequence);
    if (json) {
      out.print(ProblemJson.print(problems, summary));
      out.flush();
    } else if (!problems.isEmpty()) {
      err.print(
          coloured
              ? ProblemText.printBold(problems, ProblemText.USUAL_LIMIT, summary)
              : ProblemText.print(problems, ProblemText.USUAL_LIMIT, summary));
      err.flush();
    }
  }
}
