package baysheet.torque;

import java.util.Locale;

/**
 * An extension on the square of a torque wrench.
 *
 * @param length from the square to the fastener's centre
 * @param angle between the extension and the wrench's own line: 0° straight on, 90° square to it,
 *     180° back towards the hand
 * @param tool what stands at its end, where no socket goes on
 */
public record Reach(Quantity length, Quantity angle, Tool tool) {
  /** What takes a head that a line, a rod or a held pin keeps sockets off. */
  public enum Tool {
    CROW_FOOT,
    /** Closed but for the width of a line, so that it does not round soft union nuts. */
    FLARE_NUT_CROW_FOOT,
    OPEN_ENDED_INSERT,
    RING_INSERT;

    /** As written in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** As people call it. */
    public String print() {
      return word().replace("nut-crow", "nut crow").replace("-insert", " insert");
    }
  }

  public Reach {
    if (length.unit().dimension() != Dimension.LENGTH || length.value().signum() < 0) {
      throw new IllegalArgumentException(length.print() + " is no length of an extension");
    }
    if (angle.unit().dimension() != Dimension.ANGLE) {
      throw new IllegalArgumentException(angle.print() + " is no angle of an extension");
    }
  }

  /** With a crow-foot, the usual one. */
  public Reach(Quantity length, Quantity angle) {
    this(length, angle, Tool.CROW_FOOT);
  }
}
