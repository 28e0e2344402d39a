package baysheet.torque;

import java.math.BigDecimal;
import java.util.Optional;

/** A torque with a width either side of it. */
final class Tolerance {
  // A width of half the value or more is a slip: nothing is tightened so loosely. No source.
  private static final BigDecimal WIDEST = new BigDecimal("0.5");

  private Tolerance() {}

  /**
   * The target {@code middle ± width}.
   *
   * @param width a torque, or a share of {@code middle}
   */
  static Reading<Target> on(Quantity middle, Quantity width, String text) {
    boolean share = width.unit() == Unit.PERCENT;
    Quantity reach = share ? middle.times(width.value().movePointLeft(2)) : width;
    boolean absurd = !reach.isBelow(middle.times(WIDEST)) || reach.value().signum() == 0;
    return absurd
        ? new Misread<>(
            '"' + text.strip() + "\" has an absurd tolerance", "a tolerance such as ± 5 %")
        : new Read<>(target(middle, reach, share ? share(middle, width) : span(middle, width)));
  }

  private static Target target(Quantity middle, Quantity reach, String written) {
    Quantity low = middle.plus(reach.times(BigDecimal.ONE.negate()));
    Band band = new Band(low, middle.plus(reach), Band.Origin.BOOK);
    return new Target(middle, Optional.of(band), written);
  }

  private static String share(Quantity middle, Quantity percent) {
    return middle.print() + "\u00A0±\u00A0" + percent.print();
  }

  /** The unit once, when both figures have the same. */
  private static String span(Quantity middle, Quantity width) {
    String first = middle.unit() == width.unit() ? middle.figure() : middle.print();
    return first + "\u00A0±\u00A0" + width.print();
  }
}
