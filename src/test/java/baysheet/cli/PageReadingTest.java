package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.record.PlacedBoxes;
import baysheet.scan.Grey;
import baysheet.scan.IssuedSheets.Issued;
import baysheet.scan.PageReader;
import baysheet.scan.PageReading;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.Result;
import baysheet.scan.PageReading.State;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** What becomes of a page, whatever was done to it. */
class PageReadingTest {
  private static final int DPI = 200;
  private static final double MILLIMETRE = DPI / 25.4;
  private static final MadeSheet MADE = DemoSheets.made(Shop.Paper.A4).get(0);
  private static final byte[] PDF = SheetPdfs.pdf(new PdfWriter(), MADE);

  private static Issued issued(boolean superseded) throws IOException {
    PlacedBoxes boxes = PlacedBoxes.of(MADE.record());
    return new Issued(MADE.id().text(), superseded, PDF, boxes);
  }

  private static BufferedImage page() throws IOException {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.RGB);
    }
  }

  private static PageReading read(BufferedImage page, Issued issued) {
    return new PageReader(code -> Optional.of(issued).filter(it -> code.equals(MADE.id().code())))
        .read(Grey.of(page));
  }

  /** Fills a rectangle, in millimetres. */
  private static void paint(
      BufferedImage page, Color colour, double x, double y, double w, double h) {
    Graphics2D graphics = page.createGraphics();
    graphics.setColor(colour);
    graphics.fillRect(
        (int) (x * MILLIMETRE),
        (int) (y * MILLIMETRE),
        (int) Math.ceil(w * MILLIMETRE),
        (int) Math.ceil(h * MILLIMETRE));
    graphics.dispose();
  }

  @Test
  void pageThatNobodyWroteOnHasOnlyEmptyBoxes() throws IOException {
    PageReading reading = read(page(), issued(false));
    assertEquals(Result.READ, reading.result());
    assertEquals(MADE.page().pens().size(), reading.boxes().size());
    assertEquals(
        Set.of(State.EMPTY),
        reading.boxes().stream().map(BoxReading::state).collect(Collectors.toSet()));
  }

  @Test
  void strokeInOneBoxIsFoundInThatBoxOnly() throws IOException {
    BufferedImage page = page();
    PlacedBoxes.Box box = issued(false).boxes().boxes().get(2);
    double mm = 25.4 / 72;
    double x = box.place().x() * mm;
    double y = page.getHeight() / MILLIMETRE - (box.place().y() + box.place().h()) * mm;
    paint(page, Color.DARK_GRAY, x + 0.6, y + box.place().h() * mm / 2, 3.2, 0.5);
    for (BoxReading read : read(page, issued(false)).boxes()) {
      State expected = read.name().equals(box.name()) ? State.MARKED : State.EMPTY;
      assertEquals(expected, read.state(), read.name());
    }
  }

  /** A large tick of the box beside a box for words or a figure, which ends 3 mm inside. */
  @Test
  void endOfANeighboursStrokeFillsNothingIn() throws IOException {
    BufferedImage page = page();
    PlacedBoxes.Box box =
        issued(false).boxes().boxes().stream()
            .filter(it -> it.kind().equals("value") || it.kind().equals("line"))
            .findFirst()
            .orElseThrow();
    double mm = 25.4 / 72;
    double x = box.place().x() * mm;
    double y = page.getHeight() / MILLIMETRE - (box.place().y() + box.place().h() / 2) * mm;
    paint(page, Color.DARK_GRAY, x - 1, y, 4, 0.5);
    State state =
        read(page, issued(false)).boxes().stream()
            .filter(it -> it.name().equals(box.name()))
            .findFirst()
            .orElseThrow()
            .state();
    assertEquals(State.DOUBTFUL, state);
  }

  @Test
  void shortWideSmudgeInBlackAndWhiteIsNoWriting() throws IOException {
    assertEquals(State.DOUBTFUL, blotted(8, 1, 0.9, 3.4));
  }

  /**
   * Paints a rectangle on a page in black and white, in millimetres from the top left of a box for
   * words.
   */
  private static State blotted(double x, double y, double w, double h) throws IOException {
    BufferedImage grey = page();
    BufferedImage page =
        new BufferedImage(grey.getWidth(), grey.getHeight(), BufferedImage.TYPE_BYTE_BINARY);
    page.createGraphics().drawImage(grey, 0, 0, null);
    PlacedBoxes.Box box =
        issued(false).boxes().boxes().stream()
            .filter(it -> it.kind().equals("line") && it.place().w() > 60)
            .findFirst()
            .orElseThrow();
    double mm = 25.4 / 72;
    double left = box.place().x() * mm;
    double top = page.getHeight() / MILLIMETRE - (box.place().y() + box.place().h()) * mm;
    paint(page, Color.BLACK, left + x, top + y, w, h);
    return read(page, issued(false)).boxes().stream()
        .filter(it -> it.name().equals(box.name()))
        .findFirst()
        .orElseThrow()
        .state();
  }

  @Test
  void laterRevisionIsSaidAndTheBoxesAreReadAllTheSame() throws IOException {
    PageReading reading = read(page(), issued(true));
    assertEquals(Result.SUPERSEDED, reading.result());
    assertTrue(reading.boxes().size() > 10);
  }

  @Test
  void pageWithoutACodeIsUnreadAndNeverBlank() throws IOException {
    BufferedImage page = page();
    paint(page, Color.WHITE, 170, 0, 40, 30);
    PageReading reading = read(page, issued(false));
    assertEquals(Result.UNREAD, reading.result());
    assertEquals("no code of a sheet was found", reading.reason());
    assertTrue(reading.boxes().isEmpty());
  }

  @Test
  void codeThatNobodyIssuedIsUnknown() throws IOException {
    PageReading reading = new PageReader(code -> Optional.empty()).read(Grey.of(page()));
    assertEquals(Result.UNKNOWN, reading.result());
    assertEquals("no sheet was issued with the code " + MADE.id().code(), reading.reason());
  }

  /** A label of a part that somebody stuck on the sheet. */
  @Test
  void codeOfAnotherMakerDoesNotHideThatOfTheSheet() throws Exception {
    BufferedImage page = page();
    BitMatrix label = new QRCodeWriter().encode("part 7", BarcodeFormat.QR_CODE, 110, 110);
    for (int y = 0; y < 110; y++) {
      for (int x = 0; x < 110; x++) {
        // In the corner below the sheet's own code, which is looked at before the whole page.
        page.setRGB(
            page.getWidth() - 150 + x, page.getHeight() - 210 + y, label.get(x, y) ? 0 : -1);
        page.setRGB(100 + x, 100 + y, label.get(x, y) ? 0 : -1);
      }
    }
    PageReading reading = read(page, issued(false));
    assertEquals(Result.READ, reading.result(), reading.reason());
  }

  @Test
  void threeSquaresAreEnoughAndTwoAreNot() throws IOException {
    BufferedImage page = page();
    paint(page, Color.WHITE, 7, 7, 6.4, 6.4);
    PageReading three = read(page, issued(false));
    assertEquals(Result.READ, three.result(), three.reason());
    paint(page, Color.WHITE, 7, 283.5, 6.4, 6.4);
    PageReading reading = read(page, issued(false));
    assertEquals(Result.UNREAD, reading.result());
    assertEquals("the squares near the corners are not where they should be", reading.reason());
  }

  /** As if the page had been torn and taped together. */
  @Test
  void squareFarFromItsPlaceMakesThePageUnreadable() throws IOException {
    BufferedImage page = page();
    paint(page, Color.WHITE, 7, 283.5, 6.4, 6.4);
    paint(page, Color.BLACK, 12, 284.5, 4.5, 4.5);
    paint(page, Color.WHITE, 16.6, 283.5, 1, 6.4);
    assertEquals(Result.UNREAD, read(page, issued(false)).result());
  }
}
