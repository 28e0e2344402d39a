package baysheet.output;

import baysheet.files.DayFolders;
import baysheet.files.YamlFiles;
import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Where the files of a run go; none of them takes the place of another. */
public final class Targets {
  /** The name of the file that holds all sheets of a day, which no job can have. */
  public static final String ALL = "all";

  /** The name of the timetable, which no job can have either. */
  public static final String DAY = "day";

  private final Path out;
  private final Problems problems;

  /** What each file is made from. */
  private final Map<Path, Path> taken = new LinkedHashMap<>();

  Targets(Path out, Problems problems) {
    this.out = out;
    this.problems = problems;
  }

  /**
   * The folder for the sheets of a day; empty, with a problem, when another day of the run has it.
   */
  Optional<Path> day(Path day) {
    Path own = DayFolders.whole(day);
    Path target = out.resolve(String.valueOf(own.getFileName()));
    Path before = taken.putIfAbsent(target, own);
    if (before == null || before.equals(own)) {
      return Optional.of(target);
    }
    problems.add(
        Problem.of(
                ProblemCode.SAME_SHEET,
                new Source(YamlFiles.shown(day), "").whole(),
                "%s is written to already, for %s"
                    .formatted(YamlFiles.shown(target), YamlFiles.shown(before)))
            .expecting("a run of its own with another --out"));
    return Optional.empty();
  }
}
