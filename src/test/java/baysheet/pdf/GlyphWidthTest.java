package baysheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import baysheet.layout.FontFace;
import baysheet.layout.FontFile;
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
 * font, for every character of both families.
 */
class GlyphWidthTest {
  private static final int LAST = 0x1FFFF;

  @Test
  void everyRegularWidthIsTheOneInTheFile() throws Exception {
    FontFace face = Fonts.builtIn().regular();
    assertWidths(face, parse(Fonts.REGULAR), 800);
    assertWidths(face.second().orElseThrow(), parse(Fonts.SECOND_REGULAR), 3000);
  }

  @Test
  void everyBoldWidthIsTheOneInTheFile() throws Exception {
    FontFace face = Fonts.builtIn().bold();
    assertWidths(face, parse(Fonts.BOLD), 800);
    assertWidths(face.second().orElseThrow(), parse(Fonts.SECOND_BOLD), 3000);
  }

  /** The other library cuts off what is less than a thousandth. */
  @Test
  void anotherLibraryFindsTheSameWidths() throws IOException {
    assertSame(Fonts.builtIn().regular(), Fonts.REGULAR, Fonts.SECOND_REGULAR);
    assertSame(Fonts.builtIn().bold(), Fonts.BOLD, Fonts.SECOND_BOLD);
  }

  private static void assertSame(FontFace face, String first, String second) throws IOException {
    BaseFont own = base(first);
    BaseFont others = base(second);
    for (int c = ' '; c <= LAST; c++) {
      if (c != 0x00A0 && c != 0x2060) {
        String name = "U+" + Integer.toHexString(c);
        BaseFont drawn = own.charExists(c) ? own : others;
        assertEquals(drawn == own, face.draws(c), name);
        assertEquals(drawn.charExists(c), face.covers(c), name);
        if (face.covers(c)) {
          assertEquals(drawn.getWidth(c), face.advance(c), 1, name);
        }
      }
    }
  }

  private static BaseFont base(String resource) throws IOException {
    return BaseFont.createFont(
        "face.ttf", BaseFont.IDENTITY_H, true, false, FontFile.trueType(resource), null);
  }

  private static TrueTypeFont parse(String resource) throws IOException {
    TrueTypeFont font =
        new TTFParser().parse(new RandomAccessReadBuffer(FontFile.trueType(resource)));
    font.setEnableGsub(false);
    return font;
  }

  private static void assertWidths(FontFace face, TrueTypeFont font, int least) throws IOException {
    int checked = 0;
    try (PDDocument document = new PDDocument()) {
      PDType0Font drawn = PDType0Font.load(document, font, false);
      for (int c = ' '; c <= LAST; c++) {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        boolean steers = c == 0x00A0 || c == 0x2060;
        if (!steers) {
          assertEquals(glyph != 0, face.draws(c), "U+" + Integer.toHexString(c));
        }
        if (glyph != 0 && !steers) {
          assertEquals(
              Math.round(drawn.getWidth(glyph)), face.advance(c), "U+" + Integer.toHexString(c));
          checked++;
        }
      }
    }
    assertTrue(checked > least, checked + " characters");
  }
}
