package baysheet.pdf;

import java.util.Arrays;

/**
 * A face cut down to some characters, as it is embedded.
 *
 * @param name with the tag that marks a subset
 * @param program the font file, deflated
 * @param length of the font file before that
 * @param widths of its glyphs by their numbers, in thousandths of an em
 * @param glyphs the number of each character's glyph, by the character; 0 for none
 * @param box the rectangle around all glyphs, in thousandths of an em
 * @param toUnicode the map back from glyphs to characters, deflated
 */
record CutFace(
    String name,
    byte[] program,
    int length,
    int[] widths,
    char[] glyphs,
    int[] box,
    byte[] toUnicode) {
  /** The two-byte codes that show a text. */
  byte[] encode(String text) {
    byte[] codes = new byte[2 * text.length()];
    int end = 0;
    for (int i = 0; i < text.length(); ) {
      int character = text.codePointAt(i);
      int glyph = glyph(character);
      codes[end++] = (byte) (glyph >> 8);
      codes[end++] = (byte) glyph;
      i += Character.charCount(character);
    }
    return end == codes.length ? codes : Arrays.copyOf(codes, end);
  }

  private int glyph(int character) {
    int glyph = character < glyphs.length ? glyphs[character] : 0;
    if (glyph == 0) {
      throw new IllegalArgumentException(
          "no glyph for U+" + Integer.toHexString(character) + " in " + name);
    }
    return glyph;
  }
}
