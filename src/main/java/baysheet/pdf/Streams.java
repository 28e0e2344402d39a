package baysheet.pdf;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Makes the streams of a document. */
final class Streams {
  private Streams() {}

  static COSStream compressed(PDDocument document, byte[] content) throws IOException {
    COSStream stream = document.getDocument().createCOSStream();
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content);
    }
    return stream;
  }

  /** For what other programs look for without unpacking. */
  static COSStream plain(PDDocument document, byte[] content) throws IOException {
    COSStream stream = document.getDocument().createCOSStream();
    try (OutputStream out = stream.createOutputStream()) {
      out.write(content);
    }
    return stream;
  }
}
