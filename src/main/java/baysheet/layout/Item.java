package baysheet.layout;

import baysheet.box.Stamp;
import java.util.List;

/**
 * Something at a fixed place on a page. Coordinates are thousandths of a point from the page's top
 * left corner, downwards.
 */
public sealed interface Item {
  /** The structure element it belongs to, or {@link Page#ARTIFACT}. */
  int element();

  /** The smallest rectangle around it. */
  Area area();

  /** What a sentence calls it. */
  String called();

  /**
   * A stretch of text in one font on one line.
   *
   * @param size of the font
   * @param x where it starts
   * @param baseline the height on which letters stand
   * @param width the sum of its advances
   * @param ascent how far the font reaches above the baseline
   * @param descent how far it reaches below
   */
  record Glyphs(
      int element,
      boolean bold,
      long size,
      long x,
      long baseline,
      long width,
      long ascent,
      long descent,
      String text)
      implements Item {
    /** Enough of a text to find it on the page. */
    private static final int LONGEST_QUOTE = 40;

    @Override
    public Area area() {
      return new Area(x, baseline - ascent, width, ascent + descent);
    }

    @Override
    public String called() {
      return "the text \""
          + (text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…")
          + "\"";
    }
  }

  /** A straight line of ink that ends where it ends, without caps. */
  record Line(int element, long x1, long y1, long x2, long y2, long thickness) implements Item {
    @Override
    public Area area() {
      long across = y1 == y2 ? 0 : thickness / 2;
      long along = x1 == x2 ? 0 : thickness / 2;
      long left = Math.min(x1, x2) - across;
      long top = Math.min(y1, y2) - along;
      long width = Math.abs(x2 - x1) + 2 * across;
      return new Area(left, top, width, Math.abs(y2 - y1) + 2 * along);
    }

    @Override
    public String called() {
      return "a line";
    }
  }

  /** The outline of a rectangle; the stroke runs along its edges, half in and half out. */
  record Rectangle(int element, Area edge, long thickness) implements Item {
    @Override
    public Area area() {
      return edge.grown(thickness / 2);
    }

    @Override
    public String called() {
      return "a border";
    }
  }

  /** The outline of a circle. */
  record Circle(int element, long x, long y, long radius, long thickness) implements Item {
    @Override
    public Area area() {
      Area edge = new Area(x - radius, y - radius, 2 * radius, 2 * radius);
      return edge.grown(thickness / 2);
    }

    @Override
    public String called() {
      return "a circle";
    }
  }

  /** A triangle filled with ink, corners in order. */
  record Triangle(int element, long x1, long y1, long x2, long y2, long x3, long y3)
      implements Item {
    @Override
    public Area area() {
      long left = Math.min(x1, Math.min(x2, x3));
      long top = Math.min(y1, Math.min(y2, y3));
      long right = Math.max(x1, Math.max(x2, x3));
      long bottom = Math.max(y1, Math.max(y2, y3));
      return new Area(left, top, right - left, bottom - top);
    }

    @Override
    public String called() {
      return "a triangle";
    }
  }

  /**
   * An empty box for a pen. A box of kind {@link Page#LINE} has ink along its lower edge only.
   *
   * @param required whether the form is incomplete while it is empty
   * @param choice names the boxes of which exactly one is to be marked; nothing for a box of its
   *     own
   * @param edge its outer edge; the stroke runs along it inside
   */
  record Pen(
      int element,
      String name,
      String kind,
      boolean required,
      String choice,
      Area edge,
      long thickness)
      implements Item {
    @Override
    public Area area() {
      return edge;
    }

    @Override
    public String called() {
      return "the box for a pen \"" + name + "\"";
    }
  }

  /**
   * Black modules on white, for a machine; decoration to everybody else.
   *
   * @param edge around the modules, without what must stay white around them
   */
  record Modules(Stamp stamp, Area edge) implements Item {
    @Override
    public int element() {
      return Page.ARTIFACT;
    }

    @Override
    public Area area() {
      return edge;
    }

    /** Code or square. */
    public String kind() {
      return stamp.element();
    }

    /** From the top, one letter a module, {@code #} for black. */
    public List<String> rows() {
      return stamp.rows();
    }

    @Override
    public String called() {
      return "the " + stamp.element() + (stamp.text().isEmpty() ? "" : " " + stamp.text());
    }
  }

  /**
   * A grey picture.
   *
   * @param jpeg its file; not copied, so leave it alone
   * @param wide pixels across
   * @param high pixels down
   */
  record Picture(int element, byte[] jpeg, int wide, int high, Area edge) implements Item {
    @Override
    public Area area() {
      return edge;
    }

    @Override
    public String called() {
      return "a picture";
    }
  }

  /** A rectangle in thousandths of a point: top left corner, width, height. */
  record Area(long x, long y, long width, long height) {
    public Area {
      if (width < 0 || height < 0) {
        throw new IllegalArgumentException("area %s x %s".formatted(width, height));
      }
    }

    public long right() {
      return x + width;
    }

    public long bottom() {
      return y + height;
    }

    /** This rectangle with its edges moved outwards. */
    public Area grown(long by) {
      return new Area(x - by, y - by, width + 2 * by, height + 2 * by);
    }

    /** Whether any ink of one could lie on the other; edges that touch do not count. */
    public boolean overlaps(Area other) {
      return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }

    /** Whether the other rectangle lies wholly in this one. */
    public boolean contains(Area other) {
      return x <= other.x && y <= other.y && other.right() <= right() && other.bottom() <= bottom();
    }

    @Override
    public String toString() {
      return "%s,%s %sx%s"
          .formatted(Page.points(x), Page.points(y), Page.points(width), Page.points(height));
    }
  }
}
