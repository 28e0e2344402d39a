package baysheet.record;

import baysheet.sheet.TorqueLine;
import baysheet.torque.Band;
import baysheet.torque.Head;
import baysheet.wording.Language;
import java.io.IOException;
import java.util.Locale;

/** Writes one torque line of a record. */
final class TorqueRecord {
  private final Json json;
  private final Language language;

  TorqueRecord(Json json, Language language) {
    this.json = json;
    this.language = language;
  }

  void write(TorqueLine line) throws IOException {
    json.object(
        () -> {
          json.number("n", line.n());
          json.text("fastener", line.fastener());
          json.text("words", language.text(line.words()));
          json.texts("places", line.places());
          json.number("count", line.count());
          json.text("thread", line.thread());
          json.text("class", line.strength());
          json.text("head", line.head().map(Head::print));
          if (line.socket().isPresent()) {
            json.object("socket", () -> socket(line.socket().get()));
          }
          json.text("kind", line.kind().name().toLowerCase(Locale.ROOT));
          json.list(
              "stages", line.stages(), stage -> json.object(() -> stage(stage, line.inDoubt())));
          json.numbers("passes", line.passes().percents());
          json.list("rounds", line.rounds(), round -> round(round, line.inDoubt()));
          json.truth("checkRound", line.passes().checkRound());
          json.numbers("order", line.order());
          if (line.drawing().isPresent()) {
            json.object("drawing", () -> drawing(line.drawing().get()));
          }
          json.text("threads", line.threads().word());
          json.text("reuse", reuse(line.reuse()));
          json.text("lock", line.lock().map(language::lock));
          json.text("note", language.text(line.note()));
          json.truth("rideHeight", line.rideHeight());
          json.text("moment", line.rideHeight() ? "ride-height" : line.moment().word());
          json.truth("twoVisits", line.twoVisits());
          json.quantity("recheck", line.recheck());
          json.text("source", line.source());
          json.truth("overridden", line.overridden());
          json.text("replaced", line.replaced());
          json.list("warnings", line.warnings(), this::warning);
        });
  }

  /** As spec books write it. */
  private static String reuse(TorqueLine.Reuse reuse) {
    return switch (reuse) {
      case NEW -> "no";
      case AGAIN -> "yes";
      case NOT_STATED -> "not stated";
    };
  }

  private void drawing(TorqueLine.OrderDrawing drawing) throws IOException {
    json.text("letter", drawing.letter());
    json.text("arrangement", drawing.arrangement().name().toLowerCase(Locale.ROOT));
    json.numbers("rows", drawing.rows());
  }

  private void socket(TorqueLine.SocketNeed socket) throws IOException {
    json.text("drive", socket.drive().print());
    json.number("points", socket.points());
    json.truth("impact", socket.impact());
    json.truth("deep", socket.deep());
    json.truth("owned", socket.owned());
    json.text("insert", socket.insert().map(Language::insert));
  }

  private void stage(TorqueLine.StageLine stage, boolean inDoubt) throws IOException {
    if (stage instanceof TorqueLine.StageLine.Torque torque) {
      json.quantity("torque", torque.target());
      json.text("written", torque.written());
      if (!inDoubt) {
        setting(torque);
      }
    } else if (stage instanceof TorqueLine.StageLine.Angle angle) {
      json.number("angle", angle.angle().value());
    } else {
      json.truth("loosen", true);
    }
  }

  /** What follows from a figure; nothing does from one in doubt. */
  private void setting(TorqueLine.StageLine.Torque torque) throws IOException {
    json.quantity("second", torque.second());
    json.object("band", () -> band(torque.band()));
    if (torque.reading().isPresent()) {
      json.object("reading", () -> band(torque.reading().get()));
    }
    json.text("wrench", torque.wrench());
    json.quantity("setting", torque.setting());
    json.quantity("arrives", torque.arrives());
    json.truth("insideBand", torque.insideBand());
    json.text("trouble", torque.trouble().map(language::source));
  }

  private void round(TorqueLine.Round round, boolean inDoubt) throws IOException {
    json.object(
        () -> {
          json.number("percent", round.percent());
          if (inDoubt) {
            return;
          }
          json.quantity("torque", round.torque());
          json.text("wrench", round.wrench());
          json.quantity("setting", round.setting());
          json.text("with", round.with());
        });
  }

  private void band(Band band) throws IOException {
    json.number("from", band.low().value());
    json.number("to", band.high().value());
    json.text("unit", band.low().unit().symbol());
    json.text("of", band.origin().name().toLowerCase(Locale.ROOT));
  }

  private void warning(TorqueLine.Warning warning) throws IOException {
    json.object(
        () -> {
          json.text("code", warning.code().word());
          json.text("severity", warning.code().severity().word());
          json.text("text", language.source(warning.text()));
        });
  }
}
