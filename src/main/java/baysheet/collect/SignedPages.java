package baysheet.collect;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.ledger.KeptRecord;
import baysheet.output.PlainPage;
import baysheet.pdf.Attachment;
import baysheet.pdf.PdfInfo;
import baysheet.pdf.PdfWriter;
import baysheet.scan.Grey;
import baysheet.scan.PageReading.BoxReading;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;

/** Makes the files in which scanned pages are kept. */
public final class SignedPages {
  private static final long MARGIN = 10 * PlainPage.MILLIMETRE;
  private static final long SIZE = 9_000;

  private final PdfWriter writer = new PdfWriter();

  /**
   * A signed sheet: the scan, set straight, with its record and its reading attached. The same scan
   * gives the same bytes.
   *
   * @param json the bytes of the record
   */
  byte[] signed(KeptRecord record, byte[] json, Grey picture, List<BoxReading> boxes) {
    String title = "Signed bay sheet " + record.id();
    List<Attachment> attached =
        List.of(
            data(record.name() + ".json", json, "The figures of bay sheet " + record.id()),
            data(
                record.name() + "-reading.json",
                reading(record, boxes),
                "Which boxes of bay sheet " + record.id() + " hold ink"));
    PdfInfo info =
        new PdfInfo(
            title,
            "en",
            record.shop(),
            title,
            List.of("signed bay sheet", record.id()),
            start(record.date()),
            title);
    return writer.writeScans(List.of(page(picture, title, "")), info, attached);
  }

  private static Attachment data(String name, byte[] content, String what) {
    return new Attachment(name, "application/json", Attachment.Relationship.DATA, content, what);
  }

  /** A signed sheet for an invoice, under a line that says what is wrong with it. */
  public byte[] covered(KeptRecord record, Grey picture, String cover) {
    String title = "Signed bay sheet " + record.id();
    PdfInfo info =
        new PdfInfo(
            title,
            "en",
            record.shop(),
            cover,
            List.of("signed bay sheet", record.id()),
            start(record.date()),
            title + cover);
    return writer.writeScans(List.of(page(picture, title, cover)), info, List.of());
  }

  private static Instant start(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant();
  }

  private static byte[] reading(KeptRecord record, List<BoxReading> boxes) {
    return JsonText.indented(
            new JsonObject()
                .put("format", 1)
                .put("sheet", record.id())
                .list("boxes", boxes, SignedPages::json))
        .getBytes(StandardCharsets.UTF_8);
  }

  public static JsonObject json(BoxReading box) {
    return new JsonObject()
        .put("name", box.name())
        .put("kind", box.kind())
        .put("required", box.required())
        .put("state", box.state().name().toLowerCase(Locale.ROOT))
        .put("ink", box.ink());
  }

  /**
   * A scan set straight as a page of its own size.
   *
   * @param cover a line above the scan, which is then a little smaller; empty for none
   */
  static Page page(Grey picture, String alternate, String cover) {
    long width = picture.width() * PlainPage.MILLIMETRE / Grey.PIXELS;
    long height = picture.height() * PlainPage.MILLIMETRE / Grey.PIXELS;
    PlainPage page = new PlainPage(width, height);
    if (cover.isEmpty()) {
      return page.picture(picture, new Item.Area(0, 0, width, height), alternate).page();
    }
    page.text(true, SIZE, MARGIN, MARGIN * 4 / 5, width - 2 * MARGIN, cover);
    return below(page, picture, width, height, alternate);
  }

  /** A page that could not be read, under a line that says why. */
  byte[] unread(Grey picture, String file, int number, String reason, LocalDate today) {
    String title = "Page " + number + " of " + file;
    PlainPage page = new PlainPage(PlainPage.A4_WIDTH, PlainPage.A4_HEIGHT);
    long room = PlainPage.A4_WIDTH - 2 * MARGIN;
    page.text(true, SIZE, MARGIN, MARGIN * 4 / 5, room, title + ": " + reason);
    Page drawn = below(page, picture, PlainPage.A4_WIDTH, PlainPage.A4_HEIGHT, title);
    PdfInfo info =
        new PdfInfo(title, "en", "", reason, List.of("unread page"), start(today), title);
    return writer.writeScans(List.of(drawn), info, List.of());
  }

  private static Page below(
      PlainPage page, Grey picture, long width, long height, String alternate) {
    long room = height - MARGIN;
    double scale = Math.min((double) width / picture.width(), (double) room / picture.height());
    long wide = (long) (picture.width() * scale);
    long high = (long) (picture.height() * scale);
    Item.Area edge = new Item.Area((width - wide) / 2, MARGIN, wide, high);
    return page.picture(picture, edge, alternate).page();
  }

  /** Pages of crops to look through. */
  byte[] review(List<Page> pages, LocalDate day) {
    String title = "Signed sheets of " + day + ": what to look at";
    PdfInfo info =
        new PdfInfo(title, "en", "", title, List.of("review of sheets"), start(day), title);
    return writer.writeScans(pages, info, List.of());
  }
}
