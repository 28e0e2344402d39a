package baysheet.record;

import baysheet.plan.TorqueLine.Warning;
import baysheet.torque.Band;
import baysheet.torque.Candidate;
import baysheet.torque.Preload;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.Setting;
import baysheet.torque.StrengthClass;
import baysheet.torque.Target;
import baysheet.torque.Thread;
import baysheet.torque.Unit;
import baysheet.torque.WrenchChoice;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One torque worked out at the bench, without a job.
 *
 * @param target the value as typed
 * @param band what is accepted
 * @param reach the extension, if any
 * @param choice the wrenches that were looked at; none where none was named
 * @param thread the fastener's thread, where it was given
 * @param strength its class, where it was given
 * @param warnings what to think about before using the figure
 */
public record BenchTorque(
    Target target,
    Band band,
    Optional<Reach> reach,
    WrenchChoice choice,
    Optional<Thread> thread,
    Optional<StrengthClass> strength,
    List<Warning> warnings) {
  private static final int FORMAT = 1;
  private static final List<Unit> COMMON =
      List.of(Unit.NEWTON_METRE, Unit.POUND_FORCE_FOOT, Unit.POUND_FORCE_INCH);
  private static final int DECIMALS = 3;
  private static final double FRICTION = Preload.USUAL_FRICTION;

  public BenchTorque {
    warnings = List.copyOf(warnings);
  }

  /** Clamp load in kN at {@link Preload#USUAL_FRICTION}; none without a thread. */
  public OptionalDouble clampLoadKn() {
    return thread
        .map(it -> OptionalDouble.of(Preload.clampLoad(target.nominal(), it, FRICTION) / 1000))
        .orElseGet(OptionalDouble::empty);
  }

  /** Proof load in kN (ISO 898-1, SAE J429); none without thread and class. */
  public OptionalDouble proofLoadKn() {
    if (thread.isEmpty() || strength.isEmpty()) {
      return OptionalDouble.empty();
    }
    OptionalDouble proof = strength.get().proofLoadN(thread.get());
    return proof.isPresent() ? OptionalDouble.of(proof.getAsDouble() / 1000) : proof;
  }

  /** Clamp load in percent of the proof load, where both are known. */
  public OptionalDouble percentOfProof() {
    OptionalDouble clamp = clampLoadKn();
    OptionalDouble proof = proofLoadKn();
    return clamp.isPresent() && proof.isPresent()
        ? OptionalDouble.of(100 * clamp.getAsDouble() / proof.getAsDouble())
        : OptionalDouble.empty();
  }

  /** The figures as JSON in UTF-8, in the manner of a sheet's record. */
  public byte[] json() {
    return Json.indented(json -> json.object(() -> write(json)));
  }

  private void write(Json json) throws IOException {
    json.number("format", FORMAT);
    json.quantity("torque", target.nominal());
    json.text("written", target.written());
    json.list("converted", COMMON, unit -> json.object(() -> quantity(json, unit)));
    json.object("band", () -> band(json));
    if (reach.isPresent()) {
      json.object("reach", () -> reach(json, reach.get()));
    }
    json.text("wrench", choice.setting().map(it -> it.wrench().name()));
    json.quantity("setting", choice.setting().map(Setting::setting));
    json.quantity("arrives", choice.setting().map(it -> rounded(it.arrives())));
    json.list("wrenches", choice.candidates(), it -> json.object(() -> candidate(json, it)));
    load(json);
    json.list("warnings", warnings, it -> json.object(() -> warning(json, it)));
  }

  private void quantity(Json json, Unit unit) throws IOException {
    json.number("value", rounded(target.nominal().to(unit)).value());
    json.text("unit", unit.symbol());
  }

  private void band(Json json) throws IOException {
    json.number("from", rounded(band.low()).value());
    json.number("to", rounded(band.high()).value());
    json.text("unit", band.low().unit().symbol());
    json.text("of", band.origin().name().toLowerCase(Locale.ROOT));
  }

  private static void reach(Json json, Reach reach) throws IOException {
    json.quantity("length", reach.length());
    json.quantity("angle", reach.angle());
  }

  private static void candidate(Json json, Candidate candidate) throws IOException {
    json.text("wrench", candidate.wrench().name());
    json.truth("taken", candidate.taken());
    json.text("why", candidate.why());
  }

  private void load(Json json) throws IOException {
    if (clampLoadKn().isPresent()) {
      json.number("friction", BigDecimal.valueOf(FRICTION));
      json.number("clampLoadKn", rounded(clampLoadKn().getAsDouble()));
    }
    if (percentOfProof().isPresent()) {
      json.number("proofLoadKn", rounded(proofLoadKn().getAsDouble()));
      json.number("percentOfProof", rounded(percentOfProof().getAsDouble()));
    }
  }

  private static void warning(Json json, Warning warning) throws IOException {
    json.text("code", warning.code().word());
    json.text("text", warning.text());
  }

  private static BigDecimal rounded(double figure) {
    return BigDecimal.valueOf(figure).setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  /** To thousandths at most; what was typed with fewer digits keeps them. */
  private static Quantity rounded(Quantity quantity) {
    return quantity.value().scale() <= DECIMALS
        ? quantity
        : new Quantity(quantity.value().setScale(DECIMALS, RoundingMode.HALF_UP), quantity.unit());
  }
}
