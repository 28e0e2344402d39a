package baysheet.scan;

import baysheet.record.PlacedBoxes;
import baysheet.scan.BlankPage.Area;
import baysheet.scan.PageReading.BoxReading;
import baysheet.scan.PageReading.State;

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

  /** How many pixels of a stroke must lie further in. */
  private static final int CENTRAL = 5;

  /** What must be inside of a stroke that is much longer than it must be, as a part of that. */
  private static final double OVERRUN = 0.6;

  /** A thin stroke breaks where it is pale: of its length, the longest piece is this at least. */
  private static final double BROKEN = 0.6;

  /** A box that is nearly solid was blotted out, or lies under a stain. */
  private static final double SOLID = 0.85;

  /** Of words, figures and initials, all strokes by their width; a smudge is short and wide. */
  private static final double SCRIPT = 10;

  private static final double SIGNATURE = 25;

  private final Scanned scanned;
  private final Ink ink;
  private final BlankPage blank;

  BoxReader(Scanned scanned) {
    this.scanned = scanned;
    ink = scanned.ink();
    blank = scanned.blank();
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

  /**
   * How long the strokes in a box must be by their width. A scan in black and white has neither the
   * paleness nor the soft edges of a smudge, so there one short stroke is no writing.
   */
  private double leastSlenderness(String kind) {
    if (!scanned.twoTone() || kind.equals("tick")) {
      return 0;
    }
    return kind.equals("signature") ? SIGNATURE : SCRIPT;
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
    return decide(box, new Pieces(scanned, region, inside, labels, shift));
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
    double slenderness = 0;
    int count = 0;
    boolean tick = box.kind().equals("tick");
    boolean bent = tick;
    boolean any = false;
    long inside = 0;
    for (Piece piece : pieces.measure()) {
      inside += piece.inside();
      boolean home = pieces.isAtHome(piece);
      double extent = piece.extent();
      double whole = piece.wholeExtent();
      boolean own = whole >= 3 * least || whole >= 2 * least && pieces.spans(piece);
      if (home && own && extent >= OVERRUN * least) {
        extent = Math.max(extent, least);
      }
      any |= extent >= (home ? SPECK : 2 * SPECK);
      boolean drawn = pieces.isStroke(piece, white) && !pieces.comesIn(piece, box.kind());
      drawn &= !tick || pieces.isTick(piece, white);
      if (home && drawn && extent >= SPECK && piece.central() >= CENTRAL) {
        longest = Math.max(longest, extent);
        all += extent;
        slenderness += piece.slenderness();
        bent |= !piece.isStraight() || count > 0 && box.kind().equals("value");
        count++;
      }
    }
    boolean strong = longest >= least || longest >= least * BROKEN && all >= least / BROKEN;
    // A straight line by itself is a tick, or a streak of dirt: figures and letters bend.
    strong &= bent && slenderness >= leastSlenderness(box.kind());
    double share = (double) inside / Math.max(1, pieces.free());
    State state = strong && share < SOLID ? State.MARKED : any ? State.DOUBTFUL : State.EMPTY;
    return new BoxReading(
        box.name(), box.kind(), box.required(), state, Math.round(share * 1000) / 1000.0);
  }
}
