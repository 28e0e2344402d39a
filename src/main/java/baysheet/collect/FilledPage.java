package baysheet.collect;

import baysheet.layout.FontFace;
import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.output.PlainPage;
import baysheet.pdf.PdfInfo;
import baysheet.pdf.PdfWriter;
import baysheet.record.PlacedBoxes;
import baysheet.scan.FilledForm;
import baysheet.scan.Grey;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;
import java.io.IOException;
import java.time.Instant;
import java.util.List;

/**
 * Our own picture of a form that was filled in: the sheet as it was issued, with the values of the
 * fields in its boxes. Of the file that came back, nothing is kept that only one program shows.
 */
final class FilledPage {
  /** Of the height of a box, in percent; a long text is smaller. */
  private static final int SIZE = 70;

  private static final long LARGEST = 11_000;
  private static final String TICK = "✓";

  private final Issued sheet;
  private final FilledForm form;
  private final PlainPage page;
  private final long height;

  private FilledPage(Issued sheet, FilledForm form, Grey blank) {
    this.sheet = sheet;
    this.form = form;
    long width = blank.width() * PlainPage.MILLIMETRE / Grey.PIXELS;
    height = blank.height() * PlainPage.MILLIMETRE / Grey.PIXELS;
    page = new PlainPage(width, height);
    page.picture(blank, new Item.Area(0, 0, width, height), sheet.id());
  }

  /**
   * The picture.
   *
   * @param boxes as they were read; what is doubtful is drawn as it was typed
   */
  static Grey of(Issued sheet, FilledForm form, List<BoxReading> boxes, PdfWriter writer)
      throws IOException {
    FilledPage filled = new FilledPage(sheet, form, Grey.drawn(sheet.pdf()));
    for (BoxReading box : boxes) {
      if (box.state() != State.EMPTY) {
        filled.write(box);
      }
    }
    Page drawn = filled.page.page();
    PdfInfo info = new PdfInfo(sheet.id(), "en", "", "", List.of(), Instant.EPOCH, sheet.id());
    return Grey.drawn(writer.writeScans(List.of(drawn), info, List.of()));
  }

  private void write(BoxReading box) {
    PlacedBoxes.Place place =
        sheet.boxes().boxes().stream()
            .filter(it -> it.name().equals(box.name()))
            .findFirst()
            .orElseThrow()
            .place();
    FilledForm.Field field = form.fields().get(box.name());
    String text = field == null ? "" : box.kind().equals("tick") ? tick(field) : field.value();
    long high = thousandths(place.h());
    long wide = thousandths(place.w());
    long size = Math.min(LARGEST, high * SIZE / 100);
    FontFace face = Fonts.builtIn().regular();
    long advance = face.advance(text) * size / 1000;
    long fitting = advance > wide ? size * wide / advance : size;
    long baseline = height - thousandths(place.y()) - high * (100 - SIZE) / 200 - 1;
    page.text(false, fitting, thousandths(place.x()) + wide / 20, baseline, wide, text);
  }

  private static String tick(FilledForm.Field field) {
    return field.value().isEmpty() ? "" : TICK;
  }

  private static long thousandths(double points) {
    return Math.round(points * 1000);
  }
}
