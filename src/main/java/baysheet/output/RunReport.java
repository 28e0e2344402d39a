package baysheet.output;

import baysheet.files.YamlFiles;
import baysheet.json.JsonObject;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.ProblemJson;
import baysheet.report.Problems;
import baysheet.report.Source;
import baysheet.report.Summary;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What became of a run that makes sheets, and what it says and returns in the end. */
public final class RunReport {
  /** From so many sheets on a run says how far it is. */
  private static final int LONG = 20;

  private final Console console;
  private final Voice voice;
  private final List<JsonObject> sheets = new ArrayList<>();
  private final Problems problems = new Problems();
  private final List<Fault> faults = new ArrayList<>();
  private int jobs;
  private int written;
  private int refused;
  private int begun;

  RunReport(Console console, Voice voice) {
    this.console = console;
    this.voice = voice;
  }

  /** What a run says of its results; problems are reported in any case. */
  public enum Voice {
    LINES,
    NOTHING,
    JSON
  }

  /** What kept a sheet from being made or written, other than a problem of the files. */
  private record Fault(Path at, Throwable what) {
    boolean ofFiles() {
      return what instanceof UncheckedIOException;
    }
  }

  Problems problems() {
    return problems;
  }

  void jobs(int more) {
    jobs += more;
  }

  void say(String line) {
    if (voice == Voice.LINES) {
      console.say(line);
    }
  }

  /**
   * The sheets of one job more lie in their places.
   *
   * @param lines a line for each sheet
   * @param data the same as keys and values
   */
  void written(List<String> lines, List<JsonObject> data) {
    written++;
    sheets.addAll(data);
    for (String line : lines) {
      say(jobs < LONG ? line : line + "  (" + written + " of " + jobs + ")");
    }
    if (voice != Voice.LINES && jobs >= LONG) {
      console.progress(written + " of " + jobs + " jobs");
    }
  }

  /** Of one job only the first sheets could be written. */
  void begun() {
    begun++;
  }

  /** One job gets no sheet, and that of an earlier run is withdrawn. */
  void refused() {
    refused++;
  }

  /**
   * Keeps a fault, to be reported once the others are done.
   *
   * @param at the job or the folder that it concerns
   */
  void fault(Path at, Throwable what) {
    faults.add(new Fault(at, what));
  }

  /** Does something with files. A failure is reported at the end, and the rest goes on. */
  boolean orTell(Path at, Runnable work) {
    try {
      work.run();
      return true;
    } catch (UncheckedIOException e) {
      fault(at, e);
      return false;
    }
  }

  /** Says what went wrong and what came of it; the exit code. */
  int end() {
    faults.stream()
        .filter(fault -> !fault.ofFiles())
        .forEach(fault -> problems.add(internalError(fault.at())));
    if (voice == Voice.JSON) {
      console.print(
          ProblemJson.print(
              problems.all(), Summary.of(problems.all(), consequence()), List.copyOf(sheets)));
    } else {
      console.problems(problems.all(), consequence(), false);
    }
    // The folder that cannot be written to is the same for all sheets.
    Set<String> told = new HashSet<>();
    faults.stream().filter(fault -> told.add(fault.what().toString())).forEach(this::tell);
    if (!faults.isEmpty() && problems.all().isEmpty()) {
      console.complain(consequence());
    }
    return exit();
  }

  private int exit() {
    if (faults.stream().allMatch(Fault::ofFiles)) {
      return faults.isEmpty() ? Exit.of(problems) : Exit.FILES;
    }
    return Exit.FAULT;
  }

  private String consequence() {
    if (jobs == 0) {
      return "no sheet was written";
    }
    if (jobs == 1) {
      return written == 0
          ? "the sheet was not written"
          : sheets.size() == 1
              ? "the sheet was written"
              : "the " + sheets.size() + " sheets were written";
    }
    if (written == jobs) {
      return "all " + sheets.size() + " sheets were written";
    }
    String some = sheets.size() == written ? "%s of %s sheets" : "the sheets of %s of %s jobs";
    return some.formatted(written, jobs) + " were written" + without() + left();
  }

  private String without() {
    return switch (refused) {
      case 0 -> "";
      case 1 -> "; 1 job has no sheet";
      default -> "; " + refused + " jobs have no sheet";
    };
  }

  /** Sheets of an earlier run that could not be replaced. */
  private String left() {
    int done = written + refused + begun;
    String some =
        switch (begun) {
          case 0 -> "";
          case 1 -> "; of 1 job only the first sheets were";
          default -> "; of " + begun + " jobs only the first sheets were";
        };
    return done == jobs
        ? some
        : some + "; " + (done == 0 ? "all" : "the others") + " were left as they were";
  }

  /** The tool itself failed; what is in the error is for those who mend it. */
  public static Problem internalError(Path job) {
    return Problem.of(
        ProblemCode.TOOL_FAULT,
        new Source(YamlFiles.shown(job), "").whole(),
        "an internal error of baysheet stopped the work on this job; your files are not the cause");
  }

  private void tell(Fault fault) {
    if (fault.what() instanceof UncheckedIOException files) {
      console.complain(files);
      return;
    }
    console.trace(fault.what());
  }
}
