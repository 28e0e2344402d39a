package baysheet.pdf;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * A small ICC profile (ICC.1:2001-04) for grey: it says what the black and white of a page mean to
 * an archive. Built here, so that the bytes do not depend on the Java in use.
 */
final class GrayProfile {
  private static final String DESCRIPTION = "Grey, gamma 2.2";
  private static final String COPYRIGHT = "No copyright, use freely";

  /** Offset of the first tag's data: header, number of tags, four tags of twelve bytes. */
  private static final int DATA = 128 + 4 + 4 * 12;

  private GrayProfile() {}

  static byte[] bytes() {
    byte[] description = description();
    byte[] copyright = copyright();
    byte[] white = white();
    byte[] curve = curve();
    int size = DATA + description.length + copyright.length + white.length + curve.length;
    ByteBuffer out = ByteBuffer.allocate(size);
    header(out, size);
    out.position(128);
    out.putInt(4);
    int at = DATA;
    at = tag(out, "desc", at, description);
    at = tag(out, "cprt", at, copyright);
    at = tag(out, "wtpt", at, white);
    tag(out, "kTRC", at, curve);
    out.put(description).put(copyright).put(white).put(curve);
    return out.array();
  }

  private static void header(ByteBuffer out, int size) {
    out.putInt(size);
    out.position(8);
    out.putInt(0x02400000);
    out.put(ascii("mntrGRAYXYZ "));
    for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
      out.putShort((short) part);
    }
    out.put(ascii("acsp"));
    out.position(68);
    out.put(whitePoint());
  }

  private static int tag(ByteBuffer out, String name, int at, byte[] data) {
    out.put(ascii(name)).putInt(at).putInt(data.length);
    return at + data.length;
  }

  private static byte[] description() {
    int length = DESCRIPTION.length() + 1;
    // After the ASCII name come a Unicode and a script name, both empty here: 4 + 4 + 2 + 1 + 67.
    ByteBuffer out = ByteBuffer.allocate(padded(12 + length + 78));
    out.put(ascii("desc")).putInt(0).putInt(length).put(ascii(DESCRIPTION));
    return out.array();
  }

  private static byte[] copyright() {
    ByteBuffer out = ByteBuffer.allocate(padded(8 + COPYRIGHT.length() + 1));
    out.put(ascii("text")).putInt(0).put(ascii(COPYRIGHT));
    return out.array();
  }

  private static byte[] white() {
    ByteBuffer out = ByteBuffer.allocate(20);
    out.put(ascii("XYZ ")).putInt(0).put(whitePoint());
    return out.array();
  }

  /** One entry is a gamma, in 1/256. */
  private static byte[] curve() {
    ByteBuffer out = ByteBuffer.allocate(16);
    out.put(ascii("curv")).putInt(0).putInt(1).putShort((short) Math.round(2.2 * 256));
    return out.array();
  }

  /** Illuminant D50 as the header must have it, 0.9642 1.0 0.8249, in 1/65536. */
  private static byte[] whitePoint() {
    return ByteBuffer.allocate(12).putInt(0xF6D6).putInt(0x10000).putInt(0xD32D).array();
  }

  /** Tag data starts at multiples of four. */
  private static int padded(int length) {
    return (length + 3) / 4 * 4;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
