package baysheet.cli;

import baysheet.report.ProblemCode;
import baysheet.report.Problems;

/** Exit codes. */
final class Exit {
  static final int DONE = 0;

  /** Problems in files; what could be written was. */
  static final int PROBLEMS = 1;

  /** The command line is wrong. */
  static final int USAGE = 2;

  /** Something could not be read or written. */
  static final int FILES = 3;

  /** A fault of the tool (EX_SOFTWARE of the BSD sysexits). */
  static final int FAULT = 70;

  private Exit() {}

  /** What a run ends with that came to nothing worse than these problems. */
  static int of(Problems problems) {
    boolean unread =
        problems.all().stream().anyMatch(problem -> problem.code() == ProblemCode.CANNOT_READ);
    return unread ? FILES : problems.hasErrors() ? PROBLEMS : DONE;
  }
}
