package baysheet.layout;

import baysheet.layout.Item.Area;
import java.util.ArrayList;
import java.util.List;

/**
 * Walks a finished page and finds what must never be printed: ink beyond the margin, text on text,
 * text or a rule across a box for a pen, a border or a rule across text, text too small to read. It
 * looks only at the items, not at how they came to be where they are.
 */
public final class PageCheck {
  private final Page page;
  private final Area inside;
  private final long leastText;
  private final List<String> faults = new ArrayList<>();

  private PageCheck(Page page, long margin, long leastText) {
    this.page = page;
    inside = new Area(margin, margin, page.width() - 2 * margin, page.height() - 2 * margin);
    this.leastText = leastText;
  }

  /**
   * Checks a page.
   *
   * @param margin that is kept free, in thousandths of a point
   * @param leastText the smallest size of text, in thousandths of a point
   * @return one line a fault; empty for a page that may be printed
   */
  public static List<String> faults(Page page, long margin, long leastText) {
    PageCheck check = new PageCheck(page, margin, leastText);
    page.items().forEach(check::alone);
    check.pairs();
    return List.copyOf(check.faults);
  }

  private void alone(Item item) {
    if (!inside.contains(item.area())) {
      faults.add("beyond the margin: " + item.describe());
    }
    if (item instanceof Item.Glyphs glyphs && glyphs.size() < leastText) {
      faults.add("smaller than " + PageText.points(leastText) + ": " + item.describe());
    }
  }

  private void pairs() {
    List<Item> solid = page.items().stream().filter(PageCheck::isSolid).toList();
    for (int i = 0; i < solid.size(); i++) {
      for (int j = i + 1; j < solid.size(); j++) {
        if (solid.get(i).area().overlaps(solid.get(j).area())) {
          fault(solid.get(i), solid.get(j));
        }
      }
    }
    for (Item item : page.items()) {
      for (Area ink : ink(item)) {
        solid.stream().filter(s -> s.area().overlaps(ink)).forEach(s -> fault(item, s));
      }
    }
  }

  private void fault(Item one, Item other) {
    faults.add("on one another: " + one.describe() + " / " + other.describe());
  }

  /** What nothing else may touch: text, and the white inside of a box for a pen. */
  private static boolean isSolid(Item item) {
    return item instanceof Item.Glyphs || item instanceof Item.Pen;
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
}
