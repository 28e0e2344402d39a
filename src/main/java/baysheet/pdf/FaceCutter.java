package baysheet.pdf;

import baysheet.layout.FontFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.BoundingBox;

/**
 * Cuts one face down to the characters that a document needs. Cutting takes as long as drawing a
 * page, so a basic stock of characters is always kept and the last cuts are remembered: most
 * documents of a run then share one cut, and what a document gets depends on its own text alone.
 */
final class FaceCutter {
  /** What the trade writes beside printable ASCII. */
  private static final String SIGNS = "°±·½×–’→≤≥⌀☐✓⚠";

  /** Cuts of one run differ by a few rare characters; each is some tens of kilobytes. */
  private static final int REMEMBERED = 16;

  private final Face face;
  private final TrueTypeFont font;
  private final CmapLookup characters;
  private final Map<BitSet, CutFace> cuts = new LinkedHashMap<>();
  private final BitSet stock = new BitSet();

  private FaceCutter(Face face, TrueTypeFont font) throws IOException {
    this.face = face;
    this.font = font;
    IntStream.concat(IntStream.rangeClosed(' ', '~'), SIGNS.codePoints())
        .filter(character -> Face.of(character, face.bold()) == face)
        .forEach(stock::set);
    characters = font.getUnicodeCmapLookup();
  }

  static FaceCutter open(Face face) {
    try {
      return new FaceCutter(face, FontFile.parse(face.resource()));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the font " + face.resource(), e);
    }
  }

  /** The face with at least these characters. */
  CutFace cut(BitSet needed) throws IOException {
    BitSet kept = (BitSet) needed.clone();
    kept.or(stock);
    CutFace known = cuts.get(kept);
    if (known != null) {
      return known;
    }
    if (cuts.size() == REMEMBERED) {
      cuts.remove(cuts.keySet().iterator().next());
    }
    CutFace made = make(kept);
    cuts.put(kept, made);
    return made;
  }

  private CutFace make(BitSet characters) throws IOException {
    SortedSet<Integer> kept = new TreeSet<>();
    characters.stream().forEach(kept::add);
    TTFSubsetter subsetter = new TTFSubsetter(font, FontFile.EMBEDDED);
    subsetter.addAll(kept);
    Map<Integer, Integer> oldByNew = subsetter.getGIDMap();
    ByteArrayOutputStream program = new ByteArrayOutputStream(65_536);
    subsetter.writeToStream(program);
    SortedMap<Integer, Integer> glyphs = glyphs(kept, oldByNew);
    return new CutFace(
        SubsetTag.of(kept) + "+" + face.postScriptName(),
        Streams.smallest(program.toByteArray()),
        program.size(),
        widths(oldByNew),
        byCharacter(glyphs),
        box(),
        Streams.smallest(ToUnicode.map(glyphs)));
  }

  private SortedMap<Integer, Integer> glyphs(
      SortedSet<Integer> kept, Map<Integer, Integer> oldByNew) {
    Map<Integer, Integer> newByOld = new TreeMap<>();
    oldByNew.forEach((now, then) -> newByOld.put(then, now));
    SortedMap<Integer, Integer> glyphs = new TreeMap<>();
    for (int character : kept) {
      int then = characters.getGlyphId(character);
      if (then != 0) {
        glyphs.put(character, newByOld.get(then));
      }
    }
    return glyphs;
  }

  private static char[] byCharacter(SortedMap<Integer, Integer> glyphs) {
    char[] byCharacter = new char[glyphs.lastKey() + 1];
    glyphs.forEach((character, glyph) -> byCharacter[character] = (char) (int) glyph);
    return byCharacter;
  }

  private int[] widths(Map<Integer, Integer> oldByNew) throws IOException {
    int[] widths = new int[oldByNew.size()];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = perMille(font.getAdvanceWidth(oldByNew.get(i)));
    }
    return widths;
  }

  private int[] box() throws IOException {
    BoundingBox box = font.getFontBBox();
    return new int[] {
      Math.round(box.getLowerLeftX()),
      Math.round(box.getLowerLeftY()),
      Math.round(box.getUpperRightX()),
      Math.round(box.getUpperRightY())
    };
  }

  private int perMille(int units) throws IOException {
    return Math.round(units * 1000f / font.getUnitsPerEm());
  }

  /** The six letters in front of a cut face's name (ISO 32000-1, 9.6.4). */
  private static final class SubsetTag {
    private SubsetTag() {}

    /** Two cuts with other characters have another tag, the same characters always the same one. */
    static String of(SortedSet<Integer> characters) {
      long hash = 7;
      for (int character : characters) {
        hash = 31 * hash + character;
      }
      StringBuilder tag = new StringBuilder();
      for (int i = 0; i < 6; i++) {
        tag.append((char) ('A' + Math.floorMod(hash, 26)));
        hash = Math.floorDiv(hash, 26);
      }
      return tag.toString();
    }
  }

  /** The map from glyphs back to characters, without which text could not be searched or read. */
  private static final class ToUnicode {
    /** A block may hold no more (ISO 32000-1, 9.10.3, by way of the CMap specification). */
    private static final int BLOCK = 100;

    private static final HexFormat HEX = HexFormat.of().withUpperCase();

    private ToUnicode() {}

    /**
     * @param glyphs the glyph of each character; where two share one, the first is what is read
     *     back
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
}
