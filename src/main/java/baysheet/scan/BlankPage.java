package baysheet.scan;

import baysheet.record.PlacedBoxes;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A sheet as it was printed, in pixels of the page set straight.
 *
 * @param ink where print is; not copied
 * @param near the same, as much wider as print may be off its place; not copied
 * @param height of the page, in points
 */
record BlankPage(int width, int rows, boolean[] ink, boolean[] near, double height) {
  /** Pixels a millimetre, 203 an inch: a ballpoint's stroke of 0.3 mm is more than two wide. */
  static final int PIXELS = 8;

  /** Points a millimetre. */
  static final double POINTS = 72 / 25.4;

  /** 0.25 mm: what toner spreads and what is left once each box has been laid on its own print. */
  private static final int SPREAD = 2;

  private static final int BLACK = 160;

  /** Draws the first page of an issued sheet. */
  static BlankPage of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      float scale = (float) (PIXELS / POINTS);
      BufferedImage image = new PDFRenderer(document).renderImage(0, scale, ImageType.GRAY);
      return of(Grey.of(image), document.getPage(0).getMediaBox().getHeight());
    }
  }

  /** A sheet as it was drawn, of a height in points. */
  static BlankPage of(Grey grey, double height) {
    boolean[] ink = new boolean[grey.width() * grey.height()];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = (grey.pixels()[i] & 0xff) < BLACK;
    }
    return new BlankPage(
        grey.width(), grey.height(), ink, wider(ink, grey.width(), grey.height()), height);
  }

  private static boolean[] wider(boolean[] ink, int width, int height) {
    boolean[] across = new boolean[ink.length];
    for (int at = 0; at < ink.length; at++) {
      if (ink[at]) {
        int from = Math.max(at - at % width, at - SPREAD);
        int to = Math.min(at - at % width + width - 1, at + SPREAD);
        Arrays.fill(across, from, to + 1, true);
      }
    }
    boolean[] wider = new boolean[ink.length];
    for (int y = 0; y < height; y++) {
      for (int off = -SPREAD; off <= SPREAD; off++) {
        int from = y + off;
        for (int x = 0; from >= 0 && from < height && x < width; x++) {
          wider[y * width + x] |= across[from * width + x];
        }
      }
    }
    return wider;
  }

  /** A box in pixels, from the top left corner. */
  Area area(PlacedBoxes.Place place) {
    double scale = PIXELS / POINTS;
    int left = (int) Math.round(place.x() * scale);
    int top = (int) Math.round((height - place.y() - place.h()) * scale);
    int right = (int) Math.round((place.x() + place.w()) * scale);
    int bottom = (int) Math.round((height - place.y()) * scale);
    return new Area(left, top, right, bottom);
  }

  /** A rectangle in pixels; right and bottom are outside. */
  record Area(int left, int top, int right, int bottom) {
    Area grown(int by) {
      return new Area(left - by, top - by, right + by, bottom + by);
    }

    Area within(int width, int height) {
      return new Area(
          Math.max(0, left), Math.max(0, top), Math.min(width, right), Math.min(height, bottom));
    }

    /** The same, from the corner of another one. */
    Area from(Area other) {
      return new Area(left - other.left, top - other.top, right - other.left, bottom - other.top);
    }

    boolean meets(Area other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean holds(int x, int y) {
      return x >= left && x < right && y >= top && y < bottom;
    }

    static boolean anyHolds(List<Area> areas, int x, int y) {
      for (Area area : areas) {
        if (area.holds(x, y)) {
          return true;
        }
      }
      return false;
    }

    int width() {
      return right - left;
    }

    int height() {
      return bottom - top;
    }
  }
}
