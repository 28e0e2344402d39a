package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class FontFaceTest {
  /** What sheets are written with beyond letters and digits. */
  static final String SYMBOLS = "° ± × · – → ≤ ≥ ½ ⌀ ☐ ✓ ⚠ Ω µ ’ “ ”";

  private static final Fonts FONTS = Fonts.builtIn();

  @Test
  void symbolsOfTheTradeAreCoveredInBothWeights() {
    SYMBOLS
        .codePoints()
        .forEach(
            c -> {
              assertTrue(FONTS.regular().covers(c), "regular U+" + Integer.toHexString(c));
              assertTrue(FONTS.bold().covers(c), "bold U+" + Integer.toHexString(c));
            });
  }

  /** Names and places come from all over the continent. */
  @Test
  void lettersWithAccentsAreCoveredInThreeAlphabets() {
    String letters = "ÀÉÎÕÜßçñøåæœŁőžřșțğİı ΆΈΉΊΌΎΏάέήίόύώϊϋΐ ЁЇЄҐЎёїєґўЖщъыэю";
    for (int c : letters.codePoints().toArray()) {
      assertTrue(FONTS.regular().covers(c), "regular U+" + Integer.toHexString(c));
      assertTrue(FONTS.bold().covers(c), "bold U+" + Integer.toHexString(c));
    }
  }

  @Test
  void unassignedAndForeignCharactersAreNotCovered() {
    assertFalse(FONTS.regular().covers(0x4E00));
    assertFalse(FONTS.regular().covers('\t'));
    assertFalse(FONTS.regular().covers(0x10FFFF));
  }

  @Test
  void characterWithoutGlyphThrowsWithItsNumber() {
    Exception e =
        assertThrows(IllegalArgumentException.class, () -> FONTS.regular().advance(0x4E00));
    assertTrue(e.getMessage().contains("U+4E00"), e.getMessage());
  }

  @Test
  void digitsAreAllOfOneWidth() {
    for (char digit = '0'; digit <= '9'; digit++) {
      assertEquals(FONTS.regular().advance('0'), FONTS.regular().advance(digit));
      assertEquals(FONTS.bold().advance('0'), FONTS.bold().advance(digit));
    }
  }

  @Test
  void noBreakSpaceIsAsWideAsASpaceAndTheJoinerHasNoWidth() {
    assertEquals(FONTS.regular().advance(' '), FONTS.regular().advance(0x00A0));
    assertEquals(0, FONTS.regular().advance(0x2060));
  }

  /** DejaVu Sans: small letters reach 1120, capitals 1493 of 2048 units (from memory). */
  @Test
  void heightsAreThoseOfTheFamily() {
    assertEquals(547, FONTS.regular().xHeight(), 1);
    assertEquals(729, FONTS.regular().capHeight(), 1);
  }

  /** A font made by hand: 1000 units an em, one glyph for A to C each, only a map of format 4. */
  @Test
  void mapOfTheFirstPlaneIsReadToo() {
    FontFace face = FontFace.read(handmade());
    assertTrue(face.covers('C'));
    assertFalse(face.covers('D'));
    assertEquals(300, face.advance('x'));
    assertEquals(500, face.advance('A'));
    assertEquals(600, face.advance('B'));
    // The last width holds for all glyphs after it.
    assertEquals(600, face.advance('C'));
    assertEquals(800, face.ascent());
    assertEquals(200, face.descent());
  }

  @Test
  void fileWithoutATableThrowsWithTheTablesName() {
    byte[] file = ByteBuffer.allocate(12).putInt(0x00010000).array();
    Exception e = assertThrows(IllegalArgumentException.class, () -> FontFace.read(file));
    assertTrue(e.getMessage().contains("hhea"), e.getMessage());
  }

  private static byte[] handmade() {
    ByteBuffer head = ByteBuffer.allocate(54);
    head.putShort(18, (short) 1000).putShort(50, (short) 0);
    ByteBuffer hhea = ByteBuffer.allocate(36);
    hhea.putShort(4, (short) 800).putShort(6, (short) -200).putShort(34, (short) 4);
    ByteBuffer hmtx = ByteBuffer.allocate(16);
    hmtx.putShort(0, (short) 100).putShort(4, (short) 300);
    hmtx.putShort(8, (short) 500).putShort(12, (short) 600);
    ByteBuffer loca = ByteBuffer.allocate(14);
    ByteBuffer glyf = ByteBuffer.allocate(10).putShort(8, (short) 500);
    // Glyph 1 is x, 2 to 4 are A to C: segments A..C by delta, x by delta, the end.
    ByteBuffer cmap = ByteBuffer.allocate(4 + 8 + 16 + 24);
    cmap.putShort(2, (short) 1).putInt(8, 12).putShort(12, (short) 4).putShort(18, (short) 6);
    short[] segments = {'C', 'x', -1, 0, 'A', 'x', -1, 2 - 'A', 1 - 'x', 1, 0, 0, 0};
    for (int i = 0; i < segments.length - 1; i++) {
      cmap.putShort(26 + 2 * i, segments[i]);
    }
    return file(
        new String[] {"head", "hhea", "hmtx", "loca", "glyf", "cmap"},
        new ByteBuffer[] {head, hhea, hmtx, loca, glyf, cmap});
  }

  private static byte[] file(String[] tags, ByteBuffer[] tables) {
    ByteBuffer file = ByteBuffer.allocate(4096);
    file.putInt(0x00010000).putShort((short) tags.length);
    int at = 12 + 16 * tags.length;
    for (int i = 0; i < tags.length; i++) {
      file.position(12 + 16 * i);
      file.put(tags[i].getBytes(StandardCharsets.US_ASCII)).putInt(0);
      file.putInt(at).putInt(tables[i].capacity());
      file.position(at);
      file.put(tables[i].array());
      at += tables[i].capacity();
    }
    return file.array();
  }
}
