package baysheet.pdf;

import java.util.Map;

/**
 * A face cut down to some characters, as it is embedded.
 *
 * @param name with the tag that marks a subset
 * @param program the font file, deflated
 * @param length of the font file before that
 * @param widths of its glyphs by their numbers, in thousandths of an em
 * @param glyphs the number of each character's glyph
 * @param box the rectangle around all glyphs, in thousandths of an em
 */
record CutFace(
    String name,
    byte[] program,
    int length,
    int[] widths,
    Map<Integer, Integer> glyphs,
    int[] box,
    byte[] toUnicode) {
  CutFace {
    glyphs = Map.copyOf(glyphs);
  }

  /** The two-byte codes that show a text. */
  byte[] encode(String text) {
    int[] characters = text.codePoints().toArray();
    byte[] codes = new byte[2 * characters.length];
    for (int i = 0; i < characters.length; i++) {
      Integer glyph = glyphs.get(characters[i]);
      if (glyph == null) {
        throw new IllegalArgumentException(
            "no glyph for U+" + Integer.toHexString(characters[i]) + " in " + name);
      }
      codes[2 * i] = (byte) (glyph >> 8);
      codes[2 * i + 1] = glyph.byteValue();
    }
    return codes;
  }
}
