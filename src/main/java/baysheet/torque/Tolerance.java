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
  static ParseResult<Target> on(Quantity middle, Quantity width, String text) {
    boolean share = width.unit() == Unit.PERCENT;
    Quantity reach = torque(width, middle);
    return isTooWide(reach, middle) || reach.value().signum() == 0
        ? absurd(text)
        : new Parsed<>(
            target(middle, reach, reach, share ? share(middle, width) : span(middle, width)));
  }

  /**
   * The target with another width above than below; one of them may be zero.
   *
   * @param up a torque, or a share of {@code middle}; likewise {@code down}
   */
  static ParseResult<Target> uneven(Quantity middle, Quantity up, Quantity down, String text) {
    Quantity above = torque(up, middle);
    Quantity below = torque(down, middle);
    boolean none = above.value().signum() == 0 && below.value().signum() == 0;
    return none || isTooWide(above, middle) || isTooWide(below, middle)
        ? absurd(text)
        : new Parsed<>(target(middle, above, below, uneven(middle, up, down)));
  }

  private static Quantity torque(Quantity width, Quantity middle) {
    return width.unit() == Unit.PERCENT ? middle.times(width.value().movePointLeft(2)) : width;
  }

  private static boolean isTooWide(Quantity reach, Quantity middle) {
    return !reach.isBelow(middle.times(WIDEST));
  }

  private static ParseResult<Target> absurd(String text) {
    return new ParseFailure<>(
        WrittenText.quoted(text) + " has a tolerance that is not plausible",
        "a tolerance such as ± 5 %");
  }

  private static Target target(Quantity middle, Quantity above, Quantity below, String written) {
    Quantity low = middle.plus(below.times(BigDecimal.ONE.negate()));
    Band band = new Band(low, middle.plus(above), Band.Origin.BOOK);
    return new Target(middle, Optional.of(band), written);
  }

  /** {@code 110 +10/−5 N·m}; every unit where they differ. */
  private static String uneven(Quantity middle, Quantity up, Quantity down) {
    boolean oneUnit = middle.unit() == up.unit() && middle.unit() == down.unit();
    String first = oneUnit ? middle.figure() : middle.print();
    String above = oneUnit ? up.figure() : up.print();
    return first + "\u00A0+" + above + "/−" + down.print();
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
