package baysheet.pdf;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the metadata of a file claim of archives and of reading aloud. Only these words are changed;
 * all else stays as it was, to the byte.
 */
final class ArchiveClaim {
  private static final String KEYS = "(?:part|conformance|rev|amd|corr)";

  /** ISO 19005 says that the prefix is this one. */
  private static final Pattern ARCHIVE = claim("pdfaid", KEYS);

  private static final Pattern ALOUD = claim("pdfuaid", KEYS);
  private static final Pattern PART = value("part", "([0-9]+)");
  private static final Pattern LEVEL_A = value("conformance", "(A)");

  private ArchiveClaim() {}

  /** An attribute or an element. */
  private static Pattern claim(String prefix, String key) {
    return Pattern.compile(
        "\\s+%1$s:%2$s\\s*=\\s*(\"[^\"]*\"|'[^']*')|<%1$s:%2$s(\\s[^>]*)?>[^<]*</%1$s:%2$s\\s*>"
            .formatted(prefix, key));
  }

  private static Pattern value(String key, String value) {
    return Pattern.compile("pdfaid:" + key + "\\s*(?:=\\s*[\"']|>)\\s*" + value + "\\s*[\"'<]");
  }

  /**
   * The metadata of a file to which something was added.
   *
   * @param least the first part of ISO 19005 that allows it; the fourth is another kind of file
   * @param tagged whether all that was added can be read aloud
   */
  static byte[] lowered(byte[] packet, int least, boolean tagged) {
    // Each byte is one character, so that whatever the packet holds comes back as it was.
    String xmp = new String(packet, StandardCharsets.ISO_8859_1);
    Matcher part = PART.matcher(xmp);
    boolean holds = part.find() && part.group(1).matches("[" + least + "-3]");
    String now = holds ? xmp : ARCHIVE.matcher(xmp).replaceAll("");
    if (!tagged) {
      now = withoutTags(now);
    }
    return now.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String withoutTags(String xmp) {
    String silent = ALOUD.matcher(xmp).replaceAll("");
    Matcher level = LEVEL_A.matcher(silent);
    return level.find()
        ? silent.substring(0, level.start(1)) + "B" + silent.substring(level.end(1))
        : silent;
  }
}
