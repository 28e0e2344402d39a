package baysheet.torque;

/**
 * An extension on the square of a torque wrench.
 *
 * @param length from the square to the fastener's centre
 * @param angle between the extension and the wrench's own line: 0° straight on, 90° square to it,
 *     180° back towards the hand
 */
public record Reach(Quantity length, Quantity angle) {
  public Reach {
    if (length.unit().dimension() != Dimension.LENGTH || length.value().signum() < 0) {
      throw new IllegalArgumentException(length.print() + " is no length of an extension");
    }
    if (angle.unit().dimension() != Dimension.ANGLE) {
      throw new IllegalArgumentException(angle.print() + " is no angle of an extension");
    }
  }
}
