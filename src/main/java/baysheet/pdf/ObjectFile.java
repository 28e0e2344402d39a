package baysheet.pdf;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/**
 * Writes objects as a file (ISO 32000-1, 7.5): each stream for itself, all else packed in object
 * streams, for a page has some four hundred structure elements.
 *
 * <p>The library's own writer can also change files, encrypt and sign them, and asks each object
 * about it. For files that are written once it took as long as all the rest of drawing a page.
 */
final class ObjectFile {
  /** About the objects of one page: whoever looks at a page unpacks little beside it. */
  private static final int TOGETHER = 500;

  /** Bytes above 127, by which programs see that the file is not text (7.5.2). */
  private static final String HEADER = "%PDF-1.7\n%\u00e2\u00e3\u00cf\u00d3\n";

  private static final int FREE = 0;
  private static final int ALONE = 1;
  private static final int PACKED = 2;

  private final ObjectText text = new ObjectText();
  private final Bytes out = new Bytes(65_536);

  /** Where each object is, that of number 1 first. */
  private final List<Entry> entries = new ArrayList<>(512);

  private final List<HeldStream> packs = new ArrayList<>();
  private Pack open = new Pack();

  private ObjectFile() {}

  /**
   * The bytes of a file.
   *
   * @param catalog from which every object can be reached
   * @param facts the document information
   * @param id this document's and no other's
   */
  static byte[] write(COSDictionary catalog, COSDictionary facts, byte[] id) {
    ObjectFile file = new ObjectFile();
    file.out.add(HEADER);
    file.objects(catalog, facts);
    file.packs();
    file.table(catalog, facts, id);
    return file.out.toArray();
  }

  /** Writing an object may bring further ones, which come to stand behind it. */
  private void objects(COSDictionary catalog, COSDictionary facts) {
    text.number(catalog);
    text.number(facts);
    for (int i = 0; i < text.numbered().size(); i++) {
      if (text.numbered().get(i) instanceof HeldStream stream) {
        alone(stream);
      } else {
        packed(text.numbered().get(i));
      }
    }
  }

  private void alone(HeldStream stream) {
    entries.add(new Entry(ALONE, out.size(), 0));
    out.number(entries.size()).add(" 0 obj\n");
    text.dictionary(stream, out);
    out.add("\nstream\n").add(stream.bytes()).add("\nendstream\nendobj\n");
  }

  private void packed(COSDictionary object) {
    if (open.count == TOGETHER) {
      packs.add(open.stream());
      open = new Pack();
    }
    entries.add(new Entry(PACKED, packs.size(), open.count));
    open.startNext(entries.size());
    text.dictionary(object, open.objects);
  }

  private void packs() {
    packs.add(open.stream());
    for (HeldStream pack : packs) {
      alone(pack);
    }
  }

  /** The cross-reference stream (7.5.8), which is its own last line. */
  private void table(COSDictionary catalog, COSDictionary facts, byte[] id) {
    int start = out.size();
    int firstPack = entries.size() - packs.size() + 1;
    Bytes lines = new Bytes(8 * (entries.size() + 2));
    line(new Entry(FREE, 0, 0xFFFF), lines);
    for (Entry entry : entries) {
      boolean inPack = entry.type == PACKED;
      line(inPack ? new Entry(PACKED, firstPack + entry.first, entry.second) : entry, lines);
    }
    line(new Entry(ALONE, start, 0), lines);
    HeldStream table = lines.compressed();
    table.setItem(COSName.TYPE, COSName.XREF);
    table.setInt(COSName.SIZE, entries.size() + 2);
    table.setItem(COSName.W, DirectObjects.integers(1, 4, 2));
    table.setItem(COSName.ROOT, catalog);
    table.setItem(COSName.INFO, facts);
    table.setItem(COSName.ID, DirectObjects.array(new COSString(id), new COSString(id)));
    alone(table);
    out.add("startxref\n").number(start).add("\n%%EOF\n");
  }

  private static void line(Entry entry, Bytes lines) {
    lines.binary(entry.type, 1).binary(entry.first, 4).binary(entry.second, 2);
  }

  /** A line of the table: what {@code first} and {@code second} are goes by its type (table 18). */
  private record Entry(int type, long first, int second) {}

  /** An object stream that is being filled (7.5.7). */
  private static final class Pack {
    /** Number and place of each object. */
    private final Bytes head = new Bytes(8192);

    private final Bytes objects = new Bytes(65_536);
    private int count;

    void startNext(int number) {
      count++;
      objects.add('\n');
      head.number(number).add(' ').number(objects.size()).add(' ');
    }

    HeldStream stream() {
      int first = head.size();
      HeldStream stream = head.add(objects).compressed();
      stream.setItem(COSName.TYPE, COSName.OBJ_STM);
      stream.setInt(COSName.N, count);
      stream.setInt(COSName.FIRST, first);
      return stream;
    }
  }
}
