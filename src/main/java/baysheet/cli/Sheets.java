package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.report.Problems;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes and writes the sheets of one run, and tells what came of them. */
final class Sheets {
  private final Console console;
  private final ShopFolders folders;
  private final Batch batch;
  private final boolean record;
  private final Problems problems = new Problems();
  private final Targets targets;
  private final List<Fault> faults = new ArrayList<>();
  private int jobs;
  private int written;

  Sheets(Console console, ShopFolders folders, Batch batch, Path out, boolean record) {
    this.console = console;
    this.folders = folders;
    this.batch = batch;
    this.targets = new Targets(out, problems);
    this.record = record;
  }

  /** What kept a sheet from being made or written, other than a problem of the files. */
  private record Fault(Path job, Throwable what) {
    boolean ofFiles() {
      return what instanceof UncheckedIOException;
    }
  }

  /** Makes everything that was named; the exit code. */
  int run(List<Path> paths) {
    for (JobGroups group : JobGroups.of(paths, problems)) {
      run(group);
    }
    console.problems(problems.all(), consequence(), false);
    faults.forEach(this::tell);
    if (!faults.isEmpty() && problems.all().isEmpty()) {
      console.complain(consequence());
    }
    return exit();
  }

  private int exit() {
    if (!faults.isEmpty()) {
      return faults.stream().allMatch(Fault::ofFiles) ? Exit.FILES : Exit.FAULT;
    }
    return problems.hasErrors() ? Exit.PROBLEMS : Exit.DONE;
  }

  private void run(JobGroups group) {
    jobs += group.jobs().size();
    Optional<ShopFolder> folder = folders.read(group.root(), problems);
    if (folder.isEmpty()) {
      return;
    }
    List<DayFile> days = new ArrayList<>();
    group
        .days()
        .forEach(day -> targets.all(day).ifPresent(file -> days.add(new DayFile(day, file))));
    batch.run(
        group.jobs(),
        folder.get(),
        outcome -> {
          write(outcome);
          days.forEach(day -> day.add(outcome));
        });
    days.forEach(this::writeDay);
  }

  private void write(Batch.Outcome outcome) {
    problems.addAll(outcome.problems());
    outcome.fault().ifPresent(what -> faults.add(new Fault(outcome.job(), what)));
    if (outcome.made().isPresent() && outcome.pdf().isPresent()) {
      MadeSheet made = outcome.made().get();
      targets
          .sheet(outcome.job(), made.sheet().heading().job())
          .ifPresent(file -> orTell(outcome.job(), () -> write(made, file, outcome.pdf().get())));
    }
  }

  private void write(MadeSheet made, Path target, byte[] pdf) {
    OutFiles.write(target, pdf);
    if (record) {
      OutFiles.write(target.resolveSibling(made.sheet().heading().job() + ".json"), made.record());
    }
    written++;
    console.say(SummaryLine.of(made, target));
  }

  /** A file that cannot be written is told at the end, and does not keep others from theirs. */
  private void orTell(Path job, Runnable writing) {
    try {
      writing.run();
    } catch (UncheckedIOException e) {
      faults.add(new Fault(job, e));
    }
  }

  /** The day's sheets in one file, as far as there are any. */
  private void writeDay(DayFile day) {
    if (day.isTooLarge()) {
      // One of an earlier run would be printed as this morning's.
      orTell(day.day(), () -> OutFiles.remove(day.target()));
      console.say(SummaryLine.tooMany(day.jobs(), DayFile.MOST, day.target()));
    } else if (!day.made().isEmpty()) {
      orTell(day.day(), () -> writeAll(day));
    }
  }

  private void writeAll(DayFile day) {
    OutFiles.write(day.target(), batch.all(day.made()));
    console.say(SummaryLine.all(day.made().size(), day.jobs(), day.target()));
  }

  private String consequence() {
    return written == jobs
        ? "all " + jobs + " sheets were written"
        : "%s of %s sheets were written; the others were left as they were"
            .formatted(written, jobs);
  }

  private void tell(Fault fault) {
    if (fault.what() instanceof UncheckedIOException files) {
      console.complain(files);
      return;
    }
    console.complain(
        "This is a fault of baysheet itself, not of your files. No sheet was made for "
            + YamlFiles.shown(fault.job())
            + ". Please report all of this:");
    fault.what().printStackTrace(console.err());
    console.err().flush();
  }
}
