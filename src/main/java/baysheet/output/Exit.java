package baysheet.output;

import baysheet.report.ProblemCode;
import baysheet.report.Problems;

/** Exit codes. */
public final class Exit {
  public static final int DONE = 0;

  /** Problems in files; what could be written was. */
  public static final int PROBLEMS = 1;

  /** The command line is wrong. */
  public static final int USAGE = 2;

  /** Something could not be read or written. */
  public static final int FILES = 3;

  /** A fault of the tool (EX_SOFTWARE of the BSD sysexits). */
  public static final int FAULT = 70;

  private Exit() {}

  /** What a run ends with that came to nothing worse than these problems. */
  public static int of(Problems problems) {
    if (has(problems, ProblemCode.TOOL_FAULT)) {
      return FAULT;
    }
    if (has(problems, ProblemCode.CANNOT_READ)) {
      return FILES;
    }
    return problems.hasErrors() ? PROBLEMS : DONE;
  }

  private static boolean has(Problems problems, ProblemCode code) {
    return problems.all().stream().anyMatch(problem -> problem.code() == code);
  }
}
