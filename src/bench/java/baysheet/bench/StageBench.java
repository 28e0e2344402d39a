package baysheet.bench;

import baysheet.sheet.Sheet;

import baysheet.cli.Workshop;
import baysheet.layout.PageFit;
import baysheet.resolve.Resolved;
import baysheet.box.Form;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** One demo job, warm, on one thread: each stage on the result of the one before, and all of it. */
@State(Scope.Thread)
public class StageBench {
  /** Which job. */
  @Param public Demo demo;

  private Workshop workshop;
  private Resolved resolved;
  private Sheet sheet;
  private Form form;
  private PageFit.Fitted fitted;
  private byte[] record;

  /** Takes the job through all stages, so that each finds what it works on. */
  @Setup
  public void make() {
    workshop = new Workshop(Demo.SHOP);
    resolved = workshop.resolve(demo.job());
    sheet = workshop.plan(resolved);
    form = workshop.fill(sheet);
    fitted = workshop.fit(form);
    record = workshop.record(sheet, fitted);
  }

  /** From the job file to bound names. */
  @Benchmark
  public Resolved resolve() {
    return workshop.resolve(demo.job());
  }

  /** From bound names to what the sheet says. */
  @Benchmark
  public Sheet plan() {
    return workshop.plan(resolved);
  }

  /** From what the sheet says to boxes. */
  @Benchmark
  public Form fill() {
    return workshop.fill(sheet);
  }

  /** From boxes to a page. */
  @Benchmark
  public PageFit.Fitted fit() {
    return workshop.fit(form);
  }

  /** The sheet as data. */
  @Benchmark
  public byte[] record() {
    return workshop.record(sheet, fitted);
  }

  /** From a page to PDF bytes. */
  @Benchmark
  public byte[] draw() {
    return workshop.draw(sheet, fitted, record);
  }

  /** From the job file to PDF bytes. */
  @Benchmark
  public List<byte[]> sheet() {
    return workshop.sheets(demo.job());
  }
}
