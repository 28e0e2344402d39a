package baysheet.bench;

import baysheet.layout.FontFace;
import baysheet.layout.Fonts;
import baysheet.layout.Item;
import baysheet.layout.Page;
import java.io.Serializable;
import java.util.ArrayList;

/** The items of a page at their places, as the floor writes them; a process of its own reads it. */
record DrawnPage(long width, long height, ArrayList<Drawn> items) implements Serializable {
  /** A text, or the outline of an area where there is none. */
  record Drawn(boolean bold, long size, long x, long y, long width, long height, String text)
      implements Serializable {}

  static DrawnPage of(Page page) {
    ArrayList<Drawn> items = new ArrayList<>();
    for (Item item : page.items()) {
      Item.Area area = item.area();
      items.add(
          item instanceof Item.Glyphs it
              ? new Drawn(it.bold(), it.size(), it.x(), it.baseline(), 0, 0, shown(it))
              : new Drawn(false, 0, area.x(), area.bottom(), area.width(), area.height(), ""));
    }
    return new DrawnPage(page.width(), page.height(), items);
  }

  /** With a hyphen for each sign of the second family: one glyph more or less makes no difference. */
  private static String shown(Item.Glyphs glyphs) {
    FontFace face = glyphs.bold() ? Fonts.builtIn().bold() : Fonts.builtIn().regular();
    StringBuilder shown = new StringBuilder();
    glyphs.text().codePoints().map(c -> face.draws(c) ? c : '-').forEach(shown::appendCodePoint);
    return shown.toString();
  }
}
