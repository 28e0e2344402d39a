package baysheet.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Arrays;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** Makes the streams of a file. */
final class Streams {
  // A quarter of the time of the usual level 6, for one kilobyte more in twenty.
  private static final int LEVEL = 1;

  private Streams() {}

  static COSStream compressed(byte[] content) throws IOException {
    return compressed(content, content.length);
  }

  /** A stream of the first bytes of an array. */
  static COSStream compressed(byte[] content, int length) throws IOException {
    return packed(packed(content, length, LEVEL));
  }

  /** A stream of what is deflated already, once for many documents. */
  static COSStream packed(byte[] deflated) throws IOException {
    COSStream stream = new COSStream();
    stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    try (OutputStream raw = stream.createRawOutputStream()) {
      raw.write(deflated);
    }
    return stream;
  }

  /** What a stream holds, as it stands in a file. */
  static byte[] content(COSStream stream) throws IOException {
    try (InputStream raw = stream.createRawInputStream()) {
      return raw.readAllBytes();
    }
  }

  /** Deflates bytes. */
  static byte[] packed(byte[] content, int level) {
    return packed(content, content.length, level);
  }

  private static byte[] packed(byte[] content, int size, int level) {
    Deflater deflater = new Deflater(level);
    try {
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
    } finally {
      deflater.end();
    }
  }

  /** For what other programs look for without unpacking. */
  static COSStream plain(byte[] content) throws IOException {
    COSStream stream = new COSStream();
    try (OutputStream out = stream.createOutputStream()) {
      out.write(content);
    }
    return stream;
  }
}
