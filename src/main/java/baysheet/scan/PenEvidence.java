package baysheet.scan;

/**
 * How clearly the shape of a stroke must speak for a pen, from the least to the most: limits of
 * {@link Piece#evidence}, set on the training half.
 */
enum PenEvidence {
  /** Enough where there are many sure strokes of the same pen. */
  POSSIBLE(-4.5),

  /**
   * On a grey scan, where a smudge is pale and fades slowly: only a blot of ink has less, and one
   * tick in 600.
   */
  NOT_AGAINST(-2),

  /** Enough for a stroke of the same pen as others that are sure. */
  LIKELY(-1.5),

  /** On a grey scan, of pale ink: a short smudge is as sharp as a stroke. */
  NOT_AGAINST_PALE(0),

  /** What the clearest stroke of words, figures and initials has. */
  OF_SCRIPT(1.5),

  /** What no smudge by itself reaches: of 3,000 about boxes the clearest had 2.9. */
  SURE(3),

  /** The same without others like it: stains that cross one another reached 5.5 on 120 pages. */
  SURE_ALONE(6);

  private final double least;

  PenEvidence(double least) {
    this.least = least;
  }

  /** Whether the evidence for a piece is as clear as that. */
  boolean isReachedBy(double evidence) {
    return evidence >= least;
  }
}
