package baysheet.output;

import baysheet.layout.FontFace;
import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import baysheet.scan.Grey;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds a page of lines and pictures, for files that no layout makes. Lengths are thousandths of a
 * point from the top left corner.
 */
public final class PlainPage {
  public static final long MILLIMETRE = 2_835;
  public static final long A4_WIDTH = 210 * MILLIMETRE;
  public static final long A4_HEIGHT = 297 * MILLIMETRE;

  private final long width;
  private final long height;
  private final List<Item> items = new ArrayList<>();
  private final List<Page.Element> elements = new ArrayList<>();

  public PlainPage(long width, long height) {
    this.width = width;
    this.height = height;
  }

  /** Adds a line of text, cut where it would be longer than there is room. */
  public PlainPage text(boolean bold, long size, long x, long baseline, long room, String words) {
    FontFace face = bold ? Fonts.builtIn().bold() : Fonts.builtIn().regular();
    String text = fitting(face, size, room, shown(face, words));
    if (text.isEmpty()) {
      return this;
    }
    int element = element(bold ? Tag.Type.H1 : Tag.Type.P, "");
    long advance = face.advance(text) * size / 1000;
    long ascent = face.ascent() * size / 1000;
    long descent = face.descent() * size / 1000;
    items.add(new Item.Glyphs(element, bold, size, x, baseline, advance, ascent, descent, text));
    return this;
  }

  private static String shown(FontFace face, String words) {
    StringBuilder shown = new StringBuilder();
    words
        .codePoints()
        .map(it -> !Character.isISOControl(it) && face.covers(it) ? it : '?')
        .forEach(shown::appendCodePoint);
    return shown.toString().strip();
  }

  private static String fitting(FontFace face, long size, long room, String text) {
    String cut = text;
    while (!cut.isEmpty() && face.advance(cut + "…") * size / 1000 > room) {
      cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
    }
    return face.advance(text) * size / 1000 <= room ? text : cut + "…";
  }

  /**
   * Adds a picture.
   *
   * @param alternate the words that stand for it
   */
  public PlainPage picture(Grey picture, Item.Area edge, String alternate) {
    int element = element(Tag.Type.FIGURE, alternate);
    byte[] jpeg = picture.jpeg();
    items.add(new Item.Picture(element, jpeg, picture.width(), picture.height(), edge));
    return this;
  }

  private int element(Tag.Type type, String alternate) {
    int id = elements.size() + 1;
    elements.add(new Page.Element(id, new Tag(type, alternate, "", 1), List.of()));
    return id;
  }

  public boolean isBlank() {
    return elements.isEmpty();
  }

  public Page page() {
    Tag document = new Tag(Tag.Type.DOCUMENT, "", "", 1);
    return new Page(width, height, items, new Page.Element(0, document, elements));
  }
}
