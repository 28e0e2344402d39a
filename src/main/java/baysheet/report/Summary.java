package baysheet.report;

import java.util.List;
import java.util.Objects;

/**
 * The last line of a list of problems: how many, and what follows from them.
 *
 * @param errors how many problems stop a job
 * @param warnings how many are only said
 * @param files in how many files they stand
 * @param consequence what follows, in words; may be empty
 */
public record Summary(int errors, int warnings, int files, String consequence) {
  public Summary {
    Objects.requireNonNull(consequence);
    if (errors < 0 || warnings < 0 || files < 0) {
      throw new IllegalArgumentException(errors + " errors, " + warnings + ", in " + files);
    }
  }

  /** Counts these problems. */
  public static Summary of(List<Problem> problems, String consequence) {
    int errors = (int) problems.stream().filter(Problem::isError).count();
    int files =
        (int) problems.stream().map(problem -> problem.at().source().name()).distinct().count();
    return new Summary(errors, problems.size() - errors, files, consequence);
  }

  /** {@code 2 errors and 1 warning in 1 file: no sheet was written.}. */
  public String line() {
    String counted =
        errors + warnings == 0 ? "no problems" : counts() + " in " + count(files, "file");
    return (consequence.isEmpty() ? counted : counted + ": " + consequence) + ".";
  }

  private String counts() {
    if (errors == 0 || warnings == 0) {
      return errors == 0 ? count(warnings, "warning") : count(errors, "error");
    }
    return count(errors, "error") + " and " + count(warnings, "warning");
  }

  private static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
