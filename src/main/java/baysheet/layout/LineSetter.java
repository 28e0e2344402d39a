package baysheet.layout;

import baysheet.box.TextStyle;
import baysheet.layout.ParagraphLines.Piece;
import baysheet.layout.ParagraphLines.SetLine;
import java.util.ArrayList;
import java.util.List;

/** Sets broken lines: joins their words, with the spaces between, and finds where each stands. */
record LineSetter(Fonts fonts, long size, long width, TextStyle.Align align, Inset inset) {
  List<SetLine> set(LineBreaker.Broken broken) {
    List<SetLine> lines = new ArrayList<>(broken.lines());
    for (int i = 0; i < broken.lines(); i++) {
      lines.add(line(broken.line(i), i < inset.lines() ? inset.width() : 0));
    }
    return lines;
  }

  private SetLine line(List<Word> words, long from) {
    Joiner joiner = new Joiner();
    joiner.join(words);
    long lineWidth = Em.at(joiner.end, size);
    long point = align == TextStyle.Align.DECIMAL ? decimalPoint(joiner.pieces) : -1;
    return new SetLine(from + start(lineWidth, width - from), lineWidth, point, joiner.pieces);
  }

  private long start(long lineWidth, long room) {
    return switch (align) {
      case LEFT, DECIMAL -> 0;
      case CENTRE -> Math.max(0, (room - lineWidth) / 2);
      case RIGHT -> Math.max(0, room - lineWidth);
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
    private final List<Piece> pieces = new ArrayList<>(2);
    private final StringBuilder text = new StringBuilder();
    private boolean bold;
    private long start;
    private long end;

    void join(List<Word> words) {
      for (int i = 0; i < words.size(); i++) {
        Word word = words.get(i);
        if (i > 0 && !word.joined()) {
          add(" ", bold, fonts.spaceAfter(words.get(i - 1)));
        }
        for (Word.Part part : word.parts()) {
          add(part.text(), part.bold(), part.advance());
        }
      }
      endPiece();
    }

    private void add(String more, boolean isBold, long advance) {
      if (isBold != bold) {
        endPiece();
        bold = isBold;
      }
      text.append(more);
      end += advance;
    }

    private void endPiece() {
      if (text.length() > 0) {
        long dx = Em.at(start, size);
        pieces.add(
            new Piece(BreakCharacters.drawn(text.toString()), bold, dx, Em.at(end, size) - dx));
        text.setLength(0);
      }
      start = end;
    }
  }
}
