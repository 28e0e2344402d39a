package baysheet.layout;

import baysheet.template.Box;
import java.util.List;
import java.util.Optional;

/**
 * A paragraph broken into lines.
 *
 * @param width of the room it stands in
 * @param size of its font
 * @param leading from one baseline to the next
 * @param rise from the top of a line to its baseline
 * @param tag its structure element; none for decoration
 */
record Lines(
    long width,
    long size,
    long leading,
    long rise,
    Box.Align align,
    List<SetLine> lines,
    Optional<Tag> tag,
    Fonts fonts)
    implements Measured {
  Lines {
    lines = List.copyOf(lines);
  }

  /**
   * A line with its pieces.
   *
   * @param x how far from the left edge of the room it starts
   * @param point how far from its start its first number's decimal point stands, negative if it
   *     holds no number or is not lined up on one
   */
  record SetLine(long x, long width, long point, List<Piece> pieces) {
    SetLine {
      pieces = List.copyOf(pieces);
    }

    SetLine at(long x) {
      return new SetLine(x, width, point, pieces);
    }
  }

  /** A stretch of a line in one weight, {@code dx} from the line's start. */
  record Piece(String text, boolean bold, long dx, long width) {}

  @Override
  public long height() {
    return leading * lines.size();
  }

  @Override
  public long baseline() {
    return rise;
  }

  @Override
  public long middle() {
    return rise - Em.at(fonts.regular().xHeight(), size) / 2;
  }

  /** The same paragraph with every number's decimal point at one distance from the left edge. */
  Lines withPointAt(long point) {
    List<SetLine> moved =
        lines.stream().map(l -> l.point() < 0 ? l : l.at(point - l.point())).toList();
    return new Lines(width, size, leading, rise, align, moved, tag, fonts);
  }

  @Override
  public void place(long x, long y, PageBuilder page) {
    tag.ifPresent(page::open);
    long baseline = y + rise;
    for (SetLine line : lines) {
      for (Piece piece : line.pieces()) {
        page.text(piece, size, x + line.x() + piece.dx(), baseline, tag.isPresent());
      }
      baseline += leading;
    }
    tag.ifPresent(t -> page.close());
  }
}
