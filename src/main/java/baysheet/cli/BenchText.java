package baysheet.cli;

import baysheet.record.BenchTorque;
import baysheet.torque.Preload;
import baysheet.torque.StrengthClass;
import baysheet.torque.Thread;
import baysheet.torque.Unit;
import java.util.List;
import java.util.Locale;

/** A torque worked out at the bench, as plain text. */
final class BenchText {
  private static final List<Unit> BOTH = List.of(Unit.NEWTON_METRE, Unit.POUND_FORCE_FOOT);

  private final BenchTorque bench;
  private final Rows rows = new Rows();

  private BenchText(BenchTorque bench) {
    this.bench = bench;
  }

  /**
   * The text.
   *
   * @param whoseBand whose the band is when the value has none
   * @param wrenches whether wrenches were named at all
   */
  static String print(BenchTorque bench, String whoseBand, boolean wrenches) {
    return new BenchText(bench).all(whoseBand, wrenches);
  }

  private String all(String whoseBand, boolean wrenches) {
    SettingRows told = new SettingRows(rows);
    rows.heading(bench.target().written());
    told.converted(bench.target(), bench.band(), BOTH);
    told.band(bench.target(), bench.band(), whoseBand);
    told.reach(bench.target().nominal(), bench.reach(), bench.choice());
    if (wrenches) {
      told.wrenches(bench.choice());
      told.setting(bench.choice(), bench.band());
    }
    bench.thread().ifPresent(this::load);
    bench.warnings().forEach(warning -> rows.row("warning", warning.text()));
    rows.row("", "This is arithmetic on what was typed; it does not say that the value is right.");
    return rows.print();
  }

  private void load(Thread thread) {
    rows.row(
        "clamp load",
        String.format(
            Locale.ROOT,
            "%.1f\u00A0kN on %s at friction %.2f in thread and under the head (VDI 2230 form)",
            bench.clampLoadKn().orElseThrow(),
            thread.designation(),
            Preload.USUAL_FRICTION));
    bench.strength().ifPresent(this::share);
  }

  private void share(StrengthClass strength) {
    rows.row(
        "",
        bench.percentOfProof().isPresent()
            ? String.format(
                Locale.ROOT,
                "%.0f\u00A0%% of the proof load of class %s, %.1f\u00A0kN",
                bench.percentOfProof().getAsDouble(),
                strength.label(),
                bench.proofLoadKn().orElseThrow())
            : "class " + strength.label() + " is not made in this size: no proof load");
  }
}
