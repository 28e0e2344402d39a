package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;

/**
 * The faces that one document uses; a face that nothing is set in stays out of it.
 *
 * @param resources shared by all its pages
 */
record UsedFonts(Map<Face, CutFace> cuts, COSDictionary resources) {
  /** Cuts the faces down to the characters of the pages and embeds them. */
  static UsedFonts embed(List<Page> pages, Map<Face, FaceCutter> cutters) throws IOException {
    Map<Face, CutFace> cuts = new EnumMap<>(Face.class);
    COSDictionary fonts = new COSDictionary();
    for (Map.Entry<Face, BitSet> used : characters(pages).entrySet()) {
      Face face = used.getKey();
      CutFace cut = cutters.get(face).cut(used.getValue());
      cuts.put(face, cut);
      fonts.setItem(face.label(), new EmbeddedFace(cut, face.metrics(), face.bold()).dictionary());
    }
    COSDictionary resources = new COSDictionary();
    resources.setItem(COSName.FONT, fonts);
    return new UsedFonts(cuts, resources);
  }

  private static Map<Face, BitSet> characters(List<Page> pages) {
    Map<Face, BitSet> characters = new EnumMap<>(Face.class);
    for (Page page : pages) {
      for (Item item : page.items()) {
        if (item instanceof Item.Glyphs glyphs) {
          // A space may follow that the page itself does not hold.
          for (Stretch stretch : stretches(glyphs.text() + " ", glyphs.bold())) {
            BitSet ofFace = characters.computeIfAbsent(stretch.face(), face -> new BitSet());
            stretch.text().codePoints().forEach(ofFace::set);
          }
        }
      }
    }
    return characters;
  }

  /** Divides a text where another face goes on. */
  static List<Stretch> stretches(String text, boolean bold) {
    List<Stretch> stretches = new ArrayList<>(1);
    int from = 0;
    Face face = null;
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      Face next = Face.of(character, bold);
      if (face != null && next != face) {
        stretches.add(new Stretch(face, text.substring(from, i)));
        from = i;
      }
      face = next;
      i += Character.charCount(character);
    }
    if (face != null) {
      stretches.add(new Stretch(face, text.substring(from)));
    }
    return stretches;
  }

  /** The codes that show a stretch of text. */
  byte[] encode(Stretch stretch) {
    return cuts.get(stretch.face()).encode(stretch.text());
  }

  /** A text, or a part of it, that one face draws. */
  record Stretch(Face face, String text) {}
}
