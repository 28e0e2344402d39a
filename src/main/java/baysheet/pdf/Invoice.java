package baysheet.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNameTreeNode;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.pdmodel.common.filespecification.PDEmbeddedFile;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * An invoice of somebody else's making, to which a signed sheet is added. All that it holds stays:
 * metadata, output intents, attachments, names.
 */
public final class Invoice implements AutoCloseable {
  private static final COSName AF = COSName.getPDFName("AF");
  private static final int SIGNATURES_EXIST = 1;

  private final PDDocument document;

  private Invoice(PDDocument document) {
    this.document = document;
  }

  /**
   * Opens an invoice.
   *
   * @throws IOException saying as a clause why it cannot be used
   */
  public static Invoice open(byte[] pdf) throws IOException {
    PDDocument document;
    try {
      document = Loader.loadPDF(pdf);
    } catch (InvalidPasswordException e) {
      throw new IOException("it is encrypted", e);
    } catch (IOException e) {
      throw new IOException("it is no PDF file that can be read: " + e.getMessage(), e);
    }
    Invoice invoice = new Invoice(document);
    try {
      invoice.check();
      return invoice;
    } catch (IOException e) {
      document.close();
      throw e;
    }
  }

  private void check() throws IOException {
    if (document.isEncrypted()) {
      throw new IOException("it is encrypted");
    }
    COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
    COSDictionary form = catalog.getCOSDictionary(COSName.ACRO_FORM);
    boolean flagged = form != null && (form.getInt(COSName.SIG_FLAGS, 0) & SIGNATURES_EXIST) != 0;
    if (flagged
        || catalog.containsKey(COSName.PERMS)
        || !document.getSignatureDictionaries().isEmpty()) {
      throw new IOException("it is signed, and adding to it would break the signature");
    }
    if (document.getNumberOfPages() == 0) {
      throw new IOException("it has no pages");
    }
  }

  /** Its words. */
  public String text() throws IOException {
    return new PDFTextStripper().getText(document);
  }

  /** The invoice with the pages of other files behind its own. */
  public byte[] append(List<byte[]> files) throws IOException {
    List<PDDocument> others = new ArrayList<>();
    try {
      for (byte[] file : files) {
        PDDocument other = Loader.loadPDF(file);
        others.add(other);
        for (PDPage page : other.getPages()) {
          PDPage own = document.importPage(page);
          own.setResources(page.getResources());
          // The other file's structure stays behind.
          own.getCOSObject().removeItem(COSName.STRUCT_PARENTS);
        }
      }
      claim(1, false);
      return saved();
    } finally {
      for (PDDocument other : others) {
        other.close();
      }
    }
  }

  /** The invoice with files attached to it as a whole. */
  public byte[] embed(List<Attachment> files) throws IOException {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    PDDocumentNameDictionary names = catalog.getNames();
    names = names == null ? new PDDocumentNameDictionary(catalog) : names;
    Map<String, PDComplexFileSpecification> all = new TreeMap<>();
    if (names.getEmbeddedFiles() != null) {
      gather(names.getEmbeddedFiles(), all);
    }
    COSBase there = catalog.getCOSObject().getDictionaryObject(AF);
    COSArray associated = there instanceof COSArray array ? array : new COSArray();
    for (Attachment file : files) {
      String name = free(file.name(), all);
      PDComplexFileSpecification specification = specification(file, name);
      all.put(name, specification);
      associated.add(specification.getCOSObject());
    }
    PDEmbeddedFilesNameTreeNode tree = new PDEmbeddedFilesNameTreeNode();
    tree.setNames(all);
    names.setEmbeddedFiles(tree);
    catalog.setNames(names);
    catalog.getCOSObject().setItem(AF, associated);
    claim(3, true);
    return saved();
  }

  private static void gather(
      PDNameTreeNode<PDComplexFileSpecification> node, Map<String, PDComplexFileSpecification> all)
      throws IOException {
    Optional.ofNullable(node.getNames()).ifPresent(all::putAll);
    if (node.getKids() != null) {
      for (PDNameTreeNode<PDComplexFileSpecification> kid : node.getKids()) {
        gather(kid, all);
      }
    }
  }

  private static String free(String name, Map<String, ?> taken) {
    int dot = name.lastIndexOf('.');
    String free = name;
    for (int count = 2; taken.containsKey(free); count++) {
      free = name.substring(0, dot) + "-" + count + name.substring(dot);
    }
    return free;
  }

  private PDComplexFileSpecification specification(Attachment file, String name)
      throws IOException {
    PDEmbeddedFile embedded =
        new PDEmbeddedFile(
            document, new ByteArrayInputStream(file.content()), COSName.FLATE_DECODE);
    embedded.setSubtype(file.mime());
    embedded.setSize(file.content().length);
    PDComplexFileSpecification specification = new PDComplexFileSpecification();
    specification.setFile(name);
    specification.setFileUnicode(name);
    specification.setFileDescription(file.description());
    specification.setEmbeddedFile(embedded);
    specification.setEmbeddedFileUnicode(embedded);
    specification
        .getCOSObject()
        .setName(COSName.getPDFName("AFRelationship"), file.relationship().pdfName());
    return specification;
  }

  /**
   * Takes back what the file says of itself and is no longer true.
   *
   * @param part the first of ISO 19005 that allows what was added
   * @param tagged whether all that was added can be read aloud
   */
  private void claim(int part, boolean tagged) throws IOException {
    PDDocumentCatalog catalog = document.getDocumentCatalog();
    if (catalog.getMetadata() == null) {
      return;
    }
    byte[] was = catalog.getMetadata().toByteArray();
    byte[] now = ArchiveClaim.lowered(was, part, tagged);
    try (var out = catalog.getMetadata().getCOSObject().createOutputStream()) {
      out.write(now);
    }
  }

  /** Without object streams, which the first part of ISO 19005 does not know. */
  private byte[] saved() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    document.save(bytes, CompressParameters.NO_COMPRESSION);
    return bytes.toByteArray();
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
