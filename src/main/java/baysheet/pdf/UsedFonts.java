package baysheet.pdf;

import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.layout.Page;
import java.io.IOException;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * The faces that one document uses; a face that nothing is set in stays out of it.
 *
 * @param resources shared by all its pages
 */
record UsedFonts(Optional<CutFace> regular, Optional<CutFace> bold, COSDictionary resources) {
  private static final String REGULAR = "R";
  private static final String BOLD = "B";

  /** Cuts the faces down to the characters of the pages and embeds them. */
  static UsedFonts embed(List<Page> pages, FaceCutter regular, FaceCutter bold) throws IOException {
    Optional<CutFace> light = cut(pages, false, regular);
    Optional<CutFace> heavy = cut(pages, true, bold);
    COSDictionary fonts = new COSDictionary();
    if (light.isPresent()) {
      fonts.setItem(REGULAR, embedded(light.get(), false));
    }
    if (heavy.isPresent()) {
      fonts.setItem(BOLD, embedded(heavy.get(), true));
    }
    COSDictionary resources = new COSDictionary();
    resources.setItem(COSName.FONT, fonts);
    return new UsedFonts(light, heavy, resources);
  }

  private static Optional<CutFace> cut(List<Page> pages, boolean bold, FaceCutter cutter)
      throws IOException {
    BitSet characters = new BitSet();
    for (Page page : pages) {
      for (Item item : page.items()) {
        if (item instanceof Item.Glyphs glyphs && glyphs.bold() == bold) {
          addAll(glyphs.text(), characters);
        }
      }
    }
    return characters.isEmpty() ? Optional.empty() : Optional.of(cutter.cut(characters));
  }

  private static void addAll(String text, BitSet characters) {
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      characters.set(character);
      i += Character.charCount(character);
    }
  }

  private static COSDictionary embedded(CutFace cut, boolean bold) {
    Fonts fonts = Fonts.builtIn();
    return new EmbeddedFace(cut, bold ? fonts.bold() : fonts.regular(), bold).dictionary();
  }

  /** The name of a face among the resources. */
  String name(boolean bold) {
    return bold ? BOLD : REGULAR;
  }

  /** The codes that show a text. */
  byte[] encode(String text, boolean bold) {
    return (bold ? this.bold : regular).orElseThrow().encode(text);
  }
}
