package baysheet.layout;

import baysheet.box.Drawing;
import baysheet.box.Field;
import baysheet.box.Stamp;
import java.util.List;

/**
 * A box whose size is known and whose place is not yet. Lengths are thousandths of a point; no box
 * is wider than the room that it was measured for, or the measurement has said so.
 */
sealed interface Measured permits ParagraphLines, Measured.Group, Measured.Tagged, Measured.Leaf {
  /** A baseline or middle that is not there. */
  long NONE = -1;

  long width();

  long height();

  /** From the top down to the first line's baseline, or {@link #NONE} if there is no text. */
  long baseline();

  /** From the top down to what should stand level with a neighbour's first line, or the half. */
  long middle();

  /** Puts everything in this box on the page, its top left corner at a point. */
  void place(long x, long y, PageBuilder page);

  /**
   * Boxes at places within a box, in reading order. Baseline and middle are found once: asked for
   * at every level of groups in groups, they would be searched for again and again.
   */
  record Group(long width, long height, List<Placed> children, long baseline, long middle)
      implements Measured {
    Group(long width, long height, List<Placed> children) {
      this(width, height, children, firstBaseline(children), firstMiddle(height, children));
    }

    public Group {
      children = List.copyOf(children);
    }

    private static long firstBaseline(List<Placed> children) {
      for (Placed child : children) {
        long baseline = child.box().baseline();
        if (baseline != NONE) {
          return child.y() + baseline;
        }
      }
      return NONE;
    }

    private static long firstMiddle(long height, List<Placed> children) {
      return children.isEmpty() ? height / 2 : children.get(0).y() + children.get(0).box().middle();
    }

    @Override
    public void place(long x, long y, PageBuilder page) {
      for (Placed child : children) {
        child.box().place(x + child.x(), y + child.y(), page);
      }
    }
  }

  /** A box and its place from the top left corner of the one around it. */
  record Placed(Measured box, long x, long y) {}

  /**
   * A box with a place in the structure tree. Two boxes with the very same tag (a list that goes on
   * in the next column) are one element.
   */
  record Tagged(Tag tag, Measured box) implements Measured {
    @Override
    public long width() {
      return box.width();
    }

    @Override
    public long height() {
      return box.height();
    }

    @Override
    public long baseline() {
      return box.baseline();
    }

    @Override
    public long middle() {
      return box.middle();
    }

    @Override
    public void place(long x, long y, PageBuilder page) {
      page.open(tag);
      box.place(x, y, page);
      page.close();
    }
  }

  /** A box that holds no other and no paragraph. */
  sealed interface Leaf extends Measured {
    @Override
    default long baseline() {
      return NONE;
    }

    @Override
    default long middle() {
      return height() / 2;
    }
  }

  /** Empty room; {@code fill} takes what height the page has left. */
  record Blank(long width, long height, boolean fill) implements Leaf {
    @Override
    public void place(long x, long y, PageBuilder page) {
      // Nothing to draw.
    }
  }

  /** A line across. */
  record Ruled(long width, long thickness) implements Leaf {
    @Override
    public long height() {
      return thickness;
    }

    @Override
    public void place(long x, long y, PageBuilder page) {
      page.rule(x, y + thickness / 2, width, thickness);
    }
  }

  /** The border of a frame; no border if the thickness is 0. */
  record Border(long width, long height, long thickness) implements Leaf {
    @Override
    public void place(long x, long y, PageBuilder page) {
      if (thickness > 0) {
        long half = thickness / 2;
        page.border(
            new Item.Area(x + half, y + half, width - thickness, height - thickness), thickness);
      }
    }
  }

  /** An empty box for a pen. */
  record PenBox(long width, long height, Field field) implements Leaf {
    /** What is written on a line stands on it, and so does the text beside it. */
    @Override
    public long baseline() {
      return field.kind().equals(Page.LINE) ? height : NONE;
    }

    @Override
    public void place(long x, long y, PageBuilder page) {
      page.pen(field, new Item.Area(x, y, width, height));
    }
  }

  /** A drawing at its size. */
  record Sketch(long width, long height, Drawing drawing, Fonts fonts) implements Leaf {
    @Override
    public void place(long x, long y, PageBuilder page) {
      page.from(drawing.at());
      page.open(new Tag(Tag.Type.FIGURE, drawing.alternate(), "", 1));
      DrawingMarks strokes = new DrawingMarks(x, y, width, fonts, page);
      drawing.marks().forEach(mark -> mark.accept(strokes));
      page.close();
    }
  }

  /** What a machine looks for. */
  record Stamped(Stamp stamp) implements Leaf {
    @Override
    public long width() {
      return stamp.size();
    }

    @Override
    public long height() {
      return stamp.size();
    }

    @Override
    public void place(long x, long y, PageBuilder page) {
      page.from(stamp.at());
      page.add(new Item.Modules(stamp, new Item.Area(x, y, stamp.size(), stamp.size())));
    }
  }

  /** What there is of nothing: a place-holder without size. */
  static Measured nothing(long width) {
    return new Blank(width, 0, false);
  }
}
