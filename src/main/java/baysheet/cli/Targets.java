package baysheet.cli;

import baysheet.report.Problem;
import baysheet.report.ProblemCode;
import baysheet.report.Problems;
import baysheet.report.Source;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Where the files of a run go; none of them takes the place of another. */
final class Targets {
  private final Path out;
  private final Problems problems;

  /** What each file is made from. */
  private final Map<Path, Path> taken = new LinkedHashMap<>();

  Targets(Path out, Problems problems) {
    this.out = out;
    this.problems = problems;
  }

  /** The file for a job's sheet; empty, with a problem, when another one of the run has it. */
  Optional<Path> sheet(Path job, String number) {
    return take(out.resolve(DayFolders.day(job)).resolve(number + ".pdf"), job);
  }

  /** The file for all sheets of a day folder; taken before those of its jobs. */
  Optional<Path> all(Path day) {
    Path name = day.toAbsolutePath().normalize().getFileName();
    return take(out.resolve(String.valueOf(name)).resolve("all.pdf"), day);
  }

  private Optional<Path> take(Path target, Path from) {
    Path own = from.toAbsolutePath().normalize();
    Path before = taken.putIfAbsent(target, own);
    if (before == null || before.equals(own)) {
      return Optional.of(target);
    }
    problems.add(
        Problem.of(
                ProblemCode.SAME_SHEET,
                new Source(YamlFiles.shown(from), "").whole(),
                "its sheet would take the place of the one of "
                    + YamlFiles.shown(before)
                    + ", "
                    + YamlFiles.shown(target))
            .expecting("another job number, or another folder under --out"));
    return Optional.empty();
  }
}
