package baysheet.layout;

import baysheet.box.Text;
import java.util.ArrayList;
import java.util.List;

/**
 * A paragraph divided into words, before its size is known. Lengths are thousandths of an em.
 *
 * @param widest its widest word
 * @param longest its longest line, broken only where a break is written
 * @param broken whether a break is written in it
 * @param reachesFar whether some of its letters reach above or below plain ones
 */
record Paragraph(List<Word> words, long widest, long longest, boolean broken, boolean reachesFar) {
  Paragraph {
    words = List.copyOf(words);
  }

  static Paragraph of(Text text, Fonts fonts) {
    return of(Word.divide(text.runs(), fonts), fonts);
  }

  static Paragraph of(List<Word> words, Fonts fonts) {
    long widest = 0;
    long longest = 0;
    long line = 0;
    long space = 0;
    boolean broken = false;
    boolean far = false;
    for (Word word : words) {
      widest = Math.max(widest, word.advance());
      line = (word.startsLine() ? 0 : line + space) + word.advance();
      longest = Math.max(longest, line);
      space = fonts.spaceAfter(word);
      broken |= word.startsLine();
      for (Word.Part part : word.parts()) {
        far |= FontFace.reachesFar(part.text());
      }
    }
    return new Paragraph(words, widest, longest, broken, far);
  }

  /** The words, each that is wider than its line in the pieces between which it may break. */
  List<Word> noWiderThan(long most, Fonts fonts) {
    if (widest <= most) {
      return words;
    }
    List<Word> pieces = new ArrayList<>();
    for (Word word : words) {
      if (word.advance() <= most) {
        pieces.add(word);
      } else {
        pieces.addAll(word.pieces(fonts));
      }
    }
    return pieces;
  }
}
