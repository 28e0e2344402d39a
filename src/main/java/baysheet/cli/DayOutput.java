package baysheet.cli;

import baysheet.pdf.PdfMetadata;
import baysheet.report.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * The folder of one day's sheets: a file for each job, and one that holds them all. Before anything
 * changes in the folder the file of all is removed, and it is made anew last, so that it never
 * shows another sheet than the one that lies beside it.
 */
final class DayOutput {
  /**
   * One file is made from all its pages at once, so that its size has an end. No garage has as many
   * jobs in a day.
   */
  static final int MOST = 100;

  private final Place place;
  private final OutFiles files;
  private final Issues issues;
  private final RunReport report;

  /** The day's job files by their full path. */
  private final Map<Path, Path> jobs = new LinkedHashMap<>();

  private final Set<Path> named = new HashSet<>();
  private Set<String> kept = Set.of();
  private int jobsKept;
  private final List<MadeSheet> sheets = new ArrayList<>();
  private final List<String> missing = new ArrayList<>();
  private final List<String> outOfDate = new ArrayList<>();

  /** Where the old file of all sheets was put, if it was put aside. */
  private Optional<Path> oldAll = Optional.empty();

  /** Files that were meant to be jobs and cannot be read. */
  private final int unread;

  private boolean changed;
  private boolean failed;

  /**
   * What a day is made from and where it goes.
   *
   * @param day the folder of the job files
   * @param whole whether all of them are made in this run
   * @param folder the folder of its sheets
   * @param shop the name of the shop; files of others are left alone
   */
  record Place(Path day, boolean whole, Path folder, String shop) {
    /** The file that holds all sheets of the day. */
    Path all() {
      return sheet(Targets.ALL);
    }

    Path sheet(String job) {
      return folder.resolve(job + ".pdf");
    }

    Path record(String job) {
      return folder.resolve(job + ".json");
    }
  }

  DayOutput(Place place, OutFiles files, Issues issues, RunReport report) {
    this.place = place;
    this.files = files;
    this.issues = issues;
    this.report = report;
    // What is wrong with the folder is said where its jobs are listed.
    FolderListing listing = FolderListing.ofOptional(place.day(), new Problems());
    listing.files().forEach(job -> jobs.put(DayFolders.whole(job), job));
    listing.unread().forEach(job -> missing.add(YamlFiles.stem(job)));
    this.unread = listing.unread().size();
  }

  /**
   * Clears the folder of what interrupted runs left, and of sheets whose job is gone.
   *
   * @param kept numbers of jobs whose sheets stay
   */
  void open(Set<String> kept) {
    this.kept = kept;
    report.orTell(place.day(), () -> OutFiles.parts(place.folder()).forEach(this::removePart));
    // A folder elsewhere, of an archive say, may have the name of a day without being it.
    if (DayFolders.isInShop(place.day())) {
      OldSheets old = new OldSheets(place.folder(), place.shop(), kept);
      report.orTell(place.day(), () -> old.find().forEach(job -> withdraw(old, job)));
    }
  }

  /** An interrupted run that put the file of all aside did not come to make it anew. */
  private void removePart(Path part) {
    if (OutFiles.isPartOf(place.all(), part) && oldAll.isEmpty()) {
      oldAll = Optional.of(part);
      changed = true;
    } else {
      files.remove(part);
    }
  }

  private void withdraw(OldSheets old, String job) {
    setAllAside();
    issues.withdrawn(job, place.folder());
    old.withdraw(
        job,
        files,
        moved -> {
          changed = true;
          report.say(SummaryLine.withdrawn(moved, place.day()));
        });
  }

  /** A job that has another number of sheets than before leaves none of those. */
  private void withdrawOthers(String job, Set<String> names) {
    issues.only(job, names);
    OldSheets old = new OldSheets(place.folder(), place.shop(), kept);
    for (String name : old.others(job, names)) {
      setAllAside();
      old.withdraw(
          name,
          files,
          moved -> {
            changed = true;
            report.say(SummaryLine.withdrawnFor(moved, names.size()));
          });
    }
  }

  /** Where a sheet is, and whether it had to be written. */
  record Written(Path file, boolean anew) {}

  /**
   * Writes a sheet, unless it lies there already.
   *
   * @param record whether its record is wanted beside it; one that lies there is kept in step
   * @param again whether it is written even so
   * @throws UncheckedIOException naming the path
   */
  Written write(Issues.Drawn drawn, boolean record, boolean again) {
    MadeSheet sheet = drawn.made();
    byte[] pdf = drawn.pdf();
    Path target = place.sheet(sheet.sheet().name());
    Path beside = place.record(sheet.sheet().name());
    boolean both = record || Files.isRegularFile(beside);
    boolean lies = OutFiles.holds(target, pdf) && (!both || OutFiles.holds(beside, sheet.record()));
    if (lies && !again) {
      return new Written(target, false);
    }
    setAllAside();
    if (both) {
      files.write(target, pdf, beside, sheet.record()).ifPresent(it -> report.fault(target, it));
    } else {
      files.write(target, pdf);
    }
    changed = true;
    return new Written(target, true);
  }

  /** A job of the day whose sheets lie in their places now. */
  void done(Path job, List<MadeSheet> all) {
    withdrawOthers(
        YamlFiles.name(job),
        all.stream().map(made -> made.sheet().name()).collect(Collectors.toSet()));
    named.add(DayFolders.whole(job));
    keep(all);
  }

  /**
   * A job of the day that got no sheet in this run.
   *
   * @param failed whether it could not be written although it was made
   */
  void notDone(Path job, boolean failed) {
    this.failed |= failed;
    named.add(DayFolders.whole(job));
    leftOut(job);
  }

  private void keep(List<MadeSheet> all) {
    if (jobs.size() <= MOST) {
      sheets.addAll(all);
      jobsKept++;
    }
  }

  /** Where the whole day is made it is said with the problems why a sheet is older than its job. */
  private void leftOut(Path job) {
    String number = YamlFiles.name(job);
    boolean old = Files.exists(place.sheet(number)) || Files.exists(place.sheet(number + "-1"));
    (old && !place.whole() ? outOfDate : missing).add(number);
  }

  /** Before anything changes: what shows an old sheet must not outlive it. */
  private void setAllAside() {
    if (oldAll.isEmpty() && isOurs()) {
      oldAll = Optional.of(files.setAside(place.all()));
    }
  }

  private boolean isOurs() {
    try {
      return Files.isRegularFile(place.all())
          && PdfMetadata.of(Files.readAllBytes(place.all()))
              .filter(it -> it.author().equals(place.shop()))
              .filter(it -> it.keywords().equals(Day.KEYWORDS))
              .isPresent();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + place.all(), e);
    }
  }

  /**
   * Makes the file of all sheets, where it is wanted or was there.
   *
   * @param others makes the sheets of jobs that were not named and has them compared
   */
  void close(Batch batch, Consumer<List<Path>> others) {
    if (place.whole() && jobs.isEmpty() && unread == 0) {
      report.say(SummaryLine.unplanned(place.day()));
      oldAll.ifPresent(files::discard);
    } else if (place.whole() && jobs.size() > MOST) {
      // One of an earlier run would be printed as this morning's.
      report.orTell(place.day(), () -> files.remove(place.all()));
      oldAll.ifPresent(files::discard);
      report.say(SummaryLine.tooMany(jobs.size(), MOST, place.all()));
    } else if (oldAll.isPresent() && !changed) {
      report.orTell(place.day(), () -> files.move(oldAll.get(), place.all()));
    } else if (place.whole() || oldAll.isPresent()) {
      report.orTell(place.day(), () -> writeAll(batch, others));
    }
  }

  private void writeAll(Batch batch, Consumer<List<Path>> others) {
    List<Path> rest = new ArrayList<>(jobs.values());
    rest.removeIf(job -> named.contains(DayFolders.whole(job)));
    others.accept(rest);
    if (!outOfDate.isEmpty()) {
      report.say(SummaryLine.allRemoved(outOfDate, place.day(), place.all()));
    } else if (!sheets.isEmpty()) {
      byte[] pdf = batch.all(sheets);
      if (!OutFiles.holds(place.all(), pdf)) {
        files.write(place.all(), pdf);
      }
      report.say(
          SummaryLine.all(sheets.size(), jobsKept, jobs.size() + unread, missing, place.all()));
    }
    // Where writing failed the next run finds it, and makes a new one.
    oldAll.filter(old -> !failed).ifPresent(files::discard);
  }

  /**
   * A sheet that nobody asked for is left as it is; it is shown with the others where it is still
   * what its job file gives.
   */
  void compare(Batch.Outcome outcome) {
    boolean lies =
        outcome.drawn().stream()
            .allMatch(it -> OutFiles.holds(place.sheet(it.made().sheet().name()), it.pdf()));
    if (lies && !outcome.drawn().isEmpty()) {
      keep(outcome.made());
    } else {
      leftOut(outcome.job());
    }
  }
}
