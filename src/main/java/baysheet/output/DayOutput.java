package baysheet.output;

import baysheet.files.DayFolders;
import baysheet.files.FolderListing;
import baysheet.files.YamlFiles;
import baysheet.pdf.PdfMetadata;
import baysheet.report.Problems;
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
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * The folder of one day's sheets: a file for each job, and one that holds them all. Before anything
 * changes in the folder the file of all is removed, and it is made anew last, so that it never
 * shows another sheet than the one that lies beside it.
 */
public final class DayOutput {
  /**
   * One file is made from all its pages at once, so that its size has an end. No garage has as many
   * jobs in a day.
   */
  public static final int MOST = 100;

  private final Place place;
  private final OutFiles files;
  private final SheetIssuer issues;
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

  /** Numbers of the files that were meant to be jobs and cannot be read. */
  private final List<String> unread;

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

  DayOutput(Place place, OutFiles files, SheetIssuer issues, RunReport report) {
    this.place = place;
    this.files = files;
    this.issues = issues;
    this.report = report;
    // What is wrong with the folder is said where its jobs are listed.
    FolderListing listing = FolderListing.ofOptional(place.day(), new Problems());
    listing.files().forEach(job -> jobs.put(DayFolders.whole(job), job));
    this.unread = listing.unread().stream().map(DayFolders::numberOf).toList();
    missing.addAll(unread);
  }

  /**
   * Clears the folder of what interrupted runs left, and of sheets whose job is gone.
   *
   * @param kept numbers of jobs whose sheets stay
   */
  void open(Set<String> kept) {
    this.kept = kept;
    report.orTell(place.day(), () -> OutFiles.parts(place.folder()).forEach(this::removePart));
    if (isOfShop()) {
      OldSheets old = old(kept);
      report.orTell(place.day(), () -> old.find().forEach(job -> cancelled(old, job)));
    }
    if (place.whole()) {
      unread.forEach(this::unreadable);
    }
  }

  /** A folder elsewhere, of an archive say, may have the name of a day without being it. */
  private boolean isOfShop() {
    return DayFolders.isInShop(place.day());
  }

  private OldSheets old(Set<String> kept) {
    return new OldSheets(place.folder(), place.shop(), kept);
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

  private void cancelled(OldSheets old, String job) {
    setAllAside();
    issues.withdrawn(job, place.folder());
    withdraw(old, job, SummaryLine.noSuchJob(place.day()));
  }

  /** A misnamed copy stands against no job that can be read. */
  private void unreadable(String job) {
    report.refused();
    if (jobs.values().stream().noneMatch(it -> YamlFiles.name(it).equals(job))) {
      withdrawRefused(job);
    }
  }

  /**
   * A sheet of an earlier run no longer says what the job's file says. The ledger keeps it: the job
   * is not cancelled, and the paper may be in use.
   */
  private void withdrawRefused(String job) {
    if (isOfShop()) {
      report.orTell(
          place.day(),
          () -> {
            OldSheets old = old(kept);
            for (String name : old.others(job, Set.of())) {
              setAllAside();
              withdraw(old, name, SummaryLine.REFUSED);
            }
          });
    }
  }

  private void withdraw(OldSheets old, String job, String why) {
    old.withdraw(
        job,
        files,
        moved -> {
          changed = true;
          report.say(SummaryLine.withdrawn(moved, why));
        });
  }

  /** A job that has another number of sheets than before leaves none of those. */
  private void withdrawOthers(String job, Set<String> names) {
    issues.only(job, names);
    OldSheets old = old(kept);
    for (String name : old.others(job, names)) {
      setAllAside();
      withdraw(old, name, SummaryLine.hasSheets(names.size()));
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
  Written write(SheetIssuer.Drawn drawn, boolean record, boolean again) {
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
    old(kept).withdrawForms(sheet.sheet().name(), sheet.id().text(), files);
    if (both) {
      files.write(target, pdf, beside, sheet.record()).ifPresent(it -> report.fault(target, it));
    } else {
      files.write(target, pdf);
    }
    changed = true;
    return new Written(target, true);
  }

  /**
   * Writes the form of a sheet, unless one lies there: somebody may have filled it in.
   *
   * @return where it is
   */
  Path form(MadeSheet made, Supplier<byte[]> draw) {
    Path form = place.folder().resolve(OldSheets.FORMS).resolve(made.id().text() + ".pdf");
    if (!Files.exists(form)) {
      files.write(form, draw.get());
    }
    return form;
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
    if (!failed) {
      report.refused();
      withdrawRefused(YamlFiles.name(job));
    }
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
    return Files.isRegularFile(place.all())
        && PdfMetadata.of(OutFiles.bytes(place.all()))
            .filter(it -> it.author().equals(place.shop()))
            .filter(it -> it.keywords().equals(SheetPdfs.KEYWORDS))
            .isPresent();
  }

  /**
   * Makes the file of all sheets, where it is wanted or was there.
   *
   * @param others makes the sheets of jobs that were not named and has them compared
   */
  void close(Batch batch, Consumer<List<Path>> others) {
    if (place.whole() && jobs.isEmpty() && unread.isEmpty()) {
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
          SummaryLine.all(
              sheets.size(), jobsKept, jobs.size() + unread.size(), missing, place.all()));
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
