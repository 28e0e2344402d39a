package baysheet.cli;

import baysheet.output.SheetMaker;
import baysheet.output.MadeSheet;
import baysheet.output.Day;
import baysheet.files.ShopFolders;
import baysheet.books.ShopFolder;
import baysheet.box.Form;
import baysheet.layout.Fonts;
import baysheet.layout.PageFit;
import baysheet.pdf.PdfWriter;
import baysheet.plan.Planner;
import baysheet.record.SheetId;
import baysheet.record.SheetRecord;
import baysheet.report.Problems;
import baysheet.resolve.Resolved;
import baysheet.sheet.Sheet;
import baysheet.template.Layouts;
import baysheet.wording.SheetText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A shop folder that is read already, and each stage from a job file to PDF bytes on its own. It
 * stands in this package so that what is measured is what the commands run.
 */
public final class Workshop {
  private static final String LAYOUT = "bay-sheet";

  private final Fonts fonts = Fonts.builtIn();
  private final Layouts layouts = Layouts.builtIn();
  private final ShopFolders folders = new ShopFolders(fonts);
  private final SheetMaker maker = new SheetMaker(folders, layouts, fonts, Optional.empty());
  private final PdfWriter writer = new PdfWriter();
  private final ShopFolder folder;

  /**
   * Reads a shop folder.
   *
   * @throws IllegalStateException when anything in it is wrong
   */
  public Workshop(Path root) {
    Problems problems = new Problems();
    folder = sound(folders.read(root, problems), problems);
  }

  /** Reads all books of a shop folder anew. */
  public ShopFolder books(Path root) {
    Problems problems = new Problems();
    return sound(folders.read(root, problems), problems);
  }

  /** The text of a job file, read and bound to the books. */
  public Resolved resolve(Path job) {
    Problems problems = new Problems();
    return sound(maker.resolve(job, folder, problems), problems);
  }

  /** What the sheet says, thought through and played back. */
  public Sheet plan(Resolved resolved) {
    Problems problems = new Problems();
    return sound(Planner.plan(resolved, problems), problems);
  }

  /** The layout filled with a sheet's words, read as boxes. */
  public Form fill(Sheet sheet) {
    Problems problems = new Problems();
    return sound(
        layouts.fill(LAYOUT, words(sheet), problems), problems);
  }

  /** The boxes at the largest size at which they fit the page. */
  public PageFit.Fitted fit(Form form) {
    if (PageFit.fit(form, fonts) instanceof PageFit.Fitted fitted) {
      return fitted;
    }
    throw new IllegalStateException("does not fit: " + form.title());
  }

  /** The sheet as data. */
  public byte[] record(Sheet sheet, PageFit.Fitted fitted) {
    return SheetRecord.write(
        sheet,
        SheetId.of(sheet),
        sheet.heading().style().paper().word(),
        fitted.page(),
        fitted.fit());
  }

  /** The page as PDF bytes, with the record attached. */
  public byte[] draw(Sheet sheet, PageFit.Fitted fitted, byte[] record) {
    return Day.pdf(
        writer, new MadeSheet(sheet, SheetId.of(sheet), fitted.page(), fitted.fit(), record));
  }

  /** The whole chain, as a run of the sheets command goes through it: a file for each stage. */
  public List<byte[]> sheets(Path job) {
    Problems problems = new Problems();
    List<MadeSheet> made = maker.make(job, folder, problems);
    sound(made.stream().findFirst(), problems);
    return made.stream().map(sheet -> Day.pdf(writer, sheet)).toList();
  }

  private static <T> T sound(Optional<T> made, Problems problems) {
    if (problems.hasErrors() || made.isEmpty()) {
      throw new IllegalStateException("cannot be measured: " + problems.all());
    }
    return made.get();
  }

  private static SheetText words(Sheet sheet) {
    SheetId id = SheetId.of(sheet);
    return SheetText.of(sheet, id.text(), id.code());
  }
}
