package baysheet.pdf;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;

/**
 * Writes objects as text (ISO 32000-1, 7.3), and numbers those that others refer to in the order in
 * which they are met: streams, and dictionaries that are not {@link DirectObjects}.
 */
final class ObjectText {
  private final Map<COSBase, Integer> numbers = new IdentityHashMap<>(1024);
  private final List<COSDictionary> numbered = new ArrayList<>(512);

  /** The objects met so far, the one of number 1 first. */
  List<COSDictionary> numbered() {
    return numbered;
  }

  /** The number of an object. */
  int number(COSDictionary object) {
    Integer known = numbers.get(object);
    if (known != null) {
      return known;
    }
    numbered.add(object);
    numbers.put(object, numbered.size());
    return numbered.size();
  }

  /** A dictionary where it stands, or that of a stream. */
  void dictionary(COSDictionary dictionary, Bytes out) {
    out.add("<<");
    for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
      name(entry.getKey(), out);
      out.add(' ');
      value(entry.getValue(), out);
    }
    out.add(">>");
  }

  private void value(COSBase value, Bytes out) {
    if (value instanceof COSName name) {
      name(name, out);
    } else if (value instanceof COSInteger number) {
      out.number(number.longValue());
    } else if (value instanceof COSDictionary dictionary) {
      referred(dictionary, out);
    } else if (value instanceof COSArray array) {
      array(array, out);
    } else if (value instanceof COSString text) {
      string(text.getBytes(), out);
    } else if (value instanceof COSFloat number) {
      // All lengths of a page are whole thousandths.
      out.thousandths(Math.round(number.floatValue() * 1000.0));
    } else if (value instanceof COSBoolean flag) {
      out.add(flag.getValue() ? "true" : "false");
    } else {
      throw new IllegalArgumentException("no way to write " + value);
    }
  }

  private void referred(COSDictionary dictionary, Bytes out) {
    if (dictionary.isDirect() && !(dictionary instanceof COSStream)) {
      dictionary(dictionary, out);
    } else {
      out.number(number(dictionary)).add(" 0 R");
    }
  }

  private void array(COSArray array, Bytes out) {
    out.add('[');
    for (int i = 0; i < array.size(); i++) {
      if (i > 0) {
        out.add(' ');
      }
      value(array.get(i), out);
    }
    out.add(']');
  }

  private static void name(COSName name, Bytes out) {
    String text = name.getName();
    out.add('/');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (isRegular(c)) {
        out.add(c);
      } else {
        out.add('#').add(Character.forDigit(c >> 4, 16)).add(Character.forDigit(c & 0xF, 16));
      }
    }
  }

  /** Our names are ASCII (ISO 32000-1, 7.2.2 and 7.3.5). */
  private static boolean isRegular(char c) {
    return c >= 'A' && c <= 'Z'
        || c >= 'a' && c <= 'z'
        || c > ' ' && c < 0x7F && "#%()/<>[]{}".indexOf(c) < 0;
  }

  /** A literal string: half as long as one in hexadecimal digits. */
  static void string(byte[] bytes, Bytes out) {
    out.add('(');
    for (byte b : bytes) {
      char c = (char) (b & 0xFF);
      switch (c) {
        case '(', ')', '\\' -> out.add('\\').add(c);
        // An end of line would be read as a line feed, whatever it was (ISO 32000-1, 7.3.4.2).
        case '\r' -> out.add("\\r");
        default -> out.add(c);
      }
    }
    out.add(')');
  }
}
