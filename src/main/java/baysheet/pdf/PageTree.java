package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/** The structure elements of one page. */
final class PageTree {
  private final COSDictionary pdfPage;
  private final ElementAttributes attributes;
  private final ByElement<COSBase> sequences = new ByElement<>();
  private final ByElement<COSDictionary> elements = new ByElement<>();

  private final ByElement<Item> items;
  private final Optional<FormFields> form;
  private final long height;
  private final Map<COSDictionary, COSDictionary> widgets = new LinkedHashMap<>();

  PageTree(Page page, List<Integer> owners, COSDictionary pdfPage, Optional<FormFields> form) {
    this.pdfPage = pdfPage;
    this.form = form;
    height = page.height();
    items = items(page);
    attributes = new ElementAttributes(page.height(), items, form.isPresent());
    for (int i = 0; i < owners.size(); i++) {
      sequences.add(owners.get(i), COSInteger.get(i));
    }
  }

  private static ByElement<Item> items(Page page) {
    ByElement<Item> items = new ByElement<>();
    for (Item item : page.items()) {
      if (item.element() != Page.ARTIFACT) {
        items.add(item.element(), item);
      }
    }
    return items;
  }

  /** An element with everything below it. */
  COSDictionary element(Page.Element element, COSDictionary parent) {
    Tag tag = element.tag();
    COSDictionary made = new COSDictionary();
    StructureTree.describe(made, StructureNames.cosName(tag.type()), parent);
    if (!tag.alternate().isEmpty()) {
      made.setItem(COSName.ALT, DirectObjects.text(tag.alternate()));
    }
    if (!tag.title().isEmpty()) {
      made.setItem(COSName.T, DirectObjects.text(tag.title()));
    }
    attributes.of(element).ifPresent(found -> made.setItem(COSName.A, found));
    elements.add(element.id(), made);
    addKids(element, made);
    return made;
  }

  private void addKids(Page.Element element, COSDictionary made) {
    List<COSBase> kids = new ArrayList<>();
    for (Page.Element child : element.children()) {
      kids.add(element(child, made));
    }
    List<COSBase> marked = sequences.of(element.id());
    if (!marked.isEmpty()) {
      made.setItem(COSName.PG, pdfPage);
      kids.addAll(marked);
    }
    form.ifPresent(fields -> kids.addAll(fields(element, made, fields)));
    if (kids.size() == 1) {
      made.setItem(COSName.K, kids.get(0));
    } else if (!kids.isEmpty()) {
      made.setItem(COSName.K, DirectObjects.array(kids));
    }
  }

  /** References to the fields of an element (ISO 32000-1, 14.7.4.3). */
  private List<COSDictionary> fields(Page.Element element, COSDictionary made, FormFields fields) {
    List<COSDictionary> references = new ArrayList<>();
    for (Item item : items.of(element.id())) {
      if (item instanceof Item.Pen pen) {
        COSDictionary widget = fields.add(pen, element.tag().alternate(), height, pdfPage);
        widgets.put(widget, made);
        COSDictionary reference = new COSDictionary();
        reference.setItem(COSName.TYPE, COSName.getPDFName("OBJR"));
        reference.setItem(COSName.OBJ, widget);
        reference.setItem(COSName.PG, pdfPage);
        references.add(reference);
      }
    }
    return references;
  }

  /** The fields of the page and their elements, in reading order. */
  Map<COSDictionary, COSDictionary> widgets() {
    return widgets;
  }

  /** The elements of marked-content sequences, by the sequences' numbers. */
  COSArray byNumber(List<Integer> owners) {
    COSArray byNumber = DirectObjects.array();
    for (Integer owner : owners) {
      byNumber.add(elements.of(owner).get(0));
    }
    return byNumber;
  }
}
