package baysheet.template;

import baysheet.box.Stamp;
import baysheet.template.LayoutSource.Faults;
import baysheet.template.MarkupNode.Element;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Reads {@code <code>} and {@code <square>}, which a machine looks for. */
final class StampReader {
  /** What a QR Code (ISO/IEC 18004) of version 1 and level Q holds in alphanumeric mode. */
  private static final Pattern TEXT = Pattern.compile("[0-9A-Z $%*+./:-]{16}");

  private static final Map<EncodeHintType, Object> VERSION_1_Q =
      Map.of(EncodeHintType.QR_VERSION, 1, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.Q);

  /** The standard asks for a quiet zone of four modules around a code. */
  private static final int QUIET_MODULES = 4;

  /** 1 mm: a square must not run together with print beside it, even where toner spreads. */
  private static final long SQUARE_QUIET = 2_835;

  private StampReader() {}

  static Stamp read(Element element, Faults faults) {
    return element.name().equals("code") ? code(element, faults) : square(element, faults);
  }

  private static Stamp code(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "text", "size");
    long size = in.requiredPoints("size");
    String text = in.required("text");
    List<String> rows = List.of("#");
    if (TEXT.matcher(text).matches()) {
      rows = rows(text);
    } else {
      faults.badValue(element.at(), "code", "text", text, "16 capital letters and figures");
    }
    return new Stamp(
        Stamp.Kind.CODE, text, size, QUIET_MODULES * size / rows.size(), rows, element.at());
  }

  private static Stamp square(Element element, Faults faults) {
    Attributes in = Attributes.of(element, faults, "size");
    long size = in.requiredPoints("size");
    return new Stamp(Stamp.Kind.SQUARE, "", size, SQUARE_QUIET, List.of("#"), element.at());
  }

  private static List<String> rows(String text) {
    try {
      ByteMatrix modules = Encoder.encode(text, ErrorCorrectionLevel.Q, VERSION_1_Q).getMatrix();
      List<String> rows = new ArrayList<>();
      for (byte[] row : modules.getArray()) {
        StringBuilder letters = new StringBuilder();
        for (byte module : row) {
          letters.append(module == 1 ? '#' : '.');
        }
        rows.add(letters.toString());
      }
      return rows;
    } catch (WriterException e) {
      throw new IllegalStateException("a text of the right form has a code: " + text, e);
    }
  }
}
