package baysheet.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** What is written comes back as it was, read by the library. */
class ObjectFileTest {
  private static final COSName KEY = COSName.getPDFName("Key");
  private static final byte[] ID = "12345678".getBytes(StandardCharsets.US_ASCII);

  @Property(tries = 300)
  void textsComeBack(@ForAll String text) throws IOException {
    COSDictionary catalog = catalog();
    catalog.setString(KEY, text);
    try (PDDocument read = read(catalog)) {
      assertEquals(new COSString(text), read.getDocumentCatalog().getCOSObject().getItem(KEY));
    }
  }

  @Property(tries = 200)
  void namesComeBack(@ForAll @IntRange(min = 1, max = 126) int character) throws IOException {
    COSName odd = COSName.getPDFName("a" + (char) character + "b");
    COSDictionary catalog = catalog();
    catalog.setItem(odd, odd);
    try (PDDocument read = read(catalog)) {
      assertEquals(odd, read.getDocumentCatalog().getCOSObject().getItem(odd));
    }
  }

  @Property
  void wholeNumbersAreWrittenAsTheyAre(@ForAll long number) {
    if (number != Long.MIN_VALUE) {
      assertEquals(Long.toString(number), text(new Bytes(1).number(number)));
    }
  }

  @Property
  void thousandthsAreWrittenAsTheShortestDecimal(
      @ForAll @LongRange(min = -9_999_999, max = 9_999_999) long number) {
    String decimal = BigDecimal.valueOf(number, 3).stripTrailingZeros().toPlainString();
    assertEquals(number == 0 ? "0" : decimal, text(new Bytes(1).thousandths(number)));
  }

  @Test
  void lengthsKeepTheirThousandths() throws IOException {
    COSDictionary catalog = catalog();
    catalog.setItem(KEY, DirectObjects.array(new COSFloat(841.89f), new COSFloat(-0.125f)));
    try (PDDocument read = read(catalog)) {
      COSArray array = read.getDocumentCatalog().getCOSObject().getCOSArray(KEY);
      assertEquals(841.89f, ((COSFloat) array.get(0)).floatValue());
      assertEquals(-0.125f, ((COSFloat) array.get(1)).floatValue());
    }
  }

  @Test
  void manyMoreObjectsThanArePackedTogetherAreFound() throws IOException {
    COSDictionary catalog = catalog();
    COSArray all = DirectObjects.array();
    for (int i = 0; i < 1234; i++) {
      COSDictionary object = new COSDictionary();
      object.setInt(KEY, i);
      all.add(object);
    }
    catalog.setItem(KEY, all);
    try (PDDocument read = read(catalog)) {
      COSArray found = read.getDocumentCatalog().getCOSObject().getCOSArray(KEY);
      for (int i = 0; i < 1234; i++) {
        assertEquals(i, ((COSDictionary) found.getObject(i)).getInt(KEY));
      }
    }
  }

  @Test
  void anObjectThatManyNameIsWrittenOnce() throws IOException {
    COSDictionary shared = new COSDictionary();
    COSDictionary catalog = catalog();
    catalog.setItem(KEY, DirectObjects.array(shared, shared));
    try (PDDocument read = read(catalog)) {
      COSArray found = read.getDocumentCatalog().getCOSObject().getCOSArray(KEY);
      assertEquals(found.get(0), found.get(1));
    }
  }

  @Test
  void whatThereIsNoWayToWriteIsRefused() {
    COSDictionary catalog = catalog();
    catalog.setItem(KEY, DirectObjects.array(COSInteger.ONE, COSNull.NULL));
    assertThrows(
        IllegalArgumentException.class, () -> ObjectFile.write(catalog, new COSDictionary(), ID));
  }

  private static COSDictionary catalog() {
    COSDictionary catalog = new COSDictionary();
    catalog.setItem(COSName.TYPE, COSName.CATALOG);
    COSDictionary pages = new COSDictionary();
    pages.setItem(COSName.TYPE, COSName.PAGES);
    pages.setItem(COSName.KIDS, DirectObjects.array());
    pages.setInt(COSName.COUNT, 0);
    catalog.setItem(COSName.PAGES, pages);
    return catalog;
  }

  private static PDDocument read(COSDictionary catalog) throws IOException {
    return Loader.loadPDF(ObjectFile.write(catalog, new COSDictionary(), ID));
  }

  private static String text(Bytes bytes) {
    return new String(bytes.toArray(), StandardCharsets.US_ASCII);
  }
}
