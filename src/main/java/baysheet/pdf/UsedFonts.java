package baysheet.pdf;

import java.io.IOException;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces that one document uses, each embedded with just the glyphs it needs. */
final class UsedFonts {
  private final Face regular;
  private final Face bold;
  private final PDResources resources = new PDResources();

  UsedFonts(PDDocument document, PdfFonts fonts) throws IOException {
    regular = new Face("R", document, fonts.regular());
    bold = new Face("B", document, fonts.bold());
  }

  /** The resources that all pages share; complete once all text is encoded. */
  PDResources resources() {
    return resources;
  }

  /** The name of a face among the resources. */
  String name(boolean bold) {
    return face(bold).name;
  }

  /** The codes that show a text. */
  byte[] encode(String text, boolean bold) throws IOException {
    return face(bold).encode(text, resources);
  }

  /** Cuts the faces down to the glyphs that were encoded; nothing can be encoded after that. */
  void subset() throws IOException {
    regular.subset();
    bold.subset();
  }

  private Face face(boolean bold) {
    return bold ? this.bold : regular;
  }

  private static final class Face {
    private final String name;
    private final PDType0Font font;
    private boolean used;

    Face(String name, PDDocument document, TrueTypeFont font) throws IOException {
      this.name = name;
      this.font = PDType0Font.load(document, font, true);
    }

    byte[] encode(String text, PDResources resources) throws IOException {
      if (!used) {
        resources.put(COSName.getPDFName(name), font);
        used = true;
      }
      text.codePoints().forEach(font::addToSubset);
      return font.encode(text);
    }

    /** A face that nothing is set in stays out of the file. */
    void subset() throws IOException {
      if (used) {
        font.subset();
      }
    }
  }
}
