package baysheet.pdf;

import java.time.Instant;
import java.util.List;

/**
 * What a PDF file says of itself.
 *
 * @param language BCP 47 tag of its text
 * @param date when it was made, as readers see it; whole seconds count
 * @param seed anything that distinguishes this document from others; the same seed and content give
 *     the same bytes
 */
public record PdfInfo(
    String title,
    String language,
    String author,
    String subject,
    List<String> keywords,
    Instant date,
    String seed) {
  public PdfInfo {
    keywords = List.copyOf(keywords);
    if (title.isBlank() || language.isBlank()) {
      throw new IllegalArgumentException("title '" + title + "', language '" + language + "'");
    }
  }
}
