package baysheet.torque;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What came of comparing a torque with its thread and class; never that the torque is right. */
public sealed interface Plausibility permits Plausibility.NotCompared, Plausibility.Compared {
  /** A sentence without a full stop for whoever asks how a value was compared. */
  String sentence();

  /** Whether no friction that the surface may have explains the torque: then nothing is set. */
  boolean isDoubtful();

  /** Whether it is explained, but is high for an ordinary surface. */
  boolean isHigh();

  /** The torque cannot be compared; the sentence says why. */
  record NotCompared(String sentence) implements Plausibility {
    @Override
    public boolean isDoubtful() {
      return false;
    }

    @Override
    public boolean isHigh() {
      return false;
    }
  }

  /**
   * The torque was compared.
   *
   * @param torque the book's figure; the middle of a range
   * @param proofN proof load in N (ISO 898-1, SAE J429, ISO 3506-1)
   * @param span the friction that the surface may have
   * @param usual the friction of an ordinary surface of that material
   */
  record Compared(
      Quantity torque,
      ScrewThread thread,
      StrengthClass strength,
      double proofN,
      Friction.Span span,
      double usual)
      implements Plausibility {
    // Limits: common practice, no source. A wrong unit is off by a third at least, and a torque
    // that leaves the joint at a seventh of what the fastener can do holds nothing.
    private static final double MOST_PERCENT = 110;
    private static final double LEAST_PERCENT = 15;

    private static final List<Unit> IN_USE =
        List.of(Unit.NEWTON_METRE, Unit.POUND_FORCE_FOOT, Unit.POUND_FORCE_INCH);

    @Override
    public boolean isDoubtful() {
      return isTooMuch() || percent(torque, span.low()) < LEAST_PERCENT;
    }

    boolean isTooMuch() {
      return percent(torque, span.high()) > MOST_PERCENT;
    }

    @Override
    public boolean isHigh() {
      return !isDoubtful() && percent(torque, usual) > MOST_PERCENT;
    }

    @Override
    public String sentence() {
      if (isDoubtful()) {
        return doubt();
      }
      String figures = figures();
      return isHigh()
          ? figures + ": high for an ordinary surface, compare with the source once"
          : figures;
    }

    private String subject() {
      return torque.print() + " on " + thread.designation() + " class " + strength.label();
    }

    private String figures() {
      String known =
          String.format(
              Locale.ROOT,
              "%s clamps with about %.1f\u00A0kN at friction %.2f, %s of its proof load of"
                  + " %.1f\u00A0kN",
              subject(),
              load(usual) / 1000,
              usual,
              share(percent(torque, usual)),
              proofN / 1000);
      return isPoint()
          ? known
          : known + " (" + shares(torque) + " at friction " + frictions() + ")";
    }

    private String doubt() {
      return misfit() + ", check value and unit (" + inOtherUnits() + ")";
    }

    /** That no friction explains the torque, with both figures. */
    public String misfit() {
      return subject()
          + " would clamp with "
          + loads()
          + "\u00A0kN at friction "
          + frictions()
          + ", "
          + shares(torque)
          + String.format(Locale.ROOT, " of its proof load of %.1f\u00A0kN", proofN / 1000)
          + ": it is wrong for this thread and class";
    }

    /** What the same number would give in each other unit in use. */
    public String inOtherUnits() {
      return IN_USE.stream()
          .filter(unit -> unit != torque.unit())
          .map(unit -> new Quantity(torque.value(), unit))
          .map(other -> other.print() + " would give " + shares(other))
          .collect(Collectors.joining(", "));
    }

    /** A friction that somebody knows is a span of one figure. */
    private boolean isPoint() {
      return span.low() == span.high();
    }

    // The highest friction clamps least, so it stands first.
    private String frictions() {
      return ends(span.high(), span.low(), "%.2f", " to ");
    }

    private String loads() {
      return ends(load(span.high()) / 1000, load(span.low()) / 1000, "%.1f", " to ");
    }

    private String shares(Quantity figure) {
      String least = share(percent(figure, span.high()));
      return isPoint() ? least : least + " to " + share(percent(figure, span.low()));
    }

    private static String share(double percent) {
      return String.format(Locale.ROOT, "%.0f\u00A0%%", percent);
    }

    private String ends(double first, double last, String format, String between) {
      String one = String.format(Locale.ROOT, format, first);
      return isPoint() ? one : one + between + String.format(Locale.ROOT, format, last);
    }

    private double load(double friction) {
      return Preload.clampLoad(torque, thread, friction);
    }

    private double percent(Quantity figure, double friction) {
      return 100 * Preload.clampLoad(figure, thread, friction) / proofN;
    }
  }
}
