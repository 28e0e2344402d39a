package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.ShopFolder;
import baysheet.files.DayFolders;
import baysheet.files.ShopFolders;
import baysheet.output.MadeSheet;
import baysheet.output.SheetMaker;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.report.Problem;
import baysheet.report.Problems;
import baysheet.template.LayoutTemplates;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Layouts changed by chance end in a page that may be printed or in problems at lines, never in a
 * fault, and none takes 5 s. The seed is fixed. A part of them runs in every build; all run with
 *
 * <pre>mvn test -Dtest=MutatedLayoutsTest -Dlayout.mutants=2500 -DargLine=-Xmx256m</pre>
 */
class MutatedLayoutsTest {
  private static final int MUTANTS = Integer.getInteger("layout.mutants", 120);
  private static final long SEED = Long.getLong("layout.seed", 20_260_302);

  /** Of computing time, so that a busy machine makes no difference. */
  private static final long LONGEST_NANOSECONDS = 5_000_000_000L;

  /** A guard against what never ends, far from the limit. */
  private static final Duration HANGS = Duration.ofMinutes(2);

  private static final Path JOBS = Path.of("jobs");
  private static final List<String> LAYOUTS =
      List.of("bay-sheet.ftlx", "torque-first/bay-sheet.ftlx", "torque-card/bay-sheet.ftlx");

  private final PdfWriter writer = new PdfWriter();

  @TempDir private Path folder;

  @Test
  void layoutsChangedByChanceMakeNoFault() throws IOException {
    ShopFolders folders = new ShopFolders(DemoSheets.FONTS);
    ShopFolder shop = folders.read(JOBS, new Problems()).orElseThrow();
    List<Path> jobs = DayFolders.all(JOBS);
    LayoutMutator mutator = new LayoutMutator(SEED);
    String blocks = Files.readString(Path.of("templates/blocks.ftlx"));
    int made = 0;
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < MUTANTS; i++) {
      String layout = Files.readString(Path.of("templates", LAYOUTS.get(i % LAYOUTS.size())));
      boolean inBlocks = i % 2 == 0;
      write("bay-sheet.ftlx", inBlocks ? layout : mutator.mutate(layout));
      write("blocks.ftlx", inBlocks ? mutator.mutate(blocks) : blocks);
      Path job = jobs.get(i % jobs.size());
      int number = i;
      try {
        made += assertTimeoutPreemptively(HANGS, () -> make(number, job, folders, shop)) ? 1 : 0;
      } catch (AssertionError e) {
        faults.add(e.getMessage() + "; kept in " + kept(number));
      }
    }
    assertEquals(List.of(), faults);
    assertTrue(made > MUTANTS / 20, "only " + made + " of " + MUTANTS + " made a page");
    assertTrue(made < MUTANTS * 19 / 20, made + " of " + MUTANTS + " made a page");
  }

  /** Half a character becomes a question mark, as an editor would write it. */
  private void write(String file, String text) throws IOException {
    Files.write(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8));
  }

  /** Whether a page was made of the mutant that stands in the folder. */
  private boolean make(int number, Path job, ShopFolders folders, ShopFolder shop)
      throws IOException {
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    Problems problems = new Problems();
    List<MadeSheet> made = List.of();
    try {
      SheetMaker maker =
          new SheetMaker(folders, LayoutTemplates.in(folder), DemoSheets.FONTS, Optional.empty());
      made = maker.make(job, shop, problems);
      made.forEach(sheet -> SheetPdfs.pdf(writer, sheet));
    } catch (RuntimeException | Error e) {
      throw new AssertionError("mutant " + number + " on " + job + ": " + e, e);
    }
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    assertTrue(took < LONGEST_NANOSECONDS, "mutant " + number + " took " + took + " ns");
    if (made.isEmpty()) {
      assertTrue(problems.hasErrors(), "mutant " + number + " makes nothing and says nothing");
      problems.all().forEach(problem -> checkPlace(number, problem));
    }
    return !made.isEmpty();
  }

  /** Too much on the page is said of the job; everything else has its line in a layout. */
  private static void checkPlace(int number, Problem problem) {
    String where = "mutant " + number + ": " + problem;
    boolean ofJob = List.of("page-overrun", "page-too-wide").contains(problem.code().word());
    assertTrue(ofJob || problem.at().source().name().endsWith(".ftlx"), where);
    assertTrue(problem.at().line() >= 1, where);
    for (String java : List.of("Exception", "in template", "wrapper", "baysheet.", "freemarker.")) {
      assertFalse(problem.what().contains(java), where);
    }
  }

  private Path kept(int number) throws IOException {
    Path kept = Files.createDirectories(Path.of("target/mutant-" + number));
    for (String file : List.of("bay-sheet.ftlx", "blocks.ftlx")) {
      Files.writeString(kept.resolve(file), Files.readString(folder.resolve(file)));
    }
    return kept;
  }
}
