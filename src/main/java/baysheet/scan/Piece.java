package baysheet.scan;

/** A connected piece of ink, of which some lies in a box. Coordinates are pixels of a region. */
final class Piece {
  static final int LEFT = 1;
  static final int RIGHT = 2;
  static final int TOP = 4;
  static final int BOTTOM = 8;

  /** A pen's stroke is at most 1 mm wide; a blot or a punched hole is wider. In mm. */
  private static final double WIDEST_STROKE = 1.5;

  /** The area of a disc is 3.1 times the square of its width by this measure, a stroke's more. */
  private static final double LEAST_AREA = 3.4;

  /** How much darker than the paper: ink 0.4 and more, coffee and folds up to 0.37. */
  private static final double LEAST_CONTRAST = 0.4;

  /** In mm: a coarse scan mixes a thinner stroke with the white beside it. */
  private static final double THIN = 0.6;

  private static final double LEAST_THIN_CONTRAST = 0.3;

  private static final double MM = 1.0 / BlankPage.PIXELS;

  /** Depths are in thirds of a pixel. */
  private static final double THIRD = MM / 3;

  /** What leaves more of its hull white than this is bent or crossed, as ticks and letters are. */
  private static final double HOLLOW = 0.6;

  /** The least length by the greatest width where darkness and sharp edges tell as well. */
  private static final double SHORT = 1.3;

  /**
   * Where shape alone has to tell: what fills its hull must be this much longer than what is bent.
   */
  private static final double BY_SOLIDITY = 4;

  /** The same for each hair or pinhole on a pixel of its edge, and what is let off. */
  private static final double BY_RAGGED = 15;

  private static final double LET_OFF = 1.5;

  /** In black and white, of what does not go from side to side of its box. */
  private static final double UNLIKELY_BY_RAGGED = 25;

  private static final double UNLIKELY_LET_OFF = 0.4;

  /** A piece with this part of its edge in hairs and pinholes, turned over, is no writing. */
  private static final double TORN = 2;

  /** A stroke of even width strays from its middle by 0.29 of the width; hands add to that. */
  private static final double STRAIGHT = 0.08;

  /** Of its own darkness, what a stroke's surroundings have at most: a smudge fades slowly. */
  private static final double SOFT = 0.4;

  /** Ink that is solid this far around a point, in mm, was not drawn with a stroke of a pen. */
  private static final double DEEPEST = 1.3;

  /**
   * How far its ink reaches from white paper at most, by the width of what lies in the box. More is
   * a blot under a border, of which only a sliver shows inside.
   */
  private static final double DEEPEST_BY_WIDTH = 1.5;

  /** Of a box, what a stroke takes of it one way and the other when it is meant for it. */
  private static final double FROM_SIDE_TO_SIDE = 0.65;

  private static final double HALF_WAY_UP = 0.5;

  /** Of a short thick stroke, its length by its width at least; that of a blot is less. */
  private static final double LONG = 2.5;

  /** In mm: what lies in a box of a shorter piece may have any shape. */
  private static final double ELONGATED = 2;

  private final int[] shades = new int[256];
  private final Outline outline = new Outline();
  private int whole;
  private int wholeEdge;
  private int depth;
  private int sides;
  private double allX;
  private double allY;
  private int wholeLeft = Integer.MAX_VALUE;
  private int wholeTop = Integer.MAX_VALUE;
  private int wholeRight;
  private int wholeBottom;
  private int inside;
  private long besideShades;
  private int besides;
  private int central;
  private int edge;
  private int aboutEdge;
  private int aboutLeft = Integer.MAX_VALUE;
  private int aboutTop = Integer.MAX_VALUE;
  private int aboutRight;
  private int aboutBottom;
  private int left = Integer.MAX_VALUE;
  private int top = Integer.MAX_VALUE;
  private int right;
  private int bottom;
  private double sumX;
  private double sumY;
  private double sumXx;
  private double sumXy;
  private double sumYy;

  /**
   * Adds a pixel anywhere, with the sides of the region that it touches, a bit each.
   *
   * @param deep how far it is to white paper, in thirds of a pixel
   */
  void met(int x, int y, int side, boolean isEdge, int deep) {
    whole++;
    if (isEdge) {
      wholeEdge++;
      outline.add(x, y);
    }
    depth = Math.max(depth, deep);
    sides |= side;
    allX += x;
    allY += y;
    wholeLeft = Math.min(wholeLeft, x);
    wholeTop = Math.min(wholeTop, y);
    wholeRight = Math.max(wholeRight, x + 1);
    wholeBottom = Math.max(wholeBottom, y + 1);
  }

  /** Adds a pixel in the box. */
  void add(int x, int y, boolean isEdge, boolean isCentral, int shade) {
    inside++;
    central += isCentral ? 1 : 0;
    edge += isEdge ? 1 : 0;
    shades[shade]++;
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x + 1);
    bottom = Math.max(bottom, y + 1);
    sumX += x;
    sumY += y;
    sumXx += (double) x * x;
    sumXy += (double) x * y;
    sumYy += (double) y * y;
  }

  /** Adds a pixel in the box or close by. */
  void about(int x, int y, boolean isEdge) {
    aboutEdge += isEdge ? 1 : 0;
    aboutLeft = Math.min(aboutLeft, x);
    aboutTop = Math.min(aboutTop, y);
    aboutRight = Math.max(aboutRight, x + 1);
    aboutBottom = Math.max(aboutBottom, y + 1);
  }

  /**
   * Whether it comes in over a side of the box and ends soon after: the end of a neighbour's
   * stroke.
   *
   * @param most how far such an end reaches, in pixels
   * @param level whether only ends from the left and the right are meant, for words stand on a line
   */
  boolean comesIn(BlankPage.Area box, int most, boolean level) {
    int wide = Math.min(most, box.width() / 2);
    int high = Math.min(most, box.height() / 2);
    boolean across =
        wholeLeft < box.left() && right - box.left() <= wide
            || wholeRight > box.right() && box.right() - left <= wide;
    boolean down =
        wholeTop < box.top() && bottom - box.top() <= high
            || wholeBottom > box.bottom() && box.bottom() - top <= high;
    return across || down && !level;
  }

  /** Whether it goes from side to side of a box, which no overrun of a neighbour's does. */
  boolean spans(BlankPage.Area box) {
    int wide = Math.min(aboutRight, box.right()) - Math.max(aboutLeft, box.left());
    int high = Math.min(aboutBottom, box.bottom()) - Math.max(aboutTop, box.top());
    return Math.max((double) wide / box.width(), (double) high / box.height()) >= FROM_SIDE_TO_SIDE
        && Math.min((double) wide / box.width(), (double) high / box.height()) >= HALF_WAY_UP;
  }

  /** Adds a hair of ink or a pinhole on its edge. */
  void ragged() {
    outline.ragged();
  }

  /**
   * Whether its shape tells it from a smudge: thin for its length, the more so the more of its hull
   * it fills and the more ragged its edges are. Its width is taken where it is greatest, so that no
   * ragged edge makes it thin.
   *
   * @param alone whether nothing else tells it, as its darkness on a grey scan
   * @param unlikely whether smudges look like it more often than strokes do
   */
  boolean isDrawn(boolean alone, boolean unlikely) {
    double wide = 2 * depth * THIRD - MM;
    double length = whole * MM * MM / (wide * wide);
    double even = length * thickness() / wide;
    double solidity = outline.solidity(whole);
    if (!alone) {
      return (solidity < HOLLOW ? length : even) >= SHORT;
    }
    double ragged = outline.raggedness(aboutEdge);
    double more =
        unlikely ? UNLIKELY_BY_RAGGED * ragged - UNLIKELY_LET_OFF : BY_RAGGED * ragged - LET_OFF;
    return even >= BY_SOLIDITY * solidity + more;
  }

  int inside() {
    return inside;
  }

  /** Adds the shade of bare paper a little way off its edge. */
  void beside(int shade) {
    besideShades += shade;
    besides++;
  }

  private boolean isSoft(int white) {
    double fades = besides == 0 ? 0 : white - (double) besideShades / besides;
    return fades > SOFT * contrast(white) * white;
  }

  /** How many pixels lie well inside the box. */
  int central() {
    return central;
  }

  /** Whether a pen could have drawn it: thin for its length, with sharp edges, dark enough. */
  boolean isStroke(int white, BlankPage.Area box) {
    double wide = thickness();
    double all = 2.0 * whole / Math.max(1, wholeEdge) * MM;
    boolean drawn = isLong(inside, wide) || isElongated() || spans(box) && isLong(whole, all);
    return drawn
        && wide <= WIDEST_STROKE
        && depth * THIRD <= DEEPEST
        && (depth * THIRD <= DEEPEST_BY_WIDTH * wide || spans(box))
        && !isSoft(white)
        && contrast(white) >= (isBentAndThin() ? LEAST_THIN_CONTRAST : LEAST_CONTRAST);
  }

  /** Neither a stain, which is wider, nor the ring of a cup, which is straight within a box. */
  boolean isBentAndThin() {
    return thickness() <= THIN && !isStraight();
  }

  private boolean isElongated() {
    return extent() >= ELONGATED && spread(true) >= LONG * LONG * spread(false);
  }

  private static boolean isLong(int area, double wide) {
    return area * MM * MM >= LEAST_AREA * wide * wide;
  }

  /**
   * How long its strokes are by their width: what lies in the box by the square of its width. Of a
   * torn edge, which makes a smudge long and thin, that much less.
   */
  double slenderness() {
    double wide = thickness();
    double smooth = Math.max(0, 1 - TORN * outline.raggedness(aboutEdge));
    return smooth * inside * MM * MM / (wide * wide);
  }

  /** Whether it goes from a side of the region to the one across. */
  boolean crosses() {
    return (sides & (LEFT | RIGHT)) == (LEFT | RIGHT) || (sides & (TOP | BOTTOM)) == (TOP | BOTTOM);
  }

  /** The middle of all of it. */
  Point middle() {
    return new Point(allX / whole, allY / whole);
  }

  /** From corner to corner of all of it, in mm. */
  double wholeExtent() {
    return Math.hypot(wholeRight - wholeLeft, wholeBottom - wholeTop) * MM;
  }

  /** From corner to corner of what lies in the box, in mm. */
  double extent() {
    return Math.hypot(right - left, bottom - top) * MM;
  }

  /** The width of its strokes in mm: the area by half the outline. */
  double thickness() {
    return 2.0 * inside / Math.max(1, edge) * MM;
  }

  /** How much darker than the paper its darker third is; a thin stroke is pale at its edges. */
  double contrast(int white) {
    int third = Math.max(1, inside / 3);
    int shade = 0;
    for (int seen = shades[0]; seen < third; seen += shades[shade]) {
      shade++;
    }
    return (white - shade) / Math.max(1.0, white);
  }

  boolean isStraight() {
    return Math.sqrt(spread(false)) * MM <= 0.29 * thickness() + STRAIGHT;
  }

  /** The mean square of distances along the longer axis, or across it. */
  private double spread(boolean along) {
    double half = (varianceX() + varianceY()) / 2;
    double root = Math.hypot((varianceX() - varianceY()) / 2, covariance());
    return Math.max(0, along ? half + root : half - root);
  }

  private double varianceX() {
    return sumXx / inside - sumX / inside * sumX / inside;
  }

  private double varianceY() {
    return sumYy / inside - sumY / inside * sumY / inside;
  }

  private double covariance() {
    return sumXy / inside - sumX / inside * sumY / inside;
  }

  /**
   * A point beyond an end of a straight piece.
   *
   * @param way 1 for one end, -1 for the other
   */
  Point beyond(int way, int pixels) {
    double angle = Math.atan2(2 * covariance(), varianceX() - varianceY()) / 2;
    // Points that are spread evenly reach the root of three times their deviation.
    double off = way * (Math.sqrt(3 * spread(true)) + pixels);
    return new Point(sumX / inside + off * Math.cos(angle), sumY / inside + off * Math.sin(angle));
  }
}
