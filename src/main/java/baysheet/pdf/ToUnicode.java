package baysheet.pdf;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.Map;
import java.util.TreeMap;

/** The map from glyphs back to characters, without which text could not be searched or read. */
final class ToUnicode {
  /** A block may hold no more (ISO 32000-1, 9.10.3, by way of the CMap specification). */
  private static final int BLOCK = 100;

  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  private ToUnicode() {}

  /**
   * @param glyphs the glyph of each character; where two share one, the first is what is read back
   */
  static byte[] map(Map<Integer, Integer> glyphs) {
    Map<Integer, Integer> characters = new TreeMap<>();
    new TreeMap<>(glyphs).forEach((character, glyph) -> characters.putIfAbsent(glyph, character));
    StringBuilder out = new StringBuilder(4096);
    out.append("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n");
    out.append("/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n");
    out.append("/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n");
    out.append("1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n");
    Iterator<Map.Entry<Integer, Integer>> entries = characters.entrySet().iterator();
    for (int left = characters.size(); left > 0; left -= BLOCK) {
      int count = Math.min(left, BLOCK);
      out.append(count).append(" beginbfchar\n");
      for (int i = 0; i < count; i++) {
        Map.Entry<Integer, Integer> entry = entries.next();
        out.append('<').append(hex(entry.getKey())).append("> <");
        for (char unit : Character.toChars(entry.getValue())) {
          out.append(hex(unit));
        }
        out.append(">\n");
      }
      out.append("endbfchar\n");
    }
    out.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n");
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  private static String hex(int number) {
    return HEX.toHexDigits((char) number);
  }
}
