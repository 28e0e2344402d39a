package baysheet.output;

import baysheet.books.ShopFolder;
import baysheet.files.Writers;
import baysheet.files.YamlFiles;
import baysheet.report.Problems;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;

/** Makes the sheets of many jobs on several threads; one bad job never stops the others. */
public final class Batch {
  /** Sheets in the making for each thread: enough that none waits for one slow job. */
  private static final int AHEAD = 8;

  private final Maker maker;
  private final int threads;
  private final Writers writers;
  private final SheetIssuer issues;

  /** For sheets that are not issued. */
  public Batch(Maker maker, int threads) {
    this(maker, threads, new Writers(), SheetIssuer.none());
  }

  /**
   * @param issues says which revision each sheet is
   */
  public Batch(Maker maker, int threads, Writers writers, SheetIssuer issues) {
    this.maker = maker;
    this.threads = threads;
    this.writers = writers;
    this.issues = issues;
  }

  /** What makes the sheets of one job; none when problems with errors were added. */
  public interface Maker {
    List<MadeSheet> make(Path job, ShopFolder folder, Revision revision, Problems problems);
  }

  /**
   * What became of a job.
   *
   * @param drawn its sheets and their files, one for each stage; none where it could not be made
   * @param fault what went wrong in the tool itself, or with reading the file
   */
  public record Outcome(
      Path job, List<SheetIssuer.Drawn> drawn, Problems problems, Optional<Throwable> fault) {
    public List<MadeSheet> made() {
      return drawn.stream().map(SheetIssuer.Drawn::made).toList();
    }
  }

  /**
   * Makes the sheets and hands each outcome on, in the order of the jobs. Outcomes are large, so
   * only a few are made ahead of the one that is due: many jobs take no more memory than some.
   */
  public void run(List<Path> jobs, ShopFolder folder, Consumer<Outcome> each) {
    int atOnce = Math.max(1, Math.min(threads, jobs.size()));
    ExecutorService pool = Executors.newFixedThreadPool(atOnce);
    Deque<Future<Outcome>> ahead = new ArrayDeque<>();
    try {
      for (Path job : jobs) {
        if (ahead.size() == AHEAD * atOnce) {
          each.accept(ahead.remove().get());
        }
        ahead.add(pool.submit(() -> one(job, folder)));
      }
      while (!ahead.isEmpty()) {
        each.accept(ahead.remove().get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while making " + jobs.size() + " sheets", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a sheet could not be made", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  /** All sheets of a day in one file. */
  byte[] all(List<MadeSheet> sheets) {
    return writers.write(writer -> SheetPdfs.all(writer, sheets));
  }

  private byte[] pdf(MadeSheet sheet) {
    return writers.write(writer -> SheetPdfs.pdf(writer, sheet));
  }

  /** A sheet as a form to fill in on a screen. */
  byte[] form(MadeSheet sheet) {
    return writers.write(writer -> SheetPdfs.form(writer, sheet));
  }

  /** A fault is kept with its job, to be reported in full once the others are done. */
  private Outcome one(Path job, ShopFolder folder) {
    Problems problems = new Problems();
    try {
      // A value that could not be read counts as left out further on, so one error is enough.
      List<SheetIssuer.Drawn> drawn =
          issues.settled(
              job,
              revision -> {
                List<MadeSheet> made = maker.make(job, folder, revision, problems);
                return problems.hasErrors() ? List.of() : made;
              },
              this::pdf,
              problems);
      return new Outcome(job, drawn, problems, Optional.empty());
    } catch (StackOverflowError | OutOfMemoryError e) {
      problems.add(YamlFiles.tooMuch(job));
      return new Outcome(job, List.of(), problems, Optional.empty());
    } catch (RuntimeException e) {
      return new Outcome(job, List.of(), problems, Optional.of(e));
    }
  }
}
