package baysheet.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Makes the streams of a document. */
final class Streams {
  // A third of the time of the usual level 6, for one kilobyte more in thirty.
  private static final int LEVEL = 3;

  private Streams() {}

  static COSStream compressed(PDDocument document, byte[] content) throws IOException {
    COSStream stream = document.getDocument().createCOSStream();
    stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
    Deflater deflater = new Deflater(LEVEL);
    try (OutputStream raw = stream.createRawOutputStream();
        OutputStream out = new DeflaterOutputStream(raw, deflater)) {
      out.write(content);
    } finally {
      deflater.end();
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
