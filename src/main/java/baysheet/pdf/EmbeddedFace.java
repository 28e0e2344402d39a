package baysheet.pdf;

import baysheet.layout.FontFace;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/** Writes a cut face into a document as a composite font (ISO 32000-1, 9.7). */
record EmbeddedFace(CutFace cut, FontFace face, boolean bold) {
  /** Font descriptor flags (ISO 32000-1, table 123): the glyphs are reached by number alone. */
  private static final int SYMBOLIC = 4;

  /** Thickness of vertical stems, in thousandths of an em; only for whoever replaces the font. */
  private static final int STEM = 80;

  private static final int BOLD_STEM = 150;

  COSDictionary dictionary() {
    COSDictionary font = typed(COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TYPE0);
    font.setName(COSName.BASE_FONT, cut.name());
    font.setItem(COSName.ENCODING, COSName.IDENTITY_H);
    font.setItem(COSName.DESCENDANT_FONTS, DirectObjects.array(descendant()));
    font.setItem(COSName.TO_UNICODE, Streams.packed(cut.toUnicode()));
    return font;
  }

  private COSDictionary descendant() {
    COSDictionary system = DirectObjects.dictionary();
    system.setItem(COSName.REGISTRY, new COSString("Adobe"));
    system.setItem(COSName.ORDERING, new COSString("Identity"));
    system.setInt(COSName.SUPPLEMENT, 0);
    COSDictionary font = typed(COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.CID_FONT_TYPE2);
    font.setName(COSName.BASE_FONT, cut.name());
    font.setItem(COSName.CIDSYSTEMINFO, system);
    font.setItem(COSName.CID_TO_GID_MAP, COSName.IDENTITY);
    font.setItem(COSName.W, widths());
    font.setItem(COSName.FONT_DESC, descriptor());
    return font;
  }

  private COSArray widths() {
    COSArray widths = DirectObjects.array();
    widths.add(COSInteger.ZERO);
    widths.add(DirectObjects.integers(cut.widths()));
    return widths;
  }

  private COSDictionary descriptor() {
    COSDictionary descriptor = typed(COSName.FONT_DESC);
    descriptor.setName(COSName.FONT_NAME, cut.name());
    descriptor.setInt(COSName.FLAGS, SYMBOLIC);
    descriptor.setItem(COSName.FONT_BBOX, DirectObjects.integers(cut.box()));
    descriptor.setInt(COSName.ITALIC_ANGLE, 0);
    descriptor.setInt(COSName.ASCENT, face.ascent());
    descriptor.setInt(COSName.DESCENT, -face.descent());
    descriptor.setInt(COSName.CAP_HEIGHT, face.capHeight());
    descriptor.setInt(COSName.STEM_V, bold ? BOLD_STEM : STEM);
    descriptor.setItem(COSName.FONT_FILE2, program());
    return descriptor;
  }

  /** Deflated beforehand, once for many documents. */
  private HeldStream program() {
    HeldStream stream = Streams.packed(cut.program());
    stream.setInt(COSName.LENGTH1, cut.length());
    return stream;
  }

  private static COSDictionary typed(COSName type) {
    COSDictionary dictionary = new COSDictionary();
    dictionary.setItem(COSName.TYPE, type);
    return dictionary;
  }
}
