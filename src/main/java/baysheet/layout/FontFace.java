package baysheet.layout;

import java.nio.ByteBuffer;
import java.util.stream.IntStream;

/**
 * What the layout needs to know of one TrueType font: how wide each character is, and how far it
 * reaches above and below its baseline. All figures are whole thousandths of an em.
 *
 * <p>Read from the tables {@code head}, {@code hhea}, {@code hmtx}, {@code cmap} (formats 4 and 12)
 * {@code loca} and {@code glyf} as the OpenType specification (ISO/IEC 14496-22) describes them.
 * Immutable, so that threads may share it.
 */
public final class FontFace {
  /** Nearly all that is written lies below: Latin with its accents. */
  private static final int NEAR = 0x180;

  private static final int NO_GLYPH = -1;

  private final CharacterMap characters;
  private final int[] advances;

  /** The advances of the characters below {@link #NEAR}, looked up once. */
  private final int[] near;

  private final int ascent;
  private final int descent;
  private final int xHeight;
  private final int capHeight;

  private FontFace(CharacterMap characters, int[] advances, int[] heights) {
    this.characters = characters;
    this.advances = advances;
    near = IntStream.range(0, NEAR).map(this::look).toArray();
    ascent = heights[0];
    descent = heights[1];
    xHeight = heights[2];
    capHeight = heights[3];
  }

  /**
   * Reads a font.
   *
   * @param font a whole TrueType file
   * @throws IllegalArgumentException if a table is missing or has no readable character map
   */
  public static FontFace read(byte[] font) {
    SfntTables tables = SfntTables.of(font);
    ByteBuffer hhea = tables.get("hhea");
    int unitsPerEm = tables.get("head").getShort(18) & 0xFFFF;
    CharacterMap characters = CharacterMap.read(tables.get("cmap"));
    int[] heights = {
      perMille(hhea.getShort(4), unitsPerEm),
      perMille(-hhea.getShort(6), unitsPerEm),
      perMille(tables.glyphTop(characters.glyph('x')), unitsPerEm),
      perMille(tables.glyphTop(characters.glyph('H')), unitsPerEm)
    };
    int metrics = hhea.getShort(34) & 0xFFFF;
    return new FontFace(characters, advances(tables.get("hmtx"), metrics, unitsPerEm), heights);
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
    if (Characters.neverDrawn(codePoint)) {
      return 0;
    }
    int glyph = characters.glyph(Characters.drawnAs(codePoint));
    return glyph == 0 ? NO_GLYPH : advances[Math.min(glyph, advances.length - 1)];
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

  /** Whether the font can show a character, or need not because it is never drawn. */
  public boolean covers(int codePoint) {
    return (codePoint < NEAR ? near[codePoint] : look(codePoint)) != NO_GLYPH;
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

  private static int[] advances(ByteBuffer hmtx, int metrics, int unitsPerEm) {
    int[] advances = new int[metrics];
    for (int i = 0; i < metrics; i++) {
      advances[i] = perMille(hmtx.getShort(4 * i) & 0xFFFF, unitsPerEm);
    }
    return advances;
  }

  /** Half a thousandth goes up, as the widths in a PDF file are rounded. */
  private static int perMille(int units, int unitsPerEm) {
    return Math.floorDiv(2000 * units + unitsPerEm, 2 * unitsPerEm);
  }
}
