package baysheet.record;

import baysheet.sheet.TorqueLine.Warning;
import baysheet.torque.Band;
import baysheet.torque.Candidate;
import baysheet.torque.Preload;
import baysheet.torque.Quantity;
import baysheet.torque.Reach;
import baysheet.torque.ScrewThread;
import baysheet.torque.Setting;
import baysheet.torque.Stage;
import baysheet.torque.StrengthClass;
import baysheet.torque.Target;
import baysheet.torque.Unit;
import baysheet.torque.WrenchChoice;
import baysheet.wording.Language;
import java.io.IOException;
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
  public record BenchStage(Stage stage, Optional<Worked> worked) {}

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

  /** The figures as JSON in UTF-8, in the manner of a sheet's record. */
  public byte[] json() {
    return Json.indented(json -> json.object(() -> write(json)));
  }

  private void write(Json json) throws IOException {
    json.number("format", FORMAT);
    json.text("written", written);
    if (stages.size() == 1) {
      stage(json, stages.get(0));
    } else {
      json.list("stages", stages, it -> json.object(() -> stage(json, it)));
    }
    if (reach.isPresent()) {
      json.object("reach", () -> reach(json, reach.get()));
    }
    if (accuracy.isPresent()) {
      json.object("accuracy", () -> accuracy(json, accuracy.get()));
    }
    if (joint.isPresent()) {
      joint(json, joint.get());
    }
    json.truth("socketsLookedAt", sockets);
    json.list("warnings", warnings, it -> json.object(() -> warning(json, it)));
  }

  private static void stage(Json json, BenchStage stage) throws IOException {
    if (stage.worked().isPresent()) {
      worked(json, stage.worked().get());
    } else if (stage.stage() instanceof Stage.Angle angle) {
      json.number("angle", angle.angle().value());
    } else {
      json.truth("loosen", true);
    }
  }

  private static void worked(Json json, Worked worked) throws IOException {
    json.quantity("torque", worked.target().nominal());
    if (worked.choice().isEmpty()) {
      return;
    }
    json.list("converted", COMMON, unit -> json.object(() -> quantity(json, worked, unit)));
    json.object("band", () -> band(json, worked));
    json.text("wrench", worked.setting().map(it -> it.wrench().name()));
    json.quantity("setting", worked.setting().map(Setting::setting));
    json.quantity("arrives", worked.setting().map(it -> rounded(it.arrives())));
    json.list(
        "wrenches",
        worked.choice().get().candidates(),
        it -> json.object(() -> candidate(json, it)));
  }

  private static void quantity(Json json, Worked worked, Unit unit) throws IOException {
    json.number("value", rounded(worked.target().nominal().to(unit)).value());
    if (worked.target().band().isPresent()) {
      ends(json, worked.target().band().get(), unit);
    }
    json.text("unit", unit.symbol());
  }

  private static void band(Json json, Worked worked) throws IOException {
    Unit unit = worked.band().low().unit();
    ends(json, worked.band(), unit);
    json.text("unit", unit.symbol());
    json.text("of", worked.whose().name().toLowerCase(Locale.ROOT));
  }

  /** Towards the middle: what is written of a band is never outside it. */
  private static void ends(Json json, Band band, Unit unit) throws IOException {
    json.number("from", rounded(band.low().to(unit), RoundingMode.CEILING).value());
    json.number("to", rounded(band.high().to(unit), RoundingMode.FLOOR).value());
  }

  private static void reach(Json json, Reach reach) throws IOException {
    json.quantity("length", reach.length());
    json.quantity("angle", reach.angle());
  }

  private static void accuracy(Json json, Accuracy accuracy) throws IOException {
    json.number("percent", accuracy.percent());
    json.truth("assumed", accuracy.assumed());
  }

  private static void candidate(Json json, Candidate candidate) throws IOException {
    json.text("wrench", candidate.wrench().name());
    json.truth("taken", candidate.taken());
    json.text("why", candidate.why());
  }

  private static void joint(Json json, Joint joint) throws IOException {
    json.object(
        "thread",
        () -> {
          json.text("designation", joint.thread().designation());
          json.object(
              "pitch",
              () -> {
                json.number("value", plain(joint.thread().pitchMm()));
                json.text("unit", Unit.MILLIMETRE.symbol());
              });
          json.truth("pitchAssumed", joint.pitchAssumed());
        });
    json.text("class", joint.strength().map(StrengthClass::label));
    if (joint.clampLoadKn().isPresent()) {
      load(json, joint, joint.clampLoadKn().getAsDouble());
    }
  }

  private static void load(Json json, Joint joint, double load) throws IOException {
    json.number("friction", plain(joint.friction()));
    json.number("clampLoadKn", rounded(load));
    json.object(
        "clampLoadScatter",
        () -> {
          json.number("percent", Joint.SCATTER_PERCENT);
          json.number("from", rounded(load * (100 - Joint.SCATTER_PERCENT) / 100));
          json.number("to", rounded(load * (100 + Joint.SCATTER_PERCENT) / 100));
          json.text("unit", "kN");
        });
    if (joint.percentOfProof().isPresent()) {
      json.number("proofLoadKn", rounded(joint.proofLoadKn().getAsDouble()));
      json.number("percentOfProof", rounded(joint.percentOfProof().getAsDouble()));
    }
  }

  private static void warning(Json json, Warning warning) throws IOException {
    json.text("code", warning.code().word());
    json.text("severity", warning.code().severity().word());
    json.text("text", Language.BRITISH.source(warning.text()));
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
