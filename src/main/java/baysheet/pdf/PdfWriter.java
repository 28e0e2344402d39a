package baysheet.pdf;

import baysheet.layout.Item;
import baysheet.layout.Page;
import baysheet.layout.Tag;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/**
 * Draws pages into a PDF file that can be archived (PDF/A-3a, ISO 19005-3) and read aloud
 * (PDF/UA-1, ISO 14289-1). The same pages and facts give the same bytes.
 *
 * <p>Reading the fonts takes longer than drawing a page, so keep a writer for many documents; two
 * threads must not use one at the same time.
 */
public final class PdfWriter {
  private final Map<Face, FaceCutter> faces = new EnumMap<>(Face.class);

  public PdfWriter() {
    for (Face face : Face.values()) {
      faces.put(face, FaceCutter.open(face));
    }
  }

  /**
   * Writes one page with its attachments.
   *
   * @return the bytes of the file
   */
  public byte[] write(Page page, PdfInfo info, List<Attachment> attachments) {
    return writeAll(List.of(page), info, attachments);
  }

  /**
   * Writes pages into one file: one structure tree, the fonts once, all attachments.
   *
   * @param pages at least one
   * @param attachments of all pages; no two of one name
   * @return the bytes of the file
   */
  public byte[] writeAll(List<Page> pages, PdfInfo info, List<Attachment> attachments) {
    return writeAll(pages, info, attachments, Archive.Claim.BOTH);
  }

  /**
   * Writes pages with pictures of handwriting, which nobody can read aloud: PDF/A-3b.
   *
   * @return the bytes of the file
   */
  public byte[] writeScans(List<Page> pages, PdfInfo info, List<Attachment> attachments) {
    return writeAll(pages, info, attachments, Archive.Claim.ARCHIVE);
  }

  /**
   * Writes a page whose boxes for a pen are fields of a form (ISO 32000-1, 12.7), to be filled in
   * on a screen: PDF/UA-1. A field is called as its box, with a slash for each full stop.
   *
   * @return the bytes of the file
   */
  public byte[] writeForm(Page page, PdfInfo info, List<Attachment> attachments) {
    return writeAll(List.of(page), info, attachments, Archive.Claim.ACCESSIBLE);
  }

  private byte[] writeAll(
      List<Page> pages, PdfInfo info, List<Attachment> attachments, Archive.Claim claim) {
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("no pages for " + info.title());
    }
    try {
      COSDictionary catalog = new COSDictionary();
      catalog.setItem(COSName.TYPE, COSName.CATALOG);
      Optional<FormFields> form =
          claim == Archive.Claim.ACCESSIBLE ? Optional.of(new FormFields()) : Optional.empty();
      StructureTree structure = new StructureTree(form);
      List<COSDictionary> drawn = draw(pages, structure, form.isPresent());
      form.ifPresent(fields -> catalog.setItem(COSName.ACRO_FORM, fields.dictionary()));
      catalog.setItem(COSName.PAGES, tree(drawn));
      Bookmarks.add(pages, drawn, catalog);
      catalog.setItem(COSName.STRUCT_TREE_ROOT, structure.root());
      Archive archive = new Archive(info, claim);
      archive.describe(catalog);
      new AttachedFiles(catalog, info).attach(attachments);
      return ObjectFile.write(catalog, archive.facts(), archive.id());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write the PDF file '" + info.title() + "'", e);
    }
  }

  private List<COSDictionary> draw(List<Page> pages, StructureTree structure, boolean form)
      throws IOException {
    UsedFonts used = UsedFonts.embed(pages, faces);
    HeldStream grey = Archive.profile();
    List<COSDictionary> all = new ArrayList<>();
    for (Page page : pages) {
      PageContent content = new PageContent(page, used, form);
      COSDictionary drawn = page(page, content.write());
      drawn.setItem(COSName.RESOURCES, Pictures.resources(page, used.resources(), grey));
      drawn.setInt(COSName.STRUCT_PARENTS, structure.add(page, content.owners(), drawn));
      all.add(drawn);
    }
    return all;
  }

  private static COSDictionary page(Page page, Bytes content) {
    COSDictionary drawn = new COSDictionary();
    drawn.setItem(COSName.TYPE, COSName.PAGE);
    drawn.setItem(COSName.MEDIA_BOX, new PDRectangle(page.width() / 1000f, page.height() / 1000f));
    drawn.setItem(COSName.CONTENTS, content.compressed());
    // PDF/UA-1, 7.18.3: the tab order is the structure's.
    drawn.setItem(COSName.getPDFName("Tabs"), COSName.S);
    return drawn;
  }

  /** All pages under one node: a file never has more than a day's. */
  private static COSDictionary tree(List<COSDictionary> pages) {
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.TYPE, COSName.PAGES);
    tree.setItem(COSName.KIDS, DirectObjects.array(pages));
    tree.setInt(COSName.COUNT, pages.size());
    pages.forEach(page -> page.setItem(COSName.PARENT, tree));
    return tree;
  }

  /** Lists the pages of a document by their titles, so that a reader finds the one wanted. */
  private static final class Bookmarks {
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
}
