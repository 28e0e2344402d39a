package baysheet.pdf;

import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/**
 * Grows the structure tree of a document, page by page, with the parent tree that leads from marked
 * content back to its element (ISO 32000-1, 14.7).
 */
final class StructureTree {
  private static final COSName SECTION = COSName.getPDFName("Sect");

  private final COSDictionary root = new COSDictionary();
  private final COSDictionary document = new COSDictionary();
  private final COSArray sections = DirectObjects.array();
  private final COSArray parents = DirectObjects.array();
  private final Optional<FormFields> form;
  private int next;

  /**
   * @param form takes the boxes for a pen, where they are fields
   */
  StructureTree(Optional<FormFields> form) {
    this.form = form;
    root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
    describe(document, StructureNames.cosName(Tag.Type.DOCUMENT), root);
    document.setItem(COSName.K, sections);
    root.setItem(COSName.K, document);
  }

  /** Without the type that all elements share: it may be left out (ISO 32000-1, table 323). */
  static void describe(COSDictionary element, COSName type, COSDictionary parent) {
    element.setItem(COSName.S, type);
    element.setItem(COSName.P, parent);
  }

  COSDictionary root() {
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.setItem(COSName.PARENT_TREE, tree);
    root.setInt(COSName.PARENT_TREE_NEXT_KEY, next);
    return root;
  }

  /**
   * Adds a page, as a section of its own.
   *
   * @param owners the element numbers of the page's marked-content sequences
   * @return the page's key in the parent tree
   */
  int add(Page page, List<Integer> owners, COSDictionary pdfPage) {
    PageTree tree = new PageTree(page, owners, pdfPage, form);
    COSDictionary section = new COSDictionary();
    describe(section, SECTION, document);
    COSArray kids = DirectObjects.array();
    for (Page.Element child : page.structure().children()) {
      kids.add(tree.element(child, section));
    }
    section.setItem(COSName.K, kids);
    sections.add(section);
    int key = next++;
    parents.add(COSInteger.get(key));
    parents.add(tree.byNumber(owners));
    tree.widgets().forEach(this::own);
    return key;
  }

  /** A field leads back to its element as marked content does. */
  private void own(COSDictionary widget, COSDictionary element) {
    widget.setInt(COSName.STRUCT_PARENT, next);
    parents.add(COSInteger.get(next++));
    parents.add(element);
  }
}
