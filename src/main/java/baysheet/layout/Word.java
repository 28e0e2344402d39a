package baysheet.layout;

import baysheet.box.Text;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of text that no line break divides, before its size is known.
 *
 * @param parts its pieces, each in one weight
 * @param advance its width in thousandths of an em
 * @param startsLine whether a line break is written in front of it
 * @param joined whether it goes on from the one before without a space
 */
record Word(List<Part> parts, long advance, boolean startsLine, boolean joined) {
  Word {
    parts = List.copyOf(parts);
  }

  /** A piece of a word in one weight. */
  record Part(String text, boolean bold, long advance) {}

  /** Divides runs at their spaces and written line breaks; several spaces count as one. */
  static List<Word> divide(List<Text.Run> runs, Fonts fonts) {
    Divider divider = new Divider(fonts);
    for (Text.Run run : runs) {
      divider.add(run);
    }
    divider.endWord();
    return List.copyOf(divider.words);
  }

  boolean endsBold() {
    return parts.get(parts.size() - 1).bold();
  }

  /**
   * The pieces of this word between which a line may break when the word alone is wider than its
   * line: after a solidus, a hyphen or a dash.
   */
  List<Word> pieces(Fonts fonts) {
    List<Word> pieces = new ArrayList<>();
    List<Part> open = new ArrayList<>();
    for (Part part : parts) {
      String text = part.text();
      int from = 0;
      for (int i = 0; i < text.length(); i++) {
        if (i > from && breaksAfter(text, i)) {
          open.add(part(text.substring(from, i + 1), part.bold(), fonts));
          pieces.add(piece(open, pieces.isEmpty()));
          open.clear();
          from = i + 1;
        }
      }
      if (from < text.length()) {
        open.add(part(text.substring(from), part.bold(), fonts));
      }
    }
    if (!open.isEmpty()) {
      pieces.add(piece(open, pieces.isEmpty()));
    }
    return pieces;
  }

  private static boolean breaksAfter(String text, int i) {
    return "/-–".indexOf(text.charAt(i)) >= 0
        && (i + 1 == text.length() || !BreakCharacters.holdsTogether(text.charAt(i + 1)));
  }

  /** The word as it is drawn. */
  String text() {
    StringBuilder text = new StringBuilder();
    parts.forEach(part -> text.append(part.text()));
    return BreakCharacters.drawn(text.toString());
  }

  private static Part part(String text, boolean bold, Fonts fonts) {
    return new Part(text, bold, fonts.face(bold).advance(text));
  }

  private Word piece(List<Part> parts, boolean first) {
    return of(parts, first && startsLine, !first);
  }

  private static Word of(List<Part> parts, boolean startsLine, boolean joined) {
    long advance = 0;
    for (Part part : parts) {
      advance += part.advance();
    }
    return new Word(parts, advance, startsLine, joined);
  }

  /** Gathers pieces into words; a word may run from one weight into the next. */
  private static final class Divider {
    private final Fonts fonts;
    private final List<Word> words = new ArrayList<>();
    private final List<Part> open = new ArrayList<>();
    private boolean startsLine;

    Divider(Fonts fonts) {
      this.fonts = fonts;
    }

    void add(Text.Run run) {
      int from = 0;
      for (int i = 0; i < run.text().length(); i++) {
        char c = run.text().charAt(i);
        if (c == ' ' || c == '\n') {
          addPart(run.text().substring(from, i), run.bold());
          endWord();
          startsLine |= c == '\n' && !words.isEmpty();
          from = i + 1;
        }
      }
      addPart(run.text().substring(from), run.bold());
    }

    private void addPart(String text, boolean bold) {
      if (!text.isEmpty()) {
        open.add(part(text, bold, fonts));
      }
    }

    void endWord() {
      if (!open.isEmpty()) {
        words.add(of(open, startsLine, false));
        open.clear();
        startsLine = false;
      }
    }
  }
}
