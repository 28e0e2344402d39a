package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/**
 * Grows the structure tree of a document, page by page, with the parent tree that leads from marked
 * content back to its element (ISO 32000-1, 14.7).
 */
final class StructureTree {
  private static final COSName PRINT_FIELD = COSName.getPDFName("PrintField");
  private static final COSName SCOPE = COSName.getPDFName("Scope");

  private final COSDictionary root = new COSDictionary();
  private final COSDictionary document = new COSDictionary();
  private final COSArray parents = new COSArray();
  private int pages;

  StructureTree() {
    root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
    describe(document, StructureNames.cosName(Tag.Type.DOCUMENT), root);
    document.setItem(COSName.K, new COSArray());
    root.setItem(COSName.K, document);
  }

  private static void describe(COSDictionary element, COSName type, COSDictionary parent) {
    element.setItem(COSName.TYPE, COSName.STRUCT_ELEM);
    element.setItem(COSName.S, type);
    element.setItem(COSName.P, parent);
  }

  COSDictionary root() {
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.setItem(COSName.PARENT_TREE, tree);
    root.setInt(COSName.PARENT_TREE_NEXT_KEY, pages);
    return root;
  }

  /**
   * Adds a page, as a section of its own.
   *
   * @param owners the element numbers of the page's marked-content sequences
   * @return the page's key in the parent tree
   */
  int add(Page page, List<Integer> owners, COSDictionary pdfPage) {
    PageTree tree = new PageTree(page, owners, pdfPage);
    COSDictionary section = new COSDictionary();
    describe(section, COSName.getPDFName("Sect"), document);
    COSArray kids = new COSArray();
    page.structure().children().forEach(child -> kids.add(tree.element(child, section)));
    section.setItem(COSName.K, kids);
    ((COSArray) document.getDictionaryObject(COSName.K)).add(section);
    COSArray byNumber = new COSArray();
    owners.forEach(owner -> byNumber.add(tree.elements.get(owner)));
    parents.add(COSInteger.get(pages));
    parents.add(byNumber);
    return pages++;
  }

  /** The elements of one page. */
  private static final class PageTree {
    private final Page page;
    private final COSDictionary pdfPage;
    private final Map<Integer, List<Integer>> sequences = new TreeMap<>();
    private final Map<Integer, Item.Area> areas = new TreeMap<>();
    private final Map<Integer, COSDictionary> elements = new TreeMap<>();

    PageTree(Page page, List<Integer> owners, COSDictionary pdfPage) {
      this.page = page;
      this.pdfPage = pdfPage;
      for (int i = 0; i < owners.size(); i++) {
        sequences.computeIfAbsent(owners.get(i), k -> new ArrayList<>()).add(i);
      }
      for (Item item : page.items()) {
        areas.merge(item.element(), item.area(), PageTree::around);
      }
    }

    private static Item.Area around(Item.Area a, Item.Area b) {
      long x = Math.min(a.x(), b.x());
      long y = Math.min(a.y(), b.y());
      long right = Math.max(a.right(), b.right());
      long bottom = Math.max(a.bottom(), b.bottom());
      return new Item.Area(x, y, right - x, bottom - y);
    }

    COSDictionary element(Page.Element element, COSDictionary parent) {
      Tag tag = element.tag();
      COSDictionary made = new COSDictionary();
      describe(made, StructureNames.cosName(tag.type()), parent);
      made.setItem(COSName.PG, pdfPage);
      if (!tag.alternate().isEmpty()) {
        made.setString(COSName.ALT, tag.alternate());
      }
      if (!tag.title().isEmpty()) {
        made.setString(COSName.T, tag.title());
      }
      attributes(element, made);
      elements.put(element.id(), made);
      COSArray kids = kids(element, made);
      if (kids.size() > 0) {
        made.setItem(COSName.K, kids);
      }
      return made;
    }

    private COSArray kids(Page.Element element, COSDictionary made) {
      COSArray kids = new COSArray();
      element.children().forEach(child -> kids.add(element(child, made)));
      sequences
          .getOrDefault(element.id(), List.of())
          .forEach(number -> kids.add(COSInteger.get(number)));
      return kids;
    }

    private void attributes(Page.Element element, COSDictionary made) {
      Tag tag = element.tag();
      switch (tag.type()) {
        case TABLE -> table(tag, made);
        case TH_COLUMN -> made.setItem(COSName.A, cell(tag, "Column"));
        case TH_ROW -> made.setItem(COSName.A, cell(tag, "Row"));
        case TD -> {
          if (tag.span() > 1) {
            made.setItem(COSName.A, cell(tag, ""));
          }
        }
        case FIGURE -> made.setItem(COSName.A, box(element));
        case FORM -> made.setItem(COSName.A, both(box(element), field(element)));
        default -> {
          // The others need no attributes.
        }
      }
    }

    private static void table(Tag tag, COSDictionary made) {
      if (!tag.title().isEmpty()) {
        COSDictionary attributes = owned(COSName.getPDFName("Table"));
        attributes.setString(COSName.getPDFName("Summary"), tag.title());
        made.setItem(COSName.A, attributes);
      }
    }

    private static COSDictionary cell(Tag tag, String scope) {
      COSDictionary attributes = owned(COSName.getPDFName("Table"));
      if (!scope.isEmpty()) {
        attributes.setItem(SCOPE, COSName.getPDFName(scope));
      }
      if (tag.span() > 1) {
        attributes.setInt(COSName.getPDFName("ColSpan"), tag.span());
      }
      return attributes;
    }

    /** Where an illustration stands, in points from the lower left corner. */
    private COSDictionary box(Page.Element element) {
      Item.Area area = areas.get(element.id());
      COSDictionary attributes = owned(COSName.getPDFName("Layout"));
      if (area != null) {
        COSArray box = new COSArray();
        box.add(points(area.x()));
        box.add(points(page.height() - area.bottom()));
        box.add(points(area.right()));
        box.add(points(page.height() - area.y()));
        attributes.setItem(COSName.BBOX, box);
      }
      return attributes;
    }

    private static COSBase points(long thousandths) {
      return new COSFloat(thousandths / 1000f);
    }

    /** A field that is filled in on paper (ISO 32000-1, 14.8.5.6): a tick or words, both empty. */
    private COSDictionary field(Page.Element element) {
      boolean tick =
          page.items().stream()
              .filter(item -> item.element() == element.id())
              .anyMatch(item -> item instanceof Item.Pen pen && pen.kind().equals(Page.TICK));
      COSDictionary attributes = owned(PRINT_FIELD);
      attributes.setItem(COSName.getPDFName("Role"), COSName.getPDFName(tick ? "cb" : "tv"));
      if (tick) {
        attributes.setItem(COSName.getPDFName("checked"), COSName.getPDFName("off"));
      }
      attributes.setString(COSName.DESC, element.tag().alternate());
      return attributes;
    }

    private static COSDictionary owned(COSName owner) {
      COSDictionary attributes = new COSDictionary();
      attributes.setItem(COSName.O, owner);
      return attributes;
    }

    private static COSArray both(COSDictionary first, COSDictionary second) {
      COSArray both = new COSArray();
      both.add(first);
      both.add(second);
      return both;
    }
  }
}
