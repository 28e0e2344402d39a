package baysheet.torque;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a torque can belong to its thread and class.
 *
 * <p>The clamp load by {@link Preload} at usual friction against the proof load (ISO 898-1, SAE
 * J429). It changes no number, and silence does not mean that a value is right.
 */
public final class Believability {
  // Friction scatters from 0.08 to 0.16 for one class of surface, so only gross misfits count:
  // a wrong unit is off by a third at least. The limits are common practice, no source.
  private static final double MOST_PERCENT = 110;
  private static final double LEAST_PERCENT = 15;

  private Believability() {}

  /** A doubt about one plain torque; none when it may belong, or cannot be compared. */
  public static Optional<Doubt> of(Target target, Thread thread, StrengthClass strength) {
    OptionalDouble proof = strength.proofLoadN(thread);
    // Nearly all torques fit, and nobody reads a sentence about those.
    return proof.isEmpty() || fits(percent(target.nominal(), thread, proof.getAsDouble()))
        ? Optional.empty()
        : compare(target, thread, strength).doubt();
  }

  /** A doubt about a stage that is the whole tightening. */
  public static Optional<Doubt> of(Stage.Torque only, Thread thread, StrengthClass strength) {
    return of(only.target(), thread, strength);
  }

  /** A doubt about a tightening; none for angles, several stages, or no figure. */
  public static Optional<Doubt> of(
      Tightening tightening, Optional<Thread> thread, Optional<StrengthClass> strength) {
    return tightening instanceof Tightening.Stages stages
            && stages.plainTorque().isPresent()
            && thread.isPresent()
            && strength.isPresent()
        ? of(stages.plainTorque().get(), thread.get(), strength.get())
        : Optional.empty();
  }

  /** What was compared, or why nothing was. */
  public static Belief explain(
      Tightening tightening, Optional<Thread> thread, Optional<StrengthClass> strength) {
    if (!(tightening instanceof Tightening.Stages stages)) {
      return new Belief.LeftOut("not compared: the book gives no torque");
    }
    if (stages.plainTorque().isEmpty()) {
      return new Belief.LeftOut(
          "not compared: a fastener tightened in stages or by angle may go beyond its proof load");
    }
    if (thread.isEmpty() || strength.isEmpty()) {
      return new Belief.LeftOut("not compared: the book gives no thread or no class");
    }
    return compare(stages.plainTorque().get(), thread.get(), strength.get());
  }

  private static Belief compare(Target target, Thread thread, StrengthClass strength) {
    OptionalDouble proof = strength.proofLoadN(thread);
    return proof.isEmpty()
        ? new Belief.LeftOut(
            "not compared: class " + strength.label() + " is not made as " + thread.designation())
        : weigh(target.nominal(), thread, strength, proof.getAsDouble());
  }

  private static Belief weigh(
      Quantity torque, Thread thread, StrengthClass strength, double proof) {
    double percent = percent(torque, thread, proof);
    String figures =
        torque.print()
            + " on "
            + thread.designation()
            + " class "
            + strength.label()
            + clamping(proof, percent);
    return new Belief.Compared(
        percent,
        figures,
        fits(percent)
            ? Optional.empty()
            : Optional.of(new Doubt(percent, doubt(torque, thread, proof, figures))));
  }

  private static boolean fits(double percent) {
    return percent <= MOST_PERCENT && percent >= LEAST_PERCENT;
  }

  private static String clamping(double proof, double percent) {
    return String.format(
        Locale.ROOT,
        " clamps with about %.1f\u00A0kN at friction %.2f, %.0f\u00A0%% of its proof load of"
            + " %.1f\u00A0kN",
        proof / 1000 * percent / 100,
        Preload.USUAL_FRICTION,
        percent,
        proof / 1000);
  }

  private static String doubt(Quantity torque, Thread thread, double proof, String figures) {
    Quantity other = new Quantity(torque.value(), otherUnit(torque.unit()));
    String instead = String.format(Locale.ROOT, "%.0f\u00A0%%", percent(other, thread, proof));
    return figures
        + ": it does not fit this thread and class, check value and unit ("
        + other.print()
        + " would give "
        + instead
        + ")";
  }

  private static double percent(Quantity torque, Thread thread, double proof) {
    return 100 * Preload.clampLoad(torque, thread, Preload.USUAL_FRICTION) / proof;
  }

  /** The unit with which this one is most often confused. */
  private static Unit otherUnit(Unit unit) {
    return switch (unit) {
      case NEWTON_METRE, POUND_FORCE_INCH -> Unit.POUND_FORCE_FOOT;
      default -> Unit.NEWTON_METRE;
    };
  }
}
