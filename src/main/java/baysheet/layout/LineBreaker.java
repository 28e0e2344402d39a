package baysheet.layout;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/**
 * Fills lines with words, as many as each will hold. It only says where lines begin: most of what
 * is measured is never drawn.
 */
final class LineBreaker {
  private static final int[] ONE_LINE = {0};

  /** Wider than any paper, and far from where sums would overflow. */
  private static final long ENDLESS = 1L << 40;

  private final Fonts fonts;
  private final long size;

  /** What a line holds, in thousandths of an em. */
  private final long most;

  private final Consumer<Word> tooWide;
  private int[] starts = new int[8];
  private int lines;

  /**
   * @param size of the font
   * @param width of the room
   * @param tooWide receives a word that no line holds
   */
  LineBreaker(Fonts fonts, long size, long width, Consumer<Word> tooWide) {
    this.fonts = fonts;
    this.size = size;
    this.most = Math.floorDiv(Math.min(width, ENDLESS) * 1000, size);
    this.tooWide = tooWide;
  }

  /**
   * Words and the numbers of those that begin a line.
   *
   * @param words those of the paragraph, or pieces of them
   */
  record Broken(List<Word> words, int[] starts) {
    int lines() {
      return starts.length;
    }

    /** The words of a line. */
    List<Word> line(int number) {
      int end = number + 1 < starts.length ? starts[number + 1] : words.size();
      return words.subList(starts[number], end);
    }
  }

  /** Breaks a paragraph of at least one word. */
  Broken fill(Paragraph paragraph) {
    return fill(paragraph, Inset.NONE);
  }

  /** Breaks a paragraph whose first lines are shorter. */
  Broken fill(Paragraph paragraph, Inset inset) {
    long less = Math.floorDiv(inset.width() * 1000 + size - 1, size);
    if (paragraph.longest() + less <= most && !paragraph.broken()) {
      return new Broken(paragraph.words(), ONE_LINE);
    }
    List<Word> words = paragraph.noWiderThan(most - less, fonts);
    start(0);
    long filled = 0;
    long space = 0;
    for (int i = 0; i < words.size(); i++) {
      Word word = words.get(i);
      long more = filled + (word.joined() ? 0 : space) + word.advance();
      long room = lines <= inset.lines() ? most - less : most;
      if (i > 0 && (word.startsLine() || more > room)) {
        start(i);
        more = word.advance();
      }
      if (word.advance() > most - less) {
        tooWide.accept(word);
      }
      filled = more;
      space = fonts.spaceAfter(word);
    }
    return new Broken(words, Arrays.copyOf(starts, lines));
  }

  private void start(int word) {
    if (lines == starts.length) {
      starts = Arrays.copyOf(starts, 2 * lines);
    }
    starts[lines++] = word;
  }
}
