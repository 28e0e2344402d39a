package baysheet.layout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/**
 * What the layout needs to know of one font: how wide each character is, and how far it reaches
 * above and below its baseline. Characters that the font lacks are drawn from a second one, at the
 * same size. All figures are whole thousandths of an em. Immutable, so that threads may share it.
 */
public final class FontFace {
  /** Nearly all that is written lies below: Latin with its accents. */
  private static final int NEAR = 0x180;

  private static final int NO_GLYPH = -1;

  /** Nine points on ten: as far as plain letters, figures and signs need, and a little white. */
  private static final int PLAIN_RISE = 870;

  private static final int PLAIN_FALL = 240;

  private final CmapLookup characters;

  /** By the number of the glyph. */
  private final int[] advances;

  /** Draws what this font lacks. */
  private final Optional<FontFace> second;

  /** Which characters below {@link #NEAR} the font draws itself. */
  private final BitSet nearOwn = new BitSet(NEAR);

  /** The advances of the characters below {@link #NEAR}, looked up once. */
  private final int[] near;

  private final int ascent;
  private final int descent;
  private final int xHeight;
  private final int capHeight;

  private FontFace(TrueTypeFont font, Optional<FontFace> second) throws IOException {
    this.second = second;
    int unitsPerEm = font.getUnitsPerEm();
    characters = font.getUnicodeCmapLookup();
    advances = new int[font.getNumberOfGlyphs()];
    for (int glyph = 0; glyph < advances.length; glyph++) {
      advances[glyph] = perMille(font.getAdvanceWidth(glyph), unitsPerEm);
    }
    IntStream.range(0, NEAR).filter(c -> glyph(c) != 0).forEach(nearOwn::set);
    near = IntStream.range(0, NEAR).map(this::look).toArray();
    ascent = perMille(font.getHorizontalHeader().getAscender(), unitsPerEm);
    descent = perMille(-font.getHorizontalHeader().getDescender(), unitsPerEm);
    xHeight = perMille(top('x', font), unitsPerEm);
    capHeight = perMille(top('H', font), unitsPerEm);
  }

  /**
   * Reads a font among the program's resources.
   *
   * @throws UncheckedIOException naming the resource if it cannot be read
   */
  public static FontFace read(String resource) {
    return read(resource, Optional.empty());
  }

  /** Reads a font, and a second one that draws what the first lacks. */
  static FontFace read(String resource, String second) {
    return read(resource, Optional.of(read(second)));
  }

  private static FontFace read(String resource, Optional<FontFace> second) {
    try {
      return new FontFace(FontFile.parse(resource), second);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the font " + resource, e);
    }
  }

  private int top(char letter, TrueTypeFont font) throws IOException {
    return font.getGlyph().getGlyph(characters.getGlyphId(letter)).getYMaximum();
  }

  /** How far the pen moves after a character; 0 for a character that is never drawn. */
  public int advance(int codePoint) {
    int advance = codePoint < NEAR ? near[codePoint] : look(codePoint);
    if (advance == NO_GLYPH) {
      throw new IllegalArgumentException("no glyph for U+%04X".formatted(codePoint));
    }
    return advance;
  }

  private int look(int codePoint) {
    if (BreakCharacters.neverDrawn(codePoint)) {
      return 0;
    }
    int glyph = glyph(codePoint);
    if (glyph != 0) {
      return advances[glyph];
    }
    return second.isPresent() ? second.get().look(codePoint) : NO_GLYPH;
  }

  private int glyph(int codePoint) {
    return characters.getGlyphId(BreakCharacters.drawnAs(codePoint));
  }

  /** Whether the font itself draws a character, not its second one. */
  public boolean draws(int codePoint) {
    return codePoint < NEAR ? nearOwn.get(codePoint) : glyph(codePoint) != 0;
  }

  /** The font that draws what this one lacks. */
  public Optional<FontFace> second() {
    return second;
  }

  /** The sum of the advances of a text. */
  public long advance(String text) {
    // No stream here: this runs for every word of every sheet.
    long sum = 0;
    for (int i = 0; i < text.length(); ) {
      int codePoint = text.codePointAt(i);
      sum += advance(codePoint);
      i += Character.charCount(codePoint);
    }
    return sum;
  }

  /** Whether one of both fonts can show a character, or need not because it is never drawn. */
  public boolean covers(int codePoint) {
    return (codePoint < NEAR ? near[codePoint] : look(codePoint)) != NO_GLYPH;
  }

  /** Whether letters are in a text that may reach above or below plain ones: É, Å, ç. */
  static boolean reachesFar(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > '~' && Character.isLetter(text.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  /** From the baseline up to the top of a line. */
  int rise(boolean reachesFar) {
    return reachesFar ? ascent : PLAIN_RISE;
  }

  /** From the baseline down to the bottom of a line; positive. */
  int fall(boolean reachesFar) {
    return reachesFar ? descent : PLAIN_FALL;
  }

  /** From the baseline up to the top of the tallest letter with its accent. */
  public int ascent() {
    return ascent;
  }

  /** From the baseline down to the bottom of the deepest letter; positive. */
  public int descent() {
    return descent;
  }

  /** From the baseline up to the top of a small x. */
  public int xHeight() {
    return xHeight;
  }

  /** From the baseline up to the top of a capital H. */
  public int capHeight() {
    return capHeight;
  }

  /** Half a thousandth goes up, as the widths in a PDF file are rounded. */
  private static int perMille(int units, int unitsPerEm) {
    return Math.floorDiv(2000 * units + unitsPerEm, 2 * unitsPerEm);
  }
}
