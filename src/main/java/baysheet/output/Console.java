package baysheet.output;

import baysheet.files.YamlFiles;
import baysheet.report.Problem;
import baysheet.report.ProblemJson;
import baysheet.report.ProblemText;
import baysheet.report.Summary;
import baysheet.report.TerminalText;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Where the program speaks: results on one stream, problems on the other.
 *
 * @param coloured whether the terminal shows bold text
 * @param traces whether the stack trace of an internal error is printed, for a report of it
 */
public record Console(PrintWriter out, PrintWriter err, boolean coloured, boolean traces) {
  /** The environment variable that asks for stack traces. */
  public static final String TRACE = "BAYSHEET_TRACE";

  /** Loaded only where files of others are read: logging takes its time at the start. */
  private static final class PdfLibrary {
    /** Held, for a logger that nobody holds forgets its level. */
    static final Logger LOGGER = Logger.getLogger("org.apache.pdfbox");
  }

  public Console(PrintWriter out, PrintWriter err, boolean coloured) {
    this(out, err, coloured, false);
  }

  /** The PDF library remarks on fonts of other people's files; nobody here can mend those. */
  public static void muteRemarksOnFonts() {
    PdfLibrary.LOGGER.setLevel(Level.SEVERE);
  }

  public void say(String line) {
    out.println(line);
    out.flush();
  }

  /** How far a long run is, on one line of a terminal; a file gets none. */
  void progress(String words) {
    if (coloured) {
      err.print("\r" + words + " ");
      err.flush();
    }
  }

  /** Clears a terminal (ECMA-48, cursor position and erase in page); a file gets a line. */
  public void clear() {
    err.print(coloured ? "\033[H\033[2J\033[3J" : "----\n");
    err.flush();
  }

  /** Text that ends its own lines. */
  public void print(String text) {
    out.print(text);
    out.flush();
  }

  /** One sentence about the command line or the machine, after the name of the program. */
  public void complain(String sentence) {
    err.println(TerminalText.safe("baysheet: " + sentence));
    err.flush();
  }

  /** How to report an internal error, or what the report needs. */
  public void trace(Throwable internal) {
    if (traces) {
      internal.printStackTrace(err);
      err.flush();
    } else {
      complain(
          "to report this error, set "
              + TRACE
              + "=1, run the command again and send what it prints");
    }
  }

  /** A file that could not be read or written, in one line. */
  public void complain(UncheckedIOException files) {
    complain(files.getMessage() + ": " + YamlFiles.reason(files.getCause()));
  }

  /** Prints problems and what follows from them; nothing when there are none. */
  public void problems(List<Problem> problems, String consequence, boolean json) {
    problems(problems, consequence, json, ProblemText.USUAL_LIMIT);
  }

  /**
   * The same.
   *
   * @param most how many are printed for one file
   */
  public void problems(List<Problem> problems, String consequence, boolean json, int most) {
    Summary summary = Summary.of(problems, consequence);
    if (json) {
      out.print(ProblemJson.print(problems, summary));
      out.flush();
    } else if (!problems.isEmpty()) {
      err.print(
          coloured
              ? ProblemText.printBold(problems, most, summary)
              : ProblemText.print(problems, most, summary));
      err.flush();
    }
  }
}
