package baysheet.layout;

import baysheet.template.Box;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything a measurement depends on beside the boxes.
 *
 * @param body the body size, in thousandths of a point
 * @param leastPens whether boxes for a pen are at their smallest
 * @param words the words of each paragraph, divided once for all sizes
 */
record Setting(Fonts fonts, long body, boolean leastPens, Words words) {
  long size(Box.TextStyle style) {
    long wanted = Math.floorDiv(style.scale() * body, 1000L);
    return Math.min(style.ceiling(), Math.max(style.floor(), wanted));
  }

  List<Word> words(Box.Text text) {
    return words.of(text);
  }

  long penWidth(Box.Field field) {
    return leastPens ? field.size().leastWidth() : field.size().width();
  }

  long penHeight(Box.Field field) {
    return leastPens ? field.size().leastHeight() : field.size().height();
  }

  /**
   * Remembers how paragraphs divide into words. Looked up by identity, for hashing a paragraph
   * would cost as much as dividing it; nothing depends on the map's order.
   */
  static final class Words {
    private final Fonts fonts;
    private final Map<Box.Text, List<Word>> known = new IdentityHashMap<>();

    Words(Fonts fonts) {
      this.fonts = fonts;
    }

    private List<Word> of(Box.Text text) {
      return known.computeIfAbsent(text, t -> Word.divide(t.runs(), fonts));
    }
  }
}
