package baysheet.torque;

/**
 * The accepted band round a torque, both ends included.
 *
 * @param low lowest accepted value
 * @param high highest accepted value
 * @param origin who set it
 */
public record Band(Quantity low, Quantity high, Origin origin) {
  /** Who set a band. */
  public enum Origin {
    /** The spec book gives a range or a tolerance. */
    BOOK,
    /** The shop's own default; common practice, so the sheet says whose it is. */
    SHOP
  }

  public Band {
    if (high.isBelow(low)) {
      throw new IllegalArgumentException(
          "a band from " + low.print() + " to " + high.print() + " holds nothing");
    }
  }

  /** Whether {@code quantity} is accepted. */
  public boolean contains(Quantity quantity) {
    return !quantity.isBelow(low) && !quantity.isAbove(high);
  }

  /** −1 below the band, 0 inside, 1 above. */
  int side(Quantity quantity) {
    return quantity.isBelow(low) ? -1 : quantity.isAbove(high) ? 1 : 0;
  }

  /**
   * The band with its ends rounded towards the middle, so that what is printed is never outside
   * what is accepted: to as many digits as its unit and size need for it to stay nearly as wide.
   * Ends that a book gives are printed as they are.
   */
  public Band printed() {
    return Rounding.inward(this);
  }
}
