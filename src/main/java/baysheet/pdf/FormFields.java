package baysheet.pdf;

import baysheet.layout.FontFace;
import baysheet.layout.FontFile;
import baysheet.layout.Item;
import baysheet.layout.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;
import org.apache.pdfbox.pdmodel.font.encoding.WinAnsiEncoding;

/**
 * The fields of a form (ISO 32000-1, 12.7): a check box for each tick, a text field for every other
 * box. Whoever fills it in writes with the whole font, which any program can use that knows simple
 * fonts and the encoding of Western Europe.
 */
final class FormFields {
  /** Of a field's annotation: it is printed (table 165). */
  private static final int PRINTED = 4;

  /** The glyphs of a font are reached by the names of characters (table 123). */
  private static final int NONSYMBOLIC = 32;

  private static final int FIRST = 32;
  private static final int LAST = 255;
  private static final int STEM = 80;

  /** What is written takes this part of a box's height at most, in percent. */
  private static final int SIZE = 70;

  /** In thousandths of a point. */
  private static final long LARGEST = 11_000;

  private static final COSName ON = COSName.getPDFName("Yes");
  private static final COSName OFF = COSName.getPDFName("Off");

  /** A check mark, as fields name it (table 189): programs may draw it their own way. */
  private static final String CHECK = "4";

  private static final COSName FONT = COSName.getPDFName("F");

  private static final Face FACE = Face.REGULAR;

  private final COSArray fields = DirectObjects.array();

  /** The catalog's entry. */
  COSDictionary dictionary() {
    COSDictionary fonts = new COSDictionary();
    fonts.setItem(FONT, font());
    COSDictionary resources = new COSDictionary();
    resources.setItem(COSName.FONT, fonts);
    COSDictionary form = new COSDictionary();
    form.setItem(COSName.FIELDS, fields);
    form.setItem(COSName.DR, resources);
    form.setItem(COSName.DA, ascii(appearance(LARGEST)));
    return form;
  }

  /**
   * Makes the field of a box, which is its annotation as well.
   *
   * @param words what the box is for, which a screen reader says
   * @param height of the page
   */
  COSDictionary add(Item.Pen pen, String words, long height, COSDictionary page) {
    COSDictionary field = new COSDictionary();
    field.setItem(COSName.TYPE, COSName.ANNOT);
    field.setItem(COSName.SUBTYPE, COSName.WIDGET);
    field.setItem(COSName.T, ascii(pen.name().replace('.', '/')));
    field.setItem(COSName.TU, DirectObjects.text(words));
    field.setItem(COSName.RECT, rectangle(pen, height));
    field.setInt(COSName.F, PRINTED);
    field.setItem(COSName.P, page);
    boolean tick = pen.kind().equals(Page.TICK);
    if (tick) {
      checkBox(field, pen);
    } else {
      text(field, pen);
    }
    fields.add(field);
    annotations(page).add(field);
    return field;
  }

  private static COSArray annotations(COSDictionary page) {
    if (page.getDictionaryObject(COSName.ANNOTS) == null) {
      page.setItem(COSName.ANNOTS, DirectObjects.array());
    }
    return page.getCOSArray(COSName.ANNOTS);
  }

  /** Its stroke stays outside: the page draws it. */
  private static Item.Area inside(Item.Pen pen) {
    return pen.edge().grown(-pen.thickness());
  }

  private static COSArray rectangle(Item.Pen pen, long height) {
    Item.Area area = inside(pen);
    return DirectObjects.array(
        points(area.x()),
        points(height - area.bottom()),
        points(area.right()),
        points(height - area.y()));
  }

  private static void checkBox(COSDictionary field, Item.Pen pen) {
    // In the annotation itself: some viewers draw no appearance that they reach by a reference.
    COSDictionary looks = DirectObjects.dictionary();
    looks.setItem(ON, look(pen, tick(inside(pen))));
    looks.setItem(OFF, look(pen, ""));
    field.setItem(COSName.FT, COSName.BTN);
    field.setItem(COSName.V, OFF);
    field.setItem(COSName.AS, OFF);
    COSDictionary marking = DirectObjects.dictionary();
    marking.setItem(COSName.CA, ascii(CHECK));
    field.setItem(COSName.MK, marking);
    field.setItem(COSName.AP, normal(looks));
  }

  private static void text(COSDictionary field, Item.Pen pen) {
    long size = Math.min(LARGEST, inside(pen).height() * SIZE / 100);
    field.setItem(COSName.FT, COSName.TX);
    field.setItem(COSName.DA, ascii(appearance(size)));
    field.setItem(COSName.AP, normal(look(pen, "/Tx BMC EMC")));
  }

  private static String appearance(long size) {
    return "/F " + decimal(size) + " Tf 0 g";
  }

  private static COSDictionary normal(COSDictionary looks) {
    COSDictionary appearances = DirectObjects.dictionary();
    appearances.setItem(COSName.N, looks);
    return appearances;
  }

  /** Two strokes, from the left to the bottom and up to the right. */
  private static String tick(Item.Area area) {
    long w = area.width();
    long h = area.height();
    return "q 0 G %s w 1 J 1 j %s %s m %s %s l %s %s l S Q"
        .formatted(
            decimal(w / 8),
            decimal(w * 15 / 100),
            decimal(h / 2),
            decimal(w * 4 / 10),
            decimal(h * 15 / 100),
            decimal(w * 88 / 100),
            decimal(h * 88 / 100));
  }

  private static HeldStream look(Item.Pen pen, String content) {
    HeldStream look = Streams.plain(content.getBytes(StandardCharsets.US_ASCII));
    look.setItem(COSName.TYPE, COSName.XOBJECT);
    look.setItem(COSName.SUBTYPE, COSName.FORM);
    Item.Area area = inside(pen);
    look.setItem(
        COSName.BBOX,
        DirectObjects.array(
            COSInteger.ZERO, COSInteger.ZERO, points(area.width()), points(area.height())));
    look.setItem(COSName.RESOURCES, new COSDictionary());
    return look;
  }

  private static COSDictionary font() {
    try {
      return font(FontFile.parse(FACE.resource()));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the font " + FACE.resource(), e);
    }
  }

  /** A simple font with all of its glyphs (9.6.3). */
  private static COSDictionary font(TrueTypeFont file) throws IOException {
    COSDictionary font = new COSDictionary();
    font.setItem(COSName.TYPE, COSName.FONT);
    font.setItem(COSName.SUBTYPE, COSName.TRUE_TYPE);
    font.setName(COSName.BASE_FONT, FACE.postScriptName());
    font.setItem(COSName.ENCODING, COSName.WIN_ANSI_ENCODING);
    font.setInt(COSName.FIRST_CHAR, FIRST);
    font.setInt(COSName.LAST_CHAR, LAST);
    font.setItem(COSName.WIDTHS, widths(file));
    font.setItem(COSName.FONT_DESC, descriptor(file));
    return font;
  }

  private static COSArray widths(TrueTypeFont file) throws IOException {
    CmapLookup characters = file.getUnicodeCmapLookup();
    int[] widths = new int[LAST - FIRST + 1];
    for (int code = FIRST; code <= LAST; code++) {
      String name = WinAnsiEncoding.INSTANCE.getName(code);
      String text = GlyphList.getAdobeGlyphList().toUnicode(name);
      int glyph = text == null ? 0 : characters.getGlyphId(text.codePointAt(0));
      widths[code - FIRST] = Math.round(file.getAdvanceWidth(glyph) * 1000f / file.getUnitsPerEm());
    }
    return DirectObjects.integers(widths);
  }

  private static COSDictionary descriptor(TrueTypeFont file) throws IOException {
    FontFace metrics = FACE.metrics();
    BoundingBox box = file.getFontBBox();
    byte[] program = FontFile.trueType(FACE.resource());
    HeldStream stream = Streams.packed(Streams.smallest(program));
    stream.setInt(COSName.LENGTH1, program.length);
    COSDictionary descriptor = new COSDictionary();
    descriptor.setItem(COSName.TYPE, COSName.FONT_DESC);
    descriptor.setName(COSName.FONT_NAME, FACE.postScriptName());
    descriptor.setInt(COSName.FLAGS, NONSYMBOLIC);
    descriptor.setItem(
        COSName.FONT_BBOX,
        DirectObjects.integers(
            Math.round(box.getLowerLeftX()),
            Math.round(box.getLowerLeftY()),
            Math.round(box.getUpperRightX()),
            Math.round(box.getUpperRightY())));
    descriptor.setInt(COSName.ITALIC_ANGLE, 0);
    descriptor.setInt(COSName.ASCENT, metrics.ascent());
    descriptor.setInt(COSName.DESCENT, -metrics.descent());
    descriptor.setInt(COSName.CAP_HEIGHT, metrics.capHeight());
    descriptor.setInt(COSName.STEM_V, STEM);
    descriptor.setItem(COSName.FONT_FILE2, stream);
    return descriptor;
  }

  private static COSFloat points(long thousandths) {
    return new COSFloat(thousandths / 1000f);
  }

  private static String decimal(long thousandths) {
    return Float.toString(thousandths / 1000f);
  }

  private static COSString ascii(String text) {
    return new COSString(text.getBytes(StandardCharsets.US_ASCII));
  }
}
