package baysheet.layout;

import baysheet.box.Field;
import baysheet.box.Text;
import baysheet.box.TextStyle;
import java.util.IdentityHashMap;
import java.util.Map;

/**
 * Everything a measurement depends on beside the boxes.
 *
 * @param body the body size, in thousandths of a point
 * @param hand the size of text read in the hand
 * @param leastPens whether boxes for a pen are at their smallest
 * @param paragraphs each divided into words once for all sizes
 */
record MeasureSettings(
    Fonts fonts, long body, long hand, boolean leastPens, Paragraphs paragraphs) {
  long size(TextStyle style) {
    long wanted = Math.floorDiv(style.scale() * (style.hand() ? hand : body), 1000L);
    return Math.min(style.ceiling(), Math.max(style.floor(), wanted));
  }

  Paragraph paragraph(Text text) {
    return paragraphs.of(text);
  }

  long penWidth(Field field) {
    return leastPens ? field.size().leastWidth() : field.size().width();
  }

  long penHeight(Field field) {
    return leastPens ? field.size().leastHeight() : field.size().height();
  }

  /**
   * Remembers how paragraphs divide into words. Looked up by identity, for hashing a paragraph
   * would cost as much as dividing it; nothing depends on the map's order.
   */
  static final class Paragraphs {
    private final Fonts fonts;
    private final Map<Text, Paragraph> known = new IdentityHashMap<>(512);

    Paragraphs(Fonts fonts) {
      this.fonts = fonts;
    }

    private Paragraph of(Text text) {
      Paragraph found = known.get(text);
      if (found == null) {
        found = Paragraph.of(text, fonts);
        known.put(text, found);
      }
      return found;
    }
  }
}
