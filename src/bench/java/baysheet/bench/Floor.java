package baysheet.bench;

import baysheet.layout.FontFace;
import baysheet.layout.FontFile;
import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.layout.Page;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Writes the items of a page at their places with the PDF library alone: no layout, no tags. The
 * fonts are cut down once, in a document that stays open, and its objects serve all others.
 */
final class Floor {
  private final PDDocument fonts = new PDDocument();
  private final PDType0Font regular;
  private final PDType0Font bold;

  Floor(Page page) throws IOException {
    regular = font(Fonts.REGULAR);
    bold = font(Fonts.BOLD);
    PDPage shown = new PDPage();
    fonts.addPage(shown);
    try (PDPageContentStream content = new PDPageContentStream(fonts, shown)) {
      content.beginText();
      for (Item item : page.items()) {
        if (item instanceof Item.Glyphs glyphs) {
          content.setFont(glyphs.bold() ? bold : regular, 8);
          content.showText(shown(glyphs));
        }
      }
      content.endText();
    }
    fonts.save(OutputStream.nullOutputStream());
  }

  private PDType0Font font(String resource) throws IOException {
    TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(FontFile.trueType(resource)));
    font.setEnableGsub(false);
    return PDType0Font.load(fonts, font, true);
  }

  byte[] write(Page page) throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDPage drawn =
          new PDPage(new PDRectangle(page.width() / 1000f, page.height() / 1000f));
      PDResources resources = new PDResources();
      resources.put(COSName.getPDFName("R"), regular);
      resources.put(COSName.getPDFName("B"), bold);
      drawn.setResources(resources);
      PDStream stream = new PDStream(document);
      try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
        out.write(content(page));
      }
      drawn.setContents(stream);
      document.addPage(drawn);
      ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
      document.save(out);
      return out.toByteArray();
    }
  }

  private byte[] content(Page page) throws IOException {
    StringBuilder out = new StringBuilder(65_536);
    for (Item item : page.items()) {
      if (item instanceof Item.Glyphs glyphs) {
        text(glyphs, page, out);
      } else {
        outline(item.area(), page, out);
      }
    }
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private void text(Item.Glyphs glyphs, Page page, StringBuilder out) throws IOException {
    out.append(glyphs.bold() ? "BT /B " : "BT /R ");
    points(glyphs.size(), out).append("Tf ");
    points(glyphs.x(), out);
    points(page.height() - glyphs.baseline(), out).append("Td <");
    for (byte b : (glyphs.bold() ? bold : regular).encode(shown(glyphs))) {
      out.append(Character.forDigit(b >> 4 & 15, 16)).append(Character.forDigit(b & 15, 16));
    }
    out.append("> Tj ET\n");
  }

  /** With a hyphen for each sign of the second family: one glyph more or less makes no difference. */
  private static String shown(Item.Glyphs glyphs) {
    FontFace face = glyphs.bold() ? Fonts.builtIn().bold() : Fonts.builtIn().regular();
    StringBuilder shown = new StringBuilder();
    glyphs.text().codePoints().map(c -> face.draws(c) ? c : '-').forEach(shown::appendCodePoint);
    return shown.toString();
  }

  private static void outline(Item.Area area, Page page, StringBuilder out) {
    points(area.x(), out);
    points(page.height() - area.bottom(), out);
    points(area.width(), out);
    points(area.height(), out).append("re S\n");
  }

  private static StringBuilder points(long thousandths, StringBuilder out) {
    long rest = Math.floorMod(thousandths, 1000);
    out.append(Math.floorDiv(thousandths, 1000)).append('.');
    return out.append(rest / 100).append(rest / 10 % 10).append(rest % 10).append(' ');
  }
}
