package baysheet.torque;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * The passes in which a set of fasteners is brought to its torque.
 *
 * @param percents share of the torque in each pass, in percent, rising to 100
 * @param checkRound whether one more round follows at the full torque
 */
public record TighteningPasses(List<BigDecimal> percents, boolean checkRound) {
  private static final BigDecimal FULL = new BigDecimal(100);
  // From four fasteners on, tightening one of them relieves the others. Common practice, no source.
  private static final int FEWEST_IN_PASSES = 4;

  /** Straight to the full torque. */
  public static final TighteningPasses ONE = new TighteningPasses(List.of(FULL), false);

  /** Half, full, and once round again. */
  public static final TighteningPasses HALF_THEN_FULL =
      new TighteningPasses(List.of(new BigDecimal(50), FULL), true);

  public TighteningPasses {
    percents = List.copyOf(percents);
    if (!rises(percents)) {
      throw new IllegalArgumentException("passes do not rise to 100 %: " + percents);
    }
  }

  /**
   * The passes when the book names none: half and full, then a check round, for four or more
   * fasteners with an order and one plain torque.
   *
   * @param ordered whether the set has an order
   */
  public static TighteningPasses usual(int count, boolean ordered, Tightening tightening) {
    boolean plain =
        tightening instanceof Tightening.Stages stages && stages.plainTorque().isPresent();
    return plain && ordered && count >= FEWEST_IN_PASSES ? HALF_THEN_FULL : ONE;
  }

  /** Reads the book's own: {@code [30 %, 60 %, 100 %]}, or the one word {@code one}. */
  public static ParseResult<TighteningPasses> parse(List<String> texts) {
    if (texts.size() == 1 && texts.get(0).strip().equals("one")) {
      return new Parsed<>(ONE);
    }
    List<BigDecimal> percents = new ArrayList<>();
    for (String text : texts) {
      ParseResult<Quantity> share = QuantityText.quantity(text, Dimension.SHARE);
      if (share instanceof ParseFailure<Quantity> misread) {
        return misread.as();
      }
      share.found().ifPresent(percent -> percents.add(percent.value()));
    }
    return rises(percents)
        ? new Parsed<>(new TighteningPasses(percents, percents.size() > 1))
        : new ParseFailure<>(
            "the passes do not increase to 100 %", "one, or shares such as [30 %, 60 %, 100 %]");
  }

  /** What each pass comes to, in the torque's unit, unrounded. */
  public List<Quantity> of(Quantity torque) {
    return percents.stream()
        .map(percent -> percent.compareTo(FULL) == 0 ? torque : share(torque, percent))
        .toList();
  }

  private static Quantity share(Quantity torque, BigDecimal percent) {
    return torque.times(percent.movePointLeft(2));
  }

  private static boolean rises(List<BigDecimal> percents) {
    BigDecimal last = BigDecimal.ZERO;
    for (BigDecimal percent : percents) {
      if (percent.compareTo(last) <= 0) {
        return false;
      }
      last = percent;
    }
    return last.compareTo(FULL) == 0;
  }
}
