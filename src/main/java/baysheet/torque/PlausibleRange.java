package baysheet.torque;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;

/**
 * The span outside which a written value is taken for a slip, one for each dimension.
 *
 * <p>Common practice on cars and vans, no source: wide enough for anything in a small garage,
 * narrow enough to catch a lost decimal point or a wrong unit where it is gross.
 */
final class PlausibleRange {
  private static final Map<Dimension, PlausibleRange> SPANS = new EnumMap<>(Dimension.class);

  static {
    // Above 3000 N·m a hand wrench is out of the question; the finest scale steps by 0.05 N·m.
    SPANS.put(Dimension.TORQUE, span("0.01", "3000", Unit.NEWTON_METRE));
    SPANS.put(Dimension.ANGLE, span("0", "720", Unit.DEGREE));
    SPANS.put(Dimension.LENGTH, span("0", "12000", Unit.MILLIMETRE));
    SPANS.put(Dimension.DISTANCE, span("0", "3000000", Unit.KILOMETRE));
    SPANS.put(Dimension.MASS, span("0", "60000", Unit.KILOGRAM));
    SPANS.put(Dimension.VOLUME, span("0.001", "500", Unit.LITRE));
    SPANS.put(Dimension.TIME, span("0", "6000", Unit.MINUTE));
    SPANS.put(Dimension.SHARE, span("0", "100", Unit.PERCENT));
    SPANS.put(Dimension.TEMPERATURE, span("-60", "1500", Unit.DEGREE_CELSIUS));
    // Common-rail injection runs at up to about 2700 bar.
    SPANS.put(Dimension.PRESSURE, span("0.01", "3000", Unit.BAR));
  }

  private final Quantity least;
  private final Quantity most;

  private PlausibleRange(Quantity least, Quantity most) {
    this.least = least;
    this.most = most;
  }

  private static PlausibleRange span(String least, String most, Unit unit) {
    return new PlausibleRange(Quantity.of(least, unit), Quantity.of(most, unit));
  }

  /** The quantity itself, or what makes it absurd. */
  static ParseResult<Quantity> check(Quantity quantity) {
    Dimension dimension = quantity.unit().dimension();
    PlausibleRange span = SPANS.get(dimension);
    boolean inside = !quantity.isBelow(span.least) && !quantity.isAbove(span.most);
    return inside
        ? new Parsed<>(quantity)
        : new ParseFailure<>(
            quantity.print() + " is not plausible as " + dimension.phrase(),
            span.sentence(dimension));
  }

  /** Whether the dimension knows values below zero. */
  static boolean mayBeNegative(Dimension dimension) {
    return SPANS.get(dimension).least.value().signum() < BigDecimal.ZERO.signum();
  }

  private String sentence(Dimension dimension) {
    return dimension.phrase() + " from " + least.print() + " to " + most.print();
  }
}
