package baysheet.pdf;

/**
 * A file that travels inside a PDF file.
 *
 * @param name its file name
 * @param mime its media type
 * @param relationship what it is to the document (ISO 19005-3, annex E)
 * @param content its bytes; not copied, so leave them alone
 * @param description what a reader shows beside its name
 */
public record Attachment(
    String name, String mime, Relationship relationship, byte[] content, String description) {
  public Attachment {
    if (name.isBlank() || mime.isBlank()) {
      throw new IllegalArgumentException("attachment '" + name + "' of type '" + mime + "'");
    }
  }

  /** What an attached file is to its document, of the values of the standard those in use. */
  public enum Relationship {
    DATA("Data"),
    SUPPLEMENT("Supplement");

    private final String pdfName;

    Relationship(String pdfName) {
      this.pdfName = pdfName;
    }

    String pdfName() {
      return pdfName;
    }
  }
}
