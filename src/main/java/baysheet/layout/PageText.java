package baysheet.layout;

/** Prints a page as text, so that a change of a page shows as a change of lines. */
public final class PageText {
  private PageText() {}

  /** The structure tree, then one line an item; lengths in points. */
  public static String print(Page page) {
    StringBuilder text = new StringBuilder();
    text.append("page %sx%s\n".formatted(points(page.width()), points(page.height())));
    element(page.structure(), 0, text);
    for (Item item : page.items()) {
      String owner = item.element() == Page.ARTIFACT ? "-" : Integer.toString(item.element());
      text.append("%4s %s\n".formatted(owner, item.describe()));
    }
    return text.toString();
  }

  private static void element(Page.Element element, int depth, StringBuilder text) {
    Tag tag = element.tag();
    text.append("%4s %s%s".formatted(element.id(), "  ".repeat(depth), tag.type()));
    text.append(tag.span() > 1 ? " over " + tag.span() : "");
    text.append(tag.title().isEmpty() ? "" : " title \"" + tag.title() + "\"");
    text.append(tag.alternate().isEmpty() ? "" : " for \"" + tag.alternate() + "\"");
    text.append('\n');
    element.children().forEach(child -> element(child, depth + 1, text));
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
}
