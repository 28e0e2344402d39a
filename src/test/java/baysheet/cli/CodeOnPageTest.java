package baysheet.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.books.Shop;
import baysheet.layout.Item;
import baysheet.output.MadeSheet;
import baysheet.output.SheetPdfs;
import baysheet.pdf.PdfWriter;
import baysheet.scan.Grey;
import baysheet.scan.PageReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** What a machine finds on the sheets of the demo days. */
class CodeOnPageTest {
  // In thousandths of a point.
  private static final long MILLIMETRE = 2834;

  private static final int COARSE = 150;

  @Test
  void codeIsReadFromACoarsePictureHoweverThePageLies() throws IOException {
    PdfWriter writer = new PdfWriter();
    double[] angles = {0, 3, -3, 93, 180, 177, 267};
    Set<String> codes = new HashSet<>();
    int turn = 0;
    List<MadeSheet> sheets = DemoSheets.made(Shop.Paper.A4);
    for (MadeSheet made : sheets) {
      BufferedImage page = draw(SheetPdfs.pdf(writer, made));
      codes.add(made.id().code());
      // Upright, and turned and tilted by two of the angles each.
      for (double angle : new double[] {0, angles[turn++ % 7], angles[turn++ % 7]}) {
        String job = made.sheet().name() + " turned by " + angle;
        assertEquals(Optional.of(made.id().code()), code(turned(page, angle)), job);
      }
    }
    assertEquals(sheets.size(), codes.size(), "each sheet has a code of its own");
  }

  private static Optional<String> code(BufferedImage page) {
    return new PageReader(any -> Optional.empty()).read(Grey.of(page)).code();
  }

  private static BufferedImage draw(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(0, COARSE, ImageType.RGB);
    }
  }

  private static BufferedImage turned(BufferedImage page, double degrees) {
    double angle = Math.toRadians(degrees);
    double sin = Math.abs(Math.sin(angle));
    double cos = Math.abs(Math.cos(angle));
    int width = (int) (page.getWidth() * cos + page.getHeight() * sin);
    int height = (int) (page.getWidth() * sin + page.getHeight() * cos);
    BufferedImage turned = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = turned.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    graphics.translate(width / 2.0, height / 2.0);
    graphics.rotate(angle);
    graphics.translate(-page.getWidth() / 2.0, -page.getHeight() / 2.0);
    graphics.drawImage(page, 0, 0, null);
    graphics.dispose();
    return turned;
  }

  @Test
  void squaresStandInTheCornersAndTheCodeIsLargeEnough() {
    for (MadeSheet made : DemoSheets.made(Shop.Paper.A4)) {
      String job = made.sheet().heading().job();
      List<Item.Area> squares =
          made.page().modules().stream()
              .filter(it -> it.stamp().text().isEmpty())
              .map(Item.Modules::edge)
              .toList();
      assertEquals(4, squares.size(), job);
      for (Item.Area square : squares) {
        assertTrue(square.width() >= 4.49 * MILLIMETRE, job);
        long fromSide = Math.min(square.x(), made.page().width() - square.right());
        long fromEnd = Math.min(square.y(), made.page().height() - square.bottom());
        assertTrue(fromSide >= 8 * MILLIMETRE && fromSide < 9 * MILLIMETRE, job);
        assertTrue(fromEnd >= 8 * MILLIMETRE && fromEnd < 9 * MILLIMETRE, job);
      }
      Item.Modules code =
          made.page().modules().stream()
              .filter(it -> !it.stamp().text().isEmpty())
              .reduce((one, other) -> null)
              .orElseThrow();
      assertTrue(code.edge().width() >= 10 * MILLIMETRE, job);
      assertEquals(21, code.stamp().rows().size(), job);
    }
  }

  @Test
  void sheetIsCompleteWithoutWhatNeedNotHappen() {
    MadeSheet made = DemoSheets.made(Shop.Paper.A4).get(0);
    Set<String> optional = new HashSet<>();
    made.page().pens().stream()
        .filter(pen -> !pen.required())
        .forEach(pen -> optional.add(pen.name()));
    optional.removeIf(name -> name.startsWith("open.") || name.startsWith("apprentice."));
    // Of these one is marked: the ledger asks for it.
    optional.removeIf(name -> name.startsWith("release.") || name.startsWith("cured."));
    assertTrue(
        Set.of("found.1", "found.2", "stopped.step", "stopped.time", "wrench")
            .containsAll(optional),
        optional.toString());
    assertTrue(optional.contains("found.1") && optional.contains("stopped.step"));
  }
}
