package baysheet.box;

/**
 * A length: whole thousandths of a point, or thousandths of the body size.
 *
 * @param amount thousandths
 */
public record Length(long amount, boolean ofBody) {
  public static final Length ZERO = new Length(0, false);

  public Length {
    if (amount < 0) {
      throw new IllegalArgumentException("length " + amount);
    }
  }

  /** In thousandths of a point at a body size, also in thousandths of a point. */
  public long at(long body) {
    return ofBody ? Math.floorDiv(amount * body, 1000) : amount;
  }
}
