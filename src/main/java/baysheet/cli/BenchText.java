package baysheet.cli;

import baysheet.record.BenchTorque;
import baysheet.torque.StrengthClass;
import baysheet.torque.TighteningStage;
import baysheet.torque.Unit;
import baysheet.wording.Language;
import java.util.List;
import java.util.Locale;

/** A torque worked out at the bench, as plain text. */
final class BenchText {
  private static final List<Unit> BOTH = List.of(Unit.NEWTON_METRE, Unit.POUND_FORCE_FOOT);

  private final BenchTorque bench;
  private final boolean wrenches;
  private final Rows rows = new Rows();

  private BenchText(BenchTorque bench, boolean wrenches) {
    this.bench = bench;
    this.wrenches = wrenches;
  }

  /**
   * The text.
   *
   * @param wrenches whether wrenches were named at all
   * @param notes what else was seen, such as an unusual size across flats
   */
  static String print(BenchTorque bench, boolean wrenches, List<String> notes) {
    return new BenchText(bench, wrenches).all(notes);
  }

  private String all(List<String> notes) {
    rows.heading(bench.written());
    for (int i = 0; i < bench.stages().size(); i++) {
      if (bench.stages().size() > 1) {
        rows.row("stage " + (i + 1), bench.stages().get(i).stage().print());
      }
      stage(bench.stages().get(i));
    }
    bench.accuracy().ifPresent(this::accuracy);
    bench.joint().ifPresent(this::joint);
    rows.rows("note", notes);
    bench
        .warnings()
        .forEach(it -> rows.row(it.code().severity().word(), Language.BRITISH.source(it.text())));
    rows.row("", "This is arithmetic on what was typed; it does not say that the value is right.");
    return rows.print();
  }

  private void stage(BenchTorque.BenchStage stage) {
    SettingRows shown = new SettingRows(rows);
    if (stage.worked().isEmpty()) {
      shown.unset(stage.stage() instanceof TighteningStage.Angle);
      return;
    }
    BenchTorque.Worked worked = stage.worked().get();
    if (worked.choice().isEmpty()) {
      shown.doubtful();
      return;
    }
    shown.converted(worked.target(), worked.band(), BOTH);
    shown.band(worked.target(), worked.band(), whose(worked.whose()));
    if (wrenches) {
      shown.reach(worked.target().nominal(), bench.reach(), worked.choice().get());
      shown.wrenches(worked.choice().get());
      shown.setting(worked.choice().get(), worked.band());
    }
  }

  private static String whose(BenchTorque.BandSource source) {
    return switch (source) {
      case BOOK -> "as written with the value";
      case OPTION -> "as typed";
      case SHOP -> "the shop's, for the value has none (common practice, no source)";
      case DEFAULT -> "the usual one, for the value has none (common practice, no source)";
    };
  }

  private void accuracy(BenchTorque.Accuracy accuracy) {
    String percent = SettingRows.plain(accuracy.percent()) + "\u00A0%";
    rows.row(
        "accuracy",
        accuracy.assumed()
            ? percent
                + " taken, as ISO 6789-1 permits: 6\u00A0% up to a maximum of 10\u00A0N·m, else"
                + " 4\u00A0%"
            : percent + " as typed");
  }

  private void joint(BenchTorque.Joint joint) {
    if (joint.pitchAssumed()) {
      rows.row(
          "thread",
          joint.thread().designation()
              + " without a pitch: taken as coarse, "
              + SettingRows.plain(java.math.BigDecimal.valueOf(joint.thread().pitchMm()))
              + "\u00A0mm (ISO 261)");
    }
    if (joint.clampLoadKn().isEmpty()) {
      rows.row(
          "clamp load",
          "none: a fastener tightened in stages or by angle may go beyond its proof load");
      return;
    }
    double load = joint.clampLoadKn().getAsDouble();
    rows.row(
        "clamp load",
        String.format(
            Locale.ROOT,
            "%.1f\u00A0kN%s on %s at friction %s in thread and under the head (VDI 2230 form)",
            load,
            aimedAt(joint),
            joint.thread().designation(),
            friction(joint.friction())));
    rows.row(
        "",
        String.format(
            Locale.ROOT,
            "a torque wrench scatters by about ±25 to 30\u00A0%%: %.1f to %.1f\u00A0kN",
            load * (100 - BenchTorque.Joint.SCATTER_PERCENT) / 100,
            load * (100 + BenchTorque.Joint.SCATTER_PERCENT) / 100));
    joint.strength().ifPresent(strength -> share(joint, strength));
  }

  /** Which torque it is for, where more than one is accepted as written. */
  private String aimedAt(BenchTorque.Joint joint) {
    boolean banded = bench.stages().get(0).worked().flatMap(it -> it.target().band()).isPresent();
    return banded ? " for " + joint.torque().orElseThrow().print() : "";
  }

  private static String friction(double friction) {
    String two = String.format(Locale.ROOT, "%.2f", friction);
    return Double.parseDouble(two) == friction ? two : String.valueOf(friction);
  }

  private void share(BenchTorque.Joint joint, StrengthClass strength) {
    rows.row(
        "",
        joint.percentOfProof().isPresent()
            ? String.format(
                Locale.ROOT,
                "%.0f\u00A0%% of the proof load of class %s, %.1f\u00A0kN",
                joint.percentOfProof().getAsDouble(),
                strength.label(),
                joint.proofLoadKn().orElseThrow())
            : "class " + strength.label() + " is not made in this size: no proof load");
  }
}
