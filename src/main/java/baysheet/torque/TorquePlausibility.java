package baysheet.torque;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a torque can belong to its thread and class.
 *
 * <p>The clamp load by {@link Preload} over the whole span of friction that treatment and material
 * allow, against the proof load (ISO 898-1, SAE J429, ISO 3506-1). It changes no number, and
 * silence does not mean that a value is right.
 */
public final class TorquePlausibility {
  /** What is too much for this is too much for a fastener whose class no book gives. */
  private static final StrengthClass STRONGEST =
      new StrengthClass(
          "12.9 (the strongest; the book gives none)", StrengthClass.Strength.KNOWN.get("12.9"));

  private TorquePlausibility() {}

  /** What was compared, or why nothing was, for a thread treated as the book says. */
  public static Plausibility of(
      Tightening tightening,
      Optional<ScrewThread> thread,
      Optional<StrengthClass> strength,
      Treatment treatment) {
    return of(
        tightening, thread, strength, Friction.span(treatment, strength), Friction.usual(strength));
  }

  /** The same for a friction that somebody knows. */
  public static Plausibility of(
      Tightening tightening,
      Optional<ScrewThread> thread,
      Optional<StrengthClass> strength,
      double friction) {
    return of(tightening, thread, strength, new Friction.Span(friction, friction), friction);
  }

  private static Plausibility of(
      Tightening tightening,
      Optional<ScrewThread> thread,
      Optional<StrengthClass> strength,
      Friction.Span span,
      double usual) {
    if (!(tightening instanceof Tightening.Stages stages)) {
      return new Plausibility.NotCompared("not compared: the book gives no torque");
    }
    if (stages.plainTorque().isEmpty()) {
      return new Plausibility.NotCompared(
          "not compared: a fastener tightened in stages or by angle may go beyond its proof load");
    }
    if (thread.isEmpty()) {
      return new Plausibility.NotCompared("not compared: the book gives no thread");
    }
    StrengthClass known = strength.orElse(STRONGEST);
    OptionalDouble proof = known.proofLoadN(thread.get());
    if (proof.isEmpty()) {
      return new Plausibility.NotCompared(
          "not compared: class " + known.label() + " is not made as " + thread.get().designation());
    }
    Plausibility.Compared compared =
        new Plausibility.Compared(
            stages.plainTorque().get().nominal(),
            thread.get(),
            known,
            proof.getAsDouble(),
            span,
            usual);
    return strength.isPresent() || compared.isTooMuch()
        ? compared
        : new Plausibility.NotCompared("not compared: the book gives no class");
  }
}
