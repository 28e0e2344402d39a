package baysheet.verify;

import baysheet.books.Fastener;
import baysheet.plan.Lists;
import baysheet.rules.Altered;
import baysheet.sheet.Sheet;
import baysheet.sheet.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Quantity;
import baysheet.torque.TighteningPasses;
import baysheet.torque.Treatment;
import baysheet.torque.Unit;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sheets on which one figure of the torque table is another than the book's, by what it is. */
final class AlteredFigures {
  private final Sheet sheet;
  private final Map<String, Sheet> all = new LinkedHashMap<>();
  private TorqueLine line;

  private AlteredFigures(Sheet sheet) {
    this.sheet = sheet;
  }

  static Map<String, Sheet> all(Sheet sheet) {
    AlteredFigures figures = new AlteredFigures(sheet);
    for (TorqueLine line : sheet.torque()) {
      figures.line = line;
      figures.fastener();
      figures.stages();
      figures.rounds();
    }
    return figures.all;
  }

  private void put(String path, Object other) {
    put(path, Altered.with(line, path, other));
  }

  private void put(String what, TorqueLine other) {
    all.put(
        "torque line " + line.n() + ", " + what,
        Altered.with(sheet, "torque", Lists.replaced(sheet.torque(), line, it -> other)));
  }

  private void fastener() {
    put("count", line.count() + 1);
    put("kind", next(TorqueLine.Kind.values(), line.kind()));
    put("hardware.thread", line.hardware().thread().isPresent() ? none() : Optional.of("M99"));
    put("hardware.strength", line.hardware().strength().isPresent() ? none() : Optional.of("5.6"));
    line.hardware().head().ifPresent(head -> put("hardware.head", none()));
    put(
        "method.passes",
        new TighteningPasses(List.of(new BigDecimal(7), new BigDecimal(100)), true));
    put("refitting.threads", next(Treatment.values(), line.refitting().threads()));
    put("refitting.reuse", next(TorqueLine.Reuse.values(), line.refitting().reuse()));
    put(
        "refitting.lock",
        line.refitting().lock().isPresent() ? none() : Optional.of(Fastener.Lock.STAKE));
    put("visits.recheck", Optional.of(Quantity.of("77", Unit.KILOMETRE)));
    put("origin.source", line.origin().source() + ", page 2");
    put("origin.overridden", !line.origin().overridden());
    put("origin.replaced", Optional.of("3 N·m"));
  }

  private static Optional<Object> none() {
    return Optional.empty();
  }

  private static <E extends Enum<E>> E next(E[] values, E one) {
    return values[(one.ordinal() + 1) % values.length];
  }

  private static Quantity times(Quantity quantity, String factor) {
    return quantity.times(new BigDecimal(factor));
  }

  private void stages() {
    List<TorqueLine.StageLine> stages = line.method().stages();
    for (TorqueLine.StageLine stage : stages) {
      put("without " + stage.print(), with("stages", Lists.less(stages, stage)));
      if (stage instanceof TorqueLine.StageLine.Angle turn) {
        Quantity more = times(turn.angle(), "1.1");
        stage("a larger angle", turn, new TorqueLine.StageLine.Angle(more));
      } else if (stage instanceof TorqueLine.StageLine.Torque torque) {
        torque(torque);
      }
    }
  }

  private void torque(TorqueLine.StageLine.Torque torque) {
    Band band = torque.band();
    stage("target", torque, "target", times(torque.target(), "1.001"));
    stage("figure", torque, "written", "1" + torque.written());
    stage(
        "a wider band up",
        torque,
        "band",
        new Band(band.low(), times(band.high(), "1.02"), band.origin()));
    stage(
        "a wider band down",
        torque,
        "band",
        new Band(times(band.low(), "0.98"), band.high(), band.origin()));
    stage("a band of nothing", torque, "band", new Band(band.high(), band.high(), band.origin()));
    stage(
        "whose band",
        torque,
        "band",
        new Band(band.low(), band.high(), next(Band.Origin.values(), band.origin())));
    torque.second().ifPresent(it -> stage("second unit", torque, "second", some(it, "1.5")));
    if (torque.setting().isPresent()) {
      Quantity setting = torque.setting().get();
      stage("the next decade", torque, "setting", some(setting, "10"));
      stage("half the mark", torque, "setting", some(setting, "0.5"));
      stage("between two marks", torque, "setting", some(setting, "1.00001"));
      stage("a strange wrench", torque, "wrench", Optional.of("W99"));
      torque
          .reading()
          .ifPresent(
              it ->
                  stage(
                      "reading",
                      torque,
                      "reading",
                      Optional.of(new Band(it.low(), times(it.high(), "1.02"), it.origin()))));
    }
  }

  private static Optional<Quantity> some(Quantity quantity, String factor) {
    return Optional.of(times(quantity, factor));
  }

  private void stage(
      String what, TorqueLine.StageLine.Torque torque, String component, Object other) {
    stage(what, torque, Altered.with(torque, component, other));
  }

  private void stage(String what, TorqueLine.StageLine stage, TorqueLine.StageLine other) {
    List<TorqueLine.StageLine> stages = line.method().stages();
    put(stage.print() + ", " + what, with("stages", Lists.replaced(stages, stage, it -> other)));
  }

  private TorqueLine with(String component, Object other) {
    return Altered.with(line, "method." + component, other);
  }

  private void rounds() {
    List<TorqueLine.Round> rounds = line.method().rounds();
    for (TorqueLine.Round round : rounds) {
      String name = "round of " + round.percent();
      put("without " + name, with("rounds", Lists.less(rounds, round)));
      round(name + ", share", round, "percent", round.percent().subtract(BigDecimal.ONE));
      round(name + ", torque", round, "torque", times(round.torque(), "1.01"));
      if (round.setting().isPresent()) {
        Quantity setting = round.setting().get();
        round(name + ", half the mark", round, "setting", some(setting, "0.5"));
        round(name + ", between two marks", round, "setting", some(setting, "1.00001"));
        round(name + ", a strange wrench", round, "wrench", Optional.of("W99"));
      }
    }
  }

  private void round(String what, TorqueLine.Round round, String component, Object other) {
    TorqueLine.Round altered = Altered.with(round, component, other);
    put(what, with("rounds", Lists.replaced(line.method().rounds(), round, it -> altered)));
  }
}
