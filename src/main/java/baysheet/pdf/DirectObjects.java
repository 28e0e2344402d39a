package baysheet.pdf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSString;

/**
 * Makes arrays, texts and dictionaries that are written where they stand. The library would number
 * each of them as an object of its own, which doubles the objects of a file and the time to write
 * it.
 */
final class DirectObjects {
  private DirectObjects() {}

  static COSArray array() {
    COSArray array = new COSArray();
    array.setDirect(true);
    return array;
  }

  static COSArray array(COSBase... members) {
    COSArray array = array();
    for (COSBase member : members) {
      array.add(member);
    }
    return array;
  }

  static COSArray array(List<? extends COSBase> members) {
    COSArray array = array();
    for (COSBase member : members) {
      array.add(member);
    }
    return array;
  }

  static COSArray integers(int... numbers) {
    COSArray array = array();
    for (int number : numbers) {
      array.add(COSInteger.get(number));
    }
    return array;
  }

  /** Words: ASCII stands for itself in each of a file's encodings (ISO 32000-1, 7.9.2.2). */
  static COSString text(String words) {
    byte[] bytes = words.getBytes(StandardCharsets.UTF_8);
    for (byte b : bytes) {
      if (b < ' ' || b == 0x7F) {
        return new COSString(words);
      }
    }
    return new COSString(bytes);
  }

  static COSDictionary dictionary() {
    COSDictionary dictionary = new COSDictionary();
    dictionary.setDirect(true);
    return dictionary;
  }
}
