package baysheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.layout.FontFace;
import baysheet.layout.Fonts;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;

/**
 * The layout's widths are those of the PDF file, and those that another library reads from the
 * font, for every character of the family.
 */
class GlyphWidthTest {
  private static final int LAST = 0x1FFFF;

  @Test
  void everyRegularWidthIsTheOneInTheFile() throws Exception {
    assertWidths(Fonts.builtIn().regular(), parse(Fonts.REGULAR));
  }

  @Test
  void everyBoldWidthIsTheOneInTheFile() throws Exception {
    assertWidths(Fonts.builtIn().bold(), parse(Fonts.BOLD));
  }

  /** The other library cuts off what is less than a thousandth. */
  @Test
  void anotherLibraryFindsTheSameWidths() throws IOException {
    assertSame(Fonts.builtIn().regular(), Fonts.REGULAR);
    assertSame(Fonts.builtIn().bold(), Fonts.BOLD);
  }

  private static void assertSame(FontFace face, String resource) throws IOException {
    BaseFont other =
        BaseFont.createFont(
            "face.ttf", BaseFont.IDENTITY_H, true, false, Fonts.resource(resource), null);
    for (int c = ' '; c <= LAST; c++) {
      if (c != 0x00A0 && c != 0x2060) {
        String name = "U+" + Integer.toHexString(c);
        assertEquals(other.charExists(c), face.covers(c), name);
        if (face.covers(c)) {
          assertEquals(other.getWidth(c), face.advance(c), 1, name);
        }
      }
    }
  }

  private static TrueTypeFont parse(String resource) throws IOException {
    TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Fonts.resource(resource)));
    font.setEnableGsub(false);
    return font;
  }

  private static void assertWidths(FontFace face, TrueTypeFont font) throws IOException {
    int checked = 0;
    try (PDDocument document = new PDDocument()) {
      PDType0Font drawn = PDType0Font.load(document, font, false);
      for (int c = ' '; c <= LAST; c++) {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        boolean steers = c == 0x00A0 || c == 0x2060;
        if (!steers) {
          assertEquals(glyph != 0, face.covers(c), "U+" + Integer.toHexString(c));
        }
        if (glyph != 0 && !steers) {
          assertEquals(
              Math.round(drawn.getWidth(glyph)), face.advance(c), "U+" + Integer.toHexString(c));
          checked++;
        }
      }
    }
    // The family covers Latin, Greek, Cyrillic and symbols: thousands of characters.
    assertTrue(checked > 3000, checked + " characters");
  }
}
