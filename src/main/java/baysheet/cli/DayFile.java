package baysheet.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gathers the sheets of a day folder for the file that holds them all. */
final class DayFile {
  /**
   * One file is made from all its pages at once, so that its size has an end. No garage has as many
   * jobs in a day.
   */
  static final int MOST = 100;

  private final Path day;
  private final Path target;
  private final Set<Path> jobs = new HashSet<>();
  private final List<MadeSheet> made = new ArrayList<>();

  DayFile(Path day, Path target) {
    this.day = day;
    this.target = target;
    DayFolders.jobs(day).forEach(job -> jobs.add(whole(job)));
  }

  Path day() {
    return day;
  }

  Path target() {
    return target;
  }

  /** How many jobs the day has, with or without a sheet. */
  int jobs() {
    return jobs.size();
  }

  /** The sheets there are; none where the day has too many jobs. */
  List<MadeSheet> made() {
    return List.copyOf(made);
  }

  boolean isTooLarge() {
    return jobs.size() > MOST;
  }

  /** Keeps a sheet if its job is one of the day. */
  void add(Batch.Outcome outcome) {
    if (!isTooLarge() && jobs.contains(whole(outcome.job()))) {
      outcome.made().ifPresent(made::add);
    }
  }

  /** The same for every way in which a file can be named. */
  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }
}
