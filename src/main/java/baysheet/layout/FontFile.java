package baysheet.layout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A font among the program's resources: a TrueType file, or one packed as WOFF. */
public final class FontFile {
  /** The tables that a font in a PDF file needs (ISO 32000-1, 9.9). */
  public static final List<String> EMBEDDED =
      List.of("head", "hhea", "loca", "maxp", "cvt ", "prep", "glyf", "hmtx", "fpgm");

  /** The table that maps characters to glyphs. */
  private static final String CHARACTERS = "cmap";

  /** Where the table directory begins, and how long each of its entries is (ISO/IEC 14496-22). */
  private static final int DIRECTORY = 12;

  private static final int ENTRY = 16;

  private FontFile() {}

  /**
   * Parses a font as far as a PDF file and its layout need it.
   *
   * @throws UncheckedIOException naming the resource if it cannot be parsed
   */
  public static TrueTypeFont parse(String resource) {
    byte[] font = trueType(resource);
    keepNeededTables(font);
    try {
      // A font of a PDF file may lack the tables that are left out here.
      return new TTFParser(true).parse(new RandomAccessReadBuffer(font));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot parse the font " + resource, e);
    }
  }

  /**
   * The bytes of a font as a TrueType file, whichever way it is packed.
   *
   * @throws UncheckedIOException naming the resource if it cannot be read
   */
  public static byte[] trueType(String resource) {
    byte[] font = Fonts.resource(resource);
    try {
      return WoffFont.isOne(font) ? WoffFont.unpack(font) : font;
    } catch (IOException e) {
      throw new UncheckedIOException("cannot unpack the font " + resource, e);
    }
  }

  /**
   * Takes all other tables out of the directory: the parser reads all that are listed, and kerning
   * and ligatures take as long as all the rest.
   */
  private static void keepNeededTables(byte[] font) {
    ByteBuffer file = ByteBuffer.wrap(font);
    short kept = 0;
    for (int i = 0; i < file.getShort(4); i++) {
      int at = DIRECTORY + ENTRY * i;
      String table = new String(font, at, 4, StandardCharsets.US_ASCII);
      if (EMBEDDED.contains(table) || table.equals(CHARACTERS)) {
        file.put(DIRECTORY + ENTRY * kept, font, at, ENTRY);
        kept++;
      }
    }
    file.putShort(4, kept);
  }
}
