package baysheet.layout;

import baysheet.layout.Item.Area;
import baysheet.report.Source;
import baysheet.report.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Walks a finished page and finds what must never be printed: ink beyond the margin, text on text,
 * text or a rule across a box for a pen or too near to what a machine reads, a border or a rule
 * across text, text too small to read. It looks only at the items, not at how they came to be where
 * they are.
 */
public final class PageCheck {
  /** A page with more is wrong altogether, and nobody reads further. */
  private static final int MOST_FAULTS = 100;

  private static final Span UNKNOWN = new Source("page", "").whole();

  private final PlacedPage page;
  private final Area inside;
  private final long leastText;
  private final List<Fault> faults = new ArrayList<>();

  private PageCheck(PlacedPage page, long margin, long leastText) {
    this.page = page;
    Page paper = page.page();
    inside = new Area(margin, margin, paper.width() - 2 * margin, paper.height() - 2 * margin);
    this.leastText = leastText;
  }

  /**
   * Something that must not be printed.
   *
   * @param at where in the layout it was written
   */
  public record Fault(String what, Span at) {}

  /**
   * Checks a page.
   *
   * @param margin that is kept free, in thousandths of a point
   * @param leastText the smallest size of text, in thousandths of a point
   * @return one line a fault, the first hundred; empty for a page that may be printed
   */
  public static List<String> faults(Page page, long margin, long leastText) {
    List<Span> nowhere = page.items().stream().map(item -> UNKNOWN).toList();
    List<Fault> faults = faults(new PlacedPage(page, nowhere), margin, leastText);
    return faults.stream().map(Fault::what).toList();
  }

  /** Checks a page of which it is known where in the layout each item was written. */
  static List<Fault> faults(PlacedPage page, long margin, long leastText) {
    PageCheck check = new PageCheck(page, margin, leastText);
    check.eachAlone();
    check.pairs();
    return List.copyOf(check.faults);
  }

  private void eachAlone() {
    for (int i = 0; i < page.page().items().size() && !isEnough(); i++) {
      Item item = page.page().items().get(i);
      if (!inside.contains(item.area())) {
        faults.add(new Fault("beyond the margin: " + item.called(), page.origins().get(i)));
      }
      if (item instanceof Item.Glyphs glyphs && glyphs.size() < leastText) {
        String what = "smaller than " + Page.points(leastText) + " pt: " + item.called();
        faults.add(new Fault(what, page.origins().get(i)));
      }
    }
  }

  /** Goes down the page and compares each piece with those that begin beside it. */
  private void pairs() {
    List<Piece> pieces = pieces();
    pieces.sort(Comparator.comparingLong(piece -> piece.clear.y()));
    for (int i = 0; i < pieces.size() && !isEnough(); i++) {
      Piece piece = pieces.get(i);
      long bottom = piece.clear.bottom();
      for (int j = i + 1; j < pieces.size() && pieces.get(j).clear.y() < bottom; j++) {
        if (piece.clashes(pieces.get(j)) && !isEnough()) {
          fault(piece, pieces.get(j));
        }
      }
    }
  }

  private boolean isEnough() {
    return faults.size() >= MOST_FAULTS;
  }

  /** The place that is named is the text's or pen's, for a rule may belong to anything around. */
  private void fault(Piece one, Piece other) {
    Piece named = other.solid ? other : one;
    faults.add(
        new Fault(
            "on one another: " + item(one).called() + " and " + item(other).called(),
            page.origins().get(named.item)));
  }

  private Item item(Piece piece) {
    return page.page().items().get(piece.item);
  }

  private List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    List<Item> items = page.page().items();
    for (int i = 0; i < items.size(); i++) {
      if (isSolid(items.get(i))) {
        pieces.add(new Piece(i, items.get(i).area(), keptClear(items.get(i)), true));
      }
      for (Area ink : ink(items.get(i))) {
        pieces.add(new Piece(i, ink, ink, false));
      }
    }
    return pieces;
  }

  /** What nothing else may touch: text, and the white inside of a box for a pen. */
  private static boolean isSolid(Item item) {
    return item instanceof Item.Glyphs || item instanceof Item.Pen || item instanceof Item.Modules;
  }

  /** What no other ink may touch; around modules a reader needs white. */
  private static Area keptClear(Item item) {
    return item instanceof Item.Modules modules
        ? modules.edge().grown(modules.stamp().quiet())
        : item.area();
  }

  /** The strokes of rules and borders. Those of a drawing may go where the drawing wants them. */
  private static List<Area> ink(Item item) {
    if (item.element() != Page.ARTIFACT) {
      return List.of();
    }
    if (item instanceof Item.Line line) {
      return List.of(line.area());
    }
    return item instanceof Item.Rectangle rectangle ? edges(rectangle) : List.of();
  }

  private static List<Area> edges(Item.Rectangle rectangle) {
    Area edge = rectangle.edge();
    long thickness = rectangle.thickness();
    Area out = rectangle.area();
    return List.of(
        new Area(out.x(), out.y(), out.width(), thickness),
        new Area(out.x(), edge.bottom() - thickness / 2, out.width(), thickness),
        new Area(out.x(), out.y(), thickness, out.height()),
        new Area(edge.right() - thickness / 2, out.y(), thickness, out.height()));
  }

  /**
   * A piece of ink, or the white of a box for a pen.
   *
   * @param item its number on the page
   * @param clear what other ink must keep off
   * @param solid whether nothing at all may touch it; two strokes may
   */
  private record Piece(int item, Area area, Area clear, boolean solid) {
    boolean clashes(Piece other) {
      return (solid || other.solid)
          && item != other.item
          && (clear.overlaps(other.area) || area.overlaps(other.clear));
    }
  }
}
