package baysheet.layout;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Which glyph of a font shows which character, from its {@code cmap} table. */
final class CharacterMap {
  private final int[] starts;
  private final int[] ends;
  private final int[] firstGlyphs;

  private CharacterMap(List<Segment> segments) {
    List<Segment> sorted = new ArrayList<>(segments);
    sorted.sort(Comparator.comparingInt(Segment::start));
    starts = sorted.stream().mapToInt(Segment::start).toArray();
    ends = sorted.stream().mapToInt(Segment::end).toArray();
    firstGlyphs = sorted.stream().mapToInt(Segment::firstGlyph).toArray();
  }

  /** The whole of Unicode (format 12) if the font has it, or else the first plane (format 4). */
  static CharacterMap read(ByteBuffer cmap) {
    int four = -1;
    for (int i = 0; i < cmap.getShort(2); i++) {
      int offset = cmap.getInt(4 + 8 * i + 4);
      int format = cmap.getShort(offset);
      if (format == 12) {
        return new CharacterMap(groups(cmap, offset));
      }
      four = format == 4 ? offset : four;
    }
    if (four < 0) {
      throw new IllegalArgumentException("the font has no character map of format 4 or 12");
    }
    return new CharacterMap(ranges(cmap, four));
  }

  /** The glyph of a character, 0 if the font has none. */
  int glyph(int codePoint) {
    int found = Arrays.binarySearch(starts, codePoint);
    int segment = found >= 0 ? found : -found - 2;
    if (segment < 0 || codePoint > ends[segment]) {
      return 0;
    }
    return firstGlyphs[segment] + codePoint - starts[segment];
  }

  private static List<Segment> groups(ByteBuffer cmap, int offset) {
    List<Segment> segments = new ArrayList<>();
    int count = cmap.getInt(offset + 12);
    for (int i = 0; i < count; i++) {
      int at = offset + 16 + 12 * i;
      segments.add(new Segment(cmap.getInt(at), cmap.getInt(at + 4), cmap.getInt(at + 8)));
    }
    return segments;
  }

  private static List<Segment> ranges(ByteBuffer cmap, int offset) {
    List<Segment> segments = new ArrayList<>();
    int doubled = cmap.getShort(offset + 6) & 0xFFFF;
    for (int i = 0; i < doubled; i += 2) {
      int end = cmap.getShort(offset + 14 + i) & 0xFFFF;
      int start = cmap.getShort(offset + 16 + doubled + i) & 0xFFFF;
      int delta = cmap.getShort(offset + 16 + 2 * doubled + i);
      int rangeAt = offset + 16 + 3 * doubled + i;
      int range = cmap.getShort(rangeAt) & 0xFFFF;
      for (int c = start; c <= end && c != 0xFFFF; c++) {
        int raw = range == 0 ? c : cmap.getShort(rangeAt + range + 2 * (c - start)) & 0xFFFF;
        int glyph = range != 0 && raw == 0 ? 0 : (raw + delta) & 0xFFFF;
        segments.add(new Segment(c, c, glyph));
      }
    }
    return segments;
  }

  /** Neighbouring characters whose glyphs are neighbours too. */
  private record Segment(int start, int end, int firstGlyph) {}
}
