package baysheet.scan;

/** A connected piece of ink, of which some lies in a box. Coordinates are pixels of a region. */
final class Piece {
  static final int LEFT = 1;
  static final int RIGHT = 2;
  static final int TOP = 4;
  static final int BOTTOM = 8;

  /** A pen's stroke is at most 1 mm wide, and some more on a scan in black and white. In mm. */
  private static final double WIDEST = 1.3;

  /** Ink that is solid this far around a point, in mm, is no crossing of strokes. */
  private static final double DEEPEST = 1.3;

  /**
   * The same by the width of what lies in the box. More is a blot under a border, of which only a
   * sliver shows inside.
   */
  private static final double DEEPEST_BY_WIDTH = 1.5;

  /** The least length by the width. */
  private static final double LEAST_SLENDER = 2;

  /** Of a name; no dirt on 120 soiled pages of the training half had more than 40. */
  private static final double LONG = 50;

  /** How much darker than the paper: ink 0.4 and more, coffee and folds up to 0.37. */
  private static final double LEAST_CONTRAST = 0.4;

  /** Of 450 soiled pages the darkest smudge that looked like a stroke otherwise had 0.40. */
  static final double DARK = 0.5;

  /** In mm: a coarse scan mixes a thinner stroke with the white beside it. */
  private static final double THIN = 0.6;

  private static final double LEAST_THIN_CONTRAST = 0.3;

  private static final double MM = 1.0 / BlankPage.PIXELS;

  /** Depths are in thirds of a pixel. */
  private static final double THIRD = MM / 3;

  /** A stroke of even width strays from its middle by 0.29 of the width; hands add to that. */
  private static final double STRAIGHT = 0.08;

  /** Of its own darkness, what a stroke's surroundings have at most: a smudge fades slowly. */
  private static final double SOFT = 0.4;

  /** The same of ink less dark than DARK: 400 such strokes (training half) had 0.28 at most. */
  private static final double SOFT_IF_PALE = 0.3;

  /** What the ring of a cup of 60 mm strays from its chord, by the square of the chord's length. */
  private static final double RING = 0.29 / 8 / 30;

  /** Of the way from end to end, the length of a line that does not turn. */
  private static final double ONE_WAY = 1.1;

  /** Of a box, what a stroke takes of it one way and the other when it is meant for it. */
  private static final double FROM_SIDE_TO_SIDE = 0.65;

  private static final double HALF_WAY_UP = 0.5;

  /** A piece with this part of its edge in hairs and pinholes, turned over, is no writing. */
  private static final double TORN = 3.5;

  private final int[] shades = new int[256];
  private final Outline outline = new Outline();
  private final Moments moments = new Moments();
  private int whole;
  private int depth;
  private long depths;
  private int sides;
  private double allX;
  private double allY;
  private int wholeLeft = Integer.MAX_VALUE;
  private int wholeTop = Integer.MAX_VALUE;
  private int wholeRight;
  private int wholeBottom;
  private int inside;
  private int elsewhere;
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

  /**
   * Adds a pixel anywhere, with the sides of the region that it touches, a bit each.
   *
   * @param deep how far it is to white paper, in thirds of a pixel
   */
  void met(int x, int y, int side, int deep) {
    whole++;
    depths += deep;
    depth = Math.max(depth, deep);
    sides |= side;
    allX += x;
    allY += y;
    wholeLeft = Math.min(wholeLeft, x);
    wholeTop = Math.min(wholeTop, y);
    wholeRight = Math.max(wholeRight, x + 1);
    wholeBottom = Math.max(wholeBottom, y + 1);
  }

  /** Adds a pixel in another box. */
  void elsewhere() {
    elsewhere++;
  }

  /** Whether no other box can claim it: those hold a quarter of it at most. */
  boolean isAlone() {
    return elsewhere * 4 <= inside;
  }

  /** Adds a pixel in the box. */
  void add(int x, int y, boolean isEdge, boolean isCentral, int shade) {
    inside++;
    if (isEdge) {
      outline.add(x, y);
    }
    central += isCentral ? 1 : 0;
    edge += isEdge ? 1 : 0;
    shades[shade]++;
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x + 1);
    bottom = Math.max(bottom, y + 1);
    moments.add(x, y);
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
   * Whether it comes in over a side of the box and soon ends: the end of a neighbour's stroke.
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

  /** Whether it comes in from above and ends soon after. */
  boolean hangsIn(BlankPage.Area box, double most) {
    return wholeTop < box.top() && bottom - box.top() <= most;
  }

  /** Whether it goes as far as a box. */
  boolean reaches(BlankPage.Area box) {
    return wholeLeft < box.right()
        && wholeRight > box.left()
        && wholeTop < box.bottom()
        && wholeBottom > box.top();
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
   * The width of its strokes in mm, by how deep it is: of an even line the mean depth is a quarter
   * of the width, and half a pixel for the edges. Unlike the greatest depth this hardly grows where
   * two strokes cross.
   */
  double width() {
    return 4.0 * depths / whole * THIRD - 2 * MM;
  }

  /** How long its strokes are by their width: of a disc 1.8, of a tick 6 and more. */
  double slender() {
    return whole * MM * MM / (width() * width());
  }

  /**
   * What the shape says for a pen and against a smudge, as the logarithm of the odds. Strokes are
   * long for their width, leave their hull white, have smooth edges and go from side to side of
   * their box. Weights: a logistic regression over the ticks of 200 black-and-white pages and 3,000
   * smudges of the training half, rounded.
   */
  double evidence(BlankPage.Area box) {
    return 5.5 * Math.log(slender())
        - 6 * outline.solidity(inside)
        - 30 * outline.raggedness(aboutEdge)
        - 2 * width() / thickness()
        + (spans(box) ? 3.5 : 0);
  }

  int inside() {
    return inside;
  }

  /** Adds the shade of bare paper a little way off its edge. */
  void beside(int shade) {
    besideShades += shade;
    besides++;
  }

  /** How many pixels lie well inside the box. */
  int central() {
    return central;
  }

  /** Whether a pen could have drawn it: thin, longer than wide, with sharp edges, dark enough. */
  boolean isStroke(int white, BlankPage.Area box) {
    return slender() >= LEAST_SLENDER
        && isOfAPen(white)
        && (depth * THIRD <= DEEPEST_BY_WIDTH * thickness() || spans(box) || isLong());
  }

  /** The same of a short piece. */
  boolean isOfAPen(int white) {
    double fades = besides == 0 ? 0 : white - (double) besideShades / besides;
    double most = contrast(white) < DARK ? SOFT_IF_PALE : SOFT;
    boolean sharp = fades <= most * contrast(white) * white;
    return width() <= WIDEST
        && (depth * THIRD <= DEEPEST && sharp || isLong())
        && contrast(white)
            >= (Math.max(thickness(), width()) <= THIN ? LEAST_THIN_CONTRAST : LEAST_CONTRAST);
  }

  /** Letters of a name run into one another, and paper between them is never bare. */
  private boolean isLong() {
    return slender() >= LONG;
  }

  /** Whether it could as well be a piece of a fold or of the ring of a cup. */
  boolean isPale(int white) {
    return isFlat() && contrast(white) < LEAST_CONTRAST;
  }

  /** The middle of what lies in the box. */
  Point middleInside() {
    return new Point(moments.x(), moments.y());
  }

  /** The lowest of what lies in the box, in pixels. */
  int bottom() {
    return bottom;
  }

  /** Neither a stain, which is wider, nor the ring of a cup, which is straight within a box. */
  boolean isBentAndThin() {
    return thickness() <= THIN && !isStraight();
  }

  /** The same, of a torn edge that much less. */
  double smoothSlender() {
    return slender() * Math.max(0, 1 - TORN * outline.raggedness(aboutEdge));
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
    return strays(0);
  }

  /** Whether it is straight, or bends as little as the ring of a cup. */
  boolean isFlat() {
    return isStraight()
        || slender() * width() <= ONE_WAY * wholeExtent() && strays(RING * extent() * extent());
  }

  private boolean strays(double most) {
    return Math.sqrt(moments.spread(false)) * MM <= 0.29 * thickness() + STRAIGHT + most;
  }

  /** The direction of what lies in the box, -90 to 90 degrees. */
  double angle() {
    return Math.toDegrees(moments.angle());
  }

  /**
   * A point beyond an end of a straight piece.
   *
   * @param way 1 for one end, -1 for the other
   */
  Point beyond(int way, int pixels) {
    double angle = moments.angle();
    // Points that are spread evenly reach the root of three times their deviation.
    double off = way * (Math.sqrt(3 * moments.spread(true)) + pixels);
    return new Point(moments.x() + off * Math.cos(angle), moments.y() + off * Math.sin(angle));
  }
}
