package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.UncheckedIOException;
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

  @Test
  void fontThatIsNotThereThrowsWithItsName() {
    Exception e = assertThrows(UncheckedIOException.class, () -> FontFace.read("/no.ttf"));
    assertTrue(e.getMessage().contains("/no.ttf"), e.getMessage());
  }
}
