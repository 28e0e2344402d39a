package baysheet.output;

import baysheet.files.NaturalOrder;
import baysheet.layout.Page;
import baysheet.pdf.Attachment;
import baysheet.pdf.PdfInfo;
import baysheet.pdf.PdfWriter;
import baysheet.sheet.Heading;
import baysheet.wording.Language;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;

/** Draws sheets into PDF files: each alone, and a day's together in bay order. */
public final class SheetPdfs {
  /** Of the file of all sheets; a single sheet also says its id. */
  static final List<String> KEYWORDS = List.of("bay sheets");

  private SheetPdfs() {}

  /** One sheet with its record attached. */
  public static byte[] pdf(PdfWriter writer, MadeSheet made) {
    return writer.write(made.page(), info(made), List.of(attachment(made)));
  }

  /** The same sheet as a form to fill in on a screen. */
  static byte[] form(PdfWriter writer, MadeSheet made) {
    return writer.writeForm(made.page(), info(made), List.of(attachment(made)));
  }

  /** All sheets in one file for the morning's printing, by bay, then by job and its stages. */
  public static byte[] all(PdfWriter writer, List<MadeSheet> sheets) {
    List<MadeSheet> ordered = sheets.stream().sorted(bayOrder()).toList();
    List<Page> pages = ordered.stream().map(MadeSheet::page).toList();
    List<Attachment> records = ordered.stream().map(SheetPdfs::attachment).toList();
    Heading first = ordered.get(0).sheet().heading();
    String title = "Bay sheets of " + first.date() + ", " + first.shop();
    return writer.writeAll(
        pages,
        new PdfInfo(title, "en", first.shop(), title, KEYWORDS, date(first), title),
        records);
  }

  static Comparator<MadeSheet> bayOrder() {
    return Comparator.comparing(
            (MadeSheet made) -> made.sheet().heading().bay().name(), NaturalOrder.NATURAL)
        .thenComparing(made -> made.sheet().heading().job(), NaturalOrder.NATURAL)
        .thenComparing(made -> made.sheet().name(), NaturalOrder.NATURAL);
  }

  private static PdfInfo info(MadeSheet made) {
    Heading heading = made.sheet().heading();
    String title = "Bay sheet " + made.sheet().name() + ": " + Language.of(heading).title(heading);
    return new PdfInfo(
        title,
        "en",
        heading.shop(),
        heading.vehicle().name(),
        List.of("bay sheet", made.id().text()),
        date(heading),
        made.id().text());
  }

  /** The job's date stands for the time of making, so that the same job gives the same bytes. */
  private static Instant date(Heading heading) {
    return heading.date().atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  private static Attachment attachment(MadeSheet made) {
    return new Attachment(
        made.sheet().name() + ".json",
        "application/json",
        Attachment.Relationship.DATA,
        made.record(),
        "The figures of bay sheet " + made.id().text());
  }
}
