package baysheet.report;

import baysheet.report.ProblemCode.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * The last line of a list of problems: how many, and what follows from them.
 *
 * @param errors how many problems stop a job
 * @param warnings how many are only said
 * @param notes how many ask for a comparison only
 * @param files in how many files they stand
 * @param consequence what follows, in words; may be empty
 */
public record Summary(int errors, int warnings, int notes, int files, String consequence) {
  public Summary {
    if (errors < 0 || warnings < 0 || notes < 0 || files < 0) {
      throw new IllegalArgumentException(
          errors + " errors, " + warnings + ", " + notes + ", in " + files);
    }
  }

  /** Counts these problems. */
  public static Summary of(List<Problem> problems, String consequence) {
    int files =
        (int) problems.stream().map(problem -> problem.at().source().name()).distinct().count();
    return new Summary(
        count(problems, Severity.ERROR),
        count(problems, Severity.WARNING),
        count(problems, Severity.NOTE),
        files,
        consequence);
  }

  private static int count(List<Problem> problems, Severity severity) {
    return (int) problems.stream().filter(it -> it.code().severity() == severity).count();
  }

  /** {@code 2 errors and 1 warning in 1 file: no sheet was written.}. */
  public String line() {
    String counted =
        errors + warnings + notes == 0 ? "no problems" : counts() + " in " + count(files, "file");
    return (consequence.isEmpty() ? counted : counted + ": " + consequence) + ".";
  }

  private String counts() {
    List<String> counts = new ArrayList<>();
    counted(errors, "error", counts);
    counted(warnings, "warning", counts);
    counted(notes, "note", counts);
    String last = counts.remove(counts.size() - 1);
    return counts.isEmpty() ? last : String.join(", ", counts) + " and " + last;
  }

  private static void counted(int number, String noun, List<String> counts) {
    if (number > 0) {
      counts.add(count(number, noun));
    }
  }

  private static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
