package baysheet.scan;

import baysheet.scan.BlankPage.Area;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** The pieces of ink around a box, after what is printed was taken away. */
final class Pieces {
  /** How far outside its box the middle of a stroke may be, in pixels: a tick may well overrun. */
  private static final int ASTRAY = BlankPage.PIXELS / 4;

  /** Print hides 0.5 mm on either side of a border; what a stroke does beyond shows on 1 mm. */
  private static final int BESIDE_BOX = BlankPage.PIXELS;

  /** Nearer to the border than 0.8 mm, in pixels, ink may be the border's own ragged edge. */
  private static final int RAGGED = 6;

  /**
   * 0.6 mm off the edge of a stroke paper is white, in pixels; off the edge of a smudge it is not.
   */
  private static final int BESIDE = 5;

  /** Of the shorter edge of a box, what a neighbour's overrun never reaches. */
  private static final double THROUGH = 0.55;

  /** How far the end of a neighbour's tick reaches into a box for words or a figure: 4 mm. */
  private static final int LONGEST_OVERRUN = 4 * BlankPage.PIXELS;

  /** Of the shorter edge of a box, how deep the bottom of a tick in the box above it reaches. */
  private static final double FROM_ABOVE = 0.45;

  /** How much darker than paper ink must be where a stain could go through as well. */
  private static final double DARK_INK = 0.42;

  /** How far beyond a box a line must go on to be no stroke of a pen, in pixels: 8 mm. */
  private static final int FAR = 8 * BlankPage.PIXELS;

  /** Of that, what is dark at least, and what of it no print hides. */
  private static final double DARK = 0.9;

  private static final double SEEN = 0.4;

  /** A tick overruns its box by a third of that at most. */
  private static final double HALF_WAY = 0.55;

  /** The end of a hair of ink has no more dark points around it, a stroke's edge has. */
  private static final int HAIR = 3;

  /** The inner corner of a stroke has fewer. */
  private static final int PINHOLE = 6;

  /** A notch in a straight edge has as many dark points around it. */
  private static final int NOTCH = 5;

  private static final int SIDEWAYS = 3;
  private static final int ASLANT = 4;

  private final Grey page;
  private final Ink ink;
  private final BlankPage blank;
  private final boolean twoTone;
  private final Area region;
  private final Area inside;
  private final List<Area> others;
  private final int[] labels;
  private final int[] shift;
  private final int white;
  private final List<Piece> measured;

  /**
   * @param region around the box
   * @param inside the box within the region
   * @param others the other boxes there
   * @param labels the number of each pixel's piece; 0 for none
   * @param shift how far print lies off its place
   */
  Pieces(Scanned scanned, Area region, Area inside, List<Area> others, int[] labels, int[] shift) {
    page = scanned.page();
    ink = scanned.ink();
    blank = scanned.blank();
    twoTone = scanned.twoTone();
    this.region = region;
    this.inside = inside;
    this.others = others;
    this.labels = labels;
    this.shift = shift;
    white = scanned.white(region);
    measured = measure();
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

  /** Those with ink inside the box. */
  List<Piece> measured() {
    return measured;
  }

  private List<Piece> measure() {
    Map<Integer, Piece> all = new TreeMap<>();
    int[] depths = depths();
    for (int y = 0; y < region.height(); y++) {
      for (int x = 0; x < region.width(); x++) {
        int label = labels[y * region.width() + x];
        if (label != 0) {
          Piece piece = all.computeIfAbsent(label, number -> new Piece());
          boolean isEdge = isEdge(x, y, label);
          piece.met(x, y, side(x, y), depths[y * region.width() + x]);
          if (Area.anyHolds(others, x, y)) {
            piece.elsewhere();
          }
          if (inside.grown(BESIDE_BOX).holds(x, y)) {
            piece.about(x, y, isEdge);
            if (neighbours(x, y) <= HAIR) {
              piece.ragged();
            }
          }
          if (inside.holds(x, y)) {
            boolean central = inside.grown(-RAGGED).holds(x, y);
            piece.add(x, y, isEdge, central, shade(x, y));
            if (isEdge) {
              beside(piece, x, y);
            }
          }
        }
      }
    }
    pinholes(all);
    return all.values().stream().filter(piece -> piece.inside() > 0).toList();
  }

  /** Paper that ink is all around. */
  private void pinholes(Map<Integer, Piece> pieces) {
    Area near = inside.grown(BESIDE_BOX).within(region.width() - 1, region.height() - 1);
    for (int y = Math.max(1, near.top()); y < near.bottom(); y++) {
      for (int x = Math.max(1, near.left()); x < near.right(); x++) {
        if (!isDark(x, y) && neighbours(x, y) >= PINHOLE) {
          around(x, y).ifPresent(label -> pieces.get(label).ragged());
        }
      }
    }
  }

  /** The piece beside a point. */
  private OptionalInt around(int x, int y) {
    return IntStream.range(0, 9)
        .map(i -> labels[(y + i / 3 - 1) * region.width() + x + i % 3 - 1])
        .filter(label -> label != 0)
        .findFirst();
  }

  /** How many of the eight points around one are dark. */
  private int neighbours(int x, int y) {
    int dark = 0;
    for (int i = 0; i < 9; i++) {
      dark += i != 4 && isDark(x + i % 3 - 1, y + i / 3 - 1) ? 1 : 0;
    }
    return dark;
  }

  /**
   * How far it is from each pixel to the edge of what is dark, print or not, in thirds of a pixel:
   * 3 for a step to the side and 4 for one aslant (Borgefors, Distance transformations in digital
   * images, Computer Vision, Graphics, and Image Processing 34, 1986).
   */
  private int[] depths() {
    int wide = region.width();
    int[] depths = new int[wide * region.height()];
    for (int y = 0; y < region.height(); y++) {
      for (int x = 0; x < wide; x++) {
        depths[y * wide + x] = isFilled(x, y) ? nearest(depths, x, y, -1) : 0;
      }
    }
    for (int y = region.height() - 1; y >= 0; y--) {
      for (int x = wide - 1; x >= 0; x--) {
        int at = y * wide + x;
        depths[at] = Math.min(depths[at], nearest(depths, x, y, 1));
      }
    }
    return depths;
  }

  /** Whether a point is dark, or a notch or pinhole that noise left in what is dark. */
  private boolean isFilled(int x, int y) {
    return isDark(x, y) || neighbours(x, y) >= NOTCH;
  }

  /** By the four neighbours of a pixel that were looked at before it. */
  private int nearest(int[] depths, int x, int y, int way) {
    int nearest = depth(depths, x + way, y) + SIDEWAYS;
    nearest = Math.min(nearest, depth(depths, x, y + way) + SIDEWAYS);
    nearest = Math.min(nearest, depth(depths, x - 1, y + way) + ASLANT);
    return Math.min(nearest, depth(depths, x + 1, y + way) + ASLANT);
  }

  /** Beyond the region nothing is known. */
  private int depth(int[] depths, int x, int y) {
    boolean on = x >= 0 && y >= 0 && x < region.width() && y < region.height();
    return on ? depths[y * region.width() + x] : SIDEWAYS * FAR;
  }

  private boolean isDark(int x, int y) {
    int there = (y + region.top() + shift[1]) * blank.width() + x + region.left() + shift[0];
    return there >= 0 && there < ink.dark().length && ink.dark()[there];
  }

  /** Looks a little way off an edge, where paper is bare. */
  private void beside(Piece piece, int x, int y) {
    for (int way = -1; way <= 1; way += 2) {
      bare(piece, x + way * BESIDE, y);
      bare(piece, x, y + way * BESIDE);
    }
  }

  private void bare(Piece piece, int x, int y) {
    boolean on = x >= 0 && y >= 0 && x < region.width() && y < region.height();
    if (on && labels[y * region.width() + x] == 0) {
      int there = (y + region.top()) * blank.width() + x + region.left();
      if (!blank.near()[there]) {
        piece.beside(shade(x, y));
      }
    }
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
  boolean isAtHome(Piece piece, boolean loose) {
    if (piece.isStraight() && goesOn(piece, 1, DARK) && goesOn(piece, -1, DARK)) {
      return false;
    }
    Point middle = piece.middle();
    boolean near = inside.grown(ASTRAY).holds((int) middle.x(), (int) middle.y());
    int least = Math.min(inside.width(), inside.height());
    boolean through = piece.extent() * BlankPage.PIXELS >= THROUGH * least;
    // On a black-and-white scan the ring of a cup is as dark as ink, but it goes on.
    boolean ends =
        !twoTone
            || !piece.isStraight()
            || !goesOn(piece, 1, HALF_WAY) && !goesOn(piece, -1, HALF_WAY)
            || loose && !(goesOn(piece, 1, HALF_WAY) && goesOn(piece, -1, HALF_WAY));
    boolean dark = piece.isBentAndThin() || piece.contrast(white) >= DARK_INK;
    return near && !piece.crosses() || (through || piece.spans(inside)) && ends && dark;
  }

  /** Whether what lies in a box is the end of a neighbour's stroke. */
  boolean comesIn(Piece piece, String kind) {
    boolean tick = kind.equals("tick");
    double edge = Math.min(inside.width(), inside.height());
    // The bottom of a tick in a box above a line is no writing on that line.
    return piece.hangsIn(inside, FROM_ABOVE * edge)
            && (tick || others.stream().anyMatch(piece::reaches))
        || !tick && piece.comesIn(inside, LONGEST_OVERRUN, kind.equals("line"));
  }

  boolean spans(Piece piece) {
    return piece.spans(inside);
  }

  boolean isStroke(Piece piece) {
    return piece.isStroke(white, inside);
  }

  boolean isPale(Piece piece) {
    return piece.isPale(white);
  }

  double contrast(Piece piece) {
    return piece.contrast(white);
  }

  /** Whether two pieces are the arms of a tick that goes under the lower border. */
  boolean areArms(Piece left, Piece right) {
    return Arms.are(left, right, white, inside);
  }

  double evidence(Piece piece) {
    return piece.evidence(inside);
  }

  /** Whether ink goes on beyond an end; print may hide some of it. */
  private boolean goesOn(Piece piece, int way, double share) {
    int hidden = 0;
    int seen = 0;
    for (int step = 1; step <= FAR; step++) {
      Point at = piece.beyond(way, step);
      int x = (int) Math.round(at.x()) + region.left();
      int y = (int) Math.round(at.y()) + region.top();
      int found = at(x, y, 2 + step / 24);
      hidden += found == 1 ? 1 : 0;
      seen += found == 2 ? 1 : 0;
    }
    return seen + hidden >= FAR * share && seen >= FAR * share * SEEN;
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
