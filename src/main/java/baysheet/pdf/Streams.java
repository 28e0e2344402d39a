package baysheet.pdf;

import java.util.Arrays;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSName;

/** Makes the streams of a file. */
final class Streams {
  // A quarter of the time of the usual level 6, for one kilobyte more in twenty.
  private static final int LEVEL = 1;

  /** Getting one ready takes as long as deflating a small stream; none is ever given back. */
  private static final ThreadLocal<Deflater> QUICK =
      ThreadLocal.withInitial(() -> new Deflater(LEVEL));

  private Streams() {}

  static HeldStream compressed(byte[] content) {
    return compressed(content, content.length);
  }

  /** A stream of the first bytes of an array. */
  static HeldStream compressed(byte[] content, int length) {
    Deflater deflater = QUICK.get();
    deflater.reset();
    return packed(deflated(content, length, deflater));
  }

  /** A stream of what is deflated already, once for many documents. */
  static HeldStream packed(byte[] deflated) {
    HeldStream stream = new HeldStream(deflated);
    stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    return stream;
  }

  /** For what other programs look for without unpacking. */
  static HeldStream plain(byte[] content) {
    return new HeldStream(content);
  }

  /** Deflates bytes as small as can be. */
  static byte[] smallest(byte[] content) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    try {
      return deflated(content, content.length, deflater);
    } finally {
      deflater.end();
    }
  }

  private static byte[] deflated(byte[] content, int size, Deflater deflater) {
    deflater.setInput(content, 0, size);
    deflater.finish();
    // What we write is mostly a third of its size; the rest of a buffer that was too small comes
    // after.
    byte[] out = new byte[size / 2 + 64];
    int length = deflater.deflate(out);
    while (!deflater.finished()) {
      out = Arrays.copyOf(out, 2 * out.length);
      length += deflater.deflate(out, length, out.length - length);
    }
    return Arrays.copyOf(out, length);
  }
}
