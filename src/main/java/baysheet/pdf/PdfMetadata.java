package baysheet.pdf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a PDF file that was written here says of itself.
 *
 * @param author as in {@link PdfInfo}
 * @param keywords as in {@link PdfInfo}
 */
public record PdfMetadata(String author, List<String> keywords) {
  private static final Pattern PRODUCER = element("pdf:Producer");
  private static final Pattern KEYWORDS = element("pdf:Keywords");
  private static final Pattern AUTHOR =
      Pattern.compile("<dc:creator><rdf:Seq><rdf:li>([^<]*)</rdf:li>");

  public PdfMetadata {
    keywords = List.copyOf(keywords);
  }

  private static Pattern element(String name) {
    return Pattern.compile("<" + name + ">([^<]*)</" + name + ">");
  }

  /**
   * Reads the metadata packet, which stands uncompressed in the file (ISO 19005-3, 6.6.2.1), so
   * that every program can find it.
   *
   * @return empty for a file that was not written here
   */
  public static Optional<PdfMetadata> of(byte[] file) {
    String text = new String(file, StandardCharsets.UTF_8);
    boolean ours = found(PRODUCER, text).filter(Archive.PRODUCER::equals).isPresent();
    return Optional.of(text)
        .filter(it -> ours && it.startsWith("%PDF-"))
        .flatMap(it -> found(AUTHOR, it))
        .flatMap(author -> found(KEYWORDS, text).map(it -> new PdfMetadata(author, list(it))));
  }

  private static List<String> list(String keywords) {
    return List.of(keywords.split(", "));
  }

  private static Optional<String> found(Pattern element, String text) {
    Matcher found = element.matcher(text);
    return found.find() ? Optional.of(Xmp.unescaped(found.group(1))) : Optional.empty();
  }
}
