package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;

/**
 * What structure elements say of themselves beside their type (ISO 32000-1, 14.8.5).
 *
 * @param height of the page, in thousandths of a point
 * @param items of the page by their elements
 * @param form whether boxes are fields, which say themselves what they are
 */
record ElementAttributes(long height, ByElement<Item> items, boolean form) {
  private static final COSName LAYOUT = COSName.getPDFName("Layout");
  private static final COSName TABLE = COSName.getPDFName("Table");
  private static final COSName SUMMARY = COSName.getPDFName("Summary");
  private static final COSName SCOPE = COSName.getPDFName("Scope");
  private static final COSName COLUMN = COSName.getPDFName("Column");
  private static final COSName ROW = COSName.getPDFName("Row");
  private static final COSName SPAN = COSName.getPDFName("ColSpan");
  private static final COSName PRINT_FIELD = COSName.getPDFName("PrintField");
  private static final COSName ROLE = COSName.getPDFName("Role");
  private static final COSName CHECK_BOX = COSName.getPDFName("cb");
  private static final COSName TEXT_FIELD = COSName.getPDFName("tv");
  private static final COSName CHECKED = COSName.getPDFName("checked");
  private static final COSName OFF = COSName.getPDFName("off");

  /** The attributes of an element; most need none. */
  Optional<COSBase> of(Page.Element element) {
    Tag tag = element.tag();
    return switch (tag.type()) {
      case TABLE -> tag.title().isEmpty() ? Optional.empty() : Optional.of(summary(tag));
      case TH_COLUMN -> Optional.of(header(tag, COLUMN));
      case TH_ROW -> Optional.of(header(tag, ROW));
      case TD -> tag.span() == 1 ? Optional.empty() : Optional.of(cell(tag));
      case FIGURE -> Optional.of(box(element));
      case FORM ->
          Optional.of(form ? box(element) : DirectObjects.array(box(element), field(element)));
      default -> Optional.empty();
    };
  }

  private static COSDictionary summary(Tag tag) {
    COSDictionary attributes = owned(TABLE);
    attributes.setItem(SUMMARY, DirectObjects.text(tag.title()));
    return attributes;
  }

  private static COSDictionary header(Tag tag, COSName scope) {
    COSDictionary attributes = cell(tag);
    attributes.setItem(SCOPE, scope);
    return attributes;
  }

  private static COSDictionary cell(Tag tag) {
    COSDictionary attributes = owned(TABLE);
    if (tag.span() > 1) {
      attributes.setInt(SPAN, tag.span());
    }
    return attributes;
  }

  /** Where an illustration stands, in points from the lower left corner. */
  private COSDictionary box(Page.Element element) {
    COSDictionary attributes = owned(LAYOUT);
    itemsOf(element).stream()
        .map(Item::area)
        .reduce(ElementAttributes::around)
        .ifPresent(area -> attributes.setItem(COSName.BBOX, corners(area)));
    return attributes;
  }

  private COSArray corners(Item.Area area) {
    return DirectObjects.array(
        points(area.x()),
        points(height - area.bottom()),
        points(area.right()),
        points(height - area.y()));
  }

  private static Item.Area around(Item.Area a, Item.Area b) {
    long x = Math.min(a.x(), b.x());
    long y = Math.min(a.y(), b.y());
    long right = Math.max(a.right(), b.right());
    long bottom = Math.max(a.bottom(), b.bottom());
    return new Item.Area(x, y, right - x, bottom - y);
  }

  private static COSBase points(long thousandths) {
    return new COSFloat(thousandths / 1000f);
  }

  /** A field that is filled in on paper (ISO 32000-1, 14.8.5.6): a tick or words, both empty. */
  private COSDictionary field(Page.Element element) {
    boolean tick =
        itemsOf(element).stream()
            .anyMatch(item -> item instanceof Item.Pen pen && pen.kind().equals(Page.TICK));
    COSDictionary attributes = owned(PRINT_FIELD);
    attributes.setItem(ROLE, tick ? CHECK_BOX : TEXT_FIELD);
    if (tick) {
      attributes.setItem(CHECKED, OFF);
    }
    attributes.setItem(COSName.DESC, DirectObjects.text(element.tag().alternate()));
    return attributes;
  }

  private List<Item> itemsOf(Page.Element element) {
    return items.of(element.id());
  }

  private static COSDictionary owned(COSName owner) {
    COSDictionary attributes = DirectObjects.dictionary();
    attributes.setItem(COSName.O, owner);
    return attributes;
  }
}
