package baysheet.layout;

import baysheet.box.TextStyle;
import baysheet.report.Span;
import java.util.List;
import java.util.Optional;

/**
 * A paragraph broken into lines. They are set only when they are drawn.
 *
 * @param width of the room it stands in
 * @param size of its font
 * @param leading from one baseline to the next
 * @param rise from the top of a line to its baseline
 * @param inset what its first lines leave free
 * @param point how far from the left edge every number's decimal point is to stand, {@link #NONE}
 *     if they are not lined up
 * @param tag its structure element; none for decoration
 * @param at where in the layout it was written
 */
record ParagraphLines(
    long width,
    long size,
    long leading,
    long rise,
    TextStyle.Align align,
    LineBreaker.Broken broken,
    Inset inset,
    long point,
    Optional<Tag> tag,
    Span at,
    Fonts fonts)
    implements Measured {

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
  }

  /** A stretch of a line in one weight, {@code dx} from the line's start. */
  record Piece(String text, boolean bold, long dx, long width) {}

  @Override
  public long height() {
    return leading * broken.lines() + inset.below();
  }

  @Override
  public long baseline() {
    return rise;
  }

  @Override
  public long middle() {
    return rise - Em.at(fonts.regular().xHeight(), size) / 2;
  }

  /** How far its figures reach to both sides of their decimal points. */
  DecimalColumn figures() {
    return DecimalColumn.of(set());
  }

  /** The same paragraph with every number's decimal point at one distance from the left edge. */
  ParagraphLines withPointAt(long point) {
    return new ParagraphLines(
        width, size, leading, rise, align, broken, inset, point, tag, at, fonts);
  }

  private List<SetLine> set() {
    return new LineSetter(fonts, size, width, align, inset).set(broken);
  }

  @Override
  public void place(long x, long y, PageBuilder page) {
    page.from(at);
    tag.ifPresent(page::open);
    long baseline = y + rise;
    long below = inset.below();
    for (SetLine line : set()) {
      long left = x + (point == NONE || line.point() < 0 ? line.x() : point - line.point());
      for (Piece piece : line.pieces()) {
        page.text(piece, size, left + piece.dx(), baseline, tag.isPresent());
      }
      baseline += leading + below;
      below = 0;
    }
    tag.ifPresent(t -> page.close());
  }
}
