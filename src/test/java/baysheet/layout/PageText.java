package baysheet.layout;

/** Prints a page as text, so that a change of a page shows as a change of lines. */
final class PageText {
  private PageText() {}

  /** The structure tree, then one line an item; lengths in points. */
  static String print(Page page) {
    StringBuilder text = new StringBuilder();
    text.append("page %sx%s\n".formatted(Page.points(page.width()), Page.points(page.height())));
    element(page.structure(), 0, text);
    for (Item item : page.items()) {
      String owner = item.element() == Page.ARTIFACT ? "-" : Integer.toString(item.element());
      text.append("%4s %s\n".formatted(owner, item(item)));
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

  private static String item(Item item) {
    if (item instanceof Item.Glyphs text) {
      String face = text.bold() ? "bold" : "regular";
      return "text      %s %s %s %s"
          .formatted(text.area(), Page.points(text.size()), face, text.text());
    } else if (item instanceof Item.Line line) {
      return "line      %s %s".formatted(line.area(), Page.points(line.thickness()));
    } else if (item instanceof Item.Circle circle) {
      return "circle    %s %s".formatted(circle.area(), Page.points(circle.thickness()));
    } else if (item instanceof Item.Pen pen) {
      return "pen       %s %s %s".formatted(pen.edge(), pen.kind(), pen.name());
    }
    return item.called() + " " + item.area();
  }
}
