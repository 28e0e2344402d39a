package baysheet.bench;

import baysheet.sheet.Sheet;

import baysheet.books.ShopFolder;
import baysheet.cli.Workshop;
import baysheet.resolve.Resolved;
import java.io.IOException;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What a run does once, and planning a job that is larger than any day's. */
@State(Scope.Thread)
public class LargeJobBench {
  private Workshop workshop;
  private Resolved resolved;

  /** Makes up the job. */
  @Setup
  public void make() throws IOException {
    LargeJob job = LargeJob.write();
    workshop = new Workshop(job.root());
    resolved = workshop.resolve(job.file());
    int steps = workshop.plan(resolved).steps().size();
    if (steps < LargeJob.STEPS) {
      throw new IllegalStateException("only " + steps + " steps");
    }
  }

  /** All books of the demo shop folder. */
  @Benchmark
  public ShopFolder readBooks() {
    return workshop.books(Demo.SHOP);
  }

  /** From bound names to what the sheet says. */
  @Benchmark
  public Sheet planLargeJob() {
    return workshop.plan(resolved);
  }
}
