package baysheet.layout;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** The tables of a TrueType file by their four-letter tags. */
record SfntTables(Map<String, ByteBuffer> tables) {
  SfntTables {
    tables = Map.copyOf(tables);
  }

  static SfntTables of(byte[] font) {
    ByteBuffer file = ByteBuffer.wrap(font);
    Map<String, ByteBuffer> tables = new TreeMap<>();
    for (int i = 0; i < file.getShort(4); i++) {
      int at = 12 + 16 * i;
      String tag = new String(font, at, 4, StandardCharsets.US_ASCII);
      tables.put(tag, file.slice(file.getInt(at + 8), file.getInt(at + 12)));
    }
    return new SfntTables(tables);
  }

  ByteBuffer get(String tag) {
    ByteBuffer table = tables.get(tag);
    if (table == null) {
      throw new IllegalArgumentException("the font has no table '" + tag + "': " + tables.keySet());
    }
    return table;
  }

  /** How far a glyph reaches above the baseline, in font units. */
  int glyphTop(int glyph) {
    boolean wide = get("head").getShort(50) == 1;
    ByteBuffer loca = get("loca");
    int offset = wide ? loca.getInt(4 * glyph) : 2 * (loca.getShort(2 * glyph) & 0xFFFF);
    return get("glyf").getShort(offset + 8);
  }
}
