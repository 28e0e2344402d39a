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
 * @param toUnicode the map back from glyphs to characters, deflated
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
    byte[] codes = new byte[2 * text.codePointCount(0, text.length())];
    int end = 0;
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      Integer glyph = glyphs.get(character);
      if (glyph == null) {
        throw new IllegalArgumentException(
            "no glyph for U+" + Integer.toHexString(character) + " in " + name);
      }
      codes[end++] = (byte) (glyph >> 8);
      codes[end++] = glyph.byteValue();
      i += Character.charCount(character);
    }
    return codes;
  }
}
