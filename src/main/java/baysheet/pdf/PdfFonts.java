package baysheet.pdf;

import baysheet.layout.Fonts;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The two faces as PDFBox reads them; parsed once, for parsing costs more than drawing a page. */
record PdfFonts(TrueTypeFont regular, TrueTypeFont bold) {
  static PdfFonts builtIn() {
    return new PdfFonts(parse(Fonts.REGULAR), parse(Fonts.BOLD));
  }

  private static TrueTypeFont parse(String resource) {
    try {
      TrueTypeFont font =
          new TTFParser().parse(new RandomAccessReadBuffer(Fonts.resource(resource)));
      // Ligatures are not wanted, and looking for them costs many times what drawing does.
      font.setEnableGsub(false);
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot parse the font " + resource, e);
    }
  }
}
