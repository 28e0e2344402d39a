package baysheet.output;

import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.JobGroups;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.json.JsonObject;
import baysheet.ledger.Disk;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes and writes the sheets of one run. */
public final class Sheets {
  private final RunReport report;
  private final ShopFolders folders;
  private final Batch batch;
  private final SheetIssuer issues;
  private final Output output;
  private final Targets targets;
  private final OutFiles files;

  /**
   * Where sheets go.
   *
   * @param folder holds a folder for each day
   * @param record whether each sheet's record is wanted beside it
   * @param again whether sheets that lie there unchanged are written all the same
   * @param fillable whether a form of each sheet is wanted, to be filled in on a screen
   * @param voice what is said of them
   * @param printing where they are printed, if they are
   */
  public record Output(
      Path folder,
      boolean record,
      boolean again,
      boolean fillable,
      Disk disk,
      RunReport.Voice voice,
      Optional<Printing> printing) {
    public Output(Path folder, boolean record, boolean again, Disk disk) {
      this(folder, record, again, false, disk, RunReport.Voice.LINES, Optional.empty());
    }
  }

  public Sheets(
      Console console, ShopFolders folders, Batch batch, SheetIssuer issues, Output output) {
    this.report = new RunReport(console, output.voice());
    this.folders = folders;
    this.batch = batch;
    this.issues = issues;
    this.output = output;
    this.targets = new Targets(output.folder(), report.problems());
    this.files = new OutFiles(output.disk());
  }

  /** Makes everything that was named; the exit code. */
  public int run(List<Path> paths) {
    List<JobGroups> groups = JobGroups.of(paths, report.problems());
    groups.forEach(group -> report.jobs(group.jobs().size() + group.unread().size()));
    if (!groups.isEmpty()) {
      report.orTell(
          output.folder(),
          () ->
              OutputLock.whileHeld(
                  output.folder(),
                  () ->
                      issues.whileOpen(
                          groups.stream().anyMatch(group -> !group.jobs().isEmpty()),
                          report.problems(),
                          () ->
                              groups.forEach(
                                  group -> report.orTell(group.root(), () -> run(group))))));
    }
    output.printing().ifPresent(it -> report.orTell(output.folder(), () -> it.send(report)));
    return report.end();
  }

  /**
   * Takes the sheets of a day whose job has left it out of the pile, and makes the file of all
   * anew; the exit code.
   */
  public int tidy(Path root, Path day) {
    report.orTell(
        output.folder(),
        () ->
            OutputLock.whileHeld(
                output.folder(),
                () -> issues.whileOpen(false, report.problems(), () -> tidyOpen(root, day))));
    return report.end();
  }

  private void tidyOpen(Path root, Path day) {
    Optional<ShopFolder> folder = folders.read(root, report.problems());
    if (folder.isPresent()) {
      String shop = folder.get().shop().name().value();
      targets
          .day(day)
          .map(target -> new DayOutput.Place(DayFolders.whole(day), false, target, shop))
          .map(place -> new DayOutput(place, files, issues, report))
          .ifPresent(
              it -> {
                it.open(DayFolders.numbers(day));
                it.close(batch, rest -> batch.run(rest, folder.get(), it::compare));
              });
    }
  }

  private void run(JobGroups group) {
    Optional<ShopFolder> folder = folders.read(group.root(), report.problems());
    folder.ifPresent(found -> run(group, found));
  }

  private void run(JobGroups group, ShopFolder folder) {
    Map<Path, DayOutput> days = days(group, folder.shop().name().value());
    List<Path> jobs = group.jobs().stream().filter(job -> days.containsKey(day(job))).toList();
    days.forEach((day, it) -> it.open(DayFolders.numbers(day)));
    batch.run(jobs, folder, outcome -> write(outcome, days.get(day(outcome.job()))));
    days.values().forEach(day -> day.close(batch, rest -> batch.run(rest, folder, day::compare)));
  }

  private static Path day(Path job) {
    return DayFolders.whole(job).getParent();
  }

  /** The days of the jobs, by the full path of their folder; without those that have no place. */
  private Map<Path, DayOutput> days(JobGroups group, String shop) {
    Set<Path> whole = new LinkedHashSet<>();
    group.days().forEach(day -> whole.add(DayFolders.whole(day)));
    Set<Path> all = new LinkedHashSet<>(whole);
    group.jobs().forEach(job -> all.add(day(job)));
    Map<Path, DayOutput> days = new LinkedHashMap<>();
    for (Path day : all) {
      targets
          .day(day)
          .map(target -> new DayOutput.Place(day, whole.contains(day), target, shop))
          .ifPresent(place -> days.put(day, new DayOutput(place, files, issues, report)));
    }
    return days;
  }

  private void write(Batch.Outcome outcome, DayOutput day) {
    report.problems().addAll(outcome.problems());
    outcome.fault().ifPresent(what -> report.fault(outcome.job(), what));
    boolean isMade = !outcome.drawn().isEmpty();
    if (!isMade || !report.orTell(outcome.job(), () -> writeMade(outcome, day))) {
      day.notDone(outcome.job(), isMade);
    }
  }

  private void writeMade(Batch.Outcome outcome, DayOutput day) {
    List<String> lines = new ArrayList<>();
    List<JsonObject> data = new ArrayList<>();
    outcome.drawn().forEach(issues::issue);
    for (SheetIssuer.Drawn drawn : outcome.drawn()) {
      DayOutput.Written written = write(drawn, day, !lines.isEmpty());
      lines.add(SummaryLine.of(drawn, written));
      data.add(SummaryLine.data(drawn, written));
      if (output.fillable()) {
        MadeSheet made = drawn.made();
        lines.add("    form  " + YamlFiles.shown(day.form(made, () -> batch.form(made))));
      }
      output.printing().ifPresent(it -> it.add(drawn.made(), written.file()));
    }
    day.done(outcome.job(), outcome.made());
    report.written(lines, data);
  }

  /** A disk that is full in the middle of a job leaves some of its sheets. */
  private DayOutput.Written write(SheetIssuer.Drawn drawn, DayOutput day, boolean begun) {
    try {
      return day.write(drawn, output.record(), output.again());
    } catch (UncheckedIOException e) {
      if (begun) {
        report.begun();
      }
      throw e;
    }
  }
}
