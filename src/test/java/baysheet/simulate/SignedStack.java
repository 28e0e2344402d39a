package baysheet.simulate;

import baysheet.scan.Grey;
import baysheet.scan.IssuedSheets.Issued;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/** A stack of signed sheets as an office scanner delivers it: one PDF file, grey, 200 dpi. */
public final class SignedStack {
  private static final float QUALITY = 0.75f;
  private static final int DPI = 200;

  private final Random chance;
  private final boolean crosses;
  private final List<Grey> pages = new ArrayList<>();

  private SignedStack(long seed, boolean crosses) {
    chance = new Random(seed);
    this.crosses = crosses;
  }

  /** Of people who write crosses in all boxes, which no reader can doubt. */
  public SignedStack(long seed) {
    this(seed, true);
  }

  /** Of people who tick as they like. */
  public static SignedStack ofTicks(long seed) {
    return new SignedStack(seed, false);
  }

  /**
   * Signs a sheet: everything is filled in that has to be, but for some boxes. Of each choice the
   * first box is marked, whose name ends in {@code .yes}.
   *
   * @param empty the names of boxes that are left empty
   */
  public SignedStack sign(Issued sheet, Set<String> empty) {
    return sign(sheet, empty, Map.of());
  }

  /**
   * The same with known figures.
   *
   * @param values by the names of their boxes
   */
  public SignedStack sign(Issued sheet, Set<String> empty, Map<String, String> values) {
    Sheeted page = Simulator.blank(sheet);
    Hand hand = Hand.steady(chance.nextLong(), crosses);
    sheet.boxes().boxes().stream()
        .filter(box -> box.required() || box.name().endsWith(".yes"))
        .filter(box -> !empty.contains(box.name()))
        .forEach(box -> Simulator.fill(box, page, hand, values.get(box.name())));
    Scanner scanner =
        new Scanner(
            DPI,
            2 * chance.nextDouble() - 1,
            2 * chance.nextInt(2),
            0.99,
            0.992,
            2,
            0,
            0,
            0,
            245,
            chance.nextLong());
    pages.add(scanner.scan(page));
    return this;
  }

  /** Adds a page that is no sheet. */
  public SignedStack other(Grey picture) {
    pages.add(picture);
    return this;
  }

  public List<Grey> pages() {
    return pages;
  }

  public byte[] pdf() {
    try (PDDocument document = new PDDocument()) {
      for (Grey grey : pages) {
        BufferedImage image = Scanner.image(grey);
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        PDImageXObject picture = JPEGFactory.createFromImage(document, image, QUALITY, DPI);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
          content.drawImage(picture, 0, 0, PDRectangle.A4.getWidth(), PDRectangle.A4.getHeight());
        }
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot make a stack of scans in memory", e);
    }
  }
}
