package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** Lists the pages of a document by their titles, so that a reader finds the one wanted. */
final class Bookmarks {
  private Bookmarks() {}

  /**
   * Adds the list to the catalog; one page needs none.
   *
   * @param drawn the pages as they are in the file
   */
  static void add(List<Page> pages, List<COSDictionary> drawn, COSDictionary catalog) {
    if (pages.size() < 2) {
      return;
    }
    PDDocumentOutline outline = new PDDocumentOutline();
    for (int i = 0; i < pages.size(); i++) {
      PDPageFitDestination destination = new PDPageFitDestination();
      destination.setPage(new PDPage(drawn.get(i)));
      PDOutlineItem item = new PDOutlineItem();
      item.setTitle(title(pages.get(i), i + 1));
      item.setDestination(destination);
      outline.addLast(item);
    }
    outline.openNode();
    catalog.setItem(COSName.OUTLINES, outline);
  }

  /** The words of the page's title, or its number. */
  private static String title(Page page, int number) {
    return page.structure().children().stream()
        .filter(element -> element.tag().type() == Tag.Type.H1)
        .findFirst()
        .map(element -> words(page, element.id()))
        .orElse(Integer.toString(number));
  }

  private static String words(Page page, int element) {
    return page.items().stream()
        .filter(item -> item.element() == element)
        .map(item -> item instanceof Item.Glyphs glyphs ? glyphs.text() : "")
        .collect(Collectors.joining(" "));
  }
}
