package baysheet.cli;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where the files of a run go; none of them takes the place of another. */
final class Targets {
  /** The name of the file that holds all sheets of a day, which no job can have. */
  static final String ALL = "all";

  private final Path out;
  private final Problems problems;

  /** What each file is made from. */
  private final Map<String, Path> taken = new LinkedHashMap<>();

  Targets(Path out, Problems problems) {
    this.out = out;
    this.problems = problems;
  }

  /**
   * The folder for the sheets of a day; empty, with a problem, when another day of the run has it.
   */
  Optional<Path> day(Path day) {
    return take(out.resolve(String.valueOf(DayFolders.whole(day).getFileName())), day);
  }

  /** The file for a job's sheet; empty, with a problem, when another one of the run has it. */
  Optional<Path> sheet(Path job, String number) {
    return take(out.resolve(DayFolders.day(job)).resolve(number + ".pdf"), job);
  }

  /** Some file systems take names that differ only in capitals for one. */
  private Optional<Path> take(Path target, Path from) {
    Path own = DayFolders.whole(from);
    Path before = taken.putIfAbsent(target.toString().toLowerCase(Locale.ROOT), own);
    if (before == null || before.equals(own)) {
      return Optional.of(target);
    }
    problems.add(
        Problem.of(
                ProblemCode.SAME_SHEET,
                new Source(YamlFiles.shown(from), "").whole(),
                "%s is written to already, for %s"
                    .formatted(YamlFiles.shown(target), YamlFiles.shown(before)))
            .expecting("another job number, or a run of its own with another --out"));
    return Optional.empty();
  }
}
