package baysheet.bench;

import baysheet.layout.FontFile;
import baysheet.layout.Fonts;
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

  Floor(DrawnPage page) throws IOException {
    regular = font(Fonts.REGULAR);
    bold = font(Fonts.BOLD);
    PDPage shown = new PDPage();
    fonts.addPage(shown);
    try (PDPageContentStream content = new PDPageContentStream(fonts, shown)) {
      content.beginText();
      for (DrawnPage.Drawn item : page.items()) {
        content.setFont(item.bold() ? bold : regular, 8);
        content.showText(item.text());
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

  byte[] write(DrawnPage page) throws IOException {
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

  private byte[] content(DrawnPage page) throws IOException {
    StringBuilder out = new StringBuilder(65_536);
    for (DrawnPage.Drawn item : page.items()) {
      if (item.text().isEmpty()) {
        outline(item, page, out);
      } else {
        text(item, page, out);
      }
    }
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private void text(DrawnPage.Drawn text, DrawnPage page, StringBuilder out) throws IOException {
    out.append(text.bold() ? "BT /B " : "BT /R ");
    points(text.size(), out).append("Tf ");
    points(text.x(), out);
    points(page.height() - text.y(), out).append("Td <");
    for (byte b : (text.bold() ? bold : regular).encode(text.text())) {
      out.append(Character.forDigit(b >> 4 & 15, 16)).append(Character.forDigit(b & 15, 16));
    }
    out.append("> Tj ET\n");
  }

  private static void outline(DrawnPage.Drawn area, DrawnPage page, StringBuilder out) {
    points(area.x(), out);
    points(page.height() - area.y(), out);
    points(area.width(), out);
    points(area.height(), out).append("re S\n");
  }

  private static StringBuilder points(long thousandths, StringBuilder out) {
    long rest = Math.floorMod(thousandths, 1000);
    out.append(Math.floorDiv(thousandths, 1000)).append('.');
    return out.append(rest / 100).append(rest / 10 % 10).append(rest % 10).append(' ');
  }
}
