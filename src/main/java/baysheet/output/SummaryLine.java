package baysheet.output;

import baysheet.files.YamlFiles;
import baysheet.json.JsonObject;
import baysheet.ledger.Event.Replaced;
import baysheet.sheet.Heading;
import baysheet.wording.Language;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.List;

/** One line a job: number, bay, title, steps, body size, what gave way, file. */
public final class SummaryLine {
  /** Why the sheet of an earlier run is withdrawn although its job is still there. */
  static final String REFUSED = "no sheet can be made from its job file";

  private SummaryLine() {}

  static String of(SheetIssuer.Drawn drawn, DayOutput.Written written) {
    MadeSheet made = drawn.made();
    String line = of(made) + "  " + YamlFiles.shown(written.file());
    if (drawn.unchanged()) {
      return line + (written.anew() ? "  unchanged, written again" : "  unchanged");
    }
    return drawn.replaces().map(it -> line + "\n    " + it.sentence()).orElse(line);
  }

  /** The same of a sheet that has no file. */
  static String of(MadeSheet made) {
    Heading heading = made.sheet().heading();
    String line =
        String.join(
            "  ",
            made.sheet().name(),
            "bay " + heading.bay().name(),
            Language.of(heading).title(heading),
            made.sheet().steps().isEmpty() ? "only checks" : made.sheet().steps().size() + " steps",
            points(made) + " pt");
    List<String> dropped = made.fit().dropped();
    return dropped.isEmpty() ? line : line + "  left out for room: " + String.join(", ", dropped);
  }

  /** The same as data. */
  static JsonObject data(SheetIssuer.Drawn drawn, DayOutput.Written written) {
    String made = drawn.replaces().isPresent() ? "changed" : "new";
    return new JsonObject()
        .put("job", drawn.made().sheet().heading().job())
        .put("sheet", drawn.made().id().text())
        .put("file", YamlFiles.shown(written.file()))
        .put("state", drawn.unchanged() ? "unchanged" : made)
        .put("replaces", drawn.replaces().map(Replaced::sheet))
        .put("changes", drawn.replaces().map(it -> String.join("; ", it.changes())));
  }

  private static String points(MadeSheet made) {
    return BigDecimal.valueOf(made.fit().bodySize(), 3)
        .setScale(1, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /**
   * @param done how many jobs the sheets are of
   * @param without numbers of the jobs whose sheets are not in it
   */
  static String all(int sheets, int done, int jobs, List<String> without, Path file) {
    String missing = without.isEmpty() ? "" : ", without " + String.join(", ", without);
    String what =
        sheets == done
            ? sheets + " of " + jobs + " sheets"
            : "%s sheets of %s of %s jobs".formatted(sheets, done, jobs);
    return "all  " + what + " in bay order" + missing + "  " + YamlFiles.shown(file);
  }

  /**
   * @param changed numbers of the jobs whose sheets are older than what their files say
   */
  static String allRemoved(List<String> changed, Path day, Path file) {
    return "all  removed, because these sheets are older than their job files: "
        + String.join(", ", changed)
        + "; for a new one: baysheet sheets "
        + YamlFiles.shown(day)
        + "  "
        + YamlFiles.shown(file);
  }

  static String noSuchJob(Path day) {
    return YamlFiles.shown(day) + " has no such job";
  }

  static String withdrawn(OldSheets.Withdrawn old, String why) {
    return old.name() + "  withdrawn, because " + why + "  " + YamlFiles.shown(old.to());
  }

  static String hasSheets(int sheets) {
    return "the job has " + (sheets == 1 ? "one sheet" : sheets + " sheets") + " now";
  }

  public static String unplanned(Path day) {
    return "no jobs are planned for "
        + day.toAbsolutePath().normalize().getFileName()
        + "  "
        + YamlFiles.shown(day);
  }

  static String tooMany(int jobs, int most, Path file) {
    return "all  not made, for %s jobs are more than the %s that one file takes  %s"
        .formatted(jobs, most, YamlFiles.shown(file));
  }
}
