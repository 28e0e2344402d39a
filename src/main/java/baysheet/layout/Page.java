package baysheet.layout;

import java.util.List;

/**
 * A page with everything at its place.
 *
 * @param width in thousandths of a point
 * @param height in thousandths of a point
 * @param items in reading order
 * @param structure the root of the structure tree; its elements are numbered in reading order
 */
public record Page(long width, long height, List<Item> items, Element structure) {
  /** The element number of what is only decoration. */
  public static final int ARTIFACT = -1;

  /** The kind of a pen box that is a line to write on. */
  public static final String LINE = "line";

  /** The kind of a pen box that is ticked. */
  public static final String TICK = "tick";

  public Page {
    items = List.copyOf(items);
  }

  /** The boxes for a pen, in reading order. */
  public List<Item.Pen> pens() {
    return items.stream().filter(Item.Pen.class::isInstance).map(Item.Pen.class::cast).toList();
  }

  /** What a machine looks for, in reading order. */
  public List<Item.Modules> modules() {
    return items.stream()
        .filter(Item.Modules.class::isInstance)
        .map(Item.Modules.class::cast)
        .toList();
  }

  /** A length in points, without the zeros that say nothing: 12345 is 12.345, 12000 is 12. */
  static String points(long thousandths) {
    String whole = (thousandths < 0 ? "-" : "") + Math.abs(thousandths) / 1000;
    long rest = Math.abs(thousandths) % 1000;
    if (rest == 0) {
      return whole;
    }
    String digits = Long.toString(1000 + rest).substring(1);
    return whole + "." + digits.replaceAll("0+$", "");
  }

  /**
   * An element of the structure tree. Either it has children, or items name it as theirs, never
   * both.
   *
   * @param id its number, in reading order from 0
   */
  public record Element(int id, Tag tag, List<Element> children) {
    public Element {
      children = List.copyOf(children);
    }
  }
}
