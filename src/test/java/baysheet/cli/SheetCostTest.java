package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.ShopFolder;
import baysheet.files.FolderListing;
import baysheet.files.ShopFolders;
import baysheet.layout.Fonts;
import baysheet.output.MadeSheet;
import baysheet.output.Revision;
import baysheet.output.SheetMaker;
import baysheet.output.SheetPages;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.plan.Planner;
import baysheet.plan.TracedPlan;
import baysheet.plan.stage.Division;
import baysheet.report.Located;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.template.LayoutTemplates;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What sheets cost in counts that do not depend on the machine: bytes allocated, measurements of a
 * page, and how often it is asked whether a stage fits. The limits are a fifth above what was
 * measured when they were set; a change that needs more has to say what for.
 */
class SheetCostTest {
  private static final Path SHOP = Path.of("jobs");
  private static final List<String> DAYS = List.of("2026-03-02", "2026-03-03");
  private static final Path ONE_PAGE = SHOP.resolve("2026-03-02/2407.yaml");

  private static final long MOST_BYTES_OF_A_SHEET = 17_000_000;
  private static final int MOST_MEASUREMENTS = 8;

  /** More than for one division a job: a job that rests on its blocks is first tried without. */
  private static final int MOST_ASKED = 450;

  private final Fonts fonts = Fonts.builtIn();
  private final ShopFolders folders = new ShopFolders(fonts);
  private final SheetMaker maker =
      new SheetMaker(folders, LayoutTemplates.builtIn(), fonts, Optional.empty());
  private final ShopFolder shop = folders.read(SHOP, new Problems()).orElseThrow();

  @Test
  void bytesAllocatedForASheetOfOnePage() {
    PdfWriter writer = new PdfWriter();
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long least = Long.MAX_VALUE;
    // What is made once, and by the machine's compiler, comes off with the first rounds.
    for (int round = 0; round < 30; round++) {
      long before = threads.getCurrentThreadAllocatedBytes();
      List<MadeSheet> made = maker.make(ONE_PAGE, shop, new Problems());
      assertEquals(1, made.size());
      assertTrue(SheetPdfs.pdf(writer, made.get(0)).length > 0);
      least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
    }
    assertTrue(least <= MOST_BYTES_OF_A_SHEET, least + " bytes");
  }

  @Test
  void measurementsOfASheetOfOnePage() {
    int measured = maker.make(ONE_PAGE, shop, new Problems()).get(0).fit().measurements();
    assertTrue(measured <= MOST_MEASUREMENTS, measured + " measurements");
  }

  @Test
  void howOftenItIsAskedWhetherAStageFits() {
    int asked = 0;
    for (Path job : jobs()) {
      Resolved resolved = maker.resolve(job, shop, new Problems()).orElseThrow();
      TracedPlan plan = Planner.traced(resolved, new Problems()).orElseThrow();
      int least = resolved.job().sheets().stages().map(Located::value).orElse(1);
      SheetPages pages =
          new SheetPages(
              LayoutTemplates.builtIn(),
              fonts,
              Optional.empty(),
              Revision.FIRST,
              folders,
              job,
              new Problems());
      asked += Division.of(plan.stages(), least, pages::fits).asked();
    }
    assertTrue(asked <= MOST_ASKED, "asked " + asked + " times");
  }

  private static List<Path> jobs() {
    List<Path> jobs = new ArrayList<>();
    DAYS.forEach(day -> jobs.addAll(FolderListing.of(SHOP.resolve(day), new Problems()).files()));
    assertEquals(14, jobs.size());
    return jobs;
  }
}
