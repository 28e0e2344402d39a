package baysheet.layout;

import baysheet.layout.Lines.Piece;
import baysheet.layout.Lines.SetLine;
import baysheet.template.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Fills lines with words, as many as each will hold. */
final class LineBreaker {
  private final Fonts fonts;
  private final long size;
  private final long width;
  private final Box.Align align;
  private final Consumer<Word> tooWide;
  private final List<SetLine> lines = new ArrayList<>();
  private final List<Word> open = new ArrayList<>();
  private long filled;

  /**
   * @param size of the font
   * @param width of the room
   * @param tooWide is told of a word that no line holds
   */
  LineBreaker(Fonts fonts, long size, long width, Box.Align align, Consumer<Word> tooWide) {
    this.fonts = fonts;
    this.size = size;
    this.width = width;
    this.align = align;
    this.tooWide = tooWide;
  }

  List<SetLine> fill(List<Word> words) {
    for (Word word : words) {
      if (fits(word.advance())) {
        add(word, false);
      } else {
        addInPieces(word);
      }
    }
    endLine();
    return lines;
  }

  private void addInPieces(Word word) {
    boolean joined = false;
    for (Word piece : word.pieces(fonts)) {
      if (!fits(piece.advance())) {
        tooWide.accept(piece);
      }
      add(piece, joined);
      joined = true;
    }
  }

  /**
   * @param joined whether the word goes on from the one before without a space
   */
  private void add(Word word, boolean joined) {
    long space = open.isEmpty() || joined ? 0 : spaceAfter(open.get(open.size() - 1));
    if (!open.isEmpty() && (word.startsLine() || !fits(filled + space + word.advance()))) {
      endLine();
      space = 0;
    }
    if (joined && !open.isEmpty()) {
      Word before = open.remove(open.size() - 1);
      open.add(join(before, word));
    } else {
      open.add(word);
    }
    filled += space + word.advance();
  }

  private boolean fits(long advance) {
    return Em.at(advance, size) <= width;
  }

  private long spaceAfter(Word word) {
    return fonts.face(word.endsBold()).advance(' ');
  }

  private static Word join(Word first, Word second) {
    List<Word.Part> parts = new ArrayList<>(first.parts());
    parts.addAll(second.parts());
    return new Word(parts, first.advance() + second.advance(), first.startsLine());
  }

  private void endLine() {
    if (open.isEmpty()) {
      return;
    }
    List<Piece> pieces = new Joiner().join(open);
    long lineWidth = Em.at(filled, size);
    long point = align == Box.Align.DECIMAL ? decimalPoint(pieces) : -1;
    lines.add(new SetLine(start(lineWidth), lineWidth, point, pieces));
    open.clear();
    filled = 0;
  }

  private long start(long lineWidth) {
    return switch (align) {
      case LEFT, DECIMAL -> 0;
      case CENTRE -> Math.max(0, (width - lineWidth) / 2);
      case RIGHT -> Math.max(0, width - lineWidth);
    };
  }

  /** Where the whole part of the line's first number ends, or -1 if it holds no number. */
  private long decimalPoint(List<Piece> pieces) {
    for (Piece piece : pieces) {
      int end = endOfFirstNumber(piece.text());
      if (end > 0) {
        String whole = piece.text().substring(0, end);
        return piece.dx() + Em.at(fonts.face(piece.bold()).advance(whole), size);
      }
    }
    return -1;
  }

  private static int endOfFirstNumber(String text) {
    int i = 0;
    while (i < text.length() && !Character.isDigit(text.charAt(i))) {
      i++;
    }
    int start = i;
    while (i < text.length() && Character.isDigit(text.charAt(i))) {
      i++;
    }
    return i == start ? -1 : i;
  }

  /** Joins neighbouring words of one weight, with their spaces, into pieces. */
  private final class Joiner {
    private final List<Piece> pieces = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean bold;
    private long start;
    private long end;

    List<Piece> join(List<Word> words) {
      for (int i = 0; i < words.size(); i++) {
        words.get(i).parts().forEach(this::add);
        if (i < words.size() - 1) {
          add(new Word.Part(" ", bold, spaceAfter(words.get(i))));
        }
      }
      endPiece();
      return pieces;
    }

    private void add(Word.Part part) {
      if (part.bold() != bold) {
        endPiece();
        bold = part.bold();
      }
      text.append(part.text());
      end += part.advance();
    }

    private void endPiece() {
      if (text.length() > 0) {
        long dx = Em.at(start, size);
        pieces.add(new Piece(Characters.drawn(text.toString()), bold, dx, Em.at(end, size) - dx));
        text.setLength(0);
      }
      start = end;
    }
  }
}
