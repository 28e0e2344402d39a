package baysheet.cli;

import baysheet.plan.Heading;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;

/** One line a job: number, bay, title, steps, body size, what gave way, file. */
final class SummaryLine {
  private SummaryLine() {}

  static String of(MadeSheet made, Path file) {
    Heading heading = made.sheet().heading();
    return String.join(
        "  ",
        heading.job(),
        "bay " + heading.bay(),
        heading.title(),
        made.sheet().steps().size() + " steps",
        points(made) + " pt",
        dropped(made),
        YamlFiles.shown(file));
  }

  private static String points(MadeSheet made) {
    return BigDecimal.valueOf(made.fit().bodySize(), 3)
        .setScale(1, RoundingMode.HALF_UP)
        .toPlainString();
  }

  private static String dropped(MadeSheet made) {
    return made.fit().dropped().isEmpty()
        ? "nothing dropped"
        : "dropped: " + String.join(", ", made.fit().dropped());
  }

  static String all(int sheets, int jobs, Path file) {
    return "all  " + sheets + " of " + jobs + " sheets in bay order  " + YamlFiles.shown(file);
  }

  static String tooMany(int jobs, int most, Path file) {
    return "all  not made, for %s jobs are more than the %s that one file takes  %s"
        .formatted(jobs, most, YamlFiles.shown(file));
  }
}
