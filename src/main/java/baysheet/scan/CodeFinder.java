package baysheet.scan;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Looks for the code of a sheet: in the corners first, where other print disturbs least and a try
 * costs little, then on the whole page; enlarged for coarse scans. The reader itself finds a code
 * however it is turned.
 */
final class CodeFinder {
  private static final Map<DecodeHintType, Object> HINTS =
      Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE);

  /** Each succeeds on scans on which the other fails: shades of grey here, few pixels there. */
  private static final List<Function<LuminanceSource, Binarizer>> BINARIZERS =
      List.of(HybridBinarizer::new, GlobalHistogramBinarizer::new);

  /** The code ends 28 mm from the paper's edges; a page that is fed askew moves it by 15. */
  private static final double CORNER_WIDTH = 0.22;

  private static final double CORNER_HEIGHT = 0.16;

  /**
   * In black and white at 150 dpi the edges of a code are ragged. At this many times its size a
   * module has twelve pixels, and an average over half of that leaves them straight.
   */
  private static final int LARGEST = 4;

  /** As it is, twice and four times as large, and smoothed. */
  private static final int ATTEMPTS = 4;

  private static final int ROUGH = 3;

  /** As sheets have it: a format character and fifteen of base 32. */
  private static final Pattern OWN = Pattern.compile("[A-Z][A-Z2-7]{15}");

  private CodeFinder() {}

  /**
   * A code that was read.
   *
   * @param finders the middles of its three large squares on the picture: below, corner, beside
   */
  record Found(String text, List<Point> finders) {}

  /** The code of a sheet, or else any other that is on the page. */
  static Optional<Found> find(Grey page) {
    List<Found> others = new ArrayList<>();
    for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
      for (int corner = 0; corner < 4; corner++) {
        Optional<Found> own = own(inCorner(page, corner, attempt), others);
        if (own.isPresent()) {
          return own;
        }
      }
    }
    return own(read(page, 0, 0, 1), others)
        .or(() -> own(inHalves(page), others))
        .or(() -> others.stream().findFirst());
  }

  /** A label of a part or of a maker may stand in another corner than the sheet's code. */
  private static Optional<Found> own(Optional<Found> found, List<Found> others) {
    found.filter(it -> !OWN.matcher(it.text()).matches()).ifPresent(others::add);
    return found.filter(it -> OWN.matcher(it.text()).matches());
  }

  private static Optional<Found> inCorner(Grey page, int corner, int attempt) {
    boolean upright = page.height() >= page.width();
    int wide = (int) (page.width() * (upright ? CORNER_WIDTH : CORNER_HEIGHT));
    int high = (int) (page.height() * (upright ? CORNER_HEIGHT : CORNER_WIDTH));
    int left = corner % 2 == 0 ? page.width() - wide : 0;
    int top = corner < 2 ? 0 : page.height() - high;
    Grey part = page.crop(left, top, wide, high);
    Grey large = part;
    int scale = 1;
    while (scale < LARGEST && scale < 1 << attempt) {
      large = large.doubled();
      scale *= 2;
    }
    boolean last = attempt == ATTEMPTS - 1;
    return read(last ? large.averaged(ROUGH) : large, left, top, scale);
  }

  /** Where a small page lies somewhere on the glass; halves overlap by more than a code. */
  private static Optional<Found> inHalves(Grey page) {
    int high = page.height() * 6 / 10;
    return read(page.crop(0, 0, page.width(), high).doubled(), 0, 0, 2)
        .or(
            () -> {
              int top = page.height() - high;
              return read(page.crop(0, top, page.width(), high).doubled(), 0, top, 2);
            });
  }

  private static Optional<Found> read(Grey part, int left, int top, int scale) {
    for (Function<LuminanceSource, Binarizer> binarizer : BINARIZERS) {
      try {
        BinaryBitmap bitmap = new BinaryBitmap(binarizer.apply(new Source(part)));
        Result result = new QRCodeReader().decode(bitmap, HINTS);
        return Optional.of(found(result, left, top, scale));
      } catch (ReaderException | IllegalArgumentException | IndexOutOfBoundsException e) {
        // No code here for this binarizer, or one so bent that the library stumbles over it; the
        // caller tries elsewhere.
        continue;
      }
    }
    return Optional.empty();
  }

  private static Found found(Result result, int left, int top, int scale) {
    ResultPoint[] points = Arrays.copyOf(result.getResultPoints(), 3);
    List<Point> finders =
        Arrays.stream(points)
            .map(it -> new Point(left + it.getX() / scale - 0.5, top + it.getY() / scale - 0.5))
            .toList();
    return new Found(result.getText(), finders);
  }

  /** A grey picture as the library wants it. */
  private static final class Source extends LuminanceSource {
    private final Grey grey;

    Source(Grey grey) {
      super(grey.width(), grey.height());
      this.grey = grey;
    }

    @Override
    public byte[] getRow(int y, byte[] row) {
      byte[] to = row == null || row.length < grey.width() ? new byte[grey.width()] : row;
      System.arraycopy(grey.pixels(), y * grey.width(), to, 0, grey.width());
      return to;
    }

    @Override
    public byte[] getMatrix() {
      return grey.pixels();
    }
  }
}
