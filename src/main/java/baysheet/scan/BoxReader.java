package baysheet.scan;

import baysheet.record.PlacedBoxes;
import baysheet.scan.BlankPage.Area;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Decides whether the boxes of a page hold ink. An empty box must never be called marked, so that
 * takes a pen's stroke: long enough, thin enough, dark enough and at home in the box. Any less is
 * doubtful, and a person looks at it.
 */
final class BoxReader {
  /** Around a box, in pixels: 3 mm, enough to see whether a stroke belongs to a neighbour. */
  private static final int AROUND = 3 * BlankPage.PIXELS;

  /** Around a box its print is laid on: 2 mm of borders and words. */
  private static final int PRINT_AROUND = 2 * BlankPage.PIXELS;

  /** 0.6 mm: paper stretches unevenly, and squares are found to a tenth. */
  private static final int SHIFT = 5;

  /** A dot of dust or noise is smaller, the shortest tick is four times as long. In mm. */
  private static final double SPECK = 0.6;

  /** A pen's stroke is at most 1 mm wide; a blot or a punched hole is wider. In mm. */
  private static final double WIDEST_STROKE = 1.5;

  /** How much darker than the paper: pencil 0.4 and more, coffee and folds up to 0.35. */
  private static final double LEAST_CONTRAST = 0.4;

  /** How far outside its box the middle of a stroke may be, in pixels: a tick may well overrun. */
  private static final int ASTRAY = BlankPage.PIXELS / 4;

  /** What must be inside of a stroke that is much longer than it must be, as a part of that. */
  private static final double OVERRUN = 0.6;

  /** A thin stroke breaks where it is pale: of its length, the longest piece is this at least. */
  private static final double BROKEN = 0.6;

  /** Of the shorter edge of a box, what a neighbour's overrun never reaches. */
  private static final double THROUGH = 0.75;

  /** How far beyond a box a line must go on to be no stroke of a pen, in pixels: 5 mm. */
  private static final int FAR = 5 * BlankPage.PIXELS;

  /** A box that is nearly solid was blotted out, or lies under a stain. */
  private static final double SOLID = 0.85;

  private final Grey page;
  private final Ink ink;
  private final BlankPage blank;
  private final boolean twoTone;

  /**
   * @param twoTone whether the scan was black and white, so that stains are as dark as ink
   */
  BoxReader(Grey page, Ink ink, BlankPage blank, boolean twoTone) {
    this.page = page;
    this.ink = ink;
    this.blank = blank;
    this.twoTone = twoTone;
  }

  /** The shortest stroke that is meant, in mm: of a tick, a figure, a letter, a name. */
  private static double leastStroke(String kind) {
    return switch (kind) {
      case "signature" -> 5;
      case "initials" -> 2.2;
      case "tick" -> 1.6;
      default -> 1.8;
    };
  }

  BoxReading read(PlacedBoxes.Box box) {
    Area edge = blank.area(box.place());
    Area region = edge.grown(AROUND).within(blank.width(), blank.rows());
    int[] shift = shift(edge.grown(PRINT_AROUND).within(blank.width(), blank.rows()));
    boolean[] hidden = hidden(region);
    boolean[] written = written(region, shift, hidden);
    Area inside =
        new Area(
            edge.left() - region.left(),
            edge.top() - region.top(),
            edge.right() - region.left(),
            edge.bottom() - region.top());
    int[] labels = Strokes.labels(region.width(), region.height(), written, hidden, inside);
    return decide(box, new Pieces(region, inside, labels, shift));
  }

  /** How far print lies off its place here: where most of it meets ink. */
  private int[] shift(Area area) {
    int[] print = new int[area.width() * area.height()];
    int count = 0;
    for (int y = area.top(); y < area.bottom(); y++) {
      for (int x = area.left(); x < area.right(); x++) {
        if (blank.ink()[y * blank.width() + x]) {
          print[count++] = y * blank.width() + x;
        }
      }
    }
    int[] best = {0, 0};
    int most = met(print, count, 0, 0);
    for (int dy = -SHIFT; dy <= SHIFT; dy++) {
      for (int dx = -SHIFT; dx <= SHIFT; dx++) {
        int met = met(print, count, dx, dy);
        if (met > most || met == most && nearer(dx, dy, best)) {
          most = met;
          best = new int[] {dx, dy};
        }
      }
    }
    return best;
  }

  private static boolean nearer(int dx, int dy, int[] than) {
    return dx * dx + dy * dy < than[0] * than[0] + than[1] * than[1];
  }

  private int met(int[] print, int count, int dx, int dy) {
    boolean[] dark = ink.dark();
    int off = dy * blank.width() + dx;
    int met = 0;
    for (int i = 0; i < count; i++) {
      int at = print[i] + off;
      met += at >= 0 && at < dark.length && dark[at] ? 1 : 0;
    }
    return met;
  }

  /** Where print would hide ink. */
  private boolean[] hidden(Area region) {
    boolean[] hidden = new boolean[region.width() * region.height()];
    for (int y = 0; y < region.height(); y++) {
      int from = (region.top() + y) * blank.width() + region.left();
      System.arraycopy(blank.near(), from, hidden, y * region.width(), region.width());
    }
    return hidden;
  }

  /** Ink that no print explains. */
  private boolean[] written(Area region, int[] shift, boolean[] hidden) {
    boolean[] written = new boolean[region.width() * region.height()];
    int off = shift[1] * blank.width() + shift[0];
    for (int y = region.top(); y < region.bottom(); y++) {
      for (int x = region.left(); x < region.right(); x++) {
        int there = y * blank.width() + x + off;
        int at = (y - region.top()) * region.width() + x - region.left();
        boolean dark = there >= 0 && there < ink.dark().length && ink.dark()[there];
        written[at] = dark && !hidden[at];
      }
    }
    return written;
  }

  private BoxReading decide(PlacedBoxes.Box box, Pieces pieces) {
    double least = leastStroke(box.kind());
    int white = pieces.white();
    double longest = 0;
    double all = 0;
    boolean any = false;
    long inside = 0;
    for (Piece piece : pieces.measure()) {
      inside += piece.inside();
      boolean home = pieces.isAtHome(piece);
      double extent = piece.extent();
      if (home && piece.wholeExtent() >= 2 * least && extent >= OVERRUN * least) {
        extent = Math.max(extent, least);
      }
      any |= extent >= (home ? SPECK : 2 * SPECK);
      if (home
          && extent >= SPECK
          && piece.thickness() <= WIDEST_STROKE
          && piece.contrast(white) >= LEAST_CONTRAST) {
        longest = Math.max(longest, extent);
        all += extent;
      }
    }
    boolean strong = longest >= least || longest >= least * BROKEN && all >= least / BROKEN;
    double share = (double) inside / Math.max(1, pieces.free());
    State state = strong && share < SOLID ? State.MARKED : any ? State.DOUBTFUL : State.EMPTY;
    return new BoxReading(
        box.name(), box.kind(), box.required(), state, Math.round(share * 1000) / 1000.0);
  }

  /** The pieces of ink in a region. */
  private final class Pieces {
    private final Area region;
    private final Area inside;
    private final int[] labels;
    private final int[] shift;

    Pieces(Area region, Area inside, int[] labels, int[] shift) {
      this.region = region;
      this.inside = inside;
      this.labels = labels;
      this.shift = shift;
    }

    /** Pixels inside the box that no print covers. */
    int free() {
      int free = 0;
      for (int y = inside.top(); y < inside.bottom(); y++) {
        for (int x = inside.left(); x < inside.right(); x++) {
          int at = (y + region.top()) * blank.width() + x + region.left();
          free += blank.near()[at] ? 0 : 1;
        }
      }
      return free;
    }

    /** The paper's brightness: four fifths of what is around a box is darker or as dark. */
    int white() {
      int[] shades = new int[256];
      int count = 0;
      for (int y = region.top(); y < region.bottom(); y += 2) {
        for (int x = region.left(); x < region.right(); x += 2) {
          shades[page.at(x, y)]++;
          count++;
        }
      }
      int shade = 0;
      for (int seen = shades[0]; seen < count * 4 / 5; seen += shades[shade]) {
        shade++;
      }
      return shade;
    }

    /** Those with ink inside the box. */
    List<Piece> measure() {
      Map<Integer, Piece> all = new TreeMap<>();
      for (int y = 0; y < region.height(); y++) {
        for (int x = 0; x < region.width(); x++) {
          int label = labels[y * region.width() + x];
          if (label != 0) {
            Piece piece = all.computeIfAbsent(label, number -> new Piece());
            piece.met(x, y, side(x, y));
            if (inside.holds(x, y)) {
              piece.add(x, y, isEdge(x, y, label), shade(x, y));
            }
          }
        }
      }
      return all.values().stream().filter(piece -> piece.inside() > 0).toList();
    }

    private int shade(int x, int y) {
      int there = (y + region.top() + shift[1]) * blank.width() + x + region.left() + shift[0];
      return page.pixels()[Math.max(0, Math.min(there, page.pixels().length - 1))] & 0xff;
    }

    /**
     * Whether a stroke was meant for this box: its middle is there, not in a neighbour's; or, where
     * ticks of neighbours run into one another, it goes through the box from end to end. What comes
     * from afar on one side and goes far on the other is a fold, a streak or the ring of a cup.
     */
    boolean isAtHome(Piece piece) {
      if (piece.isStraight() && goesOn(piece, 1) && goesOn(piece, -1)) {
        return false;
      }
      Point middle = piece.middle();
      boolean near = inside.grown(ASTRAY).holds((int) middle.x(), (int) middle.y());
      int least = Math.min(inside.width(), inside.height());
      boolean through = piece.extent() * BlankPage.PIXELS >= THROUGH * least;
      return near && !piece.crosses() || through && !twoTone;
    }

    /** Whether ink goes on beyond an end; print may hide some of it. */
    private boolean goesOn(Piece piece, int way) {
      int hidden = 0;
      int seen = 0;
      for (int step = 1; step <= FAR; step++) {
        Point at = piece.beyond(way, step);
        int x = (int) Math.round(at.x()) + region.left();
        int y = (int) Math.round(at.y()) + region.top();
        int found = at(x, y, 2 + step / 10);
        hidden += found == 1 ? 1 : 0;
        seen += found == 2 ? 1 : 0;
      }
      return seen + hidden >= FAR * 4 / 5 && seen >= FAR / 4;
    }

    /** 2 where ink is near a point, 1 where print could hide some, 0 where paper is white. */
    private int at(int x, int y, int around) {
      int found = 0;
      for (int dy = -around; dy <= around; dy++) {
        for (int dx = -around; dx <= around; dx++) {
          boolean on = x + dx >= 0 && x + dx < blank.width() && y + dy >= 0 && y + dy < blank.rows();
          int there = (y + dy) * blank.width() + x + dx;
          int dark = there + shift[1] * blank.width() + shift[0];
          if (on && blank.near()[there]) {
            found = Math.max(found, 1);
          } else if (on && dark >= 0 && dark < ink.dark().length && ink.dark()[dark]) {
            found = 2;
          }
        }
      }
      return found;
    }

    /** The sides of the region that ink at a point leaves by. */
    private int side(int x, int y) {
      int side = x == 0 ? Piece.LEFT : x == region.width() - 1 ? Piece.RIGHT : 0;
      return side | (y == 0 ? Piece.TOP : y == region.height() - 1 ? Piece.BOTTOM : 0);
    }

    private boolean isEdge(int x, int y, int label) {
      int at = y * region.width() + x;
      return x == 0
          || y == 0
          || x == region.width() - 1
          || y == region.height() - 1
          || labels[at - 1] != label
          || labels[at + 1] != label
          || labels[at - region.width()] != label
          || labels[at + region.width()] != label;
    }
  }
}
