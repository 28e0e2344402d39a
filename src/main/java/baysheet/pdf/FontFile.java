package baysheet.pdf;

import baysheet.layout.Fonts;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Collection;

/** A font among the program's resources, as far as it is needed. */
final class FontFile {
  /** Where the table directory begins, and how long each of its entries is (ISO/IEC 14496-22). */
  private static final int DIRECTORY = 12;

  private static final int ENTRY = 16;

  private FontFile() {}

  /**
   * The bytes of a TrueType file whose directory lists these tables alone: whoever parses it reads
   * all that are listed, and kerning and ligatures take as long as all the rest.
   */
  static byte[] read(String resource, Collection<String> tables) {
    byte[] font = Fonts.resource(resource);
    ByteBuffer file = ByteBuffer.wrap(font);
    short kept = 0;
    for (int i = 0; i < file.getShort(4); i++) {
      int at = DIRECTORY + ENTRY * i;
      if (tables.contains(new String(font, at, 4, StandardCharsets.US_ASCII))) {
        file.put(DIRECTORY + ENTRY * kept, font, at, ENTRY);
        kept++;
      }
    }
    file.putShort(4, kept);
    return font;
  }
}
