package baysheet.record;

import baysheet.json.JsonObject;
import baysheet.json.JsonText;
import baysheet.sheet.TorqueLine.Warning;
import baysheet.torque.Band;
import baysheet.torque.Candidate;
import baysheet.torque.Preload;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ScrewThread;
import baysheet.torque.Setting;
import baysheet.torque.StrengthClass;
import baysheet.torque.Target;
import baysheet.torque.TighteningStage;
import baysheet.torque.Unit;
import baysheet.torque.WrenchChoice;
import baysheet.wording.Language;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One tightening worked out at the bench, without a job.
 *
 * @param written as typed, in its one spelling
 * @param stages at least one
 * @param reach the extension, if any
 * @param accuracy the deviation of a wrench that was described, if one was
 * @param joint thread and class, where a thread was given
 * @param sockets whether the shop's sockets were looked at
 * @param warnings what to think about before using the figure
 */
public record BenchTorque(
    String written,
    List<BenchStage> stages,
    Optional<Reach> reach,
    Optional<Accuracy> accuracy,
    Optional<Joint> joint,
    boolean sockets,
    List<Warning> warnings) {
  private static final int FORMAT = 1;
  private static final List<Unit> COMMON =
      List.of(Unit.NEWTON_METRE, Unit.POUND_FORCE_FOOT, Unit.POUND_FORCE_INCH);
  private static final int DECIMALS = 3;

  public BenchTorque {
    stages = List.copyOf(stages);
    warnings = List.copyOf(warnings);
  }

  /** A stage and what came of it; empty where it is no torque. */
  public record BenchStage(TighteningStage stage, Optional<Worked> worked) {}

  /**
   * A torque worked out.
   *
   * @param band what is accepted
   * @param whose whose band it is
   * @param choice the wrenches that were looked at; empty for a figure in doubt
   */
  public record Worked(Target target, Band band, BandSource whose, Optional<WrenchChoice> choice) {
    /** What to set, where a wrench was named that can be set to it. */
    public Optional<Setting> setting() {
      return choice.flatMap(WrenchChoice::setting);
    }
  }

  /** Whose an accepted band is. */
  public enum BandSource {
    /** Written with the value. */
    BOOK,
    /** Given with an option. */
    OPTION,
    /** The shop's default. */
    SHOP,
    /** The usual one, where nobody states one. */
    DEFAULT
  }

  /**
   * The deviation of a wrench.
   *
   * @param assumed whether it is that of its class, for none was given
   */
  public record Accuracy(BigDecimal percent, boolean assumed) {}

  /**
   * What the fastener is.
   *
   * @param pitchAssumed whether no pitch was written, so that the coarse one was taken
   * @param friction coefficient in thread and under the head at which the clamp load is given
   * @param torque the whole tightening, where it is one torque: only then is there a clamp load
   */
  public record Joint(
      ScrewThread thread,
      boolean pitchAssumed,
      Optional<StrengthClass> strength,
      double friction,
      Optional<Quantity> torque) {
    /**
     * How far clamp loads of one torque lie apart, in percent either way: about 25 to 30.
     *
     * <p>Machinery's Handbook, 31st edition, table 2: 25 % with a torque wrench; the wider figure
     * is common practice, no source.
     */
    public static final int SCATTER_PERCENT = 30;

    /** Clamp load in kN. */
    public OptionalDouble clampLoadKn() {
      return torque
          .map(it -> OptionalDouble.of(Preload.clampLoad(it, thread, friction) / 1000))
          .orElseGet(OptionalDouble::empty);
    }

    /** Proof load in kN (ISO 898-1, SAE J429, ISO 3506-1). */
    public OptionalDouble proofLoadKn() {
      OptionalDouble proof =
          strength.map(it -> it.proofLoadN(thread)).orElseGet(OptionalDouble::empty);
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
  }

  /** The figures as JSON, in the manner of a sheet's record. */
  public String json() {
    JsonObject json = new JsonObject().put("format", FORMAT).put("written", written);
    if (stages.size() == 1) {
      json.putAll(stage(stages.get(0)));
    } else {
      json.list("stages", stages, BenchTorque::stage);
    }
    json.put(
            "reach",
            reach.map(it -> new JsonObject().put("length", it.length()).put("angle", it.angle())))
        .put(
            "accuracy",
            accuracy.map(
                it -> new JsonObject().put("percent", it.percent()).put("assumed", it.assumed())));
    joint.ifPresent(it -> json.putAll(joint(it)));
    return JsonText.indentedPlain(
        json.put("socketsLookedAt", sockets).list("warnings", warnings, BenchTorque::warning));
  }

  private static JsonObject stage(BenchStage stage) {
    if (stage.worked().isPresent()) {
      return worked(stage.worked().get());
    }
    return stage.stage() instanceof TighteningStage.Angle angle
        ? new JsonObject().put("angle", angle.angle().value())
        : new JsonObject().put("loosen", true);
  }

  private static JsonObject worked(Worked worked) {
    JsonObject json = new JsonObject().put("torque", worked.target().nominal());
    if (worked.choice().isEmpty()) {
      return json;
    }
    return json.list("converted", COMMON, unit -> converted(worked.target(), unit))
        .put("band", band(worked))
        .put("wrench", worked.setting().map(it -> it.wrench().name()))
        .put("setting", worked.setting().map(Setting::setting))
        .put("arrives", worked.setting().map(it -> rounded(it.arrives())))
        .list("wrenches", worked.choice().get().candidates(), BenchTorque::candidate);
  }

  private static JsonObject converted(Target target, Unit unit) {
    JsonObject json = new JsonObject().put("value", rounded(target.nominal().to(unit)).value());
    target.band().ifPresent(it -> json.putAll(ends(it, unit)));
    return json.put("unit", unit.symbol());
  }

  private static JsonObject band(Worked worked) {
    Unit unit = worked.band().low().unit();
    return ends(worked.band(), unit)
        .put("unit", unit.symbol())
        .put("of", worked.whose().name().toLowerCase(Locale.ROOT));
  }

  /** Towards the middle: what is written of a band is never outside it. */
  private static JsonObject ends(Band band, Unit unit) {
    return new JsonObject()
        .put("from", rounded(band.low().to(unit), RoundingMode.CEILING).value())
        .put("to", rounded(band.high().to(unit), RoundingMode.FLOOR).value());
  }

  private static JsonObject candidate(Candidate candidate) {
    return new JsonObject()
        .put("wrench", candidate.wrench().name())
        .put("taken", candidate.taken())
        .put("why", candidate.why());
  }

  private static JsonObject joint(Joint joint) {
    JsonObject pitch =
        new JsonObject()
            .put("value", plain(joint.thread().pitchMm()))
            .put("unit", Unit.MILLIMETRE.symbol());
    JsonObject json =
        new JsonObject()
            .put(
                "thread",
                new JsonObject()
                    .put("designation", joint.thread().designation())
                    .put("pitch", pitch)
                    .put("pitchAssumed", joint.pitchAssumed()))
            .put("class", joint.strength().map(StrengthClass::label));
    joint.clampLoadKn().ifPresent(load -> json.putAll(load(joint, load)));
    return json;
  }

  private static JsonObject load(Joint joint, double load) {
    JsonObject json =
        new JsonObject()
            .put("friction", plain(joint.friction()))
            .put("clampLoadKn", rounded(load))
            .put(
                "clampLoadScatter",
                new JsonObject()
                    .put("percent", Joint.SCATTER_PERCENT)
                    .put("from", rounded(load * (100 - Joint.SCATTER_PERCENT) / 100))
                    .put("to", rounded(load * (100 + Joint.SCATTER_PERCENT) / 100))
                    .put("unit", "kN"));
    joint
        .percentOfProof()
        .ifPresent(
            percent ->
                json.put("proofLoadKn", rounded(joint.proofLoadKn().orElseThrow()))
                    .put("percentOfProof", rounded(percent)));
    return json;
  }

  private static JsonObject warning(Warning warning) {
    return new JsonObject()
        .put("code", warning.code().word())
        .put("severity", warning.code().severity().word())
        .put("text", Language.BRITISH.source(warning.text()));
  }

  /** As it was written: 1.75, not 1.750. */
  private static BigDecimal plain(double figure) {
    BigDecimal plain = rounded(figure).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  private static BigDecimal rounded(double figure) {
    return BigDecimal.valueOf(figure).setScale(DECIMALS, RoundingMode.HALF_UP);
  }

  private static Quantity rounded(Quantity quantity) {
    return rounded(quantity, RoundingMode.HALF_UP);
  }

  /** To thousandths at most; what was typed with fewer digits keeps them. */
  private static Quantity rounded(Quantity quantity, RoundingMode towards) {
    return quantity.value().scale() <= DECIMALS
        ? quantity
        : new Quantity(quantity.value().setScale(DECIMALS, towards), quantity.unit());
  }
}
