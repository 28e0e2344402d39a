package baysheet.pdf;

import baysheet.layout.Fonts;
import baysheet.layout.Page;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Draws pages into a PDF file that can be archived (PDF/A-3a, ISO 19005-3) and read aloud
 * (PDF/UA-1, ISO 14289-1). The same pages and facts give the same bytes.
 *
 * <p>Reading the fonts takes longer than drawing a page, so keep a writer for many documents; two
 * threads must not use one at the same time.
 */
public final class PdfWriter {
  private final FaceCutter regular = FaceCutter.open(Fonts.REGULAR, "DejaVuSansCondensed");
  private final FaceCutter bold = FaceCutter.open(Fonts.BOLD, "DejaVuSansCondensed-Bold");

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
    if (pages.isEmpty()) {
      throw new IllegalArgumentException("no pages for " + info.title());
    }
    try (PDDocument document = new PDDocument()) {
      StructureTree structure = new StructureTree();
      draw(pages, document, structure);
      Bookmarks.add(pages, document);
      new Archive(document, info).describe(structure.root());
      new AttachedFiles(document, info).attach(attachments);
      ByteArrayOutputStream out = new ByteArrayOutputStream(65_536);
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write the PDF file '" + info.title() + "'", e);
    }
  }

  private void draw(List<Page> pages, PDDocument document, StructureTree structure)
      throws IOException {
    UsedFonts used = UsedFonts.embed(pages, regular, bold, document);
    for (Page page : pages) {
      PageContent content = new PageContent(page, used);
      byte[] bytes = content.write();
      PDPage drawn = page(page, bytes, document);
      drawn.setResources(used.resources());
      COSDictionary dictionary = drawn.getCOSObject();
      int key = structure.add(page, content.owners(), dictionary);
      dictionary.setInt(COSName.STRUCT_PARENTS, key);
      document.addPage(drawn);
    }
  }

  private static PDPage page(Page page, byte[] content, PDDocument document) throws IOException {
    PDPage drawn = new PDPage(new PDRectangle(page.width() / 1000f, page.height() / 1000f));
    COSStream stream = Streams.compressed(document, content);
    drawn.getCOSObject().setItem(COSName.CONTENTS, stream);
    // PDF/UA-1, 7.18.3: the tab order, should there ever be a widget, is the structure's.
    drawn.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    return drawn;
  }
}
