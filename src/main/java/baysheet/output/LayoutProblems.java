package baysheet.output;

import baysheet.books.Job;
import baysheet.layout.MissingGlyph;
import baysheet.layout.PageCheck;
import baysheet.layout.PageFit;
import baysheet.layout.TooWide;
import baysheet.plan.stage.Division.TooLong;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Says why a sheet could not be set on its page.
 *
 * @param job the job file
 */
public record LayoutProblems(Source job) {
  /** The first few blocks are where something can be won. */
  private static final int TALLEST = 4;

  /** Where one thing stands wrong, many do. */
  private static final int MOST = 5;

  /** Enough of a word to find it in a file. */
  private static final int LONGEST_QUOTE = 60;

  private static final String PLACED_HERE = "printed by the layout";
  private static final String FOR_JOB = "the job";

  /** Characters of files were checked where they stand; these are the layout's own. */
  public void missingGlyphs(List<MissingGlyph> missing, Problems problems) {
    for (MissingGlyph glyph : missing) {
      problems.add(
          Problem.of(
              ProblemCode.NO_GLYPH,
              glyph.at(),
              "the layout prints U+%04X in \"%s\", which the font does not contain"
                  .formatted(glyph.codePoint(), glyph.text())));
    }
  }

  /** What keeps a sheet from its page. */
  public void unfit(PageFit fit, Problems problems) {
    if (fit instanceof PageFit.Overrun overrun && overrun.tooWide().isEmpty()) {
      problems.add(tooTall(overrun));
    } else if (fit instanceof PageFit.Overrun overrun) {
      problems.add(
          tooWide(Collections.max(overrun.tooWide(), Comparator.comparingLong(TooWide::by))));
    } else if (fit instanceof PageFit.Unprintable unprintable) {
      unprintable.faults().stream().limit(MOST).map(this::unprintable).forEach(problems::add);
    }
  }

  /**
   * Why a job cannot be divided among pages.
   *
   * @param tooLong what fits on no page; none where it would take too many sheets
   */
  void undivided(Optional<TooLong> tooLong, Problems problems) {
    String what =
        tooLong
            .map(LayoutProblems::doesNotFit)
            .orElse("the job takes more than " + Job.MOST_STAGES + " sheets");
    problems.add(
        Problem.of(ProblemCode.PAGE_OVERRUN, job.whole(), what)
            .expecting(
                tooLong.isPresent()
                    ? "shorter sentences in their procedures, or less work in this job"
                    : "several job files with less work each"));
  }

  private static String doesNotFit(TooLong part) {
    List<String> what = new ArrayList<>();
    part.steps().ifPresent(it -> what.add("steps " + it.first() + " to " + it.last()));
    if (part.checks()) {
      what.add("the checks at the end");
    }
    return String.join(" and ", what)
        + " do not fit one page, even at the smallest text size, and the work cannot rest between"
        + " them";
  }

  private Problem tooTall(PageFit.Overrun overrun) {
    String tallest =
        overrun.tallest().stream()
            .limit(TALLEST)
            .map(block -> block.what() + " " + block.millimetres() + " mm")
            .collect(Collectors.joining(", "));
    return Problem.of(
            ProblemCode.PAGE_OVERRUN,
            job.whole(),
            "the sheet is "
                + overrun.byMillimetres()
                + " mm too long for one page at the smallest text size")
        .expecting("less work in this job; the tallest parts are: " + tallest);
  }

  /**
   * The widest, for it may have narrowed the columns of the others. The word comes from the job or
   * its books, the place from the layout.
   */
  private Problem tooWide(TooWide wide) {
    return Problem.of(
            ProblemCode.PAGE_TOO_WIDE,
            job.whole(),
            "\"%s\" is %s mm wider than its place on the sheet"
                .formatted(quoted(wide.what()), wide.millimetres()))
        .expecting("shorter words, or spaces or hyphens between them")
        .seeAlso(PLACED_HERE, wide.at());
  }

  private static String quoted(String text) {
    return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
  }

  private Problem unprintable(PageCheck.Fault fault) {
    return Problem.of(
            ProblemCode.UNPRINTABLE_PAGE,
            fault.at(),
            "the layout makes a page that must not be printed: " + fault.what())
        .seeAlso(FOR_JOB, job.whole());
  }
}
