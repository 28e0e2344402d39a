package baysheet.pdf;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** A stream whose bytes are at hand as they will stand in the file. */
final class HeldStream extends COSStream {
  private final byte[] bytes;

  HeldStream(byte[] bytes) {
    this.bytes = bytes;
    setInt(COSName.LENGTH, bytes.length);
  }

  byte[] bytes() {
    return bytes;
  }
}
