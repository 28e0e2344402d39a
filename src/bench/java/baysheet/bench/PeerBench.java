package baysheet.bench;

import baysheet.sheet.Sheet;

import baysheet.cli.Workshop;
import baysheet.layout.PageFit;
import baysheet.box.Form;
import java.io.IOException;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The words of one demo sheet, by four ways to one page: fixed places drawn by the PDF library
 * alone (the floor), this tool, and two general layout engines. The last two get less to do: no
 * drawings, no tags, no size to find, no attached record.
 */
@State(Scope.Thread)
public class PeerBench {
  private Workshop workshop;
  private Sheet sheet;
  private Form form;
  private byte[] record;
  private PageFit.Fitted fitted;
  private DrawnPage drawn;
  private Floor floor;
  private HtmlPage html;
  private TablePage tables;

  /** Prepares fonts and words once; each way keeps what it can keep. */
  @Setup
  public void make() throws IOException {
    workshop = new Workshop(Demo.SHOP);
    sheet = workshop.plan(workshop.resolve(Demo.ONE_PAGE.job()));
    form = workshop.fill(sheet);
    fitted = workshop.fit(form);
    record = workshop.record(sheet, fitted);
    Outline outline = Outline.of(fitted.page());
    drawn = DrawnPage.of(fitted.page());
    floor = new Floor(drawn);
    html = new HtmlPage(outline);
    tables = new TablePage(outline);
  }

  /** The page's items at their places, nothing else. */
  @Benchmark
  public byte[] floor() throws IOException {
    return floor.write(drawn);
  }

  /** This tool, from boxes to PDF bytes. */
  @Benchmark
  public byte[] baysheetFromBoxes() {
    return workshop.draw(sheet, workshop.fit(form), record);
  }

  /** This tool, from the job file to PDF bytes. */
  @Benchmark
  public List<byte[]> baysheetFromJobFile() {
    return workshop.sheets(Demo.ONE_PAGE.job());
  }

  /** HTML and CSS. */
  @Benchmark
  public byte[] openhtmltopdf() throws IOException {
    return html.write();
  }

  /** Nested tables. */
  @Benchmark
  public byte[] openPdf() throws IOException {
    return tables.write();
  }
}
