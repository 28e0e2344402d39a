package baysheet.layout;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Unpacks a font from the Web Open Font Format 1.0 (W3C Recommendation of 13 December 2012): each
 * table of a TrueType file, deflated where that makes it shorter.
 */
final class WoffFont {
  private static final int SIGNATURE = 0x774F4646;
  private static final int HEADER = 44;
  private static final int ENTRY = 20;

  /** The header and an entry of a TrueType file (ISO/IEC 14496-22). */
  private static final int FONT_HEADER = 12;

  private static final int FONT_ENTRY = 16;

  /** Many times the length of any face here. */
  private static final int LONGEST = 1 << 22;

  private WoffFont() {}

  static boolean isOne(byte[] file) {
    return file.length > HEADER && ByteBuffer.wrap(file).getInt() == SIGNATURE;
  }

  /**
   * The TrueType file with the tables that were packed, in their order.
   *
   * @throws IOException if the lengths in the file disagree with one another or with its content
   */
  static byte[] unpack(byte[] woff) throws IOException {
    ByteBuffer file = ByteBuffer.wrap(woff);
    int tables = Short.toUnsignedInt(file.getShort(12));
    int length = file.getInt(16);
    int at = FONT_HEADER + FONT_ENTRY * tables;
    require(at <= length && length <= LONGEST && HEADER + ENTRY * tables <= woff.length);
    ByteBuffer font = ByteBuffer.allocate(length);
    int searched = Integer.highestOneBit(tables);
    font.putInt(file.getInt(4)).putShort((short) tables);
    font.putShort((short) (FONT_ENTRY * searched));
    font.putShort((short) Integer.numberOfTrailingZeros(searched));
    font.putShort((short) (FONT_ENTRY * (tables - searched)));
    for (int i = 0; i < tables; i++) {
      file.position(HEADER + ENTRY * i);
      int tag = file.getInt();
      int packedAt = file.getInt();
      int packed = file.getInt();
      int unpacked = file.getInt();
      font.putInt(tag).putInt(file.getInt()).putInt(at).putInt(unpacked);
      require(0 <= packedAt && 0 <= packed && packed <= woff.length - packedAt);
      require(packed <= unpacked && unpacked <= length - at);
      if (packed == unpacked) {
        System.arraycopy(woff, packedAt, font.array(), at, unpacked);
      } else {
        inflate(woff, packedAt, packed, font.array(), at, unpacked);
      }
      // Every table begins at a multiple of four bytes.
      at += (unpacked + 3) & ~3;
    }
    require(at == length);
    return font.array();
  }

  private static void inflate(byte[] from, int at, int packed, byte[] to, int start, int length)
      throws IOException {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(from, at, packed);
      require(inflater.inflate(to, start, length) == length && inflater.finished());
    } catch (DataFormatException e) {
      throw new IOException("a table cannot be inflated", e);
    } finally {
      inflater.end();
    }
  }

  private static void require(boolean agrees) throws IOException {
    if (!agrees) {
      throw new IOException("the lengths in the file disagree");
    }
  }
}
