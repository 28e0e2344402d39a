package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WoffFontTest {
  private static final int HEAD = 0x68656164;

  /**
   * Each entry of a font's directory carries the sum of its table's words; that of the table "head"
   * is taken with its third word, the adjustment, as zero (ISO/IEC 14496-22).
   */
  @ParameterizedTest
  @ValueSource(strings = {Fonts.REGULAR, Fonts.BOLD})
  void tablesAreThoseThatWerePacked(String resource) throws IOException {
    ByteBuffer font = ByteBuffer.wrap(WoffFont.unpack(Fonts.resource(resource)));
    assertEquals(0x00010000, font.getInt(0));
    assertEquals(18, font.getShort(4));
    for (int entry = 12; entry < 12 + 16 * 18; entry += 16) {
      int from = font.getInt(entry + 8);
      int sum = sum(font, from, font.getInt(entry + 12) + 3 & ~3);
      int adjustment = font.getInt(entry) == HEAD ? font.getInt(from + 8) : 0;
      assertEquals(font.getInt(entry + 4), sum - adjustment, "table at " + entry);
    }
  }

  private static int sum(ByteBuffer font, int from, int length) {
    int sum = 0;
    for (int at = from; at < from + length; at += 4) {
      sum += font.getInt(at);
    }
    return sum;
  }

  @Test
  void trueTypeFileIsNotOne() {
    assertTrue(WoffFont.isOne(Fonts.resource(Fonts.REGULAR)));
    assertFalse(WoffFont.isOne(Fonts.resource(Fonts.SECOND_REGULAR)));
    assertFalse(WoffFont.isOne(new byte[0]));
  }

  /** The number of tables, the length of the font, and place and lengths of the first table. */
  @ParameterizedTest
  @ValueSource(ints = {12, 16, 48, 52, 56})
  void numberThatDisagreesIsRefused(int at) {
    for (byte wrong : new byte[] {(byte) 0x80, 0x7F, 0x01}) {
      byte[] file = Fonts.resource(Fonts.REGULAR);
      file[at] = wrong;
      assertThrows(IOException.class, () -> WoffFont.unpack(file), at + ": " + wrong);
    }
  }

  @Test
  void fileThatIsCutOffIsRefused() {
    byte[] file = Fonts.resource(Fonts.REGULAR);
    for (int length : new int[] {45, 403, 1000, file.length - 200}) {
      byte[] cut = Arrays.copyOf(file, length);
      assertThrows(IOException.class, () -> WoffFont.unpack(cut), length + " bytes");
    }
  }

  /** Each packed table ends in a sum of its own content (RFC 1950). */
  @Test
  void contentThatWasChangedIsRefused() {
    byte[] file = Fonts.resource(Fonts.REGULAR);
    file[50_000] ^= 1;
    assertThrows(IOException.class, () -> WoffFont.unpack(file));
  }
}
