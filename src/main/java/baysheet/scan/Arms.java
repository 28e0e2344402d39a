package baysheet.scan;

/** The arms of a tick, of which the bottom lies under the lower border of its box or below it. */
final class Arms {
  /** How steep they are, in degrees: the left one falls, the right one rises. */
  private static final double LEFT = 50;

  private static final double RIGHT = 30;
  private static final double MOST_STEEP = 80;

  /** The border and what was taken away beside it hide this, in pixels. */
  private static final int CUT = BlankPage.PIXELS;

  /** How far from the lower border they meet, in pixels. */
  private static final int FARTHEST = 3 * BlankPage.PIXELS / 2;

  private Arms() {}

  /** Whether two pieces are the arms of one tick. */
  static boolean are(Piece left, Piece right, int white, BlankPage.Area box) {
    double steep = left.angle();
    return isDrawn(left, white)
        && isDrawn(right, white)
        && (steep >= LEFT || steep <= -MOST_STEEP)
        && isLong(right)
        && Math.min(left.bottom(), right.bottom()) >= box.bottom() - CUT
        && meet(left, right, box);
  }

  private static boolean isDrawn(Piece arm, int white) {
    return arm.isOfAPen(white) && !arm.isPale(white) && arm.isStraight();
  }

  /** Whether a piece leans like the long arm, which goes up to the right. */
  static boolean isLong(Piece piece) {
    double steep = piece.angle();
    return piece.isStraight() && steep >= -MOST_STEEP && steep <= -RIGHT;
  }

  /** Whether the lines through both cross between them, near the lower border. */
  private static boolean meet(Piece left, Piece right, BlankPage.Area box) {
    double angle = Math.toRadians(left.angle());
    double other = Math.toRadians(right.angle());
    Point from = left.middleInside();
    Point to = right.middleInside();
    double across = (to.x() - from.x()) * Math.sin(other);
    double down = (to.y() - from.y()) * Math.cos(other);
    double along = (across - down) / Math.sin(other - angle);
    double x = from.x() + along * Math.cos(angle);
    double y = from.y() + along * Math.sin(angle);
    return from.x() < x && x < to.x() && Math.abs(y - box.bottom()) <= FARTHEST;
  }
}
