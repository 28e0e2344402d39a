package baysheet.pdf;

import baysheet.layout.FontFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.BitSet;
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
}
