package baysheet.cli;

import baysheet.books.ShopFolder;
import baysheet.pdf.PdfWriter;
import baysheet.report.Problems;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Makes the sheets of many jobs on several threads; one bad job never stops the others. */
final class Batch {
  private final Maker maker;
  private final int threads;
  private final ThreadLocal<PdfWriter> writers = ThreadLocal.withInitial(PdfWriter::new);

  Batch(Maker maker, int threads) {
    this.maker = maker;
    this.threads = threads;
  }

  /** What makes the sheet of one job; empty when problems with errors were added. */
  interface Maker {
    Optional<MadeSheet> make(Path job, ShopFolder folder, Problems problems);
  }

  /**
   * What became of a job.
   *
   * @param pdf the file's bytes, where there is a sheet
   * @param fault what went wrong in the tool itself, or with reading the file
   */
  record Outcome(
      Path job,
      Optional<MadeSheet> made,
      Optional<byte[]> pdf,
      Problems problems,
      Optional<Throwable> fault) {}

  /** Outcomes in the order of the jobs. */
  List<Outcome> run(List<Path> jobs, ShopFolder folder) {
    ExecutorService pool =
        Executors.newFixedThreadPool(Math.max(1, Math.min(threads, jobs.size())));
    try {
      List<Future<Outcome>> running = new ArrayList<>();
      jobs.forEach(job -> running.add(pool.submit(() -> one(job, folder))));
      List<Outcome> outcomes = new ArrayList<>();
      for (Future<Outcome> future : running) {
        outcomes.add(future.get());
      }
      return outcomes;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while making " + jobs.size() + " sheets", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a sheet could not be made", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  /** A fault is kept with its job, to be told in full once the others are done. */
  private Outcome one(Path job, ShopFolder folder) {
    Problems problems = new Problems();
    try {
      // A value that could not be read counts as left out further on, so one error is enough.
      Optional<MadeSheet> made =
          maker.make(job, folder, problems).filter(sheet -> !problems.hasErrors());
      Optional<byte[]> pdf = made.map(sheet -> Day.pdf(writers.get(), sheet));
      return new Outcome(job, made, pdf, problems, Optional.empty());
    } catch (RuntimeException | StackOverflowError e) {
      return new Outcome(job, Optional.empty(), Optional.empty(), problems, Optional.of(e));
    }
  }
}
