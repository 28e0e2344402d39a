package baysheet.cli;

import baysheet.layout.PageFit;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Source;
import java.util.stream.Collectors;

/** Says by how much a sheet does not fit its page, and what takes the room. */
final class Overruns {
  // The first few blocks are where something can be won.
  private static final int TALLEST = 4;

  private Overruns() {}

  static Problem problem(PageFit.Overrun overrun, Source file) {
    if (!overrun.tooWide().isEmpty()) {
      return Problem.of(
          ProblemCode.PAGE_TOO_WIDE,
          file.whole(),
          "something on the sheet is wider than its place: " + overrun.tooWide().get(0));
    }
    String tallest =
        overrun.tallest().stream()
            .limit(TALLEST)
            .map(block -> block.what() + " " + block.millimetres() + " mm")
            .collect(Collectors.joining(", "));
    return Problem.of(
            ProblemCode.PAGE_OVERRUN,
            file.whole(),
            "the sheet is "
                + overrun.byMillimetres()
                + " mm too long for one page at the smallest size")
        .expecting("less work on one job file; the tallest blocks are " + tallest);
  }
}
