package baysheet.output;

import baysheet.books.ShopFolder;
import baysheet.files.JobGroups;
import baysheet.files.ShopFolders;
import baysheet.files.YamlFiles;
import baysheet.report.Problems;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A run of the sheets that writes nothing: which sheets there would be, and every problem. */
public final class DryRun {
  private final Console console;
  private final ShopFolders folders;
  private final Batch batch;
  private final Problems problems = new Problems();
  private final List<Throwable> internal = new ArrayList<>();
  private int jobs;
  private int made;

  /**
   * A run.
   *
   * @param batch for sheets that are not issued
   */
  public DryRun(Console console, ShopFolders folders, Batch batch) {
    this.console = console;
    this.folders = folders;
    this.batch = batch;
  }

  /** Makes everything that was named, and drops it; the exit code. */
  public int run(List<Path> paths) {
    for (JobGroups group : JobGroups.of(paths, problems)) {
      jobs += group.jobs().size() + group.unread().size();
      Optional<ShopFolder> folder = folders.read(group.root(), problems);
      folder.ifPresent(found -> batch.run(group.jobs(), found, this::tell));
    }
    String result = made + " of " + jobs + (jobs == 1 ? " sheet" : " sheets") + " can be made";
    console.problems(problems.all(), result + "; nothing was written", false);
    if (problems.all().isEmpty()) {
      console.say(result + "; nothing was written");
    }
    internal.forEach(console::trace);
    return Exit.of(problems);
  }

  private void tell(Batch.Outcome outcome) {
    problems.addAll(outcome.problems());
    outcome.fault().ifPresent(fault -> fault(outcome.job(), fault));
    if (!outcome.drawn().isEmpty()) {
      made++;
      outcome.made().forEach(sheet -> console.say(SummaryLine.of(sheet)));
    }
  }

  private void fault(Path job, Throwable fault) {
    if (fault instanceof UncheckedIOException files) {
      problems.add(YamlFiles.cannotRead(job, files.getCause()));
    } else {
      problems.add(RunReport.internalError(job));
      internal.add(fault);
    }
  }
}
