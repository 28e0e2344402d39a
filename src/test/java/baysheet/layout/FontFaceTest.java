package baysheet.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

  /** A sheet is measured with an id of that digit, before its own is known. */
  @ParameterizedTest
  @ValueSource(chars = {'0', '9', 'a', 'b', 'c', 'e', 'f'})
  void noHexadecimalDigitOfRegularTextIsWiderThanD(char digit) {
    assertTrue(FONTS.regular().advance(digit) <= FONTS.regular().advance('d'));
  }

  @Test
  void noBreakSpaceIsAsWideAsASpaceAndTheJoinerHasNoWidth() {
    assertEquals(FONTS.regular().advance(' '), FONTS.regular().advance(0x00A0));
    assertEquals(0, FONTS.regular().advance(0x2060));
  }

  /** Roboto: small letters reach 1082, capitals 1456 of 2048 units (from memory). */
  @Test
  void heightsAreThoseOfTheFamily() {
    assertEquals(528, FONTS.regular().xHeight(), 1);
    assertEquals(711, FONTS.regular().capHeight(), 1);
  }

  /** DejaVu Sans: the arrow is 1716 of 2048 units wide (from memory), condensed to nine tenths. */
  @Test
  void signsThatTheFamilyLacksAreAsWideAsTheSecondOneHasThem() {
    assertTrue(FONTS.regular().draws('a') && FONTS.bold().draws(0x0416));
    assertFalse(FONTS.regular().draws('→') || FONTS.bold().draws('→'));
    assertFalse(FONTS.regular().draws(0x4E00));
    assertEquals(754, FONTS.regular().advance('→'), 1);
  }

  /** A line makes room for the first face alone. */
  @Test
  void secondFacesReachNoFurtherThanTheFirst() {
    for (FontFace face : List.of(FONTS.regular(), FONTS.bold())) {
      FontFace second = face.second().orElseThrow();
      assertTrue(second.ascent() <= face.ascent(), second.ascent() + " above");
      assertTrue(second.descent() <= face.descent(), second.descent() + " below");
    }
  }

  /** What is no letter beyond plain ones keeps to a line of nine points on ten, as closely. */
  @Test
  void plainTextKeepsToItsLine() throws IOException {
    for (String resource : List.of(Fonts.REGULAR, Fonts.BOLD)) {
      TrueTypeFont font = FontFile.parse(resource);
      FontFace face = FontFace.read(resource);
      for (int c = '!'; c <= 0xFF; c++) {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        if (glyph != 0 && !FontFace.reachesFar(Character.toString(c))) {
          GlyphData drawn = font.getGlyph().getGlyph(glyph);
          boolean draws = drawn != null;
          String name = Character.getName(c);
          assertTrue(!draws || 1000 * drawn.getYMaximum() <= 2048 * (face.rise(false) + 25), name);
          assertTrue(!draws || 1000 * -drawn.getYMinimum() <= 2048 * (face.fall(false) + 25), name);
        }
      }
      assertTrue(face.rise(true) > face.rise(false) && face.fall(true) > face.fall(false));
    }
    assertTrue(FontFace.reachesFar("Å") && !FontFace.reachesFar("N·m 60° 1×"));
  }

  /**
   * Lines stand one under another without room between. A fortieth of an em, at 9 points less than
   * a tenth of a millimetre, is what the ring of Å and the commas of Latvia and Romania may take.
   */
  @Test
  void lettersOfTheContinentKeepToTheirLine() throws IOException {
    int letters = 0;
    for (String resource : List.of(Fonts.REGULAR, Fonts.BOLD)) {
      TrueTypeFont font = FontFile.parse(resource);
      FontFace face = FontFace.read(resource);
      for (int c = 'A'; c <= 0x045F; c++) {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        if (Character.isLetter(c) && glyph != 0 && (c <= 0x017F || c >= 0x0386)) {
          GlyphData drawn = font.getGlyph().getGlyph(glyph);
          String name = Character.getName(c);
          assertTrue(1000 * drawn.getYMaximum() <= 2048 * (face.ascent() + 25), name);
          assertTrue(1000 * -drawn.getYMinimum() <= 2048 * (face.descent() + 25), name);
          letters++;
        }
      }
    }
    assertTrue(letters > 500, letters + " letters");
  }

  @Test
  void fontThatIsNotThereThrowsWithItsName() {
    Exception e = assertThrows(UncheckedIOException.class, () -> FontFace.read("/no.ttf"));
    assertTrue(e.getMessage().contains("/no.ttf"), e.getMessage());
  }
}
